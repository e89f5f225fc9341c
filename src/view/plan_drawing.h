#pragma once

#include <map>

#include <berthwright/solve/answer.h>

#include "view/chains.h"
#include "view/cut_marks.h"
#include "view/notes.h"

namespace berthwright {

/// What the drawing of one configuration is made from.
struct DrawnConfiguration {
  const Plan* plan = nullptr;
  const ConfigurationAnswer* answer = nullptr;
  std::span<const Finding> findings;  ///< of the whole plan
  std::vector<SectionCut> cuts;
  std::span<const Scale> only_scales{};  ///< to choose from; empty: those of the plan's unit
};

/// The chains of all four walls, set at one scale, and the room they take around the trailer.
struct Surroundings {
  std::map<Wall, std::vector<ChainSetting>> chains;
  std::map<Wall, Lanes> lanes;
  std::vector<CutMark> cuts;          ///< between wall and chains; they point into what is drawn
  std::vector<std::string> in_words;  ///< chains too crowded to be drawn, and what all of them leave out
};
Surroundings surroundings_of(const DrawnConfiguration& of, const std::vector<PlanThing>& things,
                             std::int64_t ratio);

/// One configuration drawn within `area`: its marks, and what the notes beside it must say.
struct PlanDrawing {
  std::vector<Group> groups;
  std::vector<Note> notes;
};
/// Notes that every such drawing has, wherever it is laid, in their order.
std::vector<Note> certain_notes(const DrawnConfiguration& of);
PlanDrawing plan_drawing(const DrawnConfiguration& of, const PlanView& view, const Surroundings& around,
                         const PaperBox& area);

}  // namespace berthwright
