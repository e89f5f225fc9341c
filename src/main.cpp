#include <csignal>
#include <iostream>
#include <string>
#include <vector>

#include <berthwright/yard/program.h>

int main(int argc, char** argv) {
  // A full disk or a closed pipe is then an error of the write itself, which we report, not a silent death.
  std::signal(SIGPIPE, SIG_IGN);
  std::signal(SIGXFSZ, SIG_IGN);
  return berthwright::run(std::vector<std::string>(argv + (argc > 0 ? 1 : 0), argv + argc), std::cout,
                          std::cerr);
}
