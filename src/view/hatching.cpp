#include "view/hatching.h"

#include <algorithm>

namespace berthwright {
namespace {

using Micrometres = std::int64_t;
constexpr Micrometres off_the_edge = 800;              // a gap of at least 0.7 mm between parallel lines
constexpr Micrometres tooth = 1300;                    // half a period of the zigzag
constexpr PaperLength board_pitch = paper_mm(17, 10);  // along the level: 1.2 mm between the lines
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
  return diagonals_in({{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}}}, board_pitch,
                      Diagonal::rising, lettering);
}

std::vector<Path> diagonals_in(const std::vector<PaperRing>& rings, PaperLength pitch, Diagonal way,
                               const std::vector<PaperBox>& lettering) {
  // The page turned over makes a falling line a rising one: along it x + y is the same.
  const Micrometres turn = way == Diagonal::rising ? 1 : -1;
  const auto sum_of = [&](PaperPoint p) { return p.x.micrometres() + turn * p.y.micrometres(); };
  Micrometres least = sum_of(rings.front().front());
  Micrometres most = least;
  for (const PaperRing& ring : rings)
    for (const PaperPoint p : ring) least = std::min(least, sum_of(p)), most = std::max(most, sum_of(p));
  const Micrometres step = pitch.micrometres();
  std::vector<Path> paths;
  for (Micrometres sum = least + step / 2; sum < most; sum += step) {
    std::vector<Micrometres> cuts;
    for (const PaperRing& ring : rings)
      for (const auto& [a, b] : lines(ring)) {
        if ((sum_of(a) > sum) == (sum_of(b) > sum)) continue;
        cuts.push_back(a.x.micrometres() +
                       (b.x - a.x).micrometres() * (sum - sum_of(a)) / (sum_of(b) - sum_of(a)));
      }
    std::ranges::sort(cuts);
    const auto y_of = [&](Micrometres x) { return turn * (sum - x); };
    Stretches holes;
    for (const PaperBox& words : lettering) {
      const Micrometres a = turn > 0 ? sum - words.high.y.micrometres() : sum + words.low.y.micrometres();
      const Micrometres b = turn > 0 ? sum - words.low.y.micrometres() : sum + words.high.y.micrometres();
      holes.emplace_back(std::max(words.low.x.micrometres(), a), std::min(words.high.x.micrometres(), b));
    }
    std::erase_if(holes, [](const auto& hole) { return hole.first >= hole.second; });
    for (std::size_t i = 0; i + 1 < cuts.size(); i += 2)
      for (const auto& [from, to] : without_holes(cuts[i], cuts[i + 1], holes))
        if (to - from >= shortest)
          paths.push_back(straight(Ink::hatch, point(from, y_of(from)), point(to, y_of(to))));
  }
  return paths;
}

PaperLength pitch_of(Ink filled) {
  switch (filled) {
    case Ink::zone_published:
      return paper_mm(36, 10);
    case Ink::zone_plate:
      return paper_mm(18, 10);
    default:
      return paper_mm(22, 10);
  }
}

}  // namespace berthwright
