#include <arpa/inet.h>
#include <microhttpd.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

#include <cerrno>
#include <exception>
#include <mutex>
#include <set>
#include <stdexcept>
#include <system_error>

#include "yard/loopback.h"

namespace berthwright {
namespace {

constexpr unsigned most_connections = 64;
constexpr unsigned silence_s = 10;
constexpr std::size_t most_header_bytes = 16384;  // of one request, with all that the server keeps of it

sockaddr_in loopback_address(int port) {
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_port = htons(static_cast<std::uint16_t>(port));
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  return address;
}

/// A socket that listens on this machine alone; closed when it goes out of sight, unless it was given away.
class ListeningSocket {
 public:
  explicit ListeningSocket(int port)
      : number_(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC | SOCK_NONBLOCK, 0)) {
    const int yes = 1;
    sockaddr_in address = loopback_address(port);
    socklen_t size = sizeof(address);
    // Without it the port of a run that has just ended stays taken for a minute.
    const bool ready = number_ >= 0 &&
                       ::setsockopt(number_, SOL_SOCKET, SO_REUSEADDR, &yes, sizeof(yes)) == 0 &&
                       ::bind(number_, reinterpret_cast<sockaddr*>(&address), size) == 0 &&
                       ::listen(number_, static_cast<int>(most_connections)) == 0 &&
                       ::getsockname(number_, reinterpret_cast<sockaddr*>(&address), &size) == 0;
    fault_ = ready ? 0 : errno;
    port_ = ntohs(address.sin_port);
  }
  ListeningSocket(const ListeningSocket&) = delete;
  ListeningSocket& operator=(const ListeningSocket&) = delete;
  ~ListeningSocket() {
    if (number_ >= 0) ::close(number_);
  }
  int fault() const { return fault_; }
  int port() const { return port_; }
  int number() const { return number_; }
  void give_away() { number_ = -1; }

 private:
  int number_;
  int fault_ = 0;
  int port_ = 0;
};

Problem no_port(int port, int fault) {
  Problem problem;
  problem.id = fault == EADDRINUSE ? "port.taken" : "port.refused";
  problem.message = "port " + std::to_string(port) +
                    (fault == EADDRINUSE ? " is taken by another program"
                                         : " cannot be had: " + std::generic_category().message(fault));
  const ListeningSocket other(0);
  if (other.fault() == 0) problem.cure = "Free now: --port " + std::to_string(other.port());
  return problem;
}

std::string small_letters(std::string_view name) {
  std::string out(name);
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}

MHD_Result keep_header(void* request, MHD_ValueKind, const char* name, const char* value) {
  static_cast<PageRequest*>(request)->headers.emplace_back(small_letters(name == nullptr ? "" : name),
                                                           value == nullptr ? "" : value);
  return MHD_YES;
}

class MicroLoopback final : public Loopback {
 public:
  MicroLoopback(ListeningSocket& socket, PageAnswerer answerer)
      : answerer_(std::move(answerer)), port_(socket.port()) {
    daemon_ = MHD_start_daemon(
        MHD_USE_AUTO | MHD_USE_INTERNAL_POLLING_THREAD | MHD_ALLOW_SUSPEND_RESUME, 0, nullptr, nullptr,
        &MicroLoopback::asked, this, MHD_OPTION_LISTEN_SOCKET, socket.number(), MHD_OPTION_CONNECTION_LIMIT,
        most_connections, MHD_OPTION_CONNECTION_TIMEOUT, silence_s, MHD_OPTION_CONNECTION_MEMORY_LIMIT,
        most_header_bytes, MHD_OPTION_NOTIFY_COMPLETED, &MicroLoopback::completed, this, MHD_OPTION_END);
    if (daemon_ == nullptr) throw std::runtime_error("the server of the page did not start");
    socket.give_away();
  }
  ~MicroLoopback() override {
    {
      const std::lock_guard lock(mutex_);
      closing_ = true;
    }
    wake();
    MHD_stop_daemon(daemon_);
  }
  MicroLoopback(const MicroLoopback&) = delete;
  MicroLoopback& operator=(const MicroLoopback&) = delete;

