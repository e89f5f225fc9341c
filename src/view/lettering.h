#pragma once

#include "view/paper.h"

namespace berthwright::lettering {

// Font sizes. The capitals of the font are 0.73 of them: 2.5 mm sets capitals of 1.8 mm, the smallest step of
// the lettering series of drawing standards (1.8 2.5 3.5 5 7); nothing is set smaller than that.
inline constexpr PaperLength note = paper_mm(25, 10);
inline constexpr PaperLength label = paper_mm(28, 10);
inline constexpr PaperLength heading = paper_mm(28, 10);
inline constexpr PaperLength bed = paper_mm(32, 10);
inline constexpr PaperLength title = paper_mm(48, 10);
inline constexpr PaperLength smaller_title = paper_mm(36, 10);
inline constexpr PaperLength least = paper_mm(247, 100);

inline constexpr PaperLength ring = paper_mm(46, 10);  // across the ring of a number of the key

// From baseline to baseline, in hundredths of the font size.
inline constexpr int leading = 130;
inline constexpr PaperLength note_pitch = note * leading / 100;

}  // namespace berthwright::lettering
