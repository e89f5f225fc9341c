#include <berthwright/plan/house_text.h>

#include <algorithm>
#include <stdexcept>
#include <utility>
#include <vector>

#include <berthwright/plan/plan.h>

#include "plan/commented.h"
#include "plan/document.h"
#include "plan/house_layout.h"
#include "plan/plan_schema.h"

namespace berthwright {
namespace {

/// The last value has no comma that a comment could stand before.
void end_with_comments(CommentedValue& last) {
  if (last.behind.empty()) return;
  last.line_end = last.line_end.empty() ? last.behind : last.behind + " " + last.line_end;
  last.behind.clear();
}

/// The tree of values and that of comments have the same shape: a plan that was read has no doubled names.
void put_in_order(CommentedValue& value, const Node& node, const Node* schema) {
  const bool object = node.kind == Node::Kind::object;
  std::vector<std::pair<std::size_t, CommentedValue>> placed;
  for (std::size_t i = 0; i < node.children.size(); ++i) {
    const Node& child = node.children[i];
    put_in_order(value.children[i], child,
                 object ? schema_of_member(schema, child.key) : schema_of_element(schema, i));
    placed.emplace_back(object ? place_of_field(schema, child.key) : 0, std::move(value.children[i]));
  }
  std::ranges::stable_sort(placed, {}, [](const auto& one) { return one.first; });
  for (std::size_t i = 0; i < placed.size(); ++i) value.children[i] = std::move(placed[i].second);
  if (!value.children.empty()) end_with_comments(value.children.back());
}

bool says_the_same(const Node& a, const Node& b) {
  if (a.kind != b.kind || a.text != b.text || a.children.size() != b.children.size()) return false;
  for (std::size_t i = 0; i < a.children.size(); ++i) {
    const Node* other = a.kind == Node::Kind::object ? b.find(a.children[i].key) : &b.children[i];
    if (other == nullptr || !says_the_same(a.children[i], *other)) return false;
  }
  return true;
}

/// The member called `name` of the whole plan; a new one where there is none.
CommentedValue& part_called(CommentedValue& plan, const std::string& name) {
  const std::string key = '"' + name + '"';
  const auto found = std::ranges::find(plan.children, key, &CommentedValue::key);
  if (found != plan.children.end()) return *found;
  plan.children.emplace_back().key = key;
  return plan.children.back();
}

}  // namespace

Result<std::string> house_text(std::string_view text) {
  const Result<Plan> plan = read_plan(text);
  if (!plan) return plan.problems();
  const Document document = read_document(text);
  CommentedText sorted = commented(text);
  put_in_order(sorted.root, *document.root, plan_schema());
  std::string laid = house_layout(sorted);
  const Document again = read_document(laid);
  if (!again.root || !says_the_same(*document.root, *again.root))
    throw std::logic_error("a plan put in house order says something else");
  return laid;
}

Result<std::string> with_parts_of(std::string_view text, std::string_view other,
                                  const std::vector<std::string>& parts) {
  for (const std::string_view one : {text, other})
    if (const Result<Plan> plan = read_plan(one); !plan) return plan.problems();
  CommentedText whole = commented(text);
  CommentedText from = commented(other);
  for (const std::string& name : parts) {
    CommentedValue& part = part_called(whole.root, name);
    std::vector<Remark> remarks = std::move(part.before);
    part = std::move(part_called(from.root, name));
    part.before = std::move(remarks);
  }
  return house_text(house_layout(whole));
}

}  // namespace berthwright
