#pragma once

#include <iosfwd>
#include <string>
#include <vector>

namespace berthwright {

/// One run of the program: `arguments` without its own name. Results go to `out`, everything else to `err`.
/// Returns the exit code (design: 0, 1, 2, 64, 65, 66, 70, 73, 74). Never throws.
int run(const std::vector<std::string>& arguments, std::ostream& out, std::ostream& err);

}  // namespace berthwright
