#include "view/storyboard.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <tuple>
#include <utility>

#include <berthwright/view/sheets.h>

#include "support/convert_trailers.h"
#include "view/called.h"
#include "view/frame.h"
#include "view/step_words.h"

namespace berthwright {
namespace {

/// A plan stood up and its conversions, which point into it.
struct Told {
  explicit Told(const TrailerText& text)
      : plan(text.plan()), answer(answered(plan).value()), ways(conversions(plan).value()) {}
  Told(const Told&) = delete;
  Told& operator=(const Told&) = delete;

  std::vector<Sheet> sheets_of(const Conversion& conversion) const {
    std::vector<Sheet> all = sheets(plan, answer, {.conversions = std::span(&conversion, 1)});
    std::erase_if(all, [](const Sheet& sheet) { return !sheet.file.ends_with("-steps"); });
    return all;
  }

  Plan plan;
  Answer answer;
  std::vector<Conversion> ways;
};

const Group* group_of(const std::vector<Sheet>& sheets, const std::string& title) {
  for (const Sheet& sheet : sheets)
    for (const Group& group : sheet.groups)
      if (group.title == title) return &group;
  return nullptr;
}

const Group& plan_of_step(const std::vector<Sheet>& sheets, std::size_t number) {
  return *group_of(sheets, "Step " + std::to_string(number) + " from above");
}

std::vector<Path> paths_in(const Group& group, Ink ink) {
  std::vector<Path> out;
  for (const Mark& mark : group.marks)
    if (const Path* path = std::get_if<Path>(&mark); path != nullptr && path->ink == ink)
      out.push_back(*path);
  return out;
}

std::string words_in(const Group& group) {
  std::string words;
  for (const Mark& mark : group.marks)
    if (const Text* text = std::get_if<Text>(&mark)) words += (words.empty() ? "" : " ") + text->words;
  return words;
}

PaperBox bounds_in(const Path& path) {
  PaperRing ring{path.from};
  for (const Stretch& stretch : path.stretches) ring.push_back(stretch.to);
  return bounds(ring);
}

// Where the plan of this frame stands: the room begins at (0, 0), which is its lower left corner on paper.
PlanView view_of(const Group& frame, std::int64_t ratio) {
  const PaperBox wall = bounds_in(paths_in(frame, Ink::wall).at(0));
  return {ratio, {wall.low.x, wall.high.y}};
}

PaperBox on_paper(const PlanView& view, const Rect& rect) {
  const PaperPoint a = view(rect.low);
  const PaperPoint b = view(rect.high);
  return {{a.x, b.y}, {b.x, a.y}};
}

TEST(Storyboard, EveryStepHasItsFrameInReadingOrderOverAsManyPagesAsItTakes) {
  const Told told(dinette_with_cushions());
  for (const Conversion& way : told.ways) {
    ASSERT_EQ(way.steps.size(), 8U);
    const std::vector<Sheet> drawn = told.sheets_of(way);
    EXPECT_GE(drawn.size(), 2U);
    std::size_t next = 1;
    for (const Sheet& sheet : drawn) {
      PaperLength last;
      for (std::size_t i = 0; i < sheet.groups.size(); ++i) {
        const std::string step = "Step " + std::to_string(next);
        if (sheet.groups[i].title != step) continue;
        EXPECT_EQ(sheet.groups.at(i + 1).title, step + " from above");
        EXPECT_EQ(sheet.groups.at(i + 2).title, step + ", raised view");
        const PaperBox wall = bounds_in(paths_in(sheet.groups[i + 1], Ink::wall).at(0));
        EXPECT_GT(wall.low.y, last) << step;
        last = wall.high.y;
        EXPECT_NE(words_in(sheet.groups[i]).find(step + " of 8"), std::string::npos);
        ++next;
      }
    }
    EXPECT_EQ(next, 9U);
  }
}

TEST(Storyboard, TheSentenceIsTheOneThatIsPrinted) {
  const Told told(dinette());
  const std::vector<Sheet> drawn = told.sheets_of(told.ways[0]);
  for (std::size_t i = 1; i <= told.ways[0].steps.size(); ++i) {
    std::string said = words_in(*group_of(drawn, "Step " + std::to_string(i)));
    std::string sentence = step_sentence(told.plan, told.ways[0].steps[i - 1]);
    // Blanks within measures are kept from breaking on paper.
    for (std::string* text : {&said, &sentence})
      for (std::size_t at = 0; (at = text->find("\u00a0")) != std::string::npos;) text->replace(at, 2, " ");
    EXPECT_NE(said.find(sentence), std::string::npos) << said << "\n" << sentence;
  }
}

TEST(Storyboard, TheAccentLiesWhereThePieceComesToAndTheGhostWhereItWas) {
  const Told told(dinette_with_cushions());
  int accents = 0;
  int ghosts = 0;
  for (const Conversion& way : told.ways) {
    const std::vector<Sheet> drawn = told.sheets_of(way);
    const std::int64_t ratio = drawn.front().scale;
    for (std::size_t i = 1; i <= way.steps.size(); ++i) {
      const Step& step = way.steps[i - 1];
      const Group& frame = plan_of_step(drawn, i);
      const PlanView view = view_of(frame, ratio);
      const std::vector<Path> accent = paths_in(frame, Ink::moved_piece);
      ASSERT_EQ(accent.size(), step.to.stands_in_room() ? 1U : 0U);
      if (!accent.empty()) {
        ++accents;
        EXPECT_EQ(bounds_in(accent[0]), on_paper(view, step.to.pose.outline.bounds()));
      }
      const std::vector<Path> ghost = paths_in(frame, Ink::ghost);
      ASSERT_EQ(ghost.size(), step.from.stands_in_room() ? 1U : 0U);
      if (!ghost.empty()) {
        ++ghosts;
        EXPECT_EQ(bounds_in(ghost[0]), on_paper(view, step.from.pose.outline.bounds()));
      }
    }
  }
  EXPECT_GT(accents, 8);
  EXPECT_GT(ghosts, 8);
}

// What is built in so high is left off the raised views; a piece is not, a bunk's board above all.
TEST(Storyboard, APieceIsShownHoweverHighItIs) {
  TrailerText text = dinette();
  text.pieces.emplace_back(R"({"id": "tray", "kind": "board", "length": 10, "width": 20, "thickness": 1})");
  text.day.emplace_back(R"({"piece": "tray", "at": {"front": 2, "left": 28}, "base": 52})");
  text.night.emplace_back(R"({"piece": "tray", "at": {"front": 20, "left": 28}, "base": 52})");
  const Told told(text);
  const Conversion& way = told.ways[0];
  const auto step =
      std::ranges::find_if(way.steps, [](const Step& one) { return one.piece.text() == "tray"; });
  ASSERT_NE(step, way.steps.end());
  const std::string title = "Step " + std::to_string(step - way.steps.begin() + 1) + ", raised view";
  EXPECT_FALSE(paths_in(*group_of(told.sheets_of(way), title), Ink::moved_piece).empty());
}

// In both views: from the middle of where the piece was to the middle of where it is, the head at that end.
TEST(Storyboard, ArrowsRunFromTheGhostToTheAccent) {
  const Told told(dinette_with_cushions());
  int arrows = 0;
  for (const Conversion& way : told.ways) {
    const std::vector<Sheet> drawn = told.sheets_of(way);
    for (std::size_t i = 1; i <= way.steps.size(); ++i) {
      const Step& step = way.steps[i - 1];
      if (!step.from.stands_in_room() || !step.to.stands_in_room()) continue;
      const Group& frame = plan_of_step(drawn, i);
      const std::vector<Path> line = paths_in(frame, Ink::move_way);
      const PaperBox from = bounds_in(paths_in(frame, Ink::ghost).at(0));
      const PaperBox to = bounds_in(paths_in(frame, Ink::moved_piece).at(0));
      if (line.empty()) {
        EXPECT_LT(std::abs((from.centre().x - to.centre().x).micrometres()), 2500);
        EXPECT_LT(std::abs((from.centre().y - to.centre().y).micrometres()), 2500);
        continue;
      }
      ++arrows;
      const auto near = [](PaperPoint a, PaperPoint b) {
        return std::abs((a.x - b.x).micrometres()) <= 2 && std::abs((a.y - b.y).micrometres()) <= 2;
      };
      EXPECT_TRUE(near(line[0].from, from.centre()));
      EXPECT_TRUE(near(line[0].stretches.back().to, to.centre()));
      EXPECT_EQ(paths_in(frame, Ink::move_head).at(0).from, line[0].stretches.back().to);
      const Group& raised = *group_of(drawn, "Step " + std::to_string(i) + ", raised view");
      EXPECT_EQ(paths_in(raised, Ink::move_way).size(), 1U);
      EXPECT_EQ(paths_in(raised, Ink::move_head).size(), 1U);
    }
  }
  EXPECT_GT(arrows, 6);
}

// The way keeps to the movements: each corner of it is the middle of the piece in one of them.
TEST(Storyboard, TheWayGoesByTheMovementsOfTheStep) {
  const Told told(dinette());
  const Conversion& way = told.ways[0];
  for (std::size_t i = 1; i <= way.steps.size(); ++i) {
    const FrameStep of{&told.plan, &way, i};
    const std::vector<Point3> corners = way_of(of);
    ASSERT_GE(corners.size(), 2U);
    for (std::size_t k = 1; k + 1 < corners.size(); ++k)
      EXPECT_TRUE(std::ranges::any_of(of.step().motions, [&](const Motion& motion) {
        return std::ranges::any_of(std::array{&motion.before, &motion.after}, [&](const Solid* solid) {
          const Rect box = solid->outline().bounds();
          return corners[k] == Point3{{half(box.low.x + box.high.x), half(box.low.y + box.high.y)},
                                      half(solid->base() + solid->top())};
        });
      })) << i;
  }
}

// Pieces put aside keep their colour until they are taken up again, and are named, if only by a number.
TEST(Storyboard, PiecesPutAsideAreShownAndNamed) {
  const Told told(dinette_with_cushions());
  const Conversion& way = told.ways[0];
  const std::vector<Sheet> drawn = told.sheets_of(way);
  int parked = 0;
  for (std::size_t i = 2; i <= way.steps.size(); ++i) {
    const FrameStep of{&told.plan, &way, i};
    const Group& frame = plan_of_step(drawn, i);
    for (const PiecePlace& start : way.start) {
      const std::string& id = start.pose.piece.text();
      if (standing_of(of, id) != Standing::parked) continue;
      ++parked;
      const std::string said = words_in(frame) + words_in(*group_of(drawn, "Step " + std::to_string(i)));
      const std::string name = name_of(told.plan, id);
      const std::string first_word = name.substr(0, name.find(' '));
      EXPECT_NE(said.find(first_word), std::string::npos) << name << " in " << said;
      EXPECT_FALSE(paths_in(frame, Ink::parked_piece).empty());
    }
  }
  EXPECT_GT(parked, 0);
}

TEST(Storyboard, APairWithoutAnOrderHasAPageThatSaysSoAndNoFrame) {
  const Told told(dinette());
  Conversion none = told.ways[0];
  none.steps.clear();
  none.verdict = Conversion::Verdict::none;
  none.stuck = {{"table", true, {"left bench", "right bench"}, Length::inches(1, 4)}};
  Conversion undecided = none;
  undecided.verdict = Conversion::Verdict::undecided;
  undecided.stuck.clear();
  for (const Conversion* one : {&none, &undecided}) {
    const std::vector<Sheet> drawn = told.sheets_of(*one);
    ASSERT_EQ(drawn.size(), 1U);
    EXPECT_EQ(drawn[0].scale, 0);
    EXPECT_EQ(group_of(drawn, "Step 1"), nullptr);
    const std::string said = words_in(*group_of(drawn, "Notes"));
    EXPECT_NE(said.find("No step is drawn."), std::string::npos);
    EXPECT_NE(said.find(one == &none ? "none within" : "not decided"), std::string::npos) << said;
  }
}

TEST(Storyboard, NothingIsDrawnWhereNothingMoves) {
  TrailerText text = dinette();
  text.night = text.day;
  const Told told(text);
  for (const Conversion& way : told.ways) EXPECT_TRUE(told.sheets_of(way).empty());
}

Rect across(const Rect& rect) {
  return {{rect.low.x, 76_in - rect.high.y}, {rect.high.x, 76_in - rect.low.y}};
}
Solid across(const Solid& solid) {
  return {Region(across(solid.outline().bounds())), solid.base(), solid.top()};
}
PiecePlace across(PiecePlace spot) {
  if (spot.stands_in_room()) spot.pose.outline = Region(across(spot.pose.outline.bounds()));
  spot.reach = across(spot.reach);
  if (spot.pose.faces == Wall::left || spot.pose.faces == Wall::right)
    spot.pose.faces = spot.pose.faces == Wall::left ? Wall::right : Wall::left;
  return spot;
}

// The conversion of a plan whose things are all rectangles, left and right exchanged.
Conversion across(Conversion way, const Plan& mirrored) {
  way.from = mirrored.configuration(way.from->id.text());
  way.to = mirrored.configuration(way.to->id.text());
  for (PiecePlace& start : way.start) start = across(start);
  for (Step& step : way.steps) {
    step.from = across(step.from);
    step.to = across(step.to);
    for (std::optional<StandingPlace>* place : {&step.taking, &step.letting_go})
      if (*place) (*place)->square = across((*place)->square);
    for (Motion& motion : step.motions) {
      motion.before = across(motion.before);
      motion.after = across(motion.after);
      for (Solid& solid : motion.sweep) solid = across(solid);
    }
  }
  return way;
}

// Everything of the inks that tell a step, as boxes on paper from the corner of the room.
std::vector<std::pair<Ink, PaperBox>> told_in(const Group& frame, bool from_the_other_side) {
  const PaperBox wall = bounds_in(paths_in(frame, Ink::wall).at(0));
  std::vector<std::pair<Ink, PaperBox>> told;
  for (const Ink ink : {Ink::moved_piece, Ink::ghost, Ink::parked_piece, Ink::still_piece, Ink::person,
                        Ink::hidden_person, Ink::move_way})
    for (const Path& path : paths_in(frame, ink)) {
      const PaperBox box = bounds_in(path);
      const PaperLength low = from_the_other_side ? wall.high.y - box.high.y : box.low.y - wall.low.y;
      const PaperLength high = from_the_other_side ? wall.high.y - box.low.y : box.high.y - wall.low.y;
      told.push_back({ink, {{box.low.x - wall.low.x, low}, {box.high.x - wall.low.x, high}}});
    }
  std::ranges::sort(told, {}, [](const auto& one) {
    const PaperBox& box = one.second;
    // To a hundredth of a millimetre: places are rounded to paper once on each side.
    const auto rounded = [](PaperLength length) { return (length.micrometres() + 5) / 10; };
    return std::tuple(one.first, rounded(box.low.x), rounded(box.low.y), rounded(box.high.x),
                      rounded(box.high.y));
  });
  return told;
}

TEST(Storyboard, FramesOfTheMirroredTrailerAreMirrored) {
  const TrailerText text = dinette_with_cushions();
  const Told told(text);
  const Told other(text.mirrored());
  std::size_t shown = 0;
  for (const Conversion& way : told.ways) {
    const Conversion mirrored = across(way, other.plan);
    const std::vector<Sheet> drawn = told.sheets_of(way);
    const std::vector<Sheet> drawn_across = other.sheets_of(mirrored);
    ASSERT_EQ(drawn.front().scale, drawn_across.front().scale);
    for (std::size_t i = 1; i <= way.steps.size(); ++i) {
      const auto here = told_in(plan_of_step(drawn, i), false);
      const auto there = told_in(plan_of_step(drawn_across, i), true);
      ASSERT_EQ(here.size(), there.size()) << i;
      for (std::size_t k = 0; k < here.size(); ++k) {
        EXPECT_EQ(here[k].first, there[k].first) << i;
        const auto near = [](PaperLength a, PaperLength b) { return std::abs((a - b).micrometres()) <= 20; };
        EXPECT_TRUE(near(here[k].second.low.x, there[k].second.low.x) &&
                    near(here[k].second.low.y, there[k].second.low.y) &&
                    near(here[k].second.high.x, there[k].second.high.x) &&
                    near(here[k].second.high.y, there[k].second.high.y))
            << "step " << i << ", sign " << k;
      }
      shown += here.size();
    }
  }
  EXPECT_GT(shown, 60U);
}

TEST(Storyboard, WhatIsWrongMeanwhileStandsOnTheFrameThatBeginsIt) {
  TrailerText text = dinette_with_cushions();
  text.fixtures.push_back(
      R"({"id": "counter", "kind": "counter", "length": 40, "width": 24, "at": {"rear": 40, "left": 0},
          "top": 30})");
  text.fixtures.push_back(
      R"({"id": "stove", "kind": "heater", "length": 10, "width": 10, "at": {"rear": 90, "left": 0},
          "base": 0, "top": 20, "faces": "rear"})");
  const Told told(text);
  for (const Conversion& way : told.ways) {
    ASSERT_FALSE(way.meanwhile.empty());
    const std::vector<Sheet> drawn = told.sheets_of(way);
    for (std::size_t i = 1; i <= way.steps.size(); ++i) {
      const bool begins = std::ranges::find(way.meanwhile, i, &Meanwhile::from) != way.meanwhile.end();
      const std::string said = words_in(*group_of(drawn, "Step " + std::to_string(i)));
      EXPECT_EQ(said.find("Switch stove off and let it cool") != std::string::npos, begins) << said;
    }
  }
}

// `sheets` throws where lettering meets lettering, heavy lines or the edge of the page.
TEST(Storyboard, NamesOfAnyLengthKeepClear) {
  for (const std::size_t length : {1U, 40U, 200U}) {
    TrailerText text = dinette_with_cushions();
    for (std::string& piece : text.pieces) {
      std::string name;
      while (name.size() < length) name += name.size() % 9 == 8 ? " " : "w";
      piece.insert(1, R"("name": ")" + name + R"(", )");
    }
    const Told told(text);
    for (const Conversion& way : told.ways) EXPECT_FALSE(told.sheets_of(way).empty()) << length;
  }
}

}  // namespace
}  // namespace berthwright
