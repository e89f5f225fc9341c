#include <gtest/gtest.h>
#include <poll.h>
#include <pty.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <string>
#include <vector>

#include <berthwright/plan/plan.h>
#include <berthwright/write/interview.h>

#include "support/plan_builder.h"
#include "support/temporary_folder.h"

namespace berthwright {
namespace {

/// A program at a terminal of its own, at which a person types.
class TypedSession {
 public:
  TypedSession(const std::vector<std::string>& arguments, const std::string& folder) {
    child_ = forkpty(&terminal_, nullptr, nullptr, nullptr);
    if (child_ != 0) return;
    std::vector<char*> words{const_cast<char*>(BERTHWRIGHT_PROGRAM)};
    for (const std::string& argument : arguments) words.push_back(const_cast<char*>(argument.c_str()));
    words.push_back(nullptr);
    if (chdir(folder.c_str()) == 0) execv(BERTHWRIGHT_PROGRAM, words.data());
    _exit(126);
  }
  TypedSession(const TypedSession&) = delete;
  TypedSession& operator=(const TypedSession&) = delete;
  ~TypedSession() {
    if (child_ > 0 && !ended_) {
      ::kill(child_, SIGKILL);
      code();
    }
    close(terminal_);
  }

  /// Waits for a prompt, then types.
  void type(const std::string& keys) {
    ASSERT_TRUE(seen("> ")) << said;
    ASSERT_EQ(write(terminal_, keys.data(), keys.size()), static_cast<ssize_t>(keys.size()));
  }
  void enter() { ASSERT_EQ(write(terminal_, "\n", 1), 1); }
  /// Whether `words` end what is said before the program ends or 20 s are over.
  bool seen(const std::string& words) {
    while (!said.ends_with(words))
      if (!heard()) return false;
    said += ' ';  // the same prompt is not seen twice
    return true;
  }
  int code() {
    while (heard()) {
    }
    int status = 0;
    waitpid(child_, &status, 0);
    ended_ = true;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
  }

  std::string said;

 private:
  bool heard() {
    constexpr int patience = 20'000;
    pollfd waiting{terminal_, POLLIN, 0};
    if (poll(&waiting, 1, patience) <= 0) return false;
    char sign = 0;
    if (read(terminal_, &sign, 1) != 1) return false;
    said += sign;
    return true;
  }

  int terminal_ = -1;
  pid_t child_ = -1;
  bool ended_ = false;
};

class Terminal : public testing::TestWithParam<std::size_t> {
 protected:
  TemporaryFolder folder;
};

// Every layout, chosen by its number; a width in words, a door beyond the room and a way back among the
// answers.
TEST_P(Terminal, ASessionEndsInAPlanWhoseBedCloses) {
  TypedSession session({"new", "mine.json"}, folder.path());
  const std::string layout = std::to_string(GetParam() + 1);
  for (const std::string& typed :
       std::vector<std::string>{"Wren", "", "", "40 ft", "back", "10 ft", "seventy", "6 ft 4", "74", "", "",
                                "200", "50", "", "", layout})
    ASSERT_NO_FATAL_FAILURE(session.type(typed + "\n")) << typed;
  const bool aside = start_layouts()[GetParam()] == "side dinette";
  if (aside) session.type("\n");
  if (aside) session.type("10\n");
  // Enter, till nothing is asked any more.
  while (session.seen("> ")) session.enter();
  EXPECT_EQ(session.code(), 0) << session.said;
  EXPECT_NE(session.said.find("Its check finds every alert met or close."), std::string::npos)
      << session.said;
  EXPECT_NE(session.said.find("a number is expected here"), std::string::npos) << session.said;
  EXPECT_NE(session.said.find("that is too long: the room is 120 in there"), std::string::npos)
      << session.said;
  const Plan plan = plan_from(bytes_of(folder.path("mine.json")));
  EXPECT_EQ(plan->interior.width, 76_in);
  EXPECT_EQ(plan->beds.size(), start_layouts()[GetParam()].starts_with("bunk") ? 2U : 1U);
}

INSTANTIATE_TEST_SUITE_P(Layouts, Terminal, testing::Range(std::size_t{0}, start_layouts().size()));

class OneTerminal : public testing::Test {
 protected:
  TemporaryFolder folder;
};

TEST_F(OneTerminal, CtrlCKeepsTheAnswersAndSaysWhere) {
  {
    TypedSession session({"new", "mine.json"}, folder.path());
    session.type("Wren\n");
    session.type("mm\n");
    session.type("\x03");
    EXPECT_EQ(session.code(), 130) << session.said;
    EXPECT_NE(session.said.find("The answers so far are kept in mine.json.answers"), std::string::npos)
        << session.said;
  }
  const std::string kept = bytes_of(folder.path("mine.json.answers"));
  EXPECT_NE(kept.find("title: Wren\nunit: mm\n"), std::string::npos) << kept;
  TypedSession again({"new", "mine.json"}, folder.path());
  ASSERT_TRUE(again.seen("> "));
  EXPECT_NE(again.said.find("Is the room square"), std::string::npos) << again.said;
}

TEST_F(OneTerminal, AClosedTerminalLosesNothing) {
  TypedSession session({"new", "mine.json"}, folder.path());
  session.type("Wren\n");
  session.type("\x04");  // the end of what is typed
  EXPECT_EQ(session.code(), 66) << session.said;
  EXPECT_NE(bytes_of(folder.path("mine.json.answers")).find("title: Wren\n"), std::string::npos);
}

}  // namespace
}  // namespace berthwright
