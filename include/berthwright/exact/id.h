#pragma once

#include <compare>
#include <string>
#include <utility>

namespace berthwright {

/// The name a plan gives to one kind of thing. Ids of different kinds do not mix: a piece is no fixture.
template <class Tag>
class Id {
 public:
  Id() = default;
  explicit Id(std::string text) : text_(std::move(text)) {}
  const std::string& text() const { return text_; }
  bool empty() const { return text_.empty(); }
  friend auto operator<=>(const Id&, const Id&) = default;

 private:
  std::string text_;
};

}  // namespace berthwright
