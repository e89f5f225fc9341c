#include <array>
#include <utility>

#include "plan/readers.h"

namespace berthwright {
namespace {

constexpr std::array<Word<TowingRange>, 3> towing_ranges{
    {{"us", TowingRange::us}, {"uk", TowingRange::uk}, {"australia", TowingRange::australia}}};
constexpr int whole_tank = 100;

/// A weight, or the least and the most that it may be.
std::optional<MassSpan> as_mass_span(const Node& node, Reading& reading) {
  if (node.kind != Node::Kind::list) {
    const std::optional<Mass> mass = as_mass(node, reading);
    return mass ? std::optional(MassSpan::of(*mass)) : std::nullopt;
  }
  if (node.children.size() != 2) {
    reading.add(node, {.id = "weight.span",
                       .message = "a weight that is not known well is written as its least and its most",
                       .found = found_at(node),
                       .allowed = R"(two weights such as ["60 lb", "80 lb"])",
                       .cure = "write two weights, or one"});
    return std::nullopt;
  }
  const std::optional<Mass> least = as_mass(node.children[0], reading);
  const std::optional<Mass> most = as_mass(node.children[1], reading);
  if (!least || !most) return std::nullopt;
  if (*least <= *most) return MassSpan{*least, most};
  reading.add(node, {.id = "weight.span",
                     .message = "the least weight is more than the most",
                     .found = found_at(node),
                     .allowed = "the least first",
                     .cure = "exchange the two"});
  return std::nullopt;
}

// A text that `read` turns into a value.
template <class Read>
auto as_spelled(Read read) {
  return [read](const Node& node,
                Reading& reading) -> std::optional<std::decay_t<decltype(*read(node.text, reading))>> {
    if (node.kind == Node::Kind::text || node.kind == Node::Kind::number) {
      const auto result = read(node.text, reading);
      if (result) return *result;
      for (Problem problem : result.problems()) reading.add(node, std::move(problem));
      return std::nullopt;
    }
    reading.add(node, {.id = "value.type",
                       .message = kind_of(node) + " stands here in place of a text",
                       .found = found_at(node),
                       .allowed = "a text in double quotes",
                       .cure = "write a text in double quotes, such as \"12 gal\", \"40 F\" or \"R-4\""});
    return std::nullopt;
  };
}
const auto as_volume = as_spelled(
    [](const std::string& text, const Reading& reading) { return read_volume(text, reading.gallon); });
const auto as_temperature =
    as_spelled([](const std::string& text, const Reading&) { return read_temperature(text); });
const auto as_insulation =
    as_spelled([](const std::string& text, const Reading&) { return read_insulation(text); });

/// A whole number above zero and at most `most`.
auto as_count_up_to(int most, const char* what) {
  return [most, what](const Node& node, Reading& reading) -> std::optional<int> {
    const std::optional<int> count = as_count(node, reading);
    if (!count || (*count > 0 && *count <= most)) return count;
    reading.add(node, {.id = "value.range",
                       .message = std::string("no ") + what + " is " + std::to_string(*count),
                       .found = found_at(node),
                       .allowed = "1 to " + std::to_string(most),
                       .cure = "read it off the data plate or the breaker"});
    return std::nullopt;
  };
}
constexpr int most_watts = 20'000;
constexpr int most_amps = 200;
constexpr int most_volts = 500;

std::optional<int> as_percent(const Node& node, Reading& reading) {
  const std::optional<int> count = as_count(node, reading);
  if (!count || *count <= whole_tank) return count;
  reading.add(node, {.id = "tank.fill",
                     .message = "a tank cannot be fuller than full",
                     .found = found_at(node),
                     .allowed = "0 to 100, in percent",
                     .cure = "give how full it is on the road"});
  return std::nullopt;
}

void refuse_of_a_van(Fields& fields, std::string_view name) {
  fields.refuse(name, "a van that is not towed has no coupling", "take it away, or write \"towed\": true");
}

void read_limits(const Node* node, Chassis& chassis, Reading& reading) {
  if (node == nullptr) return;
  Fields fields(node, reading, "the limits of a chassis");
  chassis.whole_limit = fields.optional("whole", as_mass);
  chassis.axle_limit = fields.optional("axle", as_mass);
  chassis.coupling_limit = fields.optional("coupling", as_mass);
  if (!chassis.towed) refuse_of_a_van(fields, "coupling");
  fields.finish();
}

Weighed read_weighed(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "the weighing of a trailer");
  Weighed weighed;
  weighed.origin = node.origin();
  weighed.coupling = fields.required("coupling", as_mass).value_or(Mass::pounds(1));
  weighed.axle = fields.required("axle", as_mass).value_or(Mass::pounds(1));
  weighed.left = fields.optional("left", as_mass);
  weighed.right = fields.optional("right", as_mass);
  if (fields.has("left") != fields.has("right")) fields.require(fields.has("left") ? "right" : "left");
  if (const Node* with = fields.find("with")) {
    weighed.with_everything = with->kind == Node::Kind::text && with->text == "everything";
    weighed.with_fixtures =
        weighed.with_everything || (with->kind == Node::Kind::text && with->text == "fixtures");
    if (!weighed.with_fixtures) weighed.with = as_references(*with, reading).value_or(weighed.with);
  }
  weighed.configuration = fields.optional("configuration", as_reference).value_or("");
  fields.finish();
  return weighed;
}

Cargo read_one_cargo(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a cargo");
  Cargo cargo;
  cargo.origin = node.origin();
  cargo.id = fields.required("id", as_id).value_or("");
  cargo.name = read_name(fields, cargo.id);
  cargo.weight = read_weight_span(fields);
  cargo.fill = read_fill(fields);
  cargo.kept_in = fields.optional("kept_in", as_reference).value_or("");
  cargo.along = fields.optional("from_front", as_length);
  if (const std::optional<Length> ahead = fields.optional("ahead_of_front", as_length)) cargo.along = -*ahead;
  cargo.across = fields.optional("from_left", as_length);
  constexpr std::array<std::string_view, 3> ways{"kept_in", "from_front", "ahead_of_front"};
  std::size_t given = 0;
  for (const std::string_view way : ways)
    if (fields.has(way) && ++given > 1)
      fields.refuse(way, "where it is has been said", "keep one of the ways to say where it is");
  if (given == 0) fields.require("kept_in");
  if (fields.has("kept_in")) fields.refuse("from_left", "where it is has been said", "take it away");
  fields.finish();
  return cargo;
}

std::vector<ExtraLoad> read_extra_loads(const Node* node, Reading& reading) {
  std::vector<ExtraLoad> loads;
  if (node == nullptr || !is_list(*node, reading, "a list of loads")) return loads;
  for (const Node& child : node->children) {
    Fields fields(&child, reading, "a load");
    ExtraLoad load;
    load.name = fields.required("name", as_name).value_or("");
    fields.require("watts");
    load.draw = read_draw(fields, false).value_or(Draw{1, false});
    fields.finish();
    loads.push_back(std::move(load));
  }
  return loads;
}

Circuit read_circuit(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a circuit");
  Circuit circuit;
  circuit.origin = node.origin();
  circuit.id = fields.required("id", as_id).value_or("");
  circuit.name = read_name(fields, circuit.id);
  circuit.breaker = fields.required("breaker", as_count_up_to(most_amps, "breaker")).value_or(1);
  circuit.feeds = fields.optional("feeds", as_references).value_or(circuit.feeds);
  circuit.loads = read_extra_loads(fields.find("loads"), reading);
  fields.finish();
  return circuit;
}

}  // namespace

