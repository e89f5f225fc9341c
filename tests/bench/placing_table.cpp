// What placing reaches beside what is best known, one line an instance. Lines that stand in the file of
// results already are not measured again, so that a run that was ended goes on; without the file all begins
// anew. Usage: berthwright_placing_table FILE [ROUNDS]
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <functional>
#include <iostream>
#include <map>
#include <sstream>
#include <string>

#include <berthwright/solve/place/placing.h>
#include <berthwright/solve/place/sheet_worth.h>
#include <berthwright/solve/place/strip.h>

#include "support/placed_case.h"

namespace berthwright {
namespace {

struct Measured {
  std::int64_t found = 0;
  std::int64_t bound = 0;
  bool sound = true;  ///< the worth of one sheet is a number, with nothing to be checked
};

struct BenchCase {
  std::string name;
  std::string best;  ///< known; "-": nobody's
  std::function<Measured()> measure;
};

Length units(std::int64_t count) { return Length::from_ticks(count); }

Measured worth_of(int length, int width, const std::vector<WorthyPart>& parts) {
  const SheetWorth result = most_worth(units(length), units(width), parts);
  return {result.worth, result.bound};
}
WorthyPart worthy(int length, int width, std::int64_t worth, std::optional<std::size_t> most = {}) {
  return {units(length), units(width), worth, most};
}
WorthyPart by_area(int length, int width, std::optional<std::size_t> most = {}) {
  return worthy(length, width, std::int64_t{length} * width, most);
}

// Sources of sizes, worths and optima: tests/solve/place/sheet_worth_test.cpp.
std::vector<BenchCase> worth_cases() {
  return {
      {"cgcut1, worth of one sheet", "244",
       [] {
         return worth_of(15, 10,
                         {worthy(8, 4, 66, 2), worthy(3, 7, 35, 1), worthy(8, 2, 24, 3), worthy(3, 4, 17, 5),
                          worthy(3, 3, 11, 2), worthy(3, 2, 8, 2), worthy(2, 1, 2, 1)});
       }},
      {"cgcut2, worth of one sheet", "2892",
       [] {
         return worth_of(
             40, 70,
             {worthy(21, 22, 582, 1), worthy(31, 13, 403, 1), worthy(9, 35, 315, 3), worthy(9, 24, 216, 3),
              worthy(30, 7, 210, 2), worthy(11, 13, 143, 3), worthy(10, 14, 140, 1), worthy(14, 8, 110, 3),
              worthy(12, 8, 94, 3), worthy(13, 7, 90, 3)});
       }},
      {"gcut1, worth of one sheet", "56460",
       [] {
         return worth_of(
             250, 250,
             {by_area(167, 184), by_area(114, 118), by_area(167, 152), by_area(83, 140), by_area(70, 86),
              by_area(143, 166), by_area(120, 160), by_area(66, 148), by_area(87, 141), by_area(69, 165)});
       }},
      {"Herz, worth of one sheet", "12348", [] {
         return worth_of(
             127, 98, {by_area(21, 13), by_area(36, 17), by_area(54, 20), by_area(24, 27), by_area(18, 65)});
       }}};
}

std::vector<BenchCase> job_cases(std::size_t rounds) {
  std::vector<BenchCase> cases;
  for (unsigned seed = 1; seed <= 20; ++seed) {
    const std::size_t parts = 10 + seed * 37 % 51;
    for (const CutManner manner : {CutManner::through, CutManner::free}) {
      const std::string name = "job " + std::to_string(seed) + ", " + std::to_string(parts) + " parts, " +
                               (manner == CutManner::through ? "through" : "free");
      cases.push_back({name, "-", [=] {
                         PlacingTask task = generated_job(seed, parts);
                         task.manner = manner;
                         const Placing placing = placed(task, {.rounds = rounds});
                         const bool sound = oracle::cut_faults(checked_case(task, placing)).empty() &&
                                            placing.unplaced.empty();
                         return Measured{placing.cost, placing.bound, sound};
                       }});
    }
  }
  return cases;
}

/// A strip of Hopper & Turton (2001), whose parts fill it without waste.
struct StripSet {
  std::string name;
  std::int64_t width = 0;
  std::int64_t best = 0;
  std::vector<StripPart> parts{};
};
std::vector<StripSet> strip_sets() {
  std::vector<StripSet> sets;
  std::ifstream in(BERTHWRIGHT_STRIPS);
  for (std::string line; std::getline(in, line);) {
    std::istringstream words(line);
    std::string kind;
    std::int64_t wide = 0;
    std::int64_t high = 0;
    std::int64_t count = 0;
    words >> kind;
    if (kind == "INSTANCE") words >> sets.emplace_back().name;
    if (kind == "BIN") words >> sets.back().width >> sets.back().best;
    if (kind == "ITEM" && words >> wide >> high >> count)
      sets.back().parts.insert(sets.back().parts.end(), static_cast<std::size_t>(count),
                               {units(high), units(wide)});
  }
  return sets;
}

// Ten times the rounds of a job: about a minute for the largest.
std::vector<BenchCase> strip_cases(std::size_t rounds) {
  std::vector<BenchCase> cases;
  for (const StripSet& set : strip_sets())
    for (const bool turns : {true, false})
      cases.push_back({set.name + ", strip, " + (turns ? "turned" : "fixed"), std::to_string(set.best), [=] {
                         std::vector<StripPart> parts = set.parts;
                         for (StripPart& part : parts) part.turns = turns;
                         const StripPlacing placing = placed_on_strip(units(set.width), parts, 10 * rounds);
                         const bool sound =
                             oracle::cut_faults(checked_strip(units(set.width), parts, placing)).empty();
                         return Measured{placing.length.ticks(), placing.bound.ticks(), sound};
                       }});
  return cases;
}

std::map<std::string, std::string> lines_in(const std::string& file) {
  std::map<std::string, std::string> lines;
  std::ifstream in(file);
  for (std::string line; std::getline(in, line);) lines[line.substr(0, line.find('\t'))] = line;
  return lines;
}

double gap_of(const Measured& measured) {
  const double most = static_cast<double>(std::max(measured.found, measured.bound));
  const double least = static_cast<double>(std::min(measured.found, measured.bound));
  return least > 0 ? 100 * (most - least) / least : 0;
}

std::string line_of(const BenchCase& one) {
  const auto begin = std::chrono::steady_clock::now();
  const Measured measured = one.measure();
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
  char numbers[96];
  std::snprintf(numbers, sizeof numbers, "\t%lld\t%lld\t%.2f %%\t%.2f s\t%s",
                static_cast<long long>(measured.found), static_cast<long long>(measured.bound),
                gap_of(measured), took.count(), measured.sound ? "sound" : "FAULTY");
  return one.name + "\t" + one.best + numbers;
}

int run_table(const std::string& file, std::size_t rounds) {
  std::vector<BenchCase> cases = worth_cases();
  for (BenchCase& job : job_cases(rounds)) cases.push_back(std::move(job));
  for (BenchCase& strip : strip_cases(rounds)) cases.push_back(std::move(strip));
  const std::map<std::string, std::string> known = lines_in(file);
  std::ofstream out(file, std::ios::app);
  std::cout << "instance\tbest known\tfound\tbound\tgap\ttime\tchecked\n";
  std::map<std::string, std::pair<double, int>> gaps;
  for (const BenchCase& one : cases) {
    const auto there = known.find(one.name);
    const std::string line = there != known.end() ? there->second : line_of(one);
    std::cout << line << std::endl;
    if (there == known.end()) out << line << std::endl;
    if (one.name.find("sheet") != std::string::npos) continue;
    std::string rest = line;
    for (int field = 0; field < 4; ++field) rest = rest.substr(rest.find('\t') + 1);
    auto& [sum, count] = gaps[one.name.substr(one.name.rfind(' ') + 1)];
    sum += std::stod(rest);
    ++count;
  }
  for (const auto& [manner, gap] : gaps)
    std::cout << "mean gap to the bound, " << manner << ": " << gap.first / gap.second << " %\n";
  return 0;
}

}  // namespace
}  // namespace berthwright

int main(int count, char** arguments) {
  if (count < 2) return 64;
  return berthwright::run_table(arguments[1], count > 2 ? std::stoul(arguments[2]) : 20'000);
}
