#include <array>

#include "plan/readers.h"

namespace berthwright {
namespace {

constexpr std::array<Word<Unit>, 2> units{{{"in", Unit::inch}, {"mm", Unit::millimetre}}};
constexpr std::array<Word<English>, 2> englishes{
    {{"american", English::american}, {"british", English::british}}};
constexpr std::array<Word<bool>, 2> sides{{{"right", true}, {"left", false}}};
constexpr std::array<Word<Paper>, 4> papers{
    {{"letter", Paper::letter}, {"tabloid", Paper::tabloid}, {"a4", Paper::a4}, {"a3", Paper::a3}}};
constexpr std::string_view format_version = "1";

}  // namespace

bool is_known_version(const Node& root, Reading& reading) {
  const Node* node = root.find("berthwright");
  if (node == nullptr || (node->kind == Node::Kind::number && node->text == format_version)) return true;
  reading.add(*node, {.id = "plan.version",
                      .message = "this version of the plan format cannot be read here",
                      .found = found_at(*node),
                      .allowed = "the number 1",
                      .cure = "write \"berthwright\": 1"});
  return false;
}

void read_header(Fields& fields, PlanParts& parts) {
  fields.require("berthwright");
  fields.find("berthwright");
  fields.optional("$schema", as_text);
  Title& title = parts.title;
  title.title = fields.required("title", as_name).value_or("");
  title.shop = fields.optional("shop", as_text).value_or("");
  title.owner = fields.optional("owner", as_text).value_or("");
  title.date = fields.optional("date", as_text).value_or("");
  title.revision = fields.optional("revision", as_text).value_or("");
  title.drawn_by = fields.optional("drawn_by", as_text).value_or("");
  title.built = fields.optional("built", as_count);

  parts.unit = fields.required("unit", one_of(units)).value_or(Unit::inch);
  parts.english = fields.with_default("english", one_of(englishes), English::american, "american",
                                      "the words of the trade are American unless the plan says else");
  const bool british = parts.english == English::british;
  parts.drives_on_right =
      fields.with_default("drives_on", one_of(sides), !british, british ? "left" : "right",
                          british ? "where British English is spoken one drives on the left"
                                  : "where American English is spoken one drives on the right");
  const bool metric = parts.unit == Unit::millimetre;
  parts.paper =
      fields.with_default("paper", one_of(papers), metric ? Paper::a4 : Paper::letter,
                          metric ? "a4" : "letter", "the paper that goes with the unit of the plan");
  fields.reading().unit = parts.unit;
  fields.reading().gallon = british ? Gallon::imperial : Gallon::us;
  fields.reading().british = british;
  fields.reading().drives_on_right = parts.drives_on_right;
}

}  // namespace berthwright