std::optional<MassSpan> read_weight_span(Fields& fields) { return fields.optional("weight", as_mass_span); }

std::optional<TankFill> read_fill(Fields& fields) {
  const std::optional<Volume> volume = fields.optional("volume", as_volume);
  const std::optional<int> percent = fields.optional("fill", as_percent);
  if (fields.has("fill")) fields.require("volume");
  return volume ? std::optional(TankFill{*volume, percent}) : std::nullopt;
}

std::optional<Draw> read_draw(Fields& fields, bool usually_continuous) {
  const std::optional<int> watts = fields.optional("watts", as_count_up_to(most_watts, "appliance"));
  if (!fields.has("watts")) {
    fields.find("continuous");
    fields.refuse("continuous", "what it draws is not said", "write \"watts\" beside it", "watts");
    return std::nullopt;
  }
  const bool continuous =
      fields.with_default("continuous", as_flag, usually_continuous, usually_continuous ? "true" : "false",
                          usually_continuous ? "it may run for three hours at a stretch"
                                             : "not said to run three hours at a stretch");
  return watts ? std::optional(Draw{*watts, continuous}) : std::nullopt;
}

std::optional<Chassis> read_chassis(const Node* node, Reading& reading) {
  if (node == nullptr) return std::nullopt;
  Fields fields(node, reading, "a chassis");
  Chassis chassis;
  chassis.origin = node->origin();
  chassis.towed = fields.optional("towed", as_flag).value_or(true);
  chassis.coupling = fields.optional("coupling", as_length);
  chassis.axle = fields.optional("axle", as_length);
  chassis.track = fields.optional("track", as_size);
  if (chassis.towed)
    chassis.range = fields.with_default(
        "range", one_of(towing_ranges), reading.british ? TowingRange::uk : TowingRange::us,
        reading.british ? "uk" : "us", "the range that goes with the English");
  else
    for (const std::string_view name : {"coupling", "axle", "range", "weighed"})
      if (fields.has(name)) {
        fields.find(name);
        refuse_of_a_van(fields, name);
      }
  read_limits(fields.find("limits"), chassis, reading);
  const Node* weighed = fields.find("weighed");
  if (weighed != nullptr && chassis.towed) chassis.weighed = read_weighed(*weighed, reading);
  fields.finish();
  return chassis;
}

