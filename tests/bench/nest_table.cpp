#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include <berthwright/solve/place/nesting.h>

#include "oracle/nest_apart.h"

// Published sets of free outlines, nested and held against the best published densities. What was measured is
// kept in a file, one line a set, and not measured again: stop and go on as you like.
namespace {

using namespace berthwright;

struct Arguments {
  std::filesystem::path data;
  std::filesystem::path kept = "nesting.csv";
  double seconds = 20;       // of a clock: turned into an effort by a trial run; or
  std::uint64_t effort = 0;  // so many places looked at
  std::uint64_t seed = 1;
  bool two_threads = false;
  std::vector<std::string> sets{};  // none: all
  std::string budget() const {
    std::string words = effort > 0 ? std::to_string(effort) : std::to_string(static_cast<int>(seconds)) + "s";
    return words + (two_threads ? "x2" : "") + "/" + std::to_string(seed);
  }
};

struct OutlineSet {
  std::string name;
  NestStock stock;
  std::vector<NestPart> parts;
};

// A unit of the set is so many ticks that the strip is about 2^20 wide: 26 mm.
OutlineSet read_set(const std::filesystem::path& path) {
  const auto json = nlohmann::json::parse(std::ifstream(path));
  const auto width = json.at("strip_width").get<double>();
  const auto scale = static_cast<std::int64_t>(1048576 / width);
  const auto length = [&](const nlohmann::json& number) {
    return Length::from_ticks(static_cast<std::int64_t>(number.get<double>()) * scale);
  };
  OutlineSet set{json.at("name").get<std::string>(), {length(json.at("strip_width"))}, {}};
  for (const auto& item : json.at("items")) {
    std::vector<Point> corners;
    for (const auto& corner : item.at("polygon")) corners.push_back({length(corner[0]), length(corner[1])});
    NestPart part{Polygon::checked(corners).value(), item.at("quantity").get<std::size_t>(), {}};
    for (const auto& degrees : item.at("rotations"))
      part.turns.push_back(Turn::degrees(static_cast<std::int64_t>(degrees.get<double>() * 1e6)));
    set.parts.push_back(std::move(part));
  }
  return set;
}

std::map<std::string, double> read_best(const std::filesystem::path& path) {
  std::map<std::string, double> best;
  std::ifstream file(path);
  for (std::string line; std::getline(file, line);) {
    std::vector<std::string> fields;
    std::istringstream words(line);
    for (std::string field; std::getline(words, field, ',');) fields.push_back(field);
    if (fields.size() > 7 && line.front() != '#' && fields[0] != "instance")
      best[fields[0]] = std::stod(fields[7]);
  }
  return best;
}

bool is_proven(const OutlineSet& set, const Nesting& nesting) {
  std::vector<oracle::NestRings> rings;
  for (const NestedPart& laid : nesting.laid) {
    auto& ring = rings.emplace_back().emplace_back();
    const Region lies = laid.lies(set.parts[laid.part].outline);
    for (const Point& p : lies.faces().front().outer.vertices()) ring.push_back({p.x.ticks(), p.y.ticks()});
    if (!oracle::nest_lies_in(rings.back(), {0, 0}, {nesting.length.ticks(), set.stock.width.ticks()}))
      return false;
    for (std::size_t other = 0; other + 1 < rings.size(); ++other)
      if (oracle::nest_interiors_meet(rings[other], rings.back())) return false;
  }
  std::size_t count = 0;
  for (const NestPart& part : set.parts) count += part.count;
  return rings.size() == count;
}

double seconds_of(const OutlineSet& set, const NestLimits& limits, Nesting& nesting) {
  const auto start = std::chrono::steady_clock::now();
  nesting = nested(set.parts, set.stock, limits);
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

// "name budget density seconds places"
std::string measured(const OutlineSet& set, const Arguments& arguments) {
  NestLimits limits{.effort = arguments.effort, .seed = arguments.seed, .two_threads = arguments.two_threads};
  Nesting nesting;
  if (limits.effort == 0) {
    limits.effort = 4'000'000;
    const double trial = seconds_of(set, limits, nesting);
    limits.effort = static_cast<std::uint64_t>(arguments.seconds / trial * 4e6);
  }
  const double seconds = seconds_of(set, limits, nesting);
  std::ostringstream line;
  line << set.name << ' ' << arguments.budget() << ' '
       << (is_proven(set, nesting) ? nesting.density() * 100 : 0) << ' ' << seconds << ' ' << nesting.effort;
  return line.str();
}

std::string kept_line(const Arguments& arguments, const std::string& name) {
  std::ifstream file(arguments.kept);
  const std::string start = name + ' ' + arguments.budget() + ' ';
  for (std::string line; std::getline(file, line);)
    if (line.starts_with(start)) return line;
  return {};
}

Arguments read_arguments(const std::vector<std::string>& words) {
  Arguments arguments;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const auto value = [&] { return words.at(++i); };
    if (words[i] == "--seconds")
      arguments.seconds = std::stod(value());
    else if (words[i] == "--effort")
      arguments.effort = std::stoull(value());
    else if (words[i] == "--seed")
      arguments.seed = std::stoull(value());
    else if (words[i] == "--two-threads")
      arguments.two_threads = true;
    else if (words[i] == "--keep")
      arguments.kept = value();
    else if (arguments.data.empty())
      arguments.data = words[i];
    else
      arguments.sets.push_back(words[i]);
  }
  return arguments;
}

void print_table(const Arguments& arguments, const std::map<std::string, double>& best) {
  std::vector<std::filesystem::path> paths;
  for (const auto& entry : std::filesystem::directory_iterator(arguments.data))
    if (entry.path().extension() == ".json") paths.push_back(entry.path());
  std::ranges::sort(paths);
  std::printf("%-10s %8s %8s %7s %8s %12s\n", "set", "density", "best", "of it", "seconds", "places");
  double sum = 0;
  double least = 1000;
  int count = 0;
  for (const auto& path : paths) {
    const std::string name = path.stem().string();
    if (!best.contains(name)) continue;
    if (!arguments.sets.empty() && std::ranges::find(arguments.sets, name) == arguments.sets.end()) continue;
    std::string line = kept_line(arguments, name);
    if (line.empty()) {
      line = measured(read_set(path), arguments);
      std::ofstream(arguments.kept, std::ios::app) << line << '\n';
    }
    std::string word;
    double density = 0;
    double seconds = 0;
    std::uint64_t places = 0;
    std::istringstream(line) >> word >> word >> density >> seconds >> places;
    const double share = 100 * density / best.at(name);
    std::printf("%-10s %7.2f%% %7.2f%% %6.2f%% %8.1f %12llu\n", name.c_str(), density, best.at(name), share,
                seconds, static_cast<unsigned long long>(places));
    std::fflush(stdout);
    sum += share;
    least = std::min(least, share);
    ++count;
  }
  std::printf("%d sets, %s: mean %.2f%% of the best published density, least %.2f%%; 0: not proven apart\n",
              count, arguments.budget().c_str(), count == 0 ? 0 : sum / count, least);
}

}  // namespace

int main(int count, char** words) {
  const Arguments arguments = read_arguments({words + 1, words + count});
  if (arguments.data.empty()) {
    std::puts(
        "nest_table FOLDER [SET...] [--seconds S | --effort PLACES] [--seed N] [--two-threads] [--keep "
        "FILE]\n"
        "FOLDER holds sets as JSON and best_known.csv. Seconds of a clock are turned into an effort by a "
        "trial run.");
    return 64;
  }
  print_table(arguments, read_best(arguments.data / "best_known.csv"));
}
