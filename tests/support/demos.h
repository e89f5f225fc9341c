#pragma once

#include <string>
#include <vector>

namespace berthwright {

/// Names of the plans that we show: "sanderling" for plans/sanderling.json; sorted, never empty.
std::vector<std::string> demo_names();
/// The text of such a plan.
std::string demo_text(const std::string& name);

}  // namespace berthwright
