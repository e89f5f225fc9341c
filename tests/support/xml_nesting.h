#pragma once

#include <string>
#include <string_view>

namespace berthwright {

/// What is wrong with the nesting, quoting or escaping of an XML text; empty: nothing. A small reader of its
/// own, stricter than XML where our writer is: no comments, no processing instructions, no CDATA.
std::string xml_fault(std::string_view text);

}  // namespace berthwright
