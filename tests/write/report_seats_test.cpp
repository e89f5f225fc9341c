#include "write/report_seats.h"

#include <gtest/gtest.h>

#include <berthwright/write/outputs.h>

#include "support/one_line.h"
#include "support/seat_trailers.h"

namespace berthwright {
namespace {

using support::on_one_line;

std::string seats_of(const TrailerText& text) {
  const Answered made(text);
  return on_one_line(seats_part(made.plan, made.answer));
}

void expect_holds(const std::string& text, const std::string& part) {
  EXPECT_NE(text.find(part), std::string::npos) << '"' << part << "\" is not in: " << text;
}

// The booth of tests/solve/seat/seats_test.cpp. Of the survey (ANSUR II, raw shares) at 18 in with shoes of
// 25 mm: 45.5 % of men and 3.6 % of women with flat feet; the model says 46 and 3.
TEST(SeatsPart, TellsASeatInAFewLines) {
  const std::string told = seats_of(booth({}));
  for (const char* part :
       {"A (day): people sit 1' 6\" (457.2 mm) above the floor; the feet of 46 % of men, 3 % of women",
        "Faces the rear; 1' 7\" (482.6 mm) deep, 3' 6\" (1066.8 mm) long, room for 1 person at 24\" (609.6 "
        "mm) or "
        "2 people at 21\" (533.4 mm) each. The back rises 1' 2 1/2\" (368.3 mm).",
        "Head room to the roof: 4' 10\" (1473.2 mm); 100 % of men, 100 % of women sit upright.",
        "table: top 11 1/2\" (292.1 mm) above the seat, 10 3/4\" (274.2 mm) of room for thighs.",
        "D (day):", "Faces the front"})
    expect_holds(told, part);
}

TEST(SeatsPart, SaysWhatIsNotThere) {
  expect_holds(seats_of(booth({.back = ""})), "No back cushion.");
  expect_holds(seats_of(seats_of_every_status().back()), "Which way one sits the plan does not show.");
  expect_holds(seats_of(booth({.bench_width = "20"})), "too short for 1 person at 21\" (533.4 mm)");
  expect_holds(seats_of(booth({.bench_width = "48"})), "room for 2 people at 24\" (609.6 mm) each.");
  expect_holds(seats_of(booth({.more = {box("locker", "locker", {"0", "0", "14", "42", "48", "64"})}})),
               "Head room to locker: 2' 6\" (762 mm); 0 % of men, 0 % of women sit upright.");
  EXPECT_EQ(seats_of(booth({.bench_top = "4"})), "");
}

TEST(SeatsPart, StandsInTheCheckAndTakesTheirNumberOfPeopleFromTheFindings) {
  const Answered made(booth({}));
  const std::string plain = check_text(made.plan, made.answer);
  EXPECT_NE(plain.find("\nSeats, their cushions pressed 1\" (25.4 mm) by who sits\n"), std::string::npos);
  EXPECT_EQ(plain.find("asked for each"), std::string::npos);
  EXPECT_NE(check_text(made.plan, made.answer, {.details = true, .defaults = false}).find("asked for each"),
            std::string::npos);
}

}  // namespace
}  // namespace berthwright
