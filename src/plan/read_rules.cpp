#include <algorithm>
#include <stdexcept>
#include <utility>
#include <vector>

#include <berthwright/exact/measure.h>
#include <berthwright/plan/rules.h>

#include "plan/document.h"
#include "plan/rules_text.h"

namespace berthwright {
namespace {

[[noreturn]] void broken(const std::string& why) { throw std::logic_error("src/plan/rules.json: " + why); }

const std::string& word(const Node& object, std::string_view name) {
  const Node* node = object.find(name);
  if (node == nullptr || node->kind != Node::Kind::text)
    broken(object.pointer + " has no text " + std::string(name));
  return node->text;
}

std::string word_or_none(const Node& object, std::string_view name) {
  return object.find(name) == nullptr ? std::string{} : word(object, name);
}

template <class Choice>
Choice chosen(const std::string& word, std::initializer_list<std::pair<const char*, Choice>> choices) {
  for (const auto& [name, choice] : choices)
    if (word == name) return choice;
  broken('"' + word + "\" is no choice");
}

Length length(const std::string& text) {
  const Result<Length> read = read_length(text, Unit::inch);
  if (!read) broken('"' + text + "\": " + read.problems().front().message);
  return *read;
}

Source source(const Node& node) {
  using Kind = Source::Kind;
  return {.kind = chosen<Kind>(word(node, "kind"), {{"published", Kind::published},
                                                    {"maker", Kind::maker},
                                                    {"common practice", Kind::common_practice},
                                                    {"from memory", Kind::from_memory},
                                                    {"own choice", Kind::own_choice}}),
          .text = word_or_none(node, "text"),
          .edition = word_or_none(node, "edition"),
          .address = word_or_none(node, "address")};
}

Rule rule(const Node& node) {
  Rule rule;
  rule.id = RuleId(word(node, "id"));
  rule.weight = chosen<Weight>(
      word(node, "weight"),
      {{"alert", Weight::alert}, {"advice", Weight::advice}, {"information", Weight::information}});
  rule.title = word(node, "title");
  rule.meaning = word(node, "meaning");
  if (node.find("source") == nullptr) broken(rule.id.text() + " has no source");
  rule.source = source(*node.find("source"));
  rule.caution = word(node, "caution");
  rule.asked = word_or_none(node, "asked");
  if (node.find("limit") != nullptr) {
    rule.limit = length(word(node, "limit"));
  } else if (rule.asked.empty()) {
    return rule;
  }
  if (rule.limit || node.find("close_within") != nullptr)
    rule.close_within = length(word(node, "close_within"));
  rule.at_least = chosen<bool>(word(node, "sense"), {{"at least", true}, {"at most", false}});
  return rule;
}

std::vector<Rule> read_rules() {
  const Document document = read_document(rules_text());
  if (!document.problems.empty()) broken(document.problems.front().message);
  std::vector<Rule> rules;
  for (const Node& node : document.root->children) {
    rules.push_back(rule(node));
    const auto same = [&](const Rule& other) { return other.id == rules.back().id; };
    if (std::ranges::count_if(rules, same) > 1) broken(rules.back().id.text() + " stands twice");
  }
  return rules;
}

}  // namespace

std::span<const Rule> all_rules() {
  static const std::vector<Rule> rules = read_rules();
  return rules;
}

const Rule* find_rule(std::string_view id) {
  const std::span<const Rule> rules = all_rules();
  const auto found = std::ranges::find_if(rules, [&](const Rule& rule) { return rule.id.text() == id; });
  return found == rules.end() ? nullptr : &*found;
}

}  // namespace berthwright
