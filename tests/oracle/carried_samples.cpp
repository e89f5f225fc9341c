#include "oracle/carried_samples.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

namespace berthwright::oracle {
namespace {

using PlainCorner = std::array<double, 2>;
using Sample = std::array<double, 3>;
constexpr double sample_grid = 50, sample_advance = 20,
                 whisker = 0.2;  // chords of arcs stray by 0.05 mm each

bool is_in_ring(const std::vector<PlainCorner>& ring, double x, double y) {
  bool inside = false;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
    if ((ring[i][1] > y) != (ring[j][1] > y) &&
        x < (ring[j][0] - ring[i][0]) * (y - ring[i][1]) / (ring[j][1] - ring[i][1]) + ring[i][0])
      inside = !inside;
  return inside;
}

double to_border(const std::vector<PlainCorner>& ring, double x, double y) {
  double least = 1e9;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const double dx = ring[i][0] - ring[j][0], dy = ring[i][1] - ring[j][1];
    const double t =
        std::clamp(((x - ring[j][0]) * dx + (y - ring[j][1]) * dy) / (dx * dx + dy * dy), 0.0, 1.0);
    least = std::min(least, std::hypot(x - ring[j][0] - t * dx, y - ring[j][1] - t * dy));
  }
  return least;
}

// Positive: inside of the prism by that much.
double depth_in(const PlainPrism& prism, const Sample& p) {
  const double level = std::min(p[2] - prism.base, prism.top - p[2]);
  if (level <= 0) return level;  // outside: how far to the side does not matter
  const double side = to_border(prism.corners, p[0], p[1]) * (is_in_ring(prism.corners, p[0], p[1]) ? 1 : -1);
  return std::min(side, level);
}

std::vector<Sample> points_of(const PlainPrism& prism) {
  std::vector<PlainCorner> plan = prism.corners;
  double low[2] = {1e9, 1e9}, high[2] = {-1e9, -1e9};
  for (const PlainCorner& corner : prism.corners)
    for (int k : {0, 1}) low[k] = std::min(low[k], corner[k]), high[k] = std::max(high[k], corner[k]);
  for (std::size_t i = 0, j = prism.corners.size() - 1; i < prism.corners.size(); j = i++) {
    const PlainCorner a = prism.corners[j], b = prism.corners[i];
    const int parts = static_cast<int>(std::hypot(b[0] - a[0], b[1] - a[1]) / sample_grid) + 1;
    for (int k = 1; k < parts; ++k)
      plan.push_back({a[0] + (b[0] - a[0]) * k / parts, a[1] + (b[1] - a[1]) * k / parts});
  }
  for (double x = low[0] + sample_grid / 2; x < high[0]; x += sample_grid)
    for (double y = low[1] + sample_grid / 2; y < high[1]; y += sample_grid)
      if (is_in_ring(prism.corners, x, y)) plan.push_back({x, y});
  std::vector<Sample> points;
  const int layers = static_cast<int>((prism.top - prism.base) / sample_grid) + 2;
  for (const PlainCorner& p : plan)
    for (int k = 0; k <= layers; ++k)
      points.push_back({p[0], p[1], prism.base + (prism.top - prism.base) * k / layers});
  return points;
}

struct SampledReach {
  double low[3] = {1e9, 1e9, 1e9};
  double high[3] = {-1e9, -1e9, -1e9};
};
SampledReach box_of(const PlainPrism& prism) {
  SampledReach box;
  for (const PlainCorner& corner : prism.corners)
    for (int k : {0, 1})
      box.low[k] = std::min(box.low[k], corner[k]), box.high[k] = std::max(box.high[k], corner[k]);
  box.low[2] = prism.base, box.high[2] = prism.top;
  return box;
}

using PlaceMap = std::function<Sample(const Sample&)>;

/// Where points of the thing are at `part` (0 to 1) of the motion, and back from there.
struct Carried {
  PlaceMap there;
  PlaceMap back;
};

Carried straight_on(const PlainMotion& motion, double part) {
  const SampledReach a = box_of(motion.before), b = box_of(motion.after);
  const Sample by{(b.low[0] - a.low[0]) * part, (b.low[1] - a.low[1]) * part, (b.low[2] - a.low[2]) * part};
  return {[by](const Sample& p) {
            return Sample{p[0] + by[0], p[1] + by[1], p[2] + by[2]};
          },
          [by](const Sample& p) {
            return Sample{p[0] - by[0], p[1] - by[1], p[2] - by[2]};
          }};
}

// Rotation in the plane of two axes about a point.
Carried rotation(int u, int v, double cu, double cv, double angle) {
  const auto turn = [=](double by) {
    return [=](const Sample& p) {
      Sample q = p;
      const double a = p[static_cast<std::size_t>(u)] - cu, b = p[static_cast<std::size_t>(v)] - cv;
      q[static_cast<std::size_t>(u)] = cu + a * std::cos(by) - b * std::sin(by);
      q[static_cast<std::size_t>(v)] = cv + a * std::sin(by) + b * std::cos(by);
      return q;
    };
  };
  return {turn(angle), turn(-angle)};
}

// Evenly from key to key.
Carried swung(const PlainMotion& motion, double part) {
  const double along = part * static_cast<double>(motion.keys.size() - 1);
  const auto from = std::min(static_cast<std::size_t>(along), motion.keys.size() - 2);
  const double share = along - static_cast<double>(from);
  const PlainMotion::Key &a = motion.keys[from], &b = motion.keys[from + 1];
  const double radians = a.radians + share * (b.radians - a.radians);
  const auto u = static_cast<std::size_t>(motion.axis);
  const double du = a.at + share * (b.at - a.at) - motion.pivot[0];
  const double dz = a.height + share * (b.height - a.height) - motion.pivot[1];
  const Carried turned = rotation(motion.axis, 2, motion.pivot[0], motion.pivot[1], radians);
  const auto moved = [u](Sample p, double by_u, double by_z) {
    p[u] += by_u, p[2] += by_z;
    return p;
  };
  return {[=](const Sample& p) { return moved(turned.there(p), du, dz); },
          [=](const Sample& p) { return turned.back(moved(p, -du, -dz)); }};
}

Carried at_part(const PlainMotion& motion, double part) {
  if (motion.kind == PlainMotion::Kind::swing) return swung(motion, part);
  const double quarter = std::numbers::pi / 2 * part;
  const SampledReach a = box_of(motion.before), b = box_of(motion.after);
  switch (motion.kind) {
    case PlainMotion::Kind::straight:
      return straight_on(motion, part);
    case PlainMotion::Kind::turn:
      return rotation(0, 1, (a.low[0] + a.high[0]) / 2, (a.low[1] + a.high[1]) / 2, quarter);
    case PlainMotion::Kind::tip:
    case PlainMotion::Kind::swing:
      break;
  }
  // Over the lower edge that both places share.
  for (int axis : {0, 1}) {
    if (std::abs(b.high[axis] - a.low[axis]) < 1e-6) return rotation(axis, 2, a.low[axis], a.low[2], quarter);
    if (std::abs(b.low[axis] - a.high[axis]) < 1e-6)
      return rotation(axis, 2, a.high[axis], a.low[2], -quarter);
  }
  return straight_on(motion, part);
}

int samples_of(const PlainMotion& motion) {
  if (motion.kind == PlainMotion::Kind::swing) {
    double most = 0;  // from one key to the next
    const SampledReach box = box_of(motion.before);
    const double arm = std::hypot(box.high[0] - box.low[0], box.high[1] - box.low[1], box.high[2] - box.low[2]);
    for (std::size_t i = 1; i < motion.keys.size(); ++i) {
      const PlainMotion::Key &a = motion.keys[i - 1], &b = motion.keys[i];
      most = std::max(most, std::hypot(b.at - a.at, b.height - a.height) + arm * std::abs(b.radians - a.radians));
    }
    const int between = static_cast<int>(most / sample_advance) + 1;
    return between * static_cast<int>(motion.keys.size() - 1);
  }
  const SampledReach a = box_of(motion.before), b = box_of(motion.after);
  double farthest = 0;
  for (int k : {0, 1, 2})
    farthest = std::max({farthest, std::abs(b.low[k] - a.low[k]), std::abs(b.high[k] - a.high[k])});
  if (motion.kind != PlainMotion::Kind::straight)
    farthest =
        std::numbers::pi / 2 * std::hypot(a.high[0] - a.low[0], a.high[1] - a.low[1], a.high[2] - a.low[2]);
  return static_cast<int>(farthest / sample_advance) + 2;
}

bool is_in_room(const PlainRoom& room, const Sample& p, double gives) {
  const double outside_outline =
      is_in_ring(room.outline, p[0], p[1]) ? 0 : to_border(room.outline, p[0], p[1]);
  const double outside_profile =
      is_in_ring(room.profile, p[0], p[2]) ? 0 : to_border(room.profile, p[0], p[2]);
  if (outside_outline <= gives + whisker && outside_profile <= gives + whisker) return true;
  return std::ranges::any_of(room.doors, [&](const std::array<double, 6>& door) {
    return door[0] - whisker <= p[0] && p[0] <= door[1] + whisker && door[2] - whisker <= p[1] &&
           p[1] <= door[3] + whisker && door[4] - whisker <= p[2] && p[2] <= door[5] + whisker;
  });
}

std::string where_told(const std::string& name, const Sample& p) {
  return name + " at " + std::to_string(p[0]) + ", " + std::to_string(p[1]) + ", " + std::to_string(p[2]);
}

}  // namespace