  int port() const override { return port_; }

  void wake() override {
    const std::lock_guard lock(mutex_);
    for (MHD_Connection* connection : asleep_) {
      woken_.insert(connection);
      MHD_resume_connection(connection);
    }
    asleep_.clear();
  }

 private:
  // What the guest calls has so many.
  // NOLINTNEXTLINE(readability-function-size)
  static MHD_Result asked(void* self, MHD_Connection* connection, const char* url, const char* method,
                          const char* version, const char* data, std::size_t* size, void** state) {
    static_cast<void>(version);
    static_cast<void>(data);
    static_cast<void>(size);
    auto* server = static_cast<MicroLoopback*>(self);
    // Whoever is answered at the first call is not heard any further, and the connection is closed.
    const bool first_call = *state == nullptr;
    *state = server;
    try {
      if (first_call && !sends_a_body(connection, method)) return MHD_YES;
      return server->answer(connection, url, method);
    } catch (const std::exception&) {
      return MHD_NO;  // closes the connection
    }
  }

  static bool sends_a_body(MHD_Connection* connection, std::string_view method) {
    const auto has = [&](const char* name) {
      return MHD_lookup_connection_value(connection, MHD_HEADER_KIND, name) != nullptr;
    };
    return (method != "GET" && method != "HEAD") || has("Content-Length") || has("Transfer-Encoding");
  }

  static void completed(void* self, MHD_Connection* connection, void** state,
                        MHD_RequestTerminationCode why) {
    static_cast<void>(state);
    static_cast<void>(why);
    auto* server = static_cast<MicroLoopback*>(self);
    const std::lock_guard lock(server->mutex_);
    server->asleep_.erase(connection);
    server->woken_.erase(connection);
  }

  MHD_Result answer(MHD_Connection* connection, const char* url, const char* method) {
    PageRequest request;
    request.method = method;
    request.path = url;
    request.port = port_;
    MHD_get_connection_values(connection, MHD_HEADER_KIND, &keep_header, &request);
    if (const char* after = MHD_lookup_connection_value(connection, MHD_GET_ARGUMENT_KIND, "after"))
      request.after = after;
    // Held while it is decided whether to wait: what is published meanwhile wakes this request too.
    const std::lock_guard lock(mutex_);
    request.waited = woken_.erase(connection) > 0 || closing_;
    const std::optional<PageResponse> response = answerer_(request);
    if (response) return send(connection, *response);
    asleep_.insert(connection);
    MHD_suspend_connection(connection);
    return MHD_YES;
  }

  static MHD_Result send(MHD_Connection* connection, const PageResponse& response) {
    MHD_Response* out = MHD_create_response_from_buffer(
        response.body.size(), const_cast<char*>(response.body.data()), MHD_RESPMEM_MUST_COPY);
    if (out == nullptr) return MHD_NO;
    bool whole = MHD_add_response_header(out, "Content-Type", response.type.c_str()) == MHD_YES;
    for (const auto& [name, value] : response.headers)
      whole = MHD_add_response_header(out, name.c_str(), value.c_str()) == MHD_YES && whole;
    const MHD_Result queued =
        whole ? MHD_queue_response(connection, static_cast<unsigned>(response.status), out) : MHD_NO;
    MHD_destroy_response(out);
    return queued;
  }

  PageAnswerer answerer_;
  int port_;
  MHD_Daemon* daemon_ = nullptr;
  std::mutex mutex_;
  std::set<MHD_Connection*> asleep_;
  std::set<MHD_Connection*> woken_;
  bool closing_ = false;
};

}  // namespace

Result<std::unique_ptr<Loopback>> Loopback::opened(int port, PageAnswerer answerer) {
  ListeningSocket socket(port);
  if (socket.fault() != 0) return no_port(port, socket.fault());
  return std::unique_ptr<Loopback>(std::make_unique<MicroLoopback>(socket, std::move(answerer)));
}

}  // namespace berthwright
