#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace berthwright {

/// A comment that stands before a value, its name, or a closing bracket.
struct Remark {
  std::string text;
  bool own_line = true;    ///< nothing follows it in its line
  bool after_gap = false;  ///< an empty line stands above it
};

/// One value of a JSON text with the comments that belong to it.
struct CommentedValue {
  enum class Kind { leaf, list, object };
  Kind kind = Kind::leaf;
  std::vector<Remark> before;
  bool after_gap = false;  ///< an empty line stands above it, below its remarks
  std::string key;         ///< as spelled, with its quotes; empty in a list
  std::string text;        ///< of a leaf, as spelled
  std::vector<CommentedValue> children;
  std::vector<Remark> last;  ///< before its closing bracket
  std::string behind;        ///< comment between it and its comma
  std::string line_end;      ///< comments that end its line
};

struct CommentedText {
  CommentedValue root;
  std::vector<Remark> after;
};

/// Of a text that `read_document` has read without a problem. Every comment is in it once: one that ends the
/// line of a value belongs to that value, any other to what follows it.
CommentedText commented(std::string_view text);

}  // namespace berthwright
