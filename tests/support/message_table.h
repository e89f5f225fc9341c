#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/exact/result.h>
#include <berthwright/solve/finding.h>

#include "support/yard_sayings.h"

namespace berthwright {

/// A finding as it is told.
struct ToldFinding {
  RuleId rule;
  Status status = Status::unknown;
  std::string cure;  ///< empty: none
  std::string words;
};

/// Words of a sentence that no plan of the tests brings about, and why not.
struct UntoldWords {
  std::string_view words;
  std::string_view why;
};
std::span<const UntoldWords> untold_words();

/// Everything that the project says of a plan, each thing once, as real plans bring it about.
struct MessageTable {
  Problems of_files;                    ///< plans/broken, texts that are no plan, plans that are too large
  Problems of_stock;                    ///< plans/stock/broken
  std::vector<YardSaying> of_commands;  ///< of the command line, files and ports
  Problems of_programs;                 ///< to those who make a plan by themselves
  Problems of_answers;                  ///< of `new`
  std::vector<ToldFinding> findings;    ///< by rule, then status; of alike ones the first
};

/// Made once in a process.
const MessageTable& message_table();
/// Whether some message holds `words`.
bool is_told(const MessageTable& table, const std::string& words);
/// plans/MESSAGES.md.
std::string messages_page(const MessageTable& table);

}  // namespace berthwright
