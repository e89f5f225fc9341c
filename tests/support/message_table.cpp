#include "support/message_table.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <set>
#include <tuple>
#include <utility>

#include <berthwright/exact/measure.h>
#include <berthwright/plan/plan.h>
#include <berthwright/plan/stock.h>
#include <berthwright/solve/answer.h>
#include <berthwright/solve/site/siting.h>
#include <berthwright/view/words.h>

#include "support/every_status.h"
#include "support/odd_plans.h"
#include "support/plan_builder.h"
#include "support/source_phrases.h"

namespace berthwright {
namespace {

/// A message without its names and numbers: two of one shape are one message.
std::string shape_of(const Problem& problem) {
  std::string shape;
  bool quoted = false;
  for (const char c : problem.id + '|' + problem.message + '|' + problem.cure + '|' + problem.allowed) {
    const bool digit = c >= '0' && c <= '9';
    const bool inch_mark = !quoted && !shape.empty() && shape.back() == '0';
    if (c == '"' && !inch_mark) quoted = !quoted;
    if (quoted && c != '"') continue;
    if (digit && !shape.empty() && shape.back() == '0') continue;
    shape += digit ? '0' : c;
  }
  return shape;
}

Problems each_once(const Problems& problems) {
  std::set<std::string> shapes;
  Problems kept;
  for (const Problem& problem : problems)
    if (shapes.insert(shape_of(problem)).second) kept.push_back(problem);
  std::ranges::stable_sort(kept, {}, &Problem::id);
  return kept;
}

std::vector<std::string> files_in(const std::string& folder) {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(repository_path(folder)))
    names.push_back(folder + "/" + entry.path().filename().string());
  std::ranges::sort(names);
  return names;
}

Problems problems_of_stock() {
  Problems all;
  for (const std::string& name : files_in("plans/stock/broken")) {
    const Result<StockList> read = read_stock(repository_text(name));
    all.insert(all.end(), read.problems().begin(), read.problems().end());
  }
  return each_once(all);
}

Problems problems_of_files() {
  const std::vector<std::string> names = files_in("plans/broken");
  Problems all;
  const auto keep = [&](const Problems& more) { all.insert(all.end(), more.begin(), more.end()); };
  for (const std::string& name : names) keep(read_plan(repository_text(name)).problems());
  for (const std::string& text : texts_that_are_no_plan()) keep(read_plan(text).problems());
  for (const std::string& text : plans_that_do_not_stand()) keep(answered(plan_from(text)).problems());
  keep(heater_places(plan_that_is_too_large_to_site().plan(), {}).problems());
  return each_once(all);
}

/// Of each rule and status what differs in its cure, or says what none before it said.
std::vector<ToldFinding> told_findings() {
  std::vector<SourcePhrase> phrases;
  for (const SourcePhrase& phrase : phrases_in("src/view"))
    if (phrase.file.starts_with("src/view/tell_") || phrase.file == "src/view/sentences.cpp")
      phrases.push_back(phrase);
  std::set<std::tuple<std::string, Status, int>> kinds;
  std::set<std::pair<std::string, std::string>> said;
  std::vector<ToldFinding> all;
  std::vector<const Answered*> answers;
  for (const auto* list : {&answers_of_every_status(), &answers_that_say_more()})
    for (const auto& made : *list) answers.push_back(made.get());
  for (const Answered* made : answers)
    for (const Finding& finding : made->answer.findings) {
      ToldFinding told{finding.rule, finding.status, cure_sentence(made->plan, finding),
                       sentence(made->plan, finding)};
      const int cure = finding.cure ? static_cast<int>(finding.cure->kind) : -1;
      bool is_new = kinds.insert({finding.rule.text(), finding.status, cure}).second;
      for (const SourcePhrase& phrase : phrases)
        if (told.words.find(phrase.words) != std::string::npos ||
            told.cure.find(phrase.words) != std::string::npos)
          is_new = said.insert({finding.rule.text(), phrase.words}).second || is_new;
      if (is_new) all.push_back(std::move(told));
    }
  std::ranges::stable_sort(all, {}, [](const ToldFinding& one) { return one.status; });
  return all;
}

std::string cell(const std::string& text) {
  std::string safe;
  for (const char c : text)
    if (c == '|')
      safe += "\\|";
    else if (c == '<')
      safe += "&lt;";
    else if (c == '*' || c == '_' || c == '`')
      safe += std::string{'\\', c};
    else
      safe += c == '\n' ? ' ' : c;
  return " " + safe + " |";
}

std::string fault_rows(const Problems& problems) {
  std::string text = "| kind | mend | what is wrong | found | allowed |\n|---|---|---|---|---|\n";
  for (const Problem& p : problems)
    text += "|" + cell(p.id) + cell(p.cure) + cell(p.message) + cell(p.found) + cell(p.allowed) + "\n";
  return text;
}

std::string saying_rows(const std::vector<YardSaying>& sayings) {
  std::string text = "| command | ends with | what is said |\n|---|---|---|\n";
  for (const YardSaying& one : sayings)
    text += "|" + cell(one.command) + cell(std::to_string(one.code)) +
            cell(one.said.substr(0, one.said.find_last_not_of('\n') + 1)) + "\n";
  return text;
}

std::string asked_of(const Rule& rule) {
  if (!rule.limit) return rule.asked.empty() ? "Reports only." : "Asked: " + rule.asked + ".";
  return std::string("Asked: ") + (rule.at_least ? "at least " : "at most ") + both(*rule.limit, Unit::inch) +
         " (" + source_text(rule.source) + ").";
}

}  // namespace

