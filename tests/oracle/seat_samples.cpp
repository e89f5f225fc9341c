#include "oracle/seat_samples.h"

#include <algorithm>
#include <cmath>

namespace oracle {

namespace {

constexpr double mm = 1 / 25.4;
constexpr double off_border = 0.001;
// ANSUR II (NATICK/TR-15/007, public raw files), 5th percentile woman and 95th percentile man.
constexpr double shoulders_of_small_woman = 406 * mm;
constexpr double eyes_of_small_woman = 698 * mm;
constexpr double eyes_of_large_man = 860 * mm;
constexpr double forearms_of_large_man = 666.9 * mm;
constexpr double elbows_of_small_woman = 189 * mm;
constexpr double elbows_of_large_man = 291 * mm;

std::vector<double> samples(double from, double to) {
  std::vector<double> points;
  const int count = std::max(1, static_cast<int>((to - from) * 4) + 1);
  for (int i = 0; i <= count; ++i)
    points.push_back(from + off_border + (to - from - 2 * off_border) * i / count);
  return points;
}

std::vector<double> across_of_eyes(const SampledSeat& seat) {
  const double inset = shoulders_of_small_woman / 2;
  if (2 * inset >= seat.width) return {seat.width / 2};
  return samples(inset - off_border, seat.width - inset + off_border);
}

double outside(double low, double high, double at) { return std::max({low - at, at - high, 0.0}); }

}  // namespace

double sampled_head_room(const SampledSeat& seat, const std::vector<SampledBox>& boxes, double roof) {
  double lowest = roof;
  const std::vector<double> eyes = across_of_eyes(seat);
  for (const double x : samples(seat.back + 4, seat.back + 12))
    for (const double y : samples(eyes.front() - 4, eyes.back() + 4)) {
      if (y < 0 || y > seat.width) continue;
      for (const SampledBox& box : boxes)
        if (box.x0 < x && x < box.x1 && box.y0 < y && y < box.y1) lowest = std::min(lowest, box.z0);
    }
  return lowest - seat.sits_at;
}

double sampled_eye_distance(const SampledSeat& seat, const SampledBox& box) {
  double least = 1e9;
  for (const double y : across_of_eyes(seat))
    for (const double z : samples(seat.sits_at + eyes_of_small_woman, seat.sits_at + eyes_of_large_man))
      least = std::min(least, std::hypot(outside(box.x0, box.x1, seat.back + 8), outside(box.y0, box.y1, y),
                                         outside(box.z0, box.z1, z)));
  return least;
}

bool sampled_in_elbow_room(const SampledSeat& seat, const SampledBox& box) {
  const double beyond = (forearms_of_large_man - 24) / 2;
  for (const double x : samples(seat.back, seat.back + 12))
    for (const double y : samples(-beyond, seat.width + beyond))
      for (const double z : samples(seat.sits_at + elbows_of_small_woman, seat.sits_at + elbows_of_large_man))
        if (box.x0 < x && x < box.x1 && box.y0 < y && y < box.y1 && box.z0 < z && z < box.z1) return true;
  return false;
}

}  // namespace oracle
