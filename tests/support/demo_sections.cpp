#include "support/demo_sections.h"

#include <stdexcept>

#include "support/demos.h"
#include "support/plan_builder.h"
#include "view/section_lines.h"

namespace berthwright {

CutTrailer::CutTrailer(Plan plan) : made_(std::make_unique<Answered>(std::move(plan))) {
  for (const ConfigurationAnswer& answer : made_->answer.configurations)
    drawn_.push_back({&made_->plan, &answer, made_->answer.findings, {}});
  const auto cuts = section_cuts(drawn_);
  for (std::size_t i = 0; i < drawn_.size(); ++i) drawn_[i].cuts = cuts[i];
}

const CutTrailer& CutTrailer::demo(const std::string& name) {
  static MadeOfDemos<CutTrailer> made;
  return made.of(name);
}

const DrawnConfiguration& CutTrailer::of(std::string_view configuration) const {
  for (const DrawnConfiguration& one : drawn_)
    if (one.answer->configuration->id.text() == configuration) return one;
  throw std::out_of_range(std::string(configuration));
}

const BedAnswer& CutTrailer::bed(std::string_view id) const {
  for (const DrawnConfiguration& one : drawn_)
    for (const BedAnswer& bed : one.answer->beds)
      if (bed.bed->id.text() == id) return bed;
  throw std::out_of_range(std::string(id));
}

Section CutTrailer::cut(const DrawnConfiguration& of, const CutLine& line) const {
  return section_of(made_->plan, of.answer->arrangement, line);
}

}  // namespace berthwright
