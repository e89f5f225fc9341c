#pragma once

#include <cstddef>
#include <stdexcept>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace berthwright {

/// One thing wrong with what a person wrote. Faults in our own code are exceptions, never a Problem.
struct Problem {
  std::string id{};        ///< stable, for tests and machines: "length.off-lattice"
  std::string pointer{};   ///< JSON pointer of the value, "" for the whole text
  std::size_t line = 0;    ///< 1-based line in the file; 0 where no file is involved
  std::size_t column = 0;  ///< 1-based column, in characters; within the value itself when line is 0
  std::string message{};   ///< what is wrong, one sentence without a full stop
  std::string found{};     ///< what stood there, shortened
  std::string allowed{};   ///< what may stand there
  std::string cure{};      ///< how to mend it, with numbers or the nearest known name; may be empty

  friend bool operator==(const Problem&, const Problem&) = default;
};
using Problems = std::vector<Problem>;

/// A value, or every reason why there is none. The only error value of the library.
template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : state_(std::move(value)) {}
  Result(Problem problem) : state_(Problems{std::move(problem)}) {}
  Result(Problems problems) : state_(std::move(problems)) {
    if (this->problems().empty()) throw std::logic_error("a Result without value needs a problem");
  }

  bool ok() const { return std::holds_alternative<T>(state_); }
  explicit operator bool() const { return ok(); }
  /// Throws std::logic_error when there is none: ask `ok()` first.
  const T& value() const& {
    return ok() ? std::get<T>(state_) : throw std::logic_error("Result has no value");
  }
  /// By value, so that a loop over the value of a temporary is sound.
  T value() && {
    return ok() ? std::get<T>(std::move(state_)) : throw std::logic_error("Result has no value");
  }
  const T* operator->() const { return &value(); }
  const T& operator*() const& { return value(); }
  /// Empty exactly when `ok()`.
  const Problems& problems() const {
    static const Problems none;
    return ok() ? none : std::get<Problems>(state_);
  }

 private:
  std::variant<T, Problems> state_;
};

}  // namespace berthwright
