#include "solve/split/day_pieces.h"

#include <algorithm>
#include <array>

#include "solve/split/foam_cost.h"

namespace berthwright {
namespace {

// The rectangle less a strip along the side away from the front.
Rect before_strip(const Lid& lid, Length strip) {
  Rect at = lid.top;
  if (lid.faces == Wall::rear) at.low.x += strip;
  if (lid.faces == Wall::front) at.high.x -= strip;
  if (lid.faces == Wall::right) at.low.y += strip;
  if (lid.faces == Wall::left) at.high.y -= strip;
  return at;
}

// How many parts along the front keep within the longest side and the most weight.
std::int64_t count_of_parts(Length length, Length other, const SplitLimits& limits) {
  const auto up = [](std::int64_t whole, std::int64_t part) { return (whole + part - 1) / part; };
  std::int64_t count = up(length.ticks(), limits.longest_side.ticks());
  if (limits.most_weight)
    count = std::max(count, up(weight_of_foam(length, other, limits).units(), limits.most_weight->units()));
  return count;
}

// In so many equal parts along the front. The first take what does not divide.
std::vector<Rect> in_parts(const Rect& whole, bool along_y, std::int64_t count) {
  const Length length = along_y ? whole.height() : whole.width();
  std::vector<Rect> result;
  Length from;
  for (std::int64_t i = 0; i < count; ++i) {
    const Length to = Length::from_ticks(length.ticks() * (i + 1) / count);
    Rect part = whole;
    (along_y ? part.low.y : part.low.x) += from;
    (along_y ? part.high.y : part.high.x) = (along_y ? whole.low.y : whole.low.x) + to;
    result.push_back(part);
    from = to;
  }
  return result;
}

}  // namespace

Rect behind_seat(const Lid& lid, Length thickness) {
  Rect at = lid.top;
  if (lid.faces == Wall::rear) at.high.x = at.low.x + thickness;
  if (lid.faces == Wall::front) at.low.x = at.high.x - thickness;
  if (lid.faces == Wall::right) at.high.y = at.low.y + thickness;
  if (lid.faces == Wall::left) at.low.y = at.high.y - thickness;
  return at;
}

bool manners_fit(const NightBay& bay, const std::vector<BackManner>& manners) {
  for (std::size_t i = 0; i < bay.lids.size(); ++i)
    if (manners[i] != BackManner::on_seat && overlaps(Region(bay.lids[i].top), bay.kept_out)) return false;
  return true;
}

std::vector<std::vector<BackManner>> all_manners(const NightBay& bay) {
  std::vector<std::vector<BackManner>> result;
  std::size_t choices = 1;
  for (std::size_t lid = 0; lid < bay.lids.size(); ++lid) choices *= 3;
  for (std::size_t choice = 0; choice < choices; ++choice) {
    std::vector<BackManner> manners;
    for (std::size_t lid = 0, rest = choice; lid < bay.lids.size(); ++lid, rest /= 3)
      manners.push_back(
          std::array{BackManner::on_seat, BackManner::behind_seat, BackManner::stays}[rest % 3]);
    if (manners_fit(bay, manners)) result.push_back(std::move(manners));
  }
  return result;
}

DaySeats day_seats(const NightBay& bay, const SplitLimits& limits, const std::vector<BackManner>& manners,
                   const std::vector<Length>& heights, bool short_backs) {
  DaySeats result{manners, heights, short_backs, {}};
  for (std::size_t i = 0; i < bay.lids.size(); ++i) {
    const Lid& lid = bay.lids[i];
    const bool behind = manners[i] != BackManner::on_seat;
    if (lid.depth() < limits.least_side + (behind ? limits.thickness : Length{})) {
      result.possible = false;
      return result;
    }
    const Rect seat = before_strip(lid, behind ? limits.thickness : Length{});
    Rect back = behind_seat(lid, limits.thickness);
    if (short_backs && lid.looks_along())
      back = {{back.low.x, lid.before_board.low.y}, {back.high.x, lid.before_board.high.y}};
    if (short_backs && !lid.looks_along())
      back = {{lid.before_board.low.x, back.low.y}, {lid.before_board.high.x, back.high.y}};
    for (const bool is_back : {false, true}) {
      std::size_t number = 0;
      const Rect& whole = is_back ? back : seat;
      const Length length = lid.looks_along() ? whole.height() : whole.width();
      const Length depth = lid.looks_along() ? whole.width() : whole.height();
      const std::int64_t count = count_of_parts(length, is_back ? heights[i] : depth, limits);
      for (const Rect& part : in_parts(whole, lid.looks_along(), count)) {
        SplitPiece piece;
        piece.use = is_back ? SplitPiece::Use::back : SplitPiece::Use::seat;
        piece.bench = lid.bench;
        piece.number = number++;
        piece.by_day = part;
        piece.by_night = part;
        piece.length = is_back && lid.looks_along() ? heights[i] : part.width();
        piece.width = is_back && !lid.looks_along() ? heights[i] : part.height();
        if (is_back) piece.height = heights[i];
        if (!is_back) piece.kept_out = common(Region(part), bay.kept_out);
        result.possible =
            result.possible && piece.length >= limits.least_side && piece.width >= limits.least_side;
        result.pieces.push_back(std::move(piece));
      }
    }
  }
  return result;
}

}  // namespace berthwright
