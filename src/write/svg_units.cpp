#include "write/svg_units.h"

#include <stdexcept>

namespace berthwright {
namespace {

// `um` thousandths of a millimetre as a decimal number of units of `unit_um`: digits only, from integers.
std::string decimal(std::int64_t um, std::int64_t unit_um) {
  std::string text = um < 0 ? "-" : "";
  const std::int64_t size = um < 0 ? -um : um;
  text += std::to_string(size / unit_um);
  std::string rest;
  for (std::int64_t left = size % unit_um, unit = unit_um / 10; left > 0; left %= unit, unit /= 10)
    rest += static_cast<char>('0' + left / unit);
  return rest.empty() ? text : text + "." + rest;
}
}  // namespace

std::string svg_millimetres(std::int64_t um) { return decimal(um, 1000); }
std::string svg_units(PaperLength length) { return decimal(length.micrometres(), 100); }
std::string svg_units(PaperPoint p) { return svg_units(p.x) + " " + svg_units(p.y); }

std::string svg_path_data(const Path& path) {
  std::string d = "M" + svg_units(path.from);
  for (const Stretch& stretch : path.stretches) {
    if (stretch.radius == PaperLength{}) {
      d += "L" + svg_units(stretch.to);
    } else {
      const std::string r = svg_units(stretch.radius);
      d += "A" + r + " " + r + " 0 0 " + (stretch.clockwise ? "1 " : "0 ") + svg_units(stretch.to);
    }
  }
  return path.closed ? d + "Z" : d;
}

std::string_view svg_anchor(Anchor anchor) {
  switch (anchor) {
    case Anchor::start:
      return "start";
    case Anchor::middle:
      return "middle";
    case Anchor::end:
      return "end";
  }
  throw std::logic_error("Anchor out of range");
}

}  // namespace berthwright
