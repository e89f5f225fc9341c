#include <berthwright/write/cut_list.h>

#include <gtest/gtest.h>

#include <utility>

#include <nlohmann/json.hpp>

#include "support/convert_trailers.h"
#include "support/demos.h"
#include "support/one_line.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

std::string cut_words(const Plan& plan, const Sewing& sewing = {}) {
  return support::on_one_line(cut_text(plan, sewing, covers(plan, sewing).value()));
}

TEST(CutWords, TellEveryPartOfACover) {
  const std::string text = cut_words(plan_from(demo_text("dunnock")));
  for (const char* part :
       {"D, Rear seat: 22\" x 40\" x 4\" (558.8 mm x 1016 mm x 101.6 mm) finished",
        // 22.5 x 40.5 less 18 x 7 and what the corner of 4 1/4 in leaves out, (1 - pi/4) x 18.06 = 3.88:
        // 781.4 x 4 / 1728 x 2.5 = 4.52 lb.
        "Foam: 2535, cut 22 1/2\" x 40 1/2\" x 4\" (571.5 mm x 1028.7 mm x 101.6 mm), 4.5 lb (2.1 kg).",
        "Top and bottom panels: 2, cut 23\" x 41\" (584.2 mm x 1041.4 mm) over all; the bottom one is the "
        "mirror "
        "image of the top one. Nap and pattern point to the rear edge.",
        "Zipper: On the rear edge, 29\" (736.6 mm) long: hidden by day and by night (Wardrobe).",
        "2 strips of 36\" x 3 1/4\" (914.4 mm x 82.6 mm).",
        "Where the cushion stands on edge, its rear edge is down and its top panel faces the person.",
        "All foam together: 15 lb (6.9 kg)."})
    EXPECT_NE(text.find(part), std::string::npos) << part << '\n' << text;
}

TEST(CutWords, TellWeltBattingAndNarrowFabric) {
  Sewing sewing;
  sewing.welt = Length::inches(5, 32);
  sewing.batting = sewing.fabric.one_way = true;
  const std::string text = cut_words(plan_from(demo_text("sanderling")), sewing);
  for (const char* part :
       {"Welt: 398\" (10109.2 mm), from 8 straight strips 1 1/2\" (38.1 mm) wide, which take 12\" (304.8 mm) "
        "of the "
        "roll.",  // 2 x 196 + 6; 8 x 54 less 7 is 425, 7 x 54 less 6 only 372
        "Batting: 2 of 23 1/2\" x 75 1/2\" (596.9 mm x 1917.7 mm) and a strip of 196\" x 4\"",
        "Pointing along the roll it is wider than the fabric, 54\" (1371.6 mm): turn it by a quarter",
        "(looked at by who sits there: no other place is left)"})
    EXPECT_NE(text.find(part), std::string::npos) << part << '\n' << text;
}

TEST(CutWords, AreBritishWhereThePlanIs) {
  TrailerText trailer = dinette_with_cushions();
  trailer.more = R"("english": "british", )";
  const std::string text = cut_words(trailer.plan());
  EXPECT_NE(text.find(" Border: "), std::string::npos) << text;
  EXPECT_NE(text.find(" Zip: "), std::string::npos) << text;
  for (const char* american : {"oxing", "ipper"}) EXPECT_EQ(text.find(american), std::string::npos) << text;
}

TEST(CutWords, SayWhatIsNotReckoned) {
  TrailerText trailer;
  trailer.pieces = {
      R"({"id": "b", "name": "Roll", "kind": "bolster", "length": 20, "width": 8, "thickness": 7, "foam": "2535"})"};
  const Plan oval = trailer.plan();
  EXPECT_NE(cut_words(oval).find("Bolster: there is no such form for this outline"), std::string::npos);
  EXPECT_EQ(exit_code(oval, covers(oval, oval->sewing).value()), 2);
  const Plan none = TrailerText{}.plan();
  EXPECT_NE(cut_words(none).find("The plan has no cushion."), std::string::npos);
  EXPECT_EQ(exit_code(none, {}), 2);
}

TrailerText odd_cushions(const std::string& sewing) {
  TrailerText trailer;
  trailer.more = "\"sewing\": " + sewing + ", ";
  trailer.pieces = {
      R"({"id": "P", "name": "Pad", "kind": "cushion", "length": 80, "width": 60, "thickness": 5,
                        "foam": "2535"})"};
  return trailer;
}

std::string own_words(const Plan& plan) { return cut_words(plan, plan->sewing); }

