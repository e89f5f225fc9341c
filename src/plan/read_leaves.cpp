#include "plan/read_leaves.h"

#include <algorithm>
#include <array>
#include <utility>

#include "exact/turn_text.h"
#include "plan/readers.h"
#include "plan/wall_names.h"

namespace berthwright {
namespace {

using Edge = Leaf::Edge;
constexpr std::array<Word<Leaf::Kind>, 4> leaf_kinds{{{"door", Leaf::Kind::door},
                                                      {"flap", Leaf::Kind::flap},
                                                      {"drawer", Leaf::Kind::drawer},
                                                      {"lid", Leaf::Kind::lid}}};
constexpr std::array<Word<Edge>, 2> flap_hinges{{{"bottom", Edge::bottom}, {"top", Edge::top}}};
constexpr std::array<Word<Hold>, 8> hold_words{{{"lip", Hold::lip},
                                                {"snap", Hold::snap},
                                                {"hook and loop", Hold::hook_and_loop},
                                                {"strap", Hold::strap},
                                                {"block", Hold::block},
                                                {"latch", Hold::latch},
                                                {"hook", Hold::hook},
                                                {"screws", Hold::screws}}};
constexpr std::string_view lifts_out = "lifts out";
constexpr std::int64_t half_turn = 180'000'000;  // microdegrees

Edge edge_at(Wall wall) {
  switch (wall) {
    case Wall::front:
      return Edge::front;
    case Wall::rear:
      return Edge::rear;
    case Wall::left:
      return Edge::left;
    case Wall::right:
      return Edge::right;
  }
  throw std::logic_error("Wall out of range");
}

std::optional<Turn> as_stop(const Node& node, Reading& reading) {
  if (!as_turn(node, reading)) return std::nullopt;
  const std::int64_t angle = read_microdegrees(node.text).value();
  if (angle > 0 && angle <= half_turn) return Turn::degrees(angle);
  reading.add(node, {.id = "leaf.angle",
                     .message = "nothing opens by this angle",
                     .found = found_at(node),
                     .allowed = "more than 0 and at most 180 degrees",
                     .cure = "give the angle at which it stops, measured from where it is shut"});
  return std::nullopt;
}

/// Reads the leaves of one fixture.
class LeafReader {
 public:
  LeafReader(const Fixture& fixture, const LeafGround& ground, Reading& reading)
      : fixture_(fixture), bounds_(fixture.solid.outline().bounds()), ground_(ground), reading_(reading) {}

  Leaf read(const Node& node) {
    Fields fields(&node, reading_, "what opens");
    Leaf leaf;
    leaf.origin = node.origin();
    leaf.id = LeafId(fields.required("id", as_id).value_or(""));
    leaf.name = read_name(fields, leaf.id.text());
    leaf.fixture = fixture_.id;
    leaf.outline = bounds_;
    leaf.held_by = fields.optional("held_by", as_hold);
    leaf.inside = fields.optional("inside", as_inside);
    const std::optional<Leaf::Kind> kind = fields.required("kind", one_of(leaf_kinds));
    leaf.kind = kind.value_or(Leaf::Kind::lid);
    if (!kind)
      for (const std::string_view name :
           {"face", "from", "width", "base", "top", "at", "length", "hinge", "angle", "pull"})
        fields.find(name);
    else if (*kind == Leaf::Kind::lid)
      read_top(fields, leaf);
    else
      read_face(fields, leaf);
    fields.finish();
    if (!ground_.sound) stand_in(leaf);
    return leaf;
  }

 private:
  Length depth(Wall face) const { return is_end_wall(face) ? bounds_.width() : bounds_.height(); }
  std::pair<Length, Length> along(Wall face) const {
    return is_end_wall(face) ? std::pair(bounds_.low.y, bounds_.high.y)
                             : std::pair(bounds_.low.x, bounds_.high.x);
  }
  Rect whole_face(Wall face) const {
    const auto [low, high] = along(face);
    return {{low, fixture_.solid.base()}, {high, fixture_.solid.top()}};
  }
  std::string spelled(Length length) const { return exact_text(length, reading_.unit); }

  // The fixture's own size is at fault: what would be said about the leaf could be wrong.
  void stand_in(Leaf& leaf) const {
    leaf.outline = leaf.kind == Leaf::Kind::lid ? bounds_ : whole_face(leaf.face);
    leaf.inside.reset();
  }

  void read_face(Fields& fields, Leaf& leaf) {
    for (const std::string_view name : {"at", "length"})
      fields.refuse(name, "only a lid is measured on the top of its fixture",
                    R"(give "from" and "width" along the face, "base" and "top" above the floor)");
    const std::optional<Wall> face = fields.required("face", as_wall);
    leaf.face = face.value_or(Wall::right);
    const auto [low, high] = along(leaf.face);
    const Length from =
        fields.with_default("from", as_length, Length{}, "0", "it begins where its face does");
    const Length rest = std::max(high - low - from, one_tick);
    const Length width = fields.with_default("width", as_size, rest, spelled(rest), "to the end of its face");
    const Length floor = fixture_.solid.base();
    const Length roof = fixture_.solid.top();
    const Length base =
        fields.with_default("base", as_length, floor, spelled(floor), "the underside of its fixture");
    const Length top = fields.with_default("top", as_length, roof, spelled(roof), "the top of its fixture");
    leaf.outline = {{low + from, base}, {low + from + width, top}};
    if (!face) leaf.outline = whole_face(leaf.face);
    if (leaf.kind == Leaf::Kind::drawer) return read_pull(fields, leaf);
    leaf.hinge = leaf.kind == Leaf::Kind::door ? door_hinge(fields, face)
                                               : fields.with_default("hinge", one_of(flap_hinges),
                                                                     Edge::bottom, "bottom", "it folds down");
    read_angle(fields, leaf);
  }

