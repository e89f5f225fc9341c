#pragma once

#include <string>

#include <berthwright/exact/result.h>

namespace berthwright {

/// The file of DejaVu Sans as systems install it. Problems: "font.unreadable".
Result<std::string> lettering_font();

}  // namespace berthwright
