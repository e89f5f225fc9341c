#include <algorithm>
#include <array>
#include <utility>

#include <berthwright/geometry/placement.h>

#include "plan/in_quotes.h"
#include "plan/read_leaves.h"
#include "plan/readers.h"

namespace berthwright {
namespace {

constexpr std::array<Word<Fixture::Kind>, 25> fixture_kinds{{
    {"bench", Fixture::Kind::bench},
    {"cabinet", Fixture::Kind::cabinet},
    {"locker", Fixture::Kind::locker},
    {"shelf", Fixture::Kind::shelf},
    {"counter", Fixture::Kind::counter},
    {"sink", Fixture::Kind::sink},
    {"refrigerator", Fixture::Kind::refrigerator},
    {"heater", Fixture::Kind::heater},
    {"furnace outlet", Fixture::Kind::furnace_outlet},
    {"oven", Fixture::Kind::oven},
    {"cooktop", Fixture::Kind::cooktop},
    {"outlet", Fixture::Kind::outlet},
    {"smoke alarm", Fixture::Kind::smoke_alarm},
    {"co alarm", Fixture::Kind::co_alarm},
    {"gas alarm", Fixture::Kind::gas_alarm},
    {"light", Fixture::Kind::light},
    {"tank", Fixture::Kind::tank},
    {"battery", Fixture::Kind::battery},
    {"leg", Fixture::Kind::leg},
    {"ledge", Fixture::Kind::ledge},
    {"wheel arch", Fixture::Kind::wheel_arch},
    {"protrusion", Fixture::Kind::protrusion},
    {"curtain", Fixture::Kind::curtain},
    {"wall", Fixture::Kind::wall},
    {"guard rail", Fixture::Kind::guard_rail},
}};

/// What the trade and the kitchen call some of them, American and British.
constexpr std::array<Synonym, 33> synonyms{{
    {"worktop", "counter"},
    {"countertop", "counter"},
    {"galley", "counter"},
    {"hob", "cooktop"},
    {"stove", "cooktop"},
    {"range", "oven"},
    {"fridge", "refrigerator"},
    {"icebox", "refrigerator"},
    {"cool box", "refrigerator"},
    {"socket", "outlet"},
    {"power point", "outlet"},
    {"wheel well", "wheel arch"},
    {"wheel box", "wheel arch"},
    {"fender well", "wheel arch"},
    {"cupboard", "cabinet"},
    {"wardrobe", "cabinet"},
    {"closet", "cabinet"},
    {"overhead cabinet", "locker"},
    {"overhead locker", "locker"},
    {"settee", "bench"},
    {"dinette", "bench"},
    {"seat box", "bench"},
    {"cleat", "ledge"},
    {"bearer", "ledge"},
    {"partition", "wall"},
    {"bulkhead", "wall"},
    {"lamp", "light"},
    {"smoke detector", "smoke alarm"},
    {"carbon monoxide alarm", "co alarm"},
    {"propane alarm", "gas alarm"},
    {"latch", "protrusion"},
    {"crank", "protrusion"},
    {"bunk rail", "guard rail"},
}};

bool gives_heat(Fixture::Kind kind) {
  return kind == Fixture::Kind::heater || kind == Fixture::Kind::furnace_outlet ||
         kind == Fixture::Kind::oven || kind == Fixture::Kind::cooktop;
}

/// A fixture that does not stand anywhere yet.
struct Unplaced {
  std::string id;
  std::string name;
  Fixture::Kind kind = Fixture::Kind::cabinet;
  Outline outline;
  Turn turn;
  Length base;
  Length top;
  std::optional<HeatSource> heat;
  std::optional<Place> place;
  std::optional<Vector> absolute;  ///< of an outline drawn in the room's own axes
  std::optional<Wall> faces;
  bool burns = false;
  std::optional<InsideBox> inside;
  std::optional<MassSpan> weight;
  std::optional<TankFill> fill;
  std::optional<Draw> draw;
  const Node* opens = nullptr;
  bool sound = true;  ///< false: shape or heights are stand-ins
  Origin origin;
};

void read_heights(Fields& fields, Unplaced& fixture) {
  fields.refuse("height", "a fixture is given by the heights of its underside and its top above the floor",
                "write \"base\" and \"top\"");
  fixture.base = fields.with_default("base", as_length, Length{}, "0", "it stands on the floor");
  const std::optional<Length> top = fields.required("top", as_length);
  fixture.top = top.value_or(fixture.base + 1_in);
  fixture.sound = fixture.sound && top;
  if (fixture.base < fixture.top) return;
  fixture.sound = false;
  fields.reading().add(*fields.find("top"),
                       {.id = "fixture.upside-down",
                        .message = "the top is not above the underside",
                        .found = found_at(*fields.find("top")),
                        .allowed = "a height above \"base\", both measured from the floor",
                        .cure = "exchange the two, or correct one"});
  fixture.top = fixture.base + 1_in;
}

void read_standing(Fields& fields, const Shape& shape, Unplaced& fixture) {
  if (shape.free && !fields.has("at")) {
    fixture.absolute = shape.written_at;
    fields.find("at");
    fields.refuse("turn", "an outline without \"at\" is drawn where it stands",
                  "draw it turned, or add \"at\"");
    return;
  }
  fixture.place = fields.required("at", as_place);
  fixture.turn = fields.with_default("turn", as_turn, Turn{}, "0", "not turned");
}

/// "faces" and "data_plate", as far as the kind has them.
void read_front(Fields& fields, Fixture::Kind kind, Unplaced& fixture) {
  const bool light = kind == Fixture::Kind::light;
  const bool heat = gives_heat(kind) || (light && fields.has("data_plate"));
  if (heat) {
    fields.require("faces");
    fixture.heat = read_heat(fields);
  }
  if (light || kind == Fixture::Kind::outlet)
    fixture.faces = fields.optional("faces", as_wall);
  else if (!heat)
    fields.refuse("faces", "only what gives heat, a light or an outlet has a front", "take it away");
  if (light && !heat) fields.find("data_plate");
  if (!light && !heat) fields.refuse("data_plate", "only what gives heat has one", "take it away");
  if (!heat || fixture.turn.is_quarter()) return;
  fields.reading().add(*fields.find("turn"),
                       {.id = "heat.turn",
                        .message = "what gives heat can only be turned by quarter turns",
                        .found = found_at(*fields.find("turn")),
                        .allowed = "0, 90, 180 or 270",
                        .cure = "turn it by the nearest of these"});
}

void read_inside(Fields& fields, Fixture::Kind kind, Unplaced& fixture) {
  if (kind == Fixture::Kind::bench || kind == Fixture::Kind::cabinet || kind == Fixture::Kind::locker ||
      kind == Fixture::Kind::counter)
    fixture.inside = fields.optional("inside", as_inside);
  else
    fields.refuse("inside", "benches, cabinets, lockers and counters have one", "take it away");
}

void read_tank(Fields& fields, Fixture::Kind kind, Unplaced& fixture) {
  if (kind == Fixture::Kind::tank)
    fixture.fill = read_fill(fields);
  else
    for (const std::string_view name : {"volume", "fill"})
      fields.refuse(name, "only a tank is filled", "take it away");
}

Unplaced read_fixture(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a fixture");
  const std::optional<std::string> id = fields.required("id", as_id);
  std::string name = read_name(fields, id.value_or(""));
  const std::optional<Fixture::Kind> kind = fields.required("kind", one_of(fixture_kinds, synonyms));
  const Shape shape = read_shape(fields);
  Unplaced fixture{id.value_or(""),
                   std::move(name),
                   kind.value_or(Fixture::Kind::cabinet),
                   shape.outline,
                   {},
                   {},
                   {},
                   std::nullopt,
                   std::nullopt,
                   std::nullopt,
                   std::nullopt,
                   false,
                   std::nullopt,
                   read_weight_span(fields),
                   std::nullopt,
                   read_draw(fields, kind == Fixture::Kind::heater || kind == Fixture::Kind::light),
                   fields.find("opens"),
                   shape.sound,
                   node.origin()};
  read_standing(fields, shape, fixture);
  read_heights(fields, fixture);
  const bool curtain = kind == Fixture::Kind::curtain;
  fixture.burns = fields.with_default("burns", as_flag, curtain, curtain ? "true" : "false",
                                      curtain ? "cloth burns" : "not stated to burn easily");
  if (kind) {
    read_front(fields, *kind, fixture);
    read_inside(fields, *kind, fixture);
    read_tank(fields, *kind, fixture);
  } else {
    read_heat(fields);
    fields.optional("inside", as_inside);
    read_fill(fields);
  }
  fields.finish();
  return fixture;
}

/// Finds the places of fixtures, each after those it leans on.
class Surveyor {
 public:
  Surveyor(std::vector<Unplaced> fixtures, const RoomExtent& room, Reading& reading)
      : fixtures_(std::move(fixtures)),
        room_(room),
        reading_(reading),
        states_(fixtures_.size(), State::waiting) {
    for (const Unplaced& fixture : fixtures_) landmarks_.push_back({fixture.id, std::nullopt});
  }

