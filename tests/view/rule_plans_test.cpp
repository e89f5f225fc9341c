#include "view/rule_plans.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>

#include "support/demos.h"
#include "support/sited_plan.h"
#include "view/siting_words.h"

namespace berthwright {
namespace {

// Of all rings, holes too.
double area_of(const std::vector<Path>& paths) {
  double all = 0;
  for (const Path& path : paths) {
    double doubled = 0;
    for (const PaperLine& line : lines(path))
      doubled +=
          static_cast<double>(line.from.x.micrometres()) * static_cast<double>(line.to.y.micrometres()) -
          static_cast<double>(line.to.x.micrometres()) * static_cast<double>(line.from.y.micrometres());
    all += std::abs(doubled) / 2;
  }
  return all;
}

// The same of a region, in square micrometres.
double area_of_rings(const Region& region) {
  double all = 0;
  const auto count = [&](const Polygon& ring) {
    all += static_cast<double>(Region(ring).area().doubled()) / 3200;
  };
  for (const Face& face : region.faces()) {
    count(face.outer);
    for (const Polygon& hole : face.holes) count(hole);
  }
  return all;
}

double around(const Region& region) {
  double length = 0;
  for (const Edge& edge : edges(region))
    length += std::hypot(static_cast<double>((edge.to.x - edge.from.x).ticks()),
                         static_cast<double>((edge.to.y - edge.from.y).ticks()));
  return length / 40;
}

// Corners are rounded to the micrometre of paper.
void expect_drawn(const Sheet& sheet, const std::string& cell, Ink ink, const Region& solved) {
  std::vector<Path> drawn;
  for (const Group& group : sheet.groups)
    if (group.title == cell)
      for (const Mark& mark : group.marks)
        if (const Path* path = std::get_if<Path>(&mark); path != nullptr && path->ink == ink)
          drawn.push_back(*path);
  const auto scale = static_cast<double>(sheet.scale);
  EXPECT_NEAR(area_of(drawn) * scale * scale, area_of_rings(solved), around(solved) * scale + 1)
      << sheet.title << ": " << cell;
}

std::string heading_of(SiteRule rule) {
  std::string words = rules_text(std::array{rule});
  words.front() = static_cast<char>(std::toupper(words.front()));
  return words;
}

TEST(Share, IsRoundedSoThatARuleTakesNoLessAndLeavesNoMore) {
  const Area whole = Area::rectangle(3_in, 1000_mm);
  EXPECT_EQ(share_text(Area::rectangle(1_in, 1000_mm), whole, Rounding::up), "34 %");
  EXPECT_EQ(share_text(Area::rectangle(1_in, 1000_mm), whole, Rounding::down), "33 %");
  EXPECT_EQ(share_text(Area{}, whole, Rounding::up), "nothing");
  EXPECT_EQ(share_text(Area::rectangle(one_tick, one_tick), whole, Rounding::up), "1 %");
  EXPECT_EQ(share_text(Area::rectangle(one_tick, one_tick), whole, Rounding::down), "less than 1 %");
  EXPECT_EQ(share_text(Area::rectangle(3_in, 999_mm), whole, Rounding::up), "more than 99 %");
  EXPECT_EQ(share_text(Area::rectangle(3_in, 999_mm), whole, Rounding::down), "99 %");
  EXPECT_EQ(share_text(whole, whole, Rounding::up), "all");
}

// A room of 120 x 76 in, 9120 sq in; a heater of 10 x 10 in, whose corner may be from 0 to 110 and 0 to 66;
// along the front wall a cushion of 20 in on the floor. The walls take 9120 - 110 * 66 = 1860: 20.4 %, up 21.
// The cushion takes 20 * 66 = 1320: 14.5 %, up 15. The published distance takes (20 + 36) * 66 = 3696: 40.5
// %, up 41. Left: (110 - 56) * 66 = 3564: 39.1 %, down 39; without the published distance what the cushion
// leaves, (110 - 20) * 66 = 5940: 65.1 %, down 65.
TEST(RulePlans, TellWhatEachRuleTakesByHand) {
  TrailerText text;
  text.pieces = {R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 14, "faces": "rear"})",
                 R"({"id": "C", "kind": "cushion", "length": 20, "width": 76, "thickness": 4})"};
  text.day = {R"({"piece": "C", "at": {"front": 0, "left": 0}})",
              R"({"piece": "H", "at": {"front": 90, "left": 30}})"};
  const SitedPlan plan(text);
  const Sheet& sheet = plan.of("day-site-rules");
  EXPECT_EQ(lettered(sheet, "The walls and the roof"), "The walls and the roof Takes 21 % of the room. ");
  EXPECT_EQ(lettered(sheet, "What stands there"), "What stands there Takes 15 % of the room. ");
  const std::string published = lettered(sheet, "The published distance");
  EXPECT_NE(published.find("Takes 41 % of the room."), std::string::npos) << published;
  EXPECT_NE(published.find("Without it all others would leave 65 %."), std::string::npos) << published;
  EXPECT_NE(lettered(sheet, "All rules together").find("They leave 39 %. P1: most to spare."),
            std::string::npos)
      << lettered(sheet, "All rules together");
  EXPECT_NE(noted(sheet).find("the maker's distances are not compared"), std::string::npos) << noted(sheet);
  EXPECT_EQ(noted(sheet).find("taken by the maker's distances"), std::string::npos);
  EXPECT_EQ(lettered(sheet, "The maker's distances"), "");
}

