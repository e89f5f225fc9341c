#include <optional>
#include <string>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "view/letters.h"
#include "write/escaped.h"
#include "write/html.h"
#include "write/style.h"
#include "write/svg_units.h"

namespace berthwright {
namespace {

std::string look_of(const Path& path) {
  const Style style = style_of(path.ink);
  std::string look = mark_attribute("fill", path.closed && !style.fill.empty() ? style.fill : "none");
  if (style.width == PaperLength{}) return look;
  look += mark_attribute("stroke", style.line) + mark_attribute("stroke-width", svg_units(style.width));
  if (style.dash.front() != PaperLength{}) {
    std::string dash;
    for (const PaperLength length : style.dash) dash += (dash.empty() ? "" : " ") + svg_units(length);
    look += mark_attribute("stroke-dasharray", dash);
  }
  return style.round_ends ? look + mark_attribute("stroke-linecap", "round") : look;
}

std::string element(const Path& path) {
  return "<path" + look_of(path) + mark_attribute("d", svg_path_data(path)) + "/>";
}

std::string element(const Patch& patch) {
  return "<rect fill=\"#ffffff\"" + mark_attribute("x", svg_units(patch.low.x)) +
         mark_attribute("y", svg_units(patch.low.y)) +
         mark_attribute("width", svg_units(patch.high.x - patch.low.x)) +
         mark_attribute("height", svg_units(patch.high.y - patch.low.y)) + "/>";
}

std::string element(const Text& text) {
  std::string out =
      "<text" + mark_attribute("x", svg_units(text.at.x)) + mark_attribute("y", svg_units(text.at.y)) +
      mark_attribute("font-size", svg_units(text.height)) + mark_attribute("fill", style_of(text.ink).line);
  if (text.anchor != Anchor::start) out += mark_attribute("text-anchor", svg_anchor(text.anchor));
  if (text.reads_upward)
    out +=
        mark_attribute("transform", "rotate(-90 " + svg_units(text.at.x) + " " + svg_units(text.at.y) + ")");
  // Letters of another font have another width: hold them to the room that was kept for them.
  if (has_unknown_letters(text.words))
    out += mark_attribute("textLength", svg_units(text_width(text.words, text.height))) +
           mark_attribute("lengthAdjust", "spacingAndGlyphs");
  return out + ">" + escaped(text.words) + "</text>";
}

std::string element(const Group& group, std::int64_t scale) {
  std::string out = "<g";
  if (group.natural_micrometres > 0)
    out += mark_attribute("data-scale", "1:" + std::to_string(scale)) +
           mark_attribute("data-bar-mm", svg_millimetres(group.natural_micrometres));
  out += "><title>" + escaped(group.title) + "</title>\n";
  for (const Mark& mark : group.marks)
    out += std::visit([](const auto& m) { return element(m); }, mark) + "\n";
  return out + "</g>\n";
}

}  // namespace

std::string svg(const Sheet& sheet) {
  std::string out = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"title desc\"";
  out += mark_attribute("width", svg_millimetres(sheet.width.micrometres()) + "mm");
  out += mark_attribute("height", svg_millimetres(sheet.height.micrometres()) + "mm");
  out += mark_attribute("viewBox", "0 0 " + svg_units(sheet.width) + " " + svg_units(sheet.height));
  if (sheet.scale == 0) out += " data-scale=\"none\"";
  // Kerning and ligatures off: then the widths of the letters add up to the width of the line.
  out +=
      " font-family=\"DejaVu Sans\" text-rendering=\"geometricPrecision\" font-kerning=\"none\""
      " font-variant-ligatures=\"none\" stroke-linejoin=\"miter\">\n";
  out += "<title id=\"title\">" + escaped(sheet.title) + "</title>\n";
  out += "<desc id=\"desc\">" + escaped(sheet.description) + "</desc>\n";
  out += "<rect" + mark_attribute("width", svg_units(sheet.width)) +
         mark_attribute("height", svg_units(sheet.height)) + " fill=\"#ffffff\"/>\n";
  for (const Group& group : sheet.groups) out += element(group, sheet.scale);
  return out + "</svg>\n";
}

}  // namespace berthwright
