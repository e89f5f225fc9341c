#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/solve/answer.h>
#include <berthwright/solve/load/load_figures.h>

namespace berthwright {

/// A plan with all that is compared of it; points to what must outlive every comparison of it.
struct ComparedPlan {
  const Plan* plan = nullptr;
  const Answer* answer = nullptr;
  std::vector<Loads> loads{};
};

/// One figure as one side has it: by a rule of the check, of the loads, or the room's own.
struct FigureSide {
  const Finding* finding = nullptr;
  std::optional<LoadFigure> load{};
  std::optional<Length> length{};

  bool is_known() const;
};

/// A figure that the two sides do not have alike, or that is unknown, be it on both sides.
struct ComparedFigure {
  enum class Verdict {
    first_better,
    second_better,
    differs,     ///< no rule says which is better
    unknown,     ///< one of them, or both, are not known: neither is better
    only_first,  ///< the other has no such figure
    only_second
  };
  /// Why one is better, or neither.
  enum class Because {
    nothing,
    keeps,          ///< it keeps the rule, or by more than closely; the other does not
    less_short,     ///< neither keeps it, this one is nearer to it
    more_to_spare,  ///< both keep it, and the rule has no counterpart on the other side
    other_limits    ///< neither is better: they were compared with different numbers
  };
  enum class Size { no_size, length, width, height };
  Size size = Size::no_size;  ///< of the room, where `length` is compared
  std::optional<FigureSide> first;
  std::optional<FigureSide> second;
  Verdict verdict = Verdict::differs;
  Because because = Because::nothing;

  /// Whichever side has it.
  const FigureSide& either() const { return first ? *first : *second; }
};

/// Two configurations side by side; none: what holds for the whole trailer.
struct ComparedPair {
  const Configuration* first = nullptr;
  const Configuration* second = nullptr;
  std::vector<ComparedFigure> figures;  ///< by weight and rule, then loads; all but those that are alike
  std::size_t alike = 0;                ///< how many figures both have alike, and known
};

/// Everything that differs. Turned round, sides and verdicts change places and nothing else does.
struct Comparison {
  const ComparedPlan* first = nullptr;
  const ComparedPlan* second = nullptr;
  std::vector<ComparedPair> pairs;
  std::vector<ConfigurationId> only_first{};  ///< configurations that the other plan lacks
  std::vector<ConfigurationId> only_second{};
};

/// The trailers as such, then every configuration that both have by name; of `only`, where it is not empty,
/// just these. Figures meet by rule, bed, things and variant; what is left of a rule then meets worst with
/// worst, as other plans name their things otherwise.
Comparison compared_plans(const ComparedPlan& first, const ComparedPlan& second,
                          const std::vector<ConfigurationId>& only = {});
/// The comparison points into what is compared.
Comparison compared_plans(const ComparedPlan&&, const ComparedPlan&,
                          const std::vector<ConfigurationId>& = {}) = delete;
Comparison compared_plans(const ComparedPlan&, const ComparedPlan&&,
                          const std::vector<ConfigurationId>& = {}) = delete;
/// Two configurations of one plan.
Comparison compared_configurations(const ComparedPlan& plan, const Configuration& first,
                                   const Configuration& second);
Comparison compared_configurations(const ComparedPlan&&, const Configuration&, const Configuration&) = delete;

/// 0: nothing differs; 1: something does; 2: nothing does that is known, but a figure is unknown.
int exit_code(const Comparison& comparison);

/// Whether more to spare is better by the rule, as far as it is kept: it has a number, and no other rule
/// limits the same measure from the other side.
bool has_one_way(const Rule& rule);

}  // namespace berthwright
