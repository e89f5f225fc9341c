#include <array>
#include <utility>

#include "plan/read_leaves.h"
#include "plan/readers.h"
#include "plan/wall_names.h"

namespace berthwright {
namespace {

constexpr std::array<Word<Piece::Kind>, 6> piece_kinds{{{"cushion", Piece::Kind::cushion},
                                                        {"board", Piece::Kind::board},
                                                        {"table", Piece::Kind::table},
                                                        {"leg", Piece::Kind::leg},
                                                        {"bolster", Piece::Kind::bolster},
                                                        {"heater", Piece::Kind::heater}}};

/// A heater has a height, everything else a thickness.
Length read_thickness(Fields& fields, bool heater) {
  fields.refuse(heater ? "thickness" : "height",
                heater ? "a heater has a height" : "a piece that can lie flat has a thickness",
                heater ? "write \"height\"" : "write \"thickness\"", heater ? "height" : "thickness");
  return fields.required(heater ? "height" : "thickness", as_size).value_or(1_in);
}

std::string read_material(Fields& fields, bool soft) {
  if (!soft) {
    fields.refuse("foam", "only cushions and bolsters are foam", "write \"material\"");
    return fields.optional("material", as_text).value_or("");
  }
  const std::string material = fields.optional("material", as_text).value_or("");
  std::string foam = fields.optional("foam", as_text).value_or(material);
  if (fields.has("material")) fields.refuse("foam", "the material is already given", "keep one of the two");
  return foam;
}

constexpr std::array<Word<Piece::Grain>, 2> grains{
    {{"length", Piece::Grain::along_length}, {"width", Piece::Grain::along_width}}};

/// What a panel is made of, of boards and tables.
void read_panel(Fields& fields, Piece& piece) {
  if (piece.kind != Piece::Kind::board && piece.kind != Piece::Kind::table) {
    for (const std::string_view name : {"panel", "plies", "grain"})
      fields.refuse(name, "only boards and tables are cut from a panel", "take it away");
    fields.refuse("hinged_to", "only boards and tables are hinged", "take it away");
    return;
  }
  piece.panel = fields.optional("panel", as_name).value_or("");
  piece.plies = fields.optional("plies", as_count);
  piece.grain = fields.optional("grain", one_of(grains));
  piece.hinged_to = fields.optional("hinged_to", as_id).value_or("");
}

std::optional<Cord> read_cord(Fields& piece, Wall front) {
  const Node* node = piece.find("cord");
  if (node == nullptr) return std::nullopt;
  Fields fields(node, piece.reading(), "a cord");
  const std::optional<Length> length = fields.required("length", as_size);
  const Wall back = opposite(front);
  const Wall side = fields.with_default("leaves_at", as_wall, back, std::string(wall_word(back)),
                                        "the side opposite its front");
  fields.finish();
  return length ? std::optional(Cord{*length, side}) : std::nullopt;
}

Piece read_piece(const Node& node, const Sewing& usual, Reading& reading) {
  Fields fields(&node, reading, "a piece");
  const std::optional<std::string> id = fields.required("id", as_id);
  std::string name = read_name(fields, id.value_or(""));
  const std::optional<Piece::Kind> kind = fields.required("kind", one_of(piece_kinds));
  const Shape shape = read_shape(fields);
  Piece piece{.id = PieceId(id.value_or("")),
              .name = std::move(name),
              .kind = kind.value_or(Piece::Kind::cushion),
              .outline = shape.outline,
              .length = shape.length,
              .width = shape.width,
              .thickness = 1_in,
              .material = {},
              .panel = {},
              .plies = std::nullopt,
              .grain = std::nullopt,
              .held_by = std::nullopt,
              .cord = std::nullopt,
              .heat = std::nullopt,
              .origin = node.origin()};
  if (!kind) {
    for (const std::string_view name_of_some :
         {"thickness", "height", "material", "foam", "faces", "data_plate", "panel", "plies", "grain", "cord",
          "held_by", "weight", "hinged_to", "cover", "watts", "continuous"})
      fields.find(name_of_some);
    fields.finish();
    return piece;
  }
  piece.thickness = read_thickness(fields, *kind == Piece::Kind::heater);
  piece.material = read_material(fields, piece.is_soft());
  read_panel(fields, piece);
  if (const Node* cover = piece.is_soft() ? fields.find("cover") : nullptr) {
    Sewing usual_of_kind = usual;
    if (piece.kind == Piece::Kind::bolster) usual_of_kind.shape = CoverShape::bolster;
    piece.sewing = read_cover(*cover, usual_of_kind, reading);
  }
  if (!piece.is_soft()) fields.refuse("cover", "only cushions and bolsters have one", "take it away");
  piece.held_by = fields.optional("held_by", as_hold);
  piece.weight = fields.optional("weight", as_mass);
  if (*kind == Piece::Kind::heater) {
    fields.require("faces");
    piece.heat = read_heat(fields);
    piece.cord = read_cord(fields, piece.heat->faces);
    piece.draw = read_draw(fields, true);
  } else {
    fields.refuse("cord", "only a heater has one", "take it away");
    for (const std::string_view field : {"watts", "continuous"})
      fields.refuse(field, "only a heater draws power", "take it away");
    fields.refuse("faces", "only a heater has a front",
                  "take it away; a cushion on edge says in its configuration which way it faces");
    fields.refuse("data_plate", "only a heater has one", "take it away");
  }
  fields.finish();
  return piece;
}

}  // namespace

std::string read_name(Fields& fields, const std::string& id) {
  return fields.with_default("name", as_name, id, id, "called by its id");
}

std::vector<Piece> read_pieces(const Node* node, const Sewing& usual, Reading& reading) {
  std::vector<Piece> pieces;
  if (node == nullptr || !is_list(*node, reading, "a list of pieces")) return pieces;
  for (const Node& child : node->children) pieces.push_back(read_piece(child, usual, reading));
  return pieces;
}

}  // namespace berthwright
