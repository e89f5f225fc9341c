#pragma once

#include <array>
#include <string_view>

#include <berthwright/view/scene.h>

namespace berthwright {

/// How an ink looks: the one table of line widths, dashes and colours, for every writer.
struct Style {
  PaperLength width;      ///< of its lines; zero: none are drawn
  std::string_view line;  ///< colour of its lines and, of lettering inks, of the letters: "#000000"
  std::string_view fill;  ///< of closed paths; empty: none
  /// Drawn, left out, by turns; all zero: unbroken.
  std::array<PaperLength, 6> dash{};
  bool round_ends = false;
};

/// Wide lines are 0.5 mm and more exactly for the inks that `is_heavy` names.
Style style_of(Ink ink);

}  // namespace berthwright
