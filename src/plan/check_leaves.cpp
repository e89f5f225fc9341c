#include <algorithm>
#include <string>

#include <berthwright/exact/measure.h>

#include "plan/in_quotes.h"
#include "plan/promises.h"
#include "plan/wall_names.h"

namespace berthwright {
namespace {

/// One direction in which a leaf must keep to its fixture.
struct Stretch {
  Length low;
  Length high;
};

/// The fields that give its two ends.
struct Ends {
  const char* low;
  const char* high;
};

/// What it must keep to.
struct LeafBounds {
  Stretch whole;
  std::string name;
  std::string datum;  ///< where a person measures from, at the low end; empty: heights above the floor
};

/// Checks the leaves of one fixture.
class LeafCheck {
 public:
  LeafCheck(const Fixture& fixture, Unit unit, Reading& faults)
      : fixture_(fixture), bounds_(fixture.solid.outline().bounds()), unit_(unit), faults_(faults) {}

  void check(const Leaf& leaf) {
    if (leaf.fixture != fixture_.id)
      faults_.add(leaf.origin,
                  {.id = "leaf.fixture",
                   .message = in_quotes(leaf.id.text()) + " stands in the list of another fixture",
                   .found = in_quotes(leaf.fixture.text()),
                   .allowed = in_quotes(fixture_.id.text()),
                   .cure = "name the fixture that it belongs to"});
    leaf.kind == Leaf::Kind::lid ? check_lid(leaf) : check_face(leaf);
    check_way(leaf);
    if (leaf.inside) check_inside(*leaf.inside, leaf.origin);
  }

  void check_inside(const InsideBox& inside, const Origin& origin) {
    check_inner(inside.length, bounds_.width(), "length", origin);
    check_inner(inside.width, bounds_.height(), "width", origin);
    check_inner(inside.height, fixture_.solid.height(), "height", origin);
  }

 private:
  void check_lid(const Leaf& leaf) {
    const std::string top = "the top of " + in_quotes(fixture_.id.text());
    const Rect& lid = leaf.outline;
    keep(leaf, {lid.low.x, lid.high.x}, {"at", "at"},
         {{bounds_.low.x, bounds_.high.x}, top, "the front end of the top"});
    keep(leaf, {lid.low.y, lid.high.y}, {"at", "at"},
         {{bounds_.low.y, bounds_.high.y}, top, "the left end of the top"});
  }

  void check_face(const Leaf& leaf) {
    const bool end = is_end_wall(leaf.face);
    const std::string face =
        "the " + std::string(wall_word(leaf.face)) + " face of " + in_quotes(fixture_.id.text());
    const Rect& own = leaf.outline;
    keep(leaf, {own.low.x, own.high.x}, {"from", "width"},
         {end ? Stretch{bounds_.low.y, bounds_.high.y} : Stretch{bounds_.low.x, bounds_.high.x}, face,
          end ? "the left end of the face" : "the front end of the face"});
    keep(leaf, {own.low.y, own.high.y}, {"base", "top"},
         {{fixture_.solid.base(), fixture_.solid.top()}, face, ""});
  }

  void keep(const Leaf& leaf, Stretch own, Ends fields, const LeafBounds& within) {
    if (own.low >= own.high) {
      faults_.add(field_of(leaf.origin, fields.high),
                  {.id = "leaf.size",
                   .message = in_quotes(leaf.id.text()) + " ends where it begins, or before",
                   .found = exact_text(own.high, unit_),
                   .allowed = "more than " + exact_text(own.low, unit_),
                   .cure = "check both measures; heights are taken from the floor"});
      return;
    }
    const Stretch whole = within.whole;
    if (own.low >= whole.low && own.high <= whole.high) return;
    const Length zero = within.datum.empty() ? Length{} : whole.low;
    const std::string from = within.datum.empty() ? " above the floor" : " from " + within.datum;
    const Length over = std::max(whole.low - own.low, own.high - whole.high);
    faults_.add(
        field_of(leaf.origin, own.low < whole.low ? fields.low : fields.high),
        {.id = "leaf.outside",
         .message = in_quotes(leaf.id.text()) + " reaches " + both(over, unit_) + " beyond " + within.name,
         .found = stretch_text({own.low - zero, own.high - zero}) + from,
         .allowed = stretch_text({whole.low - zero, whole.high - zero}) + from,
         .cure = "make it smaller, or move it, by " + exact_text(over, unit_)});
  }

  std::string stretch_text(Stretch stretch) const {
    return exact_text(stretch.low, unit_) + " to " + exact_text(stretch.high, unit_);
  }

  void check_way(const Leaf& leaf) {
    const auto fault = [&](const char* field, const char* id, const char* message, const char* allowed) {
      faults_.add(
          field_of(leaf.origin, field),
          {.id = id, .message = message, .found = "another", .allowed = allowed, .cure = "say how it opens"});
    };
    if (leaf.kind == Leaf::Kind::drawer) {
      if (leaf.pull <= Length{} || leaf.pull > farthest)
        fault("pull", "leaf.pull", "a drawer comes out by more than nothing", "a pull above zero");
      if (leaf.hinge) fault("hinge", "leaf.hinge", "a drawer has no hinge", "no hinge");
      return;
    }
    if (!hinge_fits(leaf))
      fault("hinge", "leaf.hinge", "the hinge is at none of the edges at which it can be",
            "an end of the face for a door, its bottom or top for a flap, an edge of the top for a lid");
    const std::int64_t angle = leaf.stop.microdegrees();
    if (angle == 0 || angle > 180'000'000)
      fault("angle", "leaf.angle", "nothing opens by this angle", "more than 0 and at most 180 degrees");
  }

  static bool hinge_fits(const Leaf& leaf) {
    using Edge = Leaf::Edge;
    if (!leaf.hinge) return leaf.kind == Leaf::Kind::lid;
    const bool upright = *leaf.hinge == Edge::bottom || *leaf.hinge == Edge::top;
    if (leaf.kind == Leaf::Kind::flap) return upright;
    if (upright) return false;
    const bool at_end = *leaf.hinge == Edge::front || *leaf.hinge == Edge::rear;
    return leaf.kind == Leaf::Kind::lid || at_end != is_end_wall(leaf.face);
  }

  void check_inner(Length inner, Length outer, const char* field, const Origin& origin) {
    if (inner > Length{} && inner <= outer) return;
    faults_.add(
        field_of(origin, std::string("inside/") + field),
        {.id = "inside.size",
         .message = "the inside of " + in_quotes(fixture_.id.text()) + " cannot have this " + field +
                    ": the fixture itself has " + both(outer, unit_),
         .found = exact_text(inner, unit_),
         .allowed = "above zero and at most " + exact_text(outer, unit_),
         .cure =
             "measure the inside again: length goes along the trailer and width across it, as it stands"});
  }

  const Fixture& fixture_;
  Rect bounds_;
  Unit unit_;
  Reading& faults_;
};

}  // namespace

void check_leaves(const PlanParts& parts, Reading& faults) {
  for (const Fixture& fixture : parts.fixtures) {
    LeafCheck check(fixture, parts.unit, faults);
    if (fixture.inside) check.check_inside(*fixture.inside, fixture.origin);
    for (const Leaf& leaf : fixture.leaves) check.check(leaf);
  }
}

}  // namespace berthwright
