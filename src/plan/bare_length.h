#pragma once

#include <string>

#include <berthwright/exact/measure.h>

namespace berthwright {

/// The length as a bare number of `unit`; empty where that cannot say it exactly.
inline std::string bare_length(Length length, Unit unit) {
  const std::string text = exact_text(length, unit);
  const std::string ending = unit == Unit::inch ? " in" : " mm";
  return text.ends_with(ending) ? text.substr(0, text.size() - ending.size()) : "";
}

}  // namespace berthwright
