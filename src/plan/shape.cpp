#include "plan/shape.h"

#include <utility>
#include <vector>

namespace berthwright {
namespace {

Shape stand_in(Length length, Length width) {
  return {Outline::worked({.length = length, .width = width, .corners = {}}).value(),
          length,
          width,
          false,
          false,
          {}};
}

/// One length for both sides, or a list of two.
std::optional<Vector> as_pair(const Node& node, Reading& reading) {
  if (node.kind != Node::Kind::list) {
    const std::optional<Length> both = as_size(node, reading);
    return both ? std::optional(Vector{*both, *both}) : std::nullopt;
  }
  if (node.children.size() != 2) {
    reading.add(node, {.id = "value.type",
                       .message = "here belong two lengths, and " + std::to_string(node.children.size()) +
                                  (node.children.size() == 1 ? " stands" : " stand") + " here",
                       .found = found_at(node),
                       .allowed = R"(one length for both ways, or two such as ["4", "6"]: along and across)",
                       .cure = "give the length along and the length across"});
    return std::nullopt;
  }
  const std::optional<Length> along = as_size(node.children[0], reading);
  const std::optional<Length> across = as_size(node.children[1], reading);
  return along && across ? std::optional(Vector{*along, *across}) : std::nullopt;
}

std::optional<Corner> as_corner(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a corner");
  if (!fields.sound()) return std::nullopt;
  std::optional<Corner> corner;
  const std::optional<Length> radius = fields.optional("round", as_size);
  const std::optional<Vector> clip = fields.optional("clip", as_pair);
  const std::optional<Vector> notch = fields.optional("notch", as_pair);
  if (radius) corner = Round{*radius};
  if (clip) corner = Clip{clip->x, clip->y};
  if (notch) corner = Notch{notch->x, notch->y};
  fields.finish();
  const int ways = fields.has("round") + fields.has("clip") + fields.has("notch");
  if (ways == 1 || (ways == 0 && !node.children.empty())) return corner;
  reading.add(node, {.id = "corner.one-way",
                     .message = "a corner is worked in one way, not in " + std::to_string(ways),
                     .found = found_at(node),
                     .allowed = R"({"round": "6"}, {"clip": ["4", "4"]} or {"notch": ["4", "4"]})",
                     .cure = "keep one way"});
  return std::nullopt;
}

std::optional<Outline> taken(const Node& node, const Result<Outline>& outline, Reading& reading) {
  if (outline) return *outline;
  for (Problem problem : outline.problems()) reading.add(node, std::move(problem));
  return std::nullopt;
}

Shape free_shape(Fields& fields, const Node& points, Length side) {
  for (const std::string_view name : {"length", "width", "corners"})
    fields.refuse(name, "the outline already gives the shape",
                  "keep either \"outline\" or the length and width");
  const std::optional<Outline> outline = read_free(points, fields.reading());
  if (!outline) return stand_in(side, side);
  const Rect& bounds = outline->polygon().bounds();
  const Vector low = bounds.low - Point{};
  std::vector<Point> shifted;
  for (const Point corner : outline->polygon().vertices()) shifted.push_back(corner - low);
  return {Outline::free(std::move(shifted)).value(), bounds.width(), bounds.height(), true, true, low};
}

}  // namespace

std::optional<Outline> read_free(const Node& node, Reading& reading) {
  std::optional<std::vector<Point>> points = as_points(node, reading);
  if (!points) return std::nullopt;
  return taken(node, Outline::free(*std::move(points)), reading);
}

std::optional<Outline> read_worked(const Node* corners, Rect bounds, const CornerNames& names,
                                   Reading& reading) {
  WorkedRectangle rectangle{.length = bounds.width(), .width = bounds.height(), .corners = {}};
  if (corners == nullptr) return Outline::worked(rectangle).value();
  Fields fields(corners, reading, "the corners");
  if (!fields.sound()) return std::nullopt;
  bool sound = true;
  for (std::size_t i = 0; i < names.size(); ++i) {
    const std::optional<Corner> corner = fields.optional(names[i], as_corner);
    if (corner) rectangle.corners[i] = *corner;
    sound = sound && (corner || !fields.has(names[i]));
  }
  fields.finish();
  return sound ? taken(*corners, Outline::worked(rectangle), reading) : std::nullopt;
}

Shape read_shape(Fields& fields, Length side) {
  if (const Node* points = fields.find("outline")) return free_shape(fields, *points, side);
  const std::optional<Length> length = fields.required("length", as_size);
  const std::optional<Length> width = fields.required("width", as_size);
  const Node* corners = fields.find("corners");
  if (!length || !width) return stand_in(length.value_or(side), width.value_or(side));
  const Rect bounds{{}, {*length, *width}};
  const std::optional<Outline> outline = read_worked(corners, bounds, plan_corners, fields.reading());
  if (!outline) return stand_in(*length, *width);
  return {*outline, *length, *width, true, false, {}};
}

}  // namespace berthwright
