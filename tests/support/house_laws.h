#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace house {

/// The sources of a project: path from its root → text. A value, so that each law is tried on made-up trees.
using Tree = std::map<std::string, std::string, std::less<>>;
/// One sentence for each breach, led by the path; sorted by path, empty when the law is kept.
using Complaints = std::vector<std::string>;

/// A thing that only some files may use: an include, a word.
struct Permit {
  std::string_view thing;
  std::vector<std::string_view> paths;  ///< patterns; `*` stands for any run of characters
};
/// A path, pattern or name that breaks a law on purpose, and why it may.
struct Excuse {
  std::string_view what;
  std::string_view reason;
};

/// Headers and sources under include/, src/ and tests/, and the scripts of tests/web.
Tree read_tree(const std::string& root);

bool matches(std::string_view pattern, std::string_view path);
/// The text with comments blanked out and the insides of string and character literals removed.
std::string code_of(std::string_view text);
/// What stands between the brackets or quotes of each include line, brackets and quotes kept.
std::vector<std::string> includes_of(std::string_view text);

/// A file of a floor may include its own floor and those before it in the list; main.cpp only the last.
Complaints climbing_includes(const Tree& tree, const std::vector<std::string_view>& floors);
/// The same inside one floor, by sub-folder. Files directly in the floor: those named in `ground` lie below
/// every room, all others above.
Complaints climbing_rooms(const Tree& tree, std::string_view floor,
                          const std::vector<std::string_view>& rooms,
                          const std::vector<std::string_view>& ground);
/// Headers include only the standard library and our own headers.
Complaints guests_in_headers(const Tree& tree);
/// Sources include a guest only where a permit allows it; a guest without permit is allowed nowhere.
Complaints guests_out_of_place(const Tree& tree, const std::vector<Permit>& permits);
/// A word of code (not of a comment or text) outside the paths that its permit names.
Complaints words_out_of_place(const Tree& tree, const std::vector<Permit>& permits);
/// Files of more than `most` lines without an excuse, and excuses that no longer have such a file.
Complaints long_files(const Tree& tree, std::size_t most, const std::vector<Excuse>& excuses);
/// Files and folders named for nothing in particular.
Complaints junk_drawers(const Tree& tree, const std::vector<std::string_view>& names);
/// Two files of one name that are not header and source of one thing, unless their name is excused.
Complaints shared_names(const Tree& tree, const std::vector<Excuse>& excuses);
/// Two headers that define a type of one name, and headers without #pragma once.
Complaints careless_headers(const Tree& tree);

}  // namespace house
