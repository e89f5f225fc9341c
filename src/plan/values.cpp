#include "plan/values.h"

#include <algorithm>
#include <charconv>
#include <utility>

#include <berthwright/exact/measure.h>

#include "plan/in_quotes.h"
#include "plan/nearest_name.h"

namespace berthwright {
namespace {

constexpr std::size_t most_points = 200;
constexpr std::string_view length_allowed =
    R"(a length such as "74 1/2 in", "6 ft 2 1/2 in", 1892.3 or "1892.3 mm")";

void wrong_type(const Node& node, Reading& reading, const std::string& expected, const std::string& allowed) {
  reading.add(node, {.id = "value.type",
                     .message = kind_of(node) + " stands here in place of " + expected,
                     .found = found_at(node),
                     .allowed = allowed,
                     .cure = "write " + allowed});
}

/// The text of a node that may hold one, or a Problem.
const std::string* text_of(const Node& node, Reading& reading, const std::string& expected) {
  if (node.kind == Node::Kind::text) return &node.text;
  wrong_type(node, reading, expected, "a text in double quotes");
  return nullptr;
}

std::string code_point(char32_t character) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string hex;
  for (; character != 0 || hex.size() < 4; character /= 16) hex.insert(hex.begin(), digits[character % 16]);
  return "U+" + hex;
}

std::optional<std::string> checked_text(const Node& node, Reading& reading, std::size_t longest) {
  const std::string* text = text_of(node, reading, "a text");
  if (text == nullptr) return std::nullopt;
  const std::u32string characters = code_points(*text).text;
  const std::u32string harmless = code_points(printable(*text, characters.size())).text;
  const std::size_t at =
      static_cast<std::size_t>(std::ranges::mismatch(characters, harmless).in1 - characters.begin());
  if (at < characters.size()) {
    reading.add(node,
                {.id = "text.unprintable",
                 .column = at + 1,
                 .message = "a character that nobody sees, or that cannot be printed, stands in this text (" +
                            code_point(characters[at]) + ")",
                 .found = found_at(node),
                 .allowed = "printable characters",
                 .cure = "type the text anew instead of pasting it"});
    return std::nullopt;
  }
  if (characters.size() > longest) {
    reading.add(node, {.id = "text.too-long",
                       .message = "this text has " + std::to_string(characters.size()) + " characters",
                       .found = found_at(node),
                       .allowed = "at most " + std::to_string(longest) + " characters",
                       .cure = "shorten it; longer remarks go into \"notes\""});
    return std::nullopt;
  }
  return *text;
}

std::optional<std::string> filled(const Node& node, Reading& reading, std::optional<std::string> text) {
  if (!text || text->find_first_not_of(' ') != std::string::npos) return text;
  reading.add(node, {.id = "text.empty",
                     .message = "this text is empty",
                     .found = "\"\"",
                     .allowed = "at least one character",
                     .cure = "write something, or take it away"});
  return std::nullopt;
}

bool fits_limit(const Node& node, Reading& reading) {
  if (node.children.size() <= most_things) return true;
  reading.add(node, {.id = "plan.too-many",
                     .message = "there are " + std::to_string(node.children.size()) + " entries here",
                     .found = std::to_string(node.children.size()) + " entries",
                     .allowed = "at most " + std::to_string(most_things) + " of a kind",
                     .cure = "look for what was pasted in twice; a plan holds one trailer"});
  return false;
}

/// The nearest word; the one of ours that stands for it when that is a synonym.
std::optional<std::string> nearest_word(std::string_view typed, std::span<const std::string> words,
                                        std::span<const Synonym> synonyms) {
  std::vector<std::string> names(words.begin(), words.end());
  for (const Synonym& synonym : synonyms) names.emplace_back(synonym.typed);
  std::optional<std::string> near = nearest_name(typed, names);
  if (!near) return near;
  const auto synonym = std::ranges::find(synonyms, std::string_view(*near), &Synonym::typed);
  return synonym == synonyms.end() ? near : std::optional(std::string(synonym->ours));
}

std::string listed(std::span<const std::string> words) {
  std::string list;
  for (const std::string& word : words) list += (list.empty() ? "\"" : ", \"") + word + '"';
  return list;
}

}  // namespace

