#include <array>
#include <utility>

#include "plan/readers.h"

namespace berthwright {
namespace {

using Kind = Piece::Kind;

constexpr std::array<Word<Kind>, 6> kinds{{{"cushion", Kind::cushion},
                                           {"board", Kind::board},
                                           {"table", Kind::table},
                                           {"leg", Kind::leg},
                                           {"bolster", Kind::bolster},
                                           {"heater", Kind::heater}}};

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
  const std::string foam = fields.optional("foam", as_text).value_or(material);
  if (fields.has("material")) fields.refuse("foam", "the material is already given", "keep one of the two");
  return foam;
}

Piece read_piece(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a piece");
  const std::optional<std::string> id = fields.required("id", as_id);
  std::string name = read_name(fields, id.value_or(""));
  const std::optional<Kind> kind = fields.required("kind", one_of(kinds));
  const Shape shape = read_shape(fields);
  Piece piece{.id = PieceId(id.value_or("")),
              .name = std::move(name),
              .kind = kind.value_or(Kind::cushion),
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
         {"thickness", "height", "material", "foam", "faces", "data_plate"})
      fields.find(name_of_some);
    fields.finish();
    return piece;
  }
  piece.thickness = read_thickness(fields, *kind == Kind::heater);
  piece.material = read_material(fields, piece.is_soft());
  if (*kind == Kind::heater) {
    fields.require("faces");
    piece.heat = read_heat(fields);
  } else {
    fields.refuse("faces", "only a heater has a front", "a piece on edge faces a way in its configuration");
    fields.refuse("data_plate", "only a heater has one", "take it away");
  }
  fields.finish();
  return piece;
}

}  // namespace

std::string read_name(Fields& fields, const std::string& id) {
  return fields.with_default("name", as_name, id, id, "called by its id");
}

std::vector<Piece> read_pieces(const Node* node, Reading& reading) {
  std::vector<Piece> pieces;
  if (node == nullptr || !is_list(*node, reading, "a list of pieces")) return pieces;
  for (const Node& child : node->children) pieces.push_back(read_piece(child, reading));
  return pieces;
}

}  // namespace berthwright