  std::vector<Fixture> placed() && {
    shifts_.resize(fixtures_.size());
    for (std::size_t i = 0; i < fixtures_.size(); ++i) survey(i);
    std::vector<Fixture> result;
    for (std::size_t i = 0; i < fixtures_.size(); ++i) result.push_back(fixture(i));
    return result;
  }

 private:
  enum class State { waiting, under_way, done };

  /// Each fixture leans on two others at most, so the walk is a list of fixtures still to be done.
  void survey(std::size_t first) {
    std::vector<std::size_t> way;
    if (states_[first] == State::waiting) way.push_back(first);
    while (!way.empty()) {
      const std::size_t i = way.back();
      states_[i] = State::under_way;
      const std::optional<std::size_t> next = unfinished_support(i, way);
      if (next) {
        way.push_back(*next);
        continue;
      }
      settle(i);
      states_[i] = State::done;
      way.pop_back();
    }
  }

  std::optional<std::size_t> unfinished_support(std::size_t i, const std::vector<std::size_t>& way) {
    if (!fixtures_[i].place) return std::nullopt;
    for (const Measure* measure : leanings(*fixtures_[i].place)) {
      const auto found = std::ranges::find(landmarks_, measure->fixture, &Landmark::id);
      if (found == landmarks_.end()) continue;
      const auto support = static_cast<std::size_t>(found - landmarks_.begin());
      if (states_[support] == State::waiting) return support;
      if (states_[support] == State::under_way) report_cycle(*measure, support, way);
    }
    return std::nullopt;
  }