TEST(RulePlans, ThePlacesDrawnAreThoseThatWereSolved) {
  int cells = 0;
  for (const std::string& name : demo_names()) {
    const SitedPlan& plan = SitedPlan::demo(name);
    const Region room(plan.made.plan->interior.outline.polygon());
    for (const HeaterPlaces& heater : plan.heaters)
      for (const Siting& siting : heater.sitings) {
        std::vector<std::pair<std::string, const SiteScope*>> scopes;
        for (const SiteScope& scope : siting.scopes)
          scopes.emplace_back(scope.configurations.front()->id.text(), &scope);
        if (siting.together.configurations.size() > 1) scopes.emplace_back("together", &siting.together);
        for (const auto& [id, scope] : scopes) {
          const Sheet& sheet = plan.of(id + "-site-rules");
          const SitePlace& shown = scope->best ? *scope->best : *scope->reliefs.front().best;
          const SiteRegions& way = *std::ranges::find(scope->ways, shown.faces, &SiteRegions::faces);
          for (const auto& [rule, region] : way.forbidden) {
            Region taken = region;
            if (rule == SiteRule::room) taken = united(taken, without(room, *way.frame));
            taken = common(taken, room);
            expect_drawn(sheet, heading_of(rule), Ink::site_taken, taken);
            cells += !taken.empty();
          }
          expect_drawn(sheet, "All rules together", Ink::site_region, way.free);
          EXPECT_EQ(scope->has_place(),
                    lettered(sheet, "All rules together").find("They leave nothing") == std::string::npos);
        }
      }
  }
  EXPECT_GE(cells, 40);
}

TEST(RulePlans, WithoutARuleItsPlacesAreLeft) {
  const SitedPlan& plan = SitedPlan::demo("nuthatch");
  const Siting& siting = plan.heaters.at(0).sitings.at(0);
  for (const SiteRegions& way : siting.together.ways) {
    EXPECT_EQ(left_without(way, {}), way.free);
    EXPECT_EQ(left_without(way, std::array{SiteRule::three_feet, SiteRule::data_plate}), way.standing);
  }
  EXPECT_NE(lettered(plan.of("together-site-rules"), "The reach of its own cord")
                .find("Without it all others would leave 1"),
            std::string::npos);
}

