#include "yard/font.h"

#include <array>
#include <cstddef>

#include "yard/files.h"

namespace berthwright {
namespace {

constexpr std::size_t largest_font = 4U << 20U;  // it has 757 kB

// Of Debian; the others from memory.
constexpr std::array font_places{"/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf",
                                 "/usr/share/fonts/dejavu-sans-fonts/DejaVuSans.ttf",
                                 "/usr/share/fonts/TTF/DejaVuSans.ttf"};

}  // namespace

Result<std::string> lettering_font() {
  for (const char* place : font_places)
    if (Result<std::string> font = read_file(place, largest_font)) return font;
  Problem problem;
  problem.id = "font.unreadable";
  problem.message = std::string("the font of the drawings is not there: ") + font_places.front();
  problem.cure = "Install DejaVu Sans (Debian: fonts-dejavu-core); without --pdf drawings need no font.";
  return problem;
}

}  // namespace berthwright