  void report_cycle(const Measure& measure, std::size_t support, const std::vector<std::size_t>& way) {
    std::string chain;
    for (auto at = std::ranges::find(way, support); at != way.end(); ++at) chain += fixtures_[*at].id + " → ";
    chain += fixtures_[support].id;
    reading_.add(measure.origin, {.id = "place.circle",
                                  .message = "these fixtures are measured from each other in a circle: " +
                                             printable(chain, 200),
                                  .found = in_quotes(measure.fixture),
                                  .allowed = "a chain of measures that ends at a wall",
                                  .cure = "measure one of them from a wall"});
  }

  void settle(std::size_t i) {
    const Unplaced& fixture = fixtures_[i];
    const Rect box = Placement{false, fixture.turn, {}}(fixture.outline.polygon()).bounds();
    shifts_[i] = fixture.absolute;
    if (fixture.place) {
      for (const Measure* measure : leanings(*fixture.place))
        if (std::ranges::find(landmarks_, measure->fixture, &Landmark::id) == landmarks_.end())
          report_unknown_fixture(*measure, landmarks_, reading_);
      shifts_[i] = shift_to(*fixture.place, box, room_, landmarks_);
    }
    if (shifts_[i] && within_reach(box, *shifts_[i], fixture.origin, reading_))
      landmarks_[i].bounds = Rect{box.low + *shifts_[i], box.high + *shifts_[i]};
    else
      shifts_[i].reset();
  }

  Fixture fixture(std::size_t i) {
    const Unplaced& from = fixtures_[i];
    const Placement placement{false, from.turn, shifts_[i].value_or(Vector{})};
    std::vector<Arc> arcs;
    for (const Arc& arc : from.outline.arcs()) arcs.push_back(placement(arc));
    Fixture fixture{.id = FixtureId(from.id),
                    .name = from.name,
                    .kind = from.kind,
                    .solid = Solid(placement(from.outline.polygon()), from.base, from.top),
                    .arcs = std::move(arcs),
                    .heat = from.heat,
                    .faces = from.faces,
                    .burns = from.burns,
                    .leaves = {},
                    .inside = from.sound ? from.inside : std::nullopt,
                    .weight = from.weight,
                    .fill = from.fill,
                    .draw = from.draw,
                    .origin = from.origin};
    if (from.opens != nullptr)
      fixture.leaves = read_leaves(*from.opens, fixture,
                                   {.room = room_,
                                    .landmarks = landmarks_,
                                    .square = from.turn.is_quarter(),
                                    .sound = from.sound && landmarks_[i].bounds},
                                   reading_);
    return fixture;
  }

  std::vector<Unplaced> fixtures_;
  RoomExtent room_;
  Reading& reading_;
  std::vector<State> states_;
  std::vector<Landmark> landmarks_;
  std::vector<std::optional<Vector>> shifts_;
};

}  // namespace

HeatSource read_heat(Fields& fields) {
  HeatSource heat{fields.optional("faces", as_wall).value_or(Wall::rear), std::nullopt};
  const Node* node = fields.find("data_plate");
  if (node == nullptr) return heat;
  Fields plate(node, fields.reading(), "a data plate");
  heat.plate = DataPlate{plate.optional("front", as_length), plate.optional("back", as_length),
                         plate.optional("sides", as_length), plate.optional("top", as_length)};
  plate.finish();
  if (plate.sound() && node->children.empty())
    fields.reading().add(
        *node, {.id = "plate.empty",
                .message = "the data plate gives no distance",
                .found = "{ }",
                .allowed = R"(distances for "front", "back", "sides", "top", as far as the plate gives them)",
                .cure = "take it away until the plate has been read"});
  return heat;
}

std::vector<Fixture> read_fixtures(const Node* node, const RoomExtent& room, Reading& reading) {
  if (node == nullptr || !is_list(*node, reading, "a list of fixtures")) return {};
  std::vector<Unplaced> fixtures;
  for (const Node& child : node->children) fixtures.push_back(read_fixture(child, reading));
  return Surveyor(std::move(fixtures), room, reading).placed();
}

}  // namespace berthwright
