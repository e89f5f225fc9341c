#include <berthwright/plan/plan.h>

#include <gtest/gtest.h>

#include <string>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

std::string with(const std::string& sections) {
  return R"({"berthwright": 1, "title": "T", "unit": "in",
    "interior": {"length": 120, "width": 72, "height": 72}, "configurations": {"day": []}, )" +
         sections + "}";
}
std::string first_fault(const std::string& sections) {
  const Result<Plan> plan = read_plan(with(sections));
  return plan ? "none" : plan.problems().front().id + " " + plan.problems().front().pointer;
}
std::string tank(const std::string& given) {
  return R"("fixtures": [{"id": "tank", "kind": "tank", "length": 20, "width": 20, "at": {"front": 0, "left": 0},
            "top": 10, )" +
         given + "}]";
}

TEST(ReadLoads, KnowsEveryFieldOfTheExample) {
  const Plan plan = plan_from(repository_text("tests/plan/loads.json"));
  const Chassis& chassis = *plan->chassis;
  EXPECT_EQ(*chassis.coupling, 40_in);
  EXPECT_EQ(*chassis.axle, 80_in);
  EXPECT_EQ(*chassis.track, 60_in);
  EXPECT_EQ(*chassis.whole_limit, Mass::pounds(1500));
  EXPECT_EQ(chassis.weighed->axle, Mass::pounds(810));
  EXPECT_EQ(*chassis.weighed->right, Mass::pounds(400));
  EXPECT_EQ(chassis.weighed->with, std::vector<std::string>{"gas"});
  EXPECT_EQ(*plan->cargo[0].along, -16 * 1_in);
  EXPECT_EQ(plan->cargo[1].fill->percent, 0);
  EXPECT_EQ(*plan.fixture("bench")->weight, (MassSpan{Mass::pounds(40), Mass::pounds(60)}));
  EXPECT_EQ(plan.fixture("tank")->fill->volume.units(), 20 * us_gallon.units());
  EXPECT_EQ(*plan.fixture("fridge")->draw, (Draw{120, true}));
  EXPECT_EQ(*plan.piece("heater")->draw, (Draw{350, true}));
  EXPECT_EQ(plan->supply->circuits[0].loads[0].draw, (Draw{1200, false}));
  EXPECT_EQ(plan->warming->to, Temperature::fahrenheit(75));
  EXPECT_EQ(plan->warming->insulation->thousandths, 4'000);
}

// A room of 60 × 40 × 40 in holds 96,000 cu in, 415.6 gal: no tank that is carried along holds more.
TEST(ReadLoads, RefusesATankLargerThanTheRoom) {
  const auto fault = [](const char* gallons) {
    const Result<Plan> plan =
        read_plan(std::string(R"({"berthwright": 1, "title": "T", "unit": "in", "configurations": {"day": []},
                        "interior": {"length": 60, "width": 40, "height": 40},
                        "cargo": [{"id": "c", "from_front": 30, "volume": ")") +
                  gallons + R"( gal"}]})");
    return plan ? "none" : plan.problems().front().id + " " + plan.problems().front().pointer;
  };
  EXPECT_EQ(fault("415"), "none");
  EXPECT_EQ(fault("416"), "tank.volume /cargo/0/volume");
}

