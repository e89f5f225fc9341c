#include "view/labels.h"

#include <gtest/gtest.h>

#include <random>

#include "view/lettering.h"

#include "support/paper_boxes.h"

namespace berthwright {
namespace {

using support::box_mm;

PaperRing ring(const PaperBox& box) {
  return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

LabelWish named(const std::string& name, const PaperBox& home) {
  LabelWish wish;
  wish.wordings.push_back({{name}, lettering::label, false});
  wish.home = {ring(home)};
  wish.target = home.centre();
  wish.key = name;
  return wish;
}

// What every drawing's labels must keep, whatever was asked for.
void expect_clean(const LabelField& field, const std::vector<PlacedLabel>& labels) {
  for (std::size_t i = 0; i < labels.size(); ++i) {
    if (labels[i].wording.lines.empty()) continue;
    EXPECT_TRUE(holds(field.area, labels[i].box));
    for (const PaperBox& taken : field.taken) EXPECT_FALSE(overlaps(taken, labels[i].box));
    for (const PaperLine& line : field.heavy) EXPECT_FALSE(crosses(line, labels[i].box));
    for (std::size_t j = 0; j < labels.size(); ++j) {
      if (i == j || labels[j].wording.lines.empty()) continue;
      EXPECT_FALSE(overlaps(labels[i].box, labels[j].box)) << i << " and " << j;
      if (labels[j].leader) {
        EXPECT_FALSE(crosses(*labels[j].leader, labels[i].box)) << j << "'s leader";
      }
    }
  }
}

TEST(Labels, AWordThatFitsStandsInTheMiddleOfItsThing) {
  const LabelField field{box_mm(0, 0, 100, 100), {}, {}, {}, {}};
  const auto labels = placed_labels(field, {named("galley", box_mm(20, 40, 60, 60))});
  ASSERT_EQ(labels.size(), 1U);
  EXPECT_EQ(labels[0].number, 0);
  EXPECT_EQ(labels[0].wording.lines, std::vector<std::string>{"galley"});
  EXPECT_NEAR(static_cast<double>(labels[0].box.centre().x.micrometres()), 40'000, 2'000);
  EXPECT_NEAR(static_cast<double>(labels[0].box.centre().y.micrometres()), 50'000, 2'000);
}

// A sign stands between the thing and the free side of the page: every leader goes round it.
TEST(Labels, NoLeaderRunsThroughASign) {
  LabelField field{box_mm(0, 0, 60, 60), {}, {}, {}, {}};
  LabelWish wish = named("heater", box_mm(28, 28, 32, 32));
  wish.may_stand_off = true;
  const auto free = placed_labels(field, {wish});
  ASSERT_TRUE(free[0].leader.has_value());
  const PaperPoint middle{(free[0].leader->from.x + free[0].leader->to.x) / 2,
                          (free[0].leader->from.y + free[0].leader->to.y) / 2};
  field.signs.push_back(grown({middle, middle}, paper_mm(1, 2)));
  const auto round = placed_labels(field, {wish});
  ASSERT_TRUE(round[0].leader.has_value());
  EXPECT_FALSE(crosses(*round[0].leader, field.signs.front()));
  EXPECT_EQ(round[0].wording.lines, std::vector<std::string>{"heater"});
}

TEST(Labels, AWordTooLongForItsThingBecomesANumber) {
  const LabelField field{box_mm(0, 0, 100, 100), {}, {}, {}, {}};
  const auto labels = placed_labels(
      field, {named("a name far longer than the little thing it is for", box_mm(20, 40, 30, 50))});
  EXPECT_EQ(labels[0].number, 1);
  EXPECT_EQ(labels[0].wording.lines, std::vector<std::string>{"1"});
  EXPECT_TRUE(holds({ring(box_mm(20, 40, 30, 50))}, labels[0].box));
}

TEST(Labels, AThingTooSmallForANumberGetsALeader) {
  const LabelField field{box_mm(0, 0, 100, 100), {}, {}, {}, {}};
  const auto labels = placed_labels(field, {named("hook", box_mm(50, 50, 51, 51))});
  ASSERT_TRUE(labels[0].leader);
  EXPECT_EQ(labels[0].leader->to, box_mm(50, 50, 51, 51).centre());
  EXPECT_FALSE(overlaps(labels[0].box, box_mm(50, 50, 51, 51)));
}

TEST(Labels, KeepOffHeavyLinesAndOtherLettering) {
  const PaperBox home = box_mm(20, 40, 80, 60);
  const LabelField field{box_mm(0, 0, 100, 100),
                         {box_mm(20, 40, 50, 60)},
                         {{{paper_mm(65), paper_mm(30)}, {paper_mm(65), paper_mm(70)}}},
                         {},
                         {}};
  const auto labels = placed_labels(field, {named("seat", home)});
  EXPECT_EQ(labels[0].number, 0);
  expect_clean(field, labels);
}

TEST(Labels, KeepOffWhatLiesOverTheirThing) {
  LabelWish wish = named("bench", box_mm(20, 40, 80, 60));
  wish.covers.push_back({ring(box_mm(20, 40, 80, 54))});
  const LabelField field{box_mm(0, 0, 100, 100), {}, {}, {}, {}};
  const auto labels = placed_labels(field, {wish});
  EXPECT_GE(labels[0].box.low.y, paper_mm(54));
}

// Two things share the only room for words: one must give way, and the pair chosen must be the cheaper one.
TEST(Labels, TheSearchFindsRoomThatTakingTurnsWouldMiss) {
  LabelWish wide = named("seat", box_mm(10, 40, 22, 46));
  LabelWish narrow = named("seat", box_mm(10, 40, 34, 46));
  const LabelField field{box_mm(0, 0, 100, 100), {}, {}, {}, {}};
  const auto labels = placed_labels(field, {narrow, wide});
  EXPECT_EQ(labels[0].number, 0);
  EXPECT_EQ(labels[1].number, 0);
  expect_clean(field, labels);
}

TEST(Labels, NothingIsLostWhereThereIsNoRoomAtAll) {
  std::vector<LabelWish> wishes;
  for (int i = 0; i < 60; ++i) wishes.push_back(named("thing " + std::to_string(i), box_mm(1, 1, 29, 14)));
  const LabelField field{box_mm(0, 0, 30, 15), {}, {}, {}, {}};
  const auto labels = placed_labels(field, wishes);
  ASSERT_EQ(labels.size(), wishes.size());
  expect_clean(field, labels);
  int last = 0;
  int unmarked = 0;
  for (const PlacedLabel& label : labels) {
    if (label.number == 0) continue;
    EXPECT_EQ(label.number, ++last) << "numbers run in the order of the wishes";
    unmarked += label.wording.lines.empty();
  }
  EXPECT_GT(unmarked, 0) << "a control: 60 labels cannot stand on 30 by 15 mm";
}

TEST(Labels, AnyRoomIsLeftClean) {
  for (unsigned seed = 0; seed < 40; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    const auto upto = [&](unsigned n) { return static_cast<std::int64_t>(random() % n); };
    LabelField field{box_mm(0, 0, 160, 100), {}, {}, {}, {}};
    for (int i = 0; i < 5; ++i) {
      const std::int64_t x = upto(140);
      const std::int64_t y = upto(95);
      field.taken.push_back(box_mm(x, y, x + 12, y + 3));
      field.heavy.push_back(
          {{paper_mm(upto(160)), paper_mm(upto(100))}, {paper_mm(upto(160)), paper_mm(upto(100))}});
    }
    std::vector<LabelWish> wishes;
    const std::int64_t count = 2 + upto(38);
    for (std::int64_t i = 0; i < count; ++i) {
      const std::int64_t x = upto(140);
      const std::int64_t y = upto(85);
      wishes.push_back(named(std::string(static_cast<std::size_t>(1 + upto(30)), 'n'),
                             box_mm(x, y, x + 2 + upto(18), y + 2 + upto(13))));
      wishes.back().may_stand_off = upto(2) == 0;
    }
    const auto labels = placed_labels(field, wishes);
    ASSERT_EQ(labels.size(), wishes.size());
    expect_clean(field, labels);
  }
}

}  // namespace
}  // namespace berthwright
