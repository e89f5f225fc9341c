#include "solve/split/seams.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

namespace berthwright {
namespace {

struct Seam {
  bool upright = false;  ///< at one x
  Length at;
  Length length;
};

std::vector<Seam> all_seams(const std::vector<Rect>& cushions) {
  std::vector<Seam> result;
  for (const Rect& a : cushions)
    for (const Rect& b : cushions) {
      const Length across = std::min(a.high.y, b.high.y) - std::max(a.low.y, b.low.y);
      const Length along = std::min(a.high.x, b.high.x) - std::max(a.low.x, b.low.x);
      if (a.high.x == b.low.x && across > Length{}) result.push_back({true, a.high.x, across});
      if (a.high.y == b.low.y && along > Length{}) result.push_back({false, a.high.y, along});
    }
  return result;
}

}  // namespace

Seams seams_of(const std::vector<Rect>& cushions, const Rect& bed) {
  const bool along = bed.width() >= bed.height();
  const Length low = along ? bed.low.x : bed.low.y;
  const Length length = along ? bed.width() : bed.height();
  Seams by_end[2];
  const std::vector<Seam> all = all_seams(cushions);
  std::set<std::pair<bool, Length>> lines;
  for (const Seam& seam : all) lines.emplace(seam.upright, seam.at);
  for (Seams& seams : by_end) seams.lines = lines.size();
  for (const Seam& seam : all) {
    for (Seams& seams : by_end) seams.all += seam.length;
    if (seam.upright != along) continue;
    for (const bool turned : {false, true}) {
      const Length from_foot = turned ? length - (seam.at - low) : seam.at - low;
      const auto within = [&](int from, int to) {
        return from_foot * 100 >= length * from && from_foot * 100 <= length * to;
      };
      Seams& seams = by_end[turned ? 1 : 0];
      if (within(44, 60)) seams.under_hips += seam.length;
      if (within(76, 88)) seams.under_shoulders += seam.length;
    }
  }
  const auto worse = [](const Seams& s) { return std::tuple(s.under_hips, s.under_shoulders); };
  return worse(by_end[1]) < worse(by_end[0]) ? by_end[1] : by_end[0];
}

}  // namespace berthwright
