#pragma once

#include <berthwright/solve/site/siting.h>

#include "view/quiet_sheet.h"

namespace berthwright {

/// One question about places of a heater, and the configurations that it is about as they are drawn.
struct SitedScope {
  std::vector<const DrawnConfiguration*> in;  ///< in the order of the scope; at least one
  const HeaterPlaces* heater = nullptr;
  const Siting* siting = nullptr;
  const SiteScope* scope = nullptr;

  const Plan& plan() const { return *in.front()->plan; }
  /// Asked of several configurations at once.
  bool together() const { return scope->configurations.size() > 1; }
};

/// Of each heater on each surface: every configuration by itself, then all at once where that is asked of
/// several. Points into its arguments.
std::vector<SitedScope> sited_scopes(const std::vector<DrawnConfiguration>& drawn,
                                     std::span<const HeaterPlaces> heaters);

/// One place that a sheet shows, with all that it is the best of.
struct ShownPlace {
  std::string letter;  ///< "P1"
  const SitePlace* place = nullptr;
  std::vector<std::string> best_of;
};

/// Each place once, however many things it is the best of: of all places or, where none is free, without the
/// rules that leave none; and those that are the best in reach of an outlet.
enum class Outlets { left_out, too };
std::vector<ShownPlace> shown_places(const Plan& plan, const SiteScope& scope, Outlets outlets);

/// The heater there, an arrow at its front.
std::vector<Path> place_paths(const SitePlace& place, const PlanView& view);
/// A wish for its letter on it.
LabelWish letter_wish(const DrawnConfiguration& of, const PlanView& view, const ShownPlace& shown);

/// "P1, most to spare of all places: its nearest sides… 3' 7" from Front back…".
std::string shown_text(const SitedScope& of, const ShownPlace& shown);
/// Of each yardstick what it is kept by or fails by; each with its configuration where there are several.
std::string margins_text(const SitedScope& of, const SitePlace& place);

/// "By day (the plan stows it there)", "One place for day and night".
std::string asked_of(const SitedScope& of);

/// How the configurations are called in the title of a sheet, and in the name of its file.
std::string when_title(const SitedScope& of);
std::string when_id(const SitedScope& of);
/// "Heater, on the floor".
std::string subject_of(const SitedScope& of);

/// The beds of all configurations, and their names.
std::vector<Group> bedding_groups(const SitedScope& of, const PlanView& view);

}  // namespace berthwright
