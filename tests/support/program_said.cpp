#include "support/program_said.h"

#include <sstream>

#include <berthwright/yard/program.h>

namespace berthwright::support {

ProgramSaid told(const std::vector<std::string>& arguments) {
  std::ostringstream out;
  std::ostringstream err;
  const int code = run(arguments, out, err);
  return {code, out.str(), err.str()};
}

}  // namespace berthwright::support
