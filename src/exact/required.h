#pragma once

#include <optional>
#include <stdexcept>
#include <utility>

namespace berthwright {

/// What `value` holds, where a rule of ours says that it is there. Throws std::logic_error when it is not:
/// that is a fault of ours, never of a plan.
template <class T>
const T& required(const std::optional<T>& value) {
  return value ? *value : throw std::logic_error("a value that must be there is missing");
}

template <class T>
T& required(std::optional<T>& value) {
  return value ? *value : throw std::logic_error("a value that must be there is missing");
}

/// By value, so that what is taken of a temporary outlives it.
template <class T>
T required(std::optional<T>&& value) {
  return value ? *std::move(value) : throw std::logic_error("a value that must be there is missing");
}

}  // namespace berthwright
