#pragma once

#include "write/screen.h"
#include "yard/loopback.h"

namespace berthwright {

/// What the page's server says: GET and HEAD of the page, its script, its style, the pictures on the board and
/// the number of the next edition; to those only who call it by its own name and port, and to no page of
/// another origin. None: nothing is newer yet than what is asked for.
std::optional<PageResponse> watch_answer(const PageRequest& request, const WatchBoard& board, int port);

}  // namespace berthwright