std::vector<Cargo> read_cargo(const Node* node, Reading& reading) {
  std::vector<Cargo> all;
  if (node == nullptr || !is_list(*node, reading, "a list of cargo")) return all;
  for (const Node& child : node->children) all.push_back(read_one_cargo(child, reading));
  return all;
}

std::optional<Supply> read_supply(const Node* node, Reading& reading) {
  if (node == nullptr) return std::nullopt;
  Fields fields(node, reading, "a supply");
  Supply supply;
  supply.origin = node->origin();
  supply.volts =
      fields.with_default("volts", as_count_up_to(most_volts, "supply"), reading.british ? 230 : 120,
                          reading.british ? "230" : "120", "the voltage that goes with the English");
  supply.amps = fields.optional("amps", as_count_up_to(most_amps, "supply"));
  fields.require("circuits");
  const Node* circuits = fields.find("circuits");
  if (circuits != nullptr && is_list(*circuits, reading, "a list of circuits"))
    for (const Node& child : circuits->children) supply.circuits.push_back(read_circuit(child, reading));
  fields.finish();
  return supply;
}

std::optional<Warming> read_warming(const Node* node, Reading& reading) {
  if (node == nullptr) return std::nullopt;
  Fields fields(node, reading, "a warming");
  Warming warming;
  warming.origin = node->origin();
  const std::optional<Temperature> from = fields.required("from", as_temperature);
  const std::optional<Temperature> to = fields.required("to", as_temperature);
  warming.from = from.value_or(warming.from);
  warming.to = to.value_or(warming.to);
  warming.outside = fields.with_default("outside", as_temperature, warming.from,
                                        temperature_text(warming.from, reading.unit),
                                        "as cold outside as inside before it is warmed");
  warming.insulation = fields.optional("insulation", as_insulation);
  if (from && to && *to <= *from)
    reading.add(*fields.find("to"), {.id = "warming.order",
                                     .message = "the room is not warmed to a temperature below the first",
                                     .found = found_at(*fields.find("to")),
                                     .allowed = "a temperature above \"from\"",
                                     .cure = "exchange the two"});
  fields.finish();
  return warming;
}

}  // namespace berthwright
