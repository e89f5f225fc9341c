#include <berthwright/write/interview.h>

#include <algorithm>
#include <stdexcept>
#include <utility>

#include "exact/code_points.h"
#include "write/interview_questions.h"

namespace berthwright {
namespace {

std::string without_edges(std::string_view text) {
  const std::size_t from = text.find_first_not_of(" \t\r\n");
  return from == std::string_view::npos
             ? ""
             : std::string(text.substr(from, text.find_last_not_of(" \t\r\n") - from + 1));
}

Problem refused(std::string id, std::string message, const std::string& found, std::string allowed,
                std::string cure) {
  return {.id = std::move(id),
          .message = std::move(message),
          .found = printable(found),
          .allowed = std::move(allowed),
          .cure = std::move(cure)};
}

std::string in_a_row(const std::vector<std::string>& words) {
  std::string row;
  for (const std::string& word : words) row += (row.empty() ? "" : ", ") + word;
  return row;
}

std::optional<Problem> fault_of_choice(const Question& question, const std::string& text) {
  if (std::ranges::find(question.choices, text) != question.choices.end()) return std::nullopt;
  return refused("answer.choice", "that is none of the answers", text, in_a_row(question.choices),
                 "type one of these, or its number");
}

std::optional<Problem> fault_of_length(const Question& question, const std::string& text, Unit unit) {
  const Result<Length> length = read_length(text, unit);
  if (!length) return length.problems().front();
  if (question.kind == Question::Kind::length && *length == Length{})
    return refused("answer.zero", "a size cannot be zero", text, "a size above zero",
                   "measure it; where there is none, say so in an answer before this one");
  if (question.most && *length > *question.most)
    return refused("answer.too-long", "that is too long: " + question.why_most, text,
                   "at most " + both(std::max(*question.most, Length{}), unit, {.rounding = Rounding::down}),
                   "measure again, or change an answer before this one");
  if (question.least && *length < *question.least)
    return refused("answer.too-short", "that is too short: " + question.why_least, text,
                   "at least " + both(*question.least, unit, {.rounding = Rounding::up}),
                   "measure again, or change an answer before this one");
  return std::nullopt;
}

std::optional<Problem> fault_of_text(const std::string& text) {
  constexpr std::size_t longest = 200;
  if (printable(text, every_character) == text && code_points(text).text.size() <= longest)
    return std::nullopt;
  return refused("answer.text", "that cannot be printed in one line", text,
                 "at most 200 printable characters", "type it anew");
}

std::optional<Problem> fault_of(const Question& question, const std::string& text, Unit unit) {
  switch (question.kind) {
    case Question::Kind::text:
      return fault_of_text(text);
    case Question::Kind::choice:
      return fault_of_choice(question, text);
    case Question::Kind::length:
    case Question::Kind::distance:
      return fault_of_length(question, text, unit);
  }
  throw std::logic_error("Question::Kind out of range");
}

/// A choice may be given by its number in the list, where it is not a number itself.
std::string chosen_word(const Question& question, const std::string& text) {
  const bool listed = std::ranges::find(question.choices, text) != question.choices.end();
  if (listed || text.size() != 1 || text[0] < '1' || text[0] > '9') return text;
  const auto number = static_cast<std::size_t>(text[0] - '1');
  return number < question.choices.size() ? question.choices[number] : text;
}

}  // namespace

std::optional<Question> Interview::next() const {
  for (Question& question : questions_after(*this)) {
    if (has(question.id)) continue;
    const auto ready = std::ranges::find(prepared_, question.id, &Given::id);
    if (ready != prepared_.end()) {
      question.otherwise = ready->text;
      question.good_for = "your answers say so";
    }
    return std::move(question);
  }
  return std::nullopt;
}

Result<Interview> Interview::answered(std::string_view text) const {
  const std::optional<Question> question = next();
  if (!question) throw std::logic_error("nothing is asked any more");
  std::string answer = without_edges(text);
  if (answer.empty()) answer = question->otherwise;
  if (answer.empty())
    return refused("answer.needed", "there is nothing usual here", "", "what your tape says",
                   "measure it and type it, as 74 1/2 or 6 ft 2 1/2");
  answer = chosen_word(*question, answer);
  if (const auto fault = fault_of(*question, answer, has("unit") ? unit() : Unit::inch)) return *fault;
  Interview further = *this;
  further.given_.push_back({question->id, std::move(answer)});
  return further;
}

Interview Interview::back() const {
  Interview before = *this;
  if (!before.given_.empty()) before.given_.pop_back();
  return before;
}

bool Interview::has(std::string_view id) const {
  return std::ranges::find(given_, id, &Given::id) != given_.end();
}

const std::string& Interview::word(std::string_view id) const {
  const auto found = std::ranges::find(given_, id, &Given::id);
  if (found == given_.end()) throw std::logic_error("not answered: " + std::string(id));
  return found->text;
}

Unit Interview::unit() const { return word("unit") == "in" ? Unit::inch : Unit::millimetre; }

Length Interview::length(std::string_view id) const {
  const Result<Length> read = read_length(word(id), unit());
  return read.value();
}

std::string Interview::text() const {
  std::string all = "# Answers for: berthwright new. One a line; what is missing is asked.\n";
  for (const Given& one : given_) all += one.id + ": " + one.text + "\n";
  for (const Given& one : prepared_)
    if (!has(one.id)) all += one.id + ": " + one.text + "\n";
  return all;
}

Result<Interview> interview_from(std::string_view text, bool usual) {
  Interview interview;
  std::vector<std::size_t> lines;  // of the prepared answers
  Problems problems;
  const auto fault = [&](std::size_t line, Problem problem) {
    problem.line = line;
    problem.column = 1;
    problems.push_back(std::move(problem));
  };
  std::size_t number = 0;
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t end = std::min(text.find('\n', from), text.size());
    const std::string line = without_edges(text.substr(from, end - from));
    from = end + 1;
    ++number;
    if (line.empty() || line[0] == '#') continue;
    const std::size_t colon = line.find(':');
    const std::string answer = colon == std::string::npos ? "" : without_edges(line.substr(colon + 1));
    if (answer.empty()) {
      fault(number, refused("answer.line", "this line is no answer", line, "a name, a colon and an answer",
                            "write it as length: 10 ft, or take it away"));
      continue;
    }
    const std::string id = without_edges(line.substr(0, colon));
    const auto same = std::ranges::find(interview.prepared_, id, &Interview::Given::id);
    if (same == interview.prepared_.end()) {
      interview.prepared_.push_back({id, answer});
      lines.push_back(number);
    } else {
      same->text = answer;
      lines[static_cast<std::size_t>(same - interview.prepared_.begin())] = number;
    }
  }
  const auto line_of = [&](const std::string& id) -> std::size_t {
    const auto found = std::ranges::find(interview.prepared_, id, &Interview::Given::id);
    return found == interview.prepared_.end()
               ? 0
               : lines[static_cast<std::size_t>(found - interview.prepared_.begin())];
  };
  std::optional<Question> question = interview.next();
  for (; question && (line_of(question->id) > 0 || (usual && !question->otherwise.empty()));
       question = interview.next()) {
    const Result<Interview> further = interview.answered("");
    if (!further) {
      for (Problem problem : further.problems()) {
        problem.message = question->id + ": " + problem.message;
        fault(line_of(question->id), std::move(problem));
      }
      return problems;
    }
    interview = *further;
  }
  for (const Interview::Given& one : interview.prepared_)
    if (!question && !interview.has(one.id))
      fault(line_of(one.id), refused("answer.not-asked", "nobody asks for \"" + printable(one.id) + "\" here",
                                     one.id, "answers to what is asked", "take the line away"));
  if (!problems.empty()) return problems;
  return interview;
}

}  // namespace berthwright
