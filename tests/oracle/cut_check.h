#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace berthwright::oracle {

/// Low x, low y, high x, high y, in whole units.
using CheckedBox = std::array<std::int64_t, 4>;

struct CheckedStock {
  std::int64_t length = 0;
  std::int64_t width = 0;
  std::int64_t trim = 0;
  std::int64_t count = -1;  ///< -1: as many as are wanted
  std::int64_t price = 0;
  std::vector<CheckedBox> defects{};
};
struct CheckedPart {
  std::int64_t length = 0;
  std::int64_t width = 0;
  std::int64_t count = 0;  ///< how many must lie somewhere
  bool turns = false;
};
struct CheckedPlace {
  std::size_t part = 0;
  CheckedBox at{};
  bool turned = false;
};
struct CheckedCut {
  CheckedBox piece{};
  bool crosswise = false;
  std::int64_t at = 0;
  std::size_t stage = 0;
};
struct CheckedSheet {
  std::size_t stock = 0;
  std::vector<CheckedPlace> places{};
  std::vector<CheckedCut> cuts{};
  std::vector<CheckedBox> offcuts{};
};
/// What somebody says can be cut, with everything that it must keep.
struct CutCase {
  std::vector<CheckedStock> stock{};
  std::vector<CheckedPart> parts{};
  std::vector<CheckedSheet> sheets{};
  std::int64_t kerf = 0;
  std::int64_t least_offcut = 0;
  std::int64_t cost = 0;
  bool through = true;
  std::size_t most_stages = 0;  ///< 0: any
};

/// Everything that is wrong with it, in words. Through-cuts are sawn one by one.
std::vector<std::string> cut_faults(const CutCase& of);

}  // namespace berthwright::oracle
