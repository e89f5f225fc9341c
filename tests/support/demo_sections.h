#pragma once

#include <memory>
#include <string>

#include "support/trailer_text.h"
#include "view/plan_drawing.h"
#include "view/section.h"

namespace berthwright {

/// A plan with the answer of its configurations and their cuts, as sheets are made from them.
class CutTrailer {
 public:
  explicit CutTrailer(Plan plan);
  /// Made once in a process.
  static const CutTrailer& demo(const std::string& name);

  const Plan& plan() const { return made_->plan; }
  const Answer& answer() const { return made_->answer; }
  const std::vector<DrawnConfiguration>& configurations() const { return drawn_; }
  const DrawnConfiguration& of(std::string_view configuration) const;
  const BedAnswer& bed(std::string_view id) const;
  Section cut(const DrawnConfiguration& of, const CutLine& line) const;

 private:
  std::unique_ptr<Answered> made_;  // stays where it is: the rest points into it
  std::vector<DrawnConfiguration> drawn_;
};

}  // namespace berthwright
