#include "write/svg_units.h"

#include <array>
#include <charconv>
#include <stdexcept>

namespace berthwright {
namespace {

// Puts `um` thousandths of a millimetre as a decimal number of units of `unit_um` behind `out`: digits only,
// from integers.
void put_decimal(std::string& out, std::int64_t um, std::int64_t unit_um) {
  if (um < 0) out += '-';
  const std::int64_t size = um < 0 ? -um : um;
  std::array<char, 20> digits{};
  const auto whole = std::to_chars(digits.data(), digits.data() + digits.size(), size / unit_um);
  out.append(digits.data(), whole.ptr);
  std::int64_t left = size % unit_um;
  if (left == 0) return;
  out += '.';
  for (std::int64_t unit = unit_um / 10; left > 0; left %= unit, unit /= 10)
    out += static_cast<char>('0' + left / unit);
}

}  // namespace

void put_svg_units(std::string& out, PaperLength length) { put_decimal(out, length.micrometres(), 100); }

void put_svg_units(std::string& out, PaperPoint p) {
  put_svg_units(out, p.x);
  out += ' ';
  put_svg_units(out, p.y);
}

void put_svg_path_data(std::string& out, const Path& path) {
  out += 'M';
  put_svg_units(out, path.from);
  for (const Stretch& stretch : path.stretches) {
    if (stretch.radius == PaperLength{}) {
      out += 'L';
    } else {
      out += 'A';
      put_svg_units(out, PaperPoint{stretch.radius, stretch.radius});
      out += stretch.clockwise ? " 0 0 1 " : " 0 0 0 ";
    }
    put_svg_units(out, stretch.to);
  }
  if (path.closed) out += 'Z';
}

std::string svg_millimetres(std::int64_t um) {
  std::string out;
  put_decimal(out, um, 1000);
  return out;
}

std::string svg_units(PaperLength length) {
  std::string out;
  put_svg_units(out, length);
  return out;
}

std::string svg_units(PaperPoint p) {
  std::string out;
  put_svg_units(out, p);
  return out;
}

std::string svg_path_data(const Path& path) {
  std::string out;
  put_svg_path_data(out, path);
  return out;
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
