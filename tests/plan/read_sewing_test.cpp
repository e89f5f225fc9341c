#include <gtest/gtest.h>

#include <algorithm>

#include <berthwright/plan/plan.h>

#include "support/plan_builder.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

TrailerText with_cushions(const std::string& sewing) {
  TrailerText text;
  if (!sewing.empty()) text.more = "\"sewing\": " + sewing + ", ";
  text.pieces = {
      R"({"id": "seat", "kind": "cushion", "length": 40, "width": 22, "thickness": 4})",
      R"({"id": "back", "kind": "cushion", "length": 40, "width": 16, "thickness": 4, "foam": "1822", "cover":
          {"fabric": {"name": "Duck", "width": "60 in"}, "shape": "knife edge", "welt": "none", "zip_edge": "left"}})",
      R"({"id": "other back", "kind": "cushion", "length": 40, "width": 16, "thickness": 4})"};
  text.day = {
      R"({"piece": "other back", "at": {"front": 40, "left": 20}, "stands_on": "length", "faces": "rear"})"};
  return text;
}

bool lists_default(const Plan& plan, std::string_view pointer) {
  return std::ranges::any_of(plan->defaults,
                             [&](const AppliedDefault& one) { return one.pointer == pointer; });
}

TEST(ReadSewing, TakesWhatThePlanSays) {
  const Plan plan = with_cushions(R"({
    "fabric": {"name": "Fern", "width": 52, "roll": "9 m", "one_way": true, "up": "across",
               "repeat": {"along": 25, "across": "13 1/2", "half_drop": true}},
    "seam_allowance": "5/8", "welt": "5/32", "batting": true, "foam_cut": "wrapped", "shape": "waterfall",
    "seat_foam": "2535", "back_foam": "1824",
    "foam_sheets": [{"length": 82, "width": 27, "thickness": 4}, {"length": 72, "width": 24, "thickness": 2}]})")
                        .plan();
  const Sewing& sewing = plan->sewing;
  EXPECT_EQ(sewing.fabric.name, "Fern");
  EXPECT_EQ(sewing.fabric.width, 52_in);
  EXPECT_EQ(sewing.fabric.roll, 9000_mm);
  EXPECT_TRUE(sewing.fabric.one_way);
  EXPECT_TRUE(sewing.fabric.up_across);
  EXPECT_FALSE(sewing.fabric.may_turn());
  EXPECT_EQ(sewing.fabric.repeat, (Repeat{25_in, Length::inches(27, 2), true}));
  EXPECT_EQ(sewing.seam_allowance, Length::inches(5, 8));
  EXPECT_EQ(sewing.welt, Length::inches(5, 32));
  EXPECT_TRUE(sewing.batting);
  EXPECT_EQ(sewing.foam_cut, FoamCut::wrapped);
  EXPECT_EQ(sewing.shape, CoverShape::waterfall);
  EXPECT_EQ(sewing.foam_sheets, (std::vector<FoamSheet>{{82_in, 27_in, 4_in}, {72_in, 24_in, 2_in}}));
  EXPECT_FALSE(lists_default(plan, "/sewing"));
  EXPECT_FALSE(lists_default(plan, "/sewing/welt"));
}

// What a cushion does not say of its own cover is as the plan has it; another fabric is another one as a
// whole.
TEST(ReadSewing, ACushionHasACoverOfItsOwn) {
  const Plan plan =
      with_cushions(
          R"({"fabric": {"name": "Fern", "one_way": true}, "seam_allowance": "5/8", "welt": "5/32"})")
          .plan();
  EXPECT_FALSE(plan.piece("seat")->sewing);
  const Sewing& own = *plan.piece("back")->sewing;
  EXPECT_EQ(own.fabric.name, "Duck");
  EXPECT_EQ(own.fabric.width, 60_in);
  EXPECT_FALSE(own.fabric.one_way);
  EXPECT_EQ(own.seam_allowance, Length::inches(5, 8));
  EXPECT_FALSE(own.welt);
  EXPECT_EQ(own.shape, CoverShape::knife_edge);
  EXPECT_EQ(own.zip_edge, Wall::left);
}

TEST(ReadSewing, ABolsterIsSewnAsOne) {
  TrailerText text;
  text.pieces = {
      R"({"id": "r", "kind": "bolster", "length": 24, "width": 8, "thickness": 8, "cover": {"batting": true}})",
      R"({"id": "b", "kind": "bolster", "length": 24, "width": 8, "thickness": 8, "cover": {"shape": "boxed"}})"};
  const Plan plan = text.plan();
  EXPECT_EQ(plan->pieces[0].sewing->shape, CoverShape::bolster);
  EXPECT_EQ(plan->pieces[1].sewing->shape, CoverShape::boxed);
}

TEST(ReadSewing, FoamGoesByUseWhereACushionHasNone) {
  const Plan plan = with_cushions(R"({"seat_foam": "2535", "back_foam": "1824"})").plan();
  EXPECT_EQ(plan.piece("seat")->material, "2535");
  EXPECT_EQ(plan.piece("back")->material, "1822") << "its own";
  EXPECT_EQ(plan.piece("other back")->material, "1824");
  EXPECT_TRUE(lists_default(plan, "/pieces/0/foam"));
  EXPECT_FALSE(lists_default(plan, "/pieces/1/foam"));
}

TEST(ReadSewing, EveryDefaultIsListed) {
  const Plan silent = with_cushions("").plan();
  EXPECT_TRUE(lists_default(silent, "/sewing"));
  EXPECT_EQ(silent->sewing.fabric.width, 54_in);
  const Plan plan = with_cushions(R"({"fabric": {"name": "Fern"}})").plan();
  for (const char* pointer : {"/sewing/seam_allowance", "/sewing/welt", "/sewing/batting", "/sewing/foam_cut",
                              "/sewing/shape", "/sewing/fabric/width", "/sewing/fabric/one_way"})
    EXPECT_TRUE(lists_default(plan, pointer)) << pointer;
  EXPECT_FALSE(lists_default(TrailerText{}.plan(), "/sewing")) << "nothing to sew";
}

TEST(ReadSewing, ABoardHasNoCover) {
  PlanParts parts = *with_cushions("").plan().operator->();
  parts.pieces[0].kind = Piece::Kind::board;
  parts.pieces[0].sewing = Sewing{};
  const Result<Plan> plan = Plan::checked(std::move(parts));
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problems().front().id, "field.misplaced");
}

}  // namespace
}  // namespace berthwright
