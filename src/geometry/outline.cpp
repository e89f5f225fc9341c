#include <berthwright/geometry/outline.h>

#include <algorithm>
#include <string>

#include <berthwright/exact/measure.h>

namespace berthwright {
namespace {

// A chord may lie this far inside its arc; its ends are rounded, which takes two ticks at most.
constexpr Length sagitta = Length::millimetres(5, 100) - Length::from_ticks(2);

constexpr std::array<const char*, 4> corner_names{"front-left", "rear-left", "rear-right", "front-right"};

struct TakenByCorner {
  Length along;
  Length across;
};

struct ReachOf {
  TakenByCorner operator()(const SquareCorner&) const { return {}; }
  TakenByCorner operator()(const Notch& c) const { return {c.along, c.across}; }
  TakenByCorner operator()(const Clip& c) const { return {c.along, c.across}; }
  TakenByCorner operator()(const Round& c) const { return {c.radius, c.radius}; }
};

TakenByCorner reach(const Corner& corner) { return std::visit(ReachOf{}, corner); }

Vector scaled(Vector way, Length length) { return {way.x * length.ticks(), way.y * length.ticks()}; }

// `radius` x part / root(squared), to the nearest tick; not negative.
Length on_circle(Length radius, Length part, Int128 squared) {
  const Int128 product = Int128{radius.ticks()} * part.ticks();
  Int128 low = 0;
  Int128 high = radius.ticks();
  while (low < high) {
    const Int128 middle = (low + high + 1) / 2;
    const Int128 border = 2 * middle - 1;  // twice the least value that is rounded to `middle`
    if (border * border * squared <= 4 * product * product)
      low = middle;
    else
      high = middle - 1;
  }
  return Length::from_ticks(static_cast<std::int64_t>(low));
}

// The points strictly between two of the quarter circle about the origin, until the chords are close enough.
void add_between(std::vector<Vector>& points, Vector a, Vector b, Length radius) {
  const Vector sum{a.x + b.x, a.y + b.y};
  const Int128 x = sum.x.ticks();
  const Int128 y = sum.y.ticks();
  const Int128 squared = x * x + y * y;
  const Int128 inner = 2 * Int128{std::max(radius - sagitta, Length{}).ticks()};
  if (squared >= inner * inner) return;
  const Vector middle{on_circle(radius, sum.x, squared), on_circle(radius, sum.y, squared)};
  add_between(points, a, middle, radius);
  points.push_back(middle);
  add_between(points, middle, b, radius);
}

// One corner on the way round; the outline comes along `in` and leaves along `out`, vectors of one tick.
struct Bend {
  Point at;
  Vector in;
  Vector out;
};

struct Tracer {
  Bend bend;
  std::vector<Point>& points;
  std::vector<Arc>& arcs;

  Length along_in(Length along, Length across) const { return bend.in.y == Length{} ? along : across; }
  Length along_out(Length along, Length across) const { return bend.in.y == Length{} ? across : along; }
  Point before(Length by) const { return bend.at - scaled(bend.in, by); }
  Point after(Length by) const { return bend.at + scaled(bend.out, by); }

