#include "yard/saved_file.h"

#include <sys/stat.h>

#include <cerrno>
#include <system_error>

#include "yard/files.h"

namespace berthwright {
namespace {

// Two saves within one tick of the clock that dates files can bear one date, so the file is read again for a
// while after each change; and one that is being replaced is away for a moment.
constexpr int looks_after_change = 12;
constexpr int looks_till_gone = 8;

}  // namespace

SavedFile::Mark SavedFile::mark() const {
  struct stat there {};
  if (::stat(path_.c_str(), &there) != 0) return {errno};
  return {0,
          std::uint64_t{there.st_dev},
          std::uint64_t{there.st_ino},
          there.st_size,
          there.st_mtim.tv_sec,
          there.st_mtim.tv_nsec,
          there.st_ctim.tv_sec,
          there.st_ctim.tv_nsec,
          S_ISREG(there.st_mode)};
}

std::optional<Result<std::string>> SavedFile::told_once(Problem problem) {
  if (trouble_ == problem.message) return std::nullopt;
  trouble_ = problem.message;
  bytes_.reset();
  return Result<std::string>(std::move(problem));
}

std::optional<Result<std::string>> SavedFile::news() {
  const Mark now = mark();
  if (now != seen_) {
    seen_ = now;
    looks_ = 0;
    return std::nullopt;  // whoever writes has time until the next look
  }
  if (looks_ >= looks_after_change) return std::nullopt;
  ++looks_;
  Problem trouble;
  trouble.id = "file.unreadable";
  trouble.cure = "It is read as soon as it is back.";
  if (now.fault != 0) {
    if (looks_ < looks_till_gone) return std::nullopt;
    trouble.message = path_ + ": " + std::generic_category().message(now.fault);
    return told_once(std::move(trouble));
  }
  // Reading a pipe would wait for who writes into it.
  if (!now.plain) {
    trouble.message = path_ + ": not a plain file";
    return told_once(std::move(trouble));
  }
  Result<std::string> text = read_file(path_, most_);
  if (!text) return told_once(text.problems().front());
  if (bytes_ == *text) return std::nullopt;
  // Cut short at this very moment: the next look sees another mark.
  if (mark() != now) return std::nullopt;
  trouble_.clear();
  bytes_ = *text;
  return text;
}

}  // namespace berthwright
