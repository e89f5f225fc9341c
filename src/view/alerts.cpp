#include "view/alerts.h"

#include <algorithm>
#include <array>

#include "view/called.h"
#include "view/hatching.h"
#include "view/lettering.h"

namespace berthwright {
namespace {

bool is_of(const DrawnConfiguration& of, const Finding& finding) {
  return finding.configuration == of.answer->configuration->id || finding.configuration.empty();
}

bool is_outdone(std::span<const Finding> all, const Finding& finding) {
  return finding.margin && std::ranges::any_of(all, [&](const Finding& other) {
           return other.rule == finding.rule && other.configuration == finding.configuration &&
                  other.subjects == finding.subjects && other.margin && *other.margin < *finding.margin;
         });
}

const Finding* finding_of(const DrawnConfiguration& of, const Collision& collision) {
  const std::array things{collision.first, collision.second};
  for (const Finding& finding : of.findings)
    if (finding.rule.text() == "room.overlap" && is_of(of, finding) &&
        std::ranges::equal(finding.subjects, things))
      return &finding;
  return nullptr;
}

/// The alerts of all configurations, in their order: so each is numbered, whatever drawing shows it.
std::vector<const Finding*> alerts_among(std::span<const Finding> all) {
  std::vector<const Finding*> alerts;
  for (const Finding& finding : all) {
    const Rule* rule = find_rule(finding.rule.text());
    const bool open = finding.status == Status::not_met || finding.status == Status::unknown;
    if (rule != nullptr && rule->weight == Weight::alert && open && !is_outdone(all, finding))
      alerts.push_back(&finding);
  }
  return alerts;
}

std::string tagged(const std::string& tag, const std::string& words) {
  return tag.empty() ? words : tag + ": " + words;
}

// What stands at the place of an alert that no line and no hatching shows.
std::string words_at_place(const DrawnConfiguration& of, const Finding& finding) {
  const std::string thing =
      finding.subjects.empty() ? std::string{} : name_of(*of.plan, finding.subjects.front());
  if (finding.rule.text() == "room.inside") return thing + " reaches outside the room";
  if (finding.rule.text() == "support.rests")
    return thing + (finding.variant == "nothing" ? " has nothing beneath it" : " does not lie level");
  if (finding.rule.text().starts_with("cord.")) return "cord of " + thing;
  return "here";
}

bool has_a_sign(const Finding& finding) {
  return finding.rule.text().starts_with("heat.") || finding.rule.text() == "room.overlap";
}

LabelWish wish_of(const DrawnConfiguration& of, const PlanView& view, Point where,
                  const std::vector<std::string>& wordings) {
  LabelWish wish = place_wish(of, view, where);
  for (const std::string& words : wordings) add_wordings(wish, words, lettering::label);
  wish.key = wordings.front();
  wish.weight = weight_of_figures;
  return wish;
}

}  // namespace

std::vector<const Finding*> alerts_of(const DrawnConfiguration& of) {
  std::vector<const Finding*> alerts = alerts_among(of.findings);
  std::erase_if(alerts, [&](const Finding* alert) { return !is_of(of, *alert); });
  return alerts;
}

std::string tags_of(const DrawnConfiguration& of, std::span<const Finding* const> findings) {
  const std::vector<const Finding*> alerts = alerts_among(of.findings);
  std::string tags;
  for (std::size_t i = 0; i < alerts.size(); ++i)
    if (is_of(of, *alerts[i]) && std::ranges::find(findings, alerts[i]) != findings.end())
      tags += (tags.empty() ? "A" : ", A") + std::to_string(i + 1);
  return tags;
}

std::string tag_of(const DrawnConfiguration& of, const Finding& finding) {
  return tags_of(of, std::array{&finding});
}

std::vector<const Finding*> alerts_about(const DrawnConfiguration& of, const Bed& bed) {
  std::vector<const Finding*> alerts = alerts_of(of);
  std::erase_if(alerts, [&](const Finding* alert) { return alert->bed != bed.id || has_a_sign(*alert); });
  return alerts;
}

Group clash_group(const DrawnConfiguration& of, const PlanView& view) {
  Group group{"Clashes", {}, 0};
  for (const Collision& collision : of.answer->collisions) {
    if (collision.tolerated) continue;
    for (const Diagonal way : {Diagonal::rising, Diagonal::falling})
      for (Path& line : diagonals_in(view(collision.shared), paper_mm(2), way, {}))
        group.marks.emplace_back(std::move(line));
    for (Path& path : paths_of(view, collision.shared, {}, Ink::clash))
      group.marks.emplace_back(std::move(path));
  }
  return group;
}

std::vector<LabelWish> alert_wishes(const DrawnConfiguration& of, const PlanView& view) {
  std::vector<LabelWish> wishes;
  for (const Collision& collision : of.answer->collisions) {
    if (collision.tolerated) continue;
    const Finding* finding = finding_of(of, collision);
    const std::string tag = finding == nullptr ? std::string{} : tag_of(of, *finding);
    const std::string deep = short_size(*of.plan, collision.depth);
    const std::string names =
        name_of(*of.plan, collision.first) + " and " + name_of(*of.plan, collision.second);
    const Rect box = collision.shared.bounds();
    const Point middle = finding != nullptr && !finding->where.empty()
                             ? finding->where.front().plan
                             : Point{half(box.low.x + box.high.x), half(box.low.y + box.high.y)};
    wishes.push_back(
        wish_of(of, view, middle, {tagged(tag, names + " clash by " + deep), tagged(tag, "clash " + deep)}));
  }
  for (const Finding* alert : alerts_of(of)) {
    if (alert->where.empty() || !alert->bed.empty() || has_a_sign(*alert)) continue;
    const std::string tag = tag_of(of, *alert);
    wishes.push_back(
        wish_of(of, view, alert->where.front().plan, {tagged(tag, words_at_place(of, *alert)), tag}));
  }
  return wishes;
}

}  // namespace berthwright
