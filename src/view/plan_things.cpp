#include "view/plan_things.h"

#include <algorithm>
#include <stdexcept>
#include <tuple>

#include "view/seen.h"

namespace berthwright {
namespace {

// A lower thing hangs when a piece lies this far below it; a table stands up to 14 in above its seats.
constexpr Length fixture_hangs = 16_in;
constexpr Length piece_hangs = 24_in;

bool carries(const Arrangement& arrangement, const std::string& id) {
  return std::ranges::any_of(arrangement.things, [&](const Placed& thing) {
    return std::ranges::find(thing.carried_by, id) != thing.carried_by.end();
  });
}

bool hangs(const Arrangement& arrangement, const Placed& thing) {
  const Solid& solid = thing.solid;
  if (thing.fixture != nullptr && solid.base() >= over_the_head) return true;
  if (thing.fixture != nullptr && carries(arrangement, thing.id)) return false;
  const Length clear = thing.fixture != nullptr ? fixture_hangs : piece_hangs;
  return std::ranges::any_of(arrangement.things, [&](const Placed& below) {
    return below.piece != nullptr && below.solid.top() + clear <= solid.base() &&
           overlaps(below.solid.outline().bounds(), solid.outline().bounds());
  });
}

std::span<const Arc> arcs_of(const Placed& placed) {
  if (placed.fixture != nullptr) return placed.fixture->arcs;
  return placed.pose->arcs;
}

// Most alarms are a dot at scale.
void draw_as_sign(PlanThing& thing, const PlanView& view, const Rect& room) {
  constexpr PaperLength reach = alarm_sign_reach;
  const PaperPoint low{view(room.low).x + reach, view(room.high).y + reach};
  const PaperPoint high{view(room.high).x - reach, view(room.low).y - reach};
  const PaperPoint middle{std::max(low.x, std::min(thing.bounds.centre().x, high.x)),
                          std::max(low.y, std::min(thing.bounds.centre().y, high.y))};
  thing.paths = alarm_sign(middle);
  thing.bounds = grown({middle, middle}, reach);
  thing.rings = {{thing.bounds.low,
                  {thing.bounds.high.x, thing.bounds.low.y},
                  thing.bounds.high,
                  {thing.bounds.low.x, thing.bounds.high.y}}};
}

/// Where lines are drawn: inside the rings and outside the boxes, all level or all upright.
struct LinedFace {
  const std::vector<PaperRing>& rings;
  const std::vector<PaperBox>& lettering;
  bool level;
};

// The stretches of one line there, less `short_of` at both ends.
void add_line(std::vector<Path>& out, const LinedFace& face, PaperLength across, Ink ink = Ink::grain,
              PaperLength short_of = {}) {
  const auto& [rings, lettering, level] = face;
  using Micrometres = std::int64_t;
  const auto u = [&](PaperPoint p) { return (level ? p.x : p.y).micrometres(); };
  const auto v = [&](PaperPoint p) { return (level ? p.y : p.x).micrometres(); };
  const Micrometres at = across.micrometres();
  std::vector<Micrometres> cuts;
  for (const PaperRing& ring : rings)
    for (const auto& [a, b] : lines(ring))
      if ((v(a) > at) != (v(b) > at)) cuts.push_back(u(a) + (u(b) - u(a)) * (at - v(a)) / (v(b) - v(a)));
  std::ranges::sort(cuts);
  const auto draw = [&](Micrometres from, Micrometres to) {
    const PaperLength low = PaperLength::micrometres(from) + short_of;
    const PaperLength high = PaperLength::micrometres(to) - short_of;
    if ((high - low).micrometres() < 500) return;
    out.push_back(level ? straight(ink, {low, across}, {high, across})
                        : straight(ink, {across, low}, {across, high}));
  };
  for (std::size_t i = 0; i + 1 < cuts.size(); i += 2) {
    Micrometres from = cuts[i];
    std::vector<std::pair<Micrometres, Micrometres>> holes;
    for (const PaperBox& box : lettering)
      if (v(box.low) < at && at < v(box.high)) holes.emplace_back(u(box.low), u(box.high));
    std::ranges::sort(holes);
    for (const auto& [low, high] : holes) {
      if (low > from) draw(from, std::min(low, cuts[i + 1]));
      from = std::max(from, high);
    }
    draw(from, cuts[i + 1]);
  }
}

}  // namespace

bool is_alarm(const Placed& placed) {
  return placed.fixture != nullptr && (placed.fixture->kind == Fixture::Kind::smoke_alarm ||
                                       placed.fixture->kind == Fixture::Kind::co_alarm ||
                                       placed.fixture->kind == Fixture::Kind::gas_alarm);
}

Ink ink_of(const Placed& placed) {
  if (placed.fixture != nullptr) return placed.fixture->heat ? Ink::appliance : Ink::fixture;
  switch (placed.piece->kind) {
    case Piece::Kind::cushion:
    case Piece::Kind::bolster:
      return Ink::cushion;
    case Piece::Kind::board:
      return Ink::board;
    case Piece::Kind::table:
      return Ink::table;
    case Piece::Kind::leg:
      return Ink::fixture;
    case Piece::Kind::heater:
      return Ink::appliance;
  }
  throw std::logic_error("Piece::Kind out of range");
}

const std::string& name_of(const Placed& placed) {
  const std::string& name = placed.fixture != nullptr ? placed.fixture->name : placed.piece->name;
  return name.empty() ? placed.id : name;
}

bool is_outside(const Plan& plan, const Placed& placed) {
  return !overlaps(placed.solid.outline().bounds(), plan->interior.outline.polygon().bounds());
}

std::optional<Length> raised_top(const Placed& placed) {
  if (placed.piece != nullptr) return placed.solid.top();
  if (placed.solid.base() >= raised_height || is_alarm(placed) || placed.is_curtain()) return std::nullopt;
  return std::min(placed.solid.top(), raised_height);
}

Length raised_reach(const Plan& plan, const Arrangement& arrangement) {
  Length height = std::min(raised_height, plan->interior.height);
  for (const Placed& placed : arrangement.things)
    if (placed.piece != nullptr && !is_outside(plan, placed)) height = std::max(height, placed.solid.top());
  return height;
}

std::vector<PlanThing> plan_things(const PlanView& view, const Plan& plan, const Arrangement& arrangement) {
  std::vector<PlanThing> things;
  for (const Placed& placed : arrangement.things) {
    if (is_outside(plan, placed)) continue;
    PlanThing thing;
    thing.placed = &placed;
    thing.overhead = hangs(arrangement, placed);
    thing.ink = is_alarm(placed) ? Ink::alarm : thing.overhead ? Ink::overhead : ink_of(placed);
    thing.paths = paths_of(view, placed.solid.outline(), arcs_of(placed), thing.ink);
    thing.rings = view(placed.solid.outline());
    thing.bounds = bounds(thing.rings.front());
    for (const PaperRing& ring : thing.rings) thing.bounds = hull(thing.bounds, bounds(ring));
    if (is_alarm(placed)) draw_as_sign(thing, view, plan->interior.outline.polygon().bounds());
    things.push_back(std::move(thing));
  }
  std::ranges::stable_sort(things, {}, [](const PlanThing& thing) {
    return std::tuple(thing.overhead, thing.placed->solid.top(), thing.placed->id);
  });
  for (std::size_t i = 0; i < things.size(); ++i) {
    std::vector<const std::vector<PaperRing>*> above;
    for (std::size_t j = i + 1; j < things.size(); ++j)
      if (!things[j].overhead) above.push_back(&things[j].rings);
    things[i].seen = middle_of_seen(things[i].rings, above);
  }
  return things;
}

std::vector<Path> grain_of(const PlanThing& thing, const std::vector<PaperBox>& lettering) {
  std::vector<Path> out;
  if (thing.ink != Ink::board && thing.ink != Ink::table) return out;
  const bool pairs = thing.ink == Ink::table;
  const bool level = thing.bounds.width() >= thing.bounds.height();
  const PaperLength low = level ? thing.bounds.low.y : thing.bounds.low.x;
  const PaperLength high = level ? thing.bounds.high.y : thing.bounds.high.x;
  const PaperLength pitch = pairs ? paper_mm(4) : paper_mm(25, 10);
  for (PaperLength at = low + pitch / 2; at < high; at = at + pitch) {
    add_line(out, {thing.rings, lettering, level}, at);
    if (pairs) add_line(out, {thing.rings, lettering, level}, at + paper_mm(9, 10));
  }
  return out;
}

std::vector<Path> lines_on(const std::vector<PaperRing>& rings, Ink ink,
                           const std::vector<PaperBox>& lettering) {
  std::vector<Path> out;
  const bool dots = ink == Ink::cushion;
  if (!dots && ink != Ink::board && ink != Ink::table) return out;
  const PaperLength pitch = dots ? paper_mm(2) : ink == Ink::table ? paper_mm(3) : paper_mm(15, 10);
  PaperBox box = bounds(rings.front());
  for (const PaperRing& ring : rings) box = hull(box, bounds(ring));
  bool odd = false;
  for (PaperLength y = box.low.y + pitch / 2; y < box.high.y; y = y + pitch, odd = !odd) {
    if (dots) {
      add_line(out, {rings, lettering, true}, y, Ink::foam_dots, odd ? paper_mm(24, 10) : paper_mm(9, 10));
      continue;
    }
    add_line(out, {rings, lettering, true}, y);
    if (ink == Ink::table) add_line(out, {rings, lettering, true}, y + paper_mm(9, 10));
  }
  return out;
}

}  // namespace berthwright
