#include <signal.h>

#include <cstdlib>
#include <filesystem>
#include <ostream>
#include <system_error>

#include "exact/code_points.h"
#include "yard/commands.h"
#include "yard/files.h"
#include "yard/plan_file.h"
#include "yard/saved_file.h"
#include "yard/watch_answers.h"
#include "yard/watch_work.h"

namespace berthwright {
namespace {

constexpr timespec between_looks{0, 25'000'000};
// Browsers that wait are answered at least this often, so that one that has gone away is noticed.
constexpr int looks_between_answers = 600;

/// The signals that ask a program to end, kept for `sigtimedwait` in this thread and in those it starts.
class HeldSignals {
 public:
  HeldSignals() {
    ::sigemptyset(&held_);
    for (const int one : {SIGINT, SIGTERM, SIGHUP}) ::sigaddset(&held_, one);
    ::pthread_sigmask(SIG_BLOCK, &held_, &before_);
  }
  HeldSignals(const HeldSignals&) = delete;
  HeldSignals& operator=(const HeldSignals&) = delete;
  ~HeldSignals() { ::pthread_sigmask(SIG_SETMASK, &before_, nullptr); }
  bool has_come_within(const timespec& time) const { return ::sigtimedwait(&held_, nullptr, &time) > 0; }

 private:
  sigset_t held_{};
  sigset_t before_{};
};

/// The exit code of a file that cannot be followed, after telling why.
int told_unfit(const std::string& file, std::ostream& err) {
  std::error_code ignored;
  if (file == "-") {
    err << "berthwright: watch follows a file as it is saved; standard input is none\n";
    return exit_usage;
  }
  if (std::filesystem::exists(file, ignored) && !std::filesystem::is_regular_file(file, ignored)) {
    err << "berthwright: " << printable(file, every_character)
        << ": not a plain file\n    Name a plan file.\n";
    return exit_input;
  }
  const Result<std::string> text = read_file(file, most_plan_bytes);
  if (text) return exit_fine;
  tell(text.problems(), err);
  return exit_input;
}

}  // namespace

int run_watch(const WatchRequest& request, std::ostream& out, std::ostream& err) {
  const int unfit = told_unfit(request.plan, err);
  if (unfit != exit_fine) return unfit;
  const HeldSignals signals;
  std::unique_ptr<Loopback> server;
  WatchWork work(request.plan, [&server] { server->wake(); });
  // It may be asked before this function hears of its port: a page that is open already asks all the time.
  Result<std::unique_ptr<Loopback>> opened = Loopback::opened(
      request.port, [&](const PageRequest& asked) { return watch_answer(asked, *work.board(), asked.port); });
  if (!opened) {
    tell(opened.problems(), err);
    return exit_create;
  }
  server = std::move(opened).value();
  out << printable(request.plan, every_character) << " is shown at http://127.0.0.1:" << server->port()
      << "/ and read again at every save. Ctrl-C ends it.\n"
      << std::flush;
  SavedFile file(request.plan, most_plan_bytes);
  for (int looks = 1; !signals.has_come_within(between_looks); ++looks) {
    if (std::optional<Result<std::string>> news = file.news()) work.save(std::move(*news));
    if (looks % looks_between_answers == 0) server->wake();
  }
  // Nothing is written anywhere, so nothing is lost by not waiting for drawings that nobody will see.
  if (!work.idle()) std::_Exit(out ? exit_fine : exit_write);
  server.reset();
  return exit_fine;
}

}  // namespace berthwright
