#include "support/mended.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>

#include "plan/wall_names.h"

namespace berthwright {
namespace {

Rect grown_at(Rect box, Wall side, Length by) {
  switch (side) {
    case Wall::front:
      box.low.x -= by;
      break;
    case Wall::rear:
      box.high.x += by;
      break;
    case Wall::left:
      box.low.y -= by;
      break;
    case Wall::right:
      box.high.y += by;
      break;
  }
  return box;
}

Vector toward(Wall side, Length by) {
  const Rect grown = grown_at({}, side, by);
  return {grown.low.x + grown.high.x, grown.low.y + grown.high.y};
}

class Workshop {
 public:
  Workshop(const Answered& before, const Finding& finding, Away away)
      : before_(before), finding_(finding), away_(away), parts_(*before.plan.operator->()) {}

  bool do_all(const Cure& cure) {
    if (!do_one(cure)) return false;
    return std::ranges::all_of(cure.then, [&](const Cure& next) { return do_one(next); });
  }
  PlanParts parts() && { return std::move(parts_); }

 private:
  template <class Things>
  static auto find(Things& things, const std::string& id) {
    const auto found = std::ranges::find_if(things, [&](const auto& thing) { return thing.id.text() == id; });
    return found == things.end() ? nullptr : &*found;
  }
  Fixture* fixture(const std::string& id) { return find(parts_.fixtures, id); }
  Opening* opening(const std::string& id) { return find(parts_.openings, id); }
  Configuration& configuration() {
    for (Configuration& one : parts_.configurations)
      if (one.id == finding_.configuration) return one;
    return parts_.configurations.front();
  }
  Pose* pose(const std::string& id) {
    for (Pose& one : configuration().poses)
      if (one.piece.text() == id && one.manner != Pose::Manner::stowed) return &one;
    return nullptr;
  }
  const Arrangement& arrangement() const {
    for (const ConfigurationAnswer& one : before_.answer.configurations)
      if (one.configuration->id == finding_.configuration) return one.arrangement;
    return before_.answer.configurations.front().arrangement;
  }
  const Placed* placed(const std::string& id) const { return arrangement().find(id); }