TEST(ReadLoads, GoesWithTheEnglishWhereNothingIsSaid) {
  const auto read = [](const char* english) {
    return read_plan(with(std::string(R"("english": ")") + english +
                          R"(", "chassis": {"axle": 60}, "supply": {"circuits": []},
                             "cargo": [{"id": "w", "volume": "10 gal", "from_front": 10}],
                             "warming": {"from": "5 C", "to": "20 C"})"))
        .value();
  };
  const Plan american = read("american");
  const Plan british = read("british");
  EXPECT_EQ(american->chassis->range, TowingRange::us);
  EXPECT_EQ(british->chassis->range, TowingRange::uk);
  EXPECT_EQ(american->supply->volts, 120);
  EXPECT_EQ(british->supply->volts, 230);
  EXPECT_EQ(american->cargo[0].fill->volume.units(), 10 * us_gallon.units());
  EXPECT_EQ(british->cargo[0].fill->volume.units(), 10 * imperial_gallon.units());
  EXPECT_EQ(british->warming->outside, Temperature::celsius(5));
}

TEST(ReadLoads, RefusesWhatCannotBe) {
  EXPECT_EQ(first_fault(R"("chassis": {"axle": 121})"), "chassis.axle /chassis/axle");
  EXPECT_EQ(first_fault(R"("chassis": {"axle": 0, "coupling": 0})"), "chassis.coupling /chassis/coupling");
  EXPECT_EQ(first_fault(R"("chassis": {"weighed": {"coupling": 0, "axle": 0}})"),
            "weight.zero /chassis/weighed/axle");
  EXPECT_EQ(first_fault(R"("chassis": {"limits": {"whole": 0}})"), "weight.zero /chassis/limits/whole");
  EXPECT_EQ(
      first_fault(R"("chassis": {"weighed": {"coupling": 50, "axle": 800, "left": 300, "right": 400}})"),
      "weighed.sides /chassis/weighed/axle");
  EXPECT_EQ(first_fault(R"("chassis": {"weighed": {"coupling": 50, "axle": 800, "left": 400}})"),
            "field.missing /chassis/weighed/right");
  EXPECT_EQ(first_fault(R"("chassis": {"weighed": {"coupling": 50, "axle": 800, "with": "everything"}})"),
            "weighed.configuration /chassis/weighed/configuration");
  EXPECT_EQ(first_fault(R"("chassis": {"weighed": {"coupling": 50, "axle": 800, "with": ["ghost"]}})"),
            "reference.unknown /chassis/weighed/with/0");
  // 20 × 20 × 10 in hold 4000 cu in, 17.3 gal.
  EXPECT_EQ(first_fault(tank(R"("volume": "17 gal")")), "none");
  EXPECT_EQ(first_fault(tank(R"("volume": "18 gal")")), "tank.volume /fixtures/0/volume");
  EXPECT_EQ(first_fault(tank(R"("volume": "17 gal", "fill": 101)")), "tank.fill /fixtures/0/fill");
  EXPECT_EQ(first_fault(tank(R"("fill": 10)")), "field.missing /fixtures/0/volume");
  EXPECT_EQ(first_fault(tank(R"("weight": ["9 lb", "8 lb"])")), "weight.span /fixtures/0/weight");
  EXPECT_EQ(first_fault(tank(R"("weight": ["9 lb"])")), "weight.span /fixtures/0/weight");
  EXPECT_EQ(first_fault(tank(R"("watts": 0)")), "value.range /fixtures/0/watts");
  EXPECT_EQ(first_fault(R"("cargo": [{"id": "c"}])"), "field.missing /cargo/0/kept_in");
  EXPECT_EQ(first_fault(R"("cargo": [{"id": "c", "from_front": 1, "ahead_of_front": 1}])"),
            "field.misplaced /cargo/0/ahead_of_front");
  EXPECT_EQ(first_fault(R"("cargo": [{"id": "c", "kept_in": "ghost"}])"),
            "reference.unknown /cargo/0/kept_in");
  EXPECT_EQ(first_fault(R"("cargo": [{"id": "c", "from_front": 1, "from_left": 73}])"),
            "cargo.outside /cargo/0/from_left");
  EXPECT_EQ(first_fault(R"("cargo": [{"id": "c", "from_front": 1}, {"id": "c", "from_front": 2}])"),
            "id.twice /cargo/1/id");
  EXPECT_EQ(first_fault(R"("supply": {"circuits": [{"id": "a"}]})"),
            "field.missing /supply/circuits/0/breaker");
  EXPECT_EQ(first_fault(R"("supply": {"circuits": [{"id": "a", "breaker": 15, "feeds": ["ghost"]}]})"),
            "reference.unknown /supply/circuits/0/feeds/0");
  EXPECT_EQ(
      first_fault(tank(R"("watts": 5)") + R"(, "supply": {"circuits": [{"id": "a", "breaker": 15, "feeds":
            ["tank"]}, {"id": "b", "breaker": 15, "feeds": ["tank"]}]})"),
      "supply.twice /supply/circuits/1/feeds/0");
  EXPECT_EQ(first_fault(R"("warming": {"from": "70 F", "to": "70 F"})"), "warming.order /warming/to");
  EXPECT_EQ(first_fault(R"("warming": {"from": "40", "to": "70 F"})"), "temperature.unit /warming/from");
  EXPECT_EQ(first_fault(R"("warming": {"from": "40 F", "to": "70 F", "insulation": "thick"})"),
            "insulation.kind /warming/insulation");
}

TEST(ReadLoads, AVanThatIsNotTowedHasNoCoupling) {
  const Plan van =
      read_plan(with(R"("chassis": {"towed": false, "track": 66, "limits": {"whole": "7000 lb"}})")).value();
  EXPECT_FALSE(van->chassis->towed);
  EXPECT_TRUE(read_plan(with(R"("chassis": {"axle": 60})")).value()->chassis->towed);
  EXPECT_EQ(first_fault(R"("chassis": {"towed": true, "coupling": 40})"), "none");
  const auto fault_of = [](const std::string& more) {
    const Result<Plan> plan = read_plan(with(R"("chassis": {"towed": false, )" + more + "}"));
    return plan ? "none"
                : std::to_string(plan.problems().size()) + " " +
                      first_fault(R"("chassis": {"towed": false, )" + more + "}");
  };
  EXPECT_EQ(fault_of(R"("coupling": 40)"), "1 field.misplaced /chassis/coupling");
  EXPECT_EQ(fault_of(R"("axle": 60)"), "1 field.misplaced /chassis/axle");
  EXPECT_EQ(fault_of(R"("range": "uk")"), "1 field.misplaced /chassis/range");
  EXPECT_EQ(fault_of(R"("weighed": {"coupling": 50, "axle": 800})"), "1 field.misplaced /chassis/weighed");
  EXPECT_EQ(fault_of(R"("limits": {"coupling": 50})"), "1 field.misplaced /chassis/limits/coupling");
}

TEST(ReadLoads, NamesEachMistakeOfAWeighingOnce) {
  for (const char* weighed :
       {R"("axle": 800, "with": "everything")", R"("axle": 800, "with": "everything", "configuration": "")",
        R"("axle": 800, "with": "everything", "configuration": "nigt")",
        R"("axle": 800, "with": "evrything")", R"("axle": 800, "left": 400)",
        R"("axle": 0, "left": 300, "right": 400)"}) {
    const Result<Plan> plan =
        read_plan(with(std::string(R"("chassis": {"weighed": {"coupling": 50, )") + weighed + "}}"));
    ASSERT_FALSE(plan) << weighed;
    EXPECT_EQ(plan.problems().size(), 1U) << weighed;
  }
}

TEST(ReadLoads, RefusesMoreLoadsThanSetsCanBeTriedOf) {
  std::string loads;
  for (int i = 0; i < 21; ++i) loads += std::string(i == 0 ? "" : ",") + R"({"name": "L", "watts": 5})";
  EXPECT_EQ(first_fault(R"("supply": {"circuits": [{"id": "a", "breaker": 15, "loads": [)" + loads + "]}]}"),
            "supply.many-loads /supply/circuits");
}

}  // namespace
}  // namespace berthwright
