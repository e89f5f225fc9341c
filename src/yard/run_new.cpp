#include <fcntl.h>
#include <signal.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <iostream>
#include <optional>
#include <stdexcept>
#include <string>
#include <system_error>
#include <utility>
#include <vector>

#include <berthwright/plan/house_text.h>
#include <berthwright/view/words.h>
#include <berthwright/write/interview.h>
#include <berthwright/write/outputs.h>

#include "exact/code_points.h"
#include "yard/commands.h"
#include "yard/files.h"
#include "yard/plan_file.h"

namespace berthwright {
namespace {

constexpr std::size_t most_answers = 1U << 20U;

/// What Ctrl-C says; a signal may not reach for anything else.
std::array<char, 1024> words_at_interrupt{};
std::size_t interrupt_length = 0;

extern "C" void say_and_leave(int) {
  constexpr int interrupted = 130;  // as shells have it: 128 and the number of the signal
  [[maybe_unused]] const ssize_t said = ::write(STDERR_FILENO, words_at_interrupt.data(), interrupt_length);
  ::_exit(interrupted);
}

/// While it lives, Ctrl-C tells where the answers are.
class InterruptWords {
 public:
  explicit InterruptWords(const std::string& words) {
    interrupt_length = std::min(words.size(), words_at_interrupt.size());
    std::copy_n(words.data(), interrupt_length, words_at_interrupt.data());
    struct sigaction now {};
    now.sa_handler = say_and_leave;
    ::sigaction(SIGINT, &now, &before_);
  }
  InterruptWords(const InterruptWords&) = delete;
  InterruptWords& operator=(const InterruptWords&) = delete;
  ~InterruptWords() { ::sigaction(SIGINT, &before_, nullptr); }

