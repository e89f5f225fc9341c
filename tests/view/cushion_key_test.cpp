#include "view/cushion_key.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include <berthwright/view/sheets.h>

#include "support/convert_trailers.h"
#include "support/cushions.h"
#include "support/demos.h"
#include "support/plan_builder.h"
#include "view/cushion_outline.h"
#include "view/cushion_words.h"

namespace berthwright {
namespace {

/// A plan with its covers and their sheets, which throw where lettering meets lettering.
struct Keyed {
  explicit Keyed(Plan made)
      : plan(std::move(made)), cut(covers(plan, plan->sewing).value()), drawn(cover_sheets(plan, cut)) {}
  Keyed(const Keyed&) = delete;
  Keyed& operator=(const Keyed&) = delete;

  const Group& group(const std::string& title) const {
    for (const Sheet& sheet : drawn)
      for (const Group& one : sheet.groups)
        if (one.title == title) return one;
    throw std::out_of_range("no group " + title);
  }

  Plan plan;
  std::vector<Cover> cut;
  std::vector<Sheet> drawn;
};

std::vector<std::string> lettering_in(const Group& group) {
  std::vector<std::string> words;
  for (const Mark& mark : group.marks)
    if (const Text* text = std::get_if<Text>(&mark)) words.push_back(text->words);
  return words;
}

std::vector<Path> drawn_in(const Group& group, Ink ink) {
  std::vector<Path> out;
  for (const Mark& mark : group.marks)
    if (const Path* path = std::get_if<Path>(&mark); path != nullptr && path->ink == ink)
      out.push_back(*path);
  return out;
}

PaperBox box_of_path(const Path& path) {
  PaperRing ring{path.from};
  for (const Stretch& stretch : path.stretches) ring.push_back(stretch.to);
  return bounds(ring);
}

std::size_t times(const std::vector<std::string>& words, const std::string& one) {
  return static_cast<std::size_t>(std::ranges::count(words, one));
}

// 22 x 40 in, a notch of 18 x 7 in out of the rear left corner, a radius of 4 in at the rear right one:
// beneath 4 and 18, above 18 and 4, at the rear 7, 29 and 4; the whole beneath and at the left, in both
// units.
TEST(CushionKey, TellsEveryMeasureOfAnOutlineOnce) {
  const Keyed keyed(plan_from(demo_text("dunnock")));
  const std::vector<std::string> words = lettering_in(keyed.group("D, Rear seat, outline"));
  const auto count = [&](const char* figure) { return times(words, figure); };
  EXPECT_EQ(count("22\""), 1U);
  EXPECT_EQ(count("40\""), 1U);
  EXPECT_EQ(count("[558.8 mm]"), 1U);
  EXPECT_EQ(count("[1016 mm]"), 1U);
  EXPECT_EQ(count("18\""), 2U);
  EXPECT_EQ(count("4\""), 3U);
  EXPECT_EQ(count("7\""), 1U);
  EXPECT_EQ(count("29\""), 1U);
  EXPECT_EQ(count("R 4\""), 1U);
  EXPECT_EQ(count("D"), 1U);
}

// Whatever the corners, the chains hold both coordinates of each; 200 seeded outlines.
TEST(CushionKey, ChainsHoldTheCoordinatesOfEveryCorner) {
  static const Plan plan = TrailerText{}.plan();
  std::mt19937_64 random(20261129);
  int stops_seen = 0;
  for (int i = 0; i < 200; ++i) {
    SCOPED_TRACE(i);
    const Piece piece = worked_cushion(random_rectangle(random), 4_in);
    const Cover cover = cover_of(plan, {}, {}, piece);
    const SetCushion set = set_cushion(cover, "X", 4, Unit::inch);
    std::vector<Length> xs, ys;
    for (const auto& [side, chains] : set.around.chains)
      for (const ChainSetting& chain : chains) {
        auto& stops = side == Wall::left || side == Wall::right ? xs : ys;
        stops.insert(stops.end(), chain.chain.stops.begin(), chain.chain.stops.end());
      }
    for (const RimEdge& edge : cover.rim.edges) {
      EXPECT_NE(std::ranges::find(xs, edge.path.front().x), xs.end());
      EXPECT_NE(std::ranges::find(ys, edge.path.front().y), ys.end());
    }
    stops_seen += static_cast<int>(xs.size() + ys.size());
    EXPECT_TRUE(set.around.in_words.empty());
  }
  EXPECT_GT(stops_seen, 200 * 10);
}

// By night the rear back lies 77 1/2 in from the front, 15 1/2 x 40; the room begins at the wall.
TEST(CushionKey, SmallPlansShowWhereACushionLies) {
  const Keyed keyed(plan_from(demo_text("dunnock")));
  const Group& night = keyed.group("C, Rear back, night");
  const PaperBox room = box_of_path(drawn_in(night, Ink::wall).at(0));
  const std::vector<Path> there = drawn_in(night, Ink::moved_piece);
  ASSERT_EQ(there.size(), 1U);
  const PaperBox box = box_of_path(there[0]);
  const double one = static_cast<double>(room.width().micrometres()) / 144;  // micrometres of paper an inch
  EXPECT_NEAR(static_cast<double>((box.low.x - room.low.x).micrometres()), 77.5 * one, 2);
  EXPECT_NEAR(static_cast<double>(box.width().micrometres()), 15.5 * one, 2);
  EXPECT_NEAR(static_cast<double>((room.high.y - box.high.y).micrometres()), 0, 2);
  EXPECT_NEAR(static_cast<double>(box.height().micrometres()), 40 * one, 2);
}

// The zip of a seat of 38 x 22 in is 38 in on the left edge and 3 in round both corners.
TEST(CushionKey, TheZipRunsAlongItsEdgeAndRoundTheCorners) {
  const Keyed keyed(dinette_with_cushions().plan());
  const Sheet& sheet = keyed.drawn.front();
  for (const Cover& cover : keyed.cut) {
    const std::string id = cover.piece->id.text();
    const auto group = std::ranges::find_if(
        sheet.groups, [&](const Group& one) { return one.title.ends_with(cover.piece->name + ", outline"); });
    if (group == sheet.groups.end()) continue;  // on the next sheet
    const Path zip = drawn_in(*group, Ink::zip_run).at(0);
    double length = 0;
    double first = 0;  // what reaches round the corner where it begins, else the edge
    PaperPoint last = zip.from;
    for (const Stretch& stretch : zip.stretches) {
      const double leg = std::hypot(static_cast<double>((stretch.to.x - last.x).micrometres()),
                                    static_cast<double>((stretch.to.y - last.y).micrometres()));
      length += leg;
      if (first == 0) first = leg;
      last = stretch.to;
    }
    const auto scale = static_cast<double>(sheet.scale);
    const auto in_micrometres = [](Length a) { return static_cast<double>(a.ticks()) / 40; };
    EXPECT_NEAR(length * scale, in_micrometres(cover.zip.finished), 4 * scale) << id;
    const Length before = cover.zip.before;
    EXPECT_NEAR(first * scale,
                in_micrometres(before > Length{} ? before : cover.rim.edges[cover.zip.place.edge].length),
                2 * scale)
        << id;
  }
}

// The nap of a left seat points to the left wall, down on paper: beneath its tail.
TEST(CushionKey, TheArrowPointsUp) {
  const Keyed keyed(dinette_with_cushions().plan());
  int arrows = 0;
  for (const Sheet& sheet : keyed.drawn)
    for (const Group& group : sheet.groups) {
      if (!group.title.ends_with(", outline")) continue;
      const std::vector<Path> shafts = drawn_in(group, Ink::direction);
      if (shafts.empty()) continue;
      const auto cover = std::ranges::find_if(keyed.cut, [&](const Cover& one) {
        return group.title.ends_with(", " + one.piece->name + ", outline");
      });
      ASSERT_NE(cover, keyed.cut.end());
      const PaperPoint tail = shafts[0].from;
      const PaperPoint tip = shafts[0].stretches.back().to;
      const bool points = *cover->up == Wall::left    ? tip.y > tail.y
                          : *cover->up == Wall::right ? tip.y < tail.y
                          : *cover->up == Wall::front ? tip.x < tail.x
                                                      : tip.x > tail.x;
      EXPECT_TRUE(points) << group.title;
      ++arrows;
    }
  EXPECT_EQ(arrows, 4);
}

TEST(CushionKey, EveryCushionHasItsPlaceInOrderAndTwoLabels) {
  TrailerText text;
  for (int i = 0; i < 31; ++i)
    text.pieces.push_back(R"({"id": "cushion )" + std::to_string(i) + R"(", "name": "Cushion )" +
                          std::to_string(i) +
                          R"(", "kind": "cushion", "length": 20, "width": 14, "thickness": 4})");
  const Keyed keyed(text.plan());
  std::size_t outlines = 0, pages = 0, labels = 0;
  for (const Sheet& sheet : keyed.drawn) {
    pages += sheet.file.ends_with("-key");
    std::vector<PaperBox> boxes;
    for (const Group& group : sheet.groups) {
      if (group.title.ends_with(", outline")) {
        EXPECT_NE(group.title.find("Cushion " + std::to_string(outlines) + ","), std::string::npos)
            << group.title;
        ++outlines;
      }
      if (!sheet.file.ends_with("-labels") || group.title.find(", Cover.") == std::string::npos) continue;
      for (const Path& path : drawn_in(group, Ink::rule)) boxes.push_back(box_of_path(path));
    }
    for (std::size_t i = 0; i < boxes.size(); ++i)
      for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(overlaps(boxes[i], boxes[j]));
    labels += boxes.size();
  }
  EXPECT_EQ(outlines, 31U);
  EXPECT_GT(pages, 5U);
  EXPECT_EQ(labels, 31U);
}

