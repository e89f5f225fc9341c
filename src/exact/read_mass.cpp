#include <berthwright/exact/mass.h>

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "exact/code_points.h"
#include "exact/spelling.h"

namespace berthwright {
namespace {

constexpr std::size_t most_mass_decimals = 9;
constexpr std::size_t most_mass_digits = 12;

constexpr std::array<std::pair<std::u32string_view, std::int64_t>, 11> units{{
    {U"lb", mass_units_per_pound},
    {U"lbs", mass_units_per_pound},
    {U"pound", mass_units_per_pound},
    {U"pounds", mass_units_per_pound},
    {U"kg", 1000 * mass_units_per_gram},
    {U"kilogram", 1000 * mass_units_per_gram},
    {U"kilograms", 1000 * mass_units_per_gram},
    {U"kilogrammes", 1000 * mass_units_per_gram},
    {U"g", mass_units_per_gram},
    {U"gram", mass_units_per_gram},
    {U"grams", mass_units_per_gram},
}};

class MassText {
 public:
  explicit MassText(std::string_view text) : text_(text), characters_(code_points(text)) {}

  Result<Mass> read(Unit bare) {
    if (characters_.broken) {
      at_ = *characters_.broken;
      return refused("mass.encoding", "the text is not UTF-8", "save the text as UTF-8");
    }
    skip_blanks();
    if (at_ == characters_.text.size()) {
      at_ = 0;
      return refused("mass.empty", "no weight is written here", "write it with its unit, as in 150 lb");
    }
    if (is_dash(next()))
      return refused("mass.negative", "a weight cannot be negative", "take the minus sign away");
    const std::size_t first = at_;
    if (const auto problem = take_number()) return *problem;
    skip_blanks();
    const std::optional<std::int64_t> unit = take_unit(bare);
    if (!unit)
      return refused("mass.unit", "the unit of this weight is not known",
                     "write lb, kg or g after a whole or decimal number");
    if (const std::optional<Mass> mass = weighed(*unit)) return *mass;
    at_ = first;
    return refused("mass.too-large", "this weighs more than 20 tonnes", "check the weight and its unit");
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
            .allowed = "a weight such as \"150 lb\", \"68.5 kg\" or \"350 g\", with at most nine decimals",
            .cure = cure};
  }

  void take_digit() {
    if (!huge_) number_ = number_ * 10 + static_cast<std::int64_t>(next() - U'0');
    ++at_;
  }

  std::optional<Problem> take_number() {
    const std::size_t first = at_;
    for (std::size_t digits = 0; is_digit(next()); take_digit())
      huge_ = huge_ || (number_ > 0 && ++digits == most_mass_digits);
    if (next() == U',')
      return refused("mass.comma", "a comma cannot stand in a weight", "write a decimal point");
    bool any = at_ > first;
    if (next() == U'.') {
      ++at_;
      any = is_digit(next());
      for (; is_digit(next()); ++decimals_, take_digit())
        if (decimals_ == most_mass_decimals)
          return refused("mass.decimals", "a weight has at most nine decimals", "round it to nine decimals");
    }
    if (any) return std::nullopt;
    return refused("mass.not-a-mass", "digits are expected here",
                   "write the weight as a number, as in 150 lb");
  }

  /// Nothing when more or something else follows the number.
  std::optional<std::int64_t> take_unit(Unit bare) {
    std::u32string rest = characters_.text.substr(at_);
    while (!rest.empty() && is_blank(rest.back())) rest.pop_back();
    if (rest.empty()) return bare == Unit::inch ? mass_units_per_pound : 1000 * mass_units_per_gram;
    for (char32_t& c : rest)
      if (c >= U'A' && c <= U'Z') c += U'a' - U'A';
    const auto found =
        std::ranges::find(units, std::u32string_view(rest), [](const auto& u) { return u.first; });
    return found == units.end() ? std::nullopt : std::optional(found->second);
  }

  /// Nothing beyond `heaviest`. The number is below 10^21 and a unit below 10^9.
  std::optional<Mass> weighed(std::int64_t unit) const {
    Int128 parts = 1;
    for (std::size_t i = 0; i < decimals_; ++i) parts *= 10;
    const Int128 count = rounded(number_ * unit, parts, Rounding::nearest);
    if (huge_ || count > heaviest.units()) return std::nullopt;
    return Mass::from_units(static_cast<std::int64_t>(count));
  }

  std::string_view text_;
  CodePoints characters_;
  std::size_t at_ = 0;
  Int128 number_ = 0;
  std::size_t decimals_ = 0;
  bool huge_ = false;
};

}  // namespace

Result<Mass> read_mass(std::string_view text, Unit bare) { return MassText(text).read(bare); }

}  // namespace berthwright
