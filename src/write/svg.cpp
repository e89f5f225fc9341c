#include <string>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "view/letters.h"
#include "write/escaped.h"
#include "write/style.h"
#include "write/svg_units.h"

namespace berthwright {
namespace {

void put_attribute(std::string& out, std::string_view name, std::string_view value) {
  out.append(" ").append(name).append("=\"").append(value).append("\"");
}
void put_attribute(std::string& out, std::string_view name, PaperLength value) {
  out.append(" ").append(name).append("=\"");
  put_svg_units(out, value);
  out += '"';
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
      put_svg_units(dash, length);
    }
    put_attribute(out, "stroke-dasharray", dash);
  }
  if (style.round_ends) put_attribute(out, "stroke-linecap", "round");
}

void put(std::string& out, const Path& path) {
  out += "<path";
  put_look(out, path);
  out += " d=\"";
  put_svg_path_data(out, path);
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

void put(std::string& out, const Text& text) {
  out += "<text";
  put_attribute(out, "x", text.at.x);
  put_attribute(out, "y", text.at.y);
  put_attribute(out, "font-size", text.height);
  put_attribute(out, "fill", style_of(text.ink).line);
  if (text.anchor != Anchor::start) put_attribute(out, "text-anchor", svg_anchor(text.anchor));
  if (text.reads_upward) {
    out += " transform=\"rotate(-90 ";
    put_svg_units(out, text.at);
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
    put_attribute(out, "data-bar-mm", svg_millimetres(group.natural_micrometres));
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
  put_attribute(out, "width", svg_millimetres(sheet.width.micrometres()) + "mm");
  put_attribute(out, "height", svg_millimetres(sheet.height.micrometres()) + "mm");
  put_attribute(out, "viewBox", "0 0 " + svg_units(sheet.width) + " " + svg_units(sheet.height));
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
