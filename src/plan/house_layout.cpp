#include "plan/house_layout.h"

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

namespace berthwright {
namespace {

constexpr std::size_t widest_line = 120;
constexpr std::size_t step_in = 2;

std::size_t columns(std::string_view text) {
  return static_cast<std::size_t>(
      std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xc0U) != 0x80; }));
}

bool is_container(const CommentedValue& value) { return value.kind != CommentedValue::Kind::leaf; }

bool holds_containers(const CommentedValue& value) {
  return std::ranges::any_of(value.children, is_container);
}

bool holds_objects(const CommentedValue& value) {
  return std::ranges::any_of(value.children,
                             [](const CommentedValue& c) { return c.kind == CommentedValue::Kind::object; });
}

/// A value and, with the same shape, how wide each of its values is in one line; none: it does not go in one.
struct FlatWidth {
  std::optional<std::size_t> columns;
  std::vector<FlatWidth> children;
};

/// How deep in the plan a value stands; its parts are 1 deep, each configuration 2.
bool is_section(const CommentedValue& value, std::size_t depth) {
  if (value.children.empty() || depth > 2) return false;
  if (depth == 0) return true;
  return value.kind == CommentedValue::Kind::list && (depth == 1 || holds_objects(value));
}

/// The brackets of a value in one line: "{ " and " }", "[" and "]", "{}".
std::size_t bracket_columns(const CommentedValue& value) {
  return value.kind == CommentedValue::Kind::object && !value.children.empty() ? 4 : 2;
}

/// What is written before a value in its line: its remarks and its name.
std::string opening(const CommentedValue& value) {
  std::string text;
  for (const Remark& remark : value.before)
    if (!remark.own_line) text += remark.text + " ";
  if (!value.key.empty()) text += value.key + ": ";
  return text;
}

/// Remarks with lines of their own come before those that share the line of the value.
bool has_own_lines(const CommentedValue& value) {
  return !value.before.empty() && value.before.front().own_line;
}

std::size_t behind_columns(const CommentedValue& value) {
  return value.behind.empty() ? 0 : 1 + columns(value.behind);
}

/// Without what is written before and behind it.
FlatWidth flat_width(const CommentedValue& value, std::size_t depth) {
  if (!is_container(value)) return {columns(value.text), {}};
  FlatWidth width{bracket_columns(value), {}};
  if (!value.last.empty() || is_section(value, depth)) width.columns.reset();
  for (const CommentedValue& child : value.children) {
    FlatWidth of_child = flat_width(child, depth + 1);
    const bool flat = of_child.columns && !has_own_lines(child) && child.line_end.empty();
    if (width.columns && flat)
      *width.columns += columns(opening(child)) + *of_child.columns + behind_columns(child);
    else
      width.columns.reset();
    width.children.push_back(std::move(of_child));
  }
  if (width.columns && !value.children.empty()) *width.columns += 2 * (value.children.size() - 1);
  return width;
}

struct LaidLine {
  std::string text;
  std::string line_end;
};

class HouseWriter {
 public:
  void write(const CommentedText& text) {
    write_remarks(text.root.before, 0, true);
    if (text.root.after_gap) gap();
    put(opening(text.root), 0);
    write_value(text.root, flat_width(text.root, 0), {.indent = 0, .depth = 0, .after = 0});
    end_line();
    write_remarks(text.after, 0, false);
  }

  std::string text() const {
    std::string all;
    for (std::size_t from = 0; from < lines_.size();) {
      std::size_t end = from;
      while (end < lines_.size() && !lines_[end].line_end.empty()) ++end;
      const std::size_t aligned = common_column(from, end);
      for (; from < end; ++from) {
        const std::size_t written = columns(lines_[from].text);
        all += lines_[from].text + std::string(std::max(aligned, written) - written + 2, ' ') +
               lines_[from].line_end;
        all += '\n';
      }
      if (from < lines_.size()) all += lines_[from++].text + '\n';
    }
    return all;
  }

 private:
  struct Spot {
    std::size_t indent = 0;
    std::size_t depth = 0;  ///< in the plan, as for `is_section`
    std::size_t after = 0;  ///< signs that must follow it in its last line
    bool in_list = false;   ///< it, or the object whose fields are written, is one of a list
  };

  /// The column of the comments behind lines [from, end), where all fit; else 0.
  std::size_t common_column(std::size_t from, std::size_t end) const {
    std::size_t column = 0;
    for (std::size_t i = from; i < end; ++i) column = std::max(column, columns(lines_[i].text));
    for (std::size_t i = from; i < end; ++i)
      if (column + 2 + columns(lines_[i].line_end) > widest_line) return 0;
    return column;
  }

  bool fresh() const { return line_.empty(); }
  void end_line(std::string comment = {}) {
    line_.erase(line_.find_last_not_of(' ') + 1);
    if (!fresh()) lines_.push_back({std::exchange(line_, {}), std::move(comment)});
  }
  void put(std::string_view text, std::size_t indent = 0) {
    if (text.empty()) return;
    if (fresh()) line_ = std::string(indent, ' ');
    line_ += text;
  }
  /// One empty line, where a line begins.
  void gap() {
    if (fresh() && !lines_.empty() && !lines_.back().text.empty()) lines_.emplace_back();
  }

