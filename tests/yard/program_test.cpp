#include <berthwright/yard/program.h>

#include <gtest/gtest.h>

#include <filesystem>
#include <sstream>
#include <streambuf>

#include <nlohmann/json.hpp>

#include "support/convert_trailers.h"
#include "support/plan_builder.h"
#include "support/program_said.h"
#include "support/temporary_folder.h"
#include "support/yard_plans.h"

namespace berthwright {
namespace {

using support::ProgramSaid;
using support::told;

// 0, 1, 2 are the house's own (design 4); 64 and above are the values of sysexits.h.

class Program : public testing::Test {
 protected:
  std::string plan(const std::string& text) const { return folder.put("plan.json", text); }
  TemporaryFolder folder;
};

TEST_F(Program, AnswersZeroWhenEveryAlertIsMet) {
  const ProgramSaid check = told({"check", plan(plan_that_meets())});
  EXPECT_EQ(check.code, 0) << check.out;
  EXPECT_EQ(check.err, "");
  EXPECT_TRUE(check.out.starts_with("Test\n")) << check.out;
  EXPECT_NE(check.out.find("\n0 alerts not met, 0 unknown.\n"), std::string::npos) << check.out;
}

TEST_F(Program, AnswersOneWhenAnAlertIsNotMet) {
  const ProgramSaid check = told({"check", plan(plan_that_does_not())});
  EXPECT_EQ(check.code, 1) << check.out;
  EXPECT_EQ(check.err, "");
  EXPECT_NE(check.out.find("\n2 alerts not met, 0 unknown.\n"), std::string::npos) << check.out;
}

TEST_F(Program, AnswersTwoWhenAnAlertIsUnknown) {
  const ProgramSaid check = told({"check", plan(plan_with_an_unknown())});
  EXPECT_EQ(check.code, 2) << check.out;
  EXPECT_EQ(check.err, "");
  EXPECT_NE(check.out.find("\n0 alerts not met, 2 unknown.\n"), std::string::npos) << check.out;
}

TEST_F(Program, AnswersTheSameInJson) {
  const auto code = [&](const std::string& text) {
    const ProgramSaid check = told({"check", plan(text), "--json"});
    EXPECT_EQ(check.err, "");
    EXPECT_EQ(nlohmann::json::parse(check.out)["exit_code"], check.code);
    return check.code;
  };
  EXPECT_EQ(code(plan_that_meets()), 0);
  EXPECT_EQ(code(plan_that_does_not()), 1);
  EXPECT_EQ(code(plan_with_an_unknown()), 2);
}

TEST_F(Program, SaysWhereAHeaterMayStand) {
  const auto code = [&](const std::string& text, const std::string& words) {
    const std::string file = plan(text);
    const ProgramSaid heater = told({"heater", file});
    EXPECT_EQ(heater.err, "");
    EXPECT_TRUE(heater.out.starts_with("Test\n")) << heater.out;
    EXPECT_NE(heater.out.find(words), std::string::npos) << heater.out;
    const ProgramSaid json = told({"heater", "--json", file});
    EXPECT_EQ(json.code, heater.code);
    EXPECT_EQ(nlohmann::json::parse(json.out)["exit_code"], heater.code);
    return heater.code;
  };
  EXPECT_EQ(code(plan_with_room_for_a_heater(), "\nHeater: a place keeps every rule.\n"), 0);
  EXPECT_EQ(code(plan_without_room_for_a_heater(), "\nHeater: no place keeps every rule.\n"), 1);
  EXPECT_EQ(code(plan_with_a_heater_without_plate(), "its data plate"), 2);
  EXPECT_EQ(code(plan_that_does_not(), "\nThe plan shows no heater, so no place was sought.\n"), 2);
}

TEST_F(Program, LooksForAHeatersPlaceInTheConfigurationsAskedFor) {
  const std::string file = plan(plan_without_room_for_a_heater());
  EXPECT_EQ(told({"heater", file, "--configuration", "day"}).code, 0);
  EXPECT_EQ(told({"heater", file, "--configuration", "night"}).code, 1);
  EXPECT_EQ(told({"heater", file, "--configuration", "night", "--configuration", "day"}).code, 1);
  const ProgramSaid refused = told({"heater", file, "--configuration", "noon"});
  EXPECT_EQ(refused.code, 64);
  EXPECT_NE(refused.err.find("noon; it has: day, night"), std::string::npos) << refused.err;
}

TEST_F(Program, TellsTheFaultsOfAPlanWhenAskedForAHeatersPlace) {
  const ProgramSaid broken = told({"heater", plan(plan_that_is_broken())});
  EXPECT_EQ(broken.code, 65);
  EXPECT_EQ(broken.out, "");
  EXPECT_NE(broken.err.find("[length.comma]"), std::string::npos) << broken.err;
  const ProgramSaid falls = told({"heater", "--json", plan(plan_that_falls())});
  EXPECT_EQ(falls.code, 65);
  EXPECT_EQ(nlohmann::json::parse(falls.out)["problems"].size(), 1U);
}

TEST_F(Program, FindsTheStepsBetweenConfigurations) {
  const std::string file = plan(dinette().json());
  const ProgramSaid steps = told({"steps", file});
  EXPECT_EQ(steps.code, 0) << steps.out;
  EXPECT_EQ(steps.err, "");
  EXPECT_NE(steps.out.find("\nFrom night to day: 3 steps\n"), std::string::npos) << steps.out;
  const ProgramSaid one = told({"steps", file, "--from", "day", "--json"});
  EXPECT_EQ(nlohmann::json::parse(one.out)["conversions"].size(), 1U);
  const ProgramSaid refused = told({"steps", file, "--to", "noon"});
  EXPECT_EQ(refused.code, 64);
  EXPECT_NE(refused.err.find("noon; it has: day, night"), std::string::npos) << refused.err;
  EXPECT_EQ(told({"steps", plan(plan_that_is_broken())}).code, 65);
}

TEST_F(Program, ListsWhatIsCut) {
  const std::string file = plan(dinette_with_cushions().json());
  const ProgramSaid cut = told({"cut", file});
  EXPECT_EQ(cut.code, 2) << "no grade of foam";
  EXPECT_EQ(cut.err, "");
  EXPECT_NE(cut.out.find("\nA, left seat: 38\" x 22\" x 4\" (965.2 mm x 558.8 mm x 101.6 mm) finished\n"),
            std::string::npos)
      << cut.out;
  const auto json = nlohmann::json::parse(told({"cut", file, "--json"}).out);
  EXPECT_EQ(json["exit_code"], 2);
  EXPECT_EQ(json["cushions"].size(), 4U);
  EXPECT_EQ(told({"cut", plan(dinette().json())}).code, 2) << "no cushion";
  EXPECT_EQ(told({"cut", plan(plan_that_is_broken())}).code, 65);
  EXPECT_EQ(told({"cut", "nowhere.json"}).code, 66);
}

TEST_F(Program, WeighsLoads) {
  const std::string file = repository_path("tests/plan/loads.json");
  const ProgramSaid loads = told({"loads", file});
  EXPECT_EQ(loads.code, 1) << "with full tanks the coupling carries too little: " << loads.out;
  EXPECT_EQ(loads.err, "");
  EXPECT_NE(loads.out.find("\nOn the road\n"), std::string::npos) << loads.out;
  const auto json = nlohmann::json::parse(told({"loads", file, "--configuration", "road", "--json"}).out);
  EXPECT_EQ(json["configurations"].size(), 1U);
  std::string dry = repository_text("tests/plan/loads.json");
  for (const std::string part : {R"(, "volume": "20 gal", "fill": 50)", R"(, "volume": "10 gal", "fill": 0)",
                                 R"("track": "60", )", R"("left": "410 lb", "right": "400 lb", )"})
    dry.erase(dry.find(part), part.size());
  EXPECT_EQ(told({"loads", plan(dry)}).code, 2) << "nobody knows what the tank holds";
  const std::string tank = R"("kind": "tank")";
  dry.replace(dry.find(tank), tank.size(), R"("kind": "cabinet")");
  EXPECT_EQ(told({"loads", plan(dry)}).code, 0) << "no tanks, and nobody weighed the sides";
  EXPECT_EQ(told({"loads", repository_path("plans/sanderling.json")}).code, 1) << "heater above its circuit";
  EXPECT_EQ(told({"loads", plan(plan_that_meets())}).code, 2) << "nothing to compare";
  EXPECT_EQ(told({"loads", file, "--configuration", "noon"}).code, 64);
  EXPECT_EQ(told({"loads", plan(plan_that_is_broken())}).code, 65);
}

TEST_F(Program, RefusesACommandItDoesNotKnow) {
  const std::string file = plan(plan_that_meets());
  for (const std::vector<std::string>& arguments :
       std::vector<std::vector<std::string>>{{},
                                             {"chekc", file},
                                             {file},
                                             {"--jsn"},
                                             {"check"},
                                             {"check", file, file},
                                             {"check", file, "--jsn"},
                                             {"check", file, "--out", "x"},
                                             {"draw"},
                                             {"draw", file, "--out"},
                                             {"draw", file, "--json"},
                                             {"check", file, "draw", file},
                                             {"heater"},
                                             {"heater", file, file},
                                             {"heater", file, "--details"},
                                             {"heater", file, "--configuration"},
                                             {"heater", file, "--configuration", "noon"},
                                             {"heater", file, "--configuration", "day", "noon"},
                                             {"heater", file, "--json", "--configuration", ""},
                                             {"explain", "heat.three-feet", "heat.stowed"},
                                             {"explain", "heat.nonsense"},
                                             {"explain", "heat.nonsense", "--json"}}) {
    SCOPED_TRACE(testing::PrintToString(arguments));
    const ProgramSaid refused = told(arguments);
    EXPECT_EQ(refused.code, 64);
    EXPECT_EQ(refused.out, "");
    EXPECT_FALSE(refused.err.empty());
  }
}

TEST_F(Program, NamesTheRulesWhenAskedForOneThatIsNone) {
  EXPECT_NE(told({"explain", "heat.nonsense"}).err.find("\nheat.three-feet "), std::string::npos);
}

TEST_F(Program, TellsTheFaultsOfAPlanOnStandardError) {
  const std::string file = plan(plan_that_is_broken());
  const ProgramSaid check = told({"check", file});
  EXPECT_EQ(check.code, 65);
  EXPECT_EQ(check.out, "");
  EXPECT_TRUE(check.err.starts_with(file + ":2:")) << check.err;
  EXPECT_NE(check.err.find("[length.comma]"), std::string::npos) << check.err;
  EXPECT_EQ(told({"draw", file, "--out", folder.path("out")}).code, 65);
  EXPECT_FALSE(std::filesystem::exists(folder.path("out")));
}

TEST_F(Program, TellsTheFaultsOfAPlanToAMachineOnStandardOutput) {
  const std::string file = plan(plan_that_is_broken());
  const ProgramSaid check = told({"check", "--json", file});
  EXPECT_EQ(check.code, 65);
  EXPECT_EQ(check.err, "");
  const auto json = nlohmann::json::parse(check.out);
  EXPECT_EQ(json["file"], file);
  ASSERT_EQ(json["problems"].size(), 1U) << check.out;
  EXPECT_EQ(json["problems"][0]["id"], "length.comma");
  EXPECT_EQ(json["problems"][0]["line"], 2);
}

TEST_F(Program, TellsThatAPlanDoesNotStand) {
  const ProgramSaid check = told({"check", plan(plan_that_falls())});
  EXPECT_EQ(check.code, 65);
  EXPECT_EQ(check.out, "");
  EXPECT_NE(check.err.find("1 fault in "), std::string::npos) << check.err;
}

TEST_F(Program, RefusesAPlanOfFiveMebibytes) {
  std::string text = plan_that_meets();
  text.insert(text.size() - 1, "/*" + std::string(5U << 20U, ' ') + "*/");
  const ProgramSaid check = told({"check", plan(text)});
  EXPECT_EQ(check.code, 65);
  EXPECT_EQ(check.out, "");
  EXPECT_LT(check.err.size(), 1000U);
  // The same plan with a shorter comment is read.
  EXPECT_EQ(told({"check", plan("/*" + std::string(3U << 20U, ' ') + "*/" + plan_that_meets())}).code, 0);
}

TEST_F(Program, SaysWhenAPlanCannotBeRead) {
  for (const std::string& place : {folder.path("missing.json"), folder.path(), std::string{}})
    for (const char* verb : {"check", "draw", "heater"}) {
      SCOPED_TRACE(verb + (" " + place));
      const ProgramSaid refused = told({verb, place});
      EXPECT_EQ(refused.code, 66);
      EXPECT_EQ(refused.out, "");
      EXPECT_TRUE(refused.err.starts_with("berthwright: " + place + ": ")) << refused.err;
    }
}

TEST_F(Program, SaysTheSameBytesTwice) {
  const std::string file = plan(plan_with_an_unknown());
  const std::string heater = folder.put("heater.json", plan_with_room_for_a_heater());
  for (const std::vector<std::string>& arguments :
       std::vector<std::vector<std::string>>{{"check", file, "--details", "--defaults"},
                                             {"check", file, "--json"},
                                             {"heater", heater, "--json"},
                                             {"explain", "--json"}})
    EXPECT_EQ(told(arguments).out, told(arguments).out);
  told({"draw", file, "--out", folder.path("one")});
  told({"draw", file, "--out", folder.path("two")});
  EXPECT_EQ(files_in(folder.path("one")), files_in(folder.path("two")));
}

TEST_F(Program, AddsWhatIsAskedFor) {
  const std::string file = plan(plan_with_an_unknown());
  const std::string plain = told({"check", file}).out;
  const std::string details = told({"check", file, "--details"}).out;
  const std::string defaults = told({"check", file, "--defaults"}).out;
  EXPECT_EQ(plain.find("bed.size"), std::string::npos);
  EXPECT_NE(details.find("bed.size"), std::string::npos);
  EXPECT_EQ(plain.find("/drives_on"), std::string::npos);
  EXPECT_NE(defaults.find("/drives_on"), std::string::npos);
}

TEST_F(Program, HelpsWithAnExampleForEveryVerb) {
  const ProgramSaid help = told({"--help"});
  for (const std::string verb : {"check", "draw", "heater", "explain"}) {
    SCOPED_TRACE(verb);
    const ProgramSaid of_verb = told({verb, "--help"});
    EXPECT_EQ(of_verb.code, 0);
    EXPECT_EQ(of_verb.err, "");
    EXPECT_NE(of_verb.out.find("Example:\n  berthwright " + verb + " "), std::string::npos) << of_verb.out;
    EXPECT_NE(help.out.find("\n  " + verb + " "), std::string::npos) << help.out;
    EXPECT_EQ(told({verb, "-h"}).out, of_verb.out);
  }
  EXPECT_EQ(help.code, 0);
  EXPECT_EQ(help.err, "");
  EXPECT_NE(help.out.find("Example:\n  berthwright "), std::string::npos);
}

TEST_F(Program, NamesItsVersion) {
  for (const char* flag : {"--version", "-V"}) {
    const ProgramSaid version = told({flag});
    EXPECT_EQ(version.code, 0);
    EXPECT_EQ(version.err, "");
    EXPECT_TRUE(version.out.starts_with("berthwright ")) << version.out;
  }
}

TEST_F(Program, ExplainsRulesInTextAndJson) {
  EXPECT_EQ(told({"explain"}).code, 0);
  EXPECT_TRUE(told({"explain", "heat.three-feet"}).out.starts_with("heat.three-feet\n"));
  const auto json = nlohmann::json::parse(told({"explain", "heat.three-feet", "--json"}).out);
  EXPECT_EQ(json["limit_mm"], 914.4);
  EXPECT_GT(nlohmann::json::parse(told({"explain", "--json"}).out).size(), 10U);
}

TEST_F(Program, NeverLetsAnArgumentCommandTheTerminal) {
  const std::string hostile = "\x1b]0;owned\x07";
  for (const std::vector<std::string>& arguments : std::vector<std::vector<std::string>>{
           {"explain", hostile},
           {"check", hostile},
           {hostile},
           {"check", hostile, hostile},
           {"heater", plan(plan_that_meets()), "--configuration", hostile},
           {"draw", plan(plan_that_does_not()), "--out", folder.path("p/" + hostile)},
           {"draw", plan(plan_that_meets()), "--out", folder.put("f", "") + "/" + hostile}})
    EXPECT_EQ(told(arguments).err.find('\x1b'), std::string::npos) << testing::PrintToString(arguments);
}

// A place that takes some bytes and no more, like a full disk.
class FullDisk : public std::streambuf {
 public:
  explicit FullDisk(std::streamsize room) : room_(room) {}

 protected:
  int_type overflow(int_type c) override { return room_-- > 0 ? c : traits_type::eof(); }
  std::streamsize xsputn(const char*, std::streamsize count) override {
    const std::streamsize taken = std::min(count, room_);
    room_ -= taken;
    return taken;
  }

 private:
  std::streamsize room_;
};

TEST_F(Program, SaysWhenItsResultCouldNotBeWritten) {
  const std::string file = plan(plan_that_meets());
  for (const std::vector<std::string>& arguments :
       std::vector<std::vector<std::string>>{{"check", file},
                                             {"check", file, "--json"},
                                             {"draw", file, "--out", folder.path("out")},
                                             {"heater", file},
                                             {"explain"},
                                             {"--help"},
                                             {"--version"}})
    for (const std::streamsize room : {0, 5}) {
      SCOPED_TRACE(testing::PrintToString(arguments));
      FullDisk disk(room);
      std::ostream out(&disk);
      std::ostringstream err;
      EXPECT_EQ(run(arguments, out, err), 74);
      EXPECT_NE(err.str().find("could not be written"), std::string::npos);
    }
}

}  // namespace
}  // namespace berthwright
