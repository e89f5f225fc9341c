#include <berthwright/plan/house_text.h>

#include <algorithm>
#include <stdexcept>
#include <string>
#include <utility>

#include <berthwright/exact/mass.h>
#include <berthwright/plan/plan.h>

#include "plan/bare_length.h"
#include "plan/document.h"
#include "plan/reading.h"
#include "plan/tokens.h"

namespace berthwright {
namespace {

std::string_view spelled_unit(Unit unit) { return unit == Unit::inch ? "in" : "mm"; }

/// Replaces single values of a text and copies all that lies between them.
class ValueWriter {
 public:
  explicit ValueWriter(std::string_view text) : text_(text), tokens_(plan_tokens(text)) {}

  /// The token of the value at a line and column; asked in the order of the file.
  const PlanToken& at(std::size_t line, std::size_t column) {
    const auto found = std::lower_bound(tokens_.begin(), tokens_.end(), std::pair(line, column),
                                        [](const PlanToken& token, const auto& place) {
                                          return std::pair(token.line, token.column) < place;
                                        });
    if (found == tokens_.end() || found->line != line || found->column != column)
      throw std::logic_error("a value of a plan stands at no token");
    return *found;
  }

  void replace(const PlanToken& token, std::string_view with) {
    written_ += text_.substr(copied_, token.at - copied_);
    written_ += with;
    copied_ = token.at + token.spelled.size();
  }

  std::string text() && { return std::move(written_) + std::string(text_.substr(copied_)); }

 private:
  std::string_view text_;
  std::vector<PlanToken> tokens_;
  std::string written_;
  std::size_t copied_ = 0;
};

/// A number stays a number where it can be one.
std::string as_value(const std::string& text, const PlanToken& old) {
  const bool number =
      old.kind == PlanToken::Kind::bare && text.find_first_not_of("0123456789.") == std::string::npos;
  return number ? text : '"' + text + '"';
}

/// Does the number count in the unit of the plan, whichever that is?
bool is_bare_length(const std::string& spelled) {
  const Result<Length> inches = read_length(spelled, Unit::inch);
  const Result<Length> millimetres = read_length(spelled, Unit::millimetre);
  return !inches || !millimetres || *inches != *millimetres;
}

bool is_bare_mass(const std::string& spelled) {
  const Result<Mass> pounds = read_mass(spelled, Unit::inch);
  const Result<Mass> kilograms = read_mass(spelled, Unit::millimetre);
  return !pounds || !kilograms || *pounds != *kilograms;
}

class UnitWriter {
 public:
  UnitWriter(std::string_view text, Unit from, Unit to) : writer_(text), to_(to) { result_.from = from; }

  void write_unit(const Node& unit) {
    writer_.replace(writer_.at(unit.line, unit.column), quoted(spelled_unit(to_)));
  }

  void write(const SpelledMeasure& measure, const Node& node) {
    const PlanToken& token = writer_.at(measure.origin.line, measure.origin.column);
    if (measure.mass) return write_mass(node, token);
    const std::string spelled = bare_length(*measure.length, to_);
    const bool is_bare = is_bare_length(node.text);
    if (spelled.empty()) {
      const std::string kept = is_bare ? exact_text(*measure.length, result_.from) : node.text;
      result_.kept.push_back({measure.origin.line, kept});
      if (is_bare) replace(token, quoted(kept));
      return;
    }
    if (is_bare && result_.from == to_) return;
    if (replace(token, as_value(spelled, token))) ++result_.lengths;
  }

  UnitText result() && {
    result_.text = std::move(writer_).text();
    return std::move(result_);
  }

 private:
  static std::string quoted(std::string_view text) { return '"' + std::string(text) + '"'; }

  bool replace(const PlanToken& token, const std::string& with) {
    if (token.spelled == with) return false;
    writer_.replace(token, with);
    return true;
  }

  void write_mass(const Node& node, const PlanToken& token) {
    if (result_.from == to_ || !is_bare_mass(node.text)) return;
    writer_.replace(token, quoted(node.text + (result_.from == Unit::inch ? " lb" : " kg")));
    ++result_.weights;
  }

  ValueWriter writer_;
  Unit to_;
  UnitText result_;
};

bool same_measures(const std::vector<SpelledMeasure>& a, const std::vector<SpelledMeasure>& b) {
  return std::ranges::equal(a, b, [](const SpelledMeasure& one, const SpelledMeasure& other) {
    return one.origin.pointer == other.origin.pointer && one.length == other.length && one.mass == other.mass;
  });
}

/// Lengths among the defaults are spelled in the unit of their plan.
std::vector<ChangedDefault> changed_defaults(const Plan& before, const Plan& now) {
  std::vector<ChangedDefault> changed;
  for (const AppliedDefault& old : before->defaults) {
    const auto found = std::ranges::find(now->defaults, old.pointer, &AppliedDefault::pointer);
    if (found == now->defaults.end() || found->value == old.value) continue;
    const Result<Length> length = read_length(old.value, before->unit);
    const Result<Length> other = read_length(found->value, now->unit);
    if (!length || !other || *length != *other) changed.push_back({old.pointer, old.value, found->value});
  }
  return changed;
}

}  // namespace

Result<UnitText> in_unit(std::string_view text, Unit unit) {
  std::vector<SpelledMeasure> measures;
  const Result<Plan> plan = read_plan(text, measures);
  if (!plan) return plan.problems();
  const Document document = read_document(text);
  const Node& of_unit = *document.root->find("unit");
  UnitWriter writer(text, (*plan)->unit, unit);
  bool unit_written = false;
  for (const SpelledMeasure& measure : measures) {
    const bool behind =
        std::pair(measure.origin.line, measure.origin.column) > std::pair(of_unit.line, of_unit.column);
    if (behind && !std::exchange(unit_written, true)) writer.write_unit(of_unit);
    writer.write(measure, innermost(*document.root, measure.origin.pointer));
  }
  if (!unit_written) writer.write_unit(of_unit);
  UnitText result = std::move(writer).result();
  std::vector<SpelledMeasure> again;
  const Result<Plan> now = read_plan(result.text, again);
  if (!now || !same_measures(measures, again))
    throw std::logic_error("a plan written in another unit says something else");
  result.defaults = changed_defaults(*plan, *now);
  return result;
}

}  // namespace berthwright
