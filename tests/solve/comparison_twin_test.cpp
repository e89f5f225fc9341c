#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <map>
#include <memory>
#include <random>

#include <berthwright/solve/comparison.h>

#include "oracle/plain_comparison.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

using oracle::Kept;
using oracle::PlainComparison;
using oracle::PlainFinding;
using oracle::PlainLoad;
using oracle::PlainSide;

/// Numbers of a seed; the same on every machine.
class TwinDice {
 public:
  explicit TwinDice(std::uint32_t seed) : engine_(seed) {}
  int below(int count) { return static_cast<int>(engine_() % static_cast<std::uint32_t>(count)); }
  bool one_in(int count) { return below(count) == 0; }

 private:
  std::mt19937 engine_;
};

/// A room with a bench and its cushion, a heater and a cabinet, a bed by night; what is not said is unknown.
TrailerText twin_plan(TwinDice& dice) {
  const auto number = [&](int least, int count) { return std::to_string(least + dice.below(count)); };
  TrailerText text;
  text.interior = R"({"length": )" + number(118, 3) + R"(, "width": 76, "height": )" + number(74, 2) + "}";
  const std::string cushion = dice.one_in(4) ? "Seat" : "C";
  text.fixtures = {R"({"id": "B", "kind": "bench", "length": 74, "width": 22, "top": )" + number(12, 8) +
                       R"(, "at": {"front": 0, "left": 0}, "weight": ")" + number(8, 2) + R"( lb"})",
                   R"({"id": "O", "kind": "outlet", "length": 1, "width": 3, "at": {"front": 100, "left": 74},
                       "base": 14, "top": 18})"};
  if (dice.one_in(2))
    text.fixtures.push_back(
        R"({"id": "K", "kind": "cabinet", "length": 20, "width": 20, "at": {"front": 90, "left": 0}, "top": 30)" +
        std::string(dice.one_in(3) ? "" : R"(, "weight": "40 lb")") + "}");
  text.pieces = {R"({"id": ")" + cushion +
                     R"(", "kind": "cushion", "length": 74, "width": 22, "thickness": )" + number(3, 3) +
                     R"(, "weight": "9 lb"})",
                 R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 14, "faces": "rear")" +
                     std::string(dice.one_in(3) ? "" : R"(, "watts": )" + number(1, 3) + "00") +
                     (dice.one_in(3) ? "" : R"(, "cord": {"length": ")" + number(2, 5) + R"( ft"})") + "}"};
  const std::string on_bench = R"({"piece": ")" + cushion + R"(", "at": {"front": 0, "left": 0}})";
  text.day = {on_bench, R"({"piece": "H", "at": {"front": )" + number(60, 30) +
                            R"(, "left": 40}, "state": "running", "plugged_into": "O"})"};
  text.night = {on_bench};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": [")" + cushion + R"("]})"};
  constexpr std::array ranges{"us", "uk", "australia"};
  text.more = R"("chassis": {"coupling": 40, "axle": 70, "range": ")" +
              std::string(ranges[static_cast<std::size_t>(dice.below(3))]) + R"(", "limits": {"whole": ")" +
              number(10, 2) + R"(00 lb"}, "weighed": {"coupling": "1)" + number(0, 3) +
              R"(0 lb", "axle": "880 lb"}}, "supply": {"circuits": [{"id": "one", "breaker": )" +
              (dice.one_in(3) ? "2" : "15") + R"(, "feeds": ["O"]}]},
              "warming": {"from": "40 F", "to": "68 F", "outside": "10 F", "insulation": "R-3"}, )";
  if (dice.one_in(3))
    text.rules = {R"("heat.three-feet": {"limit": )" + number(20, 2) + R"(, "reason": "our own choice"})"};
  return text;
}

/// Quantities that are equal have one number.
class TwinNumbers {
 public:
  int of(const std::optional<Quantity>& quantity) { return quantity ? of(std::vector{*quantity}) : -1; }
  int of(const std::vector<Quantity>& quantities) {
    const auto known = std::ranges::find(seen_, quantities);
    if (known != seen_.end()) return static_cast<int>(known - seen_.begin());
    seen_.push_back(quantities);
    return static_cast<int>(seen_.size()) - 1;
  }

 private:
  std::vector<std::vector<Quantity>> seen_;
};

Kept kept_of(Status status) {
  switch (status) {
    case Status::met:
      return Kept::yes;
    case Status::close:
      return Kept::closely;
    case Status::not_met:
      return Kept::no;
    case Status::unknown:
      return Kept::unknown;
  }
  throw std::logic_error("Status out of range");
}

