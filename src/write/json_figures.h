#pragma once

#include <optional>

#include <berthwright/solve/load/loads.h>
#include <berthwright/view/words.h>

#include "write/in_json.h"

namespace berthwright {

// Figures as JSON: what findings measure, and spans of loads. As in in_json.h, the caller brings the guest
// in.

template <class Json>
struct QuantityIn {
  Json operator()(Length length) const { return {{"mm", millimetres(length)}}; }
  Json operator()(Area area) const {
    const Int128 micro = area.doubled() / (2 * Int128{ticks_per_mm} * ticks_per_mm / 1000);
    return {{"mm2", static_cast<double>(micro) / 1000.0}};
  }
  Json operator()(const Sides& sides) const {
    return {{"length_mm", millimetres(sides.length)}, {"width_mm", millimetres(sides.width)}};
  }
  Json operator()(const Shares& shares) const {
    return {{"men_thousandths", shares.men}, {"women_thousandths", shares.women}};
  }
  Json operator()(Mass mass) const {
    return {{"kg", static_cast<double>(mass.units()) / (1000.0 * mass_units_per_gram)}};
  }
  Json operator()(Portion portion) const { return {{"thousandths", portion.thousandths}}; }
  Json operator()(Count count) const { return {{"count", count.number}}; }
  Json operator()(const Sag& sag) const {
    return {{"mm", millimetres(sag.depth)}, {"span_mm", millimetres(sag.span)}};
  }
  Json operator()(Degrees degrees) const { return {{"degrees", degrees.number}}; }
};

/// With the words in which it is printed.
template <class Json>
Json quantity_in(const Quantity& value, Unit own, Rounding rounding) {
  Json json = std::visit(QuantityIn<Json>{}, value);
  json["text"] = quantity_text(value, own, rounding);
  return json;
}

/// Whole units divided once, as `millimetres`.
inline double grams(Mass mass) { return static_cast<double>(mass.units()) / mass_units_per_gram; }

template <class Json>
Json grams_in(const std::optional<Mass>& mass) {
  return mass ? Json(grams(*mass)) : Json(nullptr);
}
template <class Json>
Json span_in(const LoadSpan& load) {
  return {{"least_g", grams_in<Json>(load.low)}, {"most_g", grams_in<Json>(load.high)}};
}
template <class Json>
Json span_in(const MassSpan& weight) {
  return span_in<Json>(LoadSpan{weight.least, weight.most});
}
template <class Json>
Json span_in(const LengthSpan& span) {
  return {{"from_mm", millimetres(span.low)}, {"to_mm", millimetres(span.high)}};
}
template <class Json>
Json span_in(const CountSpan& span) {
  return {{"least", span.low}, {"most", span.high}};
}
template <class Json>
Json span_in(const ShareSpan& share) {
  constexpr double hundred = 100;
  return {{"from_percent", static_cast<double>(share.low) / hundred},
          {"to_percent", static_cast<double>(share.high) / hundred}};
}
template <class Json, class Span>
Json span_in(const std::optional<Span>& span) {
  return span ? span_in<Json>(*span) : Json(nullptr);
}

}  // namespace berthwright
