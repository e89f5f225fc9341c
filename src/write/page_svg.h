#pragma once

#include <map>
#include <set>
#include <span>
#include <string>
#include <vector>

#include <berthwright/view/scene.h>

namespace berthwright {

/// Drawings within one page: their looks are rules of its style sheet, so that they can be told by night what
/// is light and what is dark, and shapes that are drawn several times are written once.
class PageDrawings {
 public:
  /// `sheets` are all that the page draws.
  explicit PageDrawings(std::span<const Sheet* const> sheets);

  std::string style() const;                      ///< rules for every ink that is used
  std::string shapes() const;                     ///< what is shared: once, before everything that uses it
  std::string drawing(const Sheet& sheet) const;  ///< an `svg` as wide as its place allows
  /// A sign of a key beside its words, which tell all: as large as its letters.
  std::string sign(const Sheet& sheet) const;

 private:
  std::string marks(const Sheet& sheet) const;
  void join_runs(std::span<const Sheet* const> sheets);
  std::set<Ink> inks_;
  std::map<std::string, std::size_t> shared_;  ///< element without its id → number
  std::vector<std::vector<std::size_t>>
      runs_;                      ///< of these numbers: drawn always together, so referred to as one
  std::vector<bool> begins_run_;  ///< of each number
};

}  // namespace berthwright
