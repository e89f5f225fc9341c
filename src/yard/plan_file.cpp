#include "yard/plan_file.h"

#include <filesystem>
#include <ostream>
#include <system_error>

#include <berthwright/write/outputs.h>

#include "exact/code_points.h"
#include "yard/commands.h"
#include "yard/files.h"

namespace berthwright {
namespace {

std::string configurations_of(const Plan& plan) {
  std::string names;
  for (const Configuration& one : plan->configurations) names += (names.empty() ? "" : ", ") + one.id.text();
  return names.empty() ? "none" : names;
}

}  // namespace

int told(const std::string& file, const Problems& problems, bool json, std::ostream& out, std::ostream& err) {
  if (json)
    out << problems_json(file, problems);
  else
    err << problems_text(file, problems);
  return exit_plan;
}

void tell(const Problems& problems, std::ostream& err) {
  for (const Problem& problem : problems)
    err << "berthwright: " << printable(problem.message, every_character) << "\n    " << problem.cure << "\n";
}

std::optional<PlanFile> plan_file_of(const std::string& file, bool json, std::ostream& out, std::ostream& err,
                                     int& code) {
  Result<std::string> text = read_file(file, most_plan_bytes);
  if (!text) {
    tell(text.problems(), err);
    code = exit_input;
    return std::nullopt;
  }
  Result<Plan> plan = read_plan(*text);
  if (plan) return PlanFile{std::move(text).value(), std::move(plan).value()};
  code = told(file, plan.problems(), json, out, err);
  return std::nullopt;
}

std::string plan_stem(const std::string& plan) {
  const std::string stem = std::filesystem::path(plan).stem().string();
  return plan == "-" || stem.empty() ? "plan" : stem;
}

int write_named_file(const std::string& file, const std::string& bytes, std::ostream& err) {
  const std::filesystem::path path(file);
  const std::string folder = path.has_parent_path() ? path.parent_path().string() : ".";
  const Result<Written> written = write_files(folder, {{path.filename().string(), bytes}});
  if (written) return exit_fine;
  tell(written.problems(), err);
  return written.problems().front().id == "output.create" ? exit_create : exit_write;
}

bool may_write(const std::string& file, bool force, std::ostream& err) {
  std::error_code ignored;
  if (force || !std::filesystem::exists(file, ignored)) return true;
  err << "berthwright: " << printable(file, every_character)
      << " exists; choose another name, or --force to replace it\n";
  return false;
}

bool is_configuration(const Plan& plan, const std::string& id, std::ostream& err) {
  if (plan.configuration(id) != nullptr) return true;
  err << "berthwright: no configuration of the plan is called " << printable(id, every_character)
      << "; it has: " << printable(configurations_of(plan), every_character) << '\n';
  return false;
}

}  // namespace berthwright