std::string load_name(const LoadFigure& load) {
  return "load " + std::to_string(static_cast<int>(load.tanks)) + ' ' +
         std::to_string(static_cast<int>(load.kind)) + ' ' + load.circuit;
}

struct PlainEnds {
  using Ends = std::vector<std::optional<std::int64_t>>;
  Ends operator()(const LoadSpan& load) const {
    const auto units = [](const std::optional<Mass>& mass) {
      return mass ? std::optional(mass->units()) : std::nullopt;
    };
    return {units(load.low), units(load.high)};
  }
  Ends operator()(const LengthSpan& span) const { return {span.low.ticks(), span.high.ticks()}; }
  Ends operator()(const ShareSpan& share) const {
    return {share.low, share.high, static_cast<std::int64_t>(share.status)};
  }
  Ends operator()(const CountSpan& count) const { return {count.low, count.high}; }
  Ends operator()(AtLeast count) const { return {count.low, std::nullopt}; }
  Ends operator()(Never) const { return {}; }
};

/// One side as the twin takes it; `configuration`: none, the trailer as such.
PlainSide plain_side(const ComparedPlan& of, const Configuration* configuration, TwinNumbers& numbers) {
  PlainSide side;
  const ConfigurationId id = configuration != nullptr ? configuration->id : ConfigurationId();
  for (const Finding& finding : of.answer->findings) {
    if (finding.configuration != id) continue;
    PlainFinding plain;
    plain.rule = finding.rule.text();
    plain.bed = finding.bed.text();
    plain.things = finding.subjects;
    plain.variant = finding.variant;
    plain.kept = kept_of(finding.status);
    plain.measured = numbers.of(finding.measured);
    plain.asked = numbers.of(finding.compared);
    plain.is_own = !finding.override_reason.empty();
    plain.besides = numbers.of(finding.besides);
    if (finding.margin) plain.to_spare = finding.margin->ticks();
    side.findings.push_back(std::move(plain));
  }
  if (configuration == nullptr) {
    const Interior& room = (*of.plan)->interior;
    side.lengths = {room.length.ticks(), room.width.ticks(), room.height.ticks()};
    return side;
  }
  for (const Loads& loads : of.loads) {
    if (loads.configuration != configuration) continue;
    for (const LoadFigure& load : load_figures(*of.plan, loads)) {
      PlainLoad plain{load_name(load), load.value.has_value(), {}, {}};
      if (load.value) plain.ends = std::visit(PlainEnds{}, *load.value);
      if (load.status) plain.kept = kept_of(*load.status);
      if (load.range) plain.range = static_cast<int>(*load.range);
      side.loads.push_back(std::move(plain));
    }
  }
  return side;
}

const char* why_word(ComparedFigure::Because because) {
  switch (because) {
    case ComparedFigure::Because::nothing:
      return "";
    case ComparedFigure::Because::keeps:
      return " keeps";
    case ComparedFigure::Because::less_short:
      return " less short";
    case ComparedFigure::Because::more_to_spare:
      return " more to spare";
    case ComparedFigure::Because::other_limits:
      return " other limits";
  }
  throw std::logic_error("Because out of range");
}

const char* who_word(ComparedFigure::Verdict verdict) {
  switch (verdict) {
    case ComparedFigure::Verdict::first_better:
      return "A";
    case ComparedFigure::Verdict::second_better:
      return "B";
    case ComparedFigure::Verdict::differs:
      return "differs";
    case ComparedFigure::Verdict::unknown:
      return "unknown";
    case ComparedFigure::Verdict::only_first:
      return "only A";
    case ComparedFigure::Verdict::only_second:
      return "only B";
  }
  throw std::logic_error("Verdict out of range");
}

std::string verdict_line(const ComparedFigure& figure) {
  return std::string(who_word(figure.verdict)) + why_word(figure.because);
}

/// Which of the findings of its configuration a finding is.
std::string index_among(const ComparedPlan& of, const std::optional<FigureSide>& side) {
  if (!side) return "-";
  std::size_t index = 0;
  for (const Finding& finding : of.answer->findings) {
    if (&finding == side->finding) return std::to_string(index);
    if (finding.configuration == side->finding->configuration) ++index;
  }
  throw std::logic_error("a finding of nobody");
}

