#include "write/html.h"

#include <optional>

#include "exact/code_points.h"
#include "write/escaped.h"

namespace berthwright {
namespace {

// The blocks that Unicode keeps for writing from right to left (DerivedBidiClass.txt, its defaults R and AL).
bool reads_from_right(char32_t c) {
  return (c >= 0x0590 && c <= 0x08FF) || (c >= 0xFB1D && c <= 0xFDFF) || (c >= 0xFE70 && c <= 0xFEFE) ||
         (c >= 0x10800 && c <= 0x10FFF) || (c >= 0x1E800 && c <= 0x1EFFF);
}

std::size_t bytes_of(char32_t c) { return c < 0x80 ? 1 : c < 0x800 ? 2 : c < 0x10000 ? 3 : 4; }

constexpr std::string_view no_break_space = "\u00a0";

// A measure is not parted at the end of a line: 1' 0 11/16" would read as 1' 0.
std::string with_whole_measures(std::string_view words) {
  std::string out;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const bool between = words[i] == ' ' && i > 0 && i + 1 < words.size() &&
                         is_digit(static_cast<unsigned char>(words[i + 1]));
    const std::size_t end = words.find_first_not_of("0123456789", i + 1);
    const bool before_fraction = end != std::string_view::npos && words[end] == '/';
    if (between &&
        (words[i - 1] == '\'' || (is_digit(static_cast<unsigned char>(words[i - 1])) && before_fraction)))
      out += no_break_space;
    else
      out += words[i];
  }
  return out;
}

}  // namespace

std::string in_sentence(std::string_view words) {
  const std::string shown = with_whole_measures(printable(words, every_character));
  const std::u32string text = code_points(shown).text;
  std::string out;
  std::size_t written = 0;
  std::size_t at = 0;
  std::optional<std::size_t> begun;  // the run that is being read, to its last letter at `end`
  std::size_t end = 0;
  const auto close = [&] {
    if (!begun) return;
    out += escaped(shown.substr(written, *begun - written)) + "<bdi>" +
           escaped(shown.substr(*begun, end - *begun)) + "</bdi>";
    written = end;
    begun.reset();
  };
  for (const char32_t c : text) {
    if (reads_from_right(c)) {
      if (!begun) begun = at;
      end = at + bytes_of(c);
    } else if (!is_blank(c) && !is_dash(c) && !is_digit(c)) {
      close();
    }
    at += bytes_of(c);
  }
  close();
  return out + escaped(shown.substr(written));
}

std::string mark_attribute(std::string_view name, std::string_view value) {
  return " " + std::string(name) + "=\"" + escaped(value) + "\"";
}

std::string tagged(std::string_view tag, std::string_view words) {
  return "<" + std::string(tag) + ">" + in_sentence(words) + "</" + std::string(tag) + ">";
}

std::string slide_bar(std::string_view label, std::size_t last) {
  return "<p class=\"slide\"><button type=\"button\" class=\"back\" aria-label=\"Step back\">◂</button>"
         "<input type=\"range\" min=\"0\" value=\"0\" max=\"" +
         std::to_string(last) + "\"" + mark_attribute("aria-label", label) +
         "/><button type=\"button\" class=\"on\" aria-label=\"Step on\">▸</button></p>\n";
}

std::string stage_name(std::size_t stage, std::size_t last) {
  return stage == 0 ? "At the start" : "Step " + std::to_string(stage) + " of " + std::to_string(last);
}

}  // namespace berthwright
