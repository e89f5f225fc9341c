#include <berthwright/solve/load/weights.h>

#include <algorithm>
#include <array>
#include <stdexcept>
#include <utility>

#include <berthwright/solve/cover/foam_blank.h>

#include "exact/spelling.h"
#include "geometry/centroid.h"
#include "solve/room/balance.h"

namespace berthwright {
namespace {

/// Density by nominal thickness, which together make the sheet weights of the data sheet.
struct BirchWeight {
  std::string_view panel;
  int tenths_of_mm = 0;
  int density = 0;  ///< kg/m³
};
constexpr std::array<BirchWeight, 7> birch_weights{{{"birch 6.5 mm", 65, 670},
                                                    {"birch 9 mm", 90, 710},
                                                    {"birch 12 mm", 120, 695},
                                                    {"birch 15 mm", 150, 690},
                                                    {"birch 18 mm", 180, 685},
                                                    {"birch 21 mm", 210, 680},
                                                    {"birch 24 mm", 240, 680}}};
constexpr int densest_plywood = 710;  // kg/m³, of the same data sheet

// The rule of 3 lb for a square foot an inch thick makes 48 lb of a half-inch sheet of 4 by 8 ft; another
// page gives 40.6 lb.
constexpr std::int64_t light_sheet = 406;
constexpr std::int64_t heavy_sheet = 480;

Mass birch_mass(Area area, const BirchWeight& birch) {
  constexpr Int128 square = 320'000'000'000;  // doubled square ticks, mm and kg to m² and 10 µg
  return Mass::from_units(static_cast<std::int64_t>(
      rounded(area.doubled() * birch.tenths_of_mm * birch.density, square, Rounding::nearest)));
}

Mass mass_at(Volume volume, int density) {
  return Mass::from_units(
      static_cast<std::int64_t>(rounded(Int128{volume.units()} * density, 10'000, Rounding::up)));
}

LengthSpan at(Length length) { return {length, length}; }

WeighedThing::Place place_of(const Region& outline) {
  const Point middle = Centroid(outline).nearest();
  return {at(middle.x), at(middle.y)};
}

WeighedThing::Place somewhere_in(const Rect& bounds) {
  return {{bounds.low.x, bounds.high.x}, {bounds.low.y, bounds.high.y}};
}

WeighedThing::Place place_kept(const Plan& plan, const std::string& where) {
  const Leaf* leaf = plan.leaf(where);
  const Fixture* fixture = plan.fixture(leaf != nullptr ? leaf->fixture.text() : where);
  return somewhere_in(fixture != nullptr ? fixture->solid.outline().bounds()
                                         : Rect{{}, {plan->interior.length, plan->interior.width}});
}

WeighedThing::Place place_posed(const Plan& plan, const Configuration& configuration, const PieceId& piece) {
  const auto pose = std::ranges::find(configuration.poses, piece, &Pose::piece);
  if (pose == configuration.poses.end()) throw std::logic_error("a configuration without a piece");
  return pose->manner == Pose::Manner::stowed ? place_kept(plan, pose->stowed_in) : place_of(pose->outline);
}

/// Without a volume there is no end to what a tank may hold.
MassSpan contents(const std::optional<TankFill>& fill, TankState tanks) {
  switch (tanks) {
    case TankState::empty:
      return MassSpan::of(Mass{});
    case TankState::full:
      return fill ? MassSpan::of(water(fill->volume, 100)) : MassSpan{};
    case TankState::as_told:
      if (!fill) return {};
      if (fill->percent) return MassSpan::of(water(fill->volume, *fill->percent));
      return {Mass{}, water(fill->volume, 100)};
  }
  throw std::logic_error("TankState out of range");
}

/// Collects what weighs, but for what the scales have counted already.
class Scales {
 public:
  Scales(const Plan& plan, const Configuration& configuration, TankState tanks)
      : plan_(plan), configuration_(configuration), tanks_(tanks) {
    if (plan->chassis && plan->chassis->weighed) weighed_ = &*plan->chassis->weighed;
  }

  void add(const Fixture& fixture) {
    const WeighedThing::Place place = place_of(fixture.solid.outline());
    const bool counted = was_on(fixture.id.text()) || (weighed_ != nullptr && weighed_->with_fixtures);
    // What every trailer has as part of its shell, and figures that stand for room and not for a thing.
    const bool shell = fixture.kind == Fixture::Kind::wheel_arch || fixture.kind == Fixture::Kind::protrusion;
    if (counted)
      add_counted(fixture.id.text(), fixture.name, fixture.weight, place);
    else if (fixture.weight || !shell)
      add_stated(fixture.id.text(), fixture.name, fixture.weight, place);
    if (fixture.kind == Fixture::Kind::tank) add_water(fixture.id.text(), fixture.name, fixture.fill, place);
  }

  void add(const Piece& piece) {
    const auto [weight, basis] = weight_of(piece, plan_->sewing);
    WeighedThing thing{piece.id.text(), piece.name, basis, weight,
                       place_posed(plan_, configuration_, piece.id)};
    if (was_on(piece.id.text()) || (weighed_ != nullptr && weighed_->with_everything)) {
      thing.on_scales = place_posed(plan_, *plan_.configuration(weighed_->configuration), piece.id);
      if (*thing.on_scales == thing.place) return;
    }
    things_.push_back(std::move(thing));
  }

  void add(const Cargo& cargo) {
    WeighedThing::Place place = place_kept(plan_, cargo.kept_in);
    if (cargo.along) place.along = at(*cargo.along);
    if (cargo.across) place.across = at(*cargo.across);
    const bool counted = was_on(cargo.id) || (weighed_ != nullptr && weighed_->with_everything);
    if (counted)
      add_counted(cargo.id, cargo.name, cargo.weight, place);
    else
      add_stated(cargo.id, cargo.name, cargo.weight, place);
    if (cargo.fill) add_water(cargo.id, cargo.name, cargo.fill, place);
  }

  std::vector<WeighedThing> things() && { return std::move(things_); }

 private:
  bool was_on(const std::string& id) const {
    return weighed_ != nullptr && std::ranges::find(weighed_->with, id) != weighed_->with.end();
  }

  void add_stated(const std::string& id, const std::string& name, const std::optional<MassSpan>& weight,
                  const WeighedThing::Place& place) {
    things_.push_back({id, name, weight ? WeighedThing::Basis::stated : WeighedThing::Basis::unknown,
                       weight.value_or(MassSpan{}), place});
  }

  /// It weighed one of its span on the scales and weighs any of it now.
  void add_counted(const std::string& id, const std::string& name, const std::optional<MassSpan>& weight,
                   const WeighedThing::Place& place) {
    if (!weight || !weight->most || weight->is_known()) return;
    const Mass differing = *weight->most - weight->least;
    things_.push_back(
        {id, name, WeighedThing::Basis::stated, {Mass{} - differing, differing}, place, place, true});
  }

  void add_water(const std::string& id, const std::string& name, const std::optional<TankFill>& fill,
                 const WeighedThing::Place& place) {
    things_.push_back({id, name, WeighedThing::Basis::water, contents(fill, tanks_), place});
  }

  const Plan& plan_;
  const Configuration& configuration_;
  TankState tanks_;
  const Weighed* weighed_ = nullptr;
  std::vector<WeighedThing> things_;
};

}  // namespace

std::pair<MassSpan, WeighedThing::Basis> weight_of(const Piece& piece, const Sewing& usual) {
  using Basis = WeighedThing::Basis;
  if (piece.weight) return {MassSpan::of(*piece.weight), Basis::stated};
  const Area area = piece.outline.polygon().area();
  const auto birch = std::ranges::find(birch_weights, std::string_view(piece.panel), &BirchWeight::panel);
  if (birch != birch_weights.end()) return {MassSpan::of(birch_mass(area, *birch)), Basis::panel};
  if (const std::optional<Mass> heavy = piece.is_soft() ? std::nullopt : plywood_weight(piece)) {
    const Mass light = Mass::from_units(static_cast<std::int64_t>(
        rounded(Int128{heavy->units()} * light_sheet, heavy_sheet, Rounding::down)));
    const Mass most = piece.panel.empty() ? mass_at(Volume::box(area, piece.thickness), densest_plywood)
                                          : *heavy + Mass::from_units(1);
    return {{light, most}, Basis::plywood};
  }
  if (piece.is_soft())
    if (const std::optional<FoamBlank> foam = foam_of(piece, piece.sewing.value_or(usual));
        foam && foam->weight)
      return {MassSpan::of(*foam->weight), Basis::foam};
  return {MassSpan{}, Basis::unknown};
}

std::vector<WeighedThing> weights_in(const Plan& plan, const Configuration& configuration, TankState tanks) {
  Scales scales(plan, configuration, tanks);
  for (const Fixture& fixture : plan->fixtures) scales.add(fixture);
  for (const Piece& piece : plan->pieces) scales.add(piece);
  for (const Cargo& cargo : plan->cargo) scales.add(cargo);
  return std::move(scales).things();
}

const Source& weight_source(WeighedThing::Basis basis) {
  static const Source panel{.kind = Source::Kind::published,
                            .text = "birch plywood data sheet: sheets of 1220 × 2440 mm",
                            .edition = {},
                            .address = "vdocuments.site"};
  static const Source plywood{.kind = Source::Kind::published,
                              .text =
                                  "3 lb for a square foot an inch thick (a panel association, as quoted), "
                                  "and 40.6 lb a half-inch sheet (reference.com); without a panel's name "
                                  "up to the densest of the birch data sheet",
                              .edition = {},
                              .address = {}};
  static const Source foam{.kind = Source::Kind::published,
                           .text = "density in the foam's four-digit grade, of the foam as it is cut",
                           .edition = {},
                           .address = "upholsteryresource.com/node/81"};
  static const Source water{.kind = Source::Kind::from_memory,
                            .text = "water at one kilogram a litre",
                            .edition = {},
                            .address = {}};
  static const Source plan{.kind = Source::Kind::maker, .text = "the plan", .edition = {}, .address = {}};
  switch (basis) {
    case WeighedThing::Basis::panel:
      return panel;
    case WeighedThing::Basis::plywood:
      return plywood;
    case WeighedThing::Basis::foam:
      return foam;
    case WeighedThing::Basis::water:
      return water;
    case WeighedThing::Basis::stated:
    case WeighedThing::Basis::unknown:
      return plan;
  }
  throw std::logic_error("Basis out of range");
}

}  // namespace berthwright