  void write_remarks(const std::vector<Remark>& remarks, std::size_t indent, bool first) {
    for (const Remark& remark : remarks) {
      if (!remark.own_line) continue;
      end_line();
      if (remark.after_gap && !first) gap();
      first = false;
      put(remark.text, indent);
      end_line();
    }
  }

  void write_value(const CommentedValue& value, const FlatWidth& width, const Spot& spot) {
    if (!is_container(value)) return put(value.text, spot.indent);
    const std::size_t column = fresh() ? spot.indent : columns(line_);
    if (width.columns && column + *width.columns + spot.after <= widest_line)
      return put(flat_text(value), spot.indent);
    if (spot.in_list && value.kind == CommentedValue::Kind::object)
      return write_entry(value, width, spot, column);
    if (hugs(value) && !is_section(value, spot.depth)) {
      put("[", spot.indent);
      write_value(value.children[0], width.children[0],
                  {.indent = spot.indent, .depth = spot.depth + 1, .after = spot.after + 1, .in_list = true});
      return put("]", spot.indent);
    }
    put(value.kind == CommentedValue::Kind::object ? "{" : "[", spot.indent);
    end_line();
    write_children(value, width, {.indent = spot.indent + step_in, .depth = spot.depth});
    end_line();
    put(value.kind == CommentedValue::Kind::object ? "}" : "]", spot.indent);
  }

  /// A list of one object takes it between its brackets.
  static bool hugs(const CommentedValue& value) {
    if (value.kind != CommentedValue::Kind::list || value.children.size() != 1 || !value.last.empty())
      return false;
    const CommentedValue& only = value.children[0];
    return only.kind == CommentedValue::Kind::object && only.before.empty() && only.line_end.empty();
  }

  /// An object of a list: its first field stands behind its brace, the others below that.
  void write_entry(const CommentedValue& value, const FlatWidth& width, const Spot& spot,
                   std::size_t column) {
    put("{ ", spot.indent);
    write_children(
        value, width,
        {.indent = column + step_in, .depth = spot.depth, .after = spot.after + 2, .in_list = true});
    put(fresh() ? "}" : " }", column);
  }

  void write_children(const CommentedValue& value, const FlatWidth& width, const Spot& spot) {
    const bool one_a_line =
        is_section(value, spot.depth) || (value.kind == CommentedValue::Kind::list && holds_objects(value));
    for (std::size_t i = 0; i < value.children.size(); ++i) {
      const CommentedValue& child = value.children[i];
      const bool last = i + 1 == value.children.size();
      std::size_t after = last ? spot.after : 1;
      if (last && !child.line_end.empty()) after = 0;
      after += behind_columns(child);
      const bool begins = one_a_line || begins_line(value, i, spot.in_list);
      if (i > 0 && !fresh()) {
        if (begins || has_own_lines(child) || !fits(child, width.children[i], i, after))
          end_line();
        else
          put(" ");
      }
      if (spot.depth == 0 && i > 0 && is_container(child)) gap();
      write_remarks(child.before, spot.indent, i == 0);
      const bool below_comment = i > 0 && !value.children[i - 1].line_end.empty();
      if (has_gap(child) && (has_own_lines(child) || (i > 0 && (begins || below_comment)))) gap();
      put(opening(child), spot.indent);
      write_value(child, width.children[i],
                  {.indent = spot.indent,
                   .depth = spot.depth + 1,
                   .after = after,
                   .in_list = value.kind == CommentedValue::Kind::list});
      if (!child.behind.empty()) put(" " + child.behind);
      if (!last) put(",");
      if (!child.line_end.empty()) end_line(child.line_end);
    }
    if (!value.last.empty()) end_line();
    write_remarks(value.last, spot.indent, value.children.empty());
  }

  /// A field that holds more fields begins a line. The second one of a list's object does not: it belongs to
  /// the name before it.
  static bool begins_line(const CommentedValue& value, std::size_t i, bool in_list) {
    if (value.kind != CommentedValue::Kind::object || (in_list && i == 1)) return false;
    return value.children[i].kind == CommentedValue::Kind::object || holds_containers(value.children[i]);
  }

  bool fits(const CommentedValue& child, const FlatWidth& width, std::size_t i, std::size_t after) const {
    const std::size_t column = columns(line_) + 1 + columns(opening(child));
    if (width.columns) return column + *width.columns + after <= widest_line;
    return i == 1 && column < widest_line;
  }

  /// Does an empty line stand above it (below the remarks that have lines of their own)?
  static bool has_gap(const CommentedValue& value) {
    const auto shared = std::ranges::find(value.before, false, &Remark::own_line);
    return shared == value.before.end() ? value.after_gap : shared->after_gap;
  }

  static std::string flat_text(const CommentedValue& value) {
    if (!is_container(value)) return value.text;
    const bool object = value.kind == CommentedValue::Kind::object;
    std::string text = object ? "{" : "[";
    for (std::size_t i = 0; i < value.children.size(); ++i) {
      const CommentedValue& child = value.children[i];
      if (i > 0 || object) text += i > 0 ? ", " : " ";
      text += opening(child) + flat_text(child);
      if (!child.behind.empty()) text += " " + child.behind;
    }
    if (object && !value.children.empty()) text += ' ';
    return text + (object ? "}" : "]");
  }

  std::string line_;
  std::vector<LaidLine> lines_;
};

}  // namespace

std::string house_layout(const CommentedText& text) {
  HouseWriter writer;
  writer.write(text);
  return writer.text();
}

}  // namespace berthwright
