#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include <berthwright/solve/way/walkways.h>
#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>
#include <berthwright/write/outputs.h>

#include "support/cord_trailers.h"
#include "support/demos.h"
#include "support/sited_plan.h"
#include "support/way_trailers.h"
#include "view/paper.h"
#include "view/scale.h"

namespace berthwright {
namespace {

// Micrometres in nature of a length on that sheet.
double natural(const Sheet& sheet, PaperLength length) {
  return static_cast<double>(length.micrometres() * sheet.scale);
}

double distance(PaperPoint a, PaperPoint b) {
  return std::hypot(static_cast<double>((a.x - b.x).micrometres()),
                    static_cast<double>((a.y - b.y).micrometres()));
}

// From a place to the box, both on paper.
double distance(PaperPoint p, const PaperBox& outline) {
  const PaperPoint nearest{std::clamp(p.x, outline.low.x, outline.high.x),
                           std::clamp(p.y, outline.low.y, outline.high.y)};
  return distance(p, nearest);
}

// A heater of 10 x 10 in, 60 to 70 in from the front and 30 to 40 from the left, in a room of 120 x 76 in.
TEST(HeatSheet, TheEdgeOfThePublishedZoneIsThreeFeetFromTheHeater) {
  const SitedPlan plan(cord_trailer("48"));
  const Sheet& sheet = plan.of("day-heat");
  const PaperBox heater = reach_of(laid_paths(sheet, Ink::appliance).at(0));
  EXPECT_NEAR(natural(sheet, heater.width()), 254'000, static_cast<double>(sheet.scale));
  const std::vector<Path> edges = laid_paths(sheet, Ink::zone_published);
  ASSERT_FALSE(edges.empty());
  int corners = 0;
  for (const Path& edge : edges)
    for (const PaperLine& line : lines(edge)) {
      ++corners;
      // 914.4 mm; polygons around circles are too large by at most 0.13 %, paper is rounded to a micrometre.
      const double far = distance(line.to, heater) * static_cast<double>(sheet.scale);
      EXPECT_GE(far, 914'400 - 2.0 * static_cast<double>(sheet.scale));
      EXPECT_LE(far, 914'400 * 1.0014 + 2.0 * static_cast<double>(sheet.scale));
    }
  EXPECT_GT(corners, 20);
  EXPECT_NE(lettered(sheet, "Names and figures").find("published, 3' 0\""), std::string::npos);
  EXPECT_NE(noted(sheet).find("nearer than the published distance"), std::string::npos);
}

// With those that go on on a page of their own.
std::string noted_on_pages(const SitedPlan& plan, const Sheet& sheet) {
  const Sheet* more = plan.find(sheet.file.substr(sheet.file.find('-') + 1) + "-notes");
  return noted(sheet) + (more == nullptr ? "" : " " + noted(*more));
}

TEST(HeatSheet, LinesEndAtBothNearestPointsAndBearTheFigureAndWhatItIsComparedWith) {
  for (const std::string& name : demo_names()) {
    const SitedPlan& plan = SitedPlan::demo(name);
    for (const ConfigurationAnswer& answer : plan.made.answer.configurations) {
      const Sheet* sheet = plan.find(answer.configuration->id.text() + "-heat");
      if (sheet == nullptr) continue;
      const Path wall = laid_paths(*sheet, Ink::wall).at(0);
      const PaperBox room = reach_of(wall);
      const auto on_sheet = [&](Point p) {
        return PaperPoint{room.low.x + on_paper(p.x, sheet->scale),
                          room.high.y - on_paper(p.y, sheet->scale)};
      };
      std::set<std::string> sources;
      for (const HeatDistance& distance_told : answer.heat) sources.insert(distance_told.source);
      const std::vector<Path> drawn = laid_paths(*sheet, Ink::heat_line);
      EXPECT_GE(drawn.size(), sources.size());
      for (const Path& line : drawn) {
        const bool told = std::ranges::any_of(answer.heat, [&](const HeatDistance& one) {
          const auto ends = [&](const Nearest& nearest) {
            return distance(on_sheet(nearest.from.plan), line.from) < 3 &&
                   distance(on_sheet(nearest.to.plan), line.stretches.front().to) < 3;
          };
          return ends(one.nearest) || (one.plate_margin && ends(one.plate_nearest));
        });
        EXPECT_TRUE(told) << sheet->title;
      }
      const std::string words = lettered(*sheet, "Names and figures") + noted_on_pages(plan, *sheet);
      EXPECT_TRUE(words.find("≥") != std::string::npos || words.find("<") != std::string::npos)
          << sheet->title;
    }
  }
}

TEST(HeatSheet, WhatIsUnknownIsSaidToBe) {
  const SitedPlan& dunnock = SitedPlan::demo("dunnock");
  const Sheet& none = dunnock.of("night-heat");
  EXPECT_NE(noted(none).find("data plate: unknown, the plan does not give it"), std::string::npos);
  EXPECT_TRUE(laid_paths(none, Ink::zone_plate).empty());
  EXPECT_EQ(noted(none).find("nearer than the data plate asks"), std::string::npos);
  const SitedPlan& nuthatch = SitedPlan::demo("nuthatch");
  const Sheet& part = nuthatch.of("day-heat");
  EXPECT_FALSE(laid_paths(part, Ink::zone_plate).empty());
  EXPECT_NE(lettered(part, "Names and figures").find("sides unknown"), std::string::npos);
}

TEST(HeatSheet, TheCordLiesWhereItWasFollowed) {
  const SitedPlan plan(cord_trailer("48"));
  const Sheet& sheet = plan.of("day-heat");
  const PluggedIn& plugged = plan.answer("day").plugged.front();
  ASSERT_TRUE(plugged.run->reached());
  const Path cord = laid_paths(sheet, Ink::cord).at(0);
  double long_on_paper = 0;
  for (const PaperLine& line : lines(cord)) long_on_paper += distance(line.from, line.to);
  double over_the_floor = 0;
  for (std::size_t i = 1; i < plugged.run->path.size(); ++i) {
    const Point a = plugged.run->path[i - 1];
    const Point b = plugged.run->path[i];
    over_the_floor +=
        std::hypot(static_cast<double>((b.x - a.x).ticks()), static_cast<double>((b.y - a.y).ticks())) / 40;
  }
  EXPECT_NEAR(long_on_paper * static_cast<double>(sheet.scale), over_the_floor,
              10.0 * static_cast<double>(sheet.scale));
  EXPECT_NE(lettered(sheet, "Names and figures").find("cord must be"), std::string::npos);
  EXPECT_NE(noted(sheet).find("cord, over the floor"), std::string::npos);
}

TEST(HeatSheet, IsNotDrawnWhereNothingGivesHeat) {
  const SitedPlan plan(way_trailer());
  EXPECT_EQ(plan.find("day-heat"), nullptr);
  EXPECT_EQ(plan.find("day-site"), nullptr);
  EXPECT_NE(plan.find("night-ways"), nullptr);
}

// The way of `way_trailer` with a wall across the trailer that leaves 30 in free at the left one.
TrailerText passage_of_30() {
  TrailerText text = way_trailer();
  text.fixtures.push_back(R"({"id": "screen", "name": "Screen", "kind": "wall", "length": 20, "width": 46,
                              "at": {"front": 50, "right": 0}, "top": 70})");
  text.openings[0] = R"({"id": "door", "name": "Door", "kind": "door", "wall": "right", "from_front": 80,
                         "width": 34, "height": 68, "sill": 2, "opens": "out", "hinge": "rear"})";
  return text;
}

TEST(WaySheet, TheBandIsAsWideAsTheWay) {
  const SitedPlan plan(passage_of_30());
  const WayOut& way = *widest(plan.answer("night").beds.at(0).exits.ways);
  ASSERT_EQ(way.width, 30_in);
  const Sheet& sheet = plan.of("night-ways");
  const std::vector<Path> bands = laid_paths(sheet, Ink::way_band);
  ASSERT_EQ(bands.size(), 1U);
  // Along the screen, from 50 to 70 in, the band runs between the left wall and the screen.
  const PaperBox room = reach_of(laid_paths(sheet, Ink::wall).at(0));
  const PaperLength x = room.low.x + on_paper(60_in, sheet.scale);
  std::vector<PaperLength> crossings;
  for (const PaperLine& line : lines(bands.front()))
    if ((line.from.x < x) != (line.to.x < x)) {
      EXPECT_EQ(line.from.y, line.to.y);
      crossings.push_back(line.from.y);
    }
  ASSERT_EQ(crossings.size(), 2U);
  const PaperLength wide =
      crossings[0] < crossings[1] ? crossings[1] - crossings[0] : crossings[0] - crossings[1];
  EXPECT_NEAR(natural(sheet, wide), 762'000, 2.0 * static_cast<double>(sheet.scale));
  // And the pinch is as long.
  const Path pinch = laid_paths(sheet, Ink::pinch).at(0);
  EXPECT_NEAR(distance(pinch.from, pinch.stretches.front().to) * static_cast<double>(sheet.scale), 762'000,
              2.0 * static_cast<double>(sheet.scale));
  const std::string names = lettered(sheet, "Names and figures");
  EXPECT_NE(names.find("2' 6\""), std::string::npos) << names;
  EXPECT_NE((names + noted(sheet)).find("Screen"), std::string::npos) << names;
  EXPECT_NE(noted(sheet).find("widest way out"), std::string::npos);
}

// Between the dinette bed and the wardrobe there is 1 in: the disc's edge reaches 2 1/4 in down there, and
// nobody walks in it. At most the 1 in that a core keeps off the border is drawn of it.
TEST(WaySheet, LeavesOffWhatIsAsNarrowAsALine) {
  const SitedPlan& plan = SitedPlan::demo("dunnock");
  const Sheet& sheet = plan.of("night-ways");
  const Placed& wardrobe = *plan.answer("night").arrangement.find("wardrobe");
  const Rect box = wardrobe.solid.outline().bounds();
  const PaperBox room = reach_of(laid_paths(sheet, Ink::wall).at(0));
  const PaperLength top = room.high.y - on_paper(box.high.y, sheet.scale);
  const PaperLength left = room.low.x + on_paper(box.low.x, sheet.scale);
  PaperLength lowest;
  for (const PaperLine& line : lines(laid_paths(sheet, Ink::way_band).at(0)))
    if (line.to.x <= left) lowest = std::max(lowest, line.to.y);
  EXPECT_LE(natural(sheet, lowest - top), 25'400 + 2.0 * static_cast<double>(sheet.scale));
}

TEST(WaySheet, BedsPinchedAtOnePlaceShareOneFigure) {
  const SitedPlan& plan = SitedPlan::demo("sanderling");
  const Sheet& sheet = plan.of("night-ways");
  EXPECT_EQ(laid_paths(sheet, Ink::way_band).size(), 2U);
  EXPECT_EQ(laid_paths(sheet, Ink::pinch).size(), 1U);
  EXPECT_NE(lettered(sheet, "Names and figures").find("Front bed and Rear bed: 2' 2\" ≥ 1' 6\": met"),
            std::string::npos)
      << lettered(sheet, "Names and figures");
}

TEST(WaySheet, OnlyOpeningsThatServeBearTheGreenSign) {
  const SitedPlan& sanderling = SitedPlan::demo("sanderling");
  // The door and the rear window; the front one does not open and is no way out.
  EXPECT_EQ(laid_paths(sanderling.of("night-ways"), Ink::sign_exit).size(), 2U);
  EXPECT_TRUE(laid_paths(sanderling.of("night-ways"), Ink::sign_shut).empty());
  EXPECT_EQ(laid_paths(sanderling.of("night-ways"), Ink::sign_alarm).empty(), false);
  TrailerText small = way_trailer();
  small.openings[1] =
      R"({"id": "window", "name": "Window", "kind": "window", "wall": "left", "from_front": 30,
                          "width": 20, "height": 14, "sill": 34, "opens": "out", "escape": true})";
  const SitedPlan plan(small);
  EXPECT_EQ(laid_paths(plan.of("night-ways"), Ink::sign_exit).size(), 1U);
  EXPECT_EQ(laid_paths(plan.of("night-ways"), Ink::sign_shut).size(), 3U)
      << "a square with its two diagonals";
  EXPECT_NE(noted(plan.of("night-ways")).find("does not count as a way out"), std::string::npos);
}

TEST(WaySheet, WithoutADoorOrABedItSaysSo) {
  TrailerText shut = way_trailer();
  shut.openings.erase(shut.openings.begin());
  const SitedPlan no_door(shut);
  EXPECT_NE(noted(no_door.of("night-ways")).find("no door that opens, so no way was measured"),
            std::string::npos);
  EXPECT_TRUE(laid_paths(no_door.of("night-ways"), Ink::way_band).empty());
  EXPECT_EQ(noted(no_door.of("night-ways")).find("widest way out,"), std::string::npos);
  const SitedPlan plan(way_trailer());
  EXPECT_NE(noted(plan.of("day-ways")).find("No bed is made here, so no way was measured"),
            std::string::npos);
}

// Twice the area within a closed path, in square micrometres of paper.
double doubled_area(const Path& path) {
  double sum = 0;
  for (const PaperLine& line : lines(path))
    sum += static_cast<double>(line.from.x.micrometres()) * static_cast<double>(line.to.y.micrometres()) -
           static_cast<double>(line.to.x.micrometres()) * static_cast<double>(line.from.y.micrometres());
  return std::abs(sum);
}

TEST(SiteSheet, TheRegionsDrawnAreThoseThatWereSolved) {
  int regions_seen = 0;
  for (const std::string& name : demo_names()) {
    const SitedPlan& plan = SitedPlan::demo(name);
    for (const HeaterPlaces& heater : plan.heaters)
      for (const Siting& siting : heater.sitings)
        for (const SiteScope& scope : siting.scopes) {
          const Sheet& sheet = plan.of(scope.configurations.front()->id.text() + "-site");
          std::vector<Region> distinct;
          for (const SiteRegions& regions : scope.ways)
            if (!regions.free.empty() && std::ranges::find(distinct, regions.free) == distinct.end())
              distinct.push_back(regions.free);
          double solved = 0;
          double around = 0;
          for (const Region& region : distinct) {
            solved += static_cast<double>(region.area().doubled()) / 1600;
            for (const Edge& edge : edges(region))
              around += std::hypot(static_cast<double>((edge.to.x - edge.from.x).ticks()),
                                   static_cast<double>((edge.to.y - edge.from.y).ticks())) /
                        40;
            regions_seen += 1;
          }
          double drawn = 0;
          for (const Path& path : laid_paths(sheet, Ink::site_region))
            if (path.stretches.front().radius == PaperLength{}) drawn += doubled_area(path);
          const double scale = static_cast<double>(sheet.scale);
          // Corners are rounded to the micrometre of paper; no demo has holes in its regions.
          EXPECT_NEAR(drawn * scale * scale, solved, around * scale + 1) << sheet.title;
          EXPECT_EQ(scope.has_place(), drawn > 0) << sheet.title;
        }
  }
  EXPECT_GE(regions_seen, 3);
}

TEST(SiteSheet, TheBestPlaceIsDrawnAsLargeAsTheHeaterWhereItStands) {
  const SitedPlan& plan = SitedPlan::demo("nuthatch");
  const SiteScope& scope = plan.heaters.at(0).sitings.at(0).scopes.at(0);
  const Sheet& sheet = plan.of("day-site");
  const PaperBox room = reach_of(laid_paths(sheet, Ink::wall).at(0));
  const PaperBox outline = reach_of(laid_paths(sheet, Ink::site_place).at(0));
  const Rect& best = scope.best->box;
  const auto at = [&](Length length) { return natural(sheet, on_paper(length, sheet.scale)); };
  EXPECT_NEAR(natural(sheet, outline.low.x - room.low.x), at(best.low.x),
              2.0 * static_cast<double>(sheet.scale));
  EXPECT_NEAR(natural(sheet, room.high.y - outline.high.y), at(best.low.y),
              2.0 * static_cast<double>(sheet.scale));
  EXPECT_NEAR(natural(sheet, outline.width()), at(best.width()), 2.0 * static_cast<double>(sheet.scale));
  EXPECT_NEAR(natural(sheet, outline.height()), at(best.height()), 2.0 * static_cast<double>(sheet.scale));
  EXPECT_NE(noted(sheet).find("P1, most to spare of all places"), std::string::npos);
}

TEST(SiteSheet, AnEmptyRegionSaysWhichRulesEmptyItAndTheBestThatCanBeHad) {
  const SitedPlan& plan = SitedPlan::demo("sanderling");
  for (const char* end : {"day-site", "night-site"}) {
    const Sheet& sheet = plan.of(end);
    EXPECT_TRUE(laid_paths(sheet, Ink::site_region).empty());
    const std::string notes = noted(sheet);
    EXPECT_NE(
        notes.find("no place is left unless one sets aside the published distance and the maker's distances"),
        std::string::npos)
        << notes;
    EXPECT_NE(notes.find("P1, the best without the published distance"), std::string::npos);
    EXPECT_NE(notes.find("No place keeps every figure."), std::string::npos);
    EXPECT_EQ(notes.find("the heater's corner may stand here"), std::string::npos);
    EXPECT_FALSE(laid_paths(sheet, Ink::site_place).empty());
    EXPECT_NE(lettered(sheet, "Names and figures").find("P1"), std::string::npos);
  }
}

TEST(SiteSheet, IsOnlyDrawnOfHeatersThatWereSited) {
  const SitedPlan& plan = SitedPlan::demo("sanderling");
  const std::vector<Sheet> unsited = sheets(plan.made.plan, plan.made.answer);
  EXPECT_TRUE(
      std::ranges::none_of(unsited, [](const Sheet& sheet) { return sheet.file.ends_with("-site"); }));
  EXPECT_EQ(unsited.size() + 4, plan.drawn.size())
      << "by day and by night, each with its rules; nobody stands a heater on the road";
}

// Every sign on these sheets has its words in the legend, none says what is not there, each warns and defers.
TEST(QuietSheets, WarnDeferAndExplainEverySign) {
  const std::vector<std::pair<Ink, std::string>> legend{
      {Ink::zone_published, "nearer than the published distance"},
      {Ink::zone_plate, "nearer than the data plate asks"},
      {Ink::cord, "cord, over the floor"},
      {Ink::site_region, "the heater's corner may stand here"},
      {Ink::site_place, "the heater there, arrow at its front"},
      {Ink::way_band, "widest way out, as wide as it is"},
      {Ink::pinch, "where it is narrowest"},
      {Ink::sign_exit, "opening to get out by"},
      {Ink::sign_shut, "does not serve from here"},
      {Ink::heat_line, "distance to heat"},
      {Ink::quiet, "stands there"}};
  int seen = 0;
  for (const std::string& name : demo_names()) {
    const SitedPlan& plan = SitedPlan::demo(name);
    for (const Sheet& sheet : plan.drawn) {
      if (!sheet.file.ends_with("-heat") && !sheet.file.ends_with("-site") && !sheet.file.ends_with("-ways"))
        continue;
      ++seen;
      const std::string notes = noted_on_pages(plan, sheet);
      EXPECT_NE(notes.find("Warning"), std::string::npos) << sheet.title;
      EXPECT_NE(notes.find(std::string(deferral(plan.made.plan->english))), std::string::npos) << notes;
      for (const auto& [ink, words] : legend)
        EXPECT_EQ(laid_paths(sheet, ink).empty(), notes.find(words) == std::string::npos)
            << sheet.title << ": " << words;
      EXPECT_EQ(lettering_faults(sheet), std::vector<std::string>{});
    }
  }
  EXPECT_GE(seen, 15);
}

}  // namespace
}  // namespace berthwright
