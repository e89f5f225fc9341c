#pragma once

#include <berthwright/solve/room/arrangement.h>

#include "view/scale.h"

namespace berthwright {

/// What begins higher hangs over everything people use.
inline constexpr Length over_the_head = 48_in;

/// One thing of an arrangement as it is drawn from above.
struct PlanThing {
  const Placed* placed = nullptr;
  Ink ink = Ink::fixture;
  bool overhead = false;  ///< hangs above what people use: dashed, seen through
  std::vector<Path> paths;
  std::vector<PaperRing> rings;  ///< the same borders in chords
  PaperBox bounds;
  std::optional<PaperPoint> seen;  ///< the middle of what is seen of it; none when other things hide it
};

bool is_alarm(const Placed& placed);

/// The ink of its kind, wherever it hangs and of whatever it warns.
Ink ink_of(const Placed& placed);

/// What the thing is called on paper: its name, else its id.
const std::string& name_of(const Placed& placed);

/// Nothing of it is in the room: told in words, never drawn.
bool is_outside(const Plan& plan, const Placed& placed);

/// Raised views cut walls and what is built in at this height: it would hide the rest.
inline constexpr Length raised_height = 48_in;

/// Up to where a raised view shows the thing: pieces whole, however high a bunk is; what is built in up to
/// `raised_height`. None for what is built in higher, for alarms and for curtains.
std::optional<Length> raised_top(const Placed& placed);

/// How high the raised view of an arrangement reaches.
Length raised_reach(const Plan& plan, const Arrangement& arrangement);

/// All things in the room in the order they are painted: from the floor up, overhead ones last. Alarms are
/// drawn as signs of one size, within the room.
std::vector<PlanThing> plan_things(const PlanView& view, const Plan& plan, const Arrangement& arrangement);

/// Lines that tell boards (single) and tables (in pairs) from cushions, broken around `lettering`.
std::vector<Path> grain_of(const PlanThing& thing, const std::vector<PaperBox>& lettering);
/// The same on the top of a thing in a raised view, level on paper; cushions are dotted there.
std::vector<Path> lines_on(const std::vector<PaperRing>& rings, Ink ink,
                           const std::vector<PaperBox>& lettering);

}  // namespace berthwright
