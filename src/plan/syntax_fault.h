#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace berthwright {

/// What is wrong with the spelling of a JSON text, in words for somebody who types plans.
struct SyntaxFault {
  std::size_t at = 0;  ///< byte of the text to point at
  std::string message;
  std::string found;
  std::string allowed;
  std::string cure;
};

/// Turns the parser's complaint about `text` into our words. The offending token starts at `token`; the
/// parser had read `read` bytes when it gave up.
SyntaxFault syntax_fault(std::string_view complaint, std::string_view text, std::size_t token,
                         std::size_t read);

}  // namespace berthwright