std::string first_overlap(const PlainMotion& motion, const std::vector<PlainPrism>& others,
                          const PlainRoom& room) {
  const std::vector<Sample> own = points_of(motion.before);
  std::vector<std::vector<Sample>> theirs(others.size());
  const int samples = samples_of(motion);
  for (int s = 0; s <= samples; ++s) {
    const Carried moved = at_part(motion, static_cast<double>(s) / samples);
    SampledReach reach;
    std::vector<Sample> here;
    for (const Sample& p : own) {
      here.push_back(moved.there(p));
      for (std::size_t k = 0; k < 3; ++k)
        reach.low[k] = std::min(reach.low[k], here.back()[k]),
        reach.high[k] = std::max(reach.high[k], here.back()[k]);
    }
    for (const Sample& p : here)
      if (!is_in_room(room, p, motion.before.gives)) return where_told("outside the room", p);
    for (std::size_t i = 0; i < others.size(); ++i) {
      const SampledReach box = box_of(others[i]);
      bool near = true;
      for (int k : {0, 1, 2}) near = near && box.low[k] < reach.high[k] && reach.low[k] < box.high[k];
      if (!near) continue;
      if (theirs[i].empty()) theirs[i] = points_of(others[i]);
      const double gives = std::max(motion.before.gives, others[i].gives) + whisker;
      for (const Sample& p : here)
        if (depth_in(others[i], p) > gives) return where_told(others[i].name, p);
      for (const Sample& p : theirs[i])
        if (depth_in(motion.before, moved.back(p)) > gives) return where_told(others[i].name, p);
    }
  }
  return {};
}

double farthest_uncovered(const PlainMotion& motion, const std::vector<PlainPrism>& cover) {
  double farthest = 0;
  const int samples = samples_of(motion);
  for (int s = 0; s <= samples; ++s) {
    const Carried moved = at_part(motion, static_cast<double>(s) / samples);
    for (const Sample& p : points_of(motion.before)) {
      double inside = -1e9;
      const Sample there = moved.there(p);
      for (auto prism = cover.begin(); prism != cover.end() && inside < 0; ++prism)
        inside = std::max(inside, depth_in(*prism, there));
      farthest = std::max(farthest, -inside);
    }
  }
  return farthest;
}

}  // namespace berthwright::oracle
