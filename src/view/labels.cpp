#include "view/labels.h"

#include <algorithm>

#include <berthwright/view/sheets.h>

#include "view/label_search.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/walls.h"

namespace berthwright {
namespace {

PlacedLabel unnumbered(const LabelCandidate& candidate) {
  return {candidate.wording, candidate.box, candidate.leader, true, candidate.crossed, 0};
}

}  // namespace

PaperPoint size_of(const Wording& wording) {
  if (wording.ringed) return {lettering::ring, lettering::ring};
  PaperLength width;
  for (const std::string& line : wording.lines) width = std::max(width, text_width(line, wording.height));
  const auto gaps = static_cast<std::int64_t>(wording.lines.size()) - 1;
  const PaperLength height = wording.height + wording.height * lettering::leading * gaps / 100;
  return wording.upward ? PaperPoint{height, width} : PaperPoint{width, height};
}

std::vector<PlacedLabel> placed_labels(const LabelField& field, std::vector<LabelWish> wishes) {
  // A leader to what lies beyond the area points its way and ends with it.
  for (LabelWish& wish : wishes)
    wish.target = {std::clamp(wish.target.x, field.area.low.x, field.area.high.x),
                   std::clamp(wish.target.y, field.area.low.y, field.area.high.y)};
  const LabelGround ground(field);
  LabelChoices choices;
  choices.reserve(wishes.size());
  for (const LabelWish& wish : wishes) choices.push_back(candidates_of(ground, wish));
  std::vector<std::optional<LabelCandidate>> chosen(wishes.size());
  std::vector<LabelCandidate> standing;
  const std::vector<const LabelCandidate*> found = chosen_labels(choices);
  for (std::size_t i = 0; i < found.size(); ++i) {
    if (found[i] == nullptr) continue;
    chosen[i] = *found[i];
    standing.push_back(*found[i]);
  }
  std::vector<PlacedLabel> out;
  int number = 0;
  for (std::size_t i = 0; i < wishes.size(); ++i) {
    if (!chosen[i]) {
      chosen[i] = last_resort(ground, wishes[i], standing);
      if (chosen[i]) standing.push_back(*chosen[i]);
    }
    if (!chosen[i]) {
      out.push_back({{}, {}, std::nullopt, false, false, ++number});
      continue;
    }
    out.push_back(unnumbered(*chosen[i]));
    out.back().dotted = !wishes[i].may_touch;
    if (!chosen[i]->keyed) continue;
    out.back().number = ++number;
    out.back().wording = number_wording(number);
  }
  return out;
}

void add_obstacles(LabelField& field, const std::vector<Mark>& marks) {
  for (const Mark& mark : marks) {
    if (const Text* text = std::get_if<Text>(&mark)) field.taken.push_back(box_of(*text));
    const Path* path = std::get_if<Path>(&mark);
    if (path == nullptr) continue;
    // What is filled dark is no ground for lettering either, however thin its line.
    auto& kind = is_heavy(path->ink) || path->ink == Ink::cut_thin ? field.heavy : field.light;
    for (const PaperLine& line : seen_lines(*path)) kind.push_back(line);
  }
}

std::vector<Mark> marks_of(const PlacedLabel& label) {
  std::vector<Mark> marks;
  if (label.wording.lines.empty()) return marks;
  if (label.leader) {
    marks.emplace_back(straight(Ink::leader, label.leader->from, label.leader->to));
    if (label.dotted) marks.emplace_back(circle(Ink::leader_dot, label.leader->to, paper_mm(5, 10)));
  }
  if (label.crossed && !label.wording.ringed) {
    const PaperBox airy = grown(label.box, paper_mm(3, 10));
    marks.emplace_back(Patch{airy.low, airy.high});
  }
  const PaperLength h = label.wording.height;
  const PaperPoint middle = label.box.centre();
  if (label.wording.ringed) marks.emplace_back(circle(Ink::balloon, middle, lettering::ring / 2));
  const auto count = static_cast<std::int64_t>(label.wording.lines.size());
  const PaperLength block = h + h * lettering::leading * (count - 1) / 100;
  for (std::int64_t i = 0; i < count; ++i) {
    const PaperLength down = h * ascent_thousandths / 1000 + h * lettering::leading * i / 100 - block / 2;
    const PaperPoint at =
        label.wording.upward ? PaperPoint{middle.x + down, middle.y} : PaperPoint{middle.x, middle.y + down};
    marks.emplace_back(Text{Ink::label, at, h, Anchor::middle, label.wording.upward,
                            label.wording.lines[static_cast<std::size_t>(i)]});
  }
  return marks;
}

}  // namespace berthwright
