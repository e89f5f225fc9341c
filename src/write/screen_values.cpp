#include <algorithm>

#include <berthwright/view/words.h>
#include <berthwright/write/outputs.h>

#include "view/called.h"
#include "view/draft.h"
#include "view/frame_words.h"
#include "view/step_words.h"
#include "write/heading.h"
#include "write/screen.h"

namespace berthwright {
namespace {

void add_line(std::vector<FileLine>& lines, const Origin& origin, std::string what) {
  const bool known =
      std::ranges::any_of(lines, [&](const FileLine& one) { return one.line == origin.line; });
  if (origin.line > 0 && !known) lines.push_back({origin.line, std::move(what)});
}

const Origin* origin_of(const Plan& plan, const std::string& id) {
  if (const Fixture* fixture = plan.fixture(id)) return &fixture->origin;
  if (const Piece* piece = plan.piece(id)) return &piece->origin;
  if (const Leaf* leaf = plan.leaf(id)) return &leaf->origin;
  if (const Opening* opening = plan.opening(id)) return &opening->origin;
  if (const Bed* bed = plan.bed(id)) return &bed->origin;
  return nullptr;
}

// Where a thing is described, and where it lies in the configuration of the finding.
std::vector<FileLine> lines_of(const Plan& plan, const Finding& finding) {
  std::vector<FileLine> lines;
  const Configuration* configuration = plan.configuration(finding.configuration.text());
  for (const std::string& id : finding.subjects) {
    if (const Origin* origin = origin_of(plan, id)) add_line(lines, *origin, name_of(plan, id));
    if (configuration == nullptr) continue;
    for (const Pose& pose : configuration->poses)
      if (pose.piece.text() == id)
        add_line(lines, pose.origin, name_of(plan, id) + " " + small_first(when_of(*configuration)));
  }
  if (const Bed* bed = plan.bed(finding.bed.text()); bed != nullptr && lines.empty())
    add_line(lines, bed->origin, bed->name);
  if (lines.empty() && configuration != nullptr)
    add_line(lines, configuration->origin, name_of(*configuration));
  return lines;
}

// 64 bits of FNV-1a: names of pictures, no secret.
std::string name_for(std::string_view bytes) {
  std::uint64_t hash = 14695981039346656037ULL;
  for (const char c : bytes) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
  constexpr std::string_view digits = "0123456789abcdef";
  std::string name;
  for (int shift = 60; shift >= 0; shift -= 4) name += digits[hash >> shift & 15U];
  return name;
}

bool is_shown_in(const Finding& finding, const std::string& configuration) {
  return finding.configuration.text().empty() || finding.configuration.text() == configuration;
}

std::vector<ScreenPin> pins_on(const Plan& plan, const Answer& answer, const PlanSheet& on) {
  std::vector<ScreenPin> pins;
  for (std::size_t i = 0; i < answer.findings.size(); ++i) {
    const Finding& finding = answer.findings[i];
    if (!is_shown_in(finding, on.configuration)) continue;
    ScreenPin pin{i, {}};
    for (const Point3& point : finding.where)
      if (const auto place = place_on(on.sheet, plan, point.plan)) pin.at.push_back(*place);
    if (!pin.at.empty()) pins.push_back(std::move(pin));
  }
  return pins;
}

// "1-day-sections" is the first of "day-sections": numbers of sheets change from save to save.
std::string key_for(const Sheet& sheet, const std::vector<ScreenSheet>& before,
                    const std::vector<ScreenSheet>& beside) {
  const std::string stem = sheet.file.substr(sheet.file.find('-') + 1);
  const auto is_taken = [&](const std::string& key) {
    const auto bears_it = [&](const ScreenSheet& one) { return one.key == key; };
    return std::ranges::any_of(before, bears_it) || std::ranges::any_of(beside, bears_it);
  };
  std::string key = stem;
  for (int count = 2; is_taken(key); ++count) key = stem + "." + std::to_string(count);
  return key;
}

ScreenSheet screen_sheet(const Plan& plan, const Sheet& sheet, std::string key) {
  const std::string before = plan->title.title + ": ";
  return {std::move(key), sheet.title.starts_with(before) ? sheet.title.substr(before.size()) : sheet.title,
          picture_of(sheet), {}};
}

}  // namespace

std::vector<ScreenSheet> screen_plans(const Plan& plan, const Answer& answer, const std::vector<PlanSheet>& sheets) {
  std::vector<ScreenSheet> out;
  for (const PlanSheet& one : sheets) {
    out.push_back(screen_sheet(plan, one.sheet, key_for(one.sheet, {}, out)));
    out.back().pins = pins_on(plan, answer, one);
  }
  return out;
}

std::vector<ScreenSheet> screen_sheets(const Plan& plan, const std::vector<Sheet>& sheets,
                                       const std::vector<ScreenSheet>& before) {
  std::vector<ScreenSheet> out;
  for (const Sheet& sheet : sheets) out.push_back(screen_sheet(plan, sheet, key_for(sheet, before, out)));
  return out;
}

ScreenConversion screen_conversion(const Plan& plan, const Conversion& conversion) {
  ScreenConversion out{conversion.from->id.text() + " to " + conversion.to->id.text(),
                       conversion_heading(conversion), {}, {}};
  if (conversion.verdict == Conversion::Verdict::order) {
    out.words = bedding_sentences(plan, conversion);
    out.words.insert(out.words.begin(), conversion_bound(conversion));
  } else {
    for (const Note& note : no_story_notes(plan, conversion))
      if (note.kind != Note::Kind::heading) out.words.push_back(note.words);
  }
  for (StageDrawing& stage : stage_drawings(plan, conversion))
    out.stages.push_back({std::move(stage.words), picture_of(stage.above), picture_of(stage.raised)});
  return out;
}

ScreenFindings screen_findings(const Plan& plan, const Answer& answer) {
  ScreenFindings out{plan->title.title, plan->title.shop, alerts_line(answer),
                     std::string(caution_line(plan->english)), {}};
  if (!plan->title.owner.empty()) out.shop += (out.shop.empty() ? "for " : ", for ") + plan->title.owner;
  for (const Finding& finding : answer.findings) {
    const Rule& rule = *find_rule(finding.rule.text());
    const bool asks = finding.status == Status::not_met || finding.status == Status::unknown;
    const std::string cure = asks ? cure_sentence(plan, finding) : std::string{};
    std::vector<Point> where;
    for (const Point3& point : finding.where) where.push_back(point.plan);
    out.list.push_back({rule.title, finding.status, rule.weight, finding.configuration.text(),
                        cure + (cure.empty() ? "" : " ") + sentence(plan, finding), lines_of(plan, finding),
                        std::move(where)});
  }
  return out;
}

Picture picture_of(const Sheet& sheet) {
  std::string bytes = svg(sheet);
  std::string name = name_for(bytes);
  return {std::move(name), sheet.title,  sheet.description,
          sheet.width,     sheet.height, std::make_shared<const std::string>(std::move(bytes))};
}

}  // namespace berthwright