std::span<const UntoldWords> untold_words() {
  constexpr std::string_view by_hand =
      "of findings made by hand in the tests Cures.*; no check makes such a cure";
  constexpr std::string_view by_program = "only of plans that a program makes";
  constexpr std::string_view every_status = "of findings turned to every status in the tests Sentences.*";
  static constexpr std::array<UntoldWords, 9> words{{
      {" larger by ", by_hand},
      {"Write into the plan where ", by_program},
      {" is kept (stowed).", by_program},
      {" upright and square to the room.", by_program},
      {" has no cushion: all of it is stowed.", by_program},
      {" does not stand upright and square to the room, so it is not known whether its cord reaches ",
       by_program},
      {"shut out", "a word that chooses a sentence, and is not printed"},
      {"measured, and the plan does not say where it is kept.", every_status},
      {"once cleared", "a word that chooses a sentence, and is not printed"},
  }};
  return words;
}

const MessageTable& message_table() {
  static const MessageTable table{
      problems_of_files(),           problems_of_stock(),          yard_sayings(),
      each_once(told_to_programs()), each_once(told_to_answers()), told_findings()};
  return table;
}

bool is_told(const MessageTable& table, const std::string& words) {
  const auto holds = [&](const std::string& text) { return text.find(words) != std::string::npos; };
  for (const Problems* problems : {&table.of_files, &table.of_stock, &table.of_programs, &table.of_answers})
    for (const Problem& p : *problems)
      if (holds(p.message) || holds(p.cure) || holds(p.found) || holds(p.allowed)) return true;
  if (std::ranges::any_of(table.of_commands, [&](const YardSaying& one) { return holds(one.said); }))
    return true;
  return std::ranges::any_of(table.findings,
                             [&](const ToldFinding& one) { return holds(one.words) || holds(one.cure); });
}

std::string messages_page(const MessageTable& table) {
  std::string page =
      "<!-- Made and compared by the tests Messages.*, from plans/broken, the checks and their sentences. "
      "Change "
      "those, not this page. -->\n"
      "# What the program says\n\n"
      "Every fault and every finding, as real plans bring it about; names and numbers are those of these "
      "plans. "
      "What mends it comes first. A test fails if a text in the sources is missing here.\n\n"
      "## Faults of a plan file\n\n" +
      fault_rows(table.of_files) + "\n## Faults of a stock file\n\n" + fault_rows(table.of_stock) +
      "\n## Faults of answers to `new`\n\n" + fault_rows(table.of_answers) +
      "\n## What the command line says\n\nWhere a command ends before its work is done, or something is "
      "wrong beside "
      "it. Folders and ports of the run are left out.\n\n" +
      saying_rows(table.of_commands) +
      "\n## Faults that only a program can make\n\nWhoever builds a plan, a length or an outline with the "
      "library "
      "may meet these; no file brings them about.\n\n" +
      fault_rows(table.of_programs) +
      "\n## Findings\n\nOf each check: what it asks, then what is said where that is met, close, not met or "
      "unknown. Where something is not met or unknown, the cure is printed first.\n";
  for (const Rule& rule : all_rules()) {
    page += "\n### " + rule.id.text() + "\n\n" + rule.title + " (" +
            std::string(word(term_of(rule.weight), English::american)) + "). " + asked_of(rule) +
            "\n\n| status | mend | what is said |\n|---|---|---|\n";
    for (const ToldFinding& one : table.findings)
      if (one.rule == rule.id)
        page += "|" + cell(std::string(word(term_of(one.status), English::american))) + cell(one.cure) +
                cell(one.words) + "\n";
  }
  page += "\n## Words that no plan of the tests brings about\n\n| words | why |\n|---|---|\n";
  for (const UntoldWords& one : untold_words())
    page += "|" + cell(std::string(one.words)) + cell(std::string(one.why)) + "\n";
  return page;
}

}  // namespace berthwright
