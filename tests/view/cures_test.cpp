#include <gtest/gtest.h>

#include <algorithm>
#include <array>
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

bool is_open_alert(const Finding& finding) {
  return finding.status == Status::not_met && find_rule(finding.rule.text())->weight == Weight::alert;
}

// Of the alerts the worst, by rule: with the thing they are about a new one counts, and one that became
// worse.
std::map<std::string, Length> open_alerts(const Answered& made) {
  std::map<std::string, Length> worst;
  for (const Finding& finding : made.answer.findings) {
    if (!is_open_alert(finding)) continue;
    const std::string name = finding.rule.text() + " " + finding.configuration.text() + " " +
                             (finding.subjects.empty() ? std::string{} : finding.subjects.front());
    const Length margin = finding.margin.value_or(Length{});
    const auto [at, is_new] = worst.emplace(name, margin);
    if (!is_new) at->second = std::min(at->second, margin);
  }
  return worst;
}

std::string worse(const Answered& before, const Answered& after) {
  const std::map<std::string, Length> had = open_alerts(before);
  for (const auto& [name, margin] : open_alerts(after)) {
    const auto known = had.find(name);
    if (known == had.end() || margin < known->second) return name;
  }
  return {};
}

// Cures that ask something else to give way.
bool asks_others(const Finding& finding) {
  using Kind = Cure::Kind;
  constexpr std::array kinds{Kind::shift, Kind::shorten, Kind::set_aside, Kind::keep_clear, Kind::move_apart};
  const std::string& rule = finding.rule.text();
  return finding.cure && std::ranges::find(kinds, finding.cure->kind) != kinds.end() &&
         (rule.starts_with("way.") || rule.starts_with("leaf.") || rule == "seat.way-in" ||
          rule == "cord.plug-room");
}

// For comfort or a way nobody is asked to bring heat nearer, take a guard or what bears a bed away.
TEST(Cures, TradeNoDangerForAnother) {
  std::size_t done = 0;
  for_all_open_findings([&](const Answered& made, const Finding& finding) {
    if (!asks_others(finding)) return;
    std::string found = "nothing was done";
    for (const Away away : {Away::straight, Away::front, Away::rear, Away::left, Away::right}) {
      const std::optional<Plan> plan = mended(made, finding, away);
      if (!plan) continue;
      found = worse(made, Answered(*plan));
      ++done;
      if (found.empty() || finding.cure->kind != Cure::Kind::move_apart) break;
    }
    EXPECT_TRUE(found.empty() || found == "nothing was done") << found << ": " << told_of(made, finding);
  });
  EXPECT_GT(done, 20U);
}

}  // namespace
}  // namespace berthwright
