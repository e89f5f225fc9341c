#pragma once

#include <cstdint>
#include <vector>

namespace berthwright::oracle {

struct CuttablePart {
  int length = 1;
  int width = 1;
  int count = 1;
  int worth = 0;
  bool turns = false;
};

/// The most that through-cuts get out of the sheet: every cut at every whole unit, every way to share out the
/// parts between the halves. Slow: for sheets of a few units.
int most_worth_by_every_cut(int length, int width, const std::vector<CuttablePart>& parts);

struct PricedSheet {
  int length = 1;
  int width = 1;
  int price = 0;
};
/// The least cost to cut all parts, any number of sheets of each size; less than nothing: it cannot be done.
int least_cost_by_every_cut(const std::vector<PricedSheet>& sheets, const std::vector<CuttablePart>& parts);

/// The shortest strip of that width that holds all parts, anywhere on whole units: every place of every part.
int shortest_strip_by_every_place(int width, const std::vector<CuttablePart>& parts);

}  // namespace berthwright::oracle
