#include "support/house_laws.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <utility>

namespace house {
namespace {

bool is_word(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}

std::vector<std::string_view> lines_of(std::string_view text) {
  std::vector<std::string_view> lines;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    lines.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

std::vector<std::string_view> split(std::string_view text, char mark) {
  std::vector<std::string_view> parts;
  for (;;) {
    const std::size_t at = text.find(mark);
    parts.push_back(text.substr(0, at));
    if (at == std::string_view::npos) return parts;
    text.remove_prefix(at + 1);
  }
}

/// "geometry/region.h" of a file of the product, wherever it lies; empty for any other file.
std::string_view place_in_house(std::string_view path) {
  for (const std::string_view wing : {"include/berthwright/", "src/"}) {
    if (path.starts_with(wing)) return path.substr(wing.size());
  }
  return {};
}

/// "geometry/region.h" of an include of ours; empty for the standard library and for guests.
std::string_view place_of_include(std::string_view include) {
  std::string_view inside = include.substr(1, include.size() - 2);
  const bool ours = inside.starts_with("berthwright/");
  if (ours) inside.remove_prefix(std::string_view("berthwright/").size());
  return ours || include.front() == '"' ? inside : std::string_view{};
}

/// The first segment of an angle include that is neither ours nor the standard library's; else empty.
std::string_view guest_of(std::string_view include) {
  const std::string_view inside = include.substr(1, include.size() - 2);
  const bool standard = inside.find_first_of("/.") == std::string_view::npos;
  if (include.front() == '"' || standard || inside.starts_with("berthwright/")) return {};
  return split(inside, '/').front();
}

bool is_header(std::string_view path) { return path.ends_with(".h"); }

template <class List>
int level_in(const List& list, std::string_view name) {
  const auto found = std::ranges::find(list, name);
  return found == list.end() ? -1 : static_cast<int>(found - list.begin());
}

bool permitted(const Permit& permit, std::string_view path) {
  return std::ranges::any_of(permit.paths, [&](std::string_view pattern) { return matches(pattern, path); });
}

bool has_word(std::string_view code, std::string_view word) {
  for (std::size_t at = code.find(word); at != std::string_view::npos; at = code.find(word, at + 1)) {
    const std::size_t end = at + word.size();
    const bool open_front = is_word(word.front()) && at > 0 && is_word(code[at - 1]);
    const bool open_back = is_word(word.back()) && end < code.size() && is_word(code[end]);
    if (!open_front && !open_back) return true;
  }
  return false;
}

/// The length of what starts at `at` and is not code: a comment, a text, a character. 0 if it is code.
std::size_t not_code(std::string_view text, std::size_t at) {
  const std::string_view rest = text.substr(at);
  const auto until = [&](std::string_view end, std::size_t from) {
    const std::size_t found = rest.find(end, from);
    return found == std::string_view::npos ? rest.size() : found + end.size();
  };
  const bool after_word = at > 0 && is_word(text[at - 1]);
  if (rest.starts_with("//")) return std::min(rest.find('\n'), rest.size());
  if (rest.starts_with("/*")) return until("*/", 2);
  if (rest.starts_with("R\"") && !after_word) {
    const std::string_view tag = rest.substr(2, rest.find('(') - 2);
    return until(")" + std::string(tag) + "\"", 2);
  }
  // 1'000 is a number, not the start of a character.
  if (rest.front() != '"' && (rest.front() != '\'' || after_word)) return 0;
  std::size_t end = 1;
  while (end < rest.size() && rest[end] != rest.front() && rest[end] != '\n')
    end += rest[end] == '\\' ? 2U : 1U;
  return std::min(end + 1, rest.size());
}

}  // namespace

Tree read_tree(const std::string& root) {
  Tree tree;
  for (const std::string_view wing : {"include", "src", "tests"}) {
    for (auto entry = std::filesystem::recursive_directory_iterator(std::filesystem::path(root) / wing);
         entry != std::filesystem::recursive_directory_iterator(); ++entry) {
      if (entry->path().filename() == "node_modules") entry.disable_recursion_pending();
      const std::string kind = entry->path().extension().string();
      if (!entry->is_regular_file() || (kind != ".h" && kind != ".cpp" && kind != ".mjs")) continue;
      std::ifstream file(entry->path(), std::ios::binary);
      std::string text(std::istreambuf_iterator<char>(file), {});
      tree[std::filesystem::relative(entry->path(), root).generic_string()] = std::move(text);
    }
  }
  return tree;
}

bool matches(std::string_view pattern, std::string_view path) {
  const std::size_t star = pattern.find('*');
  if (star == std::string_view::npos) return pattern == path;
  if (!path.starts_with(pattern.substr(0, star))) return false;
  const std::string_view rest = pattern.substr(star + 1);
  for (std::size_t from = star; from <= path.size(); ++from) {
    if (matches(rest, path.substr(from))) return true;
  }
  return false;
}

std::string code_of(std::string_view text) {
  std::string code;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t skipped = not_code(text, at);
    code += skipped == 0 ? text[at] : ' ';
    at += std::max<std::size_t>(skipped, 1);
  }
  return code;
}

std::vector<std::string> includes_of(std::string_view text) {
  std::vector<std::string> includes;
  for (std::string_view line : lines_of(text)) {
    line.remove_prefix(std::min(line.find_first_not_of(" \t#"), line.size()));
    const std::size_t open = line.find_first_of("<\"");
    if (!line.starts_with("include") || open == std::string_view::npos) continue;
    const std::size_t close = line.find_first_of(">\"", open + 1);
    if (close != std::string_view::npos) includes.emplace_back(line.substr(open, close - open + 1));
  }
  return includes;
}

Complaints climbing_includes(const Tree& tree, const std::vector<std::string_view>& floors) {
  Complaints complaints;
  for (const auto& [path, text] : tree) {
    const std::string_view place = place_in_house(path);
    if (place.empty()) continue;
    const bool is_main = place == "main.cpp";
    const int floor = is_main ? static_cast<int>(floors.size()) : level_in(floors, split(place, '/').front());
    if (floor < 0) complaints.push_back(path + ": stands on no floor");
    for (const std::string& include : includes_of(text)) {
      const std::string_view target = place_of_include(include);
      if (target.empty()) continue;
      const int below = level_in(floors, split(target, '/').front());
      if (below < 0) complaints.push_back(path + ": " + include + " names no floor");
      if (below > floor) complaints.push_back(path + ": " + include + " climbs");
      if (is_main && below >= 0 && below + 1 < floor)
        complaints.push_back(path + ": " + include + " goes past the top floor");
    }
  }
  return complaints;
}

Complaints climbing_rooms(const Tree& tree, std::string_view floor,
                          const std::vector<std::string_view>& rooms,
                          const std::vector<std::string_view>& ground) {
  const auto level =
      [&](std::string_view place) {  // 0 ground, 1… rooms, last the files above them; -1 unknown
        const std::vector<std::string_view> parts = split(place, '/');
        if (parts.size() > 2) return level_in(rooms, parts[1]) < 0 ? -1 : level_in(rooms, parts[1]) + 1;
        const bool low = level_in(ground, parts[1].substr(0, parts[1].find('.'))) >= 0;
        return low ? 0 : static_cast<int>(rooms.size()) + 1;
      };
  const std::string start = std::string(floor) + "/";
  Complaints complaints;
  for (const auto& [path, text] : tree) {
    const std::string_view place = place_in_house(path);
    if (!place.starts_with(start)) continue;
    if (level(place) < 0) complaints.push_back(path + ": stands in no room");
    for (const std::string& include : includes_of(text)) {
      const std::string_view target = place_of_include(include);
      if (!target.starts_with(start)) continue;
      if (level(target) > level(place)) complaints.push_back(path + ": " + include + " climbs");
    }
  }
  return complaints;
}

Complaints guests_in_headers(const Tree& tree) {
  Complaints complaints;
  for (const auto& [path, text] : tree) {
    if (place_in_house(path).empty() || !is_header(path)) continue;
    for (const std::string& include : includes_of(text)) {
      if (!guest_of(include).empty()) complaints.push_back(path + ": " + include + " is a guest in a header");
    }
  }
  return complaints;
}

Complaints guests_out_of_place(const Tree& tree, const std::vector<Permit>& permits) {
  Complaints complaints;
  for (const auto& [path, text] : tree) {
    if (place_in_house(path).empty()) continue;
    for (const std::string& include : includes_of(text)) {
      const std::string_view guest = guest_of(include);
      const bool welcome = std::ranges::any_of(
          permits, [&](const Permit& permit) { return permit.thing == guest && permitted(permit, path); });
      if (!guest.empty() && !welcome)
        complaints.push_back(path + ": " + include + " is a guest out of place");
    }
  }
  return complaints;
}

Complaints words_out_of_place(const Tree& tree, const std::vector<Permit>& permits) {
  Complaints complaints;
  for (const auto& [path, text] : tree) {
    if (place_in_house(path).empty()) continue;
    const std::string code = code_of(text);
    for (const Permit& permit : permits) {
      if (has_word(code, permit.thing) && !permitted(permit, path)) {
        complaints.push_back(path + ": '" + std::string(permit.thing) + "' out of place");
      }
    }
  }
  return complaints;
}

Complaints long_files(const Tree& tree, std::size_t most, const std::vector<Excuse>& excuses) {
  Complaints complaints;
  std::set<std::string_view> used;
  for (const auto& [path, text] : tree) {
    if (lines_of(text).size() <= most) continue;
    const auto excuse = std::ranges::find(excuses, path, &Excuse::what);
    if (excuse == excuses.end() || excuse->reason.empty()) {
      complaints.push_back(path + ": " + std::to_string(lines_of(text).size()) + " lines and no reason");
    } else {
      used.insert(excuse->what);
    }
  }
  for (const Excuse& excuse : excuses) {
    if (!used.contains(excuse.what))
      complaints.push_back(std::string(excuse.what) + ": an excuse for no long file");
  }
  return complaints;
}

Complaints junk_drawers(const Tree& tree, const std::vector<std::string_view>& names) {
  Complaints complaints;
  for (const auto& [path, text] : tree) {
    std::string plain = path;
    for (char& c : plain) c = is_word(c) && c != '_' ? c : '/';
    for (const std::string_view word : split(plain, '/')) {
      if (level_in(names, word) >= 0) complaints.push_back(path + ": named for nothing");
    }
  }
  return complaints;
}

Complaints shared_names(const Tree& tree, const std::vector<Excuse>& excuses) {
  // A test may bear the name of what it tests, so the product and its tests are looked at apart.
  std::map<std::pair<bool, std::string_view>, std::set<std::string_view>> places;  // paths without ending
  for (const auto& [path, text] : tree) {
    const std::string_view inside = place_in_house(path);
    std::string_view place = inside.empty() ? std::string_view(path) : inside;
    place = place.substr(0, place.rfind('.'));
    const std::string_view name = split(place, '/').back();
    if (std::ranges::find(excuses, name, &Excuse::what) == excuses.end())
      places[{inside.empty(), name}].insert(place);
  }
  Complaints complaints;
  for (const auto& [key, where] : places) {
    if (where.size() < 2) continue;
    std::string all;
    for (const std::string_view place : where) all += (all.empty() ? "" : " and ") + std::string(place);
    complaints.push_back(all + ": one name in different places");
  }
  return complaints;
}

Complaints careless_headers(const Tree& tree) {
  constexpr std::array<std::string_view, 3> openings{"struct ", "enum class ", "class "};
  std::map<std::string, std::string> defined_in;
  Complaints complaints;
  for (const auto& [path, text] : tree) {
    if (place_in_house(path).empty() || !is_header(path)) continue;
    const std::string code = code_of(text);
    if (!has_word(code, "#pragma once")) complaints.push_back(path + ": no #pragma once");
    for (std::string_view line : lines_of(code)) {
      const auto opening =
          std::ranges::find_if(openings, [&](std::string_view o) { return line.starts_with(o); });
      if (opening == openings.end() || line.find('{') == std::string_view::npos) continue;
      line.remove_prefix(opening->size());
      if (line.starts_with("[[nodiscard]] ")) line.remove_prefix(std::string_view("[[nodiscard]] ").size());
      const auto name_end = std::ranges::find_if_not(line, is_word);
      const auto [first, fresh] = defined_in.try_emplace(std::string(line.begin(), name_end), path);
      if (!fresh)
        complaints.push_back(path + ": " + first->first + " is a type of " + first->second + " already");
    }
  }
  return complaints;
}

}  // namespace house
