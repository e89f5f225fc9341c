#include "view/telling.h"

#include <stdexcept>

#include <berthwright/exact/measure.h>
#include <berthwright/solve/body.h>

#include "view/called.h"

namespace berthwright {

Telling::Telling(const Plan& plan, const Finding& finding)
    : plan_(plan), finding_(finding), rule_(find_rule(finding.rule.text())) {
  if (rule_ == nullptr) throw std::logic_error("a finding of an unknown rule: " + finding.rule.text());
}

std::string Telling::subject(std::size_t index) const {
  return has_subject(index) ? named(finding_.subjects[index]) : "something";
}

std::string Telling::subjects(std::size_t from) const {
  std::string text = subject(from);
  for (std::size_t i = from + 1; has_subject(i); ++i)
    text += (has_subject(i + 1) ? ", " : " and ") + subject(i);
  return text;
}

std::string Telling::bed() const {
  const Bed* bed = plan_.bed(finding_.bed.text());
  return bed == nullptr ? "the bed" : bed->name;
}

std::string Telling::when() const {
  const Configuration* configuration = plan_.configuration(finding_.configuration.text());
  return configuration == nullptr ? "" : when_of(*configuration) + ", ";
}

std::string Telling::measured() const {
  return finding_.measured ? quantity_text(*finding_.measured, plan_->unit, careful()) : "not known";
}

std::string Telling::beside(std::size_t index, Rounding rounding) const {
  return quantity_text(finding_.besides.at(index), plan_->unit, rounding);
}

bool Telling::is_negative() const {
  const auto* length = finding_.measured ? std::get_if<Length>(&*finding_.measured) : nullptr;
  return length != nullptr && *length < Length{};
}

bool Telling::is_nothing() const { return finding_.measured == Quantity(Length{}); }

std::string Telling::upright_under_measured() const {
  const Shares shares = shares_up_to(BodyMeasure::sitting_height, std::get<Length>(*finding_.measured));
  return quantity_text(shares, plan_->unit, Rounding::down);
}

std::string Telling::magnitude() const {
  return both(-std::get<Length>(*finding_.measured), plan_->unit, {.rounding = Rounding::up});
}

std::string Telling::demand() const {
  if (!finding_.compared) return "no figure";
  const Rounding against = rule_->at_least ? Rounding::up : Rounding::down;
  std::string text = rule_->at_least ? "at least " : "at most ";
  text += quantity_text(*finding_.compared, plan_->unit, against);
  return finding_.override_reason.empty() ? text + " (" + whose() + ")" : text + ", " + whose();
}

std::string Telling::whose() const {
  std::string source = source_text(finding_.source);
  if (finding_.override_reason.empty()) return source;
  return "the plan's own figure (" + finding_.override_reason + ") in place of " + source;
}

std::string Telling::shortfall() const {
  if (!finding_.margin || *finding_.margin >= Length{}) return {};
  const std::string by = both(-*finding_.margin, plan_->unit, {.rounding = Rounding::up});
  return rule_->at_least ? "; short by " + by : "; over by " + by;
}

std::string Telling::own_figure() const {
  return finding_.override_reason.empty() ? std::string{} : "; " + compared();
}

std::string Telling::place() const {
  if (finding_.where.empty()) return {};
  const Point3& at = finding_.where.front();
  return ", " + both(at.plan.x, plan_->unit) + " from the front and " + both(at.plan.y, plan_->unit) +
         " from the left wall";
}

Rounding Telling::careful() const { return rule_->at_least ? Rounding::down : Rounding::up; }

std::string Telling::named(const std::string& id) const {
  if (const Fixture* fixture = plan_.fixture(id)) return fixture->name;
  if (const Piece* piece = plan_.piece(id)) return piece->name;
  if (const Bed* bed = plan_.bed(id)) return bed->name;
  if (const Opening* opening = plan_.opening(id)) return opening->name;
  if (const Leaf* leaf = plan_.leaf(id)) return leaf->name;
  return id;
}

}  // namespace berthwright