TEST(CushionKey, LettersAreIdsOrTheFirstThatAreFree) {
  TrailerText text;
  for (const char* id : {"B", "left seat", "long one", "b2", "x y"})
    text.pieces.push_back(std::string(R"({"id": ")") + id +
                          R"(", "kind": "cushion", "length": 20, "width": 14, "thickness": 4})");
  text.pieces.insert(text.pieces.begin(),
                     R"({"id": "table", "kind": "table", "length": 20, "width": 14, "thickness": 1})");
  EXPECT_EQ(cushion_letters(text.plan()), (std::vector<std::string>{"table", "B", "A", "C", "b2", "D"}));
}

// Nothing to draw, names of 200 letters, a pad of an inch, a pad of 14 m, 60 corners: every sheet is drawn,
// and none has lettering at fault (`cover_sheets` throws otherwise).
TEST(CushionKey, IsDrawnOfWhateverCushionsThereAre) {
  EXPECT_TRUE(Keyed(TrailerText{}.plan()).drawn.empty());
  TrailerText text;
  text.pieces = {R"({"id": "long name", "name": ")" + std::string(200, 'W') +
                     R"(", "kind": "cushion", "length": 20, "width": 14, "thickness": 4})",
                 R"({"id": "pad", "kind": "cushion", "length": 1, "width": "1/2", "thickness": "1/4"})",
                 R"({"id": "strip", "kind": "cushion", "length": 100, "width": 2, "thickness": 4})"};
  std::string corners;
  for (int i = 0; i < 15; ++i)
    corners += "[" + std::to_string(2 * i) + ", 0], [" + std::to_string(2 * i + 1) + ", 0], [" +
               std::to_string(2 * i + 1) + ", 3], [" + std::to_string(2 * i + 2) + ", 3], ";
  text.pieces.push_back(R"({"id": "comb", "kind": "cushion", "thickness": 4, "outline": [)" + corners +
                        "[30, 20], [0, 20]]}");
  const Keyed keyed(text.plan());
  EXPECT_GE(keyed.drawn.size(), 2U);
  TrailerText huge;
  huge.interior = R"({"length": "15 m", "width": "15 m", "height": "3 m"})";
  huge.pieces = {R"({"id": "H", "kind": "cushion", "length": "14 m", "width": "12 m", "thickness": 4})"};
  EXPECT_EQ(Keyed(huge.plan()).drawn.size(), 2U);
}

