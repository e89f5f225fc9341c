#include <berthwright/yard/program.h>

#include <gtest/gtest.h>

#include <sstream>

#include "support/one_line.h"
#include "support/temporary_folder.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

using support::on_one_line;

// A room of 120 x 76 in; across its rear a bench of 30 in with a mattress by night; a heater of 10 x 10 x 10
// in, 20 in from the front wall; a door in the right wall.
TrailerText bench_and_heater() {
  TrailerText text;
  text.openings = {R"({"id": "door", "name": "Door", "kind": "door", "wall": "right", "from_front": 60,
                       "width": 26, "height": 66, "sill": 2, "opens": "out", "hinge": "rear"})"};
  text.fixtures = {R"({"id": "bench", "name": "Bench", "kind": "bench", "length": 30, "width": 76,
                       "at": {"rear": 0, "left": 0}, "top": 14})"};
  text.pieces = {R"({"id": "H", "name": "Heater", "kind": "heater", "length": 10, "width": 10, "height": 10,
                     "faces": "rear", "data_plate": {"front": 36, "back": 6, "sides": 12, "top": 24}})",
                 R"({"id": "M", "name": "Mattress", "kind": "cushion", "length": 30, "width": 76,
                     "thickness": 4})"};
  text.day = {R"({"piece": "H", "at": {"front": 20, "left": 30}, "on": "floor"})"};
  text.night = {R"({"piece": "M", "at": {"rear": 0, "left": 0}, "on": "bench"})", text.day.front()};
  text.beds = {R"({"id": "bed", "name": "Bed", "configuration": "night", "pieces": ["M"]})"};
  return text;
}

TrailerText heater_at(const std::string& front, const std::string& left) {
  TrailerText text = bench_and_heater();
  text.day = {R"({"piece": "H", "at": {"front": )" + front + R"(, "left": )" + left + R"(}, "on": "floor"})"};
  text.night.back() = text.day.front();
  return text;
}

struct Answers {
  int check = 0;
  int heater = 0;
  int draw = 0;
  std::string checked;  ///< on one line, as the rest; of a plan with faults the faults
  std::string sited;
  std::string drawings;  ///< every sheet after the other
};

class OddHeaters : public testing::Test {
 protected:
  Answers answers(const TrailerText& text) const {
    const std::string file = folder_.put("plan.json", text.json());
    Answers all;
    const auto told = [&](const std::vector<std::string>& arguments, int& code) {
      std::ostringstream out;
      std::ostringstream err;
      code = run(arguments, out, err);
      return on_one_line(out.str() + err.str());
    };
    all.checked = told({"check", file, "--details"}, all.check);
    all.sited = told({"heater", file}, all.heater);
    const TemporaryFolder drawn;
    told({"draw", file, "--out", drawn.path()}, all.draw);
    for (const auto& [name, bytes] : files_in(drawn.path())) all.drawings += on_one_line(bytes);
    return all;
  }

 private:
  TemporaryFolder folder_;
};

#define EXPECT_SAYS(text, words) EXPECT_NE((text).find(words), std::string::npos) << (text)

// Beside the rear wall, through it, and beyond it: as far as the measures around a plan, and farther.
TEST_F(OddHeaters, OutsideTheRoom) {
  for (const char* front : {"112", "119", "130", "140"}) {
    SCOPED_TRACE(front);
    const Answers all = answers(heater_at(front, "30"));
    EXPECT_EQ(all.check, 1);
    EXPECT_SAYS(all.checked, "Heater reaches outside the room");
    EXPECT_SAYS(all.sited, "There it does not keep the walls and the roof");
    EXPECT_EQ(all.draw, 0);
    EXPECT_EQ(all.drawings.find("Outside the room: Heater.") != std::string::npos, std::stoi(front) >= 120);
  }
  for (const char* left : {"70", "100"}) {
    SCOPED_TRACE(left);
    const Answers all = answers(heater_at("20", left));
    EXPECT_EQ(all.check, 1);
    EXPECT_SAYS(all.checked, "Heater reaches outside the room");
    EXPECT_EQ(all.draw, 0);
  }
}

TEST_F(OddHeaters, InsideACabinet) {
  TrailerText text = bench_and_heater();
  text.fixtures.push_back(R"({"id": "chest", "name": "Chest", "kind": "cabinet", "length": 30, "width": 30,
                              "at": {"front": 10, "left": 20}, "top": 30})");
  const Answers all = answers(text);
  EXPECT_EQ(all.check, 1);
  EXPECT_SAYS(all.checked, "By day, Chest and Heater need the same space");
  EXPECT_SAYS(all.sited, "There it does not keep what stands there");
  EXPECT_EQ(all.draw, 0);
}

