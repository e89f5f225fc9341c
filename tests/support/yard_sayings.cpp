#include "support/yard_sayings.h"

#include <filesystem>
#include <sstream>
#include <utility>

#include <berthwright/yard/program.h>

#include "support/board_trailers.h"
#include "support/temporary_folder.h"
#include "support/yard_plans.h"
#include "yard/loopback.h"
#include "yard/plan_file.h"
#include "yard/saved_file.h"

namespace berthwright {
namespace {

// What comes first of a long list is enough.
constexpr std::size_t longest_said = 300;

void replace_all(std::string& text, const std::string& from, const std::string& to) {
  for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
    text.replace(at, from.size(), to);
}

class Runs {
 public:
  void run(const std::vector<std::string>& arguments, bool deaf = false) {
    std::ostringstream out;
    std::ostringstream err;
    if (deaf) out.setstate(std::ios::badbit);
    YardSaying saying;
    saying.code = berthwright::run(arguments, out, err);
    for (const std::string& argument : arguments)
      saying.command += (saying.command.empty() ? "" : " ") + argument;
    keep(std::move(saying), err.str());
  }
  void told(const std::string& command, int code, const Problem& problem) {
    keep({command, code, {}}, "berthwright: " + problem.message + "\n    " + problem.cure + "\n");
  }
  std::vector<YardSaying> sayings() && { return std::move(sayings_); }

  const TemporaryFolder folder;
  std::string port;

 private:
  void keep(YardSaying saying, std::string said) {
    for (std::string* text : {&saying.command, &said}) {
      replace_all(*text, folder.path() + "/", "");
      replace_all(*text, folder.path(), "FOLDER");
      if (!port.empty()) replace_all(*text, port, "PORT");
    }
    // The port that is free now is another each time.
    if (const std::size_t free = said.find("--port "); free != std::string::npos)
      said.replace(free, said.find('\n', free) - free, "--port PORT");
    if (said.size() > longest_said) said = said.substr(0, said.find('\n')) + " …";
    saying.said = std::move(said);
    sayings_.push_back(std::move(saying));
  }

  std::vector<YardSaying> sayings_;
};

void run_what_is_mistyped(Runs& runs, const std::string& plan) {
  runs.run({"chek", plan});
  runs.run({"check"});
  runs.run({"check", plan, "--colour"});
  runs.run({"check", plan, "--tape", "--details"});
  runs.run({"explain", "heat.nonsense"});
  runs.run({"heater", plan, "--configuration", "dusk"});
  runs.run({"convert-units", plan, "--to", "feet"});
  runs.run({"compare", "-", "-"});
  runs.run({"compare", plan, "day", "night", "--configuration", "day"});
  runs.run({"split", plan, "--gap", "wide"});
  runs.run({"split", plan, "--least-back", "20", "--most-back", "10"});
  runs.run({"split", plan, "--write", runs.folder.path("other.json"), "--choose", "1", "--choose", "1"});
  runs.run({"split", plan, "--least-side", "20", "--longest-side", "10"});
  runs.run({"split", plan, "--least-side", "30", "--most-back", "20"});
  const std::string bay = runs.folder.put("bay.json", board_between_benches().json());
  runs.run({"split", bay, "--write", runs.folder.path("other.json"), "--choose", "9"});
  runs.run({"split", bay, "--write", runs.folder.path("other.json"), "--choose", "0"});
  runs.run({"split", plan, "--reuse", "--gap", "1"});
  runs.run({"cut", "-", "--stock", "-"});
  runs.run({"packet", plan, "--out", plan});
  runs.run({"watch", "-"});
}

void run_what_files_forbid(Runs& runs, const std::string& plan) {
  const TemporaryFolder& folder = runs.folder;
  runs.run({"check", folder.path("absent.json")});
  runs.run({"check", folder.path()});
  runs.run({"draw", plan, "--out", plan});
  runs.run({"convert-units", plan, "--write", folder.put("taken.json", "{}")});
  std::filesystem::create_directory(folder.path("drawings"));
  runs.run({"convert-units", plan, "--force", "--write", folder.path("drawings")});
  const std::string kept = folder.put("kept.json", plan_that_meets());
  std::filesystem::permissions(kept, std::filesystem::perms::owner_read);
  runs.run({"fmt", kept});
  runs.run({"convert-units", plan, "--write", "/proc/plan.json"});
  runs.run({"check", plan}, true);
  runs.run({"watch", folder.path("drawings")});
}

// 60 of 1000 lb on the coupling are 6 %.
void run_what_is_too_light(Runs& runs) {
  const std::string light = runs.folder.put(
      "light.json",
      R"({"berthwright": 1, "title": "Light", "unit": "in", "interior": {"length": 120, "width": 72, "height": 76},
                        "configurations": {"day": []},
                        "chassis": {"coupling": 40, "axle": 80, "weighed": {"coupling": "60 lb", "axle": "940 lb"}}})");
  runs.run({"packet", light, "--out", runs.folder.path("light.html")});
}

// What `watch` says while it follows a file.
void follow(Runs& runs, const std::string& name) {
  SavedFile file(runs.folder.path(name), most_plan_bytes);
  for (int looks = 0; looks < 20; ++looks)
    if (const std::optional<Result<std::string>> news = file.news()) {
      if (!*news) runs.told("watch " + name, 0, news->problems().front());
      return;
    }
}

void run_what_ports_forbid(Runs& runs, const std::string& plan) {
  const std::unique_ptr<Loopback> other =
      Loopback::opened(0, [](const PageRequest&) { return std::optional<PageResponse>(); }).value();
  runs.port = std::to_string(other->port());
  runs.run({"watch", plan, "--port", runs.port});
  runs.port.clear();
}

}  // namespace

const std::vector<YardSaying>& yard_sayings() {
  static const std::vector<YardSaying> sayings = [] {
    Runs runs;
    const std::string plan = runs.folder.put("plan.json", plan_that_meets());
    run_what_is_mistyped(runs, plan);
    run_what_files_forbid(runs, plan);
    runs.run(
        {"draw", runs.folder.put("bunk.json", plan_that_does_not()), "--out", runs.folder.path("drawings")});
    run_what_is_too_light(runs);
    follow(runs, "gone.json");
    follow(runs, "drawings");
    run_what_ports_forbid(runs, plan);
    return std::move(runs).sayings();
  }();
  return sayings;
}

}  // namespace berthwright
