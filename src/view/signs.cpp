#include "view/signs.h"

#include <algorithm>
#include <stdexcept>

namespace berthwright {
namespace {

// A corner of a figure, in hundredths of the sign's reach; `on` is the way it points, `aside` a quarter turn
// with the clock from there.
struct SignCorner {
  int on = 0;
  int aside = 0;
};

Path figure(Ink ink, PaperPoint centre, Wall toward, PaperLength reach,
            std::initializer_list<SignCorner> corners) {
  PaperRing ring;
  for (const SignCorner& corner : corners) {
    const PaperPoint on = outward(toward, centre, reach * corner.on / 100);
    const PaperLength x = on.x - centre.x;
    const PaperLength y = on.y - centre.y;
    const PaperPoint unit = outward(toward, {}, reach);
    ring.push_back({centre.x + x - PaperLength::micrometres(unit.y.micrometres() * corner.aside / 100),
                    centre.y + y + PaperLength::micrometres(unit.x.micrometres() * corner.aside / 100)});
  }
  return closed_path(ink, ring);
}

}  // namespace

PaperBox sign_box(PaperPoint centre, PaperLength reach) { return grown(PaperBox{centre, centre}, reach); }

PaperPoint outward(Wall wall, PaperPoint point, PaperLength by) {
  switch (wall) {
    case Wall::front:
      return {point.x - by, point.y};
    case Wall::rear:
      return {point.x + by, point.y};
    case Wall::left:
      return {point.x, point.y + by};
    case Wall::right:
      return {point.x, point.y - by};
  }
  throw std::logic_error("Wall out of range");
}

std::vector<Path> exit_sign(PaperPoint centre, Wall toward, PaperLength reach) {
  return {closed_path(Ink::sign_exit, sign_box(centre, reach)),
          figure(Ink::sign_light, centre, toward, reach, {{-70, -65}, {-70, 65}, {-50, 65}, {-50, -65}}),
          figure(Ink::sign_light, centre, toward, reach,
                 {{-35, -16}, {15, -16}, {15, -50}, {75, 0}, {15, 50}, {15, 16}, {-35, 16}})};
}

std::vector<Path> shut_sign(PaperPoint centre, PaperLength reach) {
  const PaperBox box = sign_box(centre, reach);
  return {closed_path(Ink::sign_shut, box), straight(Ink::sign_shut, box.low, box.high),
          straight(Ink::sign_shut, {box.low.x, box.high.y}, {box.high.x, box.low.y})};
}

std::vector<Path> alarm_square(PaperPoint centre, PaperLength reach) {
  std::vector<Path> paths{closed_path(Ink::sign_alarm, sign_box(centre, reach))};
  for (const int share : {78, 58, 40, 20})
    paths.push_back(
        circle(share == 58 || share == 20 ? Ink::sign_alarm : Ink::sign_light, centre, reach * share / 100));
  return paths;
}

std::vector<Path> heat_sign(PaperPoint centre, PaperLength reach) {
  return {
      figure(Ink::alert, centre, Wall::right, reach, {{95, 0}, {-75, 100}, {-75, -100}}),
      figure(
          Ink::leader_dot, centre, Wall::right, reach,
          {{48, 4}, {6, 28}, {-30, 32}, {-58, 14}, {-62, -8}, {-36, -30}, {-4, -20}, {-14, -8}, {16, -8}})};
}

std::vector<Path> outlet_sign(PaperPoint centre, PaperLength reach) {
  const PaperLength slot = reach * 45 / 100;
  const auto bar = [&](PaperLength x) {
    return closed_path(Ink::leader_dot,
                       PaperBox{{x - reach / 10, centre.y - slot}, {x + reach / 10, centre.y + slot}});
  };
  return {circle(Ink::sign_outlet, centre, reach), bar(centre.x - reach * 35 / 100),
          bar(centre.x + reach * 35 / 100)};
}

std::vector<Path> balance_sign(PaperPoint centre, PaperLength reach) {
  const auto quarter = [&](PaperPoint from, PaperPoint to) {
    return Path{Ink::leader_dot, centre, {{from, {}, false}, {to, reach, true}}, true};
  };
  const PaperPoint right{centre.x + reach, centre.y};
  const PaperPoint left{centre.x - reach, centre.y};
  const PaperPoint top{centre.x, centre.y - reach};
  const PaperPoint bottom{centre.x, centre.y + reach};
  return {circle(Ink::balance, centre, reach), quarter(top, right), quarter(bottom, left)};
}

PaperBox wheel_box(PaperPoint centre) {
  return {{centre.x - paper_mm(35, 10), centre.y - paper_mm(11, 10)},
          {centre.x + paper_mm(35, 10), centre.y + paper_mm(11, 10)}};
}

std::vector<Path> wheel_sign(PaperPoint centre) { return {closed_path(Ink::wheel, wheel_box(centre))}; }

std::vector<Path> coupling_sign(PaperPoint centre) {
  return {circle(Ink::coupling, centre, paper_mm(16, 10)), circle(Ink::leader_dot, centre, paper_mm(8, 10))};
}

PaperPoint clear_of(const std::vector<PaperBox>& standing, PaperPoint place, Wall way) {
  const auto meets_one = [&] {
    const PaperBox sign = grown(sign_box(place), paper_mm(4, 10));
    return std::any_of(standing.begin(), standing.end(),
                       [&](const PaperBox& other) { return overlaps(other, sign); });
  };
  while (meets_one()) place = outward(way, place, paper_mm(1));
  return place;
}

Path arrow_head(PaperPoint tip, PaperPoint from, PaperLength length) {
  const PaperPoint back = toward(tip, from, length);
  const PaperPoint half{(back.x - tip.x) * 2 / 5, (back.y - tip.y) * 2 / 5};
  return closed_path(Ink::leader_dot,
                     PaperRing{tip, {back.x - half.y, back.y + half.x}, {back.x + half.y, back.y - half.x}});
}

}  // namespace berthwright