// A panel of 81 x 61 in across 54 in goods takes three pieces; the block of 80 1/2 x 60 1/2 x 5 in out of
// sheets of 72 x 24 takes layers of 3 and 2 in, each of 4 pieces, the sheets turned: 3 x 24 = 72 and 8 1/2.
TEST(CutWords, TellSeamsAndJointsAndWhatIsNotInStock) {
  const Plan glued = odd_cushions(R"({"fabric": {"name": "Fern", "one_way": true}, "foam_sheets": [
      {"length": 72, "width": 24, "thickness": 3}, {"length": 72, "width": 24, "thickness": 2}]})")
                         .plan();
  const std::string text = own_words(glued);
  for (const char* part :
       {"Seam allowance 1/2\" (12.7 mm) (default); fabric Fern, 54\" (1371.6 mm) usable, one way up",
        "Both its sides are wider than the fabric, 54\" (1371.6 mm): cut it from 3 pieces",
        "Glue it up from 2 layers: 3\" (76.2 mm) thick, 4 pieces, along the length 24\" (609.6 mm), 24\" "
        "(609.6 mm), 24\" (609.6 mm) and 8 1/2\" (215.9 mm)",
        "Joints in a block are for backs"})
    EXPECT_NE(text.find(part), std::string::npos) << part << '\n' << text;
  EXPECT_EQ(exit_code(glued, covers(glued, glued->sewing).value()), 0);

  const Plan thin = odd_cushions(R"({"foam_sheets": [{"length": 82, "width": 72, "thickness": 4}]})").plan();
  EXPECT_NE(own_words(thin).find(
                "Cannot be cut so: Foam 5\" (127 mm) thick is not in stock, nor are up to 4 layers "
                "together. Next below: 4\" (101.6 mm). Next above: 8\" (203.2 mm)."),
            std::string::npos)
      << own_words(thin);
  EXPECT_EQ(exit_code(thin, covers(thin, thin->sewing).value()), 1);
}

TEST(CutWords, TellWhereTheRollIsShorterThanTheRepeatOrAPanel) {
  const Plan repeat =
      odd_cushions(R"({"fabric": {"name": "Fern", "roll": 20, "repeat": {"along": 25}}})").plan();
  EXPECT_NE(own_words(repeat).find(
                "The repeat of the fabric, 25\" (635 mm), is longer than the roll, 20\" (508 mm)"),
            std::string::npos)
      << own_words(repeat);
  EXPECT_EQ(exit_code(repeat, covers(repeat, repeat->sewing).value()), 1);
  const Plan panel = odd_cushions(R"({"fabric": {"name": "Fern", "roll": 72, "width": 60}})").plan();
  EXPECT_NE(own_words(panel).find("of the roll, which is 72\" (1828.8 mm) long."), std::string::npos)
      << own_words(panel);
}

TEST(CutWords, TellEveryShape) {
  for (const auto& [shape, part] :
       {std::pair{"knife edge", "Panels: 2, cut 86\" x 66\" (2184.4 mm x 1676.4 mm)"},
        {"waterfall", "Wrap: 1 of "},
        {"board backed", "Board: 79\" x 59\" (2006.6 mm x 1498.6 mm), 1 in smaller"}}) {
    const Plan plan = odd_cushions(std::string(R"({"shape": ")") + shape + "\"}").plan();
    const std::string text = own_words(plan);
    EXPECT_NE(text.find(part), std::string::npos) << part << '\n' << text;
    EXPECT_EQ(text.find("Boxing:"), std::string::npos);
    const auto told = nlohmann::json::parse(cut_json(plan, plan->sewing, covers(plan, plan->sewing).value()));
    EXPECT_TRUE(told["cushions"][0]["boxing"].is_null());
    EXPECT_EQ(told["cushions"][0]["sewing"]["shape"], shape);
  }
}

TEST(CutWords, AreTheSameInJson) {
  const Plan plan = plan_from(demo_text("dunnock"));
  const std::vector<Cover> all = covers(plan, {}).value();
  const auto told = nlohmann::json::parse(cut_json(plan, {}, all));
  EXPECT_EQ(told["exit_code"], 0);
  ASSERT_EQ(told["cushions"].size(), all.size());
  for (std::size_t i = 0; i < all.size(); ++i) {
    const auto& one = told["cushions"][i];
    EXPECT_EQ(one["piece"], all[i].piece->id.text());
    EXPECT_EQ(one["zip"]["edge"], all[i].zip.place.edge);
    EXPECT_EQ(one["boxing"]["strips"].size(), all[i].boxing.strips.size());
    double rim = 0, border = one["zip"]["finished_mm"];
    for (const auto& edge : one["edges"]) rim += edge["length_mm"].get<double>();
    for (const auto& strip : one["boxing"]["strips"]) border += strip["finished_mm"].get<double>();
    EXPECT_NEAR(rim, border, 1e-6);
  }
}

// What README quotes stands there in order.
TEST(CutWords, AreWhatTheReadmeQuotes) {
  const std::string readme = repository_text("README.md");
  const std::size_t told = readme.find("A part of [out/dunnock/cut.txt]");
  ASSERT_NE(told, std::string::npos);
  const std::size_t from = readme.find("```\n", told) + 4;
  const std::string quoted = readme.substr(from, readme.find("```", from) - from);
  EXPECT_GT(quoted.size(), 500U);
  EXPECT_NE(repository_text("out/dunnock/cut.txt").find(quoted), std::string::npos);
}

}  // namespace
}  // namespace berthwright
