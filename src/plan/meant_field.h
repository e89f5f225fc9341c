#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace berthwright {

/// A field that somebody probably meant, and how to say so.
struct MeantField {
  std::string field;
  std::string cure;  ///< write "at": …
};

/// Which of the `fields` was meant by `typed`: one of another word for it ("depth", "from_front"), else the
/// one whose letters are nearest. None: nothing is near enough.
std::optional<MeantField> meant_field(std::string_view typed, std::span<const std::string> fields);

}  // namespace berthwright
