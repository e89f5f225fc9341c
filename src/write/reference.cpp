#include <berthwright/write/reference.h>

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "plan/document.h"
#include "plan/plan_schema.h"
#include "write/field_checks.h"

namespace berthwright {
namespace {

using NodeKind = Node::Kind;

constexpr std::size_t longest_example = 80;

std::string in_code(const std::string& text) {
  std::string code;
  for (const char c : text) code += c == '|' ? "\\|" : std::string(1, c);
  return "`" + code + "`";
}

std::string quoted_text(const std::string& text) {
  std::string all = "\"";
  for (const char c : text) all += c == '"' || c == '\\' ? std::string{'\\', c} : std::string(1, c);
  return all + '"';
}

/// A value of a plan in one line.
std::string in_one_line(const Node& node) {
  if (node.kind == NodeKind::text) return quoted_text(node.text);
  if (node.kind != NodeKind::list && node.kind != NodeKind::object) return node.text;
  const bool object = node.kind == NodeKind::object;
  std::string text;
  for (const Node& child : node.children)
    text += (text.empty() ? "" : ", ") + (object ? quoted_text(child.key) + ": " : "") + in_one_line(child);
  return object ? "{ " + text + " }" : "[" + text + "]";
}

/// "How far it comes out. Default: 90." parted into what it means and its default.
struct Described {
  std::string meaning;
  std::string otherwise;
};

Described described(std::string text) {
  const std::size_t at = text.find("Default");
  if (at == std::string::npos) return {text, ""};
  std::string otherwise = text.substr(at + 7);
  otherwise.erase(0, otherwise.starts_with(": ") ? 2 : 1);
  if (otherwise.ends_with('.')) otherwise.pop_back();
  text.resize(at);
  text.erase(text.find_last_not_of(' ') + 1);
  return {text, otherwise};
}

std::string description_of(const Node* schema) {
  if (const Node* own = schema->find("description")) return own->text;
  const Node* target = referred(schema);
  const Node* given = target == nullptr ? nullptr : target->find("description");
  return given == nullptr ? "" : given->text;
}

/// One object of the plan: its schema, and what it is called in links and in `field_checks`.
struct Section {
  std::string name;
  const Node* schema = nullptr;
  std::string heading() const {
    if (const Node* title = schema->find("title")) return title->text;
    return name;
  }
  std::string link() const {
    std::string anchor;
    for (const char c : heading())
      if (c == ' ')
        anchor += '-';
      else if (c != '.' && c != ',')
        anchor += static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
    return "[" + heading() + "](#" + anchor + ")";
  }
};

class ReferencePage {
 public:
  explicit ReferencePage(const std::vector<std::string>& plans) {
    for (const std::string& plan : plans)
      if (const Document document = read_document(plan); document.root)
        collect(*document.root, plan_schema());
    sections_.push_back({"plan", plan_schema()});
  }

  std::string text() {
    std::string page =
        "<!-- Made by `./dev demo` from berthwright.schema.json; a test compares. Change the schema, not "
        "this page. -->\n"
        "# The plan file, field by field\n\n" +
        description_of(plan_schema()) +
        "\n\nFields in bold must be there; of the others, those that exclude each other are told in their "
        "meaning. Examples come "
        "from the plans of this repository. The last column names the checks (`berthwright explain NAME` "
        "tells each) that look at a field "
        "beyond sizes and places, which count everywhere.\n";
    // Each section may add others that it names.
    for (std::size_t next = 0; next < sections_.size();) page += section_text(Section(sections_[next++]));
    page += "\n## How values are written\n\n| value | how |\n|---|---|\n";
    for (const auto& [name, schema] : values_) page += "| " + name + " | " + value_words(*schema) + " |\n";
    return page;
  }

 private:
  void collect(const Node& value, const Node* schema) {
    if (schema == nullptr) return;
    for (std::size_t i = 0; i < value.children.size(); ++i) {
      const Node& child = value.children[i];
      const bool object = value.kind == NodeKind::object;
      const Node* of_child = object ? schema_of_member(schema, child.key) : schema_of_element(schema, i);
      std::string example = in_one_line(child);
      if (of_child != nullptr && example.size() <= longest_example)
        examples_.try_emplace(of_child, std::move(example));
      collect(child, of_child);
    }
  }

