#include <algorithm>
#include <cstdint>

#include <berthwright/exact/measure.h>

#include "plan/decimal.h"
#include "plan/in_quotes.h"
#include "plan/readers.h"

namespace berthwright {
namespace {

std::optional<int> as_density(const Node& node, Reading& reading) {
  const std::string allowed = "pounds per cubic foot, as 2.5, from 0.1 to 20";
  const std::optional<std::int64_t> tenths = as_decimal(node, reading, 1, allowed);
  if (!tenths) return std::nullopt;
  if (*tenths > 0 && *tenths <= 200) return static_cast<int>(*tenths);
  reading.add(node, {.id = "foam.density",
                     .message = "no foam is as light or as heavy as that",
                     .found = found_at(node),
                     .allowed = allowed,
                     .cure = "write the density as the maker gives it"});
  return std::nullopt;
}

std::optional<Mass> as_lift(const Node& node, Reading& reading) {
  const std::optional<Mass> mass = as_mass(node, reading);
  if (!mass || *mass > Mass{}) return mass;
  reading.add(node, {.id = "size.zero",
                     .message = "nothing can be made that weighs nothing",
                     .found = found_at(node),
                     .allowed = "a weight above zero",
                     .cure = "give what one cushion may weigh, or take it away"});
  return std::nullopt;
}

std::optional<int> as_fillers(const Node& node, Reading& reading) {
  const std::optional<int> count = as_count(node, reading);
  if (!count || *count <= 3) return count;
  reading.add(node, {.id = "split.fillers",
                     .message = "so many cushions without a use by day are not looked for",
                     .found = found_at(node),
                     .allowed = "0, 1, 2 or 3",
                     .cure = "ask for at most three"});
  return std::nullopt;
}

std::vector<PricedFoam> read_foam_stock(const Node* node, Reading& reading) {
  std::vector<PricedFoam> result;
  if (node == nullptr || !is_list(*node, reading, "a list of sheets of foam")) return result;
  for (const Node& child : node->children) {
    Fields fields(&child, reading, "a sheet of foam");
    PricedFoam sheet;
    sheet.length = fields.required("length", as_size).value_or(one_tick);
    sheet.width = fields.required("width", as_size).value_or(one_tick);
    sheet.thickness = fields.required("thickness", as_size).value_or(one_tick);
    const auto as_price = [](const Node& price, Reading& of) {
      return as_decimal(price, of, 2, "a price such as 89 or 89.50, of the whole sheet");
    };
    sheet.price = fields.required("price", as_price).value_or(0);
    fields.finish();
    result.push_back(sheet);
  }
  return result;
}

// `lower` and `higher` name two fields of one measure.
void check_order(Fields& fields, std::string_view lower, const std::optional<Length>& least,
                 std::string_view higher, const std::optional<Length>& most) {
  if (!least || !most || *least <= *most) return;
  Reading& reading = fields.reading();
  reading.add(*fields.find(lower), {.id = "split.order",
                                    .message = in_quotes(std::string(lower)) + " is larger than " +
                                               in_quotes(std::string(higher)) + ": no cushion can be made",
                                    .found = exact_text(*least, reading.unit),
                                    .allowed = "at most " + exact_text(*most, reading.unit),
                                    .cure = "make one smaller, or the other larger"});
}

}  // namespace

CushionWishes read_cushion_wishes(const Node* node, Reading& reading) {
  CushionWishes wishes;
  if (node == nullptr) return wishes;
  Fields fields(node, reading, "what is asked of new cushions");
  wishes.thickness = fields.optional("thickness", as_size);
  wishes.least_back = fields.optional("least_back", as_size);
  wishes.most_back = fields.optional("most_back", as_size);
  wishes.least_side = fields.optional("least_side", as_size);
  wishes.longest_side = fields.optional("longest_side", as_size);
  wishes.fillers = fields.optional("fillers", as_fillers);
  wishes.gap = fields.optional("gap", as_length);
  wishes.lift = fields.optional("lift", as_lift);
  wishes.foam_density = fields.optional("foam_density", as_density);
  wishes.foam_stock = read_foam_stock(fields.find("foam_stock"), reading);
  check_order(fields, "least_back", wishes.least_back, "most_back", wishes.most_back);
  check_order(fields, "least_side", wishes.least_side, "longest_side", wishes.longest_side);
  fields.finish();
  return wishes;
}

}  // namespace berthwright
