#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/wait.h>

#include <algorithm>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <vector>

extern char** environ;

// Whole runs of the program: seconds of CPU, user and system together, as the kernel counts them.
namespace {

double seconds(const timeval& time) {
  return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) * 1e-6;
}

struct Run {
  double cpu = 0;
  double megabytes = 0;
};

Run run(std::vector<std::string> words) {
  std::vector<char*> arguments;
  for (std::string& word : words) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  posix_spawn_file_actions_t files{};
  posix_spawn_file_actions_init(&files);
  for (const int stream : {1, 2}) posix_spawn_file_actions_addopen(&files, stream, "/dev/null", O_WRONLY, 0);
  pid_t child = 0;
  const int failed = posix_spawn(&child, arguments.front(), &files, nullptr, arguments.data(), environ);
  posix_spawn_file_actions_destroy(&files);
  if (failed != 0) throw std::runtime_error("the program does not start");
  int status = 0;
  rusage used{};
  wait4(child, &status, 0, &used);
  // 0, 1 and 2 are answers; anything else measured nothing.
  if (!WIFEXITED(status) || WEXITSTATUS(status) > 2) throw std::runtime_error("the program failed");
  return {seconds(used.ru_utime) + seconds(used.ru_stime), static_cast<double>(used.ru_maxrss) / 1024};
}

void program(benchmark::State& state, const std::string& verb, const std::string& plan) {
  const auto folder = std::filesystem::temp_directory_path() / "berthwright-bench";
  std::vector<std::string> words{BERTHWRIGHT_PROGRAM, verb, plan};
  if (verb == "draw") {
    std::filesystem::create_directories(folder);
    words.insert(words.end(), {"--out", folder.string()});
  }
  double peak = 0;
  for ([[maybe_unused]] auto _ : state) {
    const Run one = run(words);
    state.SetIterationTime(one.cpu);
    peak = std::max(peak, one.megabytes);
  }
  state.counters["peak MB"] = peak;
}

// Registered by name, from whatever plans there are.
const bool registered = [] {
  std::vector<std::filesystem::path> plans;
  for (const auto& entry : std::filesystem::directory_iterator(BERTHWRIGHT_PLANS))
    if (entry.path().extension() == ".json" && entry.path().stem().extension() != ".schema")
      plans.push_back(entry.path());
  std::ranges::sort(plans);
  for (const char* verb : {"check", "draw", "heater", "split"})
    for (const auto& plan : plans)
      benchmark::RegisterBenchmark(
          (std::string(verb) + "/" + plan.stem().string()).c_str(),
          [verb, plan](benchmark::State& state) { program(state, verb, plan.string()); })
          ->UseManualTime()
          ->Iterations(5)
          ->Unit(benchmark::kMillisecond);
  return true;
}();

}  // namespace
