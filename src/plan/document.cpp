#include "plan/document.h"

#include <algorithm>
#include <charconv>
#include <set>
#include <utility>

#include <nlohmann/json.hpp>

#include "plan/in_quotes.h"
#include "plan/syntax_fault.h"
#include "plan/tokens.h"

namespace berthwright {
namespace {

using Json = nlohmann::json;

/// Walks over the text one token at a time, in step with the parser, and knows line and column.
class Cursor {
 public:
  explicit Cursor(std::string_view text) : text_(text) {}

  std::size_t at() const { return at_; }
  std::size_t line() const { return line_; }
  std::size_t column() const { return column_; }

  void go_to(std::size_t place) {
    for (; at_ < std::min(place, text_.size()); ++at_) {
      if (text_[at_] == '\n') {
        ++line_;
        column_ = 1;
      } else if ((static_cast<unsigned char>(text_[at_]) & 0xc0U) != 0x80) {
        ++column_;
      }
    }
  }

  /// To the first sign of the next token: past space, comments, commas and colons.
  void to_token() {
    for (;;) {
      const std::size_t sign = text_.find_first_not_of(" \t\r\n,:", at_);
      go_to(sign == std::string_view::npos ? text_.size() : sign);
      const std::string_view rest = text_.substr(at_);
      const bool to_line_end = rest.starts_with("//");
      if (!to_line_end && !rest.starts_with("/*")) return;
      const std::size_t end = to_line_end ? rest.find('\n') : rest.find("*/", 2);
      if (end == std::string_view::npos && !to_line_end) return;
      go_to(end == std::string_view::npos ? text_.size() : at_ + end + (to_line_end ? 1 : 2));
    }
  }

  /// Past the token that starts here; how it is spelled.
  std::string_view take(Node::Kind kind) {
    std::size_t end = at_ + 1;
    switch (kind) {
      case Node::Kind::text:
        for (; end < text_.size() && text_[end] != '"'; ++end)
          if (text_[end] == '\\') ++end;
        ++end;
        break;
      case Node::Kind::number:
        end = text_.find_first_not_of("+-.0123456789eE", at_);
        break;
      case Node::Kind::null:
      case Node::Kind::boolean:
        end = text_.find_first_not_of("aeflnrstu", at_);
        break;
      case Node::Kind::list:
      case Node::Kind::object:
        break;  // one bracket
    }
    const std::size_t from = at_;
    go_to(std::min(end, text_.size()));
    return text_.substr(from, at_ - from);
  }

 private:
  std::string_view text_;
  std::size_t at_ = 0;
  std::size_t line_ = 1;
  std::size_t column_ = 1;
};

/// Builds the tree from the parser's events.
class TreeBuilder final : public nlohmann::json_sax<Json> {
 public:
  explicit TreeBuilder(std::string_view text) : text_(text), cursor_(text) {}

  bool null() override { return leaf(Node::Kind::null); }
  bool boolean(bool) override { return leaf(Node::Kind::boolean); }
  bool number_integer(number_integer_t) override { return leaf(Node::Kind::number); }
  bool number_unsigned(number_unsigned_t) override { return leaf(Node::Kind::number); }
  bool number_float(number_float_t, const string_t&) override { return leaf(Node::Kind::number); }
  bool string(string_t& text) override { return leaf(Node::Kind::text, &text); }
  bool binary(binary_t&) override { return false; }
  bool start_object(std::size_t) override { return open(Node::Kind::object); }
  bool start_array(std::size_t) override { return open(Node::Kind::list); }
  bool end_object() override { return close(); }
  bool end_array() override { return close(); }

  bool key(string_t& name) override {
    cursor_.to_token();
    Level& level = levels_.back();
    key_ = {name, cursor_.line(), cursor_.column()};
    level.doubled = !level.names.insert(name).second;
    if (level.doubled)
      add({"json.doubled-name", level.node->pointer + pointer_step(name), 0, 0,
           "the name " + in_quotes(name) + " stands twice between the same braces", in_quotes(name),
           "each name once", "delete one of the two"});
    cursor_.take(Node::Kind::text);
    return true;
  }

  bool parse_error(std::size_t position, const std::string&, const Json::exception& error) override {
    const std::size_t done = cursor_.at();
    cursor_.to_token();
    const SyntaxFault fault =
        syntax_fault(error.what(), text_, {.done = done, .token = cursor_.at(), .read = position});
    if (fault.at < cursor_.at()) cursor_ = Cursor(text_);
    cursor_.go_to(fault.at);
    add({"json.syntax", "", 0, 0, fault.message, fault.found, fault.allowed, fault.cure});
    return false;
  }

  std::optional<Node> root;
  Problems problems;

