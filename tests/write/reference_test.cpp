#include <berthwright/write/reference.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include <berthwright/plan/rules.h>

#include "support/plan_builder.h"
#include "write/field_checks.h"

namespace berthwright {
namespace {

const std::vector<std::string> plans_with_examples{
    "tests/plan/example.json", "tests/plan/shapes.json", "tests/plan/hinge.json", "tests/plan/loads.json",
    "plans/dunnock.json",      "plans/goldcrest.json",   "plans/nuthatch.json",   "plans/sanderling.json",
    "plans/siskin.json",       "plans/whinchat.json"};

std::string page() {
  std::vector<std::string> plans;
  for (const std::string& name : plans_with_examples) plans.push_back(repository_text(name));
  return reference_text(plans);
}

/// The rows of the page's tables as cells, each with its section's heading before it.
std::vector<std::vector<std::string>> rows() {
  std::vector<std::vector<std::string>> all;
  std::string heading;
  std::istringstream lines(page());
  for (std::string line; std::getline(lines, line);) {
    if (line.starts_with("## ")) heading = line.substr(3);
    if (!line.starts_with("| ") || line.starts_with("| field |") || line.starts_with("| value |")) continue;
    std::vector<std::string> cells{heading};
    for (std::size_t from = 2, bar = 0; (bar = line.find(" |", from)) != std::string::npos; from = bar + 3)
      cells.push_back(bar < from ? "" : line.substr(from, bar - from));
    all.push_back(std::move(cells));
  }
  return all;
}

TEST(Reference, IsWhatTheSchemaAndThePlansSay) {
  EXPECT_EQ(repository_text("plans/REFERENCE.md"), page())
      << "regenerate with ./dev demo, or: the line of ./dev that ends in plans/REFERENCE.md";
}

TEST(Reference, TellsWhatEachFieldMeansAndWhatMayStandThere) {
  std::size_t fields = 0;
  for (const std::vector<std::string>& row : rows()) {
    if (row[0] == "How values are written") continue;
    SCOPED_TRACE(row[0] + ": " + row[1]);
    ASSERT_EQ(row.size(), 7U);
    EXPECT_FALSE(row[2].empty()) << "no meaning";
    EXPECT_FALSE(row[3].empty()) << "no kind";
    EXPECT_EQ(row[1].starts_with("**") && !row[4].empty(), false) << "required, and yet with a default";
    ++fields;
  }
  EXPECT_GT(fields, 110U);
}

TEST(Reference, HasAnExampleOfEachFieldThatIsShort) {
  std::set<std::string> without;
  for (const std::vector<std::string>& row : rows())
    if (row.size() == 7 && row[5].empty()) without.insert(row[0] + ": " + row[1]);
  // Lists of things, which sections of their own tell field by field.
  EXPECT_EQ(without, (std::set<std::string>{"The plan: beds", "The plan: fixtures", "The plan: openings",
                                            "The plan: pieces"}));
}

TEST(Reference, NamesChecksAndFieldsThatExist) {
  const std::string text = page();
  std::set<std::string> named;
  for (const FieldChecks& one : field_checks()) {
    SCOPED_TRACE(one.field);
    EXPECT_NE(text.find(" | " + std::string(one.checks) + " |\n"), std::string::npos) << "no such field";
    std::istringstream words{std::string(one.checks)};
    for (std::string word; words >> word;) {
      if (word.find('.') == std::string::npos) continue;
      const bool room = word.ends_with(".*");
      const std::string start = word.substr(0, word.size() - (room ? 1 : 0));
      std::size_t found = 0;
      for (const Rule& rule : all_rules())
        found += room ? rule.id.text().starts_with(start) : rule.id.text() == start;
      EXPECT_GT(found, 0U) << word;
    }
  }
}

TEST(Reference, LinksLeadToItsOwnHeadings) {
  const std::string text = page();
  std::set<std::string> anchors;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    if (!line.starts_with("## ")) continue;
    std::string anchor;
    for (const char c : line.substr(3))
      anchor += c == ' ' ? '-' : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    EXPECT_TRUE(anchors.insert(anchor).second) << line << " stands twice";
  }
  std::size_t links = 0;
  for (std::size_t at = 0; (at = text.find("](#", at)) != std::string::npos; ++links) {
    at += 3;
    const std::string anchor = text.substr(at, text.find(')', at) - at);
    EXPECT_TRUE(anchors.contains(anchor)) << anchor;
  }
  EXPECT_GT(links, 100U);
}

}  // namespace
}  // namespace berthwright
