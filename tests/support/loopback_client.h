#pragma once

#include <chrono>
#include <string>

namespace berthwright {

/// A connection to a port of this machine, byte by byte: what no browser would send can be sent.
class LoopbackClient {
 public:
  explicit LoopbackClient(int port, const std::string& address = "127.0.0.1");
  LoopbackClient(const LoopbackClient&) = delete;
  LoopbackClient& operator=(const LoopbackClient&) = delete;
  ~LoopbackClient();

  bool connected() const { return socket_ >= 0; }
  /// As much of it as is taken.
  void send(const std::string& bytes);
  /// One whole response, by its Content-Length; or what came before the other side closed, or the time was over.
  std::string response(std::chrono::milliseconds patience = std::chrono::seconds(10));

 private:
  int socket_ = -1;
  std::string rest_;
};

/// A GET as a browser of this machine sends it.
std::string get_request(int port, const std::string& path);
/// The response to it, from a connection of its own.
std::string fetched(int port, const std::string& path);
/// The number in its first line; 0: there is none.
int status_of(const std::string& response);
std::string body_of(const std::string& response);

}  // namespace berthwright
