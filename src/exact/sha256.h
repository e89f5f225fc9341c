#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace berthwright {

/// The digest of FIPS 180-4, as eight words. For naming what is allowed to run in a page of ours, not for
/// secrets.
std::array<std::uint32_t, 8> sha256(std::string_view bytes);

/// The same as a Content-Security-Policy writes it: "sha256-" and base64 (RFC 4648) of its 32 bytes.
std::string sha256_source(std::string_view bytes);

}  // namespace berthwright
