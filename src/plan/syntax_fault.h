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

/// How far the reading of a JSON text had come when the parser gave up, in bytes.
struct Progress {
  std::size_t done = 0;   ///< the end of the last token that was taken
  std::size_t token = 0;  ///< where the offending one starts
  std::size_t read = 0;   ///< what the parser had read
};

/// Turns the parser's complaint about `text` into our words.
SyntaxFault syntax_fault(std::string_view complaint, std::string_view text, Progress progress);

}  // namespace berthwright
