#include <gtest/gtest.h>

#include <algorithm>
#include <list>
#include <sstream>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>
#include <berthwright/write/outputs.h>

#include "support/demos.h"
#include "support/plan_builder.h"
#include "support/trailer_text.h"
#include "support/yard_plans.h"
#include "view/siting_words.h"

namespace berthwright {
namespace {

std::vector<HeaterPlaces> sited_heaters(const Plan& plan) { return heater_places(plan, {}).value(); }

/// A plan and the places of its heaters, which point into it.
struct SitedHeaters {
  explicit SitedHeaters(Plan made) : plan(std::move(made)), heaters(sited_heaters(plan)) {}
  SitedHeaters(const SitedHeaters&) = delete;
  SitedHeaters& operator=(const SitedHeaters&) = delete;
  Plan plan;
  std::vector<HeaterPlaces> heaters;
};

const SitedHeaters& sited_demo(const std::string& name) {
  static MadeOfDemos<SitedHeaters> made;
  return made.of(name);
}

const std::vector<const SitedHeaters*>& plans_with_heaters() {
  static const std::list<SitedHeaters> small = [] {
    std::list<SitedHeaters> made;
    for (const std::string& text : {plan_with_room_for_a_heater(), plan_without_room_for_a_heater(),
                                    plan_with_a_heater_without_plate(), plan_that_does_not()})
      made.emplace_back(plan_from(text));
    return made;
  }();
  static const std::vector<const SitedHeaters*> all = [] {
    std::vector<const SitedHeaters*> made;
    for (const std::string& name : demo_names()) made.push_back(&sited_demo(name));
    for (const SitedHeaters& one : small) made.push_back(&one);
    return made;
  }();
  return all;
}

std::size_t columns_of(const std::string& line) {
  return static_cast<std::size_t>(
      std::ranges::count_if(line, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

TEST(HeaterWords, KeepToTheColumnsAndEndWithTheCaution) {
  for (const SitedHeaters* made : plans_with_heaters()) {
    SCOPED_TRACE(made->plan->title.title);
    const std::string text = heater_text(made->plan, made->heaters);
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) EXPECT_LE(columns_of(line), 100U) << line;
    EXPECT_TRUE(text.ends_with("Measure before you cut.\n")) << text;
    for (const char* verdict : {"safe", "Safe", "approved"}) EXPECT_EQ(text.find(verdict), std::string::npos);
  }
}

// Distances are printed down, what is asked up, and a region's ends inward.
TEST(HeaterWords, RoundTowardSafety) {
  const Plan plan = plan_from(plan_with_room_for_a_heater());
  std::vector<HeaterPlaces> heaters = sited_heaters(plan);
  SitePlace& best = heaters[0].sitings[0].together.best.value();
  SiteMargin& margin = best.margins.front();
  margin.asked = 36_in + one_tick;
  margin.margin = 1_in - one_tick;
  heaters[0].sitings[0].scopes.clear();
  const Region odd(Rect{{one_tick, one_tick}, {3_in - one_tick, 2_in - one_tick}});
  for (SiteRegions& regions : heaters[0].sitings[0].together.ways) regions.free = odd;
  heaters[0].sitings[0].scopes.push_back(heaters[0].sitings[0].together);
  const std::string text = heater_text(plan, heaters);
  EXPECT_NE(text.find("published distance 3' 0 1/16\""), std::string::npos) << text;
  EXPECT_NE(text.find("15/16\" (25.3 mm) to spare"), std::string::npos) << text;
  EXPECT_NE(text.find("1/16\" (0.1 mm) to 2 15/16\""), std::string::npos) << text;
  EXPECT_NE(text.find("1/16\" (0.1 mm) to 1 15/16\""), std::string::npos) << text;
}

TEST(HeaterWords, NameWhoSaysSoAndThePlansOwnNumber) {
  std::string text = plan_with_room_for_a_heater();
  const Plan published = plan_from(text);
  EXPECT_NE(heater_text(published, sited_heaters(published)).find("CPSC space-heater tips"),
            std::string::npos);
  const std::string none = "\"rules\": {}";
  text.replace(text.find(none), none.size(),
               R"("rules": {"heat.three-feet": {"limit": 40, "reason": "two dogs"}})");
  const Plan plan = plan_from(text);
  const std::string told = heater_text(plan, sited_heaters(plan));
  EXPECT_NE(told.find("3' 4\" (1016 mm)"), std::string::npos) << told;
  EXPECT_NE(told.find("two dogs"), std::string::npos) << told;
}

TEST(HeaterWords, JsonHoldsTheSameNumbers) {
  for (const SitedHeaters* made : plans_with_heaters()) {
    SCOPED_TRACE(made->plan->title.title);
    const std::vector<HeaterPlaces>& heaters = made->heaters;
    const auto json = nlohmann::json::parse(heater_json(made->plan, heaters));
    EXPECT_EQ(json["exit_code"], exit_code(heaters));
    ASSERT_EQ(json["heaters"].size(), heaters.size());
    for (std::size_t i = 0; i < heaters.size(); ++i) {
      const auto& told = json["heaters"][i];
      EXPECT_EQ(told["heater"], heaters[i].heater);
      const SiteScope& together = heaters[i].sitings[0].together;
      const auto& scope = told["sitings"][0]["together"];
      EXPECT_EQ(scope["best"].is_null(), !together.has_place());
      EXPECT_EQ(scope["reliefs"].size(), together.reliefs.size());
      if (together.best && !together.best->margins.empty()) {
        const double mm = static_cast<double>(together.best->margins[0].margin.ticks()) / ticks_per_mm;
        EXPECT_DOUBLE_EQ(scope["best"]["margins"][0]["margin_mm"].get<double>(), mm);
      }
      for (std::size_t way = 0; way < 4; ++way)
        EXPECT_EQ(scope["ways"][way]["free"].size(), together.ways[way].free.faces().size());
      EXPECT_EQ(told["stowing"].size(), heaters[i].stowing.size());
    }
  }
}

// What README quotes of the answer, between its first "```" after "A part:" and the next, stands there in
// order.
TEST(HeaterWords, AreWhatTheReadmeQuotes) {
  const std::string readme = repository_text("README.md");
  const std::string printed = repository_text("out/sanderling/heater.txt");
  std::size_t at = readme.find("A part:\n\n```\n");
  ASSERT_NE(at, std::string::npos);
  at = readme.find("```\n", at) + 4;
  std::size_t found = 0;
  int lines = 0;
  for (std::size_t end = readme.find('\n', at); readme.compare(at, 3, "```") != 0;
       at = end + 1, end = readme.find('\n', at)) {
    const std::string line = readme.substr(at, end + 1 - at);
    if (line == "…\n") continue;
    found = printed.find(line, found);
    ASSERT_NE(found, std::string::npos) << line;
    ++lines;
  }
  EXPECT_GT(lines, 10);
}

TEST(HeaterWords, SayWhatStowsAndWhatDoesNot) {
  const SitedHeaters& sanderling = sited_demo("sanderling");
  const std::string text = heater_text(sanderling.plan, sanderling.heaters);
  EXPECT_NE(text.find("Galley drawer (the plan stows it here: night and road): the heater fits"), std::string::npos)
      << text;
  const SitedHeaters& nuthatch = sited_demo("nuthatch");
  EXPECT_NE(heater_text(nuthatch.plan, nuthatch.heaters).find("Galley drawer: it does not fit"),
            std::string::npos);
}

// It lacks 1/64 in across, which is 0.4 mm, and nothing along and up.
TEST(HeaterWords, NameOnlyTheSidesThatAreShort) {
  const Plan plan = small_plan(R"("configurations": {"day": []})");
  StowFit fit;
  fit.place = "drawer";
  fit.inside = InsideBox{11_in, 17_in, 8_in};
  fit.clearance = {Length{}, -Length::inches(1, 64), 2_in};
  EXPECT_NE(stow_sentence(plan, fit).find(", short by 1/16\" (0.4 mm) across."), std::string::npos)
      << stow_sentence(plan, fit);
  fit.clearance = {-1_in, 2_in, -2_in};
  EXPECT_NE(stow_sentence(plan, fit).find(", short by 1\" (25.4 mm) along and 2\" (50.8 mm) up."),
            std::string::npos)
      << stow_sentence(plan, fit);
}

}  // namespace
}  // namespace berthwright
