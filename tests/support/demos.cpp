#include "support/demos.h"

#include <algorithm>
#include <filesystem>
#include <stdexcept>

namespace berthwright {

std::vector<std::string> demo_names() {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(repository_path("plans"))) {
    const std::string file = entry.path().filename().string();
    if (entry.is_regular_file() && file.ends_with(".json") && !file.ends_with(".schema.json"))
      names.push_back(entry.path().stem().string());
  }
  if (names.empty()) throw std::runtime_error("no plan in plans/");
  std::ranges::sort(names);
  return names;
}

std::string demo_text(const std::string& name) { return repository_text("plans/" + name + ".json"); }

const Answered& answered_demo(const std::string& name) {
  static MadeOfDemos<Answered> made;
  return made.of(name);
}

}  // namespace berthwright
