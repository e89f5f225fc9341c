#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/split/reuse.h>

namespace berthwright {

/// Whether the cushions close the bay, else what they leave open.
std::string reuse_heading(const Plan& plan, const Reuse& reuse);
/// Where each cushion lies, and which find no place.
std::vector<std::string> relaid_sentences(const Plan& plan, const Reuse& reuse);
/// How far they fall short, and what no laying could better; empty where they close it.
std::vector<std::string> shortfall_sentences(const Plan& plan, const Reuse& reuse);
/// What was tried, and what for.
std::string reuse_effort_sentence(const Plan& plan, const Reuse& reuse, const ReuseLimits& limits);

}  // namespace berthwright
