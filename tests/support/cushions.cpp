#include "support/cushions.h"

namespace berthwright {

Piece worked_cushion(const WorkedRectangle& rectangle, Length thickness, const std::string& foam) {
  return {.id = PieceId("c"),
          .name = "Cushion",
          .kind = Piece::Kind::cushion,
          .outline = Outline::worked(rectangle).value(),
          .length = rectangle.length,
          .width = rectangle.width,
          .thickness = thickness,
          .material = foam,
          .heat = std::nullopt,
          .origin = {}};
}

Piece cushion(Length length, Length width, Length thickness, const std::string& foam) {
  return worked_cushion({length, width, {}}, thickness, foam);
}

WorkedRectangle random_rectangle(std::mt19937_64& random) {
  const auto quarters = [&](int least, int most) {
    return Length::inches(std::uniform_int_distribution(4 * least, 4 * most)(random), 4);
  };
  WorkedRectangle rectangle{quarters(12, 84), quarters(12, 84), {}};
  for (Corner& corner : rectangle.corners) {
    switch (std::uniform_int_distribution(0, 3)(random)) {
      case 1:
        corner = Notch{quarters(1, 5), quarters(1, 5)};
        break;
      case 2:
        corner = Clip{quarters(1, 5), quarters(1, 5)};
        break;
      case 3:
        corner = Round{quarters(1, 5)};
        break;
      default:
        break;
    }
  }
  return rectangle;
}

}  // namespace berthwright
