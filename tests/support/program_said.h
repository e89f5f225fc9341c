#pragma once

#include <string>
#include <vector>

namespace berthwright::support {

/// What the program answers and says, run in this process.
struct ProgramSaid {
  int code;
  std::string out;
  std::string err;
};
ProgramSaid told(const std::vector<std::string>& arguments);

}  // namespace berthwright::support
