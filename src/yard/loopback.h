#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <berthwright/exact/result.h>

namespace berthwright {

/// What a browser asks for.
struct PageRequest {
  std::string method;
  std::string path;  ///< without the query
  std::vector<std::pair<std::string, std::string>>
      headers;          ///< names in small letters, as often as they came
  std::string after;    ///< of the query; empty: none
  int port = 0;         ///< at which the server was asked
  bool waited = false;  ///< it was put off once; now it must be answered
  /// Empty where there is none, or more than one.
  std::string header(const std::string& name) const;
};

struct PageResponse {
  int status = 200;
  std::string type;
  std::string body;
  std::vector<std::pair<std::string, std::string>> headers{};
};

/// No response: the request waits until `Loopback::wake`.
using PageAnswerer = std::function<std::optional<PageResponse>(const PageRequest&)>;

/// An HTTP server that only programs of this machine reach, on 127.0.0.1. It serves what the answerer gives
/// and nothing else; it is called from a thread of the server, one request after the other. Whoever is slow
/// keeps nobody else waiting, and is cut off after ten seconds of silence.
class Loopback {
 public:
  /// Problems: "port.taken", with a port that is free now as the cure; "port.refused". Port 0: any that is
  /// free.
  static Result<std::unique_ptr<Loopback>> opened(int port, PageAnswerer answerer);
  virtual ~Loopback() = default;
  Loopback(const Loopback&) = delete;
  Loopback& operator=(const Loopback&) = delete;

  virtual int port() const = 0;
  /// Lets all that wait be answered. From any thread.
  virtual void wake() = 0;

 protected:
  Loopback() = default;
};

}  // namespace berthwright
