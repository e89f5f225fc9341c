#include <gtest/gtest.h>

#include <iostream>
#include <string>
#include <string_view>

// One program holds all tests, and CTest runs it once for each folder: a process for every single test would
// solve and draw the demos again each time.

namespace {

constexpr std::string_view flag = "--part=";

// The first folder below tests/ of the file that holds the test; "house" for files of tests/ itself.
std::string_view part_of(const testing::TestInfo& test) {
  constexpr std::string_view tests = "/tests/";
  std::string_view path = test.file();
  path.remove_prefix(path.rfind(tests) + tests.size());
  const std::size_t folder = path.find('/');
  return folder == std::string_view::npos ? "house" : path.substr(0, folder);
}

std::string filter_of(std::string_view part) {
  const testing::UnitTest& all = *testing::UnitTest::GetInstance();
  std::string filter;
  for (int i = 0; i < all.total_test_suite_count(); ++i) {
    const testing::TestSuite& suite = *all.GetTestSuite(i);
    for (int j = 0; j < suite.total_test_count(); ++j) {
      const testing::TestInfo& test = *suite.GetTestInfo(j);
      if (part_of(test) == part) filter += std::string(suite.name()) + '.' + test.name() + ':';
    }
  }
  return filter;
}

}  // namespace

int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  for (int i = 1; i < argc; ++i) {
    const std::string_view argument = argv[i];
    const std::string filter = argument.starts_with(flag) ? filter_of(argument.substr(flag.size())) : "";
    if (filter.empty()) {
      std::cerr << "no test bears out '" << argument << "'; a part is a folder of tests/: --part=view\n";
      return 64;
    }
    testing::GTEST_FLAG(filter) = filter;
  }
  return RUN_ALL_TESTS();
}
