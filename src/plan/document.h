#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/exact/result.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// One value of a JSON text, as the file spells it, and where it stands.
struct Node {
  enum class Kind { null, boolean, number, text, list, object };
  Kind kind = Kind::null;
  std::string key;      ///< its name, when it is a member of an object
  std::string pointer;  ///< JSON pointer
  std::size_t line = 1;
  std::size_t column = 1;      ///< in characters, of its first sign
  std::size_t key_column = 0;  ///< of its name
  std::size_t key_line = 0;
  std::string text;      ///< of a text; a number or a boolean exactly as spelled ("609.60")
  bool escaped = false;  ///< a text spelled with backslashes: columns inside it cannot be told
  std::vector<Node> children;

  const Node* find(std::string_view name) const;  ///< member of an object; nullptr: none
  Origin origin() const { return {pointer, line, column}; }
};

/// A JSON text as a tree. `root` is absent when the text could not be read to its end.
struct Document {
  std::optional<Node> root;
  Problems problems;  ///< syntax, doubled names, limits; in file order
};

inline constexpr std::size_t largest_file = 4U << 20U;
inline constexpr std::size_t deepest_nesting = 64;
inline constexpr std::size_t most_values = 200'000;

/// Reads JSON with comments (// and /* */). Of a doubled name the first value is kept. Never throws on input.
Document read_document(std::string_view text);

/// The node at `pointer`, or the innermost one on the way to it.
const Node& innermost(const Node& root, std::string_view pointer);

/// `key` as one step of a JSON pointer, with its slash.
std::string pointer_step(std::string_view key);

}  // namespace berthwright
