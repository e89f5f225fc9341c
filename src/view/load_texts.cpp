#include <stdexcept>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/load_words.h"

namespace berthwright {

std::string_view coupling_load(English english) {
  return english == English::american ? "tongue weight" : "noseweight";
}

std::string load_text(const LoadSpan& load, Unit own) {
  if (load.is_known()) return mass_text(*load.high, own, Rounding::up);
  if (load.low && load.high)
    return "between " + mass_text(*load.low, own, Rounding::down) + " and " +
           mass_text(*load.high, own, Rounding::up);
  if (load.low) return "at least " + mass_text(*load.low, own, Rounding::down);
  if (load.high) return "at most " + mass_text(*load.high, own, Rounding::up);
  return "unknown";
}

std::string left_text(const LoadSpan& left, Unit own) {
  const auto text = [&](Mass mass) { return mass_text(mass, own, Rounding::down); };
  if (left.is_known()) return text(*left.low);
  if (left.low && left.high) return "between " + text(*left.low) + " and " + text(*left.high);
  if (left.low) return "at least " + text(*left.low);
  return left.high ? "at most " + text(*left.high) : "unknown";
}

std::string load_text(const MassSpan& weight, Unit own) {
  // Everything weighs at least nothing.
  if (weight.least == Mass{} && !weight.most) return "unknown";
  return load_text(LoadSpan{weight.least, weight.most}, own);
}

std::string change_text(const LoadSpan& change, Unit own) {
  const auto with_sign = [&](Mass mass, Rounding rounding) {
    return (mass < Mass{} ? "" : "+") + mass_text(mass, own, rounding);
  };
  if (change.is_known())
    return *change.low < Mass{} ? with_sign(*change.low, Rounding::down)
                                : with_sign(*change.high, Rounding::up);
  if (change.low && change.high)
    return with_sign(*change.low, Rounding::down) + " to " + with_sign(*change.high, Rounding::up);
  if (change.low == Mass{}) return "an unknown amount more";
  if (change.high == Mass{}) return "an unknown amount less";
  if (change.low) return "at least " + with_sign(*change.low, Rounding::down);
  if (change.high) return "at most " + with_sign(*change.high, Rounding::up);
  return "an unknown amount";
}

std::string where_text(const LengthSpan& span, Unit own) {
  if (span.high - span.low <= one_tick) return both(span.low, own);
  return both(span.low, own, {.rounding = Rounding::down}) + " to " +
         both(span.high, own, {.rounding = Rounding::up});
}

std::string share_range_text(TowingRange of) {
  const ShareRange& range = share_range(of);
  return std::to_string(range.least) + " to " + std::to_string(range.most) + " % (" +
         source_text(range.source) + ")";
}

std::string share_text(const ShareSpan& share, const ShareRange& range) {
  const auto percent = [](std::int64_t ten_thousandths) {
    const std::int64_t size = ten_thousandths < 0 ? -ten_thousandths : ten_thousandths;
    return (ten_thousandths < 0 ? "-" : "") + std::to_string(size / 100) + "." +
           std::to_string(100 + size % 100).substr(1);
  };
  // Beside a whole percent both ends are told: it may be the end of a range.
  const bool is_beside_whole = share.low != share.high && (share.low % 100 == 0 || share.high % 100 == 0);
  const bool is_low = share.low + share.high < (range.least + range.most) * std::int64_t{100};
  if (share.high - share.low <= 1 && !is_beside_whole) return percent(is_low ? share.low : share.high) + " %";
  return percent(share.low) + " to " + percent(share.high) + " %";
}

std::string_view word(WeighedThing::Basis basis) {
  switch (basis) {
    case WeighedThing::Basis::stated:
      return "stated";
    case WeighedThing::Basis::panel:
      return "panel";
    case WeighedThing::Basis::plywood:
      return "plywood";
    case WeighedThing::Basis::foam:
      return "foam";
    case WeighedThing::Basis::water:
      return "water";
    case WeighedThing::Basis::unknown:
      return "unknown";
  }
  throw std::logic_error("Basis out of range");
}

std::string_view word(TankState tanks) {
  switch (tanks) {
    case TankState::as_told:
      return "as told";
    case TankState::empty:
      return "empty";
    case TankState::full:
      return "full";
  }
  throw std::logic_error("TankState out of range");
}

std::string_view word(LoadVerdict::Kind kind) {
  switch (kind) {
    case LoadVerdict::Kind::share:
      return "share on the coupling";
    case LoadVerdict::Kind::sides:
      return "side to side";
    case LoadVerdict::Kind::whole_limit:
      return "plate of the whole";
    case LoadVerdict::Kind::axle_limit:
      return "plate of the axle";
    case LoadVerdict::Kind::coupling_limit:
      return "plate of the coupling";
    case LoadVerdict::Kind::supply:
      return "supply";
  }
  throw std::logic_error("LoadVerdict::Kind out of range");
}

}  // namespace berthwright
