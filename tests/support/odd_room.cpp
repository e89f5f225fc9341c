#include "support/odd_room.h"

#include <algorithm>
#include <array>
#include <random>

namespace berthwright {
namespace {

class OddThings {
 public:
  explicit OddThings(unsigned seed) : random_(seed) {}

  int upto(int n) { return static_cast<int>(random_() % static_cast<unsigned>(n)); }

  // A worked rectangle, an L or a slanted quadrilateral within the box.
  Region shape(const Rect& box) {
    const Length w = box.width();
    const Length h = box.height();
    const Length cut = half(half(std::min(w, h)));
    switch (upto(5)) {
      case 0:
        return moved({w, h, {SquareCorner{}, Notch{cut, cut}, SquareCorner{}, Clip{cut, cut}}}, box.low);
      case 1:
        return moved({w, h, {Round{cut}, Round{cut}, SquareCorner{}, SquareCorner{}}}, box.low);
      case 2:
        return Region(Polygon::checked({box.low + Vector{cut, {}}, box.low + Vector{w, cut},
                                        box.low + Vector{w - cut, h}, box.low + Vector{{}, h - cut}})
                          .value());
      default:
        return Region(box);
    }
  }

  std::string name(int number) {
    constexpr std::array words{"seat",
                               "the very long cushion of the front dinette",
                               "back",
                               "filler",
                               "WWWWWW",
                               "כרית",
                               "🛏 布",
                               "<b>&\"'",
                               "bolster of 1/2\" × 74 13/16\"",
                               "gjpqy"};
    std::string out = std::to_string(number);
    for (int left = 1 + upto(upto(6) == 0 ? 9 : 3); left > 0; --left)
      out += std::string(" ") + words.at(static_cast<std::size_t>(upto(static_cast<int>(words.size()))));
    return out;
  }

 private:
  static Region moved(const WorkedRectangle& rectangle, Point low) {
    return berthwright::moved(Region(Outline::worked(rectangle).value().polygon()), {low.x, low.y});
  }
  std::mt19937 random_;
};

Opening opening(const std::string& id, Opening::Kind kind, Wall wall, Length from) {
  const bool door = kind == Opening::Kind::door;
  return {OpeningId(id),
          id,
          kind,
          wall,
          from,
          door ? 24_in : 30_in,
          door ? 68_in : 18_in,
          door ? Length{} : 30_in,
          Opening::Swing::out,
          door ? std::optional(Wall::front) : std::nullopt,
          true,
          {}};
}

}  // namespace

DrawnRoom odd_room(unsigned seed) {
  OddThings odd(seed);
  const Length length = Length::inches(96 + odd.upto(150));
  const Length width = Length::inches(64 + odd.upto(30));
  DrawnRoom room(seed % 2 == 0 ? Unit::inch : Unit::millimetre, length, width);
  const Length corner = Length::inches(2 + odd.upto(16));
  room.parts.interior.outline =
      Outline::worked({length, width, {Round{corner}, Clip{corner, corner}, SquareCorner{}, Round{corner}}})
          .value();
  room.parts.openings = {
      opening("door", Opening::Kind::door, seed % 3 == 0 ? Wall::left : Wall::right, 30_in),
      opening("window", Opening::Kind::window, Wall::rear, 16_in)};
  const int count = 2 + static_cast<int>(seed * 7 % 39);
  for (int i = 0; i < count; ++i) {
    const Length wide = Length::inches(6 + odd.upto(40));
    const Length deep = Length::inches(6 + odd.upto(30));
    const auto place = [&](Length room_for, Length own) {
      const auto inches = static_cast<int>((room_for - own).ticks() / ticks_per_inch);
      return Length::inches(odd.upto(inches));
    };
    const Point low{place(length, wide), place(width, deep)};
    const Rect box{low, {low.x + wide, low.y + deep}};
    const Length base = Length::inches(odd.upto(5) * 9);
    const Length top = base + Length::inches(2 + odd.upto(20));
    const std::string id = "thing-" + std::to_string(i);
    if (odd.upto(4) == 0) {
      constexpr std::array kinds{Fixture::Kind::bench, Fixture::Kind::counter, Fixture::Kind::locker,
                                 Fixture::Kind::heater};
      room.fixture(id, kinds.at(static_cast<std::size_t>(odd.upto(4))), box, base, top);
      room.parts.fixtures.back().name = odd.name(i);
    } else {
      constexpr std::array kinds{Piece::Kind::cushion, Piece::Kind::cushion, Piece::Kind::board,
                                 Piece::Kind::table};
      room.piece(id, kinds.at(static_cast<std::size_t>(odd.upto(4))), odd.shape(box), base, top);
      room.parts.pieces.back().name = odd.name(i);
    }
  }
  return room;
}

}  // namespace berthwright
