#include <optional>
#include <string>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "view/letters.h"
#include "write/escaped.h"
#include "write/style.h"

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
std::string millimetres(std::int64_t um) { return decimal(um, 1000); }
std::string units(PaperLength length) {
  return decimal(length.micrometres(), 100);
}  // of the viewBox: 0.1 mm
std::string units(PaperPoint p) { return units(p.x) + " " + units(p.y); }

std::string attribute(std::string_view name, std::string_view value) {
  return " " + std::string(name) + "=\"" + escaped(value) + "\"";
}

std::string data_of(const Path& path) {
  std::string d = "M" + units(path.from);
  for (const Stretch& stretch : path.stretches) {
    if (stretch.radius == PaperLength{}) {
      d += "L" + units(stretch.to);
    } else {
      const std::string r = units(stretch.radius);
      d += "A" + r + " " + r + " 0 0 " + (stretch.clockwise ? "1 " : "0 ") + units(stretch.to);
    }
  }
  return path.closed ? d + "Z" : d;
}

std::string look_of(const Path& path) {
  const Style style = style_of(path.ink);
  std::string look = attribute("fill", path.closed && !style.fill.empty() ? style.fill : "none");
  if (style.width == PaperLength{}) return look;
  look += attribute("stroke", style.line) + attribute("stroke-width", units(style.width));
  if (style.dash.front() != PaperLength{}) {
    std::string dash;
    for (const PaperLength length : style.dash) dash += (dash.empty() ? "" : " ") + units(length);
    look += attribute("stroke-dasharray", dash);
  }
  return style.round_ends ? look + attribute("stroke-linecap", "round") : look;
}

std::string element(const Path& path) {
  return "<path" + look_of(path) + attribute("d", data_of(path)) + "/>";
}

std::string element(const Patch& patch) {
  return "<rect fill=\"#ffffff\"" + attribute("x", units(patch.low.x)) + attribute("y", units(patch.low.y)) +
         attribute("width", units(patch.high.x - patch.low.x)) +
         attribute("height", units(patch.high.y - patch.low.y)) + "/>";
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

std::string element(const Text& text) {
  std::string out = "<text" + attribute("x", units(text.at.x)) + attribute("y", units(text.at.y)) +
                    attribute("font-size", units(text.height)) + attribute("fill", style_of(text.ink).line);
  if (text.anchor != Anchor::start) out += attribute("text-anchor", name(text.anchor));
  if (text.reads_upward)
    out += attribute("transform", "rotate(-90 " + units(text.at.x) + " " + units(text.at.y) + ")");
  // Letters of another font have another width: hold them to the room that was kept for them.
  if (has_unknown_letters(text.words))
    out += attribute("textLength", units(text_width(text.words, text.height))) +
           attribute("lengthAdjust", "spacingAndGlyphs");
  return out + ">" + escaped(text.words) + "</text>";
}

std::string element(const Group& group, std::int64_t scale) {
  std::string out = "<g";
  if (group.natural_micrometres > 0)
    out += attribute("data-scale", "1:" + std::to_string(scale)) +
           attribute("data-bar-mm", millimetres(group.natural_micrometres));
  out += "><title>" + escaped(group.title) + "</title>\n";
  for (const Mark& mark : group.marks)
    out += std::visit([](const auto& m) { return element(m); }, mark) + "\n";
  return out + "</g>\n";
}

}  // namespace

std::string svg(const Sheet& sheet) {
  std::string out = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"title desc\"";
  out += attribute("width", millimetres(sheet.width.micrometres()) + "mm");
  out += attribute("height", millimetres(sheet.height.micrometres()) + "mm");
  out += attribute("viewBox", "0 0 " + units(sheet.width) + " " + units(sheet.height));
  if (sheet.scale == 0) out += " data-scale=\"none\"";
  // Kerning and ligatures off: then the widths of the letters add up to the width of the line.
  out +=
      " font-family=\"DejaVu Sans\" text-rendering=\"geometricPrecision\" font-kerning=\"none\""
      " font-variant-ligatures=\"none\" stroke-linejoin=\"miter\">\n";
  out += "<title id=\"title\">" + escaped(sheet.title) + "</title>\n";
  out += "<desc id=\"desc\">" + escaped(sheet.description) + "</desc>\n";
  out += "<rect" + attribute("width", units(sheet.width)) + attribute("height", units(sheet.height)) +
         " fill=\"#ffffff\"/>\n";
  for (const Group& group : sheet.groups) out += element(group, sheet.scale);
  return out + "</svg>\n";
}

}  // namespace berthwright