// A cushion that reaches out of the room is drawn as far as the wall: beyond stand the words.
TEST(CushionKey, SmallPlansEndAtTheWalls) {
  TrailerText text;
  text.pieces = {
      R"({"id": "C", "name": "Long", "kind": "cushion", "length": 20, "width": 90, "thickness": 4})"};
  text.day = {R"({"piece": "C", "at": {"front": 10, "left": 2}})"};
  const Keyed keyed(text.plan());
  const Group& day = keyed.group("C, Long, day");
  const PaperBox room = box_of_path(drawn_in(day, Ink::wall).at(0));
  EXPECT_EQ(box_of_path(drawn_in(day, Ink::moved_piece).at(0)).low.y, room.low.y);
}

TEST(CushionKey, ComesLastAmongAllSheets) {
  const Keyed keyed(dinette_with_cushions().plan());
  const Answer answer = answered(keyed.plan).value();
  const std::vector<Sheet> all = sheets(keyed.plan, answer, {.covers = keyed.cut});
  const std::vector<Sheet> without = sheets(keyed.plan, answer);
  ASSERT_EQ(all.size(), without.size() + keyed.drawn.size());
  EXPECT_TRUE(
      std::ranges::any_of(all, [](const Sheet& sheet) { return sheet.file.ends_with("-cushions-labels"); }));
}

}  // namespace
}  // namespace berthwright
