#pragma once

#include <cstddef>
#include <optional>

#include <berthwright/solve/finding.h>

namespace berthwright {

/// What is wrong only while one configuration becomes another: neither at the start nor at the end is it as
/// bad, or is it there at all. Rules, limits and sources are those of `check`; status not met or unknown.
///
/// Looked at after every step but the last:
/// "heat.three-feet" and "heat.data-plate": what gives heat in its place of a configuration (one put aside
/// counts as off, unplugged and cold) to every cushion by itself, bed linen not laid, to curtains and to what
/// else can burn; subjects are the source, the thing with the least margin, and others too near meanwhile.
/// Of what is no heater and lacks distances on its data plate: unknown, where a thing comes nearer than 3 ft.
/// "way.aisle": the widest way to a door from where the person stands who has let go of one piece, or takes
/// up the next; at the ends from the same place, where it is free. "way.opening": what is clear of openings
/// marked as a way out; "way.swing": what opens inward.
/// While a piece is in the hand nothing is measured.
struct Meanwhile {
  std::size_t from = 1;   ///< step, counted from 1, after which it begins
  std::size_t until = 2;  ///< step that ends it
  std::size_t worst = 1;  ///< step after which `finding` was measured
  Finding finding;
  /// The same figure there, of heat the least distance in space; none: it is not there.
  std::optional<Quantity> at_start;
  std::optional<Quantity> at_end;
};

}  // namespace berthwright
