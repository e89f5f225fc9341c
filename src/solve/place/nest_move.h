#pragma once

#include "solve/place/nest_layout.h"

namespace berthwright {

/// Looks for better places of one part among the others, which stay.
class NestMover {
 public:
  NestMover(NestLayout& layout, NestDice& dice) : layout_(layout), dice_(dice) {}
  /// Puts the part where it costs less, if a place is found. Tries places anywhere, such as touch another
  /// part, and near by; follows the best of them from one crossing of borders to the next.
  void move(std::size_t part);

 private:
  struct Candidate {
    double cost = 0;
    NestSpot spot;
  };
  struct Line {  // what is to be left lies on its left
    NestPoint at;
    NestPoint way;
  };
  void look(const NestSpot& spot);
  void look_anywhere(std::size_t shape);
  void look_beside(std::size_t shape);
  void look_near(const NestSpot& spot);
  void follow(Candidate& candidate);
  bool step(Candidate& candidate);
  void aim_at_borders(const NestLayout::Room& room, NestPoint from);
  void aim_at_crossings(const NestLayout::Room& room, std::size_t borders);
  void aim(const NestLayout::Room& room, NestPoint target);

  NestLayout& layout_;
  NestDice& dice_;
  std::size_t part_ = 0;
  std::vector<Candidate> best_;
  std::vector<NestLayout::Touch> touches_;
  std::vector<Line> lines_;
  std::vector<NestPoint> targets_;
};

}  // namespace berthwright
