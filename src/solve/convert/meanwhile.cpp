#include "solve/convert/meanwhile.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include <berthwright/solve/way/clear_opening.h>
#include <berthwright/solve/way/way_out.h>

#include "exact/required.h"
#include "solve/comparing.h"
#include "solve/convert/room_around.h"
#include "solve/heat/burnables.h"

namespace berthwright {
namespace {

/// One fault at one stage.
struct Fault {
  std::string about;  ///< the source, the opening; empty: the way
  std::size_t stage = 0;
  Finding finding;
  std::optional<Quantity> at_start;
  std::optional<Quantity> at_end;
};

// Of a size, the side that is short by most, or has least to spare.
Length spare(const Sides& clear) {
  return std::min(clear.length - vehicle_opening.length, clear.width - vehicle_opening.width);
}

bool is_worse(const Length& now, const std::optional<Length>& start, const std::optional<Length>& end) {
  return (!start || now < *start) && (!end || now < *end);
}

template <class Value>
std::optional<Quantity> figure_of(const std::optional<Value>& value) {
  return value ? std::optional<Quantity>(*value) : std::nullopt;
}

/// Looks at a conversion stage by stage.
class StageWatch {
 public:
  StageWatch(const Plan& plan, const Conversion& conversion) : plan_(plan), conversion_(conversion) {
    for (std::size_t i = 0; i <= conversion.steps.size(); ++i)
      stages_.push_back(stage_after(plan, conversion, i));
    std::vector<Region> outlines;
    for (const Fixture& fixture : plan->fixtures)
      if (stands_in_the_way(fixture.solid) && fixture.kind != Fixture::Kind::curtain)
        outlines.push_back(fixture.solid.outline());
    furniture_ = united(outlines);
  }

  std::vector<Fault> faults() {
    std::vector<Fault> found;
    std::set<std::string> sources;
    for (const Arrangement* end : {&stages_.front(), &stages_.back()})
      for (const Placed& thing : end->things)
        if (gives_heat(thing)) sources.insert(thing.id);
    for (const std::string& source : sources) add_heat(source, found);
    add_ways(found);
    for (const Opening& opening : plan_->openings) add_opening(opening, found);
    return found;
  }

 private:
  std::size_t last() const { return stages_.size() - 1; }

  // The source where it gives heat; nullptr: it is absent, stowed or put aside.
  const Placed* giving_heat(const std::string& id, std::size_t stage) const {
    const Placed* source = stages_[stage].find(id);
    if (source == nullptr || !gives_heat(*source)) return nullptr;
    const bool aside = source->piece != nullptr &&
                       place_after(conversion_, source->piece->id, stage).kind == PiecePlace::Kind::parked;
    return aside ? nullptr : source;
  }

  using Distances = std::map<std::string, HeatDistance>;
  Distances distances(const std::string& id, std::size_t stage) const {
    Distances found;
    if (const Placed* source = giving_heat(id, stage))
      for (const Burnable& burnable : burnables_in(stages_[stage], {}))
        found.emplace(burnable.id, heat_distance(*source, burnable));
    return found;
  }

  void add_heat(const std::string& id, std::vector<Fault>& found) const {
    const Distances start = distances(id, 0);
    const Distances end = distances(id, last());
    for (std::size_t stage = 1; stage < last(); ++stage) {
      const Placed* source = giving_heat(id, stage);
      if (source == nullptr) continue;
      std::vector<Fault> here;
      for (const auto& [thing, entry] : distances(id, stage)) {
        const auto at = [&](const Distances& all) {
          const auto known = all.find(thing);
          return known == all.end() ? nullptr : &known->second;
        };
        add_heat_fault(*source, {entry, at(start), at(end)}, stage, here);
      }
      add_worst_of_each(std::move(here), found);
    }
  }

  /// The distance to one thing at some stage, and before and after all; nullptr: it was not there.
  struct StageDistance {
    const HeatDistance& entry;
    const HeatDistance* start;
    const HeatDistance* end;
  };

  void add_heat_fault(const Placed& source, const StageDistance& distance, std::size_t stage,
                      std::vector<Fault>& found) const {
    const HeatDistance& entry = distance.entry;
    const auto distance_at = [](const HeatDistance* one) {
      return one != nullptr ? std::optional(one->distance) : std::nullopt;
    };
    const auto margin_at = [](const HeatDistance* one) {
      return one != nullptr ? one->plate_margin : std::nullopt;
    };
    const auto begin = [&](std::string_view rule) {
      Fault fault{source.id, stage, finding_of(plan_, rule), {}, {}};
      fault.finding.subjects = {source.id, entry.nearest_to};
      fault.finding.where = {entry.nearest.from, entry.nearest.to};
      fault.at_start = figure_of(distance_at(distance.start));
      fault.at_end = figure_of(distance_at(distance.end));
      return fault;
    };
    const bool nearer = is_worse(entry.distance, distance_at(distance.start), distance_at(distance.end));
    if (is_heater(source) && nearer) {
      Fault fault = begin("heat.three-feet");
      compare(plan_, fault.finding, entry.distance);
      if (fault.finding.status == Status::not_met) found.push_back(std::move(fault));
    }
    const Length asked = plan_.limit(*find_rule("heat.data-plate"));
    if (entry.plate_margin &&
        is_worse(*entry.plate_margin, margin_at(distance.start), margin_at(distance.end))) {
      Fault fault = begin("heat.data-plate");
      const Length plate = required(entry.plate_required);
      compare(fault.finding, plate + *entry.plate_margin, plate + asked);
      fault.finding.where = {entry.plate_nearest.from, entry.plate_nearest.to};
      fault.finding.before = entry.plate_faces;
      if (fault.finding.status == Status::not_met) {
        found.push_back(std::move(fault));
        return;
      }
    }
    const bool unknown = entry.plate_incomplete || plate_of(source) == nullptr;
    if (is_heater(source) || !unknown || !nearer ||
        entry.distance >= plan_.limit(*find_rule("heat.also-three-feet")))
      return;
    Fault fault = begin("heat.data-plate");
    fault.finding.measured = entry.distance;
    fault.finding.before = entry.missing_faces;
    found.push_back(std::move(fault));
  }

