#include <berthwright/view/sheets.h>

#include <algorithm>
#include <stdexcept>

#include "view/cushion_key.h"
#include "view/draft.h"
#include "view/heat_sheet.h"
#include "view/height_map.h"
#include "view/numbers_sheet.h"
#include "view/plan_page.h"
#include "view/raised_sheet.h"
#include "view/rule_plans.h"
#include "view/section_lines.h"
#include "view/section_sheet.h"
#include "view/site_sheet.h"
#include "view/storyboard.h"
#include "view/way_sheet.h"

namespace berthwright {
namespace {

void add_all(std::vector<Draft>& drafts, std::vector<Draft> more) {
  for (Draft& draft : more) drafts.push_back(std::move(draft));
}

}  // namespace

std::vector<Sheet> sheets(const Plan& plan, const Answer& answer, const WorkedOut& worked_out) {
  std::vector<Draft> drafts;
  std::vector<DrawnConfiguration> drawn;
  for (const ConfigurationAnswer& configuration : answer.configurations)
    drawn.push_back({&plan, &configuration, answer.findings, {}});
  const std::vector<std::vector<SectionCut>> cuts = section_cuts(drawn);
  for (std::size_t i = 0; i < drawn.size(); ++i) drawn[i].cuts = cuts[i];
  for (const DrawnConfiguration& one : drawn) add_all(drafts, plan_drafts(one));
  for (const DrawnConfiguration& one : drawn) add_all(drafts, section_drafts(one));
  for (const DrawnConfiguration& one : drawn) add_all(drafts, height_drafts(one));
  for (const DrawnConfiguration& one : drawn)
    if (const std::optional<QuietSheet> sheet = heat_sheet(one)) add_all(drafts, quiet_drafts(one, *sheet));
  for (const SitedScope& of : sited_scopes(drawn, worked_out.heaters)) {
    add_all(drafts, quiet_drafts(*of.in.front(), site_sheet(of)));
    add_all(drafts, rule_drafts(of));
  }
  for (const DrawnConfiguration& one : drawn)
    if (const std::optional<QuietSheet> sheet = way_sheet(one)) add_all(drafts, quiet_drafts(one, *sheet));
  for (const Conversion& conversion : worked_out.conversions) add_all(drafts, story_drafts(plan, conversion));
  add_all(drafts, key_drafts(plan, worked_out.covers));
  add_all(drafts, label_drafts(plan, worked_out.covers));
  for (const Loads& one : worked_out.loads)
    for (const DrawnConfiguration& of : drawn)
      if (of.answer->configuration == one.configuration) add_all(drafts, numbers_drafts(of, one));
  for (const DrawnConfiguration& one : drawn) add_all(drafts, raised_drafts(one));
  return finished(plan, std::move(drafts));
}

std::vector<Sheet> cover_sheets(const Plan& plan, std::span<const Cover> covers) {
  std::vector<Draft> drafts = key_drafts(plan, covers);
  add_all(drafts, label_drafts(plan, covers));
  return finished(plan, std::move(drafts));
}

}  // namespace berthwright
