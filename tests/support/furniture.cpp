#include "support/furniture.h"

#include "support/plan_builder.h"

namespace berthwright::support {

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }
std::string member(const std::string& name, const std::string& value) {
  return quoted(name) + ": " + quoted(value);
}
std::string object(const std::vector<std::string>& members) {
  std::string text;
  for (const std::string& each : members)
    if (!each.empty()) text += (text.empty() ? "{" : ", ") + each;
  return text + "}";
}
std::string list(const std::vector<std::string>& values) {
  std::string text;
  for (const std::string& value : values) text += (text.empty() ? "" : ",\n  ") + value;
  return "[" + text + "]";
}
std::string at(const Spot& spot) {
  return "\"at\": " + object({member("front", spot.x), member("left", spot.y)});
}

}  // namespace

Furniture& Furniture::interior(std::string members) {
  interior_ = std::move(members);
  return *this;
}

Furniture& Furniture::fixture(std::string id, std::string kind, Spot spot, std::string base, std::string top,
                              std::string more) {
  fixtures_.push_back(object({member("id", id), member("kind", kind), member("length", spot.length),
                              member("width", spot.width), at(spot), member("base", base), member("top", top),
                              std::move(more)}));
  return *this;
}

Furniture& Furniture::lay(std::string id, std::string kind, Spot spot, std::string thickness,
                          std::string pose, std::string more) {
  pieces_.push_back(object({member("id", id), member("kind", kind), member("length", spot.length),
                            member("width", spot.width), member("thickness", thickness), std::move(more)}));
  poses_.push_back(object({member("piece", id), at(spot), std::move(pose)}));
  return *this;
}

Furniture& Furniture::opening(std::string members) {
  openings_.push_back("{" + std::move(members) + "}");
  return *this;
}

Furniture& Furniture::bed(std::string id, const std::vector<std::string>& pieces, std::string more) {
  std::vector<std::string> ids;
  for (const std::string& piece : pieces) ids.push_back(quoted(piece));
  beds_.push_back(object(
      {member("id", id), member("configuration", "night"), "\"pieces\": " + list(ids), std::move(more)}));
  return *this;
}

std::string Furniture::text() const {
  return "\"interior\": {" + interior_ + "},\n\"openings\": " + list(openings_) +
         ",\n\"fixtures\": " + list(fixtures_) + ",\n\"pieces\": " + list(pieces_) +
         ",\n\"configurations\": {\"night\": " + list(poses_) + "},\n\"beds\": " + list(beds_);
}

Plan Furniture::plan() const { return small_plan(text()); }

}  // namespace berthwright::support