 private:
  struct sigaction before_ {};
};

std::string kept_file(const NewRequest& request) { return request.plan + ".answers"; }

std::string shown_path(const std::string& path) { return printable(path, every_character); }

void tell_faults(const std::string& where, const Problems& problems, std::ostream& err) {
  for (const Problem& problem : problems) {
    err << "berthwright: " << where;
    if (problem.line > 0) err << ", line " << problem.line;
    err << ": " << printable(problem.message, every_character) << "\n    mend:    " << problem.cure
        << "\n    found:   " << printable(problem.found)
        << "\n    allowed: " << printable(problem.allowed, every_character) << '\n';
  }
}

/// What is wrong with an answer that stands in the line above.
void tell_beneath(const Problems& problems, std::ostream& out) {
  for (const Problem& problem : problems)
    out << "  No: " << printable(problem.message, every_character) << ".\n    mend:    " << problem.cure
        << "\n    allowed: " << printable(problem.allowed, every_character) << '\n';
}

/// The answers of files and flags, as far as they go; or none and the exit code.
std::optional<Interview> begun(const NewRequest& request, std::ostream& out, std::ostream& err, int& code) {
  std::string text;
  std::string where = "the answers";
  std::error_code ignored;
  const bool kept = request.answers.empty() && std::filesystem::exists(kept_file(request), ignored);
  if (kept || !request.answers.empty()) {
    where = kept ? kept_file(request) : request.answers;
    const Result<std::string> file = read_file(where, most_answers);
    if (!file) {
      tell(file.problems(), err);
      code = exit_input;
      return std::nullopt;
    }
    if (kept) out << "Going on with the answers in " << shown_path(where) << ".\n";
    text = *file + "\n";
  }
  for (const std::string& answer : request.answer) text += answer + "\n";
  const Result<Interview> interview = interview_from(text, request.usual);
  if (interview) return *interview;
  tell_faults(shown_path(where), interview.problems(), err);
  code = exit_usage;
  return std::nullopt;
}

void put_question(const Question& question, std::ostream& out) {
  out << '\n' << question.asked << '\n';
  // Numbers beside numbers would only confuse.
  const bool are_numbers =
      std::ranges::all_of(question.choices, [](const std::string& one) { return one.size() == 1; });
  for (std::size_t i = 0; i < question.choices.size(); ++i)
    out << "  " << (are_numbers ? "" : std::to_string(i + 1) + "  ") << question.choices[i] << '\n';
  if (!question.otherwise.empty())
    out << "  Enter: " << question.otherwise << " – " << question.good_for << '\n';
  out << "> " << std::flush;
}

bool keep(const Interview& interview, const NewRequest& request, std::ostream& err, int& code) {
  code = write_named_file(kept_file(request), interview.text(), err);
  return code == exit_fine;
}

/// Asks until all is known; false: standard input ended before.
bool asked_all(Interview& interview, const NewRequest& request, std::ostream& out, std::ostream& err,
               int& code) {
  const std::string kept = kept_file(request);
  std::optional<InterruptWords> words;
  for (std::optional<Question> question = interview.next(); question; question = interview.next()) {
    if (!words) {
      words.emplace("\nThe answers so far are kept in " + shown_path(kept) +
                    "; the same command goes on from there.\n");
      out << "Lengths may be typed as 74 1/2, 6 ft 2 1/2 in, 1892 mm or 1.9 m. \"back\" goes back, Ctrl-C "
             "keeps what was answered in "
          << shown_path(kept) << ".\n";
    }
    if (!keep(interview, request, err, code)) return false;
    if (request.usual && !question->otherwise.empty()) {
      if (const Result<Interview> further = interview.answered("")) {
        interview = *further;
        continue;
      }
    }
    put_question(*question, out);
    std::string line;
    if (!std::getline(std::cin, line)) {
      err << "\nberthwright: the answers ended before all was asked; those so far are kept in "
          << shown_path(kept) << "\n    Go on with the same command, or give what was asked: --answer \""
          << question->id << ": …\""
          << (question->otherwise.empty() ? "; nothing is usual here" : ", or --usual to take what is usual")
          << ".\n";
      code = exit_input;
      return false;
    }
    if (line == "back") {
      interview = interview.back();
    } else {
      const Result<Interview> further = interview.answered(line);
      if (further)
        interview = *further;
      else
        tell_beneath(further.problems(), out);
    }
  }
  return !words || keep(interview, request, err, code);
}

/// The plan with the best cushions that close each of its bays; without, where none does.
std::string with_cushions(const std::string& text, Length thickness, const std::string& bed,
                          std::ostream& out) {
  const Result<Plan> plan = read_plan(text);
  if (!plan) return text;  // told when it is checked
  const Configuration* day = plan->configuration("day");
  const Configuration* night = plan->configuration("night");
  SplitLimits limits;
  limits.thickness = thickness;
  const Result<NightBays> found = night_bays(*plan, *day, *night, thickness);
  if (!found || found->bays.empty()) {
    out << "No bay is closed by night, so no cushions were proposed.\n";
    return text;
  }
  std::vector<BaySplits> splits;
  for (const NightBay& bay : found->bays) splits.push_back(splits_of(bay, limits));
  std::vector<ChosenSplit> chosen;
  for (const BaySplits& one : splits)
    if (!one.best.empty()) chosen.push_back({.splits = &one, .index = 0, .others = {}, .bed = bed});
  if (chosen.empty()) {
    out << "No cushions that are seats and backs by day close the bed: see berthwright split.\n";
    return text;
  }
  const Result<std::string> whole =
      with_parts_of(text, plan_text_with(*plan, text, chosen), {"pieces", "configurations", "beds"});
  if (!whole)
    throw std::logic_error("a begun plan is no plan with its cushions: " + whole.problems().front().message);
  const Result<UnitText> bare = in_unit(*whole, (*plan)->unit);
  return house_text(bare->text).value();
}

/// Tells the alerts that the check does not find met or cannot know, and the advice that it does not find
/// met.
void tell_check(const std::string& text, std::ostream& out) {
  const Result<Plan> plan = read_plan(text);
  const Result<Answer> answer = plan ? answered(*plan) : Result<Answer>(plan.problems());
  if (!answer) {
    for (const Problem& problem : answer.problems())
      out << "It does not stand yet: " << problem.message << ".\n";
    return;
  }
  std::vector<std::string> alerts;
  std::vector<std::string> advice;
  for (const Finding& finding : answer->findings) {
    const Weight weight = find_rule(finding.rule.text())->weight;
    const bool not_met = finding.status == Status::not_met;
    if (weight == Weight::alert && (not_met || finding.status == Status::unknown))
      alerts.push_back(sentence(*plan, finding));
    else if (weight == Weight::advice && not_met)
      advice.push_back(sentence(*plan, finding));
  }
  out << (alerts.empty() ? "Its check finds every alert met or close.\n"
                         : "Its check finds alerts that are not met or not known:\n");
  for (const std::string& alert : alerts) out << "  " << alert << '\n';
  if (!advice.empty()) out << "Of its advice this is not met:\n";
  for (const std::string& one : advice) out << "  " << one << '\n';
}

}  // namespace

int run_new(const NewRequest& request, std::ostream& out, std::ostream& err) {
  if (!may_write(request.plan, request.force, err)) return exit_create;
  int code = exit_fine;
  std::optional<Interview> interview = begun(request, out, err, code);
  if (!interview || !asked_all(*interview, request, out, err, code)) return code;
  const Result<std::string> started = started_plan(*interview);
  if (!started) {
    tell_faults("the answers", started.problems(), err);
    return exit_usage;
  }
  for (const std::string& line : misfits_of(*interview)) out << line << '\n';
  const std::string text =
      with_cushions(*started, interview->length("cushions"), bed_of_layout(interview->word("layout")), out);
  code = write_named_file(request.plan, text, err);
  if (code != exit_fine) return code;
  out << "Written: " << shown_path(request.plan) << '\n';
  tell_check(text, out);
  out << "Next: berthwright draw " << shown_path(request.plan) << '\n';
  return exit_fine;
}

}  // namespace berthwright
