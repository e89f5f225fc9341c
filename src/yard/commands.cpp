#include "yard/commands.h"

#include <algorithm>
#include <map>
#include <optional>
#include <ostream>

#include <berthwright/view/sheets.h>
#include <berthwright/write/cut_list.h>
#include <berthwright/write/outputs.h>

#include "exact/code_points.h"
#include "yard/drawings.h"
#include "yard/files.h"
#include "yard/pdf_of.h"
#include "yard/plan_file.h"
#include "yard/run_placing.h"
#include "yard/stood_up.h"

namespace berthwright {
int run_check(const CheckRequest& request, std::ostream& out, std::ostream& err) {
  if (request.tape) return run_tape(request, out, err);
  StoodUp stood;
  stand_up(stood, request.plan, request.json, out, err);
  if (!stood.answer) return stood.code;
  out << (request.json ? check_json(*stood.plan, *stood.answer)
                       : check_text(*stood.plan, *stood.answer,
                                    {.details = request.details, .defaults = request.defaults}));
  return exit_code(*stood.answer);
}

int run_draw(const DrawRequest& request, std::ostream& out, std::ostream& err) {
  StoodUp stood;
  stand_up(stood, request.plan, false, out, err);
  if (!stood.answer) return stood.code;
  const Result<std::vector<HeaterPlaces>> heaters = heater_places(*stood.plan, {});
  if (!heaters) return told(request.plan, heaters.problems(), false, out, err);
  const Result<std::vector<Conversion>> steps = conversions(*stood.plan);
  if (!steps) return told(request.plan, steps.problems(), false, out, err);
  const Result<std::vector<Cover>> cut = covers(*stood.plan, (*stood.plan)->sewing);
  if (!cut) return told(request.plan, cut.problems(), false, out, err);
  const std::string stem = plan_stem(request.plan);
  const std::string folder = request.folder.empty() ? "out/" + stem : request.folder;
  const std::vector<Loads> loads = loads_of(*stood.plan);
  const std::vector<Sheet> drawn = sheets(*stood.plan, *stood.answer, {*heaters, *steps, *cut, loads});
  FileMap files;
  if (request.pdf) {
    std::optional<std::string> bytes = pdf_of(drawn, *stood.plan, stem, err);
    if (!bytes) return exit_input;
    files[stem + ".pdf"] = std::move(*bytes);
  } else {
    files = svg_files(drawn);
  }
  std::vector<std::string> names;
  const int code = write_drawings(folder, files, names, err);
  if (code != exit_fine) return code;
  for (const std::string& name : names) out << folder << '/' << name << '\n';
  if (exit_code(*stood.answer) != 0)
    err << "Alerts are not met or unknown: berthwright check " << printable(request.plan, every_character)
        << '\n';
  return exit_fine;
}

int run_heater(const HeaterRequest& request, std::ostream& out, std::ostream& err) {
  int code = exit_fine;
  const std::optional<PlanFile> file = plan_file_of(request.plan, request.json, out, err, code);
  if (!file) return code;
  const Plan& plan = file->plan;
  std::vector<ConfigurationId> chosen;
  for (const std::string& id : request.configurations) {
    if (!is_configuration(plan, id, err)) return exit_usage;
    chosen.emplace_back(id);
  }
  const Result<std::vector<HeaterPlaces>> heaters = heater_places(plan, chosen);
  if (!heaters) return told(request.plan, heaters.problems(), request.json, out, err);
  out << (request.json ? heater_json(plan, *heaters) : heater_text(plan, *heaters));
  return exit_code(*heaters);
}

int run_steps(const StepsRequest& request, std::ostream& out, std::ostream& err) {
  int code = exit_fine;
  const std::optional<PlanFile> file = plan_file_of(request.plan, request.json, out, err, code);
  if (!file) return code;
  const Plan& plan = file->plan;
  for (const std::string& id : {request.from, request.to})
    if (!id.empty() && !is_configuration(plan, id, err)) return exit_usage;
  Result<std::vector<Conversion>> found = conversions(plan);
  if (!found) return told(request.plan, found.problems(), request.json, out, err);
  std::vector<Conversion> shown = std::move(found).value();
  std::erase_if(shown, [&](const Conversion& one) {
    return (!request.from.empty() && one.from->id.text() != request.from) ||
           (!request.to.empty() && one.to->id.text() != request.to);
  });
  out << (request.json ? steps_json(plan, shown) : steps_text(plan, shown));
  return exit_code(shown);
}

int run_cut(const CutRequest& request, std::ostream& out, std::ostream& err) {
  if (request.plan == "-" && request.stock == "-") {
    err << "berthwright: plan and stock cannot both come from standard input; name a file for one of them\n";
    return exit_usage;
  }
  int code = exit_fine;
  const std::optional<PlanFile> file = plan_file_of(request.plan, request.json, out, err, code);
  if (!file) return code;
  const Plan& plan = file->plan;
  const Sewing& sewing = plan->sewing;
  const Result<std::vector<Cover>> cut = covers(plan, sewing);
  if (!cut) return told(request.plan, cut.problems(), request.json, out, err);
  if (!request.stock.empty()) return run_placing(request, plan, *cut, out, err);
  if (!request.folder.empty()) {
    std::vector<std::string> names;
    const int drawn = write_drawings(request.folder, svg_files(cover_sheets(plan, *cut)), names, err);
    if (drawn != exit_fine) return drawn;
  }
  out << (request.json ? cut_json(plan, sewing, *cut) : cut_text(plan, sewing, *cut));
  return exit_code(plan, *cut);
}

int run_explain(const ExplainRequest& request, std::ostream& out, std::ostream& err) {
  if (request.rule.empty()) {
    out << (request.json ? rules_json() : rules_text());
    return exit_fine;
  }
  const Rule* rule = find_rule(request.rule);
  if (rule == nullptr) {
    err << "berthwright: no rule is called " << printable(request.rule, every_character)
        << "; the rules are:\n"
        << rules_text();
    return exit_usage;
  }
  out << (request.json ? explain_json(*rule) : explain_text(*rule, Unit::inch));
  return exit_fine;
}

}  // namespace berthwright
