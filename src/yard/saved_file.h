#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>

#include <berthwright/exact/result.h>

namespace berthwright {

/// Follows a file that others save: written in place, or replaced by another one of its name. Made to be asked
/// some forty times a second; costs one look at the folder's entry while nothing happens.
class SavedFile {
 public:
  /// Of at most `most` bytes; one more is read, so that the reader of plans can refuse what is too large.
  SavedFile(std::string path, std::size_t most) : path_(std::move(path)), most_(most) {}

  /// The bytes, when they differ from those told last; nothing while a save is under way. A file that stays
  /// away, or cannot be read, is told once, as a problem ("file.unreadable").
  std::optional<Result<std::string>> news();

 private:
  /// What changes when a file is written or replaced.
  struct Mark {
    int fault = 0;  ///< errno; 0: there is one
    std::uint64_t device = 0;
    std::uint64_t node = 0;
    std::int64_t size = 0;
    std::int64_t written_s = 0;
    std::int64_t written_ns = 0;
    std::int64_t changed_s = 0;
    std::int64_t changed_ns = 0;
    bool plain = false;
    friend bool operator==(const Mark&, const Mark&) = default;
  };
  Mark mark() const;
  std::optional<Result<std::string>> told_once(Problem problem);

  std::string path_;
  std::size_t most_;
  Mark seen_{-1};
  int looks_ = 0;  ///< since the mark changed last
  std::optional<std::string> bytes_;
  std::string trouble_;
};

}  // namespace berthwright