std::optional<Length> as_length(const Node& node, Reading& reading) {
  if (node.kind != Node::Kind::text && node.kind != Node::Kind::number) {
    wrong_type(node, reading, "a length", std::string(length_allowed));
    return std::nullopt;
  }
  if (reading.other != nullptr)
    if (const auto other = reading.other->find(node.pointer); other != reading.other->end())
      return other->second;
  const Result<Length> length = read_length(node.text, reading.unit);
  if (length) {
    reading.measures.push_back({node.origin(), *length, std::nullopt});
    return *length;
  }
  for (Problem problem : length.problems()) reading.add(node, std::move(problem));
  return std::nullopt;
}

std::optional<Length> as_size(const Node& node, Reading& reading) {
  const std::optional<Length> length = as_length(node, reading);
  if (!length || *length > Length{}) return length;
  reading.add(node, {.id = "size.zero",
                     .message = "this size is zero",
                     .found = found_at(node),
                     .allowed = "a size above zero",
                     .cure = "give the size as measured"});
  return std::nullopt;
}

std::optional<Turn> as_turn(const Node& node, Reading& reading) {
  if (node.kind != Node::Kind::text && node.kind != Node::Kind::number) {
    wrong_type(node, reading, "an angle", "an angle in degrees such as 90 or \"12.5\"");
    return std::nullopt;
  }
  const Result<Turn> turn = read_turn(node.text);
  if (turn) return *turn;
  for (Problem problem : turn.problems()) reading.add(node, std::move(problem));
  return std::nullopt;
}

std::optional<Mass> as_mass(const Node& node, Reading& reading) {
  if (node.kind != Node::Kind::text && node.kind != Node::Kind::number) {
    wrong_type(node, reading, "a weight", R"(a weight such as "150 lb" or "68.5 kg")");
    return std::nullopt;
  }
  const Result<Mass> mass = read_mass(node.text, reading.unit);
  if (mass) {
    reading.measures.push_back({node.origin(), std::nullopt, *mass});
    return *mass;
  }
  for (Problem problem : mass.problems()) reading.add(node, std::move(problem));
  return std::nullopt;
}

std::optional<int> as_count(const Node& node, Reading& reading) {
  constexpr std::size_t most_digits = 6;
  const std::string& text = node.text;
  int count = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
  if ((node.kind == Node::Kind::text || node.kind == Node::Kind::number) && text.size() <= most_digits &&
      error == std::errc{} && end == text.data() + text.size() && count >= 0)
    return count;
  reading.add(node, {.id = "value.whole-number",
                     .message = "a whole number is expected here",
                     .found = found_at(node),
                     .allowed = "a whole number of at most six digits",
                     .cure = "write digits alone, without a point, a sign or a unit"});
  return std::nullopt;
}

std::optional<bool> as_flag(const Node& node, Reading& reading) {
  if (node.kind == Node::Kind::boolean) return node.text == "true";
  wrong_type(node, reading, "true or false", "true or false, without quotes");
  return std::nullopt;
}

std::optional<std::string> as_text(const Node& node, Reading& reading) {
  return checked_text(node, reading, longest_name);
}

std::optional<std::string> as_note(const Node& node, Reading& reading) {
  return filled(node, reading, checked_text(node, reading, longest_note));
}

std::optional<std::string> as_name(const Node& node, Reading& reading) {
  return filled(node, reading, as_text(node, reading));
}

std::string fault_of_id(std::string_view text) {
  constexpr std::string_view allowed = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 -_";
  if (text.empty()) return "an id is empty";
  if (text.size() > 40) return "an id is longer than 40 characters";
  if (text == "floor") return "\"floor\" is the floor of the trailer and cannot be the id of a thing";
  if (text.front() == ' ' || text.back() == ' ') return "an id begins or ends with a space";
  if (text.find_first_not_of(allowed) != std::string_view::npos)
    return "an id holds a character other than letters a to z, digits, spaces, hyphens and underscores";
  return "";
}

std::optional<std::string> as_id(const Node& node, Reading& reading) {
  const std::string* text = text_of(node, reading, "an id");
  if (text == nullptr) return std::nullopt;
  const std::string fault = fault_of_id(*text);
  if (fault.empty()) return *text;
  reading.add(node, {.id = "id.characters",
                     .message = fault,
                     .found = found_at(node),
                     .allowed = "1 to 40 letters, digits, spaces, hyphens and underscores",
                     .cure = std::string(cure_of_id)});
  return std::nullopt;
}