// The mattress lies on a board 20 in up, the heater 10 in high beneath it, its edge 10 in or more above.
TEST_F(OddHeaters, UnderTheBed) {
  TrailerText text = heater_at("100", "30");
  text.fixtures.clear();
  for (const char* side : {"left", "right"})
    text.fixtures.push_back(R"({"id": ")" + std::string(side) + R"( ledge", "kind": "ledge", "length": 30,
                                "width": 2, "at": {"rear": 0, ")" +
                            side + R"(": 0}, "base": 18, "top": 20})");
  text.pieces.push_back(R"({"id": "B", "kind": "board", "length": 30, "width": 76, "thickness": "3/4"})");
  for (auto* poses : {&text.day, &text.night})
    poses->insert(poses->begin(), R"({"piece": "B", "at": {"rear": 0, "left": 0}, "on": "left ledge"})");
  text.night[1] = R"({"piece": "M", "at": {"rear": 0, "left": 0}, "on": "B"})";
  const Answers all = answers(text);
  EXPECT_EQ(all.check, 1);
  // The mattress begins 20 3/4 in up: 10 3/4 in above the heater's top. The bedding hangs before its edge.
  EXPECT_SAYS(all.checked, "Bed (bare) lies 10 3/4\" (273 mm) from Heater");
  EXPECT_SAYS(all.sited, "There it does not keep the published distance and the maker's distances");
  EXPECT_EQ(all.draw, 0);
}

TEST_F(OddHeaters, WithoutADoor) {
  TrailerText text = bench_and_heater();
  text.openings.clear();
  const Answers all = answers(text);
  EXPECT_EQ(all.check, 0);
  EXPECT_SAYS(all.checked,
              "The plan shows no door that opens and no opening marked as a way out, so no way "
              "out was measured");
  EXPECT_SAYS(all.sited, "By night: places that keep every rule that could be compared");
  EXPECT_EQ(all.draw, 0);
  EXPECT_SAYS(all.drawings, "no door that opens");
}

TEST_F(OddHeaters, BesideABedWithoutAFreeEdge) {
  TrailerText text = bench_and_heater();
  text.fixtures.push_back(R"({"id": "screen", "name": "Screen", "kind": "wall", "length": 2, "width": 76,
                              "at": {"front": 88, "left": 0}, "top": 76})");
  const Answers all = answers(text);
  EXPECT_SAYS(all.checked, "Bed has no free edge: a wall or furniture stands along all of it");
  EXPECT_EQ(all.heater, 2) << "no cord";
  EXPECT_EQ(all.draw, 0);
}

TEST_F(OddHeaters, BesideAnOpeningWiderThanItsWall) {
  TrailerText text = bench_and_heater();
  text.openings[0] = R"({"id": "door", "name": "Door", "kind": "door", "wall": "right", "from_front": 0,
                         "width": 130, "height": 66, "opens": "out"})";
  const Answers all = answers(text);
  for (const int code : {all.check, all.heater, all.draw}) EXPECT_EQ(code, 65);
  for (const std::string& told : {all.checked, all.sited}) EXPECT_SAYS(told, "[opening.outside-wall]");
  EXPECT_TRUE(all.drawings.empty());
}

// Distances of nothing ask for nothing: 4 ft 10 in to the bedding is all to spare, and no zone takes a place.
TEST_F(OddHeaters, WithDistancesOfZero) {
  TrailerText text = bench_and_heater();
  text.pieces[0] = R"({"id": "H", "name": "Heater", "kind": "heater", "length": 10, "width": 10, "height": 10,
                       "faces": "rear", "data_plate": {"front": 0, "back": 0, "sides": 0, "top": 0}})";
  text.rules = {R"("heat.three-feet": {"limit": 0, "reason": "as a trial"})"};
  const Answers all = answers(text);
  EXPECT_SAYS(all.checked, "the plan's own figure (as a trial) in place of");
  EXPECT_SAYS(all.sited, "published distance 0\" (0 mm), 4' 10\" (1473.2 mm) to spare");
  EXPECT_EQ(all.draw, 0);
  EXPECT_EQ(all.drawings.find("nearer than the published distance"), std::string::npos);
}

TEST_F(OddHeaters, WithoutADataPlate) {
  TrailerText text = bench_and_heater();
  text.pieces[0] = R"({"id": "H", "name": "Heater", "kind": "heater", "length": 10, "width": 10, "height": 10,
                       "faces": "rear"})";
  const Answers all = answers(text);
  EXPECT_SAYS(all.checked,
              "The plan does not give every distance of the data plate of Heater, so they could "
              "not be compared.");
  EXPECT_EQ(all.heater, 2);
  EXPECT_SAYS(all.sited, "the plan does not give its data plate, so the maker's distances are not compared");
  EXPECT_EQ(all.draw, 0);
  EXPECT_SAYS(all.drawings, "data plate: unknown, the plan does not give it");
}

}  // namespace
}  // namespace berthwright
