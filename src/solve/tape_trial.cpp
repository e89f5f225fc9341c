#include "solve/tape_trial.h"

#include <map>
#include <string>
#include <tuple>
#include <utility>

namespace berthwright {
namespace {

using TrialSubject = std::tuple<RuleId, ConfigurationId, BedId, std::vector<std::string>, std::string>;

TrialSubject subject_of(const Finding& one) {
  return {one.rule, one.configuration, one.bed, one.subjects, one.variant};
}

bool are_of_one_kind(const Finding& a, const Finding& b) {
  return a.rule == b.rule && a.configuration == b.configuration && a.bed == b.bed;
}

int badness(Status status) {
  switch (status) {
    case Status::not_met:
      return 3;
    case Status::unknown:
      return 2;
    case Status::close:
      return 1;
    case Status::met:
      return 0;
  }
  return 0;
}

}  // namespace

bool is_fine(Status status) { return status == Status::met || status == Status::close; }

bool is_worse(const Finding& a, const Finding& b) {
  if (is_fine(a.status) != is_fine(b.status) || !a.margin || !b.margin)
    return badness(a.status) > badness(b.status);
  return *a.margin < *b.margin;
}

bool is_about_the_same(const Finding& a, const Finding& b) { return subject_of(a) == subject_of(b); }

TapeTrial matched_to(const std::vector<Finding>& written, std::vector<Finding> tried) {
  TapeTrial trial;
  trial.of.resize(written.size());
  std::multimap<TrialSubject, std::size_t> known;
  for (std::size_t k = 0; k < tried.size(); ++k) known.emplace(subject_of(tried[k]), k);
  std::vector<bool> used(tried.size());
  for (std::size_t i = 0; i < written.size(); ++i) {
    const auto found = known.find(subject_of(written[i]));
    if (found == known.end()) continue;
    trial.of[i] = tried[found->second];
    used[found->second] = true;
    known.erase(found);
  }
  std::vector<bool> told(tried.size());
  for (std::size_t i = 0; i < written.size(); ++i) {
    if (trial.of[i] && !written[i].subjects.empty()) continue;
    for (std::size_t k = 0; k < tried.size(); ++k) {
      if (used[k] || !are_of_one_kind(written[i], tried[k])) continue;
      told[k] = told[k] || written[i].status != Status::not_met;
      if (!trial.of[i] || is_worse(tried[k], *trial.of[i])) trial.of[i] = tried[k];
    }
  }
  for (std::size_t k = 0; k < tried.size(); ++k)
    if (!used[k] && !told[k] && (tried[k].status == Status::not_met || tried[k].status == Status::unknown))
      trial.arisen.push_back(std::move(tried[k]));
  return trial;
}

}  // namespace berthwright
