#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "oracle/seat_samples.h"
#include "support/seat_trailers.h"

namespace berthwright {
namespace {

double inches(Length length) { return static_cast<double>(length.ticks()) / ticks_per_inch; }

/// A box in the frame of a seat that looks along +x, whole inches.
struct LocalBox {
  int x0, y0, x1, y1, z0, z1;
};

// The seat stands at (80, 80) of a wide room and looks the way named: its frame is turned there by hand.
std::array<std::string, 6> turned(const LocalBox& b, Wall faces) {
  int x0 = 0;
  int y0 = 0;
  bool swapped = false;
  switch (faces) {
    case Wall::rear:
      x0 = 80 + b.x0, y0 = 80 + b.y0;
      break;
    case Wall::front:
      x0 = 80 - b.x1, y0 = 80 - b.y1;
      break;
    case Wall::left:
      x0 = 80 + b.y0, y0 = 80 - b.x1, swapped = true;
      break;
    case Wall::right:
      x0 = 80 - b.y1, y0 = 80 + b.x0, swapped = true;
      break;
  }
  const int along = b.x1 - b.x0;
  const int across = b.y1 - b.y0;
  const auto text = [](int n) { return std::to_string(n); };
  return {text(x0),   text(y0),  text(swapped ? across : along), text(swapped ? along : across),
          text(b.z0), text(b.z1)};
}

struct RandomSeat {
  explicit RandomSeat(unsigned seed) : random(seed) {
    faces = std::array{Wall::front, Wall::rear, Wall::left, Wall::right}[static_cast<std::size_t>(of(0, 3))];
    depth = of(18, 26);
    width = of(6, 70);
    thickness = of(2, 6);
    bench_top = of(10, 18);
    for (int i = 0; i < 4; ++i) lockers.push_back(some_box(30, 85));
    for (int i = 0; i < 4; ++i) cranks.push_back(some_box(27, 60));
  }
  int of(int least, int most) { return std::uniform_int_distribution(least, most)(random); }
  LocalBox some_box(int lowest, int highest) {
    const int x = of(-4, depth);
    const int y = of(-8, width + 4);
    const int z = of(lowest, highest);
    return {x, y, x + of(1, 12), y + of(1, 12), z, z + of(1, 6)};
  }
  TrailerText text() const {
    const auto at = [&](const LocalBox& b) { return turned(b, faces); };
    const std::string wall = std::array{"front", "rear", "left", "right"}[static_cast<std::size_t>(faces)];
    const bool along = faces == Wall::left || faces == Wall::right;  // the back's long edge runs along x
    const auto seat = at({0, 0, depth, width, 0, bench_top});
    const auto back = at({0, 0, thickness, width, 0, 1});
    TrailerText made;
    made.interior = R"({"length": 200, "width": 200, "height": 90})";
    made.fixtures = {box("bench", "bench", seat)};
    for (std::size_t i = 0; i < lockers.size(); ++i)
      made.fixtures.push_back(box("locker " + std::to_string(i), "locker", at(lockers[i])));
    for (std::size_t i = 0; i < cranks.size(); ++i)
      made.fixtures.push_back(box("crank " + std::to_string(i), "protrusion", at(cranks[i])));
    made.pieces = {R"({"id": "A", "kind": "cushion", "length": )" + seat[2] + R"(, "width": )" + seat[3] +
                       R"(, "thickness": 4})",
                   R"({"id": "B", "kind": "cushion", "length": )" + (along ? std::to_string(width) : "15") +
                       R"(, "width": )" + (along ? "15" : std::to_string(width)) + R"(, "thickness": )" +
                       std::to_string(thickness) + "}"};
    const auto place = [](const std::array<std::string, 6>& sides) {
      return R"("at": {"front": )" + sides[0] + R"(, "left": )" + sides[1] + "}";
    };
    made.day = {R"({"piece": "A", )" + place(seat) + R"(, "on": "bench"})",
                R"({"piece": "B", )" + place(back) + R"(, "on": "A", "stands_on": ")" +
                    (along ? "length" : "width") + R"(", "faces": ")" + wall + "\"}"};
    return made;
  }
  std::mt19937 random;
  Wall faces = Wall::rear;
  int depth = 0;
  int width = 0;
  int thickness = 0;
  int bench_top = 0;
  std::vector<LocalBox> lockers;
  std::vector<LocalBox> cranks;
};

oracle::SampledBox sampled(const LocalBox& b) {
  return {double(b.x0), double(b.y0), double(b.x1), double(b.y1), double(b.z0), double(b.z1)};
}

const Knock* knock_with(const ConfigurationAnswer& answer, Knock::Of of, const std::string& thing) {
  for (const Knock& knock : answer.knocks)
    if (knock.of == of && knock.thing == thing) return &knock;
  return nullptr;
}

TEST(Seats, AgreeWithATwinThatTriesPoints) {
  int heads = 0;
  int elbows = 0;
  int under_lockers = 0;
  for (unsigned seed = 1; seed <= 60; ++seed) {
    SCOPED_TRACE(seed);
    const RandomSeat random(seed);
    const Answered made(random.text());
    const ConfigurationAnswer& answer = made.answer.configurations.front();
    ASSERT_EQ(answer.seats.size(), 1U);
    const Seat& seat = answer.seats.front();
    ASSERT_EQ(seat.faces, random.faces);
    EXPECT_EQ(seat.depth, Length::inches(random.depth - random.thickness));
    EXPECT_EQ(seat.length, Length::inches(random.width));
    const oracle::SampledSeat twin{double(random.thickness), double(random.width),
                                   double(random.bench_top + 3)};
    std::vector<oracle::SampledBox> lockers;
    for (const LocalBox& locker : random.lockers) lockers.push_back(sampled(locker));
    ASSERT_TRUE(seat.head_room.has_value());
    EXPECT_NEAR(inches(seat.head_room->height), oracle::sampled_head_room(twin, lockers, 90), 1e-9);
    under_lockers += seat.head_room->under.empty() ? 0 : 1;
    for (std::size_t i = 0; i < random.cranks.size(); ++i) {
      const std::string crank = "crank " + std::to_string(i);
      SCOPED_TRACE(crank);
      const double distance = oracle::sampled_eye_distance(twin, sampled(random.cranks[i]));
      if (const Knock* knock = knock_with(answer, Knock::Of::sitting_head, crank)) {
        ++heads;
        EXPECT_LE(inches(knock->by), distance + 1e-6);
        EXPECT_GE(inches(knock->by), distance - 0.26);
      } else {
        EXPECT_GE(distance, 200 / 25.4 - 1e-6);
      }
      const bool in_room = oracle::sampled_in_elbow_room(twin, sampled(random.cranks[i]));
      EXPECT_EQ(knock_with(answer, Knock::Of::elbow, crank) != nullptr, in_room);
      elbows += in_room ? 1 : 0;
    }
  }
  EXPECT_GT(under_lockers, 10);
  EXPECT_GT(heads, 10);
  EXPECT_GT(elbows, 3);
}

}  // namespace
}  // namespace berthwright