  void operator()(const SquareCorner&) const { points.push_back(bend.at); }
  void operator()(const Notch& c) const {
    const Point start = before(along_in(c.along, c.across));
    const Length out = along_out(c.along, c.across);
    points.insert(points.end(), {start, start + scaled(bend.out, out), after(out)});
  }
  void operator()(const Clip& c) const {
    points.insert(points.end(), {before(along_in(c.along, c.across)), after(along_out(c.along, c.across))});
  }
  void operator()(const Round& c) const {
    std::vector<Vector> quarter;
    add_between(quarter, {c.radius, Length{}}, {Length{}, c.radius}, c.radius);
    const Point centre = before(c.radius) + scaled(bend.out, c.radius);
    points.push_back(before(c.radius));
    for (const Vector& p : quarter) points.push_back(centre - scaled(bend.out, p.x) + scaled(bend.in, p.y));
    points.push_back(after(c.radius));
    arcs.push_back({before(c.radius), after(c.radius), c.radius, true});
  }
};

// A plan's unit is not known here: both rulers, without feet.
std::string on_both(Length length, Rounding rounding = Rounding::nearest) {
  return both(length, Unit::inch, {.rounding = rounding, .feet = false});
}

Problem corner_problem(std::string message, std::string found, std::string allowed, std::string cure) {
  return {.id = "outline.corner",
          .pointer = "",
          .message = std::move(message),
          .found = std::move(found),
          .allowed = std::move(allowed),
          .cure = std::move(cure)};
}

// What two neighbours may take of the side between them.
struct SideShare {
  std::size_t first;
  std::size_t second;
  Length side;
  Length taken_by_first;
  Length taken_by_second;
};

void check_side(const SideShare& share, const std::array<Corner, 4>& corners, Problems& problems) {
  // Two notches that meet would leave a tooth without width.
  const bool notches = std::holds_alternative<Notch>(corners[share.first]) &&
                       std::holds_alternative<Notch>(corners[share.second]);
  const Length taken = share.taken_by_first + share.taken_by_second;
  if (taken < share.side || (taken == share.side && !notches)) return;
  problems.push_back(corner_problem(
      std::string("the ") + corner_names[share.first] + " and the " + corner_names[share.second] +
          " corner together take more than the side between them",
      on_both(share.taken_by_first) + " and " + on_both(share.taken_by_second),
      std::string(notches ? "less than " : "at most ") + on_both(share.side, Rounding::down) + " together",
      "make one of the two smaller, or the side longer"));
}

Problems problems_of(const WorkedRectangle& r) {
  Problems problems;
  if (r.length <= Length{} || r.width <= Length{}) {
    problems.push_back({.id = "outline.size",
                        .pointer = "",
                        .message = "a rectangle needs a length and a width",
                        .found = on_both(r.length) + " by " + on_both(r.width),
                        .allowed = "both more than 0",
                        .cure = "give the length and the width as measured"});
    return problems;
  }
  for (std::size_t i = 0; i < 4; ++i) {
    const auto [along, across] = reach(r.corners[i]);
    if (!std::holds_alternative<SquareCorner>(r.corners[i]) && (along <= Length{} || across <= Length{}))
      problems.push_back(corner_problem(std::string("the ") + corner_names[i] + " corner has no size",
                                        on_both(along) + " by " + on_both(across), "more than 0",
                                        "give the corner its size, or leave it square"));
  }
  if (!problems.empty()) return problems;
  for (std::size_t i = 0; i < 4; ++i) {
    const std::size_t next = (i + 1) % 4;
    const TakenByCorner a = reach(r.corners[i]);
    const TakenByCorner b = reach(r.corners[next]);
    const bool lengthwise = i % 2 == 0;
    check_side({i, next, lengthwise ? r.length : r.width, lengthwise ? a.along : a.across,
                lengthwise ? b.along : b.across},
               r.corners, problems);
  }
  return problems;
}

}  // namespace

Result<Outline> Outline::worked(const WorkedRectangle& r) {
  if (Problems problems = problems_of(r); !problems.empty()) return problems;
  const Vector x{one_tick, Length{}};
  const Vector y{Length{}, one_tick};
  const Vector back_x{-one_tick, Length{}};
  const Vector back_y{Length{}, -one_tick};
  const std::array<Bend, 4> bends{{{{Length{}, Length{}}, back_y, x},
                                   {{r.length, Length{}}, x, y},
                                   {{r.length, r.width}, y, back_x},
                                   {{Length{}, r.width}, back_x, back_y}}};
  std::vector<Point> points;
  std::vector<Arc> arcs;
  for (std::size_t i = 0; i < 4; ++i) std::visit(Tracer{bends[i], points, arcs}, r.corners[i]);
  auto polygon = Polygon::checked(std::move(points));
  if (!polygon)
    return corner_problem("opposite corners cut into each other", "",
                          "corners that leave the outline in one piece",
                          "make one of the two corners smaller");
  return Outline(std::move(polygon).value(), std::move(arcs));
}

Result<Outline> Outline::free(std::vector<Point> corners) {
  auto polygon = Polygon::checked(std::move(corners));
  if (!polygon) return polygon.problems();
  return Outline(std::move(polygon).value(), {});
}

bool operator==(const Outline& a, const Outline& b) {
  const auto same = [](const Arc& c, const Arc& d) {
    return c.from == d.from && c.to == d.to && c.radius == d.radius && c.left == d.left;
  };
  return a.polygon_ == b.polygon_ && std::ranges::equal(a.arcs_, b.arcs_, same);
}

}  // namespace berthwright
