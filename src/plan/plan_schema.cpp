#include "plan/plan_schema.h"

#include <algorithm>
#include <stdexcept>
#include <string>

#include "plan/schema_text.h"

namespace berthwright {
namespace {

const Node* member(const Node* node, std::string_view name) {
  return node == nullptr ? nullptr : node->find(name);
}

}  // namespace

const Node* plan_schema() {
  static const Document schema = read_document(schema_text());
  if (!schema.problems.empty())
    throw std::logic_error("plans/berthwright.schema.json: " + schema.problems.front().message);
  return &*schema.root;
}

const Node* schema_part(const Node* node, std::string_view name) {
  node = referred(node);
  if (const Node* found = member(node, name)) return found;
  if (const Node* choices = member(node, "anyOf"))
    for (const Node& choice : choices->children)
      if (const Node* found = schema_part(&choice, name)) return found;
  return nullptr;
}

const Node* referred(const Node* node) {
  const Node* reference = member(node, "$ref");
  if (reference == nullptr) return node;
  constexpr std::string_view local = "#/definitions/";
  const Node* found = reference->text.starts_with(local)
                          ? plan_schema()->find("definitions")->find(reference->text.substr(local.size()))
                          : nullptr;
  if (found == nullptr) throw std::logic_error("plans/berthwright.schema.json: no " + reference->text);
  return referred(found);
}

const Node* schema_of_member(const Node* node, std::string_view name) {
  if (const Node* listed = member(schema_part(node, "properties"), name)) return listed;
  const Node* any = schema_part(node, "additionalProperties");
  return any != nullptr && any->kind == Node::Kind::object ? any : nullptr;
}

const Node* schema_of_element(const Node* node, std::size_t index) {
  const Node* items = schema_part(node, "items");
  if (items == nullptr || items->kind == Node::Kind::object) return items;
  return index < items->children.size() ? &items->children[index] : nullptr;
}

std::size_t place_of_field(const Node* node, std::string_view name) {
  const Node* fields = schema_part(node, "properties");
  if (fields == nullptr) return 0;
  return static_cast<std::size_t>(std::ranges::find(fields->children, name, &Node::key) -
                                  fields->children.begin());
}

}  // namespace berthwright
