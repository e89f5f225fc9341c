#include "view/heat_lines.h"

#include <algorithm>

#include <berthwright/view/words.h>

#include "view/alerts.h"

namespace berthwright {
namespace {

// A line to what stands outside would run over the measures and notes around the room.
bool is_in_the_room(const Plan& plan, const HeatLine& line) {
  const Rect& room = plan->interior.outline.polygon().bounds();
  const auto within = [&](Point p) { return Region(room).side_of(p) != Side::outside; };
  return within(line.from.plan) && within(line.to.plan);
}

bool counts(const HeatDistance& distance) {
  return distance.made_up || distance.kind != HeatDistance::Kind::bed;
}

bool is_about_distance(const DrawnConfiguration& of, const Finding& finding) {
  return (finding.rule.text() == "heat.three-feet" || finding.rule.text() == "heat.data-plate") &&
         finding.configuration == of.answer->configuration->id && finding.subjects.size() >= 2;
}

// The finding compares this line: the same two things, the same distance or the same two points.
bool compares(const Finding& finding, const HeatLine& line) {
  if (finding.subjects[0] != line.source || finding.subjects[1] != line.nearest_to) return false;
  const auto& where = finding.where;
  const bool same_points =
      where.size() == 2 && where[0].plan == line.from.plan && where[1].plan == line.to.plan;
  return same_points || finding.measured == Quantity{line.measured};
}

HeatLine line_of(const HeatDistance& distance) {
  return {distance.source,
          distance.nearest_to,
          distance.made_up,
          distance.nearest.from,
          distance.nearest.to,
          distance.distance,
          {}};
}

HeatLine line_of(const Finding& finding) {
  const Length* measured = finding.measured ? std::get_if<Length>(&*finding.measured) : nullptr;
  return {finding.subjects[0],
          finding.subjects[1],
          finding.variant == "made up",
          finding.where[0],
          finding.where[1],
          measured != nullptr ? *measured : Length{},
          {}};
}

std::string short_figure(Length length, Unit own, Rounding rounding) {
  return own == Unit::inch ? imperial(length, {.rounding = rounding}) : metric(length, rounding);
}

// " < 3' 0": not met", or nothing where nothing is compared.
std::string comparison(const DrawnConfiguration& of, const HeatLine& line) {
  if (line.findings.empty()) return {};
  const Finding& finding = *line.findings.front();
  const Length* asked = finding.compared ? std::get_if<Length>(&*finding.compared) : nullptr;
  std::string verdict = ": " + std::string(word(term_of(finding.status), (*of.plan)->english));
  if (asked == nullptr) return verdict;
  const bool reached = line.measured >= *asked;
  return (reached ? " ≥ " : " < ") + short_figure(*asked, (*of.plan)->unit, Rounding::up) + verdict;
}

}  // namespace

std::vector<HeatLine> heat_lines(const DrawnConfiguration& of, NearestOf nearest_of) {
  std::vector<HeatLine> lines;
  for (const HeatDistance& distance : of.answer->heat) {
    if (!counts(distance)) continue;
    const auto same = std::ranges::find_if(lines, [&](const HeatLine& line) {
      return line.source == distance.source &&
             (nearest_of == NearestOf::all || line.made_up == distance.made_up);
    });
    if (same == lines.end())
      lines.push_back(line_of(distance));
    else if (distance.distance < same->measured)
      *same = line_of(distance);
  }
  const std::vector<const Finding*> alerts = alerts_of(of);
  for (const Finding& finding : of.findings) {
    if (!is_about_distance(of, finding)) continue;
    const auto line =
        std::ranges::find_if(lines, [&](const HeatLine& one) { return compares(finding, one); });
    if (line != lines.end()) {
      line->findings.push_back(&finding);
    } else if (finding.where.size() == 2 && std::ranges::find(alerts, &finding) != alerts.end()) {
      lines.push_back(line_of(finding));
      lines.back().findings = {&finding};
    }
  }
  std::erase_if(lines, [&](const HeatLine& line) { return !is_in_the_room(*of.plan, line); });
  return lines;
}

std::vector<std::string> heat_figures(const DrawnConfiguration& of, const HeatLine& line) {
  const Unit own = (*of.plan)->unit;
  const std::string rest = comparison(of, line);
  const std::string tags = tags_of(of, line.findings);
  const std::string lead = tags.empty() ? "" : tags + ": ";
  return {lead + both(line.measured, own, {.rounding = Rounding::down}) + rest,
          lead + short_figure(line.measured, own, Rounding::down) + rest,
          lead + short_figure(line.measured, own, Rounding::down)};
}

std::vector<Mark> marks_of(const HeatLine& line, const PlanView& view) {
  const PaperPoint from = view(line.from.plan);
  const PaperPoint to = view(line.to.plan);
  std::vector<Mark> marks;
  if (from != to) marks.emplace_back(straight(Ink::heat_line, from, to));
  marks.emplace_back(circle(Ink::leader_dot, from, paper_mm(9, 10)));
  marks.emplace_back(circle(Ink::leader_dot, to, paper_mm(9, 10)));
  return marks;
}

}  // namespace berthwright
