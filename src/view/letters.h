#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <berthwright/view/scene.h>

namespace berthwright {

/// Lettering reaches this far above and below its baseline, in thousandths of its height. Capitals with marks
/// reach higher than the rest and are rare: the leading leaves room for them.
inline constexpr int ascent_thousandths = 760;
inline constexpr int descent_thousandths = 240;

/// `words` broken at spaces into lines no wider than `width`; a word that is too wide is broken within. At
/// least one line. Linear.
std::vector<std::string> wrapped(std::string_view words, PaperLength height, PaperLength width);

/// `words` if they fit, else as much of them as fits with "…" behind.
std::string shortened(std::string_view words, PaperLength height, PaperLength width);

/// The blanks within a measure ("6' 2 1/2\"", "1892.3 mm", "75\" × 38\"", "< 3' 0\"", "7.2 sq ft") made such
/// that no line ends there.
std::string unbroken_measures(std::string_view words);
/// Every such blank made a plain one again: whoever searches the text for a measure types plain blanks.
std::string plain_blanks(std::string words);

/// How far the next letter stands from the beginning of this one, in `letter_units` to the height; of letters
/// that the font lacks what is kept for them.
int advance_of(char32_t letter);

/// True when the width of some letter is not known, so that what is set may be wider or narrower.
bool has_unknown_letters(std::string_view words);

}  // namespace berthwright