  // Of the faults of one source at one stage: by each rule the worst, the others named after it.
  static void add_worst_of_each(std::vector<Fault> here, std::vector<Fault>& found) {
    std::ranges::stable_sort(here, {}, [](const Fault& fault) {
      return std::tuple(fault.finding.rule.text(), fault.finding.status == Status::unknown,
                        fault.finding.margin.value_or(Length{}), std::get<Length>(*fault.finding.measured));
    });
    const Fault* worst = nullptr;
    for (Fault& fault : here) {
      if (worst == nullptr || worst->finding.rule != fault.finding.rule) {
        found.push_back(std::move(fault));
        worst = &found.back();
      } else {
        found.back().finding.subjects.push_back(fault.finding.subjects[1]);
      }
    }
  }

  /// The widest way out from a place to stand.
  struct Way {
    bool begins = false;        ///< the place is free
    std::optional<WayOut> out;  ///< none: no door is reached
    Length width() const { return out ? out->width : Length{}; }
  };
  // How wide a way is differs only with what stands beside the furniture, which few steps change.
  const Way& way_from(const Rect& square, std::size_t stage) {
    std::vector<const PiecePlace*> beside;
    for (const PiecePlace& start : conversion_.start) {
      const PiecePlace& place = place_after(conversion_, start.pose.piece, stage);
      if (place.stands_in_room() && stands_beside_furniture(place)) beside.push_back(&place);
    }
    const auto [known, fresh] = ways_.try_emplace({std::move(beside), square.low});
    if (fresh) known->second = measured_way(square, stage);
    return known->second;
  }
  bool stands_beside_furniture(const PiecePlace& place) {
    const auto [known, fresh] = beside_.try_emplace(&place);
    if (fresh) known->second = !without(place.pose.outline, furniture_).empty();
    return known->second;
  }
  Way measured_way(const Rect& square, std::size_t stage) const {
    const std::vector<WayOut> ways = ways_out(plan_, stages_[stage], square);
    if (std::ranges::any_of(ways, [](const WayOut& w) { return w.end == WayOut::End::no_free_edge; }))
      return {};
    const WayOut* best = widest(ways);
    return {true, best == nullptr ? std::nullopt : std::optional(*best)};
  }

  // Where the person stands who has let go of one piece, or takes up the next.
  std::vector<Rect> places_to_stand(std::size_t stage) const {
    std::vector<Rect> places;
    for (const auto& place : {conversion_.steps[stage - 1].letting_go, conversion_.steps[stage].taking})
      if (place && std::ranges::find(places, place->square) == places.end()) places.push_back(place->square);
    return places;
  }

  void add_ways(std::vector<Fault>& found) {
    std::vector<std::string> doors;
    for (const Opening& opening : plan_->openings)
      if (is_way_out(opening)) doors.push_back(opening.id.text());
    if (doors.empty()) return;
    for (std::size_t stage = 1; stage < last(); ++stage) {
      std::optional<Fault> worst;
      for (const Rect& square : places_to_stand(stage)) {
        Way way = way_from(square, stage);
        if (!way.begins || (worst && way.width() >= std::get<Length>(*worst->finding.measured))) continue;
        Fault fault{{}, stage, finding_of(plan_, "way.aisle"), {}, {}};
        compare(plan_, fault.finding, way.width());
        if (fault.finding.status != Status::not_met) continue;
        const auto width_at = [&](std::size_t end) {
          const Way& there = way_from(square, end);
          return there.begins ? std::optional(there.width()) : std::nullopt;
        };
        const std::optional<Length> start = width_at(0);
        const std::optional<Length> end = width_at(last());
        if (!is_worse(way.width(), start, end)) continue;
        fault.at_start = figure_of(start);
        fault.at_end = figure_of(end);
        way = measured_way(square, stage);  // by the names of what stands there now
        if (way.out) {
          fault.finding.subjects = {way.out->door, way.out->left, way.out->right};
          fault.finding.where = {{way.out->way.left, Length{}}, {way.out->way.right, Length{}}};
        } else {
          fault.finding.variant = "no way";
          fault.finding.subjects = doors;
        }
        worst = std::move(fault);
      }
      if (worst) found.push_back(*std::move(worst));
    }
  }

