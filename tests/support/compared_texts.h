#pragma once

#include <string_view>

#include <berthwright/solve/comparison.h>

#include "support/trailer_text.h"

namespace berthwright::support {

/// Two small plans and their comparison: by day, or of the configurations named; none: of everything.
struct ComparedTexts {
  ComparedTexts(const TrailerText& a, const TrailerText& b,
                const std::vector<ConfigurationId>& only = {ConfigurationId("day")})
      : first(a),
        second(b),
        one{&first.plan, &first.answer, loads_of(first.plan)},
        other{&second.plan, &second.answer, loads_of(second.plan)},
        of(compared_plans(one, other, only)) {}
  ComparedTexts(const ComparedTexts&) = delete;
  ComparedTexts& operator=(const ComparedTexts&) = delete;

  /// The first figure of that rule that is not alike; throws where there is none.
  const ComparedFigure& figure(std::string_view rule) const;
  const ComparedFigure& figure(LoadFigure::Kind kind) const;

  Answered first;
  Answered second;
  ComparedPlan one;
  ComparedPlan other;
  Comparison of;
};

/// A heater of 10 x 10 in, `front` behind the front wall, a cushion of 20 in at that wall before it; with
/// rules of the plan's own.
TrailerText heater_before_cushion(int front, const std::vector<std::string>& own_rules = {});

/// A trailer with a cabinet of that weight (empty: nobody says), of which the scales say so much; `more` of
/// the chassis.
TrailerText weighed_cabinet(const std::string& weight, const std::string& coupling = "120 lb",
                            const std::string& axle = "880 lb", const std::string& more = "");

/// A heater on a circuit of 15 A, its watts (empty: nobody says), in a room to be warmed from 40 to 68 °F
/// where it is 10 °F outside.
TrailerText warming_heater(const std::string& watts);

}  // namespace berthwright::support
