#include <gtest/gtest.h>

#include <map>
#include <set>
#include <vector>

#include <berthwright/view/words.h>

#include "support/every_status.h"
#include "support/mended.h"
#include "support/odd_plans.h"

namespace berthwright {
namespace {

bool is_open(const Finding& finding) {
  return finding.status == Status::not_met || finding.status == Status::unknown;
}

std::string told_of(const Answered& made, const Finding& finding) {
  return finding.rule.text() + ": " + cure_sentence(made.plan, finding) + " " + sentence(made.plan, finding);
}

template <class Look>
void for_all_open_findings(Look look) {
  for (const auto* list : {&answers_of_every_status(), &answers_that_say_more()})
    for (const auto& made : *list)
      for (const Finding& finding : made->answer.findings)
        if (is_open(finding)) look(*made, finding);
}

TEST(Cures, WhateverIsNotMetOrUnknownHasOne) {
  std::size_t found = 0;
  for_all_open_findings([&](const Answered& made, const Finding& finding) {
    ++found;
    EXPECT_TRUE(finding.cure.has_value()) << told_of(made, finding);
  });
  EXPECT_GT(found, 500U);
}

enum class Outcome { not_shown, open, mended };

// "Away" is kept by one of the ways away.
Outcome outcome_of(const Answered& made, const Finding& finding) {
  Outcome outcome = Outcome::not_shown;
  for (const Away away :
       {Away::straight, Away::front, Away::rear, Away::left, Away::right, Away::up, Away::down}) {
    const std::optional<Plan> plan = mended(made, finding, away);
    if (!plan) continue;
    if (!still_open(Answered(*plan), finding)) return Outcome::mended;
    outcome = Outcome::open;
    if (finding.cure->kind != Cure::Kind::move_apart) break;
  }
  return outcome;
}

// Done to the plan and checked again, the first of each kind in each rule.
TEST(Cures, MendWhatTheySayWhenTheyAreDone) {
  std::map<std::pair<std::string, Cure::Kind>, int> tried;
  std::set<Cure::Kind> held;
  for_all_open_findings([&](const Answered& made, const Finding& finding) {
    if (!finding.cure || ++tried[{finding.rule.text(), finding.cure->kind}] > 1) return;
    const Outcome outcome = outcome_of(made, finding);
    EXPECT_TRUE(outcome != Outcome::open) << told_of(made, finding);
    if (outcome == Outcome::mended) held.insert(finding.cure->kind);
  });
  using Kind = Cure::Kind;
  for (const Kind kind : {Kind::shift, Kind::set_aside, Kind::keep_clear, Kind::carry_at, Kind::lay_cushion,
                          Kind::thicken, Kind::heighten, Kind::cut_down, Kind::raise_underside, Kind::rehang,
                          Kind::repack, Kind::move_apart, Kind::widen, Kind::shorten, Kind::lengthen,
                          Kind::broaden, Kind::raise, Kind::lower, Kind::stow_heater})
    EXPECT_TRUE(held.contains(kind)) << static_cast<int>(kind);
}

}  // namespace
}  // namespace berthwright
