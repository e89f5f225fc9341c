#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/cover/cover.h>

namespace berthwright {

/// One line of what is cut for a cushion.
struct CoverLine {
  std::string what;  ///< "Foam", "Boxing"…; may be empty
  std::string words;
  bool goes_on = false;  ///< belongs to the line before
  std::string said() const { return what.empty() ? words : what + ": " + words; }
};
/// All of them, in the order in which they are cut; what cannot be cut as asked last.
std::vector<CoverLine> lines_of_cover(const Plan& plan, const Sewing& usual, const Cover& cover);

/// "23\" × 75\" × 4\" … finished".
std::string finished_size(const Plan& plan, const Piece& piece);

}  // namespace berthwright
