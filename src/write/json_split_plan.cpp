#include <berthwright/write/outputs.h>

#include <algorithm>

#include <nlohmann/json.hpp>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "solve/room/rest.h"
#include "view/split_words.h"
#include "write/plan_layout.h"

namespace berthwright {
namespace {

using PlanJson = nlohmann::ordered_json;

/// One chosen bay, being written into the plan.
class BayWriter {
 public:
  BayWriter(const Plan& plan, const ChosenSplit& chosen)
      : plan_(plan),
        bay_(chosen.splits->bay),
        split_(chosen.split()),
        thickness_(chosen.splits->limits.thickness),
        bed_(chosen.bed),
        names_(cushion_names(plan, bay_, split_, chosen.others)) {}

  void write_into(PlanJson& json) const {
    erase_old(json["pieces"], "id");
    for (std::size_t i = 0; i < names_.size(); ++i) json["pieces"].push_back(piece(i));
    for (auto& [id, poses] : json["configurations"].items()) {
      erase_old(poses, "piece");
      const bool night = id == bay_.night->id.text();
      const Result<Arrangement> standing = arranged(plan_, *plan_.configuration(id));
      // Seats before the backs that stand on them.
      for (const auto use : {SplitPiece::Use::seat, SplitPiece::Use::back, SplitPiece::Use::filler})
        for (std::size_t i = 0; i < names_.size(); ++i)
          if (split_.pieces[i].use == use)
            poses.push_back(on_its_own(night ? night_pose(i) : day_pose(i), i, night, standing.value()));
    }
    write_bed(json);
  }

 private:
  std::string text(Length length) const { return exact_text(length, plan_->unit); }
  PlanJson place(const Rect& at) const { return {{"front", text(at.low.x)}, {"left", text(at.low.y)}}; }

  bool is_old(const PlanJson& id) const {
    return id.is_string() && std::ranges::any_of(bay_.cushions, [&](const PieceId& old) {
             return old.text() == id.get<std::string>();
           });
  }

  void erase_old(PlanJson& list, const char* field) const {
    PlanJson kept = PlanJson::array();
    for (const PlanJson& one : list)
      if (!is_old(one[field])) kept.push_back(one);
    list = std::move(kept);
  }

  const Lid& lid_of(const SplitPiece& piece) const {
    return *std::ranges::find(bay_.lids, piece.bench, &Lid::bench);
  }

  PlanJson piece(std::size_t i) const {
    const SplitPiece& one = split_.pieces[i];
    PlanJson json{{"id", names_[i].id}, {"name", names_[i].name}, {"kind", "cushion"}};
    if (one.kept_out.empty()) {
      json["length"] = text(one.length);
      json["width"] = text(one.width);
    } else {
      const Region outline = without(Region(*one.by_day), one.kept_out);
      PlanJson points = PlanJson::array();
      for (const Point& p : outline.faces()[0].outer.vertices())
        points.push_back({text(p.x - one.by_day->low.x), text(p.y - one.by_day->low.y)});
      json["outline"] = points;
    }
    json["thickness"] = text(thickness_);
    return json;
  }

  PlanJson day_pose(std::size_t i) const {
    const SplitPiece& one = split_.pieces[i];
    if (one.use == SplitPiece::Use::filler)
      return {{"piece", names_[i].id}, {"stowed", bay_.lids.front().bench.text()}};
    PlanJson json{{"piece", names_[i].id}, {"at", place(*one.by_day)}};
    if (one.use == SplitPiece::Use::seat) return json;
    const Lid& lid = lid_of(one);
    json["stands_on"] = lid.looks_along() ? "width" : "length";
    json["faces"] = word(term_of(lid.faces), English::american);
    return json;
  }

  PlanJson night_pose(std::size_t i) const {
    const SplitPiece& one = split_.pieces[i];
    if (one.use == SplitPiece::Use::back && one.stays()) return day_pose(i);
    PlanJson json{{"piece", names_[i].id}, {"at", place(one.by_night)}};
    if (one.turned()) json["turn"] = 90;
    return json;
  }

  /// Where a bunk or a table hangs over the bay the pose says what carries it: nothing else would tell that
  /// it lies beneath.
  PlanJson on_its_own(PlanJson pose, std::size_t i, bool night, const Arrangement& standing) const {
    const SplitPiece& one = split_.pieces[i];
    if (!night && !one.by_day) return pose;
    const Region at(night ? one.by_night : *one.by_day);
    const bool covered = std::ranges::any_of(standing.things, [&](const Placed& thing) {
      return !is_old(thing.id) && thing.solid.base() >= bay_.level && thing.solid.base() < drop_height &&
             !hangs_on_a_wall(thing) && overlaps(thing.solid.outline(), at);
    });
    if (!covered) return pose;
    const bool upright = one.use == SplitPiece::Use::back && (!night || one.stays());
    PlanJson carriers = PlanJson::array();
    for (std::size_t j = 0; upright && j < names_.size(); ++j)
      if (split_.pieces[j].use == SplitPiece::Use::seat && overlaps(Region(*split_.pieces[j].by_day), at))
        carriers.push_back(names_[j].id);
    if (carriers.empty())
      for (const Placed& thing : standing.things)
        if (is_of_bay(thing) && overlaps(thing.solid.outline(), at)) carriers.push_back(thing.id);
    pose["on"] = carriers.size() == 1 ? carriers.front() : carriers;
    return pose;
  }

  bool is_of_bay(const Placed& thing) const {
    return std::ranges::find(bay_.boards, thing.id) != bay_.boards.end() ||
           std::ranges::any_of(bay_.lids, [&](const Lid& lid) { return lid.bench.text() == thing.id; });
  }

  void write_bed(PlanJson& json) const {
    PlanJson lying = PlanJson::array();
    for (std::size_t i = 0; i < names_.size(); ++i)
      if (split_.pieces[i].use != SplitPiece::Use::back || !split_.pieces[i].stays())
        lying.push_back(names_[i].id);
    for (PlanJson& bed : json["beds"]) {
      if (bed["configuration"] != bay_.night->id.text()) continue;
      if (!std::ranges::any_of(bed["pieces"], [&](const PlanJson& id) { return is_old(id); })) continue;
      for (const PlanJson& id : bed["pieces"])
        if (!is_old(id)) lying.push_back(id);
      bed["pieces"] = lying;
      return;
    }
    const std::string& bench = bay_.lids.front().bench.text();
    const std::string id = bed_.empty() ? (bench + " bed").substr(0, 40) : "bed";
    const std::string name = bed_.empty() ? "Bed at " + plan_.fixture(bench)->name : bed_;
    json["beds"].push_back(
        {{"id", id}, {"name", name}, {"configuration", bay_.night->id.text()}, {"pieces", lying}});
  }

  const Plan& plan_;
  const NightBay& bay_;
  const Split& split_;
  Length thickness_;
  std::string bed_;
  std::vector<CushionName> names_;
};

}  // namespace

std::string plan_text_with(const Plan& plan, std::string_view text, const std::vector<ChosenSplit>& chosen) {
  PlanJson json = PlanJson::parse(text, nullptr, true, true);
  for (const char* list : {"pieces", "beds"})
    if (!json.contains(list)) json[list] = PlanJson::array();
  for (const ChosenSplit& one : chosen) BayWriter(plan, one).write_into(json);
  return "// Written by berthwright split; comments of the plan it was made from are not carried over.\n" +
         laid_out(json) + "\n";
}

}  // namespace berthwright
