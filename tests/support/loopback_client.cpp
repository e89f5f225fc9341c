#include "support/loopback_client.h"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

#include <array>
#include <cstdlib>

namespace berthwright {

LoopbackClient::LoopbackClient(int port, const std::string& address)
    : socket_(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
  sockaddr_in to{};
  to.sin_family = AF_INET;
  to.sin_port = htons(static_cast<std::uint16_t>(port));
  inet_pton(AF_INET, address.c_str(), &to.sin_addr);
  if (::connect(socket_, reinterpret_cast<sockaddr*>(&to), sizeof(to)) == 0) return;
  ::close(socket_);
  socket_ = -1;
}

LoopbackClient::~LoopbackClient() {
  if (socket_ >= 0) ::close(socket_);
}

void LoopbackClient::send(const std::string& bytes) {
  for (std::size_t done = 0; done < bytes.size();) {
    const ssize_t count = ::send(socket_, bytes.data() + done, bytes.size() - done, MSG_NOSIGNAL);
    if (count <= 0) return;
    done += static_cast<std::size_t>(count);
  }
}

std::string LoopbackClient::response(std::chrono::milliseconds patience) {
  if (socket_ < 0) return "";
  const auto end = std::chrono::steady_clock::now() + patience;
  for (;;) {
    const std::size_t head = rest_.find("\r\n\r\n");
    const std::size_t length = rest_.find("Content-Length: ");
    if (head != std::string::npos && length < head) {
      const std::size_t whole = head + 4 + std::strtoul(rest_.c_str() + length + 16, nullptr, 10);
      if (rest_.size() >= whole) {
        std::string out = rest_.substr(0, whole);
        rest_.erase(0, whole);
        return out;
      }
    }
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(end - std::chrono::steady_clock::now());
    pollfd waiting{socket_, POLLIN, 0};
    std::array<char, 65536> block{};
    if (left.count() <= 0 || ::poll(&waiting, 1, static_cast<int>(left.count())) <= 0) return rest_;
    const ssize_t count = ::recv(socket_, block.data(), block.size(), 0);
    if (count <= 0) return rest_;
    rest_.append(block.data(), static_cast<std::size_t>(count));
  }
}

std::string get_request(int port, const std::string& path) {
  return "GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + std::to_string(port) + "\r\n\r\n";
}

std::string fetched(int port, const std::string& path) {
  LoopbackClient client(port);
  client.send(get_request(port, path));
  return client.response();
}

int status_of(const std::string& response) {
  return response.starts_with("HTTP/1.1 ") ? std::atoi(response.c_str() + 9) : 0;
}

std::string body_of(const std::string& response) {
  const std::size_t head = response.find("\r\n\r\n");
  return head == std::string::npos ? "" : response.substr(head + 4);
}

}  // namespace berthwright
