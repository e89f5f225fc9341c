#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/load/loads.h>

namespace berthwright {

// Everything that is said of loads: in a report, in JSON and on the sheet.

/// What the load on the coupling is called: tongue weight or noseweight.
std::string_view coupling_load(English english);

/// "between 12 lb and 15 lb", "at least 12 lb", "12 lb", "unknown".
std::string load_text(const LoadSpan& load, Unit own);
std::string load_text(const MassSpan& weight, Unit own);
/// The same of a change, with its sign: "+12 lb (5.4 kg)", "an unknown amount more", "an unknown amount".
std::string change_text(const LoadSpan& change, Unit own);
/// "1' 2\" (355.6 mm)", of a span "… to …", rounded outward.
std::string where_text(const LengthSpan& span, Unit own);
/// "12.30 %", "12.30 to 13.01 %"; "9.99 to 10.00 %" of what is just below 10 %.
std::string share_text(const ShareSpan& share);
/// "12.5 A", of tenths of an ampere.
std::string amperes_text(std::int64_t tenths);
/// "12.5 A (1500 W)".
std::string current_text(std::int64_t watts, int volts);
/// "11 min 23 s", "1 h 5 min", of seconds rounded to what is told.
std::string duration_text(std::int64_t seconds, Rounding rounding);

/// Sentences on weight and balance, on the supply and on warming of one configuration, in reading order.
std::vector<std::string> weight_sentences(const Plan& plan, const Loads& loads);
std::vector<std::string> supply_sentences(const Plan& plan, const Loads& loads);
std::vector<std::string> warm_up_sentences(const Plan& plan, const Loads& loads);
/// The most that may run together.
std::string together_sentence(const Plan& plan, const SupplyFigures& supply);
/// "10 to 15 % (NHTSA …)".
std::string share_range_text(TowingRange of);
/// What all of them suppose, with their sources, as far as it was used; and who comes before these figures.
std::vector<std::string> load_grounds(const Plan& plan, const std::vector<Loads>& all);

std::string_view word(WeighedThing::Basis basis);
std::string_view word(TankState tanks);
std::string_view word(LoadVerdict::Kind kind);

}  // namespace berthwright
