#include "support/plan_builder.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace berthwright {

Plan plan_from(std::string_view json) {
  Result<Plan> plan = read_plan(json);
  if (!plan) throw std::invalid_argument("the plan of this test is at fault:\n" + listed(plan.problems()));
  return std::move(plan).value();
}

Plan small_plan(std::string_view sections) {
  std::string text = R"({"berthwright": 1, "title": "Test", "unit": "in",)";
  if (sections.find("\"interior\"") == std::string_view::npos)
    text += R"("interior": {"length": 120, "width": 76, "height": 76},)";
  return plan_from(text + std::string(sections) + "}");
}

std::string repository_path(std::string_view path) { return PROJECT_ROOT "/" + std::string(path); }

std::string repository_text(std::string_view path) {
  std::ifstream file(repository_path(path), std::ios::binary);
  if (!file) throw std::invalid_argument("cannot open " + std::string(path));
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

std::string listed(const Problems& problems) {
  std::string list;
  for (const Problem& p : problems)
    list += std::to_string(p.line) + ':' + std::to_string(p.column) + ' ' + p.id + ' ' + p.pointer + ": " +
            p.message + " | found " + p.found + " | allowed " + p.allowed + " | cure " + p.cure + '\n';
  return list;
}

const Plan& example() {
  static const Plan plan = plan_from(repository_text("tests/plan/example.json"));
  return plan;
}

}  // namespace berthwright