  std::string section_text(const Section& section) {
    std::string text = section.name == "plan" ? "\n## The plan\n\n" : "\n## " + section.heading() + "\n\n";
    const std::string description = section.name == "plan" ? "" : description_of(section.schema);
    if (!description.empty()) text += description + "\n\n";
    text +=
        "| field | meaning | what may stand there | without it | example | checks "
        "|\n|---|---|---|---|---|---|\n";
    const Node* required = schema_part(section.schema, "required");
    for (const Node& field : schema_part(section.schema, "properties")->children) {
      const bool must = required != nullptr && std::ranges::find(required->children, field.key,
                                                                 &Node::text) != required->children.end();
      const Described words = described(description_of(&field));
      const auto example = examples_.find(&field);
      text += "| " + (must ? "**" + field.key + "**" : field.key) + " | " + words.meaning + " | " +
              kinds(&field, section.name + "." + field.key) + " | " + words.otherwise + " | " +
              (example == examples_.end() ? "" : in_code(example->second)) + " | " +
              checks_of(section.name + "." + field.key) + " |\n";
    }
    return text;
  }

  /// What may stand where a schema rules.
  std::string kinds(const Node* schema, const std::string& path) {
    if (const Node* reference = schema->find("$ref")) return named_kind(*reference);
    if (const Node* constant = schema->find("const")) return in_code(in_one_line(*constant));
    if (const Node* words = schema->find("enum")) return listed_words(*words);
    if (const Node* choices = schema->find("anyOf")) return joined(*choices, path);
    if (const Node* all = schema->find("allOf")) return kinds(&all->children.front(), path) + range(*schema);
    const Node* type = schema->find("type");
    const std::string word = type == nullptr ? "" : type->text;
    if (word == "array") return "a list, each: " + list_kinds(*schema, path);
    if (word == "object") {
      if (schema_part(schema, "properties") != nullptr) return section_link(path, schema);
      return "by name, each: " + kinds(schema_part(schema, "additionalProperties"), path);
    }
    if (word == "boolean") return "`true` or `false`";
    if (word == "integer" || word == "number")
      return (word == "integer" ? "a whole number" : "a number") + range(*schema);
    return word == "string" ? "a text" : word;
  }

  std::string list_kinds(const Node& schema, const std::string& path) {
    const Node* items = schema.find("items");
    if (items->kind == NodeKind::object) return kinds(items, path);
    std::string all;
    for (const Node& item : items->children) all += (all.empty() ? "" : ", then ") + kinds(&item, path);
    return all;
  }

  std::string named_kind(const Node& reference) {
    const std::string name = reference.text.substr(reference.text.rfind('/') + 1);
    const Node* target = plan_schema()->find("definitions")->find(name);
    if (schema_part(target, "properties") != nullptr && target->find("anyOf") == nullptr)
      return section_link(name, target);
    if (std::ranges::find(values_, name, &std::pair<std::string, const Node*>::first) == values_.end())
      values_.emplace_back(name, target);
    return "[" + name + "](#how-values-are-written)";
  }

  std::string section_link(const std::string& name, const Node* schema) {
    const auto known = std::ranges::find(sections_, schema, &Section::schema);
    if (known != sections_.end()) return known->link();
    sections_.push_back({name, schema});
    return sections_.back().link();
  }

  std::string joined(const Node& choices, const std::string& path) {
    std::string all;
    for (const Node& choice : choices.children) all += (all.empty() ? "" : " or ") + kinds(&choice, path);
    return all;
  }

  static std::string listed_words(const Node& words) {
    std::string all;
    for (const Node& word : words.children) all += (all.empty() ? "" : ", ") + in_code(in_one_line(word));
    return all;
  }

  static std::string range(const Node& schema) {
    const Node* holder = &schema;
    if (const Node* all = schema.find("allOf")) holder = &all->children.back();
    const Node* least = holder->find("minimum");
    const Node* most = holder->find("maximum");
    if (least == nullptr || most == nullptr) return "";
    return " from " + least->text + " to " + most->text;
  }

  std::string value_words(const Node& schema) {
    std::string words = description_of(&schema);
    if (const Node* listed = schema.find("enum")) words += (words.empty() ? "" : " ") + listed_words(*listed);
    return words;
  }

  static std::string checks_of(const std::string& field) {
    for (const FieldChecks& one : field_checks())
      if (one.field == field) return std::string(one.checks);
    return "";
  }

  std::map<const Node*, std::string> examples_;
  std::vector<Section> sections_;
  std::vector<std::pair<std::string, const Node*>> values_;
};

}  // namespace

std::string reference_text(const std::vector<std::string>& plans) { return ReferencePage(plans).text(); }

}  // namespace berthwright
