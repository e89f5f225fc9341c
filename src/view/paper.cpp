#include "view/paper.h"

#include <algorithm>

#include <berthwright/view/sheets.h>

#include "view/letters.h"

namespace berthwright {
namespace {

std::int64_t turn(PaperPoint a, PaperPoint b, PaperPoint c) {
  return (b.x - a.x).micrometres() * (c.y - a.y).micrometres() -
         (b.y - a.y).micrometres() * (c.x - a.x).micrometres();
}

int sign(std::int64_t n) { return n > 0 ? 1 : n < 0 ? -1 : 0; }

bool lies_between(PaperPoint a, PaperPoint b, PaperPoint p) {
  return std::min(a.x, b.x) <= p.x && p.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= p.y &&
         p.y <= std::max(a.y, b.y);
}

// Whole part of the square root, by Newton's steps.
std::int64_t root(std::int64_t n) {
  if (n <= 0) return 0;
  std::int64_t x = n;
  for (std::int64_t next = x / 2 + 1; next < x; next = (x + n / x) / 2) x = next;
  return x;
}

// Arcs of at most half a turn, halved `times` times.
void add_chords(std::vector<PaperLine>& out, PaperPoint from, const Stretch& stretch, int times) {
  const std::int64_t x = (stretch.to.x - from.x).micrometres();
  const std::int64_t y = (stretch.to.y - from.y).micrometres();
  const std::int64_t r = stretch.radius.micrometres();
  const std::int64_t chord = root(x * x + y * y);
  if (times == 0 || r == 0 || chord == 0) {
    out.push_back({from, stretch.to});
    return;
  }
  const std::int64_t rise = (r - root(r * r - chord * chord / 4)) * (stretch.clockwise ? 1 : -1);
  const PaperPoint top{PaperLength::micrometres(from.x.micrometres() + x / 2 + y * rise / chord),
                       PaperLength::micrometres(from.y.micrometres() + y / 2 - x * rise / chord)};
  add_chords(out, from, {top, stretch.radius, stretch.clockwise}, times - 1);
  add_chords(out, top, stretch, times - 1);
}

// The stretch of the ring that begins at that corner.
PaperLine line_from(const PaperRing& ring, std::size_t corner) {
  return {ring[corner], ring[corner + 1 < ring.size() ? corner + 1 : 0]};
}

bool meets_level(const PaperLine& border, PaperLength y) { return (border.from.y > y) != (border.to.y > y); }

// Of a border that meets the level of the point: to its right.
bool lies_ahead(const PaperLine& border, PaperPoint point) {
  const std::int64_t side = turn(border.from, border.to, point);
  return border.to.y > border.from.y ? side > 0 : side < 0;
}

bool border_crosses(const std::vector<PaperRing>& rings, const PaperBox& box) {
  for (const PaperRing& ring : rings)
    for (std::size_t i = 0; i < ring.size(); ++i)
      if (crosses(line_from(ring, i), box)) return true;
  return false;
}

}  // namespace

PaperBox bounds(const PaperRing& ring) {
  PaperBox box{ring.front(), ring.front()};
  for (const PaperPoint p : ring) box = hull(box, {p, p});
  return box;
}

bool cuts(const PaperLine& line, const PaperBox& box) {
  const PaperPoint corners[] = {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
  int left = 0;
  int right = 0;
  for (const PaperPoint corner : corners) {
    const int side = sign(turn(line.from, line.to, corner));
    left += side > 0;
    right += side < 0;
  }
  return line.from == line.to || (left > 0 && right > 0);
}

bool crosses(const PaperLine& a, const PaperLine& b) {
  if (std::max(a.from.x, a.to.x) < std::min(b.from.x, b.to.x) ||
      std::max(b.from.x, b.to.x) < std::min(a.from.x, a.to.x) ||
      std::max(a.from.y, a.to.y) < std::min(b.from.y, b.to.y) ||
      std::max(b.from.y, b.to.y) < std::min(a.from.y, a.to.y))
    return false;
  const int b_from = sign(turn(a.from, a.to, b.from));
  const int b_to = sign(turn(a.from, a.to, b.to));
  const int a_from = sign(turn(b.from, b.to, a.from));
  const int a_to = sign(turn(b.from, b.to, a.to));
  if (b_from != b_to && a_from != a_to) return true;
  return (b_from == 0 && lies_between(a.from, a.to, b.from)) ||
         (b_to == 0 && lies_between(a.from, a.to, b.to)) ||
         (a_from == 0 && lies_between(b.from, b.to, a.from)) ||
         (a_to == 0 && lies_between(b.from, b.to, a.to));
}

bool inside(const std::vector<PaperRing>& rings, PaperPoint point) {
  bool odd = false;
  for (const PaperRing& ring : rings)
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const PaperLine border = line_from(ring, i);
      if (meets_level(border, point.y) && lies_ahead(border, point)) odd = !odd;
    }
  return odd;
}

LevelCut::LevelCut(const std::vector<PaperRing>& rings, PaperLength y) : y_(y) {
  for (const PaperRing& ring : rings)
    for (std::size_t i = 0; i < ring.size(); ++i)
      if (const PaperLine border = line_from(ring, i); meets_level(border, y)) borders_.push_back(border);
}

bool LevelCut::inside(PaperLength x) const {
  bool odd = false;
  for (const PaperLine& border : borders_)
    if (lies_ahead(border, {x, y_})) odd = !odd;
  return odd;
}

bool holds(const std::vector<PaperRing>& rings, const PaperBox& box) {
  return inside(rings, box.centre()) && !border_crosses(rings, box);
}

bool overlaps(const std::vector<PaperRing>& rings, const PaperBox& box) {
  return border_crosses(rings, box) || inside(rings, box.centre());
}

std::vector<PaperLine> lines(const PaperRing& ring) {
  std::vector<PaperLine> out;
  out.reserve(ring.size());
  for (std::size_t i = 0; i < ring.size(); ++i) out.push_back(line_from(ring, i));
  return out;
}

std::vector<PaperLine> lines(const Path& path) {
  std::vector<PaperLine> out;
  PaperPoint at = path.from;
  for (const Stretch& stretch : path.stretches) {
    add_chords(out, at, stretch, 2);
    at = stretch.to;
  }
  if (path.closed && at != path.from) out.push_back({at, path.from});
  return out;
}

PaperPoint toward(PaperPoint from, PaperPoint to, PaperLength way) {
  const std::int64_t x = (to.x - from.x).micrometres();
  const std::int64_t y = (to.y - from.y).micrometres();
  const std::int64_t far = root(x * x + y * y);
  if (far == 0) return from;
  return {from.x + PaperLength::micrometres(x * way.micrometres() / far),
          from.y + PaperLength::micrometres(y * way.micrometres() / far)};
}

Path straight(Ink ink, PaperPoint from, PaperPoint to) { return {ink, from, {{to, {}, false}}, false}; }

Path closed_path(Ink ink, const PaperRing& ring) {
  Path path{ink, ring.front(), {}, true};
  for (std::size_t i = 1; i < ring.size(); ++i) path.stretches.push_back({ring[i], {}, false});
  return path;
}

Path closed_path(Ink ink, const PaperBox& box) {
  return closed_path(ink, PaperRing{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}});
}

