#pragma once

#include <algorithm>
#include <vector>

#include <berthwright/view/scene.h>

namespace berthwright {

constexpr PaperLength paper_mm(std::int64_t count, std::int64_t parts = 1) {
  return PaperLength::micrometres(count * 1000 / parts);
}

/// An axis-parallel box on paper, y downward; `low` is its top left corner.
struct PaperBox {
  PaperPoint low;
  PaperPoint high;
  constexpr PaperLength width() const { return high.x - low.x; }
  constexpr PaperLength height() const { return high.y - low.y; }
  constexpr PaperPoint centre() const { return {(low.x + high.x) / 2, (low.y + high.y) / 2}; }
  friend constexpr bool operator==(const PaperBox&, const PaperBox&) = default;
};

struct PaperLine {
  PaperPoint from;
  PaperPoint to;
};

/// A closed chain of corners on paper.
using PaperRing = std::vector<PaperPoint>;

/// Share more than a border.
constexpr bool overlaps(const PaperBox& a, const PaperBox& b) {
  return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}
constexpr bool holds(const PaperBox& outer, const PaperBox& inner) {
  return outer.low.x <= inner.low.x && inner.high.x <= outer.high.x && outer.low.y <= inner.low.y &&
         inner.high.y <= outer.high.y;
}
constexpr PaperBox grown(const PaperBox& box, PaperLength by) {
  return {{box.low.x - by, box.low.y - by}, {box.high.x + by, box.high.y + by}};
}
constexpr PaperBox hull(const PaperBox& a, const PaperBox& b) {
  return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
          {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}
PaperBox bounds(const PaperRing& ring);

/// What `crosses` asks of lines whose reach meets the box.
bool cuts(const PaperLine& line, const PaperBox& box);
/// Some point of the line lies inside the box; touching its border is none.
inline bool crosses(const PaperLine& line, const PaperBox& box) {
  const auto& [a, b] = line;
  const bool apart = (a.x <= box.low.x && b.x <= box.low.x) || (a.x >= box.high.x && b.x >= box.high.x) ||
                     (a.y <= box.low.y && b.y <= box.low.y) || (a.y >= box.high.y && b.y >= box.high.y);
  return !apart && cuts(line, box);
}
/// The two lines have a point in common.
bool crosses(const PaperLine& a, const PaperLine& b);

/// Even-odd, so that holes count; a point on the border may fall on either side.
bool inside(const std::vector<PaperRing>& rings, PaperPoint point);
/// The borders of rings that one level line meets: enough to tell which of its points lie inside.
class LevelCut {
 public:
  LevelCut(const std::vector<PaperRing>& rings, PaperLength y);
  bool empty() const { return borders_.empty(); }
  /// As `inside` says of the point of the line.
  bool inside(PaperLength x) const;

 private:
  PaperLength y_;
  std::vector<PaperLine> borders_;
};

/// The whole box lies inside and no border runs through it.
bool holds(const std::vector<PaperRing>& rings, const PaperBox& box);
/// Some of the box lies inside.
bool overlaps(const std::vector<PaperRing>& rings, const PaperBox& box);

std::vector<PaperLine> lines(const PaperRing& ring);
/// The stretches of a path, each arc as four chords: good enough to keep lettering off it.
std::vector<PaperLine> lines(const Path& path);

/// The point `way` from `from` on the way to `to`, and beyond; `from` itself when the two are one.
PaperPoint toward(PaperPoint from, PaperPoint to, PaperLength way);

Path straight(Ink ink, PaperPoint from, PaperPoint to);
Path closed_path(Ink ink, const PaperRing& ring);
Path closed_path(Ink ink, const PaperBox& box);
Path circle(Ink ink, PaperPoint centre, PaperLength radius);
/// Two rings: the sign of an alarm, larger than most alarms are at scale.
std::vector<Path> alarm_sign(PaperPoint centre);
inline constexpr PaperLength alarm_sign_reach = paper_mm(19, 10);  ///< from its middle to its outer edge
/// A square on its corner: the sign of a ridge.
Path ridge_sign(PaperPoint centre);

/// Puts more marks after those that are there.
void add(std::vector<Mark>& marks, std::vector<Mark> more);
void add(std::vector<Mark>& marks, std::vector<Path> more);

/// The mark to the right and down by the coordinates of `way`.
void move_by(Mark& mark, PaperPoint way);

/// Where lettering stands.
PaperBox box_of(const Text& text);

}  // namespace berthwright
