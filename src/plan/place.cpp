#include "plan/place.h"

#include <algorithm>
#include <array>

#include "plan/in_quotes.h"
#include "plan/meant_field.h"
#include "plan/nearest_name.h"

namespace berthwright {
namespace {

using From = Measure::From;

/// The words that may give one measure, in the order of `Measure::From`.
struct Direction {
  std::string_view name;
  std::array<std::string_view, 4> words;
};
constexpr Direction along{"along the trailer", {"front", "rear", "behind", "ahead_of"}};
constexpr Direction across{"across the trailer", {"left", "right", "right_of", "left_of"}};

bool along_or_across(std::string_view word) {
  return std::ranges::find(along.words, word) != along.words.end() ||
         std::ranges::find(across.words, word) != across.words.end();
}

/// A distance from a wall or a face.
std::optional<Length> as_distance(const Node& node, Reading& reading) {
  const std::size_t before = reading.problems.size();
  const std::optional<Length> distance = as_length(node, reading);
  if (reading.problems.size() > before && reading.problems.back().id == "length.negative")
    reading.problems.back().cure =
        "what reaches past one face is measured from another one, or from the opposite wall";
  return distance;
}

std::optional<Measure> as_leaning(const Node& node, From from, Reading& reading) {
  if (node.kind != Node::Kind::list || node.children.size() != 2) {
    reading.add(node, {.id = "value.type",
                       .message = kind_of(node) + " stands here in place of a fixture and a distance",
                       .found = found_at(node),
                       .allowed = R"(a list such as ["galley", "2"])",
                       .cure = "name the fixture and the distance from its face"});
    return std::nullopt;
  }
  const std::optional<std::string> fixture = as_reference(node.children[0], reading);
  const std::optional<Length> distance = as_distance(node.children[1], reading);
  if (!fixture || !distance) return std::nullopt;
  return Measure{from, *distance, *fixture, node.children[0].origin()};
}

/// Is there a name that was probably meant as one of the words?
bool is_misspelled(const Node& place, const Direction& direction) {
  const std::vector<std::string> words(direction.words.begin(), direction.words.end());
  return std::ranges::any_of(place.children, [&](const Node& child) {
    return !along_or_across(child.key) && meant_field(child.key, words).has_value();
  });
}

std::optional<Measure> one_measure(Fields& fields, const Direction& direction) {
  std::optional<Measure> measure;
  int given = 0;
  for (std::size_t i = 0; i < direction.words.size(); ++i) {
    const Node* node = fields.find(direction.words[i]);
    if (node == nullptr) continue;
    ++given;
    const auto from = static_cast<From>(i);
    if (i >= 2) {
      measure = as_leaning(*node, from, fields.reading());
    } else if (const auto distance = as_distance(*node, fields.reading())) {
      measure = Measure{from, *distance, {}, node->origin()};
    }
  }
  if (given == 1 || (given == 0 && is_misspelled(fields.node(), direction))) return measure;
  const auto& words = direction.words;
  std::string list;
  for (const std::string_view word : words) list += (list.empty() ? "\"" : ", \"") + std::string(word) + '"';
  fields.reading().add(
      fields.node(),
      {.id = given == 0 ? "place.missing" : "place.too-many",
       .message = "a place needs one measure " + std::string(direction.name) + ", and here " +
                  (given == 0 ? "is none" : "are " + std::to_string(given)),
       .found = given == 0 ? "nothing" : std::to_string(given) + " measures",
       .allowed = "one of " + list,
       .cure = given == 0 ? "add the distance from the nearer wall: \"" + std::string(words[0]) + "\" or \"" +
                                std::string(words[1]) + '"'
                          : "keep the one that was measured"});
  return std::nullopt;
}

Length low_edge(const Measure& measure, Length size, Length room,
                const std::optional<std::pair<Length, Length>>& mark) {
  switch (measure.from) {
    case From::low_wall:
      return measure.distance;
    case From::high_wall:
      return room - measure.distance - size;
    case From::after:
      return mark->second + measure.distance;
    case From::before:
      return mark->first - measure.distance - size;
  }
  throw std::logic_error("Measure::From out of range");
}

bool leans(const Measure& measure) { return measure.from == From::after || measure.from == From::before; }

const Landmark* landmark(std::span<const Landmark> landmarks, const std::string& id) {
  const auto found = std::ranges::find(landmarks, id, &Landmark::id);
  return found == landmarks.end() ? nullptr : &*found;
}

}  // namespace

std::optional<Place> as_place(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a place");
  if (!fields.sound()) return std::nullopt;
  const std::optional<Measure> x = one_measure(fields, along);
  const std::optional<Measure> y = one_measure(fields, across);
  fields.finish();
  return x && y ? std::optional(Place{*x, *y}) : std::nullopt;
}

std::vector<const Measure*> leanings(const Place& place) {
  std::vector<const Measure*> result;
  for (const Measure* measure : {&place.along, &place.across})
    if (leans(*measure)) result.push_back(measure);
  return result;
}

std::optional<Vector> shift_to(const Place& place, const Rect& box, const RoomExtent& room,
                               std::span<const Landmark> landmarks) {
  std::optional<std::pair<Length, Length>> x_mark;
  std::optional<std::pair<Length, Length>> y_mark;
  for (const Measure* measure : leanings(place)) {
    const Landmark* mark = landmark(landmarks, measure->fixture);
    if (mark == nullptr || !mark->bounds) return std::nullopt;
    const Rect& bounds = *mark->bounds;
    if (measure == &place.along)
      x_mark.emplace(bounds.low.x, bounds.high.x);
    else
      y_mark.emplace(bounds.low.y, bounds.high.y);
  }
  return Vector{low_edge(place.along, box.width(), room.length, x_mark) - box.low.x,
                low_edge(place.across, box.height(), room.width, y_mark) - box.low.y};
}

bool within_reach(const Rect& box, Vector shift, const Origin& origin, Reading& reading) {
  const Point low = box.low + shift;
  const Point high = box.high + shift;
  if (std::min(low.x, low.y) >= -farthest && std::max(high.x, high.y) <= farthest) return true;
  reading.add(origin, {.id = "place.too-far",
                       .message = "this stands more than 25 m (82 ft) away from the front left corner",
                       .found = "a place farther away",
                       .allowed = "a place within 25 m (82 ft)",
                       .cure = "check the distances and the unit of the plan"});
  return false;
}

void report_unknown_fixture(const Measure& measure, std::span<const Landmark> landmarks, Reading& reading) {
  if (reading.full()) return;
  std::vector<std::string> names;
  for (const Landmark& mark : landmarks) names.push_back(mark.id);
  const std::optional<std::string> near = nearest_name(measure.fixture, names);
  reading.add(measure.origin, {.id = "reference.unknown",
                               .message = "no fixture is called " + in_quotes(measure.fixture),
                               .found = in_quotes(measure.fixture),
                               .allowed = "the id of a fixture, which stays where it is",
                               .cure = near ? "write \"" + *near + '"'
                                            : "measure from a wall or from a fixture of this plan"});
}

}  // namespace berthwright
