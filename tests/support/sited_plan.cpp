#include "support/sited_plan.h"

#include <algorithm>
#include <stdexcept>

#include "support/demos.h"
#include "support/plan_builder.h"
#include "view/letters.h"

namespace berthwright {

SitedPlan::SitedPlan(Plan plan)
    : made(std::move(plan)),
      heaters(heater_places(made.plan, {}).value()),
      drawn(sheets(made.plan, made.answer, {.heaters = heaters})) {}

const SitedPlan& SitedPlan::demo(const std::string& name) {
  static MadeOfDemos<SitedPlan> made;
  return made.of(name);
}

const Sheet* SitedPlan::find(std::string_view end) const {
  const auto found = std::ranges::find_if(
      drawn, [&](const Sheet& sheet) { return sheet.file.ends_with("-" + std::string(end)); });
  return found == drawn.end() ? nullptr : &*found;
}

const Sheet& SitedPlan::of(std::string_view end) const {
  const Sheet* sheet = find(end);
  if (sheet == nullptr) throw std::logic_error("no sheet " + std::string(end));
  return *sheet;
}

const ConfigurationAnswer& SitedPlan::answer(std::string_view id) const {
  return *std::ranges::find_if(made.answer.configurations, [&](const ConfigurationAnswer& one) {
    return one.configuration->id.text() == id;
  });
}

std::vector<Path> laid_paths(const Sheet& sheet, Ink ink) {
  std::vector<Path> out;
  for (const Group& group : sheet.groups)
    if (group.title != "Notes")
      for (const Mark& mark : group.marks)
        if (const Path* path = std::get_if<Path>(&mark); path != nullptr && path->ink == ink)
          out.push_back(*path);
  return out;
}

std::string lettered(const Sheet& sheet, std::string_view title) {
  std::string all;
  for (const Group& group : sheet.groups)
    if (group.title == title)
      for (const Mark& mark : group.marks)
        if (const Text* text = std::get_if<Text>(&mark)) all += text->words + " ";
  return plain_blanks(all);
}

std::string noted(const Sheet& sheet) { return lettered(sheet, "Notes"); }

PaperBox reach_of(const Path& path) {
  PaperRing ring{path.from};
  for (const Stretch& stretch : path.stretches) ring.push_back(stretch.to);
  return bounds(ring);
}

}  // namespace berthwright
