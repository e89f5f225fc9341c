#include <array>
#include <utility>

#include "plan/readers.h"
#include "plan/wall_names.h"

namespace berthwright {
namespace {

using Swing = Opening::Swing;

constexpr std::array<Word<Opening::Kind>, 3> opening_kinds{
    {{"door", Opening::Kind::door}, {"window", Opening::Kind::window}, {"hatch", Opening::Kind::hatch}}};
constexpr std::array<Word<Swing>, 4> swings{
    {{"out", Swing::out}, {"in", Swing::in}, {"slides", Swing::slides}, {"fixed", Swing::fixed}}};

/// The wall's own near edge: its front for a side wall, its left for an end wall.
Length read_from(Fields& fields, Wall wall) {
  const bool end = is_end_wall(wall);
  fields.refuse(end ? "from_front" : "from_left",
                end ? "the front and rear walls are measured from the left"
                    : "the side walls are measured from the front",
                end ? "write \"from_left\"" : "write \"from_front\"", end ? "from_left" : "from_front");
  return fields.required(end ? "from_left" : "from_front", as_length).value_or(Length{});
}

void read_swing(Fields& fields, Opening& opening) {
  const bool door = opening.kind == Opening::Kind::door;
  opening.swing =
      fields.with_default("opens", one_of(swings), door ? Swing::out : Swing::fixed, door ? "out" : "fixed",
                          door ? "a trailer door opens outward" : "not known to open");
  const bool hinged = opening.swing == Swing::out || opening.swing == Swing::in;
  if (!hinged) {
    fields.refuse("hinge", "what slides or is fixed has no hinge", "take it away");
    return;
  }
  const Node* node = fields.find("hinge");
  if (node == nullptr) return;
  opening.hinge = as_wall(*node, fields.reading());
  if (!opening.hinge || is_end_wall(*opening.hinge) != is_end_wall(opening.wall)) return;
  fields.reading().add(*node, {.id = "opening.hinge",
                               .message = "the hinge cannot stand on that side of an opening in this wall",
                               .found = found_at(*node),
                               .allowed = is_end_wall(opening.wall) ? "left or right" : "front or rear",
                               .cure = "name the side of the opening on which the hinge stands"});
  opening.hinge.reset();
}

Opening read_opening(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "an opening");
  Opening opening;
  opening.origin = node.origin();
  opening.id = OpeningId(fields.required("id", as_id).value_or(""));
  opening.name = read_name(fields, opening.id.text());
  opening.kind = fields.required("kind", one_of(opening_kinds)).value_or(Opening::Kind::window);
  const std::optional<Wall> wall = fields.required("wall", as_wall);
  opening.wall = wall.value_or(Wall::right);
  if (wall) {
    opening.from = read_from(fields, opening.wall);
  } else {
    fields.find("from_front");
    fields.find("from_left");
  }
  opening.width = fields.required("width", as_size).value_or(1_in);
  opening.height = fields.required("height", as_size).value_or(1_in);
  opening.sill = opening.kind == Opening::Kind::door ? fields.with_default("sill", as_length, Length{}, "0",
                                                                           "a door reaches down to the floor")
                                                     : fields.required("sill", as_length).value_or(Length{});
  read_swing(fields, opening);
  opening.escape = fields.with_default("escape", as_flag, false, "false", "not stated as a way out");
  fields.finish();
  return opening;
}

}  // namespace

std::vector<Opening> read_openings(const Node* node, Reading& reading) {
  std::vector<Opening> openings;
  if (node == nullptr || !is_list(*node, reading, "a list of openings")) return openings;
  for (const Node& child : node->children) openings.push_back(read_opening(child, reading));
  return openings;
}

}  // namespace berthwright
