#pragma once

#include <berthwright/plan/names.h>

#include "view/paper.h"

namespace berthwright {

// Signs of our own in the shapes and colours that open standards give such meanings (ISO 3864 and ISO 7010,
// as other texts report them: the standards themselves were not read, and no pictogram of theirs is copied):
// a green square for what helps to get out, a red one for what tells of fire, a yellow triangle for a
// warning. The shape and what is drawn in it carry the meaning on black and white paper too.

inline constexpr PaperLength sign_reach = paper_mm(27, 10);  ///< from its middle to its sides
PaperBox sign_box(PaperPoint centre, PaperLength reach = sign_reach);

/// An arrow over a threshold, the way one gets out: toward that wall.
std::vector<Path> exit_sign(PaperPoint centre, Wall toward, PaperLength reach = sign_reach);
/// A crossed square: an opening that does not serve.
std::vector<Path> shut_sign(PaperPoint centre, PaperLength reach = sign_reach);
/// Rings as they go out from something that sounds.
std::vector<Path> alarm_square(PaperPoint centre, PaperLength reach = sign_reach);
/// A flame in a triangle.
std::vector<Path> heat_sign(PaperPoint centre, PaperLength reach = sign_reach);
/// Two slots in a ring.
std::vector<Path> outlet_sign(PaperPoint centre, PaperLength reach = paper_mm(19, 10));

/// A ring with two quarters filled: a centre of gravity.
std::vector<Path> balance_sign(PaperPoint centre, PaperLength reach = paper_mm(24, 10));
/// A tyre as it is seen from above; one size for all.
std::vector<Path> wheel_sign(PaperPoint centre);
PaperBox wheel_box(PaperPoint centre);
/// A ball in its socket, open to the front.
std::vector<Path> coupling_sign(PaperPoint centre);

/// `point` moved out of the room through that wall, as a plan lies on paper.
PaperPoint outward(Wall wall, PaperPoint point, PaperLength by);

/// The place, moved that way until a sign there meets none of those that stand.
PaperPoint clear_of(const std::vector<PaperBox>& standing, PaperPoint place, Wall way);

/// A filled head whose tip stands at `tip`, of a line that comes from `from`.
Path arrow_head(PaperPoint tip, PaperPoint from, PaperLength length = paper_mm(26, 10));

}  // namespace berthwright