 private:
  struct Level {
    Node* node = nullptr;
    std::set<std::string> names;
    bool doubled = false;  ///< the value now read belongs to a name seen before
  };
  struct Key {
    std::string name;
    std::size_t line = 0;
    std::size_t column = 0;
  };

  void add(Problem problem) {
    problem.line = cursor_.line();
    problem.column = cursor_.column();
    problems.push_back(std::move(problem));
  }

  /// A new node where the next token starts; nullptr when there are too many.
  Node* begin(Node::Kind kind) {
    cursor_.to_token();
    if (++values_ > most_values) {
      add({"json.too-many-values", "", 0, 0, "the file holds more than 200,000 values", "more",
           "at most 200,000 values", "split it into several plans"});
      return nullptr;
    }
    Node node;
    node.kind = kind;
    node.line = cursor_.line();
    node.column = cursor_.column();
    if (levels_.empty()) return &root.emplace(std::move(node));
    Node& parent = *levels_.back().node;
    if (parent.kind == Node::Kind::object) {
      node.key = key_.name;
      node.key_line = key_.line;
      node.key_column = key_.column;
      node.pointer = parent.pointer + pointer_step(node.key);
    } else {
      node.pointer = parent.pointer + '/' + std::to_string(parent.children.size());
    }
    return &parent.children.emplace_back(std::move(node));
  }

  bool leaf(Node::Kind kind, string_t* text = nullptr) {
    Node* node = begin(kind);
    if (node == nullptr) return false;
    const std::string_view spelled = cursor_.take(kind);
    node->text = text != nullptr ? std::move(*text) : std::string(spelled);
    node->escaped = text != nullptr && spelled.find('\\') != std::string_view::npos;
    ended();
    return true;
  }

  bool open(Node::Kind kind) {
    Node* node = begin(kind);
    if (node == nullptr) return false;
    if (levels_.size() == deepest_nesting) {
      add({"json.too-deep", "", 0, 0, "brackets and braces stand more than 64 deep in each other",
           "a 65th level", "at most 64 levels", "look for a bracket that is never closed"});
      return false;
    }
    cursor_.take(kind);
    levels_.push_back({node, {}, false});
    return true;
  }

  bool close() {
    cursor_.to_token();
    cursor_.take(levels_.back().node->kind);
    levels_.pop_back();
    ended();
    return true;
  }

  void ended() {
    if (levels_.empty() || !std::exchange(levels_.back().doubled, false)) return;
    levels_.back().node->children.pop_back();
  }

  std::string_view text_;
  Cursor cursor_;
  std::vector<Level> levels_;
  Key key_;
  std::size_t values_ = 0;
};

std::optional<Problem> unreadable(std::string_view text) {
  if (text.size() > largest_file)
    return Problem{"json.too-large",
                   "",
                   1,
                   1,
                   "the file is larger than 4 MiB",
                   std::to_string(text.size()) + " bytes",
                   "at most 4,194,304 bytes",
                   "a plan is text that a person typed: check that this is the right file"};
  const std::size_t zero = text.find('\0');
  if (zero == std::string_view::npos) return std::nullopt;
  Cursor cursor(text);
  cursor.go_to(zero);
  return Problem{"json.zero-byte",
                 "",
                 cursor.line(),
                 cursor.column(),
                 "the file holds a zero byte, so it is not plain text",
                 "a zero byte",
                 "text in UTF-8",
                 "save the file as UTF-8 text"};
}

}  // namespace

const Node* Node::find(std::string_view name) const {
  const auto found = std::ranges::find(children, name, &Node::key);
  return kind == Kind::object && found != children.end() ? &*found : nullptr;
}

Document read_document(std::string_view text) {
  if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
  if (std::optional<Problem> problem = unreadable(text)) return {std::nullopt, {*std::move(problem)}};
  TreeBuilder builder(text);
  const bool whole = Json::sax_parse(text, &builder, Json::input_format_t::json, true, true);
  if (!whole) builder.root.reset();
  return {std::move(builder.root), std::move(builder.problems)};
}

const Node& innermost(const Node& root, std::string_view pointer) {
  const Node* node = &root;
  for (bool deeper = true; deeper;) {
    deeper = false;
    for (const Node& child : node->children) {
      if (!pointer.starts_with(child.pointer)) continue;
      if (pointer.size() > child.pointer.size() && pointer[child.pointer.size()] != '/') continue;
      node = &child;
      deeper = true;
      break;
    }
  }
  return *node;
}

std::string pointer_step(std::string_view key) {
  std::string step = "/";
  for (const char c : key) {
    if (c == '~')
      step += "~0";
    else if (c == '/')
      step += "~1";
    else
      step += c;
  }
  return step;
}

}  // namespace berthwright
