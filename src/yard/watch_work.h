#pragma once

#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <string>
#include <thread>

#include "write/screen.h"

namespace berthwright {

/// A thread that does the newest of the jobs it is given: one that still waits when another comes is dropped.
class NewestJob {
 public:
  NewestJob();
  NewestJob(const NewestJob&) = delete;
  NewestJob& operator=(const NewestJob&) = delete;
  ~NewestJob();  ///< waits for the job that is under way

  void give(std::function<void()> job);
  bool idle() const;

 private:
  void work();

  mutable std::mutex mutex_;
  std::condition_variable changed_;
  std::function<void()> next_;
  bool busy_ = false;
  bool ending_ = false;
  std::thread thread_;
};

/// Turns each save of a plan into what is shown of it, what is ready first first: faults; findings; plans;
/// conversions; every other sheet. A save that is overtaken by another one is left where it stands. Two
/// threads, so that a new save does not wait for the last sheets of the one before.
class WatchWork {
 public:
  /// `published` is called from either thread after the board changed.
  WatchWork(std::string file, std::function<void()> published);

  void save(Result<std::string> text);
  std::shared_ptr<const WatchBoard> board() const;
  bool idle() const { return first_.idle() && rest_.idle(); }

 private:
  struct Stood;
  void work_out(std::size_t number, const Result<std::string>& text);
  void draw_rest(std::size_t number, const Stood& stood);
  void own_fault(std::size_t number, const std::string& words);
  void begin(std::size_t number, const Result<std::string>& text, const Problems& problems);
  bool is_newest(std::size_t number) const;
  template <class Change>
  void publish(std::size_t number, const Change& change);

  std::function<void()> published_;
  mutable std::mutex mutex_;
  std::shared_ptr<const WatchBoard> board_;
  std::size_t newest_ = 0;
  NewestJob rest_;
  NewestJob first_;
};

}  // namespace berthwright
