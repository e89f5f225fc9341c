#include <array>
#include <utility>

#include <berthwright/exact/measure.h>

#include "plan/readers.h"

namespace berthwright {
namespace {

constexpr Length shoulder_room = 24_in;

std::vector<Person> read_people(const Node* node, Reading& reading) {
  std::vector<Person> people;
  if (node == nullptr || !is_list(*node, reading, "a list of people")) return people;
  for (const Node& child : node->children) {
    Fields fields(&child, reading, "a person");
    std::string name = fields.required("name", as_name).value_or("");
    const std::optional<Length> stature = fields.optional("stature", as_size);
    const Length width =
        fields.with_default("width", as_size, shoulder_room, exact_text(shoulder_room, reading.unit),
                            "common practice: 24 in at the shoulders");
    const std::optional<Mass> weight = fields.optional("weight", as_mass);
    fields.finish();
    people.push_back({.name = std::move(name), .stature = stature, .width = width, .weight = weight});
  }
  return people;
}

std::optional<BedLinen> read_linen(const Node* node, Reading& reading) {
  if (node == nullptr) return std::nullopt;
  Fields fields(node, reading, "bedding");
  BedLinen bedding;
  bedding.origin = node->origin();
  bedding.kept_in = fields.required("kept_in", as_reference).value_or("");
  const bool sized = fields.has("length") || fields.has("width") || fields.has("height");
  std::array<Length, 3> sides{};
  for (std::size_t i = 0; i < sides.size(); ++i) {
    constexpr std::array<std::string_view, 3> names{"length", "width", "height"};
    sides[i] = (sized ? fields.required(names[i], as_size) : fields.optional(names[i], as_size)).value_or(1_in);
  }
  if (sized) bedding.sides = sides;
  fields.finish();
  return bedding;
}

Bed read_bed(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a bed");
  Bed bed;
  bed.origin = node.origin();
  bed.id = BedId(fields.required("id", as_id).value_or(""));
  bed.name = read_name(fields, bed.id.text());
  bed.configuration = ConfigurationId(fields.required("configuration", as_reference).value_or(""));
  for (std::string& id : fields.required("pieces", as_references).value_or(std::vector<std::string>{}))
    bed.pieces.emplace_back(std::move(id));
  bed.people = read_people(fields.find("people"), reading);
  bed.linen = read_linen(fields.find("bedding"), reading);
  fields.finish();
  return bed;
}

}  // namespace

std::vector<Bed> read_beds(const Node* node, Reading& reading) {
  std::vector<Bed> beds;
  if (node == nullptr || !is_list(*node, reading, "a list of beds")) return beds;
  for (const Node& child : node->children) beds.push_back(read_bed(child, reading));
  return beds;
}

std::vector<Override> read_overrides(const Node* node, Reading& reading) {
  std::vector<Override> overrides;
  if (node == nullptr || !is_object(*node, reading, "rules")) return overrides;
  for (const Node& child : node->children) {
    Fields fields(&child, reading, "a rule of this plan");
    const std::optional<Length> limit = fields.required("limit", as_length);
    const std::optional<std::string> reason = fields.required("reason", as_note);
    fields.finish();
    overrides.push_back({RuleId(child.key), limit.value_or(Length{}), reason.value_or("?"), child.origin()});
  }
  return overrides;
}

Lifting read_lifting(const Node* node, Reading& reading) {
  Lifting lifting;
  if (node == nullptr) return lifting;
  Fields fields(node, reading, "what one person lifts");
  lifting.weight = fields.optional("weight", as_mass);
  lifting.reach = fields.optional("reach", as_size);
  lifting.reason = fields.required("reason", as_note).value_or("?");
  fields.finish();
  return lifting;
}

std::vector<std::string> read_notes(const Node* node, Reading& reading) {
  std::vector<std::string> notes;
  if (node == nullptr || !is_list(*node, reading, "a list of notes")) return notes;
  for (const Node& child : node->children)
    if (std::optional<std::string> note = as_note(child, reading)) notes.push_back(*std::move(note));
  return notes;
}

}  // namespace berthwright