std::optional<std::string> as_reference(const Node& node, Reading& reading) {
  const std::string* text = text_of(node, reading, "the id of a thing");
  return text == nullptr ? std::nullopt : std::optional(*text);
}

std::optional<std::vector<std::string>> as_references(const Node& node, Reading& reading) {
  if (!is_list(node, reading, "a list of ids")) return std::nullopt;
  std::vector<std::string> ids;
  bool sound = true;
  for (const Node& child : node.children) {
    const std::optional<std::string> id = as_reference(child, reading);
    sound = sound && id;
    ids.push_back(id.value_or(""));
  }
  return sound ? std::optional(std::move(ids)) : std::nullopt;
}

std::array<Word<Wall>, 9> wall_words(bool drives_on_right) {
  const Wall curb = drives_on_right ? Wall::right : Wall::left;
  const Wall street = drives_on_right ? Wall::left : Wall::right;
  return {{{"front", Wall::front},
           {"rear", Wall::rear},
           {"left", Wall::left},
           {"right", Wall::right},
           {"curb side", curb},
           {"kerb side", curb},
           {"nearside", curb},
           {"street side", street},
           {"offside", street}}};
}

std::optional<Wall> as_wall(const Node& node, Reading& reading) {
  const auto words = wall_words(reading.drives_on_right);
  return one_of(words)(node, reading);
}

std::optional<std::vector<Point>> as_points(const Node& node, Reading& reading) {
  if (node.kind != Node::Kind::list || node.children.size() > most_points) {
    wrong_type(node, reading, "a list of points", "3 to 200 points such as [[0, 0], [24, 0], [24, 18]]");
    return std::nullopt;
  }
  std::vector<Point> points;
  bool sound = true;
  for (const Node& child : node.children) {
    if (child.kind != Node::Kind::list || child.children.size() != 2) {
      wrong_type(child, reading, "a point of two lengths", "a point such as [24, \"18 1/2\"]");
      sound = false;
      continue;
    }
    const std::optional<Length> x = as_length(child.children[0], reading);
    const std::optional<Length> y = as_length(child.children[1], reading);
    sound = sound && x && y;
    points.push_back({x.value_or(Length{}), y.value_or(Length{})});
  }
  return sound ? std::optional(std::move(points)) : std::nullopt;
}

std::optional<std::size_t> as_choice(const Node& node, Reading& reading, std::span<const std::string> words,
                                     std::span<const Synonym> synonyms) {
  const std::string* text = text_of(node, reading, "a word");
  if (text == nullptr) return std::nullopt;
  const auto found = std::ranges::find(words, *text);
  if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
  const std::optional<std::string> near = nearest_word(*text, words, synonyms);
  reading.add(node, {.id = "value.choice",
                     .message = in_quotes(*text) + " is none of the words that may stand here",
                     .found = found_at(node),
                     .allowed = listed(words),
                     .cure = near ? "write \"" + *near + '"' : "choose one of these words"});
  return std::nullopt;
}

bool is_object(const Node& node, Reading& reading, std::string_view what) {
  if (node.kind == Node::Kind::object) return fits_limit(node, reading);
  wrong_type(node, reading, std::string(what), "fields in braces { … }");
  return false;
}

bool is_list(const Node& node, Reading& reading, std::string_view what) {
  if (node.kind == Node::Kind::list) return fits_limit(node, reading);
  wrong_type(node, reading, std::string(what), "a list in brackets [ … ]");
  return false;
}

std::string kind_of(const Node& node) {
  switch (node.kind) {
    case Node::Kind::null:
      return "null";
    case Node::Kind::boolean:
      return "true or false";
    case Node::Kind::number:
      return "a number";
    case Node::Kind::text:
      return "a text";
    case Node::Kind::list:
      return "a list";
    case Node::Kind::object:
      return "a group in braces";
  }
  throw std::logic_error("Node::Kind out of range");
}

std::string found_at(const Node& node) {
  switch (node.kind) {
    case Node::Kind::text:
      return in_quotes(node.text);
    case Node::Kind::list:
      return "[ … ]";
    case Node::Kind::object:
      return "{ … }";
    case Node::Kind::null:
    case Node::Kind::boolean:
    case Node::Kind::number:
      break;
  }
  return printable(node.text);
}

}  // namespace berthwright
