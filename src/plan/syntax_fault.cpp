#include "plan/syntax_fault.h"

#include <array>
#include <utility>

#include "plan/in_quotes.h"

namespace berthwright {
namespace {

/// The parser's own words for what it met or wanted, and ours.
constexpr std::array<std::pair<std::string_view, std::string_view>, 9> token_words{{
    {"string literal", "a text in quotes"},
    {"number literal", "a number"},
    {"true literal", "true"},
    {"false literal", "false"},
    {"null literal", "null"},
    {"end of input", "the end of the file"},
    {"'[', '{', or a literal",
     "a value: a text in quotes, a number, true, false, a list in brackets or a group in braces"},
    {"object key", "a name in quotes"},
    {"object separator", "a colon"},
}};

std::string in_our_words(std::string_view token) {
  for (const auto& [theirs, ours] : token_words)
    if (token == theirs) return std::string(ours);
  return printable(token);
}

std::string_view after(std::string_view text, std::string_view mark) {
  const std::size_t at = text.find(mark);
  return at == std::string_view::npos ? text : text.substr(at + mark.size());
}

std::string_view before(std::string_view text, std::string_view mark) {
  return text.substr(0, text.find(mark));
}

/// The last sign before `at` that is neither space nor line end; '\0' at the start.
char sign_before(std::string_view text, std::size_t at) {
  const std::size_t sign = at == 0 ? std::string_view::npos : text.find_last_not_of(" \t\r\n", at - 1);
  return sign == std::string_view::npos ? '\0' : text[sign];
}

std::string token_at(std::string_view text, std::size_t at) {
  const std::string_view rest = text.substr(at);
  if (rest.empty()) return "the end of the file";
  return printable(rest.substr(0, std::min(rest.find_first_of(" \t\r\n,:]}[{", 1), rest.find('\n'))), 40);
}

/// Does a further value or name begin in a line below the one that ended? (In the same line a missing comma
/// is but one of several guesses.)
bool lacks_comma(std::string_view text, Progress progress, std::string_view expected) {
  const auto [done, token, read] = progress;
  if (done == 0 || token >= text.size() || (expected != "'}'" && expected != "']'")) return false;
  if (text.substr(done, token - done).find('\n') == std::string_view::npos) return false;
  constexpr std::string_view starts = "\"{[-0123456789tfn";
  return starts.find(text[token]) != std::string_view::npos;
}

/// 3/4 without quotes: to a reader of remarks its line looks like the beginning of one.
bool is_in_fraction(std::string_view text, std::size_t token) {
  constexpr std::string_view digits = "0123456789";
  const std::size_t next = text.find_first_not_of(" \t", token + 1);
  return text[token] == '/' && digits.find(sign_before(text, token)) != std::string_view::npos &&
         next != std::string_view::npos && digits.find(text[next]) != std::string_view::npos;
}

std::string cure_for(std::string_view text, std::size_t token, std::string_view reason,
                     std::string_view expected) {
  if (token >= text.size()) return "close every bracket, brace and quote that was opened";
  const char sign = text[token];
  const char previous = sign_before(text, token);
  if ((sign == '}' || sign == ']') && previous == ',')
    return "take away the comma before the closing bracket";
  const auto says = [&](std::string_view words) { return reason.find(words) != std::string_view::npos; };
  if (says("UTF-8")) return "save the file as UTF-8 text, and type the letter anew";
  if (says("must be escaped") && !says("U+000A") && !says("U+000D")) return "put spaces in its place";
  if (says("invalid string") && (says("backslash") || says("surrogate") || says("'\\u'")))
    return "take the backslash away, or write two of them";
  if (says("comment"))
    return is_in_fraction(text, token)
               ? "put lengths with a fraction or a unit in double quotes, as in \"74 1/2 in\""
               : "begin a remark with //";
  if (sign == '\'') return "put names and texts in double quotes: \"";
  if (says("must be escaped") || says("missing closing quote"))
    return "close the text with a quote on the same line; an inch mark inside a text needs a backslash "
           "(\\\"), or write in";
  if (previous == '"' && (sign == '"' || expected.find('}') != std::string_view::npos ||
                          expected.find(']') != std::string_view::npos))
    return "put a comma between two values; an inch mark inside a text needs a backslash (\\\"), or write in";
  if (expected.find('}') != std::string_view::npos || expected.find(']') != std::string_view::npos)
    return "put a comma between two values; a length with a fraction stands in quotes, as in \"74 1/2\"";
  if (says("invalid literal") || says("invalid number"))
    return "put texts, and lengths with a fraction or a unit, in double quotes, as in \"74 1/2 in\"";
  return "look for a missing comma, quote or bracket just before this place";
}

std::string why_not(std::string_view text, std::size_t token, std::string_view reason) {
  const auto says = [&](std::string_view words) { return reason.find(words) != std::string_view::npos; };
  if (reason.starts_with("unexpected ")) return "here stands " + in_our_words(reason.substr(11));
  if (says("must be escaped"))
    return says("U+000A") || says("U+000D") ? "a text in quotes goes on into the next line"
                                            : "a tab, or a sign that nobody sees, stands in a text";
  if (says("missing closing quote")) return "a text in quotes has no end";
  if (says("UTF-8")) return "a letter is spelled as no text in UTF-8 is";
  if (says("invalid string")) return "a backslash stands before a sign that needs none";
  if (says("invalid number")) return "a number is not spelled as one";
  if (says("comment") && is_in_fraction(text, token)) return "a fraction stands here without quotes";
  if (says("comment")) return "a remark begins with // or /* and ends with its line or with */";
  return "a word stands here without quotes";
}

}  // namespace

SyntaxFault syntax_fault(std::string_view complaint, std::string_view text, Progress progress) {
  const auto [done, token, read] = progress;
  const std::string_view detail = after(complaint, " - ");
  const std::string_view reason = before(before(detail, "; last read: "), "; expected ");
  const std::size_t expected_at = complaint.rfind("; expected ");
  const std::string_view expected =
      expected_at == std::string_view::npos ? std::string_view{} : complaint.substr(expected_at + 11);

  SyntaxFault fault;
  fault.at = token;
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
    return {token, "the file is empty", "nothing", "a plan in braces { … }",
            "start from an example in plans/"};
  if (complaint.find("number overflow") != std::string_view::npos) {
    fault.message = "this number is larger than any that can be read";
    fault.found = token_at(text, token);
    fault.allowed = "a length such as 24.5 or \"24 1/2 in\"";
    fault.cure = "write the number in plain digits";
    return fault;
  }
  if (expected_at != std::string_view::npos && lacks_comma(text, progress, expected))
    return {done - 1, "a comma is missing after this", token_at(text, token) + " in a line below",
            "a comma between two values", "put a comma here"};
  if (reason.starts_with("invalid string") && reason.find("must be escaped") == std::string_view::npos &&
      read > token)
    fault.at = std::min(read - 1, text.size());
  fault.message = "the file cannot be read from here on: " + why_not(text, token, reason);
  fault.found = token_at(text, token);
  fault.allowed =
      expected.empty() ? "names and texts in double quotes, commas between values" : in_our_words(expected);
  fault.cure = cure_for(text, token, reason, expected);
  return fault;
}

}  // namespace berthwright
