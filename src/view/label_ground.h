#pragma once

#include <cstdint>

#include "view/labels.h"

namespace berthwright {

/// Boxes sorted into the squares of a page, so that few are looked at around one place.
class Squares {
 public:
  /// `boxes` lie anywhere; most squares are used when they lie in `area`.
  Squares(const PaperBox& area, const std::vector<PaperBox>& boxes);

  /// How many of the boxes whose squares `near` meets pass `test`, which gets their indices; each once.
  template <typename Test>
  std::int64_t count(const PaperBox& near, Test test) const {
    std::int64_t sum = 0;
    const Range asked = range_of(near);
    for (std::size_t row = asked.top; row <= asked.bottom; ++row)
      for (std::size_t column = asked.left; column <= asked.right; ++column)
        for (std::size_t i = begins_[row * columns_ + column]; i < begins_[row * columns_ + column + 1];
             ++i) {
          const Range& own = ranges_[members_[i]];
          const bool first = row == std::max(own.top, asked.top) && column == std::max(own.left, asked.left);
          if (first && test(members_[i])) ++sum;
        }
    return sum;
  }
  template <typename Test>
  bool any(const PaperBox& near, Test test) const {
    const Range asked = range_of(near);
    for (std::size_t row = asked.top; row <= asked.bottom; ++row)
      for (std::size_t column = asked.left; column <= asked.right; ++column)
        for (std::size_t i = begins_[row * columns_ + column]; i < begins_[row * columns_ + column + 1]; ++i)
          if (test(members_[i])) return true;
    return false;
  }

 private:
  struct Range {
    std::size_t left, right, top, bottom;
  };
  Range range_of(const PaperBox& box) const;

  PaperPoint low_;
  std::size_t columns_ = 1;
  std::size_t rows_ = 1;
  std::vector<Range> ranges_;        // of each box
  std::vector<std::size_t> begins_;  // of each square, in `members_`
  std::vector<std::uint32_t> members_;
};

/// A field whose lettering and lines are found by place. Points into the field.
class LabelGround {
 public:
  explicit LabelGround(const LabelField& field);
  const PaperBox& area() const { return field_->area; }
  /// The box lies in the area and meets no lettering and no heavy line.
  bool is_free(const PaperBox& box) const;
  /// How many light lines run through the box.
  std::int64_t crossings(const PaperBox& box) const;
  /// No lettering and no sign lies in its way.
  bool leader_is_free(const PaperLine& leader) const;

 private:
  const LabelField* field_;
  Squares taken_;
  Squares heavy_;
  Squares light_;
};

}  // namespace berthwright
