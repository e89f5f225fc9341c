#include "support/trailer_text.h"

#include <gtest/gtest.h>

#include <stdexcept>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

std::string joined(const std::vector<std::string>& entries) {
  std::string text;
  for (const std::string& entry : entries) text += (text.empty() ? "" : ",\n") + entry;
  return text;
}

std::string exchanged(std::string text) {
  for (const auto& [from, to] : {std::pair{"left", "@"}, {"right", "left"}, {"@", "right"}})
    for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += std::string(to).size())
      text.replace(at, std::string(from).size(), to);
  return text;
}

std::string id_of(const std::string& piece) {
  const std::string key = "\"id\": \"";
  const std::size_t from = piece.find(key) + key.size();
  return piece.substr(from, piece.find('"', from) - from);
}

// The poses as written, and "stowed" for every piece that has none.
std::string complete(std::vector<std::string> poses, const std::vector<std::string>& pieces) {
  const std::string written = joined(poses);
  for (const std::string& piece : pieces) {
    const std::string key = "\"piece\": \"" + id_of(piece) + '"';
    if (written.find(key) == std::string::npos) poses.push_back("{" + key + R"(, "stowed": "elsewhere"})");
  }
  return joined(poses);
}

}  // namespace

std::string TrailerText::json() const {
  return R"({"berthwright": 1, "title": "Test", )" + more + R"("unit": ")" + unit + R"(", "interior": )" +
         interior + ",\n\"openings\": [" + joined(openings) + "],\n\"fixtures\": [" + joined(fixtures) +
         "],\n\"pieces\": [" + joined(pieces) + "],\n\"configurations\": {\"day\": [" +
         complete(day, pieces) + "],\n\"night\": [" + complete(night, pieces) + "]" +
         (road.empty() ? "" : ", \"road\": [" + complete(road, pieces) + "]") + "},\n\"beds\": [" +
         joined(beds) + "],\n\"rules\": {" + joined(rules) + "}}";
}

Plan TrailerText::plan() const { return plan_from(json()); }

TrailerText TrailerText::mirrored() const {
  TrailerText other = *this;
  for (auto* list :
       {&other.fixtures, &other.pieces, &other.day, &other.night, &other.road, &other.beds, &other.openings})
    for (std::string& entry : *list) entry = exchanged(std::move(entry));
  other.interior = exchanged(std::move(other.interior));
  for (std::string& opening : other.openings)
    if (const std::size_t at = opening.find("from_right"); at != std::string::npos)
      opening.replace(at, 10, "from_left");
  return other;
}

Answered::Answered(const TrailerText& text) : Answered(text.plan()) {}

Answered::Answered(Plan made) : plan(std::move(made)) {
  Result<Answer> result = answered(plan);
  if (!result) throw std::invalid_argument("the plan does not stand:\n" + listed(result.problems()));
  answer = std::move(result).value();
}

std::vector<Finding> Answered::of(std::string_view rule, std::string_view variant) const {
  std::vector<Finding> found;
  for (const Finding& finding : answer.findings)
    if (finding.rule.text() == rule && (variant.empty() || finding.variant == variant))
      found.push_back(finding);
  return found;
}

Finding Answered::one(std::string_view rule, std::string_view variant) const {
  const std::vector<Finding> found = of(rule, variant);
  EXPECT_EQ(found.size(), 1U) << rule << ' ' << variant;
  return found.empty() ? Finding{} : found.front();
}

Finding Answered::one_in(std::string_view configuration, std::string_view rule) const {
  std::vector<Finding> found = of(rule);
  std::erase_if(found, [&](const Finding& f) { return f.configuration.text() != configuration; });
  EXPECT_EQ(found.size(), 1U) << rule << " in " << configuration;
  return found.empty() ? Finding{} : found.front();
}

}  // namespace berthwright
