#include "yard/loopback.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <memory>
#include <thread>
#include <vector>

#include "support/loopback_client.h"

namespace berthwright {
namespace {

using std::chrono::milliseconds;

class LoopbackTest : public testing::Test {
 protected:
  // "/wait" is put off once; everything else is echoed.
  static std::optional<PageResponse> echo(const PageRequest& request) {
    if (request.path == "/wait" && !request.waited) return std::nullopt;
    if (request.path == "/throw") throw std::runtime_error("of a test");
    return PageResponse{200, "text/plain", request.method + " " + request.path + " " + request.after, {{"X-Own", "1"}}};
  }
  std::unique_ptr<Loopback> server = Loopback::opened(0, &LoopbackTest::echo).value();
  std::string said(const std::string& bytes, milliseconds patience = milliseconds(3000)) const {
    LoopbackClient client(server->port());
    client.send(bytes);
    return client.response(patience);
  }
};

TEST_F(LoopbackTest, AnswersWithWhatItIsGiven) {
  const std::string response = fetched(server->port(), "/page?after=12&other=3");
  EXPECT_EQ(status_of(response), 200);
  EXPECT_EQ(body_of(response), "GET /page 12");
  EXPECT_NE(response.find("X-Own: 1\r\n"), std::string::npos);
  const std::string head = said("HEAD / HTTP/1.1\r\nHost: x\r\n\r\n", milliseconds(300));
  EXPECT_EQ(status_of(head), 200);
  EXPECT_EQ(body_of(head), "");
}

TEST_F(LoopbackTest, OneConnectionServesManyRequests) {
  LoopbackClient client(server->port());
  for (int i = 0; i < 5; ++i) {
    client.send(get_request(server->port(), "/" + std::to_string(i)));
    EXPECT_EQ(body_of(client.response()), "GET /" + std::to_string(i) + " ");
  }
}

TEST_F(LoopbackTest, IsNotThereForOtherMachines) {
  // Every address of 127.0.0.0/8 is this machine's; only the one is listened to.
  EXPECT_TRUE(LoopbackClient(server->port(), "127.0.0.1").connected());
  EXPECT_FALSE(LoopbackClient(server->port(), "127.0.0.2").connected());
}

TEST_F(LoopbackTest, ATakenPortIsToldWithAFreeOne) {
  const auto second = Loopback::opened(server->port(), &LoopbackTest::echo);
  ASSERT_FALSE(second);
  const Problem& problem = second.problems().front();
  EXPECT_EQ(problem.id, "port.taken");
  EXPECT_EQ(problem.message, "port " + std::to_string(server->port()) + " is taken by another program");
  ASSERT_TRUE(problem.cure.starts_with("Free now: --port ")) << problem.cure;
  EXPECT_TRUE(Loopback::opened(std::stoi(problem.cure.substr(17)), &LoopbackTest::echo));
}

TEST_F(LoopbackTest, APortIsFreeAgainAtOnce) {
  const int port = server->port();
  fetched(port, "/");
  server.reset();
  EXPECT_FALSE(LoopbackClient(port).connected());
  EXPECT_TRUE(Loopback::opened(port, &LoopbackTest::echo));
}

TEST_F(LoopbackTest, WhoeverWaitsIsWokenAndKeepsNobodyElseWaiting) {
  std::vector<std::unique_ptr<LoopbackClient>> waiting;
  for (int i = 0; i < 3; ++i) {
    waiting.push_back(std::make_unique<LoopbackClient>(server->port()));
    waiting.back()->send(get_request(server->port(), "/wait"));
  }
  EXPECT_EQ(waiting.front()->response(milliseconds(100)), "");
  EXPECT_EQ(body_of(fetched(server->port(), "/other")), "GET /other ");
  waiting.pop_back();  // one goes away without a word
  server->wake();
  for (const auto& client : waiting) EXPECT_EQ(body_of(client->response()), "GET /wait ");
  // The same connection may wait again.
  waiting.front()->send(get_request(server->port(), "/wait"));
  EXPECT_EQ(waiting.front()->response(milliseconds(100)), "");
  server->wake();
  EXPECT_EQ(body_of(waiting.front()->response()), "GET /wait ");
}

TEST_F(LoopbackTest, EndsWhileSomebodyWaits) {
  LoopbackClient client(server->port());
  client.send(get_request(server->port(), "/wait"));
  EXPECT_EQ(client.response(milliseconds(100)), "");
  server.reset();
}

TEST_F(LoopbackTest, RequestsThatNoBrowserSendsAreRefusedOrDropped) {
  const std::string host = "Host: 127.0.0.1\r\n";
  EXPECT_EQ(status_of(said("GET /" + std::string(100'000, 'a') + " HTTP/1.1\r\n" + host + "\r\n")), 414);
  EXPECT_EQ(status_of(said("GET / HTTP/1.1\r\n" + host + "X: " + std::string(100'000, 'b') + "\r\n\r\n")), 431);
  std::string many = "GET / HTTP/1.1\r\n" + host;
  for (int i = 0; i < 5000; ++i) many += "X" + std::to_string(i) + ": y\r\n";
  EXPECT_EQ(status_of(said(many + "\r\n")), 431);
  // What is sent along is not waited for.
  EXPECT_EQ(status_of(said("POST / HTTP/1.1\r\n" + host + "Content-Length: 99999999999\r\n\r\nabc")), 200);
  EXPECT_EQ(status_of(said("GET / HTTP/1.1\r\n" + host + "Content-Length: 50\r\n\r\nabc")), 200);
  EXPECT_EQ(status_of(said("GET / HTTP/1.1\r\n" + host + "Transfer-Encoding: chunked\r\n\r\n5\r\nab")), 200);
  EXPECT_EQ(status_of(said("NONSENSE\r\n\r\n", milliseconds(200))) / 100 == 2, false);
  said(std::string(64, '\0') + "\r\n\r\n", milliseconds(200));
  said("\x16\x03\x01\x02", milliseconds(100));
  EXPECT_EQ(said("GET /throw HTTP/1.1\r\n" + host + "\r\n"), "");
  EXPECT_EQ(body_of(fetched(server->port(), "/still")), "GET /still ");
}

TEST_F(LoopbackTest, ManyClientsThatSayNothingKeepNobodyElseWaiting) {
  std::vector<std::unique_ptr<LoopbackClient>> silent;
  for (int i = 0; i < 40; ++i) {
    silent.push_back(std::make_unique<LoopbackClient>(server->port()));
    silent.back()->send("GET / HT");
  }
  EXPECT_EQ(body_of(fetched(server->port(), "/other")), "GET /other ");
}

TEST_F(LoopbackTest, TwoClientsAtOnceAreBothServed) {
  std::atomic<int> served = 0;
  const auto ask = [&] {
    LoopbackClient client(server->port());
    for (int i = 0; i < 100; ++i) {
      client.send(get_request(server->port(), "/x"));
      if (body_of(client.response()) == "GET /x ") ++served;
    }
  };
  std::thread other(ask);
  ask();
  other.join();
  EXPECT_EQ(served, 200);
}

}  // namespace
}  // namespace berthwright
