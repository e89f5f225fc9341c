#include <berthwright/view/words.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <memory>
#include <set>

#include <berthwright/exact/measure.h>

#include "support/demos.h"
#include "support/every_status.h"
#include "support/plan_builder.h"
#include "support/small_trailers.h"

namespace berthwright {
namespace {

constexpr std::array statuses{Status::met, Status::close, Status::not_met, Status::unknown};

std::string in_english(std::string json, std::string_view english) {
  const std::string title = R"("title": "Test",)";
  return json.insert(json.find(title), "\"english\": \"" + std::string(english) + "\", ");
}

using Plans = std::vector<std::unique_ptr<const Answered>>;

const Plans& british_plans() {
  static const Plans plans = [] {
    Plans made;
    for (const TrailerText& text : plans_of_every_status())
      made.push_back(std::make_unique<const Answered>(plan_from(in_english(text.json(), "british"))));
    return made;
  }();
  return plans;
}

// Every rule in every status it can have, in both Englishes, and every demo.
std::vector<const Answered*> all_plans() {
  std::vector<const Answered*> all;
  for (const Plans* plans : {&answers_of_every_status(), &british_plans()})
    for (const auto& made : *plans) all.push_back(made.get());
  for (const std::string& name : demo_names()) all.push_back(&answered_demo(name));
  return all;
}

template <class Look>
void for_all_findings(const std::vector<const Answered*>& plans, Look look) {
  for (const Answered* made : plans)
    for (const Finding& finding : made->answer.findings) {
      SCOPED_TRACE(made->plan->title.title + ", " + finding.rule.text() + ", " +
                   std::string(word(term_of(finding.status), English::american)) + ": " +
                   sentence(made->plan, finding));
      look(made->plan, finding);
    }
}

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> words(1);
  for (const char c : text)
    if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'))
      words.back() += static_cast<char>(c | 0x20);
    else
      words.emplace_back();
  return words;
}

// No verdict may be read out of a sentence, and nothing may be left of how it was put together.
void expect_plain_sentence(const std::string& text) {
  ASSERT_FALSE(text.empty());
  EXPECT_TRUE(text.ends_with('.')) << text;
  for (const char* start : {"the ", "in ", "by ", "over ", "how "})
    EXPECT_FALSE(text.starts_with(start)) << text;
  for (const char* rest : {"something", "no figure", "  ",  "()", "( ", " )",  ";;",  " ;",   " ,", " .",
                           "..",        ",,",        ", ;", ",;", ";,", ": ;", ": .", "null", "{",  "}"})
    EXPECT_EQ(text.find(rest), std::string::npos) << '"' << rest << "\" in: " << text;
  const std::vector<std::string> words = words_of(text);
  for (const char* claim :
       {"safe", "unsafe", "approved", "complies", "compliant", "certified", "guaranteed", "ok", "okay"})
    EXPECT_EQ(std::ranges::count(words, claim), 0) << claim << " in: " << text;
  for (const char* slip : {"ways out that counts", "has 1 ways"})
    EXPECT_EQ(text.find(slip), std::string::npos) << text;
}

void expect_holds(const std::string& text, const std::string& part) {
  EXPECT_NE(text.find(part), std::string::npos) << "\"" << part << "\" is not in: " << text;
}

// The measure of an "at least" is printed low and what it is compared with high; an "at most" the other way.
std::string measured_text(const Plan& plan, const Finding& finding) {
  const bool at_least = find_rule(finding.rule.text())->at_least;
  // A person too long for the place is told by how much, which is more, not less.
  if (const auto* length = std::get_if<Length>(&*finding.measured); length != nullptr && *length < Length{})
    return quantity_text(-*length, plan->unit, Rounding::up);
  return quantity_text(*finding.measured, plan->unit, at_least ? Rounding::down : Rounding::up);
}
std::string compared_text(const Plan& plan, const Finding& finding) {
  const bool at_least = find_rule(finding.rule.text())->at_least;
  return quantity_text(*finding.compared, plan->unit, at_least ? Rounding::up : Rounding::down);
}

// "Nothing reaches outside" was compared with no reach at all: there is no number to name.
bool is_nothing(const std::optional<Quantity>& quantity) {
  return !quantity || *quantity == Quantity(Length{});
}

TEST(Sentences, AndCuresArePlainForEveryRuleStatusAndEnglish) {
  std::set<std::string> rules;
  std::set<Cure::Kind> cures;
  for_all_findings(all_plans(), [&](const Plan& plan, const Finding& finding) {
    rules.insert(finding.rule.text());
    expect_plain_sentence(sentence(plan, finding));
    EXPECT_EQ(cure_sentence(plan, finding).empty(), !finding.cure.has_value());
    if (finding.cure) {
      expect_plain_sentence(cure_sentence(plan, finding));
      cures.insert(finding.cure->kind);
    }
    if (finding.subjects.empty()) return;  // there is nothing of which another status could be told
    for (const Status status : statuses) {
      Finding turned = finding;
      turned.status = status;
      expect_plain_sentence(sentence(plan, turned));
    }
  });
  EXPECT_EQ(rules.size(), all_rules().size());
  EXPECT_GE(cures.size(), 6U);
}

void expect_measure(const Plan& plan, const Finding& finding) {
  if (!is_nothing(finding.measured)) expect_holds(sentence(plan, finding), measured_text(plan, finding));
}

void expect_comparison(const Plan& plan, const Finding& finding) {
  if (is_nothing(finding.measured) || is_nothing(finding.compared)) return;
  const std::string told = sentence(plan, finding);
  expect_holds(told, find_rule(finding.rule.text())->at_least ? "at least " : "at most ");
  expect_holds(told, compared_text(plan, finding));
  expect_holds(told, source_text(finding.source));
}

void expect_shortfall(const Plan& plan, const Finding& finding) {
  if (is_nothing(finding.compared) || !finding.margin || *finding.margin >= Length{}) return;
  const bool at_least = find_rule(finding.rule.text())->at_least;
  expect_holds(sentence(plan, finding), (at_least ? "short by " : "over by ") +
                                            both(-*finding.margin, plan->unit, {.rounding = Rounding::up}));
}

TEST(Sentences, NameTheMeasureTheNumberTheSourceAndWhatIsMissing) {
  std::size_t measured = 0;
  std::size_t compared = 0;
  std::size_t missed = 0;
  for_all_findings(all_plans(), [&](const Plan& plan, const Finding& finding) {
    expect_measure(plan, finding);
    expect_comparison(plan, finding);
    expect_shortfall(plan, finding);
    measured += is_nothing(finding.measured) ? 0U : 1U;
    compared += is_nothing(finding.compared) ? 0U : 1U;
    missed += finding.margin && *finding.margin < Length{} ? 1U : 0U;
  });
  EXPECT_GT(measured, 500U);
  EXPECT_GT(compared, 400U);
  EXPECT_GT(missed, 50U);
}

// A plan that puts its own number in place of every rule's: the reason stands wherever one was compared with.
TEST(Sentences, ShowThePlansOwnNumberWithItsReason) {
  Plans plans;
  for (TrailerText text : plans_of_every_status()) {
    for (const Rule& rule : all_rules())
      if (rule.limit)
        text.rules.push_back('"' + rule.id.text() + R"(": {"limit": ")" +
                             exact_text(*rule.limit + Length::inches(1, 8), Unit::inch) +
                             R"(", "reason": "told by )" + rule.id.text() + "\"}");
    plans.push_back(std::make_unique<const Answered>(text));
  }
  std::vector<const Answered*> all;
  for (const auto& made : plans) all.push_back(made.get());
  std::set<std::string> rules;
  for_all_findings(all, [&](const Plan& plan, const Finding& finding) {
    if (finding.override_reason.empty() || is_nothing(finding.measured) || !finding.compared) return;
    rules.insert(finding.rule.text());
    expect_plain_sentence(sentence(plan, finding));
    expect_holds(sentence(plan, finding), finding.override_reason);
    expect_holds(sentence(plan, finding), compared_text(plan, finding));
  });
  EXPECT_GE(rules.size(), 15U);
}

TEST(Sentences, CallThingsByTheNamesThePlanGivesThem) {
  for (const std::string& name : demo_names()) {
    const Answered& made = answered_demo(name);
    for (const Finding& finding : made.of("heat.three-feet")) {
      const std::string told = sentence(made.plan, finding);
      const Piece* heater = made.plan.piece(finding.subjects.front());
      if (heater != nullptr) expect_holds(told, heater->name);
      if (!finding.bed.empty()) expect_holds(told, made.plan.bed(finding.bed.text())->name);
    }
  }
}

TEST(Sentences, ASentenceForARuleThatIsNoneIsOurOwnFault) {
  const Answered made(two_benches("0", "14"));
  Finding finding;
  finding.rule = RuleId("heat.nonsense");
  EXPECT_THROW(sentence(made.plan, finding), std::logic_error);
}

// Whether the sentence of a cure names its length; a new kind is a fault of the compiler's here.
bool names_a_length(Cure::Kind kind) {
  switch (kind) {
    case Cure::Kind::raise:
    case Cure::Kind::lower:
    case Cure::Kind::move_apart:
    case Cure::Kind::widen:
    case Cure::Kind::lengthen:
    case Cure::Kind::broaden:
    case Cure::Kind::shorten:
    case Cure::Kind::pad:
    case Cure::Kind::bridge:
    case Cure::Kind::bring_nearer:
    case Cure::Kind::add_guard_rail:
    case Cure::Kind::shift:
    case Cure::Kind::keep_clear:
    case Cure::Kind::lay_cushion:
    case Cure::Kind::thicken:
    case Cure::Kind::heighten:
    case Cure::Kind::cut_down:
    case Cure::Kind::raise_underside:
    case Cure::Kind::repack:
      return true;
    case Cure::Kind::carry_at:  // names a height
    case Cure::Kind::set_aside:
    case Cure::Kind::rehang:
    case Cure::Kind::as_told:
    case Cure::Kind::none:
    case Cure::Kind::stow_heater:
    case Cure::Kind::state_plate:
    case Cure::Kind::state_measure:
    case Cure::Kind::state_cord:
    case Cure::Kind::state_faces:
    case Cure::Kind::state_panel:
    case Cure::Kind::state_grain:
    case Cure::Kind::state_foam:
    case Cure::Kind::turn_grain:
    // Printed in full, or rounded down: see their own test.
    case Cure::Kind::real_thickness:
    case Cure::Kind::bear_between:
      return false;
  }
  return false;
}

// A panel of 0.703 in must not come out as 11/16; a span that must not be exceeded must not come out longer.
TEST(Cures, OfBoardsNameAThicknessInFullAndASpanRoundedDown) {
  const Answered made(two_benches("0", "14"));
  Finding finding = made.of("room.inside").front();
  finding.cure = Cure{Cure::Kind::real_thickness, "A", Length::inches(703, 1000)};
  expect_holds(cure_sentence(made.plan, finding), "0.703 in");
  finding.cure = Cure{Cure::Kind::bear_between, "A", 27_in - one_tick};
  expect_holds(cure_sentence(made.plan, finding), "longer than 2' 2 15/16\" (685.7 mm).");
  finding.cure->panel = "48/24";
  expect_holds(cure_sentence(made.plan, finding), "or cut it from 48/24 with the grain the same way.");
}

TEST(Cures, SayWhichSideAndAwayFromWhat) {
  const Answered made(two_benches("0", "14"));
  Finding finding = made.of("room.inside").front();
  finding.cure = Cure{.kind = Cure::Kind::widen, .subject = "A", .by = 1_in, .side = Wall::right};
  EXPECT_EQ(cure_sentence(made.plan, finding), "Make A broader by 1\" (25.4 mm) on its right side.");
  finding.cure->kind = Cure::Kind::shorten;
  EXPECT_EQ(cure_sentence(made.plan, finding), "Take 1\" (25.4 mm) off A on its right side.");
  finding.cure = Cure{.kind = Cure::Kind::move_apart, .subject = "B", .by = 1_in};
  EXPECT_EQ(cure_sentence(made.plan, finding), "Move B into the room by 1\" (25.4 mm).");
  finding.rule = RuleId("room.overlap");
  finding.subjects = {"A", "B"};
  EXPECT_EQ(cure_sentence(made.plan, finding), "Move B away from A by 1\" (25.4 mm).");
}

TEST(Cures, EachKindHasASentenceOfItsOwn) {
  TrailerText text = two_benches("0", "14");
  text.pieces.back() = R"({"id": "H", "name": "Box heater", "kind": "heater", "length": 8, "width": 10,
                           "height": 15, "faces": "rear"})";
  const Answered made(text);
  // Of one and the same finding, but for the kinds that each rule has words of its own for.
  const auto rule_of = [](Cure::Kind kind) {
    return kind == Cure::Kind::state_measure ? "cord.reach"
           : kind == Cure::Kind::none        ? "seat.head-room"
           : kind == Cure::Kind::as_told     ? "seat.knee-depth"
                                             : "room.inside";
  };
  Finding finding = made.of("room.inside").front();
  std::set<std::string> told;
  const int kinds = static_cast<int>(Cure::Kind::none) + 1;
  for (int number = 0; number < kinds; ++number) {
    const auto kind = static_cast<Cure::Kind>(number);
    // 3/8 in and one tick: a cure is rounded up, or it would not cure.
    finding.rule = RuleId(rule_of(kind));
    finding.cure = Cure{kind, "H", Length::inches(3, 8) + one_tick};
    finding.cure->to = 14_in;
    if (kind == Cure::Kind::shift || kind == Cure::Kind::rehang) finding.cure->side = Wall::rear;
    const std::string cure = cure_sentence(made.plan, finding);
    expect_plain_sentence(cure);
    told.insert(cure);
    if (names_a_length(kind)) expect_holds(cure, "7/16\" (9.6 mm)");
    if (kind != Cure::Kind::add_guard_rail) expect_holds(cure, "Box heater");
  }
  EXPECT_EQ(told.size(), static_cast<std::size_t>(kinds));
}

// A ledge at 12.797 in carries a board of 0.703 in beside a bench 14 in high: its top belongs 0.5 in higher,
// at 13.297 in. No sixteenth says that.
TEST(Cures, NameTheHeightOfALedgeExactlyAndWhatMovesWithIt) {
  const Answered made(two_benches("0", "14"));
  Finding finding = made.of("room.inside").front();
  finding.cure = Cure{
      Cure::Kind::raise, "left bench", Length::inches(1, 2), Length::inches(13297, 1000), {"right bench"}};
  EXPECT_EQ(cure_sentence(made.plan, finding),
            "Make left bench and right bench higher by 1/2\" (12.7 mm), to 13.297 in above the floor.");
  finding.cure->alike = {"right bench", "A"};
  EXPECT_TRUE(cure_sentence(made.plan, finding).starts_with("Make left bench, right bench and A higher by"));
}

}  // namespace
}  // namespace berthwright
