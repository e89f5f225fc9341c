#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/exact/angle.h>
#include <berthwright/exact/mass.h>
#include <berthwright/geometry/point.h>

#include "plan/reading.h"

namespace berthwright {

// Each reads one value, or reports what is wrong with it and gives nothing.

std::optional<Length> as_length(const Node& node, Reading& reading);
/// A length that is not zero.
std::optional<Length> as_size(const Node& node, Reading& reading);
std::optional<Turn> as_turn(const Node& node, Reading& reading);
std::optional<Mass> as_mass(const Node& node, Reading& reading);
/// A whole number of at most six digits, as a number or as a text.
std::optional<int> as_count(const Node& node, Reading& reading);
std::optional<bool> as_flag(const Node& node, Reading& reading);
/// Any text up to 200 characters; may be empty.
std::optional<std::string> as_text(const Node& node, Reading& reading);
/// As `as_text`, up to 2,000 characters and not empty.
std::optional<std::string> as_note(const Node& node, Reading& reading);
/// As `as_text`, but not empty.
std::optional<std::string> as_name(const Node& node, Reading& reading);
/// 1 to 40 letters, digits, spaces, hyphens and underscores; "floor" is taken.
std::optional<std::string> as_id(const Node& node, Reading& reading);
/// A name by which another thing is called: not judged as an id, it is looked up later.
std::optional<std::string> as_reference(const Node& node, Reading& reading);
std::optional<std::vector<std::string>> as_references(const Node& node, Reading& reading);
/// Front, rear, left and right, and what the road calls the sides.
std::optional<Wall> as_wall(const Node& node, Reading& reading);
/// A list of [x, y] pairs, at most 200.
std::optional<std::vector<Point>> as_points(const Node& node, Reading& reading);
template <class Value>
struct Word {
  std::string_view word;
  Value value;
};
/// A word that people type for one of ours; it is refused, and the cure names ours.
struct Synonym {
  std::string_view typed;
  std::string_view ours;
};

/// The names of the walls for `as_wall`.
std::array<Word<Wall>, 9> wall_words(bool drives_on_right);

/// The position of a text among `words`.
std::optional<std::size_t> as_choice(const Node& node, Reading& reading, std::span<const std::string> words,
                                     std::span<const Synonym> synonyms = {});

/// A reader of one of the `words`.
template <class Value, std::size_t count>
auto one_of(const std::array<Word<Value>, count>& words, std::span<const Synonym> synonyms = {}) {
  return [&words, synonyms](const Node& node, Reading& reading) -> std::optional<Value> {
    std::vector<std::string> names;
    names.reserve(count);
    for (const Word<Value>& word : words) names.emplace_back(word.word);
    const std::optional<std::size_t> chosen = as_choice(node, reading, names, synonyms);
    return chosen ? std::optional(words[*chosen].value) : std::nullopt;
  };
}

/// What mends an id that has a fault.
inline constexpr std::string_view cure_of_id =
    "write a short one of letters, digits, spaces, hyphens and underscores; what is printed is the \"name\"";
/// Whether `text` may be an id; empty, or what is wrong with it.
std::string fault_of_id(std::string_view text);

/// Is it an object (list), with at most 2,000 members? If not, reports it. `what` as in "a list of openings".
bool is_object(const Node& node, Reading& reading, std::string_view what);
bool is_list(const Node& node, Reading& reading, std::string_view what);

/// "a list", "a number": what stands there, for messages.
std::string kind_of(const Node& node);
/// The value as the file has it, cut to fit a message.
std::string found_at(const Node& node);

}  // namespace berthwright
