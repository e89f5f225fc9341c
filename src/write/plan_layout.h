#pragma once

#include <string>
#include <string_view>

namespace berthwright {

/// A plan as people type it: one top-level field after the other, one thing a line where it fits in 120
/// columns. `Json` is the guest's ordered value.
template <class Json>
std::string laid_out(const Json& value, std::size_t indent = 0) {
  constexpr std::size_t columns = 120;
  const std::string flat = value.dump();
  const std::string spaces(indent + 2, ' ');
  const bool short_enough = flat.size() + indent <= columns && indent > 0;
  if (value.is_primitive() || value.empty() || short_enough) {
    // The guest prints no spaces; between tokens they read better.
    std::string text;
    bool quoted = false;
    for (std::size_t i = 0; i < flat.size(); ++i) {
      text += flat[i];
      if (flat[i] == '"') quoted = !quoted;
      if (quoted && flat[i] == '\\') text += flat[++i];
      if (!quoted && (flat[i] == ',' || flat[i] == ':')) text += ' ';
    }
    return text;
  }
  std::string text = value.is_object() ? "{" : "[";
  bool first = true;
  for (const auto& [key, member] : value.items()) {
    text += (first ? "\n" : ",\n") + spaces;
    first = false;
    if (value.is_object()) text += Json(key).dump() + ": ";
    text += laid_out(member, indent + 2);
  }
  return text + "\n" + std::string(indent, ' ') + (value.is_object() ? "}" : "]");
}

}  // namespace berthwright
