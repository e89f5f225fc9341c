#include <berthwright/exact/measure.h>

#include "plan/readers.h"

namespace berthwright {
namespace {

constexpr CornerNames side_corners{"floor front", "floor rear", "roof rear", "roof front"};
constexpr CornerNames cross_corners{"floor left", "floor right", "roof right", "roof left"};

struct Profile {
  std::string_view name;
  CornerNames corners;
  std::string across;  ///< what its first coordinate is: "length" or "width"
  Length extent;
};

/// {"corners": {…}} about the box of the room, or a list of points.
std::optional<Outline> read_profile(const Node& node, const Profile& profile, Length height,
                                    Reading& reading) {
  if (node.kind == Node::Kind::list) return read_free(node, reading);
  Fields fields(&node, reading, "a profile");
  if (!fields.sound()) return std::nullopt;
  fields.require("corners");
  const Node* corners = fields.find("corners");
  fields.finish();
  if (corners == nullptr) return std::nullopt;
  return read_worked(corners, {{}, {profile.extent, height}}, profile.corners, reading);
}

/// Where the tape starts: a free outline or profile must begin at zero both ways.
bool starts_at_zero(const Node& node, Point low, std::string_view x, std::string_view y, Reading& reading) {
  if (low == Point{}) return true;
  reading.add(node,
              {.id = "interior.datum",
               .message = "the outline begins at " + both(low.x, reading.unit) + " and " +
                          both(low.y, reading.unit) + " instead of at 0 and 0",
               .found = exact_text(low.x, reading.unit) + ", " + exact_text(low.y, reading.unit),
               .allowed = "points measured from the " + std::string(x) + " and from the " + std::string(y),
               .cure = "take " + exact_text(low.x, reading.unit) + " from every first number and " +
                       exact_text(low.y, reading.unit) + " from every second"});
  return false;
}

bool profile_fits(const Node& node, const Outline& outline, const Profile& profile, Length height,
                  Reading& reading) {
  const Rect& bounds = outline.polygon().bounds();
  if (!starts_at_zero(node, bounds.low, profile.across == "length" ? "front wall" : "left wall", "floor",
                      reading))
    return false;
  if (bounds.high == Point{profile.extent, height}) return true;
  reading.add(
      node,
      {.id = "interior.profile",
       .message = "the profile is " + both(bounds.high.x, reading.unit) + " long and " +
                  both(bounds.high.y, reading.unit) + " high, the room " +
                  both(profile.extent, reading.unit) + " and " + both(height, reading.unit),
       .found = exact_text(bounds.high.x, reading.unit) + " by " + exact_text(bounds.high.y, reading.unit),
       .allowed = "the " + profile.across + " and the height of the interior",
       .cure = "let the profile and the interior have the same " + profile.across + " and height"});
  return false;
}

}  // namespace

Interior plain_interior(const Origin& origin) {
  const WorkedRectangle plan{.length = 10_ft, .width = 6_ft, .corners = {}};
  const WorkedRectangle side{.length = 10_ft, .width = 6_ft, .corners = {}};
  return {
      Outline::worked(plan).value(), Outline::worked(side).value(), std::nullopt, 10_ft, 6_ft, 6_ft, origin};
}

Interior read_interior(const Node* node, Reading& reading) {
  Fields fields(node, reading, "the interior");
  const Shape shape = read_shape(fields, 6_ft);
  if (shape.free && shape.sound)
    starts_at_zero(*fields.find("outline"), Point{} + shape.written_at, "front wall", "left wall", reading);
  const Node* side = fields.find("side_profile");
  const Node* cross = fields.find("cross_profile");
  const std::optional<Length> height = fields.required("height", as_size);
  const Length high = height.value_or(6_ft);
  const bool sound = shape.sound && height;
  const Rect side_box{{}, {shape.length, high}};
  Interior interior{shape.outline,         read_worked(nullptr, side_box, side_corners, reading).value(),
                    std::nullopt,          shape.length,
                    shape.width,           high,
                    fields.node().origin()};
  const Profile sides{"side_profile", side_corners, "length", shape.length};
  const Profile ends{"cross_profile", cross_corners, "width", shape.width};
  if (side == nullptr) {
    fields.note_default("side_profile", "square corners", "upright front and rear walls under a flat roof");
  } else if (const auto profile = read_profile(*side, sides, high, reading)) {
    if (sound && profile_fits(*side, *profile, sides, high, reading)) interior.side_profile = *profile;
  }
  if (cross != nullptr) {
    const std::optional<Outline> profile = read_profile(*cross, ends, high, reading);
    if (sound && profile && profile_fits(*cross, *profile, ends, high, reading))
      interior.cross_profile = profile;
  }
  fields.finish();
  return interior;
}

}  // namespace berthwright
