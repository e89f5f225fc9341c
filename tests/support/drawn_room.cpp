#include "support/drawn_room.h"

#include <algorithm>
#include <random>
#include <stdexcept>

#include <berthwright/geometry/rectangle_in_region.h>

namespace berthwright {
namespace {

Outline rectangle(Length length, Length width) {
  return Outline::worked({length, width, {SquareCorner{}, SquareCorner{}, SquareCorner{}, SquareCorner{}}})
      .value();
}

Rect bounds_at_origin(const Region& region) {
  const Rect box = region.bounds();
  return {{}, {box.width(), box.height()}};
}

}  // namespace

Rect inches(int x0, int y0, int x1, int y1) {
  return {{Length::inches(x0), Length::inches(y0)}, {Length::inches(x1), Length::inches(y1)}};
}
Rect mm(int x0, int y0, int x1, int y1) {
  return {{Length::millimetres(x0), Length::millimetres(y0)},
          {Length::millimetres(x1), Length::millimetres(y1)}};
}

DrawnRoom::DrawnRoom(Unit unit, Length length, Length width)
    : parts{.title = {},
            .unit = unit,
            .interior = {.outline = rectangle(length, width),
                         .side_profile = rectangle(length, 78_in),
                         .cross_profile = std::nullopt,
                         .length = length,
                         .width = width,
                         .height = 78_in,
                         .origin = {}},
            .openings = {},
            .fixtures = {},
            .pieces = {},
            .configurations = {},
            .beds = {},
            .overrides = {},
            .notes = {},
            .defaults = {}} {
  parts.title = {"Sanderling", "Plover Lane Trailer Works", "", "", "", ""};
  begin("day");
}

DrawnRoom& DrawnRoom::fixture(const std::string& id, Fixture::Kind kind, const Rect& box, Length base,
                              Length top) {
  Fixture fixture{.id = FixtureId(id),
                  .name = id,
                  .kind = kind,
                  .solid = Solid(Region(box), base, top),
                  .arcs = {},
                  .heat = std::nullopt,
                  .origin = {}};
  if (kind == Fixture::Kind::heater) fixture.heat = HeatSource{};
  parts.fixtures.push_back(std::move(fixture));
  return *this;
}

DrawnRoom& DrawnRoom::piece(const std::string& id, Piece::Kind kind, const Region& outline, Length base,
                            Length top) {
  const Rect box = bounds_at_origin(outline);
  if (std::ranges::none_of(parts.pieces, [&](const Piece& piece) { return piece.id.text() == id; }))
    parts.pieces.push_back({.id = PieceId(id),
                            .name = id,
                            .kind = kind,
                            .outline = rectangle(box.width(), box.height()),
                            .length = box.width(),
                            .width = box.height(),
                            .thickness = top - base,
                            .material = "",
                            .heat = std::nullopt,
                            .origin = {}});
  layouts_.back().lying.push_back({id, outline, base, top});
  return *this;
}

DrawnRoom& DrawnRoom::stow(const std::string& id, const std::string& where) {
  layouts_.back().stowed.emplace_back(id, where);
  return *this;
}

DrawnRoom& DrawnRoom::begin(const std::string& configuration) {
  const bool fresh = layouts_.size() == 1 && layouts_.back().lying.empty();
  if (fresh) layouts_.clear();
  layouts_.push_back({configuration, {}, {}, {}, {}, {}, {}});
  return *this;
}

DrawnRoom& DrawnRoom::bed(const std::string& id, const std::vector<std::string>& pieces) {
  layouts_.back().beds.emplace_back(id, pieces);
  return *this;
}

DrawnRoom& DrawnRoom::gap(const Region& region, Length width, Point where) {
  layouts_.back().gaps.push_back({region, width, where, false, false});
  return *this;
}

DrawnRoom& DrawnRoom::ridge(Point where, Length step) {
  layouts_.back().ridges.push_back({{}, {}, step, where});
  return *this;
}

DrawnRoom& DrawnRoom::heat(const std::string& source, const std::string& bed, Point3 from, Point3 to,
                           Length distance) {
  HeatDistance heat;
  heat.source = source;
  heat.nearest_to = bed;
  heat.kind = HeatDistance::Kind::bed;
  heat.made_up = true;
  heat.distance = distance;
  heat.nearest = {SquaredLength::of(distance), from, to};
  layouts_.back().heat.push_back(heat);
  Finding finding;
  finding.rule = RuleId("heat.three-feet");
  finding.configuration = ConfigurationId(layouts_.back().id);
  finding.subjects = {source, bed};
  finding.status = distance < 36_in ? Status::not_met : Status::met;
  finding.measured = distance;
  finding.compared = 36_in;
  finding.margin = distance - 36_in;
  finding.variant = "made up";
  findings_.push_back(finding);
  return *this;
}

const Plan& DrawnRoom::plan() {
  if (!plan_.empty()) return plan_.front();
  for (const Layout& layout : layouts_) {
    Configuration configuration{ConfigurationId(layout.id), layout.id, {}, {}};
    for (const Lying& lying : layout.lying) {
      Pose pose;
      pose.piece = PieceId(lying.id);
      pose.outline = lying.outline;
      pose.height = lying.top - lying.base;
      configuration.poses.push_back(pose);
    }
    for (const auto& [id, where] : layout.stowed) {
      Pose pose;
      pose.piece = PieceId(id);
      pose.manner = Pose::Manner::stowed;
      pose.stowed_in = where;
      configuration.poses.push_back(pose);
    }
    parts.configurations.push_back(configuration);
    for (const auto& [id, pieces] : layout.beds) {
      Bed bed{BedId(id), id, ConfigurationId(layout.id), {}, {}, {}, {}};
      for (const std::string& piece : pieces) bed.pieces.emplace_back(piece);
      parts.beds.push_back(bed);
    }
  }
  Result<Plan> plan = Plan::checked(parts);
  for (const Problem& problem : plan.problems()) throw std::logic_error(problem.id + ": " + problem.message);
  plan_.push_back(std::move(plan).value());
  return plan_.front();
}

ConfigurationAnswer DrawnRoom::answer_of(const Layout& layout) const {
  const Plan& plan = plan_.front();
  ConfigurationAnswer answer;
  answer.configuration = plan.configuration(layout.id);
  answer.arrangement.configuration = answer.configuration;
  for (const Fixture& fixture : plan->fixtures)
    answer.arrangement.things.push_back(
        {fixture.id.text(), &fixture, nullptr, nullptr, fixture.solid, {}, {}});
  for (const Lying& lying : layout.lying) {
    const auto pose = std::ranges::find_if(answer.configuration->poses,
                                           [&](const Pose& p) { return p.piece.text() == lying.id; });
    answer.arrangement.things.push_back({lying.id,
                                         nullptr,
                                         plan.piece(lying.id),
                                         &*pose,
                                         Solid(lying.outline, lying.base, lying.top),
                                         {},
                                         {}});
  }
  for (const auto& [id, pieces] : layout.beds) {
    BedAnswer bed;
    bed.bed = plan.bed(id);
    std::vector<Region> regions;
    for (const Lying& lying : layout.lying)
      if (std::ranges::find(pieces, lying.id) != pieces.end()) {
        regions.push_back(lying.outline);
        bed.mattress.level = std::max(bed.mattress.level, lying.top);
      }
    bed.mattress.surface = united(regions);
    bed.mattress.closed = bed.mattress.surface;
    bed.mattress.gaps = layout.gaps;
    bed.mattress.ridges = layout.ridges;
    bed.room.lying = bed.mattress.closed;
    bed.room.area = bed.mattress.closed.area();
    bed.room.largest = largest_rectangle(bed.mattress.closed);
    if (!regions.empty())
      bed.room.overhead = {{bed.mattress.closed, plan->interior.height - bed.mattress.level, "roof", 3}};
    answer.beds.push_back(std::move(bed));
  }
  answer.heat = layout.heat;
  return answer;
}

const Answer& DrawnRoom::answer() {
  plan();
  if (!answer_) {
    answer_.emplace();
    for (const Layout& layout : layouts_) answer_->configurations.push_back(answer_of(layout));
    answer_->findings = findings_;
  }
  return *answer_;
}

DrawnRoom rear_dinette() {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.parts.openings = {{OpeningId("door"),
                          "entry door",
                          Opening::Kind::door,
                          Wall::right,
                          40_in,
                          24_in,
                          70_in,
                          {},
                          Opening::Swing::out,
                          Wall::front,
                          true,
                          {}},
                         {OpeningId("rear"),
                          "rear window",
                          Opening::Kind::window,
                          Wall::rear,
                          20_in,
                          32_in,
                          20_in,
                          34_in,
                          Opening::Swing::out,
                          std::nullopt,
                          true,
                          {}},
                         {OpeningId("side"),
                          "dinette window",
                          Opening::Kind::window,
                          Wall::left,
                          84_in,
                          30_in,
                          18_in,
                          36_in,
                          Opening::Swing::out,
                          std::nullopt,
                          false,
                          {}}};
  room.fixture("left bench", Fixture::Kind::bench, inches(78, 0, 120, 22), {}, 14_in)
      .fixture("right bench", Fixture::Kind::bench, inches(78, 50, 120, 72), {}, 14_in)
      .fixture("galley", Fixture::Kind::counter, inches(24, 0, 66, 20), {}, 36_in)
      .fixture("ice box", Fixture::Kind::refrigerator, inches(66, 0, 78, 20), {}, 50_in)
      .fixture("front locker", Fixture::Kind::locker, inches(0, 0, 12, 72), 52_in, 66_in)
      .fixture("heater", Fixture::Kind::heater, inches(66, 60, 74, 72), {}, 20_in);
  const auto cushion = Piece::Kind::cushion;
  room.piece("seat left", cushion, Region(inches(78, 0, 120, 18)), 14_in, 18_in)
      .piece("seat right", cushion, Region(inches(78, 54, 120, 72)), 14_in, 18_in)
      .piece("back left", cushion, Region(inches(78, 0, 120, 4)), 18_in, 36_in)
      .piece("back right", cushion, Region(inches(78, 68, 120, 72)), 18_in, 36_in)
      .piece("table", Piece::Kind::table, Region(inches(80, 22, 119, 50)), 28_in, 29_in)
      .piece("front filler", Piece::Kind::board, Region(inches(2, 4, 20, 40)), 14_in, 15_in);
  room.heat("heater", "seat right", {{74_in, 66_in}, 16_in}, {{78_in, 66_in}, 16_in}, 4_in);
  room.begin("night")
      .piece("table", Piece::Kind::table, Region(inches(78, 22, 120, 50)), 13_in, 14_in)
      .piece("seat left", cushion, Region(inches(78, 0, 120, 18)), 14_in, 18_in)
      .piece("seat right", cushion, Region(inches(78, 54, 120, 72)), 14_in, 18_in)
      .piece("back left", cushion, Region(inches(78, 18, 120, 36)), 14_in, 18_in)
      .piece("back right", cushion, Region(inches(78, 36, 120, 54)), 14_in, 18_in)
      .stow("front filler", "front locker")
      .bed("rear bed", {"seat left", "seat right", "back left", "back right"})
      .heat("heater", "rear bed", {{74_in, 66_in}, 16_in}, {{76_in, 66_in}, 16_in}, 2_in);
  return room;
}

DrawnRoom crowded_room(unsigned seed, int count) {
  std::mt19937 random(seed);
  const auto upto = [&](unsigned n) { return static_cast<int>(random() % n); };
  DrawnRoom room(seed % 2 == 0 ? Unit::inch : Unit::millimetre, Length::inches(90 + upto(120)),
                 Length::inches(60 + upto(30)));
  const int columns = 2 + upto(6);
  const int rows = (count + columns - 1) / columns;
  const std::string letters = "long cushion of the front bench with a very wide name WWW gj";
  for (int i = 0; i < count; ++i) {
    const Length wide = Length::from_ticks(room.parts.interior.length.ticks() / columns / 1000 * 1000);
    const Length high = Length::from_ticks(room.parts.interior.width.ticks() / rows / 1000 * 1000);
    const Point low{wide * (i % columns), high * (i / columns)};
    const Length inset = Length::millimetres(upto(3) * 8);
    const Rect box{low, {low.x + wide - inset, low.y + high - inset}};
    const auto size = static_cast<std::size_t>(1 + upto(upto(4) == 0 ? 200 : 24));
    std::string name = std::to_string(i) + " ";
    while (name.size() < size) name += letters[static_cast<std::size_t>(upto(60))];
    const auto kind = upto(3) == 0 ? Piece::Kind::board : Piece::Kind::cushion;
    const Length base = Length::inches(upto(10));
    room.piece("piece-" + std::to_string(i), kind, Region(box), base, base + Length::inches(2 + upto(8)));
    room.parts.pieces.back().name = name;
  }
  return room;
}

}  // namespace berthwright