  // What stands at a place in plan: a fixture or a piece of the configuration.
  template <class Change>
  bool change_outline(const std::string& id, Change change) {
    if (Fixture* one = fixture(id)) {
      one->solid = Solid(change(one->solid.outline()), one->solid.base(), one->solid.top());
      return true;
    }
    Pose* one = pose(id);
    if (one == nullptr) return false;
    one->outline = change(one->outline);
    return true;
  }
  bool grow(const std::string& id, Wall side, Length by) {
    return change_outline(
        id, [&](const Region& outline) { return Region(grown_at(outline.bounds(), side, by)); });
  }
  bool shift(const std::string& id, Wall side, Length by) {
    return change_outline(id, [&](const Region& outline) { return moved(outline, toward(side, by)); });
  }
  bool raise(const std::string& id, Length by) {
    if (Opening* one = opening(id)) {
      one->sill += by;
      return true;
    }
    if (Fixture* one = fixture(id)) {
      const Length base = one->solid.base() == Length{} ? Length{} : one->solid.base() + by;
      one->solid = Solid(one->solid.outline(), base, one->solid.top() + by);
      return true;
    }
    Pose* one = pose(id);
    if (one == nullptr) return false;
    one->base = placed(id)->solid.base() + by;
    return true;
  }
  bool lies_in_a_bed(const std::string& id) const {
    return std::ranges::any_of(parts_.beds, [&](const Bed& bed) {
      return bed.configuration == finding_.configuration &&
             std::ranges::find(bed.pieces, id, &PieceId::text) != bed.pieces.end();
    });
  }
  bool take_away(const std::string& id) {
    if (fixture(id) != nullptr) {
      std::erase_if(parts_.fixtures, [&](const Fixture& one) { return one.id.text() == id; });
      return true;
    }
    Pose* one = pose(id);
    if (one == nullptr || lies_in_a_bed(id)) return false;
    Pose stowed;
    stowed.piece = one->piece;
    stowed.manner = Pose::Manner::stowed;
    stowed.stowed_in = "elsewhere";
    stowed.height = one->height;
    *one = stowed;
    return true;
  }
  bool heighten(const std::string& id, Length by) {
    if (Opening* one = opening(id)) {
      one->height += by;
      return true;
    }
    Pose* one = pose(id);
    if (one != nullptr) one->height += by;
    return one != nullptr;
  }
  // Along or across the seat or the bed; an opening is wider than high.
  bool lengthen(const std::string& id, Length by, bool the_longer_side) {
    if (Opening* one = opening(id)) {
      one->width += by;
      return true;
    }
    if (const Bed* bed = find(parts_.beds, id))
      return bed->pieces.size() == 1 && lengthen(bed->pieces.front().text(), by, the_longer_side);
    return change_outline(id, [&](const Region& outline) {
      const Rect box = outline.bounds();
      if (finding_.rule.text() == "bed.rail-closed-side" && finding_.where.front().plan.x < box.low.x)
        return Region(grown_at(box, Wall::front, by));
      return Region(
          grown_at(box, (box.width() >= box.height()) == the_longer_side ? Wall::rear : Wall::right, by));
    });
  }
  // On the seat's own line, which the finding shows.
  bool lengthen_seat(const std::string& id, Length by) {
    const bool along_x = finding_.where.at(0).plan.y == finding_.where.at(1).plan.y;
    return grow(id, along_x ? Wall::rear : Wall::right, by);
  }
  // From what a thing is too near to the thing: of a way out across the way where it is narrowest.
  std::optional<Edge> line_to(const std::string& id) const {
    const Placed* thing = placed(id);
    if (thing == nullptr) return std::nullopt;
    if (finding_.rule.text().starts_with("way.")) {
      for (const Finding& aisle : before_.of("way.aisle"))
        if (aisle.bed == finding_.bed && aisle.where.size() == 2)
          return aisle.subjects[1] == id ? Edge{aisle.where[1].plan, aisle.where[0].plan}
                                         : Edge{aisle.where[0].plan, aisle.where[1].plan};
      return std::nullopt;
    }
    std::vector<std::string> others = finding_.subjects;
    std::erase(others, id);
    const Placed* other = others.empty() ? nullptr : placed(others.back());
    if (other == nullptr) return std::nullopt;
    const Nearest nearest_of = nearest(other->solid.outline(), thing->solid.outline());
    return Edge{nearest_of.from.plan, nearest_of.to.plan};
  }
  bool move_apart(const std::string& id, Length by) {
    if (away_ == Away::up || away_ == Away::down) return raise(id, away_ == Away::up ? by : -by);
    if (away_ != Away::straight) {
      constexpr std::array walls{Wall::front, Wall::rear, Wall::left, Wall::right};
      return shift(id, walls.at(static_cast<std::size_t>(away_)), by);
    }
    const std::optional<Edge> line = line_to(id);
    if (!line) return false;
    const auto x = static_cast<double>((line->to.x - line->from.x).ticks());
    const auto y = static_cast<double>((line->to.y - line->from.y).ticks());
    if (std::hypot(x, y) < 1) return false;
    const double longer = static_cast<double>(by.ticks()) / std::hypot(x, y);
    const Vector along{Length::from_ticks(std::llround(x * longer)),
                       Length::from_ticks(std::llround(y * longer))};
    return change_outline(id, [&](const Region& outline) { return moved(outline, along); });
  }
  void add_cushion(const Rect& place, Length base, Length thickness) {
    Piece piece = parts_.pieces.front();
    piece.kind = Piece::Kind::cushion;
    piece.panel.clear();
    piece.material.clear();
    piece.grain.reset();
    piece.heat.reset();
    piece.cord.reset();
    piece.id = PieceId("another cushion");
    piece.name = "another cushion";
    piece.outline =
        Outline::worked({.length = place.width(), .width = place.height(), .corners = {}}).value();
    piece.length = place.width();
    piece.width = place.height();
    piece.thickness = thickness;
    for (Configuration& one : parts_.configurations) {
      Pose laid;
      laid.piece = piece.id;
      laid.manner = Pose::Manner::stowed;
      laid.stowed_in = "elsewhere";
      if (one.id == finding_.configuration) {
        laid = Pose{};
        laid.piece = piece.id;
        laid.outline = Region(place);
        laid.height = thickness;
        laid.base = base;
      }
      one.poses.push_back(laid);
    }
    find(parts_.beds, finding_.bed.text())->pieces.push_back(piece.id);
    parts_.pieces.push_back(std::move(piece));
  }
  bool lay_cushion(const Cure& cure) {
    const std::string& rule = finding_.rule.text();
    if (rule == "bed.gap") {
      // Across the bed, from one part to the other.
      const Point a = finding_.where.at(0).plan;
      const Point b = finding_.where.at(1).plan;
      Rect whole = placed(find(parts_.beds, cure.subject)->pieces.front().text())->solid.outline().bounds();
      const bool along_x = abs(a.x - b.x) > abs(a.y - b.y);
      if (along_x)
        whole = {{std::min(a.x, b.x), whole.low.y}, {std::min(a.x, b.x) + cure.by, whole.high.y}};
      else
        whole = {{whole.low.x, std::min(a.y, b.y)}, {whole.high.x, std::min(a.y, b.y) + cure.by}};
      add_cushion(whole, finding_.where.at(0).z - 4_in, 4_in);
      return true;
    }
    const Placed* below = placed(cure.subject);
    if (below == nullptr) return false;
    const Rect box = below->solid.outline().bounds();
    const bool thick = rule == "bed.no-cushion";
    const bool wide = rule == "bed.berth-width" || rule == "bed.person-width";
    const Length length = thick || wide ? box.width() : cure.by;
    const Length width = wide ? cure.by : thick ? box.height() : std::max(box.height(), 24_in);
    add_cushion({box.low, box.low + Vector{length, width}}, below->solid.top(), thick ? cure.by : 4_in);
    return true;
  }
  bool carry(const Cure& cure) {
    const Placed* thing = placed(cure.subject);
    Region place = thing->solid.outline();
    for (const Placed& other : arrangement().things)
      if (&other != thing && other.solid.top() > *cure.to - 1_in && other.solid.base() < *cure.to)
        place = without(place, other.solid.outline());
    Fixture ledge{.id = FixtureId("another ledge"),
                  .name = "another ledge",
                  .kind = Fixture::Kind::ledge,
                  .solid = Solid(place, *cure.to - 1_in, *cure.to),
                  .arcs = {},
                  .heat = {},
                  .origin = {}};
    parts_.fixtures.push_back(std::move(ledge));
    return true;
  }
  bool repack(const Cure& cure) {
    Bed* bed = find(parts_.beds, cure.subject);
    for (Length& side : *bed->linen->sides) side -= cure.by;
    return true;
  }
  bool keep_clear(const Cure& cure) {
    return !cure.alike.empty() &&
           std::ranges::all_of(cure.alike, [&](const std::string& id) { return take_away(id); });
  }