  void read_top(Fields& fields, Leaf& leaf) {
    leaf.hinge = lid_hinge(fields);
    if (const Node* hinge = fields.find("hinge"); hinge != nullptr && hinge->text == lifts_out)
      for (const std::string_view name : {"angle", "pull"})
        fields.refuse(name, "a lid that lifts out does not turn", "take it away");
    else
      read_angle(fields, leaf);
    for (const std::string_view name : {"face", "from", "base", "top"})
      fields.refuse(name, "a lid lies on the top of its fixture",
                    R"(give "length", "width" and "at", or nothing for the whole top)");
    const bool in_part = fields.has("at") || fields.has("length") || fields.has("width");
    if (!in_part) {
      for (const std::string_view name : {"at", "length", "width"}) fields.find(name);
      fields.note_default("at", "the whole top", "no smaller lid is given");
      return;
    }
    const Length length = fields.with_default("length", as_size, bounds_.width(), spelled(bounds_.width()),
                                              "as long as its fixture");
    const Length width = fields.with_default("width", as_size, bounds_.height(), spelled(bounds_.height()),
                                             "as wide as its fixture");
    const std::optional<Place> place = fields.required("at", as_place);
    if (place) lay(leaf, *place, {{}, {length, width}});
  }

  void lay(Leaf& leaf, const Place& place, const Rect& box) {
    for (const Measure* measure : leanings(place))
      if (std::ranges::find(ground_.landmarks, measure->fixture, &Landmark::id) == ground_.landmarks.end())
        report_unknown_fixture(*measure, ground_.landmarks, reading_);
    const std::optional<Vector> shift = shift_to(place, box, ground_.room, ground_.landmarks);
    if (shift && within_reach(box, *shift, leaf.origin, reading_))
      leaf.outline = {box.low + *shift, box.high + *shift};
  }

  void read_pull(Fields& fields, Leaf& leaf) {
    for (const std::string_view name : {"hinge", "angle"})
      fields.refuse(name, "a drawer is pulled out", R"(give its "pull", or take it away)");
    leaf.pull = fields.with_default("pull", as_size, depth(leaf.face), spelled(depth(leaf.face)),
                                    "as deep as its fixture");
  }

  void read_angle(Fields& fields, Leaf& leaf) {
    fields.refuse("pull", "only a drawer is pulled out", "take it away");
    leaf.stop = fields.with_default("angle", as_stop, leaf.stop, "90", "it opens square");
  }

  Edge door_hinge(Fields& fields, std::optional<Wall> face) {
    const std::optional<Wall> side = fields.required("hinge", as_wall);
    const bool end = face && is_end_wall(*face);
    const Edge stand_in = end ? Edge::left : Edge::front;
    if (!side || !face) return stand_in;
    if (is_end_wall(*side) != end) return edge_at(*side);
    fields.reading().add(*fields.find("hinge"),
                         {.id = "leaf.hinge",
                          .message = "a door in this face has no end on that side",
                          .found = found_at(*fields.find("hinge")),
                          .allowed = end ? R"("left" or "right")" : R"("front" or "rear")",
                          .cure = "name the end of the face at which the hinge stands"});
    return stand_in;
  }

  // Nothing: it lifts out.
  std::optional<Edge> lid_hinge(Fields& fields) {
    const auto words = wall_words(reading_.drives_on_right);
    std::vector<std::string> names;
    for (const Word<Wall>& word : words) names.emplace_back(word.word);
    names.emplace_back(lifts_out);
    const std::optional<std::size_t> chosen = fields.required(
        "hinge", [&](const Node& node, Reading& reading) { return as_choice(node, reading, names); });
    return chosen && *chosen < words.size() ? std::optional(edge_at(words[*chosen].value)) : std::nullopt;
  }

  const Fixture& fixture_;
  Rect bounds_;
  const LeafGround& ground_;
  Reading& reading_;
};

}  // namespace

std::optional<Hold> as_hold(const Node& node, Reading& reading) { return one_of(hold_words)(node, reading); }

std::optional<InsideBox> as_inside(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "the clear inside");
  const std::optional<Length> length = fields.required("length", as_size);
  const std::optional<Length> width = fields.required("width", as_size);
  const std::optional<Length> height = fields.required("height", as_size);
  fields.finish();
  if (!length || !width || !height) return std::nullopt;
  return InsideBox{*length, *width, *height};
}

std::vector<Leaf> read_leaves(const Node& node, const Fixture& fixture, const LeafGround& ground,
                              Reading& reading) {
  std::vector<Leaf> leaves;
  if (!is_list(node, reading, "a list of doors, flaps, drawers and lids")) return leaves;
  LeafReader reader(fixture, ground, reading);
  for (const Node& child : node.children) leaves.push_back(reader.read(child));
  if (ground.square || leaves.empty()) return leaves;
  reading.add(node,
              {.id = "leaf.turned-fixture",
               .message = "the doors, drawers and lids of a fixture that stands askew cannot be measured",
               .found = found_at(node),
               .allowed = "a \"turn\" of 0, 90, 180 or 270 for what opens",
               .cure = "turn the fixture by one of these, or take \"opens\" away"});
  return leaves;
}

}  // namespace berthwright
