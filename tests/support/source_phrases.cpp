#include "support/source_phrases.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <optional>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

constexpr std::size_t shortest_phrase = 8;
constexpr std::array<std::string_view, 14> calls_without_phrases{"with_default",
                                                                 "or_default",
                                                                 "says",
                                                                 "defaults.push_back",
                                                                 "note_default",
                                                                 "logic_error",
                                                                 "invalid_argument",
                                                                 "runtime_error",
                                                                 "broken",
                                                                 "find",
                                                                 "rfind",
                                                                 "starts_with",
                                                                 "before",
                                                                 "after"};

bool is_name_sign(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}

/// Walks over a source, literal by literal.
class LiteralReader {
 public:
  explicit LiteralReader(std::string_view source) : source_(source) {}

  /// Every literal as its place and its words.
  struct Literal {
    std::size_t at = 0;
    std::size_t end = 0;
    std::string words;
  };
  std::vector<Literal> literals() {
    std::vector<Literal> all;
    while (at_ < source_.size()) {
      std::optional<Literal> next = step();
      if (!next) continue;
      const bool joins =
          !all.empty() &&
          source_.substr(all.back().end, next->at - all.back().end).find_first_not_of(" \t\n") ==
              std::string_view::npos;
      if (joins) {
        all.back().words += next->words;
        all.back().end = next->end;
      } else {
        all.push_back(std::move(*next));
      }
    }
    return all;
  }

 private:
  void go_past(std::string_view mark, std::size_t from) {
    const std::size_t found = source_.find(mark, from);
    at_ = found == std::string_view::npos ? source_.size() : found + mark.size();
  }

  std::optional<Literal> step() {
    const std::string_view rest = source_.substr(at_);
    if (rest.starts_with("//")) {
      go_past("\n", at_);
    } else if (rest.starts_with("/*")) {
      go_past("*/", at_ + 2);
    } else if (rest.starts_with("R\"(")) {
      Literal raw{at_, 0, {}};
      go_past(")\"", at_);
      raw.end = at_;
      raw.words = source_.substr(raw.at + 3, raw.end - raw.at - 5);
      return raw;
    } else if (rest.front() == '"') {
      return quoted('"');
    } else if (rest.front() == '\'' &&
               (at_ == 0 || !is_name_sign(source_[at_ - 1]) || source_[at_ - 1] == 'U')) {
      quoted('\'');
    } else {
      ++at_;
    }
    return std::nullopt;
  }

  Literal quoted(char mark) {
    Literal literal{at_, 0, {}};
    for (++at_; at_ < source_.size() && source_[at_] != mark; ++at_) {
      const bool escapes = source_[at_] == '\\';
      if (escapes) ++at_;
      literal.words += escapes && source_[at_] == 'n' ? '\n' : source_[at_];
    }
    literal.end = ++at_;
    return literal;
  }

  std::string_view source_;
  std::size_t at_ = 0;
};

struct CodeSpan {
  std::size_t from;
  std::size_t to;
};

/// The end of what opens with a round bracket at `at`.
std::size_t closing(std::string_view source, std::size_t at, const std::vector<CodeSpan>& texts) {
  int depth = 0;
  for (std::size_t i = at; i < source.size(); ++i) {
    const auto inside =
        std::ranges::find_if(texts, [&](const CodeSpan& one) { return one.from <= i && i < one.to; });
    if (inside != texts.end()) {
      i = inside->to - 1;
      continue;
    }
    depth += source[i] == '(' ? 1 : source[i] == ')' ? -1 : 0;
    if (depth == 0) return i;
  }
  return source.size();
}

std::vector<CodeSpan> spans_left_out(std::string_view source, const std::vector<CodeSpan>& texts) {
  std::vector<CodeSpan> spans;
  for (const std::string_view call : calls_without_phrases) {
    const std::string opened = std::string(call) + '(';
    for (std::size_t at = source.find(opened); at != std::string_view::npos; at = source.find(opened, at + 1))
      if (at == 0 || !is_name_sign(source[at - 1]))
        spans.push_back({at, closing(source, at + call.size(), texts)});
  }
  constexpr std::string_view table = "constexpr ";
  for (std::size_t at = source.find(table); at != std::string_view::npos; at = source.find(table, at + 1))
    if (const std::size_t sign = source.find_first_of("({=;", at);
        sign != std::string_view::npos && (source[sign] == '{' || source[sign] == '='))
      spans.push_back({at, std::min(source.find(";\n", at), source.size())});
  return spans;
}

}  // namespace

std::vector<SourcePhrase> phrases_of(const std::string& file, std::string_view source) {
  const auto literals = LiteralReader(source).literals();
  std::vector<CodeSpan> texts;
  for (const auto& literal : literals) texts.push_back({literal.at, literal.end});
  const std::vector<CodeSpan> left_out = spans_left_out(source, texts);
  std::vector<SourcePhrase> phrases;
  for (const auto& literal : literals) {
    const std::size_t first = literal.words.find_first_not_of(' ');
    if (first == std::string::npos) continue;
    const std::string core = literal.words.substr(first, literal.words.find_last_not_of(' ') - first + 1);
    if (core.size() < shortest_phrase || core.find(' ') == std::string::npos) continue;
    if (std::ranges::any_of(
            left_out, [&](const CodeSpan& one) { return one.from <= literal.at && literal.at < one.to; }))
      continue;
    const auto line = static_cast<std::size_t>(std::ranges::count(source.substr(0, literal.at), '\n')) + 1;
    phrases.push_back({file, line, literal.words});
  }
  return phrases;
}

std::vector<SourcePhrase> phrases_in(const std::string& folder, const std::vector<std::string>& but) {
  std::vector<std::string> files;
  for (const auto& entry : std::filesystem::directory_iterator(repository_path(folder)))
    if (entry.path().extension() == ".cpp") files.push_back(entry.path().filename().string());
  std::ranges::sort(files);
  std::vector<SourcePhrase> all;
  for (const std::string& file : files) {
    if (std::ranges::find(but, file) != but.end()) continue;
    const std::string path = folder + "/" + file;
    const std::vector<SourcePhrase> own = phrases_of(path, repository_text(path));
    all.insert(all.end(), own.begin(), own.end());
  }
  return all;
}

}  // namespace berthwright
