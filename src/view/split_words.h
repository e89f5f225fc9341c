#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/split/split.h>

namespace berthwright {

/// Own unit first, whole inches rather than feet: the trade calls cushions by inches.
std::string inches_of(const Plan& plan, Length length);
/// The longer side first.
std::string box_text(const Plan& plan, Length a, Length b);
/// Where its low corner lies.
std::string corner_text(const Plan& plan, const Rect& at);

/// What a proposed cushion is called: a letter that nothing else of the plan has, and a name.
struct CushionName {
  std::string id;
  std::string name;  ///< "Left seat", "Left back", "Filler"
};

/// For the pieces of the split, in their order. `others` are ids that other bays' cushions take.
std::vector<CushionName> cushion_names(const Plan& plan, const NightBay& bay, const Split& split,
                                       const std::vector<std::string>& others = {});
/// Adds the ids that any proposal for the bay takes, so that those for other bays leave them alone whichever
/// is chosen.
void add_ids(std::vector<std::string>& others, const Plan& plan, const BaySplits& splits);

/// "Left bench, Right bench and Table, by night 6' 4" x 3' 2" at 14"…"
std::string bay_heading(const Plan& plan, const NightBay& bay);
/// How people sit by day, and what closes the bed.
std::string split_heading(const Plan& plan, const NightBay& bay, const Split& split);
/// Why it stands where it stands among the others.
std::string split_reasons(const Plan& plan, const Split& split);
/// Size, place by day, place by night.
std::string piece_sentence(const Plan& plan, const SplitPiece& piece, const CushionName& name);
/// What would close the bay.
std::string split_cure_sentence(const Plan& plan, const NightBay& bay, const SplitCure& cure);
std::string no_bay_sentence();
std::string off_level_sentence(const Plan& plan, const OffLevel& off);
/// What was tried, and what it stands on.
std::string split_limits_sentence(const Plan& plan, const SplitLimits& limits);
std::string split_effort_sentence(const BaySplits& splits);

}  // namespace berthwright
