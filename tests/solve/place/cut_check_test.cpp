#include "oracle/cut_check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

namespace berthwright::oracle {
namespace {

// 100 x 50, trimmed by 5 to 90 x 40, kerf 2: a part of 30 x 40, one of 30 x 20 beside it, what is left behind
// it worth keeping. 5 + 30 = 35, blade to 37; 37 + 30 = 67, blade to 69; 5 + 20 = 25, blade to 27.
CutCase sound() {
  CutCase result;
  result.stock = {{100, 50, 5, 1, 70, {{80, 30, 82, 32}}}};
  result.parts = {{30, 40, 1, false}, {30, 20, 1, true}};
  CheckedSheet sheet;
  sheet.places = {{0, {5, 5, 35, 45}, false}, {1, {37, 5, 67, 25}, false}};
  sheet.cuts = {
      {{5, 5, 95, 45}, true, 35, 1}, {{37, 5, 95, 45}, true, 67, 1}, {{37, 5, 67, 45}, false, 25, 2}};
  sheet.offcuts = {{37, 27, 67, 45}};
  result.sheets = {sheet};
  result.kerf = 2;
  result.least_offcut = 18;
  result.cost = 70;
  result.most_stages = 2;
  return result;
}

TEST(CutCheck, FindsNothingWrongWithASoundSheet) {
  EXPECT_EQ(cut_faults(sound()), std::vector<std::string>{});
}

// Each thing that a sheet must keep is broken once.
TEST(CutCheck, FindsEveryFault) {
  const std::vector<std::pair<std::string, std::function<void(CutCase&)>>> breaks{
      {"not the size of the part", [](CutCase& c) { c.parts[0].length = 31; }},
      {"turned against grain or nap",
       [](CutCase& c) {
         c.parts[1] = {20, 30, 1, false};
         c.sheets[0].places[1].turned = true;
       }},
      {"reaches beyond the trimmed stock", [](CutCase& c) { c.stock[0].trim = 6; }},
      {"lies on a defect",
       [](CutCase& c) {
         c.stock[0].defects[0] = {34, 10, 36, 11};
       }},
      {"lies on a defect",
       [](CutCase& c) {
         c.stock[0].defects[0] = {40, 30, 41, 31};
       }},
      {"less than the kerf between two", [](CutCase& c) { c.kerf = 3; }},
      {"an offcut too small to keep", [](CutCase& c) { c.least_offcut = 19; }},
      {"a part not as often as wanted", [](CutCase& c) { c.parts[0].count = 2; }},
      {"more stock than there is", [](CutCase& c) { c.stock[0].count = 0; }},
      {"the prices sum to something else", [](CutCase& c) { c.cost = 69; }},
      {"stock of which nothing is cut", [](CutCase& c) { c.sheets.push_back({0}); }},
      {"a cut through a piece that is not there", [](CutCase& c) { c.sheets[0].cuts[2].piece[0] = 36; }},
      {"a cut beside its piece", [](CutCase& c) { c.sheets[0].cuts[2].at = 46; }},
      {"not cut out by the cuts", [](CutCase& c) { c.sheets[0].cuts.pop_back(); }},
      {"more stages than allowed", [](CutCase& c) { c.most_stages = 1; }},
      {"a stage too early", [](CutCase& c) { c.sheets[0].cuts[2].stage = 1; }},
  };
  for (const auto& [fault, broken] : breaks) {
    SCOPED_TRACE(fault);
    CutCase of = sound();
    broken(of);
    const std::vector<std::string> faults = cut_faults(of);
    EXPECT_NE(std::ranges::find(faults, fault), faults.end());
  }
}

}  // namespace
}  // namespace berthwright::oracle
