#include "yard/watch_work.h"

#include <algorithm>
#include <exception>
#include <optional>
#include <utility>

#include <berthwright/view/sheets.h>

namespace berthwright {

NewestJob::NewestJob() : thread_([this] { work(); }) {}

NewestJob::~NewestJob() {
  {
    const std::lock_guard lock(mutex_);
    ending_ = true;
    next_ = nullptr;
  }
  changed_.notify_all();
  thread_.join();
}

void NewestJob::give(std::function<void()> job) {
  {
    const std::lock_guard lock(mutex_);
    next_ = std::move(job);
  }
  changed_.notify_all();
}

bool NewestJob::idle() const {
  const std::lock_guard lock(mutex_);
  return !busy_ && !next_;
}

void NewestJob::work() {
  std::unique_lock lock(mutex_);
  for (;;) {
    changed_.wait(lock, [this] { return ending_ || next_; });
    if (ending_) return;
    const std::function<void()> job = std::exchange(next_, nullptr);
    busy_ = true;
    lock.unlock();
    job();
    lock.lock();
    busy_ = false;
  }
}

/// A plan and its answer, which points into it.
struct WatchWork::Stood {
  explicit Stood(Plan read) : plan(std::move(read)) {}
  Stood(const Stood&) = delete;
  Stood& operator=(const Stood&) = delete;
  Plan plan;
  std::optional<Answer> answer;
};

WatchWork::WatchWork(std::string file, std::function<void()> published) : published_(std::move(published)) {
  WatchBoard board;
  board.file = std::move(file);
  board_ = std::make_shared<const WatchBoard>(std::move(board));
}

std::shared_ptr<const WatchBoard> WatchWork::board() const {
  const std::lock_guard lock(mutex_);
  return board_;
}

bool WatchWork::is_newest(std::size_t number) const {
  const std::lock_guard lock(mutex_);
  return number == newest_;
}

template <class Change>
void WatchWork::publish(std::size_t number, const Change& change) {
  {
    const std::lock_guard lock(mutex_);
    if (number != newest_) return;
    WatchBoard board = *board_;
    change(board);
    ++board.edition;
    board_ = std::make_shared<const WatchBoard>(std::move(board));
  }
  published_();
}

void WatchWork::save(Result<std::string> text) {
  std::size_t number = 0;
  {
    const std::lock_guard lock(mutex_);
    number = ++newest_;
  }
  first_.give([this, number, text = std::move(text)] {
    try {
      work_out(number, text);
    } catch (const std::exception& error) {
      begin(number, text, {});  // the fault may have come before that
      own_fault(number, error.what());
    }
  });
}

void WatchWork::own_fault(std::size_t number, const std::string& words) {
  publish(number, [&](WatchBoard& board) { board.own_fault = words; });
}

void WatchWork::begin(std::size_t number, const Result<std::string>& text, const Problems& problems) {
  publish(number, [&](WatchBoard& board) {
    board.save = number;
    board.text = text ? std::make_shared<const std::string>(*text) : nullptr;
    board.problems = problems;
    board.own_fault.clear();
  });
}

void WatchWork::work_out(std::size_t number, const Result<std::string>& text) {
  if (!text) return begin(number, text, text.problems());
  Result<Plan> plan = read_plan(*text);
  begin(number, text, plan.problems());
  if (!plan) return;
  const auto stood = std::make_shared<Stood>(std::move(plan).value());
  Result<Answer> answer = answered(stood->plan);
  if (!answer) return publish(number, [&](WatchBoard& board) { board.problems = answer.problems(); });
  stood->answer = std::move(answer).value();
  const auto findings = std::make_shared<const ScreenFindings>(screen_findings(stood->plan, *stood->answer));
  publish(number, [&](WatchBoard& board) { board.findings = {number, findings}; });
  if (!is_newest(number)) return;
  const auto plans = std::make_shared<const std::vector<ScreenSheet>>(
      screen_plans(stood->plan, *stood->answer, plan_sheets(stood->plan, *stood->answer)));
  publish(number, [&](WatchBoard& board) { board.plans = {number, plans}; });
  rest_.give([this, number, stood] {
    try {
      draw_rest(number, *stood);
    } catch (const std::exception& error) {
      own_fault(number, error.what());
    }
  });
}

void WatchWork::draw_rest(std::size_t number, const Stood& stood) {
  const Plan& plan = stood.plan;
  const auto refuse = [&](const Problems& problems) {
    publish(number, [&](WatchBoard& board) { board.problems = problems; });
  };
  if (!is_newest(number)) return;
  const Result<std::vector<Conversion>> found = conversions(plan);
  if (!found) return refuse(found.problems());
  std::vector<ScreenConversion> ways;
  for (const Conversion& one : *found) {
    if (!is_newest(number)) return;
    ways.push_back(screen_conversion(plan, one));
  }
  const auto shown = std::make_shared<const std::vector<ScreenConversion>>(std::move(ways));
  publish(number, [&](WatchBoard& board) { board.conversions = {number, shown}; });
  const Result<std::vector<HeaterPlaces>> heaters = heater_places(plan, {});
  if (!heaters) return refuse(heaters.problems());
  const Result<std::vector<Cover>> cut = covers(plan, plan->sewing);
  if (!cut) return refuse(cut.problems());
  if (!is_newest(number)) return;
  const std::vector<Loads> loads = loads_of(plan);
  std::vector<Sheet> all = sheets(plan, *stood.answer, {*heaters, *found, *cut, loads});
  // The plans come first, in the same order; now they know how many sheets there are.
  const std::shared_ptr<const WatchBoard> board = this->board();
  if (board->plans.save != number) return;
  std::vector<ScreenSheet> plans = *board->plans.value;
  for (std::size_t i = 0; i < plans.size(); ++i) plans[i].picture = picture_of(all.at(i));
  all.erase(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(plans.size()));
  const auto others = std::make_shared<const std::vector<ScreenSheet>>(screen_sheets(plan, all, plans));
  const auto numbered = std::make_shared<const std::vector<ScreenSheet>>(std::move(plans));
  publish(number, [&](WatchBoard& change) {
    change.plans = {number, numbered};
    change.others = {number, others};
  });
}

}  // namespace berthwright
