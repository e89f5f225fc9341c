#include <berthwright/write/outputs.h>

#include "exact/code_points.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

std::string detail(std::string_view label, const std::string& value) {
  return value.empty() ? std::string{} : wrapped(printable(value, every_character), {label, "             "});
}

}  // namespace

std::string problems_text(const std::string& file, const Problems& problems) {
  std::string text;
  for (const Problem& problem : problems) {
    std::string place = printable(file, every_character);
    if (problem.line > 0) place += ':' + std::to_string(problem.line) + ':' + std::to_string(problem.column);
    text += wrapped(place + ": " + printable(problem.message, every_character) + " [" + problem.id + "]",
                    {"", "    "});
    text += detail("    mend:    ", problem.cure);
    text += detail("    found:   ", problem.found);
    text += detail("    allowed: ", problem.allowed);
    text += detail("    where:   ", problem.pointer);
  }
  const std::string count = problems.size() == 1 ? "1 fault" : std::to_string(problems.size()) + " faults";
  return text + count + " in " + printable(file, every_character) + "; nothing was computed.\n";
}

}  // namespace berthwright