  void add_opening(const Opening& opening, std::vector<Fault>& found) const {
    const bool window = opening.escape && opening.kind != Opening::Kind::door;
    if ((!window && !is_way_out(opening)) || opening.swing == Opening::Swing::fixed) return;
    if (window) add_clear(opening, found);
    if (opening.swing == Opening::Swing::in) add_swing(opening, found);
  }

  void add_clear(const Opening& opening, std::vector<Fault>& found) const {
    const Sides start = clear_opening(plan_, stages_.front(), opening).for_vehicle;
    const Sides end = clear_opening(plan_, stages_.back(), opening).for_vehicle;
    for (std::size_t stage = 1; stage < last(); ++stage) {
      const ClearOpening clear = clear_opening(plan_, stages_[stage], opening);
      const Length margin = spare(clear.for_vehicle);
      if (clear.holds_vehicle_opening() || !is_worse(margin, spare(start), spare(end))) continue;
      Fault fault{opening.id.text(), stage, finding_of(plan_, "way.opening"), start, end};
      fault.finding.subjects = {opening.id.text()};
      for (const std::string& id : clear.blocked_by) fault.finding.subjects.push_back(id);
      fault.finding.measured = clear.for_vehicle;
      fault.finding.compared = vehicle_opening;
      fault.finding.margin = margin;
      fault.finding.status = Status::not_met;
      found.push_back(std::move(fault));
    }
  }

  void add_swing(const Opening& opening, std::vector<Fault>& found) const {
    for (const std::size_t end : {std::size_t{0}, last()})
      if (!inward_swing(plan_, stages_[end], opening).is_free()) return;
    for (std::size_t stage = 1; stage < last(); ++stage) {
      const InwardSwing swing = inward_swing(plan_, stages_[stage], opening);
      if (swing.is_free()) continue;
      Fault fault{opening.id.text(), stage, finding_of(plan_, "way.swing"), {}, {}};
      fault.finding.subjects = {opening.id.text()};
      for (const std::string& id : swing.blocked_by) fault.finding.subjects.push_back(id);
      fault.finding.status = swing.known ? Status::not_met : Status::unknown;
      found.push_back(std::move(fault));
    }
  }

  const Plan& plan_;
  const Conversion& conversion_;
  std::vector<Arrangement> stages_;
  Region furniture_;
  std::map<const PiecePlace*, bool> beside_;
  std::map<std::pair<std::vector<const PiecePlace*>, Point>, Way> ways_;
};

// What holds at neighbouring stages is told once, where it is worst.
std::vector<Meanwhile> joined(std::vector<Fault> faults) {
  std::ranges::stable_sort(
      faults, {}, [](const Fault& f) { return std::tuple(f.finding.rule.text(), f.about, f.stage); });
  const auto badness = [](const Finding& finding) {
    return std::pair(finding.status == Status::unknown, finding.margin.value_or(Length{}));
  };
  std::vector<Meanwhile> told;
  const Fault* before = nullptr;
  for (Fault& fault : faults) {
    const bool goes_on = before != nullptr && before->finding.rule == fault.finding.rule &&
                         before->about == fault.about && before->stage + 1 == fault.stage;
    before = &fault;
    if (!goes_on) {
      told.push_back(
          {fault.stage, fault.stage + 1, fault.stage, fault.finding, fault.at_start, fault.at_end});
      continue;
    }
    Meanwhile& one = told.back();
    one.until = fault.stage + 1;
    std::vector<std::string> others = one.finding.subjects;
    if (badness(fault.finding) < badness(one.finding)) {
      std::swap(others, one.finding.subjects);
      one.worst = fault.stage;
      one.finding = fault.finding;
      one.at_start = fault.at_start;
      one.at_end = fault.at_end;
    } else {
      others = fault.finding.subjects;
    }
    if (fault.finding.rule.text().starts_with("heat."))
      for (const std::string& id : others)
        if (std::ranges::find(one.finding.subjects, id) == one.finding.subjects.end())
          one.finding.subjects.push_back(id);
  }
  for (Meanwhile& one : told)
    if (one.finding.rule.text().starts_with("heat.") && one.finding.subjects.size() > 2)
      std::ranges::sort(one.finding.subjects.begin() + 2, one.finding.subjects.end());
  std::ranges::stable_sort(told, {}, &Meanwhile::from);
  return told;
}

}  // namespace

std::vector<Meanwhile> found_meanwhile(const Plan& plan, const Conversion& conversion) {
  if (conversion.steps.size() < 2) return {};
  return joined(StageWatch(plan, conversion).faults());
}

Meanwhile undone(Meanwhile meanwhile, std::size_t steps) {
  const std::size_t from = meanwhile.from;
  meanwhile.from = steps - meanwhile.until + 1;
  meanwhile.until = steps - from + 1;
  meanwhile.worst = steps - meanwhile.worst;
  std::swap(meanwhile.at_start, meanwhile.at_end);
  return meanwhile;
}

}  // namespace berthwright