TEST(SiteSheet, OnePlaceForAllConfigurationsHasASheetWhereThereAreSeveral) {
  const SitedPlan& dunnock = SitedPlan::demo("dunnock");
  const Sheet& both = dunnock.of("together-site");
  EXPECT_NE(both.title.find("day and night, site"), std::string::npos) << both.title;
  const SiteScope& together = dunnock.heaters.at(0).sitings.at(0).together;
  ASSERT_TRUE(together.has_place());
  double solved = 0;
  double length = 0;
  std::vector<Region> distinct;
  for (const SiteRegions& way : together.ways)
    if (!way.free.empty() && std::ranges::find(distinct, way.free) == distinct.end())
      distinct.push_back(way.free);
  for (const Region& region : distinct) {
    solved += area_of_rings(region);
    length += around(region);
  }
  double drawn = 0;
  for (const Path& path : laid_paths(both, Ink::site_region))
    if (path.stretches.front().radius == PaperLength{}) drawn += area_of({path});
  const auto scale = static_cast<double>(both.scale);
  EXPECT_NEAR(drawn * scale * scale, solved, length * scale + 1);
  // Of the two configurations the night is the nearer: its bed is made up.
  EXPECT_NE(lettered(both, "Names and figures").find("P1, night: 3' 7 1/8\" ≥ 3' 0\""), std::string::npos)
      << lettered(both, "Names and figures");
  EXPECT_FALSE(laid_paths(both, Ink::bed_outline).empty()) << "the bed of the night over the plan of the day";

  const SitedPlan& nuthatch = SitedPlan::demo("nuthatch");
  const Sheet& none = nuthatch.of("together-site");
  EXPECT_TRUE(laid_paths(none, Ink::site_region).empty());
  EXPECT_NE(noted(none).find("P1, the best without the reach of its own cord"), std::string::npos);
  EXPECT_NE(noted(none).find("short by 3/4\""), std::string::npos) << noted(none);
  EXPECT_EQ(SitedPlan::demo("sanderling").find("together-site"), nullptr) << "it is stowed by night";
}

TEST(RulePlans, WarnDeferAndExplainEverySign) {
  const std::vector<std::pair<Ink, std::string>> legend{
      {Ink::site_taken, "the rule takes these places"},
      {Ink::site_region, "the heater's corner may stand here"},
      {Ink::site_place, "the heater there, arrow at its front"},
      {Ink::bed_outline, "bed "},
      {Ink::quiet_overhead, "hangs above"},
      {Ink::quiet, "stands there"}};
  int seen = 0;
  for (const std::string& name : demo_names()) {
    const SitedPlan& plan = SitedPlan::demo(name);
    for (const Sheet& sheet : plan.drawn) {
      if (!sheet.file.ends_with("-site-rules")) continue;
      ++seen;
      const std::string notes = noted(sheet);
      const std::string signs = notes.substr(notes.find("Signs"));
      EXPECT_NE(notes.find("Warning"), std::string::npos) << sheet.title;
      EXPECT_NE(notes.find(std::string(deferral(plan.made.plan->english))), std::string::npos) << notes;
      for (const auto& [ink, words] : legend)
        EXPECT_EQ(laid_paths(sheet, ink).empty(), signs.find(words) == std::string::npos)
            << sheet.title << ": " << words;
    }
  }
  EXPECT_EQ(seen, 16);
}

// Nothing is drawn of a heater that is longer than its room.
TEST(RulePlans, AreNotDrawnWhereNoPlaceIsLeftWhateverIsSetAside) {
  TrailerText text;
  text.interior = R"({"length": 50, "width": 50, "height": 76})";
  text.pieces = {
      R"({"id": "H", "kind": "heater", "length": 60, "width": 60, "height": 10, "faces": "rear"})"};
  text.day = {R"({"piece": "H", "at": {"front": 0, "left": 0}, "on": "floor"})"};
  const SitedPlan plan(text);
  EXPECT_EQ(plan.find("day-site-rules"), nullptr);
  EXPECT_NE(noted(plan.of("day-site")).find("no place: the heater is larger than the room"),
            std::string::npos);
}

}  // namespace
}  // namespace berthwright
