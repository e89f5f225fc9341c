#include <gtest/gtest.h>

#include <algorithm>
#include <memory>

#include <berthwright/view/words.h>
#include <berthwright/write/outputs.h>

#include "support/demos.h"
#include "support/every_status.h"
#include "support/one_line.h"
#include "support/plan_builder.h"
#include "support/small_trailers.h"

namespace berthwright {
namespace {

using support::on_one_line;

template <class Look>
void for_all_plans(Look look) {
  std::vector<const Answered*> plans;
  for (const std::string& name : demo_names()) plans.push_back(&answered_demo(name));
  for (const auto& made : answers_of_every_status()) plans.push_back(made.get());
  for (const Answered* made : plans) {
    SCOPED_TRACE(made->plan->title.title);
    look(*made);
  }
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines(1);
  for (const char c : text)
    if (c == '\n')
      lines.emplace_back();
    else
      lines.back() += c;
  return lines;
}

std::size_t characters(const std::string& line) {
  return static_cast<std::size_t>(
      std::ranges::count_if(line, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

bool is_one_word(const std::string& line) {
  const std::size_t from = line.find_first_not_of(' ');
  return from == std::string::npos || line.find(' ', from) == std::string::npos;
}

constexpr ReportOptions everything{.details = true, .defaults = true};

void expect_narrow(const Answered& made) {
  for (const ReportOptions options : {ReportOptions{}, everything})
    for (const std::string& line : lines_of(check_text(made.plan, made.answer, options))) {
      EXPECT_TRUE(is_one_word(line) || characters(line) <= 100U) << line;
      EXPECT_FALSE(line.ends_with(' ')) << line;
    }
}

void expect_title_and_caution(const Answered& made) {
  for (const ReportOptions options : {ReportOptions{}, everything}) {
    const std::string text = check_text(made.plan, made.answer, options);
    EXPECT_TRUE(text.starts_with(made.plan->title.title)) << text;
    EXPECT_TRUE(text.ends_with(".\n"));
    EXPECT_TRUE(on_one_line(text).ends_with(" " + std::string(caution_line(made.plan->english)) + " "));
  }
}

TEST(CheckText, TellsEveryAlertThatIsNotMetOrUnknownWithItsCure) {
  std::size_t seen = 0;
  for_all_plans([&](const Answered& made) {
    const std::string text = on_one_line(check_text(made.plan, made.answer));
    std::size_t from = 0;
    for (const Finding& finding : made.answer.findings) {
      const bool open = finding.status == Status::not_met || finding.status == Status::unknown;
      if (!open || find_rule(finding.rule.text())->weight != Weight::alert) continue;
      ++seen;
      const std::string told = sentence(made.plan, finding);
      const std::size_t at = text.find(told, from);
      ASSERT_NE(at, std::string::npos) << told;
      from = at + told.size();  // in the order of the answer
      const std::string cure = cure_sentence(made.plan, finding);
      const std::string before = "ALERT " + cure + (cure.empty() ? "" : " ");
      ASSERT_GE(at, before.size());
      EXPECT_EQ(text.substr(at - before.size(), before.size()), before) << told;
    }
  });
  EXPECT_GT(seen, 10U);
}

// What is met and no alert is only counted, by the title of its rule.
void expect_met_advice_in_short(const Answered& made) {
  const std::string plain = on_one_line(check_text(made.plan, made.answer));
  std::size_t count = 0;
  for (const Finding& finding : made.answer.findings) {
    const Rule& rule = *find_rule(finding.rule.text());
    if (finding.status != Status::met || rule.weight != Weight::advice) continue;
    ++count;
    EXPECT_NE(plain.find(rule.title, plain.find(" Of advice (")), std::string::npos) << rule.title;
  }
  const std::string expected = " Of advice (" + std::to_string(count) + ";";
  EXPECT_EQ(plain.find(expected) != std::string::npos, count > 0) << expected;
}

void expect_count_of_alerts(const Answered& made) {
  const auto alerts = [&](Status status) {
    return std::ranges::count_if(made.answer.findings, [&](const Finding& finding) {
      return finding.status == status && find_rule(finding.rule.text())->weight == Weight::alert;
    });
  };
  const auto not_met = alerts(Status::not_met);
  const std::string verdict = "\n" + std::to_string(not_met) + (not_met == 1 ? " alert" : " alerts") +
                              " not met, " + std::to_string(alerts(Status::unknown)) + " unknown.\n";
  EXPECT_NE(check_text(made.plan, made.answer).find(verdict), std::string::npos) << verdict;
}

void expect_details(const Answered& made) {
  const std::string plain = on_one_line(check_text(made.plan, made.answer));
  const std::string text =
      on_one_line(check_text(made.plan, made.answer, {.details = true, .defaults = false}));
  std::size_t places = 0;
  for (const Finding& finding : made.answer.findings) {
    EXPECT_NE(text.find(sentence(made.plan, finding)), std::string::npos) << sentence(made.plan, finding);
    EXPECT_NE(text.find("rule " + finding.rule.text() + ","), std::string::npos) << finding.rule.text();
    EXPECT_EQ(plain.find("rule " + finding.rule.text() + ","), std::string::npos) << finding.rule.text();
    places += finding.where.size();
  }
  std::size_t told = 0;
  for (std::size_t at = 0; (at = text.find(" from the front, ", at)) != std::string::npos; ++at) ++told;
  EXPECT_GE(told, places);
}

void expect_defaults(const Answered& made) {
  ASSERT_FALSE(made.plan->defaults.empty());
  const std::string text =
      on_one_line(check_text(made.plan, made.answer, {.details = false, .defaults = true}));
  EXPECT_NE(text.find("Defaults applied (" + std::to_string(made.plan->defaults.size()) + ")"),
            std::string::npos);
  for (const AppliedDefault& applied : made.plan->defaults)
    EXPECT_NE(text.find(applied.pointer + ": " + applied.value + " (" + applied.why + ")"), std::string::npos)
        << applied.pointer;
  EXPECT_EQ(check_text(made.plan, made.answer).find("Defaults applied"), std::string::npos);
}

TEST(CheckText, IsNarrowFromTheTitleToTheCaution) {
  for_all_plans([](const Answered& made) {
    expect_narrow(made);
    expect_title_and_caution(made);
    expect_count_of_alerts(made);
    expect_met_advice_in_short(made);
  });
}

TEST(CheckText, AddsDetailsAndDefaultsWhereAskedFor) {
  for_all_plans([](const Answered& made) {
    expect_details(made);
    expect_defaults(made);
  });
}

TEST(CheckText, TellsEveryBedAndEveryPerson) {
  for (const std::string& name : demo_names()) {
    const Answered* const made = &answered_demo(name);
    const std::string text = on_one_line(check_text(made->plan, made->answer));
    for (const Bed& bed : made->plan->beds) {
      EXPECT_NE(text.find(bed.name + " ("), std::string::npos) << bed.name;
      for (const Person& person : bed.people) {
        const std::string tall =
            person.stature ? " (" + both(*person.stature, made->plan->unit) + " tall)" : std::string{};
        EXPECT_NE(text.find(person.name + tall + ": a place "), std::string::npos) << person.name;
      }
    }
  }
}

TEST(CheckText, OfAPlanWithoutBedsSaysSo) {
  TrailerText text = two_benches("0", "14");
  text.beds.clear();
  const Answered made(text);
  EXPECT_NE(check_text(made.plan, made.answer).find("names no bed"), std::string::npos);
}

TEST(CheckText, ALongWordStaysWhole) {
  const std::string long_word(120, 'x');
  TrailerText text = two_benches("0", "14");
  text.pieces[0] = R"({"id": "A", "name": ")" + long_word +
                   R"(", "kind": "cushion", "length": 75, "width": 24, "thickness": 4})";
  text.day = {R"({"piece": "A", "at": {"front": 50, "left": 60}, "on": "floor"})"};  // outside the room
  const Answered made(text);
  EXPECT_NE(check_text(made.plan, made.answer).find(long_word), std::string::npos);
}

}  // namespace
}  // namespace berthwright
