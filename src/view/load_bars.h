#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/solve/load/loads.h>

#include "view/paper.h"

namespace berthwright {

/// A figure beside what it is compared with, on an axis of its own, in ten-thousandths of the whole, of a
/// plate or of the axle's load.
struct LoadBar {
  /// The figure with the tanks in one state; without an end where none is known.
  struct Line {
    std::string tanks;  ///< as told, empty, full; empty: it makes no difference
    std::optional<std::int64_t> low;
    std::optional<std::int64_t> high;
  };
  std::string name;
  std::string verdict;     ///< of the worst line, and which that is
  std::string figures;     ///< in the plan's own unit
  std::string asked;       ///< "asked 10 to 15 %", "allowed at most 750 lb"
  std::int64_t least = 0;  ///< of what is asked
  std::int64_t most = 0;
  std::vector<Line> lines;
  /// Ends of the axis: hold zero, what is asked, and every figure.
  std::int64_t from() const;
  std::int64_t to() const;
};

/// Share on the coupling, sides and plates, as far as the plan gives reason to compare them; of each of the
/// different balances.
std::vector<LoadBar> load_bars(const Plan& plan, const Loads& loads);

/// How high they are below each other, or in columns where there is room.
PaperLength height_of(const std::vector<LoadBar>& bars, PaperLength width);
/// From the top left corner of the box on.
std::vector<Mark> marks_of(const std::vector<LoadBar>& bars, const PaperBox& box);

}  // namespace berthwright
