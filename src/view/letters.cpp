#include "view/letters.h"

#include <algorithm>
#include <array>
#include <optional>

#include <berthwright/view/sheets.h>

#include "exact/code_points.h"
#include "view/letter_widths.h"

namespace berthwright {
namespace {

// Above any name a plan may hold; a guard, not a limit people meet.
constexpr std::size_t longest_text = 100'000;

// The plain letters are the first of the table, one after the other.
constexpr char32_t first_plain = 0x20;
constexpr char32_t last_plain = 0x7E;
static_assert(letter_widths[0].letter == first_plain &&
              letter_widths[last_plain - first_plain].letter == last_plain);

std::optional<int> known_units(char32_t letter) {
  if (letter >= first_plain && letter <= last_plain) return letter_widths[letter - first_plain].units;
  const auto* const found = std::ranges::lower_bound(letter_widths, letter, {}, &LetterWidth::letter);
  if (found == letter_widths.end() || found->letter != letter) return std::nullopt;
  return found->units;
}

std::int64_t units(std::u32string_view letters) {
  std::int64_t sum = 0;
  for (const char32_t letter : letters) sum += advance_of(letter);
  return sum;
}

PaperLength set_width(std::int64_t sum, PaperLength height) {
  return PaperLength::micrometres((sum * height.micrometres() + letter_units - 1) / letter_units);
}

bool is_plain(std::string_view words) {
  return words.size() <= longest_text &&
         std::ranges::all_of(words, [](char c) { return c >= ' ' && c <= '~'; });
}

std::u32string letters_of(std::string_view words) {
  if (is_plain(words)) return {words.begin(), words.end()};
  return code_points(printable(words, longest_text)).text;
}

std::string utf8(std::u32string_view letters) {
  std::string out;
  for (const char32_t c : letters) {
    const auto tail = [&](int shift) { out += static_cast<char>(0x80 | (c >> shift & 0x3FU)); };
    if (c < 0x80) {
      out += static_cast<char>(c);
    } else if (c < 0x800) {
      out += static_cast<char>(0xC0 | c >> 6);
      tail(0);
    } else if (c < 0x10000) {
      out += static_cast<char>(0xE0 | c >> 12);
      tail(6);
      tail(0);
    } else {
      out += static_cast<char>(0xF0 | c >> 18);
      tail(12);
      tail(6);
      tail(0);
    }
  }
  return out;
}

// How many of the first letters fit; at least one.
std::size_t fitting(std::u32string_view letters, PaperLength height, PaperLength width) {
  // The most units that `set_width` makes no wider than that.
  const std::int64_t most = width.micrometres() * letter_units / height.micrometres();
  std::size_t count = 0;
  std::int64_t sum = 0;
  while (count < letters.size()) {
    sum += advance_of(letters[count]);
    if (sum > most) break;
    ++count;
  }
  return std::max<std::size_t>(count, 1);
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool starts_with_word(std::string_view text, std::string_view word) {
  if (!text.starts_with(word)) return false;
  const char next = text.size() > word.size() ? text[word.size()] : ' ';
  return !is_digit(next) && (next < 'a' || next > 'z');
}

// The blank between these belongs to a measure: feet and inches, a fraction, a unit, two sides, a comparison.
bool is_within_measure(std::string_view before, std::string_view after) {
  const bool behind_digit = !before.empty() && is_digit(before.back());
  const bool ahead_of_digit = !after.empty() && is_digit(after.front());
  constexpr std::array units{"mm", "cm", "in", "ft", "sq", "m²", "lb", "kg", "%"};
  const bool fraction =
      behind_digit && ahead_of_digit && after.substr(0, 4).find('/') != std::string_view::npos;
  const bool unit = behind_digit && std::ranges::any_of(units, [&](std::string_view unit_word) {
                      return starts_with_word(after, unit_word);
                    });
  const bool feet = before.ends_with('\'') && ahead_of_digit;
  const bool sides = after.starts_with("× ") || before.ends_with(" ×");
  const bool comparison = ahead_of_digit && (before.ends_with("<") || before.ends_with("≥"));
  const bool square_feet = before.ends_with("sq") && starts_with_word(after, "ft");
  return fraction || unit || feet || sides || comparison || square_feet;
}

}  // namespace

// Scripts that the font lacks are set in another one, at about an em a letter; pictures beyond the basic
// plane are wider (emoji fonts: 1.25 em, from memory).
int advance_of(char32_t letter) {
  if (const auto known = known_units(letter)) return *known;
  return letter > 0xFFFF ? letter_units * 13 / 10 : letter_units;
}

PaperLength text_width(std::string_view words, PaperLength height) {
  return set_width(units(letters_of(words)), height);
}

std::vector<std::string> wrapped(std::string_view words, PaperLength height, PaperLength width) {
  const std::u32string all = letters_of(words);
  std::u32string_view rest = all;
  std::vector<std::string> lines;
  while (!rest.empty()) {
    std::size_t count = fitting(rest, height, width);
    if (count < rest.size() && rest[count] != U' ') {
      const std::size_t space = rest.substr(0, count).rfind(U' ');
      if (space != std::u32string_view::npos && space > 0) count = space;
    }
    lines.push_back(utf8(rest.substr(0, count)));
    rest.remove_prefix(count);
    while (!rest.empty() && rest.front() == U' ') rest.remove_prefix(1);
  }
  if (lines.empty()) lines.emplace_back();
  return lines;
}

std::string shortened(std::string_view words, PaperLength height, PaperLength width) {
  const std::u32string all = letters_of(words);
  if (set_width(units(all), height) <= width) return utf8(all);
  const PaperLength dots = set_width(units(U"…"), height);
  std::u32string_view kept = all;
  if (width <= dots) return "…";
  std::size_t count = fitting(kept, height, width - dots);
  while (count > 1 && kept[count - 1] == U' ') --count;
  return utf8(kept.substr(0, count)) + "…";
}

std::string unbroken_measures(std::string_view words) {
  std::string out;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i] == ' ' && is_within_measure(words.substr(0, i), words.substr(i + 1)))
      out += "\u00A0";
    else
      out += words[i];
  }
  return out;
}

std::string plain_blanks(std::string words) {
  constexpr std::string_view unbroken = "\u00A0";
  for (std::size_t at = 0; (at = words.find(unbroken, at)) != std::string::npos; ++at)
    words.replace(at, unbroken.size(), " ");
  return words;
}

bool has_unknown_letters(std::string_view words) {
  return std::ranges::any_of(letters_of(words), [](char32_t c) { return !known_units(c); });
}

bool lacks_letters(const Sheet& sheet) {
  return std::ranges::any_of(sheet.groups, [](const Group& group) {
    return std::ranges::any_of(group.marks, [](const Mark& mark) {
      const Text* text = std::get_if<Text>(&mark);
      return text != nullptr && has_unknown_letters(text->words);
    });
  });
}

}  // namespace berthwright
