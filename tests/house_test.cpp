#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "support/house_laws.h"

namespace {

using house::Complaints;
using house::Excuse;
using house::Permit;
using house::Tree;

// The floors from the ground up. Their names sort, so that the list of folders is the section drawing.
const std::vector<std::string_view> floors{"exact", "geometry", "plan", "solve", "view", "write", "yard"};
// The rooms of `solve` from the ground up; finding.h, comparing.h and body.h lie under all of them, answer.h
// above.
const std::vector<std::string_view> solve_rooms{"room", "open",    "bed",   "seat",  "heat", "way",
                                                "site", "convert", "cover", "split", "load", "place"};
const std::vector<std::string_view> solve_ground{"finding", "comparing", "body"};

// Guests by their first folder or file, and the only files that may ask them in.
const std::vector<Permit> guests{
    {"CGAL", {"src/geometry/*_cgal.cpp"}},
    {"boost", {"src/geometry/*_boost.cpp"}},
    {"nlohmann",
     {"src/plan/document.cpp", "src/plan/read_*.cpp", "src/plan/write_plan.cpp", "src/write/json*.cpp"}},
    {"CLI", {"src/yard/*"}},
    {"microhttpd.h", {"src/yard/*_microhttpd.cpp"}},
    {"arpa", {"src/yard/*_microhttpd.cpp"}},
    {"netinet", {"src/yard/*_microhttpd.cpp"}},
    {"cairo-ft.h", {"src/write/pdf_cairo.cpp"}},
    {"cairo-pdf.h", {"src/write/pdf_cairo.cpp"}},
    {"qpdf", {"src/write/pdf_tags.cpp"}},
    {"fcntl.h", {"src/yard/*"}},
    {"signal.h", {"src/yard/*"}},
    {"sys", {"src/yard/*"}},
    {"unistd.h", {"src/yard/*"}},
};

// Only the yard touches disk, clock, environment and terminal; only rational numbers decide and print.
const std::vector<std::string_view> yard_only{"src/yard/*", "include/berthwright/yard/*"};
// main.cpp hands the terminal to the yard, so that a test may hand it something else.
const std::vector<std::string_view> terminal{"src/yard/*", "include/berthwright/yard/*", "src/main.cpp"};
const std::vector<std::string_view> nowhere{};
const std::vector<Permit> words{
    {"iostream", terminal},
    {"fstream", yard_only},
    {"filesystem", yard_only},
    {"cout", terminal},
    {"cerr", terminal},
    {"clog", yard_only},
    {"printf", yard_only},
    {"puts", yard_only},
    {"fopen", yard_only},
    {"getenv", yard_only},
    {"system_clock", yard_only},
    {"steady_clock", yard_only},
    {"setlocale", nowhere},
    {"locale", nowhere},
    {"random_device", nowhere},
    {"std::rand", nowhere},
    {"std::sin", nowhere},
    {"std::cos", nowhere},
    {"std::tan", nowhere},
    {"std::atan2", nowhere},
    {"std::exp", nowhere},
    {"std::log", nowhere},
    {"std::pow", nowhere},
    // Rounded the same everywhere (IEEE 754), and there it only guides a search: whole numbers decide.
    {"std::sqrt", {"src/solve/place/nest_*.cpp"}},
    // Faults of a file are problems, faults of ours end in the one place that reports them. The JSON guest
    // throws.
    {"catch", {"src/yard/*", "src/main.cpp", "src/plan/document.cpp", "src/plan/read_*.cpp"}},
};

const std::vector<Excuse> long_files{};
const std::vector<Excuse> shared_names{};
const std::vector<std::string_view> junk{"util",   "utils", "helper",  "helpers",
                                         "common", "misc",  "manager", "stuff"};

const Tree& tree() {
  static const Tree tree = house::read_tree(PROJECT_ROOT);
  return tree;
}
const Complaints none;

TEST(House, FloorsSortFromTheGroundUp) { EXPECT_TRUE(std::ranges::is_sorted(floors)); }

TEST(House, IsNotEmpty) {
  std::size_t product = 0;
  std::size_t tests = 0;
  std::size_t includes = 0;
  for (const auto& [path, text] : tree()) {
    (path.starts_with("tests/") ? tests : product) += 1;
    includes += house::includes_of(text).size();
  }
  EXPECT_GT(product, 20U);
  EXPECT_GT(tests, 2U);
  EXPECT_GT(includes, 50U);
}

TEST(House, IncludesNeverClimb) {
  EXPECT_EQ(house::climbing_includes(tree(), floors), none);
  EXPECT_EQ(house::climbing_rooms(tree(), "solve", solve_rooms, solve_ground), none);
}

TEST(House, GuestsStayIndoors) {
  EXPECT_EQ(house::guests_in_headers(tree()), none);
  EXPECT_EQ(house::guests_out_of_place(tree(), guests), none);
}

TEST(House, OnlyTheYardTouchesTheWorld) { EXPECT_EQ(house::words_out_of_place(tree(), words), none); }

TEST(House, FilesAreShortAndNamedForWhatTheyHold) {
  EXPECT_EQ(house::long_files(tree(), 400, long_files), none);
  EXPECT_EQ(house::junk_drawers(tree(), junk), none);
  EXPECT_EQ(house::shared_names(tree(), shared_names), none);
  EXPECT_EQ(house::careless_headers(tree()), none);
}

// Each law is broken on purpose in a small tree, so that a law that reports nothing is not a law that sees
// nothing.

TEST(HouseLaws, AClimbingIncludeIsReportedInEitherSpelling) {
  EXPECT_EQ(house::climbing_includes(
                {{"include/berthwright/exact/a.h", "#include <berthwright/plan/plan.h>\n"}}, floors),
            Complaints{"include/berthwright/exact/a.h: <berthwright/plan/plan.h> climbs"});
  EXPECT_EQ(house::climbing_includes({{"src/geometry/a.cpp", "x\n  #  include \"write/svg.h\"\n"}}, floors),
            Complaints{"src/geometry/a.cpp: \"write/svg.h\" climbs"});
  EXPECT_EQ(house::climbing_includes({{"src/write/a.cpp",
                                       "#include \"geometry/b.h\"\n#include <berthwright/write/c.h>\n"
                                       "#include <map>\n#include <CGAL/b.h>\n"}},
                                     floors),
            none);
}

TEST(HouseLaws, AnIncludeOrAFileWithoutFloorIsReported) {
  EXPECT_EQ(house::climbing_includes({{"src/geometry/a.cpp", "#include \"b.h\"\n"}}, floors),
            Complaints{"src/geometry/a.cpp: \"b.h\" names no floor"});
  EXPECT_EQ(house::climbing_includes({{"src/attic/a.cpp", ""}}, floors),
            Complaints{"src/attic/a.cpp: stands on no floor"});
}

TEST(HouseLaws, MainCallsTheYardAlone) {
  EXPECT_EQ(house::climbing_includes({{"src/main.cpp", "#include \"yard/run.h\"\n"}}, floors), none);
  EXPECT_EQ(house::climbing_includes({{"src/main.cpp", "#include <berthwright/plan/plan.h>\n"}}, floors),
            Complaints{"src/main.cpp: <berthwright/plan/plan.h> goes past the top floor"});
}

TEST(HouseLaws, ARoomMayNotKnowTheNextRoom) {
  const auto rooms = [](std::string_view path, std::string_view include) {
    return house::climbing_rooms({{std::string(path), "#include " + std::string(include) + "\n"}}, "solve",
                                 solve_rooms, solve_ground);
  };
  EXPECT_EQ(rooms("src/solve/bed/a.cpp", "<berthwright/solve/heat/b.h>"),
            Complaints{"src/solve/bed/a.cpp: <berthwright/solve/heat/b.h> climbs"});
  EXPECT_EQ(rooms("src/solve/bed/a.cpp", "<berthwright/solve/answer.h>").size(), 1U);
  EXPECT_EQ(rooms("src/solve/finding.cpp", "\"solve/room/b.h\"").size(), 1U);
  EXPECT_EQ(rooms("src/solve/shed/a.cpp", "<map>"), Complaints{"src/solve/shed/a.cpp: stands in no room"});
  EXPECT_EQ(rooms("src/solve/heat/a.cpp", "<berthwright/solve/room/b.h>"), none);
  EXPECT_EQ(rooms("src/solve/room/a.cpp", "<berthwright/solve/finding.h>"), none);
  EXPECT_EQ(rooms("src/solve/answered.cpp", "<berthwright/solve/heat/b.h>"), none);
}

TEST(HouseLaws, AGuestInAHeaderIsReported) {
  EXPECT_EQ(house::guests_in_headers({{"src/geometry/a.h", "#include <CGAL/b.h>\n#include <vector>\n"}}),
            Complaints{"src/geometry/a.h: <CGAL/b.h> is a guest in a header"});
  EXPECT_EQ(house::guests_in_headers(
                {{"src/geometry/a.h", "#include <berthwright/exact/b.h>\n// #include <CGAL/c.h>\n"}}),
            none);
}

TEST(HouseLaws, AGuestIsWelcomeOnlyInNamedFiles) {
  const auto visit = [](std::string_view path, std::string_view include) {
    return house::guests_out_of_place({{std::string(path), "#include " + std::string(include) + "\n"}},
                                      guests);
  };
  EXPECT_EQ(visit("src/geometry/region.cpp", "<CGAL/b.h>"),
            Complaints{"src/geometry/region.cpp: <CGAL/b.h> is a guest out of place"});
  EXPECT_EQ(visit("src/geometry/region_cgal.cpp", "<boost/b.hpp>").size(), 1U);
  EXPECT_EQ(visit("src/view/sheet.cpp", "<nlohmann/json.hpp>").size(), 1U);
  EXPECT_EQ(visit("src/solve/a.cpp", "<CLI/CLI.hpp>").size(), 1U);
  EXPECT_EQ(visit("src/geometry/a.cpp", "<geos_c.h>").size(), 1U);
  EXPECT_EQ(visit("src/write/svg.cpp", "<cairo-svg.h>").size(), 1U);
  EXPECT_EQ(visit("src/write/pdf_tags.cpp", "<cairo-pdf.h>").size(), 1U);
  EXPECT_EQ(visit("src/geometry/region_cgal.cpp", "<CGAL/b.h>"), none);
  EXPECT_EQ(visit("src/yard/commands.cpp", "<CLI/CLI.hpp>"), none);
}

TEST(HouseLaws, AWordOutOfPlaceIsReportedUnlessItIsNoCode) {
  const auto speak = [](std::string_view path, std::string_view text) {
    return house::words_out_of_place({{std::string(path), std::string(text)}}, words);
  };
  for (const Permit& permit : words) {
    SCOPED_TRACE(permit.thing);
    const std::string use = "f(1'000); " + std::string(permit.thing) + " (x);";
    EXPECT_EQ(speak("src/view/a.cpp", use).size(), 1U);
    EXPECT_EQ(speak("src/view/a.cpp", "// " + use + "\n/* " + use + " */ \"" + use + "\" R\"(" + use + ")\"")
                  .size(),
              0U);
    EXPECT_EQ(speak("src/view/a.cpp",
                    "my_" + std::string(permit.thing.substr(permit.thing.rfind(':') + 1)) + "s();")
                  .size(),
              0U);
  }
  EXPECT_EQ(speak("src/yard/a.cpp", "std::cout << 1;"), none);
  EXPECT_EQ(speak("src/yard/a.cpp", "std::locale::global(l);").size(), 1U);
}

TEST(HouseLaws, ALongFileNeedsAReasonAndAReasonALongFile) {
  const Tree tall{{"src/view/a.cpp", "1\n2\n3\n"}, {"src/view/b.cpp", "1\n2"}};
  EXPECT_EQ(house::long_files(tall, 2, {}), Complaints{"src/view/a.cpp: 3 lines and no reason"});
  EXPECT_EQ(house::long_files(tall, 2, {{"src/view/a.cpp", ""}}).size(), 2U);
  EXPECT_EQ(house::long_files(tall, 2, {{"src/view/a.cpp", "a table"}}), none);
  EXPECT_EQ(house::long_files(tall, 3, {{"src/view/a.cpp", "a table"}}),
            Complaints{"src/view/a.cpp: an excuse for no long file"});
}

TEST(HouseLaws, AJunkDrawerIsReported) {
  EXPECT_EQ(
      house::junk_drawers(
          {{"src/view/text_util.cpp", ""}, {"src/common/a.cpp", ""}, {"src/view/futile.cpp", ""}}, junk),
      (Complaints{"src/common/a.cpp: named for nothing", "src/view/text_util.cpp: named for nothing"}));
}

TEST(HouseLaws, OneNameInTwoPlacesIsReported) {
  const Tree twins{
      {"include/berthwright/plan/bed.h", ""}, {"src/plan/bed.cpp", ""}, {"src/view/bed.cpp", ""}};
  EXPECT_EQ(house::shared_names(twins, {}),
            Complaints{"plan/bed and view/bed: one name in different places"});
  EXPECT_EQ(house::shared_names(twins, {{"bed", "on purpose"}}), none);
  EXPECT_EQ(house::shared_names({{"src/plan/bed.cpp", ""}, {"tests/oracle/bed.cpp", ""}}, {}), none);
}

TEST(HouseLaws, ACarelessHeaderIsReported) {
  const std::string guard = "#pragma once\n";
  EXPECT_EQ(house::careless_headers({{"src/plan/a.h", "struct A {};\n"}}),
            Complaints{"src/plan/a.h: no #pragma once"});
  EXPECT_EQ(house::careless_headers({{"src/plan/a.h", guard + "struct A {};\nclass B;\n"},
                                     {"src/view/b.h", guard + "class [[nodiscard]] A {\n};\nclass B {};\n"}}),
            Complaints{"src/view/b.h: A is a type of src/plan/a.h already"});
}

TEST(HouseLaws, StarsStandForAnyRunOfCharacters) {
  EXPECT_TRUE(house::matches("src/yard/*", "src/yard/a/b.cpp"));
  EXPECT_TRUE(house::matches("src/*/read_*.cpp", "src/plan/read_.cpp"));
  EXPECT_FALSE(house::matches("src/*_cgal.cpp", "src/a_cgal.h"));
  EXPECT_FALSE(house::matches("src/a", "src/a.cpp"));
}

}  // namespace
