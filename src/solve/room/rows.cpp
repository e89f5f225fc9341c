#include "solve/room/rows.h"

#include <algorithm>
#include <map>

namespace berthwright {

namespace {

/// A joint of a row in one direction, from the thing nearer to the datum to the farther one.
struct Joint {
  std::size_t number;
  const Placed* near;
  const Placed* far;
  Length depth;
};

bool runs_along_x(const Squeeze& squeeze) { return squeeze.shared.width() <= squeeze.shared.height(); }

Length doubled_middle(const Placed& thing, bool along_x) {
  const Rect bounds = thing.solid.outline().bounds();
  return along_x ? bounds.low.x + bounds.high.x : bounds.low.y + bounds.high.y;
}

std::vector<Joint> joints(const std::vector<Squeeze>& squeezes, bool along_x) {
  std::vector<Joint> found;
  for (const Squeeze& squeeze : squeezes) {
    if (runs_along_x(squeeze) != along_x) continue;
    const bool in_order = doubled_middle(*squeeze.first, along_x) <= doubled_middle(*squeeze.second, along_x);
    found.push_back({squeeze.number, in_order ? squeeze.first : squeeze.second,
                     in_order ? squeeze.second : squeeze.first, squeeze.depth});
  }
  std::ranges::stable_sort(found, {},
                           [&](const Joint& joint) { return doubled_middle(*joint.near, along_x); });
  return found;
}

/// The greatest sum of depths of a row that ends at each thing, walking the joints in order. A row runs
/// through cushions only; what does not give way ends it.
std::map<const Placed*, Length> greatest_before(const std::vector<Joint>& joints) {
  std::map<const Placed*, Length> sums;
  for (const Joint& joint : joints) {
    const Length before = joint.near->is_soft() ? sums[joint.near] : Length{};
    sums[joint.far] = std::max(sums[joint.far], before + joint.depth);
  }
  return sums;
}

std::vector<Joint> seen_from_behind(std::vector<Joint> joints, bool along_x) {
  for (Joint& joint : joints) std::swap(joint.near, joint.far);
  std::ranges::stable_sort(joints, std::ranges::greater{},
                           [&](const Joint& joint) { return doubled_middle(*joint.near, along_x); });
  return joints;
}

void add_tolerated(const std::vector<Squeeze>& squeezes, bool along_x, std::vector<std::size_t>& tolerated) {
  const std::vector<Joint> row = joints(squeezes, along_x);
  std::map<const Placed*, Length> before = greatest_before(row);
  std::map<const Placed*, Length> after = greatest_before(seen_from_behind(row, along_x));
  for (const Joint& joint : row) {
    const Length in_row = (joint.near->is_soft() ? before[joint.near] : Length{}) + joint.depth +
                          (joint.far->is_soft() ? after[joint.far] : Length{});
    if (joint.depth <= give_at_joint && in_row <= give_in_row) tolerated.push_back(joint.number);
  }
}

}  // namespace

bool is_upright(const Placed& thing) {
  if (thing.fixture == nullptr) return false;
  const Fixture::Kind kind = thing.fixture->kind;
  return kind == Fixture::Kind::wall || kind == Fixture::Kind::bench || kind == Fixture::Kind::cabinet ||
         kind == Fixture::Kind::locker || kind == Fixture::Kind::wheel_arch;
}

std::vector<std::size_t> tolerated_squeezes(const std::vector<Squeeze>& squeezes) {
  std::vector<std::size_t> tolerated;
  add_tolerated(squeezes, true, tolerated);
  add_tolerated(squeezes, false, tolerated);
  return tolerated;
}

}  // namespace berthwright
