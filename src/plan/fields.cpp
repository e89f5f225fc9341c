#include "plan/fields.h"

#include <algorithm>

#include "plan/in_quotes.h"
#include "plan/meant_field.h"

namespace berthwright {
namespace {

const Node nothing{};

bool holds(const std::vector<std::string>& names, std::string_view name) {
  return std::ranges::find(names, name) != names.end();
}

std::string listed(const std::vector<std::string>& names) {
  std::string list;
  for (const std::string& name : names) list += (list.empty() ? "\"" : ", \"") + name + '"';
  return list;
}

}  // namespace

Fields::Fields(const Node* node, Reading& reading, std::string what)
    : node_(node != nullptr ? node : &nothing), reading_(reading), what_(std::move(what)) {
  is_object_ = node != nullptr && is_object(*node, reading, what_);
}

const Node* Fields::find(std::string_view name) {
  if (!holds(known_, name)) known_.emplace_back(name);
  return is_object_ ? node_->find(name) : nullptr;
}

void Fields::require(std::string_view name) { required_.emplace_back(name); }

bool Fields::has(std::string_view name) const { return is_object_ && node_->find(name) != nullptr; }

void Fields::refuse(std::string_view name, std::string why, std::string cure, std::string_view instead) {
  if (!has(name)) return;
  refused_.emplace_back(name);
  if (!instead.empty()) replaced_.emplace_back(instead);
  const Node& field = *node_->find(name);
  refusals_.push_back({.id = "field.misplaced",
                       .pointer = field.pointer,
                       .line = field.key_line,
                       .column = field.key_column,
                       .message = in_quotes(name) + " cannot stand here: " + std::move(why),
                       .found = in_quotes(name),
                       .allowed = "no " + in_quotes(name) + " in this place",
                       .cure = std::move(cure)});
}

void Fields::note_default(std::string_view name, std::string spelled, std::string why) {
  if (!is_object_ || reading_.defaults.size() >= 100 * most_things) return;
  reading_.defaults.push_back({node_->pointer + pointer_step(name), std::move(spelled), std::move(why)});
}

void Fields::finish() {
  if (!is_object_) return;
  std::vector<std::string> missing;
  for (const std::string& name : required_)
    if (!has(name) && !holds(replaced_, name)) missing.push_back(name);
  bool misspelled = false;
  for (const Node& child : node_->children)
    if (!holds(known_, child.key) && !holds(refused_, child.key))
      misspelled = report_unknown(child, missing) || misspelled;
  if (!misspelled)
    for (const Problem& refusal : refusals_) reading_.add(*node_, refusal);
  for (const std::string& name : missing)
    reading_.add(*node_, {.id = "field.missing",
                          .pointer = node_->pointer + pointer_step(name),
                          .message = what_ + " needs \"" + name + '"',
                          .found = "nothing",
                          .allowed = "the field \"" + name + '"',
                          .cure = "add \"" + name + '"'});
}

// A misspelled field that is needed is one fault, not two. Gives whether it is a known one misspelled.
bool Fields::report_unknown(const Node& child, std::vector<std::string>& missing) {
  std::optional<MeantField> meant = meant_field(child.key, missing);
  if (!meant) {
    std::vector<std::string> free = known_;
    std::erase_if(free, [&](const std::string& name) { return has(name); });
    meant = meant_field(child.key, free);
  }
  if (meant) std::erase(missing, meant->field);
  reading_.add(child, {.id = "field.unknown",
                       .line = child.key_line,
                       .column = child.key_column,
                       .message = in_quotes(child.key) + " is not a field of " + what_,
                       .found = in_quotes(child.key),
                       .allowed = listed(known_),
                       .cure = meant ? meant->cure : "take it away, or put the remark in a // comment"});
  return meant.has_value();
}

}  // namespace berthwright
