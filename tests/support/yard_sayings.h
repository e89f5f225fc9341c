#pragma once

#include <string>
#include <vector>

namespace berthwright {

/// What the program says when a command ends before its work is done, or shows what is wrong beside it: run in
/// this process, with folders and ports of one run left out.
struct YardSaying {
  std::string command;  ///< as typed after the program's name
  int code = 0;         ///< it ends with
  std::string said;     ///< on standard error
};

/// Made once in a process.
const std::vector<YardSaying>& yard_sayings();

}  // namespace berthwright
