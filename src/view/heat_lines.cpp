#include "view/heat_lines.h"

#include <algorithm>

#include <berthwright/view/words.h>

namespace berthwright {
namespace {

bool counts(const HeatDistance& distance) {
  return distance.made_up || distance.kind != HeatDistance::Kind::bed;
}

const Finding* finding_of(const DrawnConfiguration& of, const HeatDistance& distance) {
  for (const Finding& finding : of.findings) {
    if (finding.rule.text() != "heat.three-feet" || finding.configuration != of.answer->configuration->id)
      continue;
    const auto& subjects = finding.subjects;
    if (subjects.size() < 2 || subjects[0] != distance.source || subjects[1] != distance.nearest_to) continue;
    if (finding.measured == Quantity{distance.distance}) return &finding;
  }
  return nullptr;
}

std::string short_figure(Length length, Unit own, Rounding rounding) {
  return own == Unit::inch ? imperial(length, {.rounding = rounding}) : metric(length, rounding);
}

// " < 3' 0": not met", or nothing where nothing is compared.
std::string comparison(const DrawnConfiguration& of, const HeatLine& line) {
  if (line.finding == nullptr) return {};
  const Finding& finding = *line.finding;
  const Length* asked = finding.compared ? std::get_if<Length>(&*finding.compared) : nullptr;
  const std::string verdict = ": " + std::string(word(term_of(finding.status), (*of.plan)->english));
  if (asked == nullptr) return verdict;
  const bool reached = line.distance->distance >= *asked;
  return (reached ? " ≥ " : " < ") + short_figure(*asked, (*of.plan)->unit, Rounding::up) + verdict;
}

}  // namespace

std::vector<HeatLine> heat_lines(const DrawnConfiguration& of) {
  std::vector<HeatLine> lines;
  for (const HeatDistance& distance : of.answer->heat) {
    if (!counts(distance)) continue;
    const auto same = std::ranges::find_if(
        lines, [&](const HeatLine& line) { return line.distance->source == distance.source; });
    if (same == lines.end())
      lines.push_back({&distance, nullptr});
    else if (distance.distance < same->distance->distance)
      same->distance = &distance;
  }
  for (HeatLine& line : lines) line.finding = finding_of(of, *line.distance);
  return lines;
}

std::vector<std::string> heat_figures(const DrawnConfiguration& of, const HeatLine& line) {
  const Unit own = (*of.plan)->unit;
  const Length distance = line.distance->distance;
  const std::string rest = comparison(of, line);
  return {both(distance, own, {.rounding = Rounding::down}) + rest,
          short_figure(distance, own, Rounding::down) + rest, short_figure(distance, own, Rounding::down)};
}

std::vector<Mark> marks_of(const HeatLine& line, const PlanView& view) {
  const PaperPoint from = view(line.distance->nearest.from.plan);
  const PaperPoint to = view(line.distance->nearest.to.plan);
  std::vector<Mark> marks;
  if (from != to) marks.emplace_back(straight(Ink::heat_line, from, to));
  marks.emplace_back(circle(Ink::leader_dot, from, paper_mm(9, 10)));
  marks.emplace_back(circle(Ink::leader_dot, to, paper_mm(9, 10)));
  return marks;
}

}  // namespace berthwright
