#include "view/raised.h"

#include <algorithm>
#include <set>

namespace berthwright {
namespace {

constexpr PaperLength face_lap = paper_mm(6, 100);  // else a light seam shows between the layers of one face

constexpr Length tenths(Length length, std::int64_t count) {
  return Length::from_ticks(length.ticks() * count / 10);
}

// Points on one line of sight, as seen in plan, have the same `across`; farther ones a greater y.
constexpr Length across(Point p) { return p.x + tenths(p.y, 3); }

/// An upright face that looks toward the viewer, with the neighbours that decide whether its ends are seen.
struct UprightFace {
  const RaisedThing* thing = nullptr;
  Point from;  // leftmost on paper
  Point to;
  bool from_is_edge = false;
  bool to_is_edge = false;
};

bool looks_here(Point from, Point to) { return across(from) < across(to); }

// More than 15 degrees: chords that stand for an arc turn less.
bool is_sharp(Point a, Point b, Point c) {
  const auto square = [](Point p, Point q) {
    const Int128 x = (q.x - p.x).ticks();
    const Int128 y = (q.y - p.y).ticks();
    return x * x + y * y;
  };
  const Int128 sine = cross(a, b, c);
  return sine * sine > square(a, b) / 15 * square(b, c);
}

// An edge of a ring with the corners before and after it.
struct RingSide {
  Point before, from, to, after;
};

std::vector<RingSide> sides_of(const Polygon& polygon) {
  const std::span<const Point> ring = polygon.vertices();
  const std::size_t n = ring.size();
  std::vector<RingSide> sides;
  for (std::size_t i = 0; i < n; ++i)
    sides.push_back({ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n], ring[(i + 2) % n]});
  return sides;
}

std::vector<UprightFace> faces_of(const RaisedThing& thing) {
  std::vector<UprightFace> faces;
  for (const Face& face : thing.outline.faces()) {
    for (const auto& [before, from, to, after] : sides_of(face.outer)) {
      if (!looks_here(from, to)) continue;
      faces.push_back({&thing, from, to, !looks_here(before, from) || is_sharp(before, from, to),
                       !looks_here(to, after) || is_sharp(from, to, after)});
    }
  }
  return faces;
}

Length depth_at(const UprightFace& face, Length at) {
  const Length run = across(face.to) - across(face.from);
  const Int128 rise = Int128{(face.to.y - face.from.y).ticks()} * (at - across(face.from)).ticks();
  return face.from.y + Length::from_ticks(static_cast<std::int64_t>(rise / run.ticks()));
}

// Nearer and on some line of sight that meets both.
bool hides(const UprightFace& near, const UprightFace& far) {
  const Length low = std::max(across(near.from), across(far.from));
  const Length high = std::min(across(near.to), across(far.to));
  if (low >= high) return false;
  const Length middle = half(low + high);
  return depth_at(near, middle) < depth_at(far, middle);
}

// Each after all that it hides. Faces that cross each other have no such order: then as they come.
std::vector<UprightFace> farthest_first(std::vector<UprightFace> faces) {
  std::vector<UprightFace> sorted;
  while (!faces.empty()) {
    auto next = std::ranges::find_if(faces, [&](const UprightFace& face) {
      return std::ranges::none_of(faces, [&](const UprightFace& other) { return hides(face, other); });
    });
    if (next == faces.end()) next = faces.begin();
    sorted.push_back(*next);
    faces.erase(next);
  }
  return sorted;
}

void paint(std::vector<Path>& out, const RaisedView& view, const UprightFace& face, Length low, Length high) {
  const RaisedThing& thing = *face.thing;
  PaperPoint left = view(face.from, low);
  PaperPoint right = view(face.to, low);
  const PaperPoint left_top = view(face.from, high);
  const PaperPoint right_top = view(face.to, high);
  if (low == thing.base) {
    out.push_back(closed_path(thing.side, PaperRing{left, right, right_top, left_top}));
    out.push_back(straight(thing.lid, left, right));
  } else {
    left.y = left.y + face_lap;
    right.y = right.y + face_lap;
    out.push_back(closed_path(thing.side, PaperRing{left, right, right_top, left_top}));
  }
  if (face.from_is_edge) out.push_back(straight(thing.lid, left, left_top));
  if (face.to_is_edge) out.push_back(straight(thing.lid, right, right_top));
}

}  // namespace

PaperPoint RaisedView::operator()(Point plan, Length z) const {
  return {origin.x + on_paper(across(plan), ratio), origin.y - on_paper(tenths(plan.y + z, 6), ratio)};
}

PaperRing raised_ring(const RaisedView& view, const Polygon& polygon, Length z) {
  PaperRing ring;
  for (const Point p : polygon.vertices()) ring.push_back(view(p, z));
  return ring;
}

std::vector<Path> raised_paths(const RaisedView& view, std::span<const RaisedThing> things) {
  return raised_picture(view, things).paths;
}

RaisedPicture raised_picture(const RaisedView& view, std::span<const RaisedThing> things) {
  std::set<Length> heights;
  for (const RaisedThing& thing : things) heights.insert({thing.base, thing.top});
  RaisedPicture picture{{}, std::vector<std::size_t>(things.size())};
  std::vector<Path>& out = picture.paths;
  for (auto low = heights.begin(); low != heights.end() && std::next(low) != heights.end(); ++low) {
    const Length high = *std::next(low);
    std::vector<UprightFace> faces;
    for (const RaisedThing& thing : things)
      if (thing.base <= *low && high <= thing.top)
        for (const UprightFace& face : faces_of(thing)) faces.push_back(face);
    for (const UprightFace& face : farthest_first(std::move(faces))) paint(out, view, face, *low, high);
    for (std::size_t i = 0; i < things.size(); ++i) {
      const RaisedThing& thing = things[i];
      if (thing.top != high) continue;
      picture.tops[i] = out.size();
      for (const Face& face : thing.outline.faces())
        out.push_back(closed_path(thing.lid, raised_ring(view, face.outer, high)));
      out.insert(out.end(), thing.on_lid.begin(), thing.on_lid.end());
    }
  }
  return picture;
}

std::vector<Path> raised_room(const RaisedView& view, const Polygon& room, Length height, Ink ink) {
  std::vector<Path> out{closed_path(ink, raised_ring(view, room, {}))};
  for (const auto& [before, from, to, after] : sides_of(room)) {
    // The walls whose outer faces look away are seen from inside.
    if (looks_here(from, to)) continue;
    out.push_back(straight(ink, view(from, height), view(to, height)));
    if (looks_here(before, from) || is_sharp(before, from, to))
      out.push_back(straight(ink, view(from, {}), view(from, height)));
    if (looks_here(to, after)) out.push_back(straight(ink, view(to, {}), view(to, height)));
  }
  return out;
}

std::vector<Path> raised_outline(const RaisedView& view, const Solid& solid, Ink ink) {
  std::vector<Path> out;
  const RaisedThing thing{solid.outline(), solid.base(), solid.top(), ink, ink};
  for (const Face& face : thing.outline.faces())
    out.push_back(closed_path(ink, raised_ring(view, face.outer, thing.top)));
  for (const UprightFace& face : faces_of(thing)) {
    const PaperPoint left = view(face.from, thing.base);
    const PaperPoint right = view(face.to, thing.base);
    out.push_back(straight(ink, left, right));
    if (face.from_is_edge) out.push_back(straight(ink, left, view(face.from, thing.top)));
    if (face.to_is_edge) out.push_back(straight(ink, right, view(face.to, thing.top)));
  }
  return out;
}

}  // namespace berthwright
