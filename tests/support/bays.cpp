#include "support/bays.h"

namespace berthwright::support {

NightBay facing_benches(Length depth, Length span, Length width) {
  NightBay bay;
  bay.level = 14_in;
  const Rect front{{}, {depth, width}};
  const Rect board{{depth, Length{}}, {depth + span, width}};
  const Rect rear{{depth + span, Length{}}, {depth + span + depth, width}};
  bay.parts = {front, board, rear};
  bay.lids = {{FixtureId("front bench"), front, Wall::rear, front},
              {FixtureId("rear bench"), rear, Wall::front, rear}};
  bay.boards = {"table"};
  return bay;
}

NightBay lounge_of_three(Length length, Length width, Length depth, Length arch_length, Length arch_width) {
  NightBay bay;
  bay.level = 14_in;
  const Rect left{{}, {length, depth}};
  const Rect right{{Length{}, width - depth}, {length, width}};
  const Rect rear{{length - depth, depth}, {length, width - depth}};
  const Rect board{{Length{}, depth}, {length - depth, width - depth}};
  bay.parts = {left, right, rear, board};
  bay.lids = {
      {FixtureId("left bench"), left, Wall::right, {{}, {length - depth, depth}}},
      {FixtureId("right bench"), right, Wall::left, {{Length{}, width - depth}, {length - depth, width}}},
      {FixtureId("rear bench"), rear, Wall::front, rear}};
  bay.boards = {"table"};
  if (arch_length > Length{}) {
    bay.risen = {"wheel arch"};
    bay.kept_out = Region(Rect{{Length{}, Length{}}, {arch_length, arch_width}});
  }
  return bay;
}

NightBay lounge_of_two(Length length, Length width, Length depth) {
  NightBay bay;
  bay.level = 14_in;
  const Rect left{{}, {length, depth}};
  const Rect rear{{length - depth, depth}, {length, width}};
  const Rect board{{Length{}, depth}, {length - depth, width}};
  bay.parts = {left, rear, board};
  bay.lids = {{FixtureId("left bench"), left, Wall::right, {{}, {length - depth, depth}}},
              {FixtureId("rear bench"), rear, Wall::front, rear}};
  bay.boards = {"table"};
  return bay;
}

NightBay mirrored(const NightBay& bay, Vector by) {
  NightBay result = bay;
  const auto image = [by](const Rect& r) {
    return Rect{Point{r.low.x, -r.high.y} + by, Point{r.high.x, -r.low.y} + by};
  };
  for (Rect& part : result.parts) part = image(part);
  for (Lid& lid : result.lids) {
    lid.top = image(lid.top);
    lid.before_board = image(lid.before_board);
    if (!lid.looks_along()) lid.faces = lid.faces == Wall::left ? Wall::right : Wall::left;
  }
  result.kept_out = moved(berthwright::mirrored(bay.kept_out), by);
  return result;
}

}  // namespace berthwright::support
