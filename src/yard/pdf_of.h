#pragma once

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include <berthwright/plan/plan.h>
#include <berthwright/view/scene.h>

namespace berthwright {

/// The sheets as one PDF, called by the plan's title, else by `name`; none after saying why there is none.
std::optional<std::string> pdf_of(const std::vector<Sheet>& drawn, const Plan& plan, const std::string& name,
                                  std::ostream& err);

}  // namespace berthwright
