#pragma once

#include <berthwright/solve/convert/motion.h>

namespace berthwright {

/// Boxes that cover every place which the box passes through.
std::vector<Solid> swept_by(const Swing& swing);

/// The keys of a tilt: 0 where the box lies; 1 + d, for even d, tilted by d degrees at its own height; as far from the
/// end, d, the same at the other height; and between two of these one shifted only.
Swing tilting(const Solid& piece, Length to_base, const Tilt& tilt);

/// The box at a key which is turned by quarters.
Solid held_at(const Swing& swing, const Swing::Key& key);

}  // namespace berthwright
