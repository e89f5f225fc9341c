#pragma once

#include <berthwright/solve/convert/motion.h>

namespace berthwright {

/// Boxes that cover every place which the box passes through.
std::vector<Solid> swept_by(const Swing& swing);

/// The keys of a tilt: where the box lies; level, then by 2 degrees more and more at its own height; the same
/// backwards at the other height.
Swing tilting(const Solid& piece, Length to_base, const Tilt& tilt);

/// The box at a key which is turned by quarters.
Solid held_at(const Swing& swing, const Swing::Key& key);

}  // namespace berthwright
