#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace berthwright {

/// A text in a source file that a person may be told.
struct SourcePhrase {
  std::string file;
  std::size_t line = 0;
  std::string words;
};

/// The string literals of a source that hold a space and at least eight signs, neighbours joined. Left out is
/// what no Problem and no sentence is made of: the words of exceptions, what a text is searched for, why a
/// default was taken, tables of words (constexpr).
std::vector<SourcePhrase> phrases_of(const std::string& file, std::string_view source);
/// Of every .cpp file in a folder of the repository, those named in `but` left out; files in order.
std::vector<SourcePhrase> phrases_in(const std::string& folder, const std::vector<std::string>& but = {});

}  // namespace berthwright