PlainComparison as_told(const Comparison& of, const ComparedPair& pair) {
  PlainComparison told;
  told.alike = pair.alike;
  for (const ComparedFigure& figure : pair.figures) {
    const FigureSide& side = figure.either();
    std::string what;
    if (side.finding != nullptr)
      what = side.finding->rule.text() + ' ' + index_among(*of.first, figure.first) + ' ' +
             index_among(*of.second, figure.second);
    else if (side.load)
      what = load_name(*side.load);
    else
      what = "length " + std::to_string(static_cast<int>(figure.size) - 1);
    told.lines.push_back(what + ' ' + verdict_line(figure));
  }
  std::ranges::sort(told.lines);
  return told;
}

/// Findings as other plans may have them: of another status or limit, by the plan's own number, renamed or
/// gone.
void stir(std::vector<Finding>& findings, TwinDice& dice) {
  std::vector<Finding> kept;
  for (Finding& finding : findings) {
    if (dice.one_in(12)) continue;
    if (dice.one_in(6)) finding.status = static_cast<Status>(dice.below(4));
    if (finding.margin && dice.one_in(6)) *finding.margin = Length::inches(dice.below(5) - 2);
    if (finding.compared && dice.one_in(6)) finding.compared = Length::inches(30 + dice.below(2));
    if (dice.one_in(8)) finding.override_reason = dice.one_in(2) ? "" : "our own choice";
    if (dice.one_in(8) && !finding.subjects.empty()) finding.subjects.front() += dice.one_in(2) ? "x" : "";
    kept.push_back(finding);
    if (dice.one_in(12)) kept.push_back(finding);
    // Several of a rule that meet nothing by name.
    if (!dice.one_in(8)) continue;
    for (int more = 0; more < 3; ++more) {
      finding.subjects = {std::string(1, static_cast<char>('p' + dice.below(8)))};
      if (finding.margin) finding.margin = Length::inches(dice.below(5) - 2);
      kept.push_back(finding);
    }
  }
  std::ranges::shuffle(kept, std::mt19937(static_cast<std::uint32_t>(dice.below(1000))));
  findings = std::move(kept);
}

/// All pairs of configurations of the two, by the twin and by the program.
void expect_like_twin(const ComparedPlan& first, const ComparedPlan& second,
                      const std::vector<std::string>& numbered, std::map<std::string, int>& verdicts) {
  const Comparison of = compared_plans(first, second);
  TwinNumbers numbers;
  int code = 0;
  for (const ComparedPair& pair : of.pairs) {
    const PlainComparison twin = plain_comparison(plain_side(first, pair.first, numbers),
                                                  plain_side(second, pair.second, numbers), numbered);
    const PlainComparison told = as_told(of, pair);
    EXPECT_EQ(told.lines, twin.lines);
    EXPECT_EQ(told.alike, twin.alike);
    for (const ComparedFigure& figure : pair.figures) {
      ++verdicts[verdict_line(figure)];
      code = figure.verdict != ComparedFigure::Verdict::unknown || code == 1 ? 1 : 2;
    }
  }
  EXPECT_EQ(exit_code(of), code);
}

TEST(ComparedPlans, AreWhatTheSlowTwinSays) {
  std::vector<std::string> numbered;
  for (const Rule& rule : all_rules())
    if (rule.limit) numbered.push_back(rule.id.text());
  std::vector<std::unique_ptr<Answered>> plans;
  std::vector<std::vector<Loads>> loads;
  for (std::uint32_t seed = 0; seed < 16; ++seed) {
    TwinDice dice(seed);
    plans.push_back(std::make_unique<Answered>(twin_plan(dice)));
    loads.push_back(loads_of(plans.back()->plan));
  }
  std::map<std::string, int> verdicts;
  TwinDice dice(100);
  for (int round = 0; round < 300; ++round) {
    const auto a = static_cast<std::size_t>(dice.below(16));
    const auto b = static_cast<std::size_t>(dice.below(16));
    Answer first;
    Answer second;
    first.findings = plans[a]->answer.findings;
    second.findings = plans[b]->answer.findings;
    if (round % 3 != 0)
      for (auto* answer : {&first, &second}) stir(answer->findings, dice);
    const ComparedPlan one{&plans[a]->plan, &first, loads[a]};
    const ComparedPlan other{&plans[b]->plan, &second, loads[b]};
    SCOPED_TRACE(std::to_string(round) + ": " + std::to_string(a) + " and " + std::to_string(b));
    expect_like_twin(one, other, numbered, verdicts);
    if (HasFailure()) return;
  }
  for (const char* verdict :
       {"A keeps", "B keeps", "A less short", "B less short", "A more to spare", "B more to spare", "differs",
        "differs other limits", "unknown", "only A", "only B"})
    EXPECT_GT(verdicts[verdict], 20) << verdict;
}

}  // namespace
}  // namespace berthwright
