#pragma once

#include <string>
#include <string_view>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// A plan from a whole plan file. Throws std::invalid_argument that lists every problem.
Plan plan_from(std::string_view json);
/// tests/plan/example.json, read.
const Plan& example();

/// A plan in inches from its parts alone: `sections` are members of the top object, such as
/// R"("pieces": […], "configurations": {…})". Version, title, unit and, where `sections` has none, a plain
/// box of a room, 120 x 76 x 76 in, are added.
Plan small_plan(std::string_view sections);

std::string repository_path(std::string_view path);
/// The text of a file of the repository, such as "tests/plan/example.json".
std::string repository_text(std::string_view path);

/// One problem a line: "12:5 length.comma /pieces/0/width: …".
std::string listed(const Problems& problems);

}  // namespace berthwright
