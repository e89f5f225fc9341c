#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/load/loads.h>

namespace berthwright {

// Everything that is said of loads: in a report, in JSON and on the sheet.

/// What the load on the coupling is called: tongue weight or noseweight.
std::string_view coupling_load(English english);

/// "between 12 lb and 15 lb", "at least 12 lb", "12 lb", "unknown": a load is never told lighter than it may
/// be, and one whose least alone is known never heavier.
std::string load_text(const LoadSpan& load, Unit own);
/// The same of room that is left under a limit, never told larger than it is.
std::string left_text(const LoadSpan& left, Unit own);
std::string load_text(const MassSpan& weight, Unit own);
/// The same of a change, with its sign, never told smaller than it is: "+12 lb (5.4 kg)", "an unknown amount
/// more", "an unknown amount".
std::string change_text(const LoadSpan& change, Unit own);
/// "1' 2\" (355.6 mm)", of a span "… to …", rounded outward.
std::string where_text(const LengthSpan& span, Unit own);
/// "12.30 %", "12.30 to 13.01 %"; "9.99 to 10.00 %" of what is just below 10 %.
/// What is one figure is told as its end on the side on which the range ends sooner.
std::string share_text(const ShareSpan& share, const ShareRange& range);
/// "12.5 A", of tenths of an ampere.
std::string amperes_text(std::int64_t tenths);
/// "12.5 A (1500 W)".
std::string current_text(std::int64_t watts, int volts);
/// "11 min 23 s", "1 h 5 min", of seconds rounded to what is told.
std::string duration_text(std::int64_t seconds, Rounding rounding);

/// "With every tank full: ", nothing of tanks as told.
std::string tanks_lead(TankState tanks);
/// "met", "not met", "kept or not, by what is not known".
std::string kept_text(const Plan& plan, Status status);
/// "8.68 % of the whole, compared with 10 to 15 % (…): too little".
std::string share_verdict(const Plan& plan, const Balance& balance);
/// "The left wheels carry 30 lb more than the right ones; compared with 5 % of the axle (…): ".
std::string sides_verdict(const Plan& plan, const Balance& balance);
/// "left for cargo under it 480 lb", "over it by 50 lb".
std::string room_under_plate(const LoadSpan& left, Unit own);

/// Sentences on weight and balance, on the supply and on warming of one configuration, in reading order.
std::vector<std::string> weight_sentences(const Plan& plan, const Loads& loads);
/// Of these, those that say more than bars and their table.
std::vector<std::string> weight_remarks(const Plan& plan, const Loads& loads);
/// That plates are not given, in one sentence; empty: all are.
std::string no_plates_sentence(const Plan& plan);
std::vector<std::string> supply_sentences(const Plan& plan, const Loads& loads);
std::vector<std::string> warm_up_sentences(const Plan& plan, const Loads& loads);
/// Circuit, breaker, what hangs on it and what came of it: a row for each circuit and one for the whole
/// supply.
std::vector<std::vector<std::string>> circuit_cells(const Plan& plan, const SupplyFigures& supply);
/// What no row of circuits tells: what may run together, and what the plan does not say.
std::vector<std::string> supply_remarks(const Plan& plan, const SupplyFigures& supply);
/// Every circuit, and the whole supply, that is over or not known to carry what hangs on it.
std::vector<std::string> open_supply_sentences(const Plan& plan, const SupplyFigures& supply);
/// How long the heaters take that run; one of them has a figure.
std::string time_sentence(const Plan& plan, const WarmUp& warm_up);
/// What it takes to keep the temperature, and whether the heaters that run give that.
std::string hold_sentence(const Plan& plan, const WarmUp& warm_up);
/// The most that may run together.
std::string together_sentence(const Plan& plan, const SupplyFigures& supply);
/// "10 to 15 % (NHTSA …)".
std::string share_range_text(TowingRange of);
/// What all of them suppose, with their sources, as far as it was used; and who comes before these figures.
std::vector<std::string> load_grounds(const Plan& plan, const std::vector<Loads>& all);

/// What all of this is: reckoned, not measured.
std::string_view loads_lead();
/// That the scales decide.
std::string weighing_caution(const Plan& plan);

std::string_view word(WeighedThing::Basis basis);
std::string_view word(TankState tanks);
std::string_view word(LoadVerdict::Kind kind);

}  // namespace berthwright
