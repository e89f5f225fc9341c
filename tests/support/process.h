#pragma once

#include <sys/types.h>

#include <cstddef>
#include <string>
#include <vector>

namespace berthwright {

/// Where and how a program is started.
struct ProcessSurroundings {
  std::string input{};           ///< what it reads from standard input
  std::string output{};          ///< the file its standard output goes to; empty: it is caught
  std::string folder{};          ///< where it works; empty: here
  std::size_t largest_file = 0;  ///< bytes that a file may grow to; 0: as here
  bool as_nobody = false;        ///< without the rights of root
  bool closed_output = false;    ///< standard output is closed
};

/// A program that runs beside the test. Killed and waited for when it goes out of sight.
class Process {
 public:
  Process(const std::string& program, std::vector<std::string> arguments,
          const ProcessSurroundings& around = {});
  Process(const Process&) = delete;
  Process& operator=(const Process&) = delete;
  ~Process();

  void kill();
  void interrupt();  ///< as Ctrl-C does
  /// Its exit code, or the number of the signal that ended it with a minus; 126 when it could not be started.
  int code();
  std::string out() const;  ///< while it runs: so far
  std::string err() const;

 private:
  pid_t id_ = -1;
  int out_ = -1;
  int err_ = -1;
  int code_ = 0;
};

}  // namespace berthwright
