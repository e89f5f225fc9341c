#pragma once

#include <vector>

#include <berthwright/solve/split/night_bay.h>

#include "view/split_words.h"
#include "write/in_json.h"

namespace berthwright {

// The guest itself comes in with the caller: `Json` is its ordered object.
template <class Json>
Json rectangle_in(const Rect& rect) {
  return {{"corner", place_in<Json>(rect.low)}, {"opposite", place_in<Json>(rect.high)}};
}

/// Which bay it is.
template <class Json>
Json bay_in(const NightBay& bay) {
  Json benches = Json::array();
  for (const Lid& lid : bay.lids) benches.push_back(lid.bench.text());
  return {{"benches", benches},
          {"boards", bay.boards},
          {"day", bay.day->id.text()},
          {"night", bay.night->id.text()},
          {"level_mm", millimetres(bay.level)},
          {"bounds", rectangle_in<Json>(bay.bounds())}};
}

template <class Json>
Json off_level_in(const Plan& plan, const std::vector<OffLevel>& off_level) {
  Json off = Json::array();
  for (const OffLevel& one : off_level)
    off.push_back({{"board", one.board},
                   {"bench", one.bench},
                   {"above_mm", millimetres(one.above)},
                   {"sentence", off_level_sentence(plan, one)}});
  return off;
}

}  // namespace berthwright
