#pragma once

#include <string>
#include <string_view>

namespace berthwright {

/// Text for between tags or within a quoted attribute: the five signs of markup as entities, and U+FFFD for
/// broken UTF-8, what XML forbids, and the controls that hide or turn writing. The only function that writes
/// "&lt;". Linear; cannot fail.
std::string escaped(std::string_view text);

}  // namespace berthwright
