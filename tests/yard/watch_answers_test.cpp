#include "yard/watch_answers.h"

#include <gtest/gtest.h>

#include <array>
#include <memory>

namespace berthwright {
namespace {

Picture small_picture(const std::string& name) {
  return {name, "Title", "Words", PaperLength::micrometres(100'000), PaperLength::micrometres(80'000),
          std::make_shared<const std::string>("<svg>" + name + "</svg>")};
}

WatchBoard small_board() {
  WatchBoard board;
  board.file = "plans/wren.json";
  board.edition = 7;
  board.save = 3;
  board.plans = {3, std::make_shared<const std::vector<ScreenSheet>>(
                        std::vector<ScreenSheet>{{"day", "day", small_picture("aaaa"), {}}})};
  board.conversions = {
      3, std::make_shared<const std::vector<ScreenConversion>>(std::vector<ScreenConversion>{
             {"day to night", "From day to night", {}, {{{}, small_picture("bbbb"), small_picture("cccc")}}}})};
  return board;
}

PageRequest request_of(const std::string& path, const std::string& host = "127.0.0.1:4680") {
  PageRequest request;
  request.method = "GET";
  request.path = path;
  request.headers = {{"host", host}};
  return request;
}

int status(const PageRequest& request) {
  const std::optional<PageResponse> response = watch_answer(request, small_board(), 4680);
  return response ? response->status : 0;
}

std::string header_of(const PageResponse& response, const std::string& name) {
  for (const auto& [one, value] : response.headers)
    if (one == name) return value;
  return "";
}

TEST(WatchAnswers, ThePageAndWhatBelongsToItAreThere) {
  for (const char* path : {"/", "/watch.css", "/watch.js", "/watch.svg", "/aaaa.svg", "/bbbb.svg", "/cccc.svg"})
    EXPECT_EQ(status(request_of(path)), 200) << path;
  EXPECT_EQ(watch_answer(request_of("/bbbb.svg"), small_board(), 4680)->body, "<svg>bbbb</svg>");
}

TEST(WatchAnswers, ThereIsAPageBeforeTheFirstSaveIsRead) {
  const std::optional<PageResponse> response = watch_answer(request_of("/"), WatchBoard{}, 4680);
  ASSERT_TRUE(response);
  EXPECT_EQ(response->status, 200);
  EXPECT_NE(response->body.find("The file is being read"), std::string::npos);
}

TEST(WatchAnswers, NothingElseIs) {
  for (const char* path :
       {"", "aaaa.svg", "//", "/dddd.svg", "/aaaa", "/.svg", "/watch", "/plans/wren.json", "/../watch.js",
        "/../../../../etc/passwd", "/etc/passwd", "http://elsewhere/", "*", "/aaaa.svg/", "/aaaa.svg\n"})
    EXPECT_EQ(status(request_of(path)), 404) << path;
  EXPECT_EQ(status(request_of(std::string("/aaaa.svg\0", 10))), 404);
}

// A name of somebody else's that leads to this machine is how a page from elsewhere would come in.
TEST(WatchAnswers, OnlyTheNamesOfThisMachineWithThePortAreAnswered) {
  for (const char* host : {"127.0.0.1:4680", "localhost:4680", "LOCALHOST:4680"})
    EXPECT_EQ(status(request_of("/", host)), 200) << host;
  for (const char* host : {"", "127.0.0.1", "localhost", "127.0.0.1:4681", "127.0.0.1:46800", "evil.example:4680",
                           "127.0.0.1.evil.example:4680", "127.0.0.2:4680", "[::1]:4680", "0.0.0.0:4680",
                           "localhost.:4680", "user@127.0.0.1:4680", "127.0.0.1:4680, evil.example"})
    EXPECT_EQ(status(request_of("/", host)), 403) << host;
  PageRequest none = request_of("/");
  none.headers.clear();
  EXPECT_EQ(status(none), 403);
  PageRequest twice = request_of("/");
  twice.headers.emplace_back("host", "127.0.0.1:4680");
  EXPECT_EQ(status(twice), 403);
}

TEST(WatchAnswers, PagesOfOtherOriginsAreRefused) {
  const auto with = [](std::initializer_list<std::pair<std::string, std::string>> more) {
    PageRequest request = request_of("/aaaa.svg");
    request.headers.insert(request.headers.end(), more.begin(), more.end());
    return status(request);
  };
  EXPECT_EQ(with({{"origin", "http://127.0.0.1:4680"}}), 200);
  EXPECT_EQ(with({{"origin", "http://evil.example"}}), 403);
  EXPECT_EQ(with({{"origin", "http://127.0.0.1:9999"}}), 403);
  EXPECT_EQ(with({{"origin", "null"}}), 403);
  EXPECT_EQ(with({{"sec-fetch-site", "same-origin"}}), 200);
  EXPECT_EQ(with({{"sec-fetch-site", "none"}}), 200);
  EXPECT_EQ(with({{"sec-fetch-site", "cross-site"}, {"sec-fetch-mode", "no-cors"}, {"sec-fetch-dest", "image"}}),
            403);
  EXPECT_EQ(with({{"sec-fetch-site", "same-site"}, {"sec-fetch-mode", "no-cors"}}), 403);
  EXPECT_EQ(with({{"sec-fetch-site", "cross-site"}, {"sec-fetch-mode", "navigate"}, {"sec-fetch-dest", "iframe"}}),
            403);
  // A person who follows a link to the address.
  EXPECT_EQ(with({{"sec-fetch-site", "cross-site"}, {"sec-fetch-mode", "navigate"}, {"sec-fetch-dest", "document"}}),
            200);
}

TEST(WatchAnswers, NothingCanBeWritten) {
  for (const char* method : {"POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "get", ""}) {
    PageRequest request = request_of("/");
    request.method = method;
    const std::optional<PageResponse> response = watch_answer(request, small_board(), 4680);
    ASSERT_TRUE(response);
    EXPECT_EQ(response->status, 405) << method;
    EXPECT_EQ(header_of(*response, "Allow"), "GET, HEAD");
  }
  PageRequest head = request_of("/");
  head.method = "HEAD";
  EXPECT_EQ(status(head), 200);
}

TEST(WatchAnswers, TheNextEditionIsWaitedForUnlessItIsThere) {
  PageRequest request = request_of("/next");
  request.after = "7";
  EXPECT_FALSE(watch_answer(request, small_board(), 4680));
  request.waited = true;
  EXPECT_EQ(watch_answer(request, small_board(), 4680)->body, "7");
  request.waited = false;
  for (const char* other : {"6", "", "8", "x", "07"}) {
    request.after = other;
    EXPECT_EQ(watch_answer(request, small_board(), 4680)->body, "7") << other;
  }
}

TEST(WatchAnswers, EveryResponseForbidsWhatIsNotOurs) {
  for (const char* path : {"/", "/watch.css", "/watch.js", "/watch.svg", "/aaaa.svg", "/nothing"}) {
    const PageResponse response = *watch_answer(request_of(path), small_board(), 4680);
    const std::string policy = header_of(response, "Content-Security-Policy");
    EXPECT_TRUE(policy.starts_with("default-src 'none'; script-src 'self'; style-src 'self';")) << path;
    EXPECT_EQ(policy.find("unsafe"), std::string::npos);
    EXPECT_EQ(policy.find("http"), std::string::npos);
    EXPECT_NE(policy.find("frame-ancestors 'none'"), std::string::npos);
    EXPECT_EQ(header_of(response, "X-Content-Type-Options"), "nosniff") << path;
    EXPECT_EQ(header_of(response, "Cross-Origin-Resource-Policy"), "same-origin") << path;
    EXPECT_EQ(header_of(response, "Cache-Control") == "no-store", std::string(path) != "/aaaa.svg") << path;
  }
}

// No style or script within the page, and nothing that it would fetch from elsewhere.
TEST(WatchAnswers, ThePageKeepsToItsOwnPolicy) {
  const std::string page = watch_answer(request_of("/"), small_board(), 4680)->body;
  for (const char* forbidden : {" style=", "<style", "javascript:", "http://", "https://", "//", " onload=", "<script>"})
    EXPECT_EQ(page.find(forbidden), std::string::npos) << forbidden;
  for (const std::string_view text : {watch_style(), watch_script()}) {
    EXPECT_EQ(text.find("http"), std::string_view::npos);
    EXPECT_EQ(text.find("innerHTML ="), std::string_view::npos);
    EXPECT_EQ(text.find("eval"), std::string_view::npos);
  }
}

}  // namespace
}  // namespace berthwright
