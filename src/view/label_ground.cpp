#include "view/label_ground.h"

#include <algorithm>

namespace berthwright {
namespace {

constexpr PaperLength square_side = paper_mm(6);

std::size_t squares_along(PaperLength length) {
  return static_cast<std::size_t>(
             std::max<std::int64_t>(length.micrometres() / square_side.micrometres(), 0)) +
         1;
}

// What lies beyond the outermost squares counts to them.
std::size_t square_at(PaperLength from_low, std::size_t count) {
  const std::int64_t index = from_low.micrometres() / square_side.micrometres();
  return static_cast<std::size_t>(std::clamp<std::int64_t>(index, 0, static_cast<std::int64_t>(count) - 1));
}

std::vector<PaperBox> reaches_of(const std::vector<PaperLine>& all) {
  std::vector<PaperBox> boxes;
  boxes.reserve(all.size());
  for (const PaperLine& line : all) boxes.push_back(hull({line.from, line.from}, {line.to, line.to}));
  return boxes;
}

}  // namespace

Squares::Squares(const PaperBox& area, const std::vector<PaperBox>& boxes)
    : low_(area.low), columns_(squares_along(area.width())), rows_(squares_along(area.height())) {
  begins_.assign(columns_ * rows_ + 1, 0);
  ranges_.reserve(boxes.size());
  const auto each_square = [&](const Range& range, auto visit) {
    for (std::size_t row = range.top; row <= range.bottom; ++row)
      for (std::size_t column = range.left; column <= range.right; ++column) visit(row * columns_ + column);
  };
  for (const PaperBox& box : boxes) {
    ranges_.push_back(range_of(box));
    each_square(ranges_.back(), [&](std::size_t square) { ++begins_[square + 1]; });
  }
  for (std::size_t i = 1; i < begins_.size(); ++i) begins_[i] += begins_[i - 1];
  members_.resize(begins_.back());
  std::vector<std::size_t> next(begins_.begin(), begins_.end() - 1);
  for (std::size_t i = 0; i < ranges_.size(); ++i)
    each_square(ranges_[i],
                [&](std::size_t square) { members_[next[square]++] = static_cast<std::uint32_t>(i); });
}

Squares::Range Squares::range_of(const PaperBox& box) const {
  return {square_at(box.low.x - low_.x, columns_), square_at(box.high.x - low_.x, columns_),
          square_at(box.low.y - low_.y, rows_), square_at(box.high.y - low_.y, rows_)};
}

LabelGround::LabelGround(const LabelField& field)
    : field_(&field),
      taken_(field.area, field.taken),
      heavy_(field.area, reaches_of(field.heavy)),
      light_(field.area, reaches_of(field.light)) {}

bool LabelGround::is_free(const PaperBox& box) const {
  return holds(field_->area, box) &&
         !taken_.any(box, [&](std::size_t i) { return overlaps(field_->taken[i], box); }) &&
         !heavy_.any(box, [&](std::size_t i) { return crosses(field_->heavy[i], box); });
}

std::int64_t LabelGround::crossings(const PaperBox& box) const {
  return light_.count(box, [&](std::size_t i) { return crosses(field_->light[i], box); });
}

bool LabelGround::leader_is_free(const PaperLine& leader) const {
  const auto in_its_way = [&](const PaperBox& box) { return crosses(leader, box); };
  return std::ranges::none_of(field_->taken, in_its_way) && std::ranges::none_of(field_->signs, in_its_way);
}

}  // namespace berthwright
