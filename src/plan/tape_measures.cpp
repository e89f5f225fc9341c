#include <algorithm>
#include <map>
#include <utility>

#include <berthwright/exact/measure.h>

#include "plan/document.h"
#include "plan/in_quotes.h"
#include "plan/nearest_name.h"
#include "plan/tape_reading.h"

namespace berthwright {
namespace {

/// The measures without what the plan says of them. Each stands where the first of its lengths stands.
std::vector<TapeMeasure> plain_measures(const Node& root, std::span<const SpelledMeasure> lengths) {
  std::vector<TapeMeasure> measures;
  std::map<std::string, std::string> same;  // pointer of a length → of the one it is the same as
  for (const SpelledMeasure& one : lengths) {
    std::string other = same_measure_as(root, lengths, one);
    if (other != one.origin.pointer) same.emplace(one.origin.pointer, std::move(other));
  }
  const auto head = [&](std::string pointer) {
    for (auto next = same.find(pointer); next != same.end(); next = same.find(pointer)) {
      if (next->second == pointer) break;
      pointer = next->second;
    }
    return pointer;
  };
  const auto with = [&](const std::string& pointer) {
    return std::ranges::find_if(
        measures, [&](const TapeMeasure& measure) { return measure.pointers.front() == pointer; });
  };
  for (const SpelledMeasure& one : lengths)
    if (!same.contains(one.origin.pointer))
      if (std::optional<NamedLength> named = named_length(root, one)) {
        TapeMeasure measure;
        measure.name = std::move(named->name);
        measure.pointers = {named->pointer};
        measure.kind = named->kind;
        measure.length = named->length;
        measure.origin = named->origin;
        measures.push_back(std::move(measure));
      }
  for (const SpelledMeasure& one : lengths) {
    if (!same.contains(one.origin.pointer)) continue;
    const auto measure = with(head(one.origin.pointer));
    if (measure == measures.end()) continue;
    measure->pointers.push_back(one.origin.pointer);
    if (const std::optional<NamedLength> named = named_length(root, one))
      measure->also.push_back(named->name);
  }
  return measures;
}

/// How well a name fits a measure: 2 by its own name or pointer, 1 by its thing, 0 not at all.
int fit(const std::string& name, const TapeMeasure& measure) {
  int best = 0;
  const auto compare = [&](const std::string& own) {
    if (own == name) best = 2;
    if (best == 0 && own.starts_with(name + "/")) best = 1;
  };
  compare(measure.name);
  for (const std::string& other : measure.also) compare(other);
  for (const std::string& pointer : measure.pointers) compare(pointer);
  return best;
}

void report_unknown(const TapeEntry& entry, const std::vector<TapeMeasure>& measures, Reading& faults) {
  std::vector<std::string> names;
  for (const TapeMeasure& measure : measures) {
    names.push_back(measure.name);
    names.insert(names.end(), measure.also.begin(), measure.also.end());
  }
  std::optional<std::string> near = nearest_name(entry.name, names);
  const std::size_t slash = entry.name.find('/');
  if (!near && slash != std::string::npos) {
    // The thing may be known and its field not, or the other way round.
    std::vector<std::string> things;
    std::vector<std::string> fields;
    for (const std::string& name : names) {
      things.push_back(name.substr(0, name.find('/')));
      if (name.starts_with(entry.name.substr(0, slash + 1))) fields.push_back(name);
    }
    near = nearest_name(entry.name.substr(0, slash), things);
    if (near) *near += entry.name.substr(slash);
    if (near && std::ranges::find(names, *near) == names.end())
      near = fields.empty() ? std::nullopt : std::optional(fields.front());
  }
  faults.add(entry.origin, {.id = "tape.unknown",
                            .message = "no measure of this plan is called " + in_quotes(entry.name),
                            .found = in_quotes(entry.name),
                            .allowed = "a thing and its field, as \"" + names.front() +
                                       "\", or a thing alone for all its measures",
                            .cure = near ? "write \"" + *near + '"'
                                         : "look the thing up in the plan: its id, a slash, the field"});
}

void report_twice(const TapeEntry& first, const TapeEntry& second, Reading& faults) {
  const bool same =
      first.tolerance == second.tolerance && first.state == second.state && first.as_built == second.as_built;
  faults.add(second.origin, {.id = "tape.twice",
                             .message = "this measure stands here a second time" +
                                        std::string(same ? "" : ", and the two contradict each other"),
                             .found = in_quotes(second.name),
                             .allowed = "one entry for a measure; the first stands in line " +
                                        std::to_string(first.origin.line),
                             .cure = same ? "take one away" : "keep the one that was measured last"});
}

void report_too_loose(const TapeEntry& entry, const TapeMeasure& measure, Reading& faults) {
  const bool zero = measure.length == Length{};
  faults.add(
      entry.tolerance_origin,
      {.id = "tape.larger-than-measure",
       .message = zero ? in_quotes(measure.name) + " is 0: two things touch there, and nothing can be off"
                       : "the tolerance is as large as " + in_quotes(measure.name) + " itself, or larger",
       .found = exact_text(*entry.tolerance, faults.unit),
       .allowed = zero ? "0" : "less than " + exact_text(measure.length, faults.unit),
       .cure = zero ? "write how far apart they may be as the distance, or take the tolerance away"
                    : "check both; what may as well be nothing is not measured"});
}

/// Entries for a thing count where none is for the measure itself.
void take_entries(const TapeWishes& wishes, std::vector<TapeMeasure>& measures, Reading& faults) {
  std::vector<const TapeEntry*> said(measures.size());
  std::vector<int> fits(measures.size());
  for (const TapeEntry& entry : wishes.entries) {
    bool known = false;
    for (std::size_t i = 0; i < measures.size(); ++i) {
      const int fitting = fit(entry.name, measures[i]);
      if (fitting == 0) continue;
      known = true;
      if (fitting == fits[i]) report_twice(*said[i], entry, faults);
      if (fitting <= fits[i]) continue;
      said[i] = &entry;
      fits[i] = fitting;
    }
    if (!known && !measures.empty() && !entry.name.empty()) report_unknown(entry, measures, faults);
  }
  for (std::size_t i = 0; i < measures.size(); ++i) {
    TapeMeasure& measure = measures[i];
    const TapeEntry* entry = said[i];
    measure.state = entry != nullptr && entry->state ? *entry->state : wishes.state;
    if (entry != nullptr) measure.as_built = entry->as_built;
    const bool own = entry != nullptr && entry->tolerance;
    if (own && (fits[i] == 2 || measure.length > Length{}) && *entry->tolerance > Length{} &&
        *entry->tolerance >= measure.length)
      report_too_loose(*entry, measure, faults);
    Length tolerance = wishes.tolerances[static_cast<std::size_t>(measure.kind)];
    if (measure.state == TapeState::checked) tolerance = std::min(tolerance, wishes.checked);
    measure.tolerance = own ? *entry->tolerance : std::min(tolerance, half(measure.length));
    if (measure.length == Length{}) measure.tolerance = Length{};
  }
}

}  // namespace

std::vector<TapeMeasure> taped_measures(const Node& root, std::span<const SpelledMeasure> lengths,
                                        const TapeWishes& wishes, Reading& faults) {
  std::vector<TapeMeasure> measures = plain_measures(root, lengths);
  take_entries(wishes, measures, faults);
  return measures;
}

}  // namespace berthwright
