#include <berthwright/solve/room/arrangement.h>

#include <algorithm>
#include <set>
#include <span>

#include "solve/room/laying_order.h"
#include "solve/room/outlines_met.h"
#include "solve/room/rest.h"

namespace berthwright {

namespace {

std::vector<const Placed*> pointers(std::span<const Placed> things) {
  std::vector<const Placed*> found;
  found.reserve(things.size());
  for (const Placed& thing : things) found.push_back(&thing);
  return found;
}

Problem nothing_beneath(const Pose& pose) {
  const std::string& id = pose.piece.text();
  Problem problem =
      problem_at(pose, "rest.nothing-beneath",
                 '"' + id + "\" has nothing to rest on: nothing that its \"on\" names lies beneath it");
  for (const std::string& named : pose.on)
    problem.found += (problem.found.empty() ? "\"" : ", \"") + named + '"';
  problem.allowed = "ids of fixtures and pieces beneath it";
  problem.cure = "move \"" + id + "\" over it, or leave \"on\" out: then it rests on whatever is highest";
  return problem;
}

// Whether `upper` stands on the thing, or on what stands on it.
bool stands_on(const Arrangement& arrangement, const Placed& upper, std::string_view id) {
  std::vector<const Placed*> open{&upper};
  std::set<std::string_view> seen;
  while (!open.empty()) {
    const Placed& thing = *open.back();
    open.pop_back();
    std::vector<std::string> beneath = thing.carried_by;
    if (thing.pose != nullptr) beneath.insert(beneath.end(), thing.pose->on.begin(), thing.pose->on.end());
    for (const std::string& carrier : beneath) {
      if (carrier == id) return true;
      const Placed* next = arrangement.find(carrier);
      if (next != nullptr && seen.insert(next->id).second) open.push_back(next);
    }
  }
  return false;
}

// Whether `earlier` would lie at another height had `later` been laid before it.
bool order_decides(const Arrangement& arrangement, const Placed& earlier, const Placed& later) {
  if (earlier.pose->base || !earlier.pose->on.empty()) return false;
  if (shared_outline(drawn(earlier), drawn(later)).empty()) return false;
  if (stands_on(arrangement, later, earlier.id)) return false;
  const auto before = static_cast<std::size_t>(&earlier - arrangement.things.data());
  std::vector<const Placed*> standing = pointers(std::span(arrangement.things).first(before));
  standing.push_back(&later);
  const std::optional<Rest> again = rest_of(*earlier.piece, *earlier.pose, standing);
  return again && again->base != earlier.solid.base();
}

Problem order_fault(const Placed& earlier, const Placed& later) {
  Problem problem =
      problem_at(*earlier.pose, "rest.order",
                 '"' + earlier.id + "\" and \"" + later.id + "\" lie one over the other, and \"" +
                     earlier.id + "\" comes to another height if \"" + later.id + "\" is laid first");
  problem.found = '"' + earlier.id + "\" before \"" + later.id + '"';
  problem.allowed = "pieces in the order in which they are laid, the lowest first";
  problem.cure = "list \"" + later.id + "\" before \"" + earlier.id + "\", or say in \"on\" what \"" +
                 earlier.id + "\" rests on";
  return problem;
}

Problems order_faults(const Arrangement& arrangement) {
  Problems problems;
  const std::vector<Placed>& things = arrangement.things;
  for (std::size_t i = 0; i < things.size(); ++i)
    for (std::size_t j = i + 1; j < things.size(); ++j)
      if (things[i].piece != nullptr && order_decides(arrangement, things[i], things[j]))
        problems.push_back(order_fault(things[i], things[j]));
  return problems;
}

bool names_one_of(const Pose& pose, const std::set<std::string>& ids) {
  return std::ranges::any_of(pose.on, [&](const std::string& id) { return ids.contains(id); });
}

}  // namespace

const Placed* Arrangement::find(std::string_view id) const {
  const auto found = std::ranges::find(things, id, &Placed::id);
  return found == things.end() ? nullptr : &*found;
}

Result<Arrangement> arranged(const Plan& plan, const Configuration& configuration) {
  const Result<std::vector<const Pose*>> order = laying_order(configuration);
  if (!order) return order.problems();
  Arrangement arrangement{&configuration, {}};
  std::vector<Placed>& things = arrangement.things;
  for (const Fixture& fixture : plan->fixtures)
    things.push_back({fixture.id.text(), &fixture, nullptr, nullptr, fixture.solid, {}, {}});
  Problems problems;
  std::set<std::string> in_the_air;
  for (const Pose* pose : *order) {
    const Piece& piece = *plan.piece(pose->piece.text());
    const bool carrier_is_missing = names_one_of(*pose, in_the_air);
    const std::optional<Rest> rest =
        carrier_is_missing ? std::nullopt : rest_of(piece, *pose, pointers(things));
    if (!rest) {
      in_the_air.insert(piece.id.text());
      if (!carrier_is_missing) problems.push_back(nothing_beneath(*pose));
      continue;
    }
    Solid solid(pose->outline, rest->base, rest->base + pose->height);
    things.push_back(
        {piece.id.text(), nullptr, &piece, pose, std::move(solid), rest->carried_by, rest->pressed_by});
  }
  // Pieces left in the air hide how the others would lie, so orders are judged once everything stands.
  if (problems.empty()) problems = order_faults(arrangement);
  if (!problems.empty()) return problems;
  return arrangement;
}

}  // namespace berthwright
