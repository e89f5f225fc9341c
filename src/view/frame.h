#pragma once

#include <berthwright/solve/convert/steps.h>

#include "view/labels.h"
#include "view/notes.h"
#include "view/raised.h"

namespace berthwright {

/// One step of a conversion, shown as everything stands after it. Number 0: as it stands at the start, where
/// no step is done yet.
struct FrameStep {
  const Plan* plan = nullptr;
  const Conversion* conversion = nullptr;
  std::size_t number = 1;
  bool at_start() const { return number == 0; }
  const Step& step() const { return conversion->steps[number - 1]; }
};

/// The middle of the piece on its way, from where it is taken up to where it is let go. A piece that comes
/// out of a locker begins at its middle; one that leaves through a door ends just outside of it.
std::vector<Point3> way_of(const FrameStep& of);

/// How a piece stands after the step: moved by it, put aside, or as a configuration has it.
enum class Standing { still, parked, moved };
Standing standing_of(const FrameStep& of, const std::string& piece);

/// The greatest height at which anything is drawn in the raised views of a conversion.
Length highest_drawn(const Plan& plan, const Conversion& conversion);

/// What a wall and what its doors reach outside of it take beside the plan of a frame.
PaperLength beside_frame(const Plan& plan, Wall wall, std::int64_t ratio);

struct Frame {
  Group group;
  std::vector<Note> keys;  ///< names for which the drawing had no room
};
/// The step from above. All of its lettering stays in `area`.
Frame plan_frame(const FrameStep& of, const PlanView& view, const PaperBox& area);
/// An opening in the right or the front wall, as far as that wall is drawn; none of the walls cut away.
std::optional<PaperRing> seen_opening(const Plan& plan, const Opening& opening, const RaisedView& view,
                                      Length walls);
Group raised_frame(const FrameStep& of, const RaisedView& view);

}  // namespace berthwright
