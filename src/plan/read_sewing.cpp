#include <algorithm>
#include <array>

#include <berthwright/exact/measure.h>

#include "plan/readers.h"
#include "plan/wall_names.h"

namespace berthwright {
namespace {

constexpr std::array<Word<FoamCut>, 4> foam_cuts{{{"1/2 in over", FoamCut::half_inch_over},
                                                  {"as the panel", FoamCut::as_panel},
                                                  {"1 percent over", FoamCut::one_percent_over},
                                                  {"wrapped", FoamCut::wrapped}}};
constexpr std::array<Word<CoverShape>, 5> cover_shapes{{{"boxed", CoverShape::boxed},
                                                        {"knife edge", CoverShape::knife_edge},
                                                        {"waterfall", CoverShape::waterfall},
                                                        {"bolster", CoverShape::bolster},
                                                        {"board backed", CoverShape::board_backed}}};
constexpr std::array<Word<bool>, 2> ups{{{"along", false}, {"across", true}}};

/// A cord's thickness, or zero for "none".
std::optional<Length> as_welt(const Node& node, Reading& reading) {
  if (node.kind == Node::Kind::text && node.text == "none") return Length{};
  return as_size(node, reading);
}

std::optional<Repeat> read_repeat(const Node* node, Reading& reading) {
  if (node == nullptr) return std::nullopt;
  Fields fields(node, reading, "a repeat");
  Repeat repeat;
  repeat.along = fields.optional("along", as_size).value_or(Length{});
  repeat.across = fields.optional("across", as_size).value_or(Length{});
  repeat.half_drop = fields.optional("half_drop", as_flag).value_or(false);
  if (fields.sound() && !fields.has("along") && !fields.has("across")) fields.require("along");
  fields.finish();
  // What is missing has been reported.
  return repeat == Repeat{{}, {}, repeat.half_drop} ? std::nullopt : std::optional(repeat);
}

Fabric read_fabric(const Node* node, const Fabric& usual, Reading& reading) {
  if (node == nullptr) return usual;
  Fields fields(node, reading, "a fabric");
  Fabric fabric;
  fabric.name = fields.required("name", as_name).value_or("");
  fabric.width = fields.with_default("width", as_size, fabric.width, exact_text(fabric.width, reading.unit),
                                     "common practice: 54 in between the selvedges");
  fabric.roll = fields.optional("roll", as_size);
  fabric.one_way =
      fields.with_default("one_way", as_flag, false, "false", "neither nap nor a pattern with one way up");
  fabric.up_across =
      fields.with_default("up", one_of(ups), false, "along", "the pattern stands along the roll");
  fabric.repeat = read_repeat(fields.find("repeat"), reading);
  fields.finish();
  return fabric;
}

std::vector<FoamSheet> read_foam_sheets(const Node* node, Reading& reading) {
  std::vector<FoamSheet> sheets;
  if (node == nullptr || !is_list(*node, reading, "a list of foam sheets")) return sheets;
  for (const Node& child : node->children) {
    Fields fields(&child, reading, "a foam sheet");
    const std::optional<Length> length = fields.required("length", as_size);
    const std::optional<Length> width = fields.required("width", as_size);
    const std::optional<Length> thickness = fields.required("thickness", as_size);
    fields.finish();
    if (length && width && thickness) sheets.push_back({*length, *width, *thickness});
  }
  return sheets;
}

// What the plan says of all covers stands in for what a cushion does not say of its own, and is no default.
void read_shared(Fields& fields, Sewing& sewing, bool of_piece) {
  const Unit unit = fields.reading().unit;
  const auto or_default = [&](std::string_view name, const auto& as, auto value, const std::string& spelled,
                              const char* why) {
    if (of_piece) return fields.optional(name, as).value_or(value);
    return fields.with_default(name, as, value, spelled, why);
  };
  sewing.fabric = read_fabric(fields.find("fabric"), sewing.fabric, fields.reading());
  sewing.seam_allowance =
      or_default("seam_allowance", as_size, sewing.seam_allowance, exact_text(sewing.seam_allowance, unit),
                 "what most pages on sewing cushions take");
  const Length welt =
      or_default("welt", as_welt, sewing.welt.value_or(Length{}), "none", "no cord in the seams");
  sewing.welt = welt > Length{} ? std::optional(welt) : std::nullopt;
  sewing.batting = or_default("batting", as_flag, sewing.batting, "false", "nothing between foam and cover");
  sewing.foam_cut = or_default("foam_cut", one_of(foam_cuts), sewing.foam_cut, "1/2 in over",
                               "1/4 in over on each side; published ways disagree");
  sewing.shape =
      or_default("shape", one_of(cover_shapes), sewing.shape, "boxed", "the usual cover of a cushion");
}

bool stands_on_edge(const PlanParts& parts, const PieceId& piece) {
  return std::ranges::any_of(parts.configurations, [&](const Configuration& configuration) {
    return std::ranges::any_of(configuration.poses, [&](const Pose& pose) {
      return pose.piece == piece &&
             (pose.manner == Pose::Manner::on_length || pose.manner == Pose::Manner::on_width);
    });
  });
}

}  // namespace

Sewing read_sewing(const Node* node, Reading& reading) {
  Sewing sewing;
  if (node == nullptr) return sewing;
  Fields fields(node, reading, "the sewing of a plan");
  sewing.origin = node->origin();
  read_shared(fields, sewing, false);
  sewing.seat_foam = fields.optional("seat_foam", as_name).value_or("");
  sewing.back_foam = fields.optional("back_foam", as_name).value_or("");
  sewing.foam_sheets = read_foam_sheets(fields.find("foam_sheets"), reading);
  fields.refuse("zip_edge", "every cushion has its own", "write it into the \"cover\" of a piece");
  fields.finish();
  return sewing;
}

Sewing read_cover(const Node& node, const Sewing& usual, Reading& reading) {
  Fields fields(&node, reading, "a cover");
  Sewing sewing = usual;
  sewing.origin = node.origin();
  read_shared(fields, sewing, true);
  sewing.zip_edge = fields.optional("zip_edge", as_wall);
  for (const std::string_view name : {"seat_foam", "back_foam"})
    fields.refuse(name, "a cushion has a \"foam\" of its own", "write \"foam\" beside \"cover\"");
  fields.refuse("foam_sheets", "the shop has them for all cushions", "write it into \"sewing\"");
  fields.finish();
  return sewing;
}

void fill_foam(PlanParts& parts, Reading& reading) {
  for (Piece& piece : parts.pieces) {
    if (!piece.is_soft() || !piece.material.empty()) continue;
    const bool back = stands_on_edge(parts, piece.id);
    const std::string& foam = back ? parts.sewing.back_foam : parts.sewing.seat_foam;
    if (foam.empty()) continue;
    piece.material = foam;
    reading.defaults.push_back({piece.origin.pointer + "/foam", foam,
                                back ? "the plan's foam for what stands on edge somewhere"
                                     : "the plan's foam for what never stands on edge"});
  }
}

}  // namespace berthwright
