#include "plan/commented.h"

#include <algorithm>
#include <utility>

#include "plan/tokens.h"

namespace berthwright {
namespace {

/// Without spaces and carriage returns at the ends of its lines.
std::string trimmed(std::string_view comment) {
  std::string text;
  for (const char c : comment) {
    if (c == '\n') text.erase(text.find_last_not_of(" \t\r") + 1);
    text += c;
  }
  text.erase(text.find_last_not_of(" \t\r") + 1);
  return text;
}

bool spans_lines(std::string_view comment) { return comment.find('\n') != std::string_view::npos; }

class CommentSorter {
 public:
  explicit CommentSorter(std::string_view text) : tokens_(plan_tokens(text)) {}

  CommentedText sorted() {
    CommentedText text;
    take_remarks(text.root.before);
    take_value(text.root);
    take_remarks(text.after);
    return text;
  }

 private:
  /// Is there another token, and does it stand in the line in which the one before it ended?
  bool more() const { return at_ < tokens_.size(); }
  bool goes_on() const { return more() && tokens_[at_].line_ends == 0; }
  bool is_next(PlanToken::Kind kind) const { return more() && tokens_[at_].kind == kind; }
  const PlanToken& take() { return tokens_[at_++]; }

  void take_remarks(std::vector<Remark>& remarks) {
    while (is_next(PlanToken::Kind::comment)) {
      const PlanToken& token = take();
      Remark remark{trimmed(token.spelled), true, token.line_ends > 1};
      remark.own_line = !goes_on() || spans_lines(remark.text);
      remarks.push_back(std::move(remark));
    }
    // What stands before a remark with a line of its own has one too.
    const auto last =
        std::find_if(remarks.rbegin(), remarks.rend(), [](const Remark& r) { return r.own_line; });
    for (auto remark = last; remark != remarks.rend(); ++remark) remark->own_line = true;
  }

  /// The comments that stand in the line of the value just taken, if they are the last thing in it.
  bool take_line_end(CommentedValue& value) {
    std::size_t end = at_;
    while (end < tokens_.size() && tokens_[end].kind == PlanToken::Kind::comment &&
           tokens_[end].line_ends == 0)
      ++end;
    const bool ends_line =
        end == tokens_.size() || tokens_[end].line_ends > 0 || tokens_[end].kind == PlanToken::Kind::close;
    if (!ends_line) return false;
    while (at_ < end) add_to_line_end(value);
    return true;
  }

  void add_to_line_end(CommentedValue& value) {
    value.line_end += (value.line_end.empty() ? "" : " ") + trimmed(take().spelled);
  }

  /// What stands between a value and its comma, in its line.
  void take_behind(CommentedValue& value) {
    while (is_next(PlanToken::Kind::comment) && goes_on()) {
      const std::string comment = trimmed(tokens_[at_].spelled);
      if (spans_lines(comment) || !value.line_end.empty()) {
        add_to_line_end(value);
        continue;
      }
      value.behind += (value.behind.empty() ? "" : " ") + comment;
      ++at_;
    }
  }

  void take_value(CommentedValue& value) {
    value.after_gap = tokens_[at_].line_ends > 1;
    const PlanToken first = take();
    if (first.kind != PlanToken::Kind::open) {
      value.text = first.spelled;
      return;
    }
    value.kind = first.spelled == "{" ? CommentedValue::Kind::object : CommentedValue::Kind::list;
    std::vector<Remark> remarks;
    take_remarks(remarks);
    while (!is_next(PlanToken::Kind::close)) {
      CommentedValue child;
      child.before = std::exchange(remarks, {});
      take_member(child, value.kind == CommentedValue::Kind::object);
      if (!take_line_end(child)) take_behind(child);
      take_remarks(remarks);
      if (is_next(PlanToken::Kind::comma)) {
        take();
        // Behind a // comment no other one can stand in its line.
        if (remarks.empty() && child.line_end.empty()) take_line_end(child);
        take_remarks(remarks);
      }
      value.children.push_back(std::move(child));
    }
    value.last = std::move(remarks);
    for (Remark& remark : value.last) remark.own_line = true;
    take();
  }

  void take_member(CommentedValue& child, bool named) {
    if (!named) return take_value(child);
    const PlanToken key = take();
    child.key = key.spelled;
    take_remarks(child.before);
    take();  // the colon
    take_remarks(child.before);
    take_value(child);
    child.after_gap = key.line_ends > 1;
  }

  std::vector<PlanToken> tokens_;
  std::size_t at_ = 0;
};

}  // namespace

CommentedText commented(std::string_view text) { return CommentSorter(text).sorted(); }

}  // namespace berthwright
