#include "yard/watch_answers.h"

#include <algorithm>
#include <array>

namespace berthwright {
namespace {

constexpr std::string_view icon =
    "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 16 16\"><path fill=\"#fffdf8\" stroke=\"#24211c\" "
    "d=\"M1.5 12.5v-6q0-4 4-4h5q4 0 4 4v6z\"/><path fill=\"#005b8f\" d=\"M4 8h8v2.5H4z\"/></svg>\n";

// A sheet is a picture to the page, and a document of its own when it is opened by itself.
constexpr std::string_view policy =
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

PageResponse with_policy(PageResponse response, bool lasting = false) {
  response.headers.insert(
      response.headers.end(),
      {{"Content-Security-Policy", std::string(policy)},
       {"X-Content-Type-Options", "nosniff"},
       {"X-Frame-Options", "DENY"},
       {"Referrer-Policy", "no-referrer"},
       {"Cross-Origin-Resource-Policy", "same-origin"},
       {"Cross-Origin-Opener-Policy", "same-origin"},
       // The name of a picture is that of its bytes.
       {"Cache-Control", lasting ? "private, max-age=86400, immutable" : "no-store"}});
  return response;
}

PageResponse refused(int status, std::string words) {
  return with_policy({status, "text/plain; charset=utf-8", std::move(words) + "\n"});
}

std::string lower_case(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return text;
}

// A page from elsewhere can reach this machine through the reader's own browser, under a name that leads here
// or by a picture's address. The first is told by the name, the second by what browsers say of who asks.
bool is_asked_by_ourselves(const PageRequest& request, int port) {
  const std::string own = ":" + std::to_string(port);
  const std::array names{"127.0.0.1" + own, "localhost" + own};
  const std::string host = lower_case(request.header("host"));
  if (std::ranges::find(names, host) == names.end()) return false;
  const std::string origin = request.header("origin");
  if (!origin.empty() && origin != "http://" + host) return false;
  const std::string site = request.header("sec-fetch-site");
  return site.empty() || site == "same-origin" || site == "none" ||
         (request.header("sec-fetch-mode") == "navigate" && request.header("sec-fetch-dest") == "document");
}

const Picture* picture_named(const WatchBoard& board, std::string_view name) {
  for (const auto* sheets : {&board.plans, &board.others})
    if (sheets->value)
      for (const ScreenSheet& sheet : *sheets->value)
        if (sheet.picture.name == name) return &sheet.picture;
  if (board.conversions.value)
    for (const ScreenConversion& one : *board.conversions.value)
      for (const ScreenStage& stage : one.stages)
        for (const Picture* picture : {&stage.above, &stage.raised})
          if (picture->name == name) return picture;
  return nullptr;
}

}  // namespace

std::string PageRequest::header(const std::string& name) const {
  std::string value;
  std::size_t count = 0;
  for (const auto& [one, words] : headers)
    if (one == name) {
      value = words;
      ++count;
    }
  return count == 1 ? value : std::string{};
}

std::optional<PageResponse> watch_answer(const PageRequest& request, const WatchBoard& board, int port) {
  if (!is_asked_by_ourselves(request, port))
    return refused(403, "This page is for a browser on this machine, at http://127.0.0.1:" +
                            std::to_string(port) + "/ and under no other name.");
  if (request.method != "GET" && request.method != "HEAD") {
    PageResponse response = refused(405, "Nothing can be written here.");
    response.headers.emplace_back("Allow", "GET, HEAD");
    return response;
  }
  if (request.path == "/") return with_policy({200, "text/html; charset=utf-8", watch_page(board)});
  if (request.path == "/watch.css")
    return with_policy({200, "text/css; charset=utf-8", std::string(watch_style())});
  if (request.path == "/watch.js")
    return with_policy({200, "text/javascript; charset=utf-8", std::string(watch_script())});
  if (request.path == "/watch.svg") return with_policy({200, "image/svg+xml", std::string(icon)});
  if (request.path == "/next") {
    const std::string edition = std::to_string(board.edition);
    if (request.after == edition && !request.waited) return std::nullopt;
    return with_policy({200, "text/plain; charset=utf-8", edition});
  }
  constexpr std::string_view suffix = ".svg";
  if (request.path.starts_with('/') && request.path.ends_with(suffix)) {
    const std::string_view name =
        std::string_view(request.path).substr(1, request.path.size() - 1 - suffix.size());
    if (const Picture* picture = picture_named(board, name))
      return with_policy({200, "image/svg+xml", *picture->bytes}, true);
  }
  return refused(404, "There is nothing here; the page is at /.");
}

}  // namespace berthwright
