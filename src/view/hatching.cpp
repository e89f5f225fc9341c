#include "view/hatching.h"

#include <algorithm>

namespace berthwright {
namespace {

using Micrometres = std::int64_t;
constexpr Micrometres off_the_edge = 800;  // a gap of at least 0.7 mm between parallel lines
constexpr Micrometres tooth = 1300;        // half a period of the zigzag
constexpr Micrometres pitch = 1700;        // along the level, of diagonals
constexpr Micrometres shortest = 500;

using Stretches = std::vector<std::pair<Micrometres, Micrometres>>;

// `from` to `to` less the holes.
Stretches without_holes(Micrometres from, Micrometres to, Stretches holes) {
  std::ranges::sort(holes);
  Stretches out;
  for (const auto& [low, high] : holes) {
    if (high <= from) continue;
    if (low >= to) break;
    if (low > from) out.emplace_back(from, low);
    from = high;
  }
  if (from < to) out.emplace_back(from, to);
  return out;
}

PaperPoint point(Micrometres x, Micrometres y) {
  return {PaperLength::micrometres(x), PaperLength::micrometres(y)};
}

}  // namespace

std::vector<Path> zigzag_in(const PaperBox& box, const std::vector<PaperBox>& lettering) {
  const bool level = box.width() >= box.height();
  const auto u = [&](PaperPoint p) { return (level ? p.x : p.y).micrometres(); };
  const auto v = [&](PaperPoint p) { return (level ? p.y : p.x).micrometres(); };
  const auto at = [&](Micrometres along, Micrometres across) {
    return level ? point(along, across) : point(across, along);
  };
  const Micrometres low = v(box.low) + off_the_edge;
  const Micrometres high = v(box.high) - off_the_edge;
  if (high - low < shortest) return {};
  Stretches holes;
  for (const PaperBox& words : lettering)
    if (overlaps(words, box)) holes.emplace_back(u(words.low), u(words.high));
  std::vector<Path> paths;
  for (const auto& [from, to] :
       without_holes(u(box.low) + off_the_edge, u(box.high) - off_the_edge, std::move(holes))) {
    const Micrometres teeth = (to - from) / tooth;
    if (teeth < 2) continue;
    Path path{Ink::hatch, at(from, high), {}, false};
    for (Micrometres i = 1; i <= teeth; ++i)
      path.stretches.push_back({at(from + (to - from) * i / teeth, i % 2 == 1 ? low : high), {}, false});
    paths.push_back(std::move(path));
  }
  return paths;
}

std::vector<Path> diagonals_in(const PaperBox& box, const std::vector<PaperBox>& lettering) {
  const Micrometres left = box.low.x.micrometres();
  const Micrometres right = box.high.x.micrometres();
  const Micrometres top = box.low.y.micrometres();
  const Micrometres bottom = box.high.y.micrometres();
  std::vector<Path> paths;
  // Each line rises to the right: x + y is the same all along it.
  for (Micrometres sum = (left + top) / pitch * pitch + pitch; sum < right + bottom; sum += pitch) {
    const Micrometres from = std::max(left, sum - bottom);
    const Micrometres to = std::min(right, sum - top);
    Stretches holes;
    for (const PaperBox& words : lettering)
      holes.emplace_back(std::max(words.low.x.micrometres(), sum - words.high.y.micrometres()),
                         std::min(words.high.x.micrometres(), sum - words.low.y.micrometres()));
    std::erase_if(holes, [](const auto& hole) { return hole.first >= hole.second; });
    for (const auto& [x0, x1] : without_holes(from, to, std::move(holes)))
      if (x1 - x0 >= shortest)
        paths.push_back(straight(Ink::hatch, point(x0, sum - x0), point(x1, sum - x1)));
  }
  return paths;
}

}  // namespace berthwright
