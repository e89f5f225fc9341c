#pragma once

#include <iosfwd>
#include <optional>
#include <string>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// The reader's own limit, so that it and not we refuse more.
inline constexpr std::size_t most_plan_bytes = 4U << 20U;

struct PlanFile {
  std::string text;
  Plan plan;
};

/// The plan of a file, or none and the exit code after its faults were told.
std::optional<PlanFile> plan_file_of(const std::string& file, bool json, std::ostream& out, std::ostream& err,
                                     int& code);

/// Tells the faults of a plan, on `out` as JSON; the exit code for them.
int told(const std::string& file, const Problems& problems, bool json, std::ostream& out, std::ostream& err);
/// Tells what is wrong with a file as a whole.
void tell(const Problems& problems, std::ostream& err);

/// The name of the plan's file without its ending; "plan" for standard input.
std::string plan_stem(const std::string& plan);

/// Writes a file that a person named, in one piece; the exit code, after telling what is wrong.
int write_named_file(const std::string& file, const std::string& bytes, std::ostream& err);
/// Is there nothing in the way of a new file? If there is and `force` is not given, tells it.
bool may_write(const std::string& file, bool force, std::ostream& err);

/// Whether the plan has it; if not, which it has is told.
bool is_configuration(const Plan& plan, const std::string& id, std::ostream& err);

}  // namespace berthwright
