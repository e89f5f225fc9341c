#pragma once

#include "support/trailer_text.h"

namespace berthwright {

/// Heights of a trailer with two benches 30 in apart, 14 in high and 40 in long, and a board 0.703 in thick
/// on ledges 1 in wide between them, 1/8 in short at each side.
struct BoardBetweenBenches {
  std::string left_ledge = "13.297";
  std::string right_ledge = "13.297";
  std::string ledge_length = "40";
  std::string ledge_width = "1";
  std::string seat = "4";  ///< thickness of the cushions on the benches
  std::string back = "4";  ///< and of those on the board
};
/// By night a bed of two seats on the benches and two backs on the board; by day all is stowed.
TrailerText board_between_benches(const BoardBetweenBenches& heights = {});

/// A cushion of 40 x 30 in with 25 in of its length on a bench of 14 in, the rest on a bench `low` high.
TrailerText cushion_on_two_benches(const std::string& low);

/// A table on a leg by day, on the cushions of the bed by night; a second bed that is a bare plank.
TrailerText table_on_the_bed();

}  // namespace berthwright
