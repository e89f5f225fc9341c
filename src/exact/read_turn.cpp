#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>

#include <berthwright/exact/angle.h>

#include "exact/code_points.h"
#include "exact/turn_text.h"

namespace berthwright {
namespace {

constexpr std::size_t most_turn_decimals = 6;
constexpr std::size_t most_turn_digits = 9;

class TurnText {
 public:
  explicit TurnText(std::string_view text) : text_(text), characters_(code_points(text)) {}

  Result<std::int64_t> read() {
    if (characters_.broken) {
      at_ = *characters_.broken;
      return refused("turn.encoding", "the text is not UTF-8", "save the text as UTF-8");
    }
    skip_blanks();
    if (at_ == characters_.text.size()) {
      at_ = 0;
      return refused("turn.empty", "no angle is written here", "write degrees, as in 12.5");
    }
    const bool negative = is_dash(next());
    if (negative || next() == U'+') ++at_;
    if (const auto problem = take_number()) return *problem;
    skip_blanks();
    take_unit();
    skip_blanks();
    if (at_ < characters_.text.size())
      return refused("turn.unit", "only \"deg\" or \"°\" may follow the number",
                     "write degrees, as in 12.5 deg");
    return negative ? -microdegrees_ : microdegrees_;
  }

 private:
  char32_t next() const { return at_ < characters_.text.size() ? characters_.text[at_] : U'\0'; }

  void skip_blanks() {
    while (is_blank(next())) ++at_;
  }

  Problem refused(const char* id, const char* message, const char* cure) const {
    return {.id = id,
            .pointer = {},
            .line = 0,
            .column = at_ + 1,
            .message = message,
            .found = printable(text_),
            .allowed = "an angle in decimal degrees, such as 12.5, with at most six decimals",
            .cure = cure};
  }

  void take_digit() {
    microdegrees_ = microdegrees_ * 10 + static_cast<std::int64_t>(next() - U'0');
    ++at_;
  }

  std::optional<Problem> take_number() {
    const std::size_t first = at_;
    for (std::size_t digits = 0; is_digit(next()); take_digit()) {
      if (microdegrees_ > 0 && ++digits == most_turn_digits)
        return refused("turn.too-large", "this angle is too large", "write an angle below 360");
    }
    if (next() == U',')
      return refused("turn.comma", "a comma cannot stand in an angle", "write a decimal point");
    bool any = at_ > first;
    std::size_t decimals = 0;
    if (next() == U'.') {
      ++at_;
      any = is_digit(next());
      for (; is_digit(next()); ++decimals, take_digit())
        if (decimals == most_turn_decimals)
          return refused("turn.decimals", "an angle has at most six decimals", "round it to six decimals");
    }
    if (!any) return refused("turn.not-a-turn", "digits are expected here", "write degrees, as in 12.5");
    for (; decimals < most_turn_decimals; ++decimals) microdegrees_ *= 10;
    return std::nullopt;
  }

  void take_unit() {
    const std::u32string_view rest = std::u32string_view(characters_.text).substr(at_);
    std::size_t end = 0;
    while (end < rest.size() && !is_blank(rest[end])) ++end;
    const std::u32string_view unit = rest.substr(0, end);
    if (unit == U"deg" || unit == U"degree" || unit == U"degrees" || unit == U"°") at_ += end;
  }

  std::string_view text_;
  CodePoints characters_;
  std::size_t at_ = 0;
  std::int64_t microdegrees_ = 0;
};

}  // namespace

Result<std::int64_t> read_microdegrees(std::string_view text) { return TurnText(text).read(); }

Result<Turn> read_turn(std::string_view text) {
  const Result<std::int64_t> angle = read_microdegrees(text);
  if (!angle) return angle.problems();
  return Turn::degrees(*angle);
}

}  // namespace berthwright
