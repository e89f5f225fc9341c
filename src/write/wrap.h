#pragma once

#include <string>
#include <string_view>

namespace berthwright {

/// How a paragraph is set: `first` before its first line, `rest` before the others.
struct Indent {
  std::string_view first;
  std::string_view rest;
};
/// Of an item in a list, and of what is told under it.
inline constexpr Indent item{"  ", "    "};
inline constexpr Indent under_item{"    ", "    "};
inline constexpr std::size_t report_columns = 100;

/// `words` broken at spaces, but not within a measure, into lines of at most `report_columns` characters (a
/// longer word stays whole), each ending in a line feed.
std::string wrapped(std::string_view words, Indent indent);

}  // namespace berthwright
