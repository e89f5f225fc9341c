#pragma once

#include <map>
#include <memory>
#include <string>
#include <vector>

#include "support/plan_builder.h"
#include "support/trailer_text.h"

namespace berthwright {

/// Names of the plans that we show: "sanderling" for plans/sanderling.json; sorted, never empty.
std::vector<std::string> demo_names();
/// The text of such a plan.
std::string demo_text(const std::string& name);

/// What tests make of the demos, made of each when it is first asked for and kept as long as the process:
/// solving and drawing them is the dearest thing that tests do.
template <class Made>
class MadeOfDemos {
 public:
  const Made& of(const std::string& name) {
    std::unique_ptr<const Made>& one = made_[name];
    if (one == nullptr) one = std::make_unique<const Made>(plan_from(demo_text(name)));
    return *one;
  }

 private:
  std::map<std::string, std::unique_ptr<const Made>> made_;
};

/// The demo with its answer, made once.
const Answered& answered_demo(const std::string& name);

}  // namespace berthwright