Path circle(Ink ink, PaperPoint centre, PaperLength radius) {
  const PaperPoint west{centre.x - radius, centre.y};
  return {ink, west, {{{centre.x + radius, centre.y}, radius, true}, {west, radius, true}}, true};
}

void add(std::vector<Mark>& marks, std::vector<Mark> more) {
  for (Mark& mark : more) marks.push_back(std::move(mark));
}
void add(std::vector<Mark>& marks, std::vector<Path> more) {
  for (Path& path : more) marks.emplace_back(std::move(path));
}

std::vector<Path> alarm_sign(PaperPoint centre) {
  return {circle(Ink::alarm, centre, alarm_sign_reach - paper_mm(2, 10)),
          circle(Ink::alarm, centre, paper_mm(8, 10))};
}

Path ridge_sign(PaperPoint centre) {
  constexpr PaperLength half_width = paper_mm(12, 10);
  return closed_path(Ink::ridge, PaperRing{{centre.x, centre.y - half_width},
                                           {centre.x + half_width, centre.y},
                                           {centre.x, centre.y + half_width},
                                           {centre.x - half_width, centre.y}});
}

void move_by(Mark& mark, PaperPoint way) {
  const auto move = [&](PaperPoint& p) { p = {p.x + way.x, p.y + way.y}; };
  if (Text* text = std::get_if<Text>(&mark)) move(text->at);
  if (Patch* patch = std::get_if<Patch>(&mark)) {
    move(patch->low);
    move(patch->high);
  }
  if (Path* path = std::get_if<Path>(&mark)) {
    move(path->from);
    for (Stretch& stretch : path->stretches) move(stretch.to);
  }
}

PaperBox box_of(const Text& text) {
  const PaperLength width = text_width(text.words, text.height);
  PaperLength before;
  switch (text.anchor) {
    case Anchor::start:
      break;
    case Anchor::middle:
      before = width / 2 + PaperLength::micrometres(1);
      break;
    case Anchor::end:
      before = width;
      break;
  }
  const PaperLength up = text.height * ascent_thousandths / 1000;
  const PaperLength down = text.height * descent_thousandths / 1000;
  if (text.reads_upward)
    return {{text.at.x - up, text.at.y + before - width}, {text.at.x + down, text.at.y + before}};
  return {{text.at.x - before, text.at.y - up}, {text.at.x - before + width, text.at.y + down}};
}

}  // namespace berthwright
