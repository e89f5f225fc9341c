#include "yard/stood_up.h"

#include <utility>

namespace berthwright {

bool read_plan(StoodUp& stood, const std::string& file, bool json, std::ostream& out, std::ostream& err) {
  std::optional<PlanFile> read = plan_file_of(file, json, out, err, stood.code);
  if (read) stood.plan = std::move(read->plan);
  return stood.plan.has_value();
}

bool work_out(StoodUp& stood, const std::string& file, bool json, std::ostream& out, std::ostream& err) {
  Result<Answer> answer = answered(*stood.plan);
  if (answer)
    stood.answer = std::move(answer).value();
  else
    stood.code = told(file, answer.problems(), json, out, err);
  return stood.answer.has_value();
}

bool stand_up(StoodUp& stood, const std::string& file, bool json, std::ostream& out, std::ostream& err) {
  return read_plan(stood, file, json, out, err) && work_out(stood, file, json, out, err);
}

}  // namespace berthwright
