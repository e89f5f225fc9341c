#include <algorithm>
#include <array>
#include <charconv>

#include "plan/document.h"
#include "plan/tape_reading.h"

namespace berthwright {
namespace {

using Steps = std::vector<std::string>;

Steps steps_of(std::string_view pointer) {
  Steps steps;
  while (!pointer.empty()) {
    pointer.remove_prefix(1);
    const std::size_t end = std::min(pointer.find('/'), pointer.size());
    steps.emplace_back(pointer.substr(0, end));
    pointer.remove_prefix(end);
  }
  return steps;
}

bool is_among(const std::string& word, std::initializer_list<std::string_view> words) {
  return std::ranges::find(words, word) != words.end();
}

/// The text of a member; empty: there is none.
std::string word_at(const Node& node, std::string_view field) {
  const Node* found = node.find(field);
  return found == nullptr ? std::string{} : found->text;
}

const Node& element(const Node& list, const std::string& index) {
  std::size_t at = 0;
  std::from_chars(index.data(), index.data() + index.size(), at);
  return list.children.at(at);
}

/// The rest of a name: places lose their "at", a distance from a fixture its number in the list.
std::string field_name(const Steps& steps, std::size_t from) {
  std::string name;
  for (std::size_t i = from; i < steps.size(); ++i) {
    if (steps[i] == "at" && i == from) continue;
    const bool numbered =
        i > from && is_among(steps[i - 1], {"behind", "ahead_of", "right_of", "left_of"}) && steps[i] == "1";
    if (!numbered) name += "/" + steps[i];
  }
  return name;
}

TapeKind kind_of_piece(const Node& root, const std::string& id) {
  const Node* pieces = root.find("pieces");
  if (pieces == nullptr) return TapeKind::board;
  const auto piece =
      std::ranges::find_if(pieces->children, [&](const Node& one) { return word_at(one, "id") == id; });
  if (piece == pieces->children.end()) return TapeKind::board;
  const std::string kind = word_at(*piece, "kind");
  if (is_among(kind, {"cushion", "bolster"})) return TapeKind::cushion;
  return kind == "heater" ? TapeKind::fixture : TapeKind::board;
}

/// A heater stands where a tape says, and what is held at a height is mounted there; loose pieces are laid.
TapeKind kind_of_pose(const Node& root, const Steps& steps, const std::string& piece) {
  if (steps[3] != "at") return TapeKind::fixture;
  return kind_of_piece(root, piece) == TapeKind::fixture ? TapeKind::fixture : TapeKind::place;
}

std::optional<Length> length_at(std::span<const SpelledMeasure> lengths, std::string_view pointer) {
  const auto found =
      std::ranges::find_if(lengths, [&](const SpelledMeasure& one) { return one.origin.pointer == pointer; });
  return found == lengths.end() ? std::nullopt : found->length;
}

/// Whether the fixture stands against one of two walls.
bool stands_against(std::span<const SpelledMeasure> lengths, const std::string& fixture, const char* low,
                    const char* high) {
  return length_at(lengths, fixture + "/at/" + low) == Length{} ||
         length_at(lengths, fixture + "/at/" + high) == Length{};
}

/// The field of the fixture that a field of what is in it, or opens in it, may be the same as.
std::string field_of_fixture(const Node& root, const Steps& steps) {
  const std::string& field = steps.back();
  if (steps[2] == "inside") return is_among(field, {"length", "width"}) ? field : "";
  if (steps.size() != 5) return "";
  if (is_among(field, {"base", "top"})) return field;
  const Node& leaf = element(*element(*root.find("fixtures"), steps[1]).find("opens"), steps[3]);
  if (word_at(leaf, "kind") == "lid") return is_among(field, {"length", "width"}) ? field : "";
  if (field != "width") return "";
  return is_among(word_at(leaf, "face"), {"front", "rear"}) ? "width" : "length";
}

std::string same_as_of_fixture(const Node& root, std::span<const SpelledMeasure> lengths, const Steps& steps,
                               const std::string& own) {
  const std::string fixture = "/fixtures/" + steps[1];
  if (steps.size() > 3 && is_among(steps[2], {"inside", "opens"})) {
    const std::string field = field_of_fixture(root, steps);
    const std::string other = fixture + "/" + field;
    return !field.empty() && length_at(lengths, other) == length_at(lengths, own) ? other : own;
  }
  if (steps.size() != 3) return own;
  const bool along = steps[2] == "length";
  const bool across = steps[2] == "width";
  const bool spans = (along && stands_against(lengths, fixture, "front", "rear")) ||
                     (across && stands_against(lengths, fixture, "left", "right"));
  if (element(*root.find("fixtures"), steps[1]).find("turn") != nullptr) return own;
  const std::string room = std::string("/interior/") + (along ? "length" : across ? "width" : "height");
  const bool high = steps[2] == "top";
  return (spans || high) && length_at(lengths, room) == length_at(lengths, own) ? room : own;
}

/// Corners of a free outline or profile that lie at the end of the room.
std::string same_as_of_room(std::span<const SpelledMeasure> lengths, const Steps& steps,
                            const std::string& own) {
  if (steps.size() != 4 || !is_among(steps[1], {"outline", "side_profile", "cross_profile"})) return own;
  const bool first = steps[3] == "0";
  const std::string field = steps[1] == "outline"        ? ""
                            : !first                     ? "height"
                            : steps[1] == "side_profile" ? "length"
                                                         : "width";
  if (!field.empty() && length_at(lengths, "/interior/" + field) == length_at(lengths, own))
    return "/interior/" + field;
  // Else the first corner of the outline, or of the same list, that lies as far.
  const bool of_outline = field != "height";
  const std::string axis = steps[1] == "cross_profile" && first ? "/1" : "/" + steps[3];
  for (const std::string& list : {std::string("outline"), steps[1]}) {
    if (list == "outline" && !of_outline) continue;
    const std::string start = "/interior/" + list + "/";
    const std::string end = list == "outline" ? axis : "/" + steps[3];
    for (const SpelledMeasure& one : lengths)
      if (one.origin.pointer.starts_with(start) && one.origin.pointer.ends_with(end) &&
          one.length == length_at(lengths, own))
        return one.origin.pointer;
  }
  return own;
}

}  // namespace

std::optional<NamedLength> named_length(const Node& root, const SpelledMeasure& measure) {
  const Steps steps = steps_of(measure.origin.pointer);
  if (!measure.length || steps.size() < 2) return std::nullopt;
  NamedLength named{"", measure.origin.pointer, TapeKind::wall, *measure.length, measure.origin};
  if (steps[0] == "interior") {
    named.name = "interior" + field_name(steps, 1);
    return named;
  }
  const Node* part = root.find(steps[0]);
  if (part == nullptr || steps.size() < 3) return std::nullopt;
  if (steps[0] == "openings") {
    named.kind = TapeKind::opening;
    named.name = word_at(element(*part, steps[1]), "id") + field_name(steps, 2);
    return named;
  }
  if (steps[0] == "fixtures" && !is_among(steps[2], {"opens", "data_plate"})) {
    named.kind = TapeKind::fixture;
    named.name = word_at(element(*part, steps[1]), "id") + field_name(steps, 2);
    return named;
  }
  if (steps[0] == "pieces" && !is_among(steps[2], {"data_plate", "cord", "cover"})) {
    const std::string id = word_at(element(*part, steps[1]), "id");
    named.kind = kind_of_piece(root, id);
    named.name = id + field_name(steps, 2);
    return named;
  }
  if (steps[0] == "configurations" && steps.size() > 3) {
    const std::string piece = word_at(element(*part->find(steps[1]), steps[2]), "piece");
    named.kind = kind_of_pose(root, steps, piece);
    named.name = steps[1] + "/" + piece + field_name(steps, 3);
    return named;
  }
  return std::nullopt;
}

std::string same_measure_as(const Node& root, std::span<const SpelledMeasure> lengths,
                            const SpelledMeasure& one) {
  const std::string& own = one.origin.pointer;
  const Steps steps = steps_of(own);
  if (one.length == Length{}) return own;
  if (steps.size() > 2 && steps[0] == "fixtures") return same_as_of_fixture(root, lengths, steps, own);
  return steps[0] == "interior" ? same_as_of_room(lengths, steps, own) : own;
}

}  // namespace berthwright
