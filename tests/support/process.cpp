#include "support/process.h"

#include <fcntl.h>
#include <grp.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <filesystem>
#include <stdexcept>

namespace berthwright {
namespace {

constexpr int not_started = 126;
constexpr uid_t nobody = 65534;

// A file without a name: whatever a program writes fits in, unlike in a pipe that nobody empties.
int nameless_file() {
  std::string name = (std::filesystem::temp_directory_path() / "berthwright-process-XXXXXX").string();
  const int file = mkostemp(name.data(), O_CLOEXEC);
  if (file < 0) throw std::runtime_error("no temporary file");
  unlink(name.c_str());
  return file;
}

std::string content(int file) {
  std::string text;
  std::array<char, 65536> block{};
  for (ssize_t count = 0; (count = pread(file, block.data(), block.size(), off_t(text.size()))) > 0;)
    text.append(block.data(), std::size_t(count));
  return text;
}

// What stands between fork and exec: plain calls only, each of which the new program must find done.
[[noreturn]] void become(const char* program, char* const* arguments, const ProcessSurroundings& around,
                         int input, int output, int error) {
  bool ready = dup2(input, STDIN_FILENO) >= 0 && dup2(error, STDERR_FILENO) >= 0 &&
               (around.closed_output ? close(STDOUT_FILENO) == 0 : dup2(output, STDOUT_FILENO) >= 0);
  if (!around.folder.empty()) ready = ready && chdir(around.folder.c_str()) == 0;
  const rlimit limit{around.largest_file, around.largest_file};
  if (around.largest_file > 0) ready = ready && setrlimit(RLIMIT_FSIZE, &limit) == 0;
  if (around.as_nobody && geteuid() == 0)
    ready = ready && setgroups(0, nullptr) == 0 && setgid(nobody) == 0 && setuid(nobody) == 0;
  if (ready) execv(program, arguments);
  _exit(not_started);
}

}  // namespace

Process::Process(const std::string& program, std::vector<std::string> arguments,
                 const ProcessSurroundings& around)
    : out_(nameless_file()), err_(nameless_file()) {
  const int input = nameless_file();
  if (pwrite(input, around.input.data(), around.input.size(), 0) != ssize_t(around.input.size()))
    throw std::runtime_error("the input of the program could not be laid out");
  const int output =
      around.output.empty() ? out_ : open(around.output.c_str(), O_WRONLY | O_CREAT | O_CLOEXEC, 0666);
  std::string name = program;
  std::vector<char*> words{name.data()};
  for (std::string& argument : arguments) words.push_back(argument.data());
  words.push_back(nullptr);
  id_ = fork();
  if (id_ == 0) become(program.c_str(), words.data(), around, input, output, err_);
  close(input);
  if (output != out_) close(output);
  if (id_ < 0) throw std::runtime_error("no new process");
}

Process::~Process() {
  kill();
  code();
  close(out_);
  close(err_);
}

void Process::kill() {
  if (id_ > 0) ::kill(id_, SIGKILL);
}

void Process::interrupt() {
  if (id_ > 0) ::kill(id_, SIGINT);
}

int Process::code() {
  int status = 0;
  if (id_ > 0 && waitpid(id_, &status, 0) == id_)
    code_ = WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
  id_ = -1;
  return code_;
}

std::string Process::out() const { return content(out_); }
std::string Process::err() const { return content(err_); }

}  // namespace berthwright
