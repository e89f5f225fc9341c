#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <berthwright/solve/site/siting.h>
#include <berthwright/view/sheets.h>

#include "support/trailer_text.h"
#include "view/paper.h"

namespace berthwright {

/// A plan with its heaters sited, and all its sheets.
struct SitedPlan {
  explicit SitedPlan(Plan plan);
  explicit SitedPlan(const TrailerText& text) : SitedPlan(text.plan()) {}
  /// Made once in a process.
  static const SitedPlan& demo(const std::string& name);
  SitedPlan(const SitedPlan&) = delete;
  SitedPlan& operator=(const SitedPlan&) = delete;

  /// The sheet whose file ends so: "night-heat"; nullptr: there is none.
  const Sheet* find(std::string_view end) const;
  /// The same; throws where there is none.
  const Sheet& of(std::string_view end) const;
  const ConfigurationAnswer& answer(std::string_view id) const;

  Answered made;
  std::vector<HeaterPlaces> heaters;
  std::vector<Sheet> drawn;
};

/// On the drawing, not among the notes.
std::vector<Path> laid_paths(const Sheet& sheet, Ink ink);
/// All lettering of the groups so called, in order, with plain blanks.
std::string lettered(const Sheet& sheet, std::string_view title);
/// That of the notes.
std::string noted(const Sheet& sheet);
PaperBox reach_of(const Path& path);

}  // namespace berthwright
