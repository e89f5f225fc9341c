#pragma once

#include <cstddef>
#include <string>

#include <berthwright/exact/id.h>

namespace berthwright {

using FixtureId = Id<struct FixtureTag>;
using PieceId = Id<struct PieceTag>;
using LeafId = Id<struct LeafTag>;
using OpeningId = Id<struct OpeningTag>;
using ConfigurationId = Id<struct ConfigurationTag>;
using BedId = Id<struct BedTag>;
using RuleId = Id<struct RuleTag>;

/// Where in the plan file a thing was written, for messages and for editors.
struct Origin {
  std::string pointer;  ///< JSON pointer
  std::size_t line = 0;
  std::size_t column = 0;
  friend bool operator==(const Origin&, const Origin&) = default;
};

/// The four walls, and the four ways a face can look. Left and right as one faces forward, to the hitch.
enum class Wall { front, rear, left, right };

}  // namespace berthwright