  template <class Do>
  static bool to_each(const Cure& cure, Do act) {
    return act(cure.subject) && std::ranges::all_of(cure.alike, act);
  }

  bool do_one(const Cure& cure) {
    const auto each = [&](auto act) { return to_each(cure, act); };
    switch (cure.kind) {
      case Cure::Kind::raise:
        return each([&](const std::string& id) { return raise(id, cure.by); });
      case Cure::Kind::lower:
        return each([&](const std::string& id) { return raise(id, -cure.by); });
      case Cure::Kind::move_apart:
        return move_apart(cure.subject, cure.by);
      case Cure::Kind::widen:
        return cure.side && each([&](const std::string& id) { return grow(id, *cure.side, cure.by); });
      case Cure::Kind::shorten:
        return cure.side && each([&](const std::string& id) { return grow(id, *cure.side, -cure.by); });
      case Cure::Kind::lengthen:
        return finding_.rule.text() == "seat.people" ? lengthen_seat(cure.subject, cure.by)
                                                     : lengthen(cure.subject, cure.by, true);
      case Cure::Kind::broaden:
        return lengthen(cure.subject, cure.by, false);
      case Cure::Kind::shift:
        return shift(cure.subject, *cure.side, cure.by);
      case Cure::Kind::set_aside:
      case Cure::Kind::stow_heater:
        return take_away(cure.subject);
      case Cure::Kind::keep_clear:
        return keep_clear(cure);
      case Cure::Kind::carry_at:
        return carry(cure);
      case Cure::Kind::lay_cushion:
        return lay_cushion(cure);
      case Cure::Kind::thicken:
        return each([&](const std::string& id) { return grow(id, *pose(id)->faces, cure.by); });
      case Cure::Kind::heighten:
        return each([&](const std::string& id) { return heighten(id, cure.by); });
      case Cure::Kind::cut_down:
        return each([&](const std::string& id) { return heighten(id, -cure.by); });
      case Cure::Kind::raise_underside: {
        Fixture* one = fixture(cure.subject);
        if (one == nullptr) return false;
        const Length base = one->solid.base() + cure.by;
        one->solid = Solid(one->solid.outline(), base, std::max(one->solid.top(), base + one_tick));
        return true;
      }
      case Cure::Kind::rehang:
        opening(cure.subject)->hinge = cure.side;
        return true;
      case Cure::Kind::repack:
        return repack(cure);
      default:
        return false;
    }
  }

  const Answered& before_;
  const Finding& finding_;
  Away away_;
  PlanParts parts_;
};

}  // namespace

std::optional<Plan> mended(const Answered& before, const Finding& finding, Away away) {
  Workshop workshop(before, finding, away);
  if (!finding.cure || !workshop.do_all(*finding.cure)) return std::nullopt;
  Result<Plan> plan = Plan::checked(std::move(workshop).parts());
  if (!plan) throw std::invalid_argument("the mended plan is none: " + plan.problems().front().message);
  return std::move(plan).value();
}

std::optional<Finding> still_open(const Answered& after, const Finding& finding) {
  const std::string& rule = finding.rule.text();
  // Of these the variant is the reason, which may change and still be one.
  const bool by_reason = rule == "cord.reach" || rule == "way.aisle" || rule == "bed.gap" ||
                         rule == "support.rests" || rule.starts_with("leaf.");
  for (const Finding& now : after.of(rule)) {
    bool same = now.configuration == finding.configuration && now.bed == finding.bed &&
                (by_reason || now.variant == finding.variant) &&
                now.subjects.empty() == finding.subjects.empty() &&
                (now.subjects.empty() || now.subjects.front() == finding.subjects.front());
    if (rule.starts_with("knock.") || rule == "room.overlap") same = same && now.subjects == finding.subjects;
    if (same && (now.status == Status::not_met ||
                 (now.status == Status::unknown && finding.status == Status::unknown)))
      return now;
  }
  return std::nullopt;
}

}  // namespace berthwright
