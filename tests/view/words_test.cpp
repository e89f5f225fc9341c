#include <berthwright/view/words.h>

#include <gtest/gtest.h>

#include <set>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "support/plan_builder.h"
#include "support/small_trailers.h"

namespace berthwright {
namespace {

struct Pair {
  Term term;
  const char* american;
  const char* british;
};
// design.md 4.17.
constexpr Pair pairs[] = {{Term::trailer, "trailer", "caravan"},
                          {Term::curb_side, "curb side", "nearside"},
                          {Term::street_side, "street side", "offside"},
                          {Term::wheel_arch, "wheel well", "wheel arch"},
                          {Term::cleat, "cleat", "bearer"},
                          {Term::filler, "filler", "infill"},
                          {Term::counter, "counter", "worktop"},
                          {Term::cooktop, "cooktop", "hob"},
                          {Term::outlet, "outlet", "socket"},
                          {Term::locker, "overhead cabinet", "locker"}};

TEST(Words, AreAmericanOrBritish) {
  for (const Pair& pair : pairs) {
    EXPECT_EQ(word(pair.term, English::american), pair.american);
    EXPECT_EQ(word(pair.term, English::british), pair.british);
  }
}

TEST(Words, EveryTermHasBoth) {
  std::set<std::string_view> american;
  std::set<std::string_view> british;
  const int terms = static_cast<int>(Term::information) + 1;
  for (int term = 0; term < terms; ++term) {
    american.insert(word(static_cast<Term>(term), English::american));
    british.insert(word(static_cast<Term>(term), English::british));
  }
  // No two terms share a word, and none is empty.
  EXPECT_EQ(american.size(), static_cast<std::size_t>(terms));
  EXPECT_EQ(british.size(), static_cast<std::size_t>(terms));
  EXPECT_EQ(american.count("") + british.count(""), 0U);
}

TEST(Words, EveryKindOfFixtureHasBoth) {
  std::set<std::string_view> american;
  std::set<std::string_view> british;
  const int kinds = static_cast<int>(Fixture::Kind::wall) + 1;
  for (int kind = 0; kind < kinds; ++kind) {
    american.insert(word(static_cast<Fixture::Kind>(kind), English::american));
    british.insert(word(static_cast<Fixture::Kind>(kind), English::british));
  }
  EXPECT_EQ(american.size(), static_cast<std::size_t>(kinds));
  EXPECT_EQ(british.size(), static_cast<std::size_t>(kinds));
  EXPECT_EQ(american.count("") + british.count(""), 0U);
  EXPECT_EQ(word(Fixture::Kind::wheel_arch, English::british), "wheel arch");
  EXPECT_EQ(word(Fixture::Kind::wheel_arch, English::american), "wheel well");
}

TEST(Words, StatusesAndWeightsHaveWordsOfTheirOwn) {
  std::set<std::string_view> words;
  for (const Status status : {Status::met, Status::close, Status::not_met, Status::unknown})
    words.insert(word(term_of(status), English::american));
  for (const Weight weight : {Weight::alert, Weight::advice, Weight::information})
    words.insert(word(term_of(weight), English::british));
  EXPECT_EQ(words, (std::set<std::string_view>{"met", "close", "not met", "unknown", "alert", "advice",
                                               "information"}));
}

// A trailer with a thing of each kind that has two names; its own names are neither.
std::string printed(const char* english) {
  TrailerText text = two_benches("0", "14");
  int number = 0;
  for (const char* kind : {"counter", "outlet", "locker", "wheel arch"}) {
    ++number;
    text.fixtures.push_back(R"({"id": "x)" + std::to_string(number) + R"(", "name": "X)" +
                            std::to_string(number) + R"(", "kind": ")" + kind +
                            R"(", "length": 4, "width": 4, "base": 30, "top": 34,
                            "at": {"left": 60, "front": )" +
                            std::to_string(number * 10) + "}}");
  }
  std::string json = text.json();
  json.insert(1, R"("english": ")" + std::string(english) + "\", ");
  const Answered made(plan_from(json));
  std::string all = check_text(made.plan, made.answer, {.details = true, .defaults = false});
  for (const Sheet& sheet : sheets(made.plan, made.answer)) all += svg(sheet);
  return all;
}

TEST(Words, ABritishPlanIsToldInBritishWordsAlone) {
  const std::string british = printed("british");
  for (const char* word :
       {"curb", "street side", "wheel well", "cooktop", "overhead cabinet", "local codes", "licensed trades"})
    EXPECT_EQ(british.find(word), std::string::npos) << word;
  EXPECT_NE(british.find("local regulations"), std::string::npos);
}

TEST(Words, AnAmericanPlanIsToldInAmericanWordsAlone) {
  const std::string american = printed("american");
  for (const char* word : {"nearside", "offside", "caravan", "worktop", "infill", "local regulations"})
    EXPECT_EQ(american.find(word), std::string::npos) << word;
  EXPECT_NE(american.find("local codes"), std::string::npos);
}

TEST(Words, TheCautionClaimsNothing) {
  for (const English english : {English::american, English::british}) {
    EXPECT_TRUE(caution_line(english).ends_with('.'));
    EXPECT_NE(caution_line(english).find("not a verdict"), std::string::npos);
  }
}

}  // namespace
}  // namespace berthwright
