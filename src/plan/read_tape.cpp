#include <algorithm>
#include <array>
#include <utility>

#include <berthwright/exact/measure.h>

#include "plan/fields.h"
#include "plan/in_quotes.h"
#include "plan/tape_reading.h"

namespace berthwright {
namespace {

constexpr Length largest_tolerance = 6_in;

constexpr std::array<Word<TapeState>, 3> tape_states{
    {{"planned", TapeState::planned}, {"as built", TapeState::as_built}, {"checked", TapeState::checked}}};
constexpr std::array<Synonym, 4> tape_synonyms{
    {{"built", "as built"}, {"drawn", "planned"}, {"measured", "as built"}, {"verified", "checked"}}};

struct UsualTolerance {
  std::string_view name;
  Length tolerance;
  std::string_view spelled;
  std::string_view why;
};
/// In the order of `TapeKind`. Common practice, no source.
constexpr std::array<UsualTolerance, 6> usual_tolerances{
    {{"walls", Length::inches(1, 4), "1/4 in", "walls bow (common practice, no source)"},
     {"openings", Length::inches(1, 8), "1/8 in", "a tape is read so (common practice, no source)"},
     {"fixtures", Length::inches(1, 8), "1/8 in", "a tape is read so (common practice, no source)"},
     {"cushions", Length::inches(1, 8), "1/8 in", "foam is cut so (common practice, no source)"},
     {"boards", Length::inches(1, 32), "1/32 in", "boards are cut so (common practice, no source)"},
     {"places", Length{}, "0", "a loose piece is laid where the plan says"}}};
constexpr UsualTolerance usual_of_checked{"checked", Length::inches(1, 16), "1/16 in",
                                          "measured twice (common practice, no source)"};

std::optional<Length> as_tolerance(const Node& node, Reading& reading) {
  const std::optional<Length> length = as_length(node, reading);
  if (!length || *length <= largest_tolerance) return length;
  reading.add(node,
              {.id = "tape.too-large",
               .message = "no tape is off by " + both(*length, reading.unit),
               .found = found_at(node),
               .allowed = "0 to " + both(largest_tolerance, reading.unit),
               .cure = "give how far the true measure may lie from the one written, and check the unit"});
  return std::nullopt;
}

void read_tolerances(const Node* node, TapeWishes& wishes, Fields& tape, Reading& reading) {
  if (node == nullptr) {
    tape.note_default("tolerances", "walls 1/4 in, boards 1/32 in, all else 1/8 in, checked 1/16 in",
                      "common practice, no source");
    return;
  }
  Fields fields(node, reading, "the tolerances");
  for (std::size_t i = 0; i < usual_tolerances.size(); ++i) {
    const UsualTolerance& usual = usual_tolerances[i];
    wishes.tolerances[i] = fields.with_default(usual.name, as_tolerance, usual.tolerance,
                                               std::string(usual.spelled), std::string(usual.why));
  }
  wishes.checked =
      fields.with_default(usual_of_checked.name, as_tolerance, usual_of_checked.tolerance,
                          std::string(usual_of_checked.spelled), std::string(usual_of_checked.why));
  fields.finish();
}

void check_entry(const Node& node, const TapeEntry& entry, Reading& reading) {
  if (entry.as_built && entry.state == TapeState::planned)
    reading.add(*node.find("state"), {.id = "tape.state",
                                      .message = "what was found where it stands is not only planned",
                                      .found = found_at(*node.find("state")),
                                      .allowed = R"("as built" or "checked")",
                                      .cure = R"(write "as built", or take "as_built" away)"});
  if (node.find("tolerance") == nullptr && node.find("state") == nullptr &&
      node.find("as_built") == nullptr && node.find("measure") != nullptr)
    reading.add(node, {.id = "tape.empty",
                       .message = "nothing is said of this measure",
                       .found = "a name alone",
                       .allowed = R"("tolerance", "state" or "as_built" beside the name)",
                       .cure = "say what is known of it, or take the entry away"});
}

TapeEntry read_entry(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a measure of the tape");
  TapeEntry entry;
  entry.name = fields.required("measure", as_reference).value_or("");
  entry.origin = (node.find("measure") != nullptr ? *node.find("measure") : node).origin();
  entry.tolerance = fields.optional("tolerance", as_tolerance);
  entry.tolerance_origin = (node.find("tolerance") != nullptr ? *node.find("tolerance") : node).origin();
  entry.state = fields.optional("state", one_of(tape_states, tape_synonyms));
  entry.as_built = fields.optional("as_built", as_length);
  fields.finish();
  if (fields.sound()) check_entry(node, entry, reading);
  if (entry.as_built && !entry.state) entry.state = TapeState::as_built;
  return entry;
}

}  // namespace

TapeWishes read_tape(const Node* node, Reading& reading) {
  TapeWishes wishes;
  for (const UsualTolerance& usual : usual_tolerances) wishes.tolerances.push_back(usual.tolerance);
  wishes.checked = usual_of_checked.tolerance;
  if (node == nullptr) return wishes;
  Fields fields(node, reading, "what is known of the measures");
  read_tolerances(fields.find("tolerances"), wishes, fields, reading);
  wishes.state = fields.with_default("state", one_of(tape_states, tape_synonyms), TapeState::planned,
                                     "planned", "the plan does not say that anything was measured");
  const Node* entries = fields.find("measures");
  fields.finish();
  if (entries == nullptr || !is_list(*entries, reading, "a list of measures")) return wishes;
  for (const Node& child : entries->children) wishes.entries.push_back(read_entry(child, reading));
  return wishes;
}

}  // namespace berthwright
