#include <array>
#include <charconv>
#include <stdexcept>
#include <string>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "view/letters.h"
#include "write/escaped.h"
#include "write/style.h"

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
// Of the viewBox: 0.1 mm.
void put(std::string& out, PaperLength length) { put_decimal(out, length.micrometres(), 100); }
void put(std::string& out, PaperPoint p) {
  put(out, p.x);
  out += ' ';
  put(out, p.y);
}

std::string millimetres(std::int64_t um) {
  std::string out;
  put_decimal(out, um, 1000);
  return out;
}
std::string units(PaperLength length) {
  std::string out;
  put(out, length);
  return out;
}

void put_attribute(std::string& out, std::string_view name, std::string_view value) {
  out.append(" ").append(name).append("=\"").append(value).append("\"");
}
void put_attribute(std::string& out, std::string_view name, PaperLength value) {
  out.append(" ").append(name).append("=\"");
  put(out, value);
  out += '"';
}

void put_data(std::string& out, const Path& path) {
  out += 'M';
  put(out, path.from);
  for (const Stretch& stretch : path.stretches) {
    if (stretch.radius == PaperLength{}) {
      out += 'L';
    } else {
      out += 'A';
      put(out, {stretch.radius, stretch.radius});
      out += stretch.clockwise ? " 0 0 1 " : " 0 0 0 ";
    }
    put(out, stretch.to);
  }
  if (path.closed) out += 'Z';
}

void put_look(std::string& out, const Path& path) {
  const Style style = style_of(path.ink);
  put_attribute(out, "fill", path.closed && !style.fill.empty() ? style.fill : "none");
  if (style.width == PaperLength{}) return;
  put_attribute(out, "stroke", style.line);
  put_attribute(out, "stroke-width", style.width);
  if (style.dash.front() != PaperLength{}) {
    std::string dash;
    for (const PaperLength length : style.dash) {
      if (!dash.empty()) dash += ' ';
      put(dash, length);
    }
    put_attribute(out, "stroke-dasharray", dash);
  }
  if (style.round_ends) put_attribute(out, "stroke-linecap", "round");
}

void put(std::string& out, const Path& path) {
  out += "<path";
  put_look(out, path);
  out += " d=\"";
  put_data(out, path);
  out += "\"/>";
}

void put(std::string& out, const Patch& patch) {
  out += "<rect fill=\"#ffffff\"";
  put_attribute(out, "x", patch.low.x);
  put_attribute(out, "y", patch.low.y);
  put_attribute(out, "width", patch.high.x - patch.low.x);
  put_attribute(out, "height", patch.high.y - patch.low.y);
  out += "/>";
}

std::string_view name(Anchor anchor) {
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

void put(std::string& out, const Text& text) {
  out += "<text";
  put_attribute(out, "x", text.at.x);
  put_attribute(out, "y", text.at.y);
  put_attribute(out, "font-size", text.height);
  put_attribute(out, "fill", style_of(text.ink).line);
  if (text.anchor != Anchor::start) put_attribute(out, "text-anchor", name(text.anchor));
  if (text.reads_upward) {
    out += " transform=\"rotate(-90 ";
    put(out, text.at);
    out += ")\"";
  }
  // Letters of another font have another width: hold them to the room that was kept for them.
  if (has_unknown_letters(text.words)) {
    put_attribute(out, "textLength", text_width(text.words, text.height));
    put_attribute(out, "lengthAdjust", "spacingAndGlyphs");
  }
  out += ">" + escaped(text.words) + "</text>";
}

void put(std::string& out, const Group& group, std::int64_t scale) {
  out += "<g";
  if (group.natural_micrometres > 0) {
    put_attribute(out, "data-scale", "1:" + std::to_string(scale));
    put_attribute(out, "data-bar-mm", millimetres(group.natural_micrometres));
  }
  out += "><title>" + escaped(group.title) + "</title>\n";
  for (const Mark& mark : group.marks) {
    std::visit([&](const auto& m) { put(out, m); }, mark);
    out += '\n';
  }
  out += "</g>\n";
}

}  // namespace

std::string svg(const Sheet& sheet) {
  std::string out = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"title desc\"";
  put_attribute(out, "width", millimetres(sheet.width.micrometres()) + "mm");
  put_attribute(out, "height", millimetres(sheet.height.micrometres()) + "mm");
  put_attribute(out, "viewBox", "0 0 " + units(sheet.width) + " " + units(sheet.height));
  if (sheet.scale == 0) out += " data-scale=\"none\"";
  // Kerning and ligatures off: then the widths of the letters add up to the width of the line.
  out +=
      " font-family=\"DejaVu Sans\" text-rendering=\"geometricPrecision\" font-kerning=\"none\""
      " font-variant-ligatures=\"none\" stroke-linejoin=\"miter\">\n";
  out += "<title id=\"title\">" + escaped(sheet.title) + "</title>\n";
  out += "<desc id=\"desc\">" + escaped(sheet.description) + "</desc>\n";
  out += "<rect";
  put_attribute(out, "width", sheet.width);
  put_attribute(out, "height", sheet.height);
  out += " fill=\"#ffffff\"/>\n";
  for (const Group& group : sheet.groups) put(out, group, sheet.scale);
  return out + "</svg>\n";
}

}  // namespace berthwright
