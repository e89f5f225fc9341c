#include "yard/files.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <system_error>
#include <vector>

namespace berthwright {
namespace {

Problem failure(std::string id, const std::string& path, const std::string& reason, std::string cure) {
  Problem problem;
  problem.id = std::move(id);
  problem.message = path + ": " + reason;
  problem.cure = std::move(cure);
  return problem;
}

std::string reason_of(int error) { return std::generic_category().message(error); }

/// A descriptor that is closed when it goes out of sight; `close` tells whether that went well.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() {
    if (number_ > STDERR_FILENO) ::close(number_);
  }
  bool open() const { return number_ >= 0; }
  int number() const { return number_; }
  bool close() {
    const int number = number_;
    number_ = -1;
    return ::close(number) == 0;
  }

 private:
  int number_;
};

bool written_whole(Descriptor& file, const std::string& bytes) {
  std::size_t done = 0;
  while (done < bytes.size()) {
    const ssize_t count = ::write(file.number(), bytes.data() + done, bytes.size() - done);
    if (count < 0 && errno == EINTR) continue;
    if (count <= 0) return false;
    done += static_cast<std::size_t>(count);
  }
  return ::fsync(file.number()) == 0 && file.close();
}

/// A file under a temporary name; removed again unless it was renamed to its goal.
class Draft {
 public:
  Draft(std::string name, std::string goal) : name_(std::move(name)), goal_(std::move(goal)) {}
  Draft(Draft&& other) noexcept : name_(std::move(other.name_)), goal_(std::move(other.goal_)) {
    other.name_.clear();
  }
  Draft(const Draft&) = delete;
  Draft& operator=(const Draft&) = delete;
  Draft& operator=(Draft&&) = delete;
  ~Draft() {
    if (!name_.empty()) ::unlink(name_.c_str());
  }
  const std::string& goal() const { return goal_; }
  bool rename() {
    if (std::rename(name_.c_str(), goal_.c_str()) != 0) return false;
    name_.clear();
    return true;
  }

 private:
  std::string name_;
  std::string goal_;
};

constexpr mode_t new_file = 0666;  // less what the person's own mask takes
constexpr mode_t anybody_writes = 0222;

/// Why `goal` must not be replaced, or nothing. `mode` is that of the file that stands there; 0: none does.
std::string reason_to_spare(const std::string& goal, mode_t& mode) {
  struct stat there {};
  if (::lstat(goal.c_str(), &there) != 0) return "";
  if (!S_ISREG(there.st_mode)) return "something that is not a plain file stands there";
  if ((there.st_mode & anybody_writes) == 0 || ::access(goal.c_str(), W_OK) != 0)
    return "the file is read-only";
  mode = there.st_mode & 07777U;
  return "";
}

}  // namespace

Result<std::string> read_file(const std::string& path, std::size_t most) {
  const bool standard_input = path == "-";
  Descriptor file(standard_input ? STDIN_FILENO : ::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (!file.open())
    return failure("file.unreadable", path, reason_of(errno),
                   "Check the name of the file and who may read it.");
  std::string text;
  std::array<char, 65536> block{};
  while (text.size() <= most) {
    const ssize_t count = ::read(file.number(), block.data(), std::min(block.size(), most + 1 - text.size()));
    if (count < 0 && errno == EINTR) continue;
    if (count < 0)
      return failure("file.unreadable", path, reason_of(errno), "Name a plan file, not a folder.");
    if (count == 0) break;
    text.append(block.data(), static_cast<std::size_t>(count));
  }
  return text;
}

Result<Written> write_files(const std::string& folder, const std::map<std::string, std::string>& files) {
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (!std::filesystem::is_directory(folder))
    return failure("output.create", folder, error ? error.message() : "not a folder",
                   "Name another folder with --out, or make room for this one.");
  std::vector<Draft> drafts;
  for (const auto& [name, bytes] : files) {
    const std::string goal = folder + "/" + name;
    mode_t mode = 0;
    if (const std::string reason = reason_to_spare(goal, mode); !reason.empty())
      return failure("output.create", goal, reason, "Move it away, or name another place to write to.");
    const std::string temporary = folder + "/." + name + "." + std::to_string(::getpid()) + ".part";
    // A file of that name is what a killed run of the same number left behind: no living one shares it.
    ::unlink(temporary.c_str());
    Descriptor file(
        ::open(temporary.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, new_file));
    if (!file.open())
      return failure("output.create", goal, reason_of(errno),
                     "Write into a folder of your own, or see who may write into this one.");
    drafts.emplace_back(temporary, goal);
    errno = 0;
    if ((mode != 0 && ::fchmod(file.number(), mode) != 0) || !written_whole(file, bytes))
      return failure("output.write", goal, reason_of(errno),
                     "Make room on the disk; the old file is untouched.");
  }
  for (Draft& draft : drafts)
    if (!draft.rename())
      return failure("output.write", draft.goal(), reason_of(errno), "Check who may write into this folder.");
  return Written{};
}

}  // namespace berthwright
