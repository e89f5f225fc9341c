#include <berthwright/write/cut_list.h>

#include <gtest/gtest.h>

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
  sewing.welt = sewing.batting = sewing.one_way = true;
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
      R"({"id": "b", "name": "Roll", "kind": "bolster", "length": 20, "width": 8, "thickness": 8})"};
  const Plan plan = trailer.plan();
  EXPECT_NE(cut_words(plan).find("Bolsters are not reckoned: Roll."), std::string::npos);
  EXPECT_NE(cut_words(plan).find("The plan has no cushion."), std::string::npos);
  EXPECT_EQ(exit_code(plan, {}), 2);
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
