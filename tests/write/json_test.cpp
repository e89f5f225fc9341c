#include <gtest/gtest.h>

#include <algorithm>

#include <nlohmann/json.hpp>

#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>
#include <berthwright/write/outputs.h>

#include "support/demos.h"
#include "support/every_status.h"
#include "support/plan_builder.h"
#include "support/small_trailers.h"

namespace berthwright {
namespace {

using nlohmann::json;

template <class Look>
void for_all_answers(Look look) {
  std::vector<const Answered*> plans;
  for (const std::string& name : demo_names()) plans.push_back(&answered_demo(name));
  for (const auto& made : answers_of_every_status()) plans.push_back(made.get());
  for (const Answered* made : plans) {
    SCOPED_TRACE(made->plan->title.title);
    look(*made, json::parse(check_json(made->plan, made->answer)));
  }
}

/// A number of the JSON as ticks: the test fails where it is no whole count of them.
std::int64_t ticks_of(const json& millimetres) {
  const double ticks = millimetres.get<double>() * ticks_per_mm;
  const auto nearest = static_cast<std::int64_t>(ticks < 0 ? ticks - 0.5 : ticks + 0.5);
  EXPECT_LT(ticks < static_cast<double>(nearest) ? static_cast<double>(nearest) - ticks
                                                 : ticks - static_cast<double>(nearest),
            1e-3);
  return nearest;
}

void expect_same_words(const Plan& plan, const Finding& finding, const json& told) {
  EXPECT_EQ(told["rule"], finding.rule.text());
  EXPECT_EQ(told["status"], word(term_of(finding.status), English::american));
  EXPECT_EQ(told["weight"], word(term_of(find_rule(finding.rule.text())->weight), English::american));
  EXPECT_EQ(told["configuration"], finding.configuration.text());
  EXPECT_EQ(told["bed"], finding.bed.text());
  EXPECT_EQ(told["subjects"], json(finding.subjects));
  EXPECT_EQ(told["variant"], finding.variant);
  EXPECT_EQ(told["sentence"], sentence(plan, finding));
  EXPECT_EQ(told["cure"], cure_sentence(plan, finding));
  EXPECT_EQ(told["source"]["text"], finding.source.text);
  EXPECT_EQ(told["override_reason"], finding.override_reason);
}

// The text beside a number is rounded toward safety, the number itself not at all.
void expect_same_quantity(const std::optional<Quantity>& quantity, const json& told, Unit own,
                          Rounding careful) {
  ASSERT_EQ(told.is_null(), !quantity.has_value());
  if (!quantity) return;
  EXPECT_EQ(told["text"], quantity_text(*quantity, own, careful));
  if (const auto* length = std::get_if<Length>(&*quantity)) {
    EXPECT_EQ(ticks_of(told["mm"]), length->ticks());
  }
  if (const auto* sides = std::get_if<Sides>(&*quantity)) {
    EXPECT_EQ(ticks_of(told["length_mm"]), sides->length.ticks());
    EXPECT_EQ(ticks_of(told["width_mm"]), sides->width.ticks());
  }
}

void expect_same_numbers(const Plan& plan, const Finding& finding, const json& told) {
  const bool at_least = find_rule(finding.rule.text())->at_least;
  expect_same_quantity(finding.measured, told["measured"], plan->unit,
                       at_least ? Rounding::down : Rounding::up);
  expect_same_quantity(finding.compared, told["compared"], plan->unit,
                       at_least ? Rounding::up : Rounding::down);
  EXPECT_EQ(told["margin_mm"].is_null(), !finding.margin.has_value());
  if (finding.margin) {
    EXPECT_EQ(ticks_of(told["margin_mm"]), finding.margin->ticks());
  }
  ASSERT_EQ(told["where"].size(), finding.where.size());
  for (std::size_t i = 0; i < finding.where.size(); ++i) {
    EXPECT_EQ(ticks_of(told["where"][i]["x_mm"]), finding.where[i].plan.x.ticks());
    EXPECT_EQ(ticks_of(told["where"][i]["y_mm"]), finding.where[i].plan.y.ticks());
    EXPECT_EQ(ticks_of(told["where"][i]["z_mm"]), finding.where[i].z.ticks());
  }
}

void expect_beds_people_and_pieces(const Answered& made, const json& told) {
  std::size_t people = 0;
  for (const Bed& bed : made.plan->beds) people += bed.people.size();
  std::size_t people_told = 0;
  for (const json& bed : told["beds"]) people_told += bed["people"].size();
  EXPECT_EQ(told["beds"].size(), made.plan->beds.size());
  EXPECT_EQ(people_told, people);
  ASSERT_EQ(told["configurations"].size(), made.answer.configurations.size());
  for (std::size_t c = 0; c < made.answer.configurations.size(); ++c) {
    EXPECT_EQ(told["configurations"][c]["heat"].size(), made.answer.configurations[c].heat.size());
    const auto laid = std::ranges::count_if(made.answer.configurations[c].arrangement.things,
                                            [](const Placed& thing) { return thing.piece != nullptr; });
    EXPECT_EQ(told["configurations"][c]["pieces"].size(), static_cast<std::size_t>(laid));
  }
}

TEST(CheckJson, HoldsTheWholeAnswerInItsOrder) {
  for_all_answers([](const Answered& made, const json& told) {
    ASSERT_EQ(told["findings"].size(), made.answer.findings.size());
    for (std::size_t i = 0; i < made.answer.findings.size(); ++i) {
      SCOPED_TRACE(made.answer.findings[i].rule.text());
      expect_same_words(made.plan, made.answer.findings[i], told["findings"][i]);
      expect_same_numbers(made.plan, made.answer.findings[i], told["findings"][i]);
    }
    expect_beds_people_and_pieces(made, told);
    EXPECT_EQ(told["exit_code"], exit_code(made.answer));
    EXPECT_EQ(told["defaults"].size(), made.plan->defaults.size());
    EXPECT_EQ(told["caution"], caution_line(made.plan->english));
  });
}

TEST(CheckJson, PrintsTheDecimalsOfALengthAndNoMore) {
  TrailerText text = two_benches("0", "14");
  text.pieces.push_back(R"({"id": "T", "kind": "board", "length": 20, "width": 20, "thickness": "0.703"})");
  text.day = {R"({"piece": "T", "at": {"front": 90, "left": 20}, "on": "floor"})"};
  const Answered made(text);
  const std::string told = check_json(made.plan, made.answer);
  // 0.703 in * 25.4 = 17.8562 mm; 1 tick = 0.000025 mm.
  EXPECT_NE(told.find("\"top_mm\": 17.8562,"), std::string::npos) << told;
  text.pieces.back() =
      R"({"id": "T", "kind": "board", "length": 20, "width": 20, "thickness": "17.856225 mm"})";
  const Answered finer(text);
  EXPECT_NE(check_json(finer.plan, finer.answer).find("\"top_mm\": 17.856225,"), std::string::npos);
}

// What a person may type that another program could obey: markup, the quotes and signs of JSON, writing from
// right to left, signs beyond the 16 bits of old programs, line ends of JavaScript's own.
constexpr const char* hostile_names[] = {"</script><script>alert(1)</script>",
                                         "\"}],\"findings\":[{\"",
                                         "'; DROP TABLE beds; --",
                                         "\\u0022\\",
                                         "&amp;<b>&#34;",
                                         "שלום עולם",
                                         "🛏️🔥",
                                         "]]>",
                                         "<!--",
                                         "%s%n{0}"};

Answered named(const std::string& name) {
  const std::string quoted = json(name).dump();
  TrailerText text = two_benches("0", "17");
  text.pieces[0].insert(1, "\"name\": " + quoted + ", ");
  text.pieces[1].insert(1, "\"name\": " + quoted + ", ");
  text.fixtures[0].insert(1, "\"name\": " + quoted + ", ");
  text.beds[0].insert(1, "\"name\": " + quoted + ", ");
  text.rules = {R"("bed.ridge": {"limit": "1/4", "reason": )" + quoted + "}"};
  std::string plan = text.json();
  plan.replace(plan.find("\"Test\""), 6, quoted + R"(, "shop": )" + quoted + R"(, "owner": )" + quoted);
  return Answered(plan_from(plan));
}

TEST(CheckJson, KeepsHostileNamesAsTheyAre) {
  for (const char* name : hostile_names) {
    SCOPED_TRACE(name);
    const Answered made = named(name);
    const json told = json::parse(check_json(made.plan, made.answer));
    EXPECT_EQ(told["title"], name);
    EXPECT_EQ(told["beds"][0]["name"], name);
    ASSERT_EQ(told["findings"].size(), made.answer.findings.size());
    std::size_t reasons = 0;
    for (const json& finding : told["findings"]) {
      EXPECT_EQ(finding.size(), told["findings"][0].size());
      reasons += finding["override_reason"] == name ? 1U : 0U;
    }
    EXPECT_GT(reasons, 0U);
  }
}

TEST(Svg, TurnsHostileNamesIntoText) {
  for (const char* name : hostile_names) {
    SCOPED_TRACE(name);
    const Answered made = named(name);
    for (const Sheet& sheet : sheets(made.plan, made.answer)) {
      const std::string told = svg(sheet);
      EXPECT_EQ(told.find("<script"), std::string::npos);
      EXPECT_EQ(told.find("<b>"), std::string::npos);
      EXPECT_EQ(told.find("<!--"), std::string::npos);
      EXPECT_EQ(told.find("]]>"), std::string::npos);
    }
  }
}

TEST(CheckText, LetsNoNameCommandTheTerminal) {
  for (const char* name : hostile_names) {
    SCOPED_TRACE(name);
    const Answered made = named(name);
    const std::string text = check_text(made.plan, made.answer, {.details = true, .defaults = true});
    for (const char c : text) EXPECT_TRUE(c == '\n' || static_cast<unsigned char>(c) >= 0x20);
  }
}

}  // namespace
}  // namespace berthwright
