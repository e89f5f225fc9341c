#include "write/page_svg.h"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <string_view>
#include <vector>

#include <berthwright/view/sheets.h>

#include "write/escaped.h"
#include "write/html.h"
#include "write/shared_runs.h"
#include "write/style.h"
#include "write/svg_units.h"

namespace berthwright {
namespace {

/// A colour of the one table of inks, and what stands for it on a dark screen.
struct ColourPair {
  std::string_view light;
  std::string_view dark;
};
constexpr std::array colour_pairs{
    ColourPair{"#000000", "#ece5d8"}, ColourPair{"#ffffff", "#1f1c18"}, ColourPair{"#0072b2", "#63b8e8"},
    ColourPair{"#d55e00", "#f0904f"}, ColourPair{"#f0e442", "#6f6712"}, ColourPair{"#009e73", "#3cc79c"},
    ColourPair{"#d5efe5", "#123a2e"}, ColourPair{"#237f52", "#237f52"}, ColourPair{"#9b2423", "#b23a38"},
    ColourPair{"#d9edf9", "#163a50"}, ColourPair{"#fbeac2", "#4c3b14"}, ColourPair{"#a6d3ef", "#0f2a3b"},
    ColourPair{"#f0d189", "#38290c"}, ColourPair{"#f8d9c4", "#55321b"}, ColourPair{"#f1f1f0", "#2c2924"},
    ColourPair{"#d9d9d9", "#3d3932"}, ColourPair{"#7a7a7a", "#9c9588"}};

std::string colour_name(std::string_view light) {
  for (std::size_t i = 0; i < colour_pairs.size(); ++i)
    if (colour_pairs[i].light == light) return "var(--k" + std::to_string(i) + ")";
  throw std::logic_error("a colour without its twin for dark screens");
}

// What is hidden while the piece is on its way must be within the drawing itself: rules of the page do not
// see into what is referred to.
bool is_of_the_move(Ink ink) { return ink == Ink::moved_piece || ink == Ink::side_moved; }

std::string ink_class(Ink ink) { return "i" + std::to_string(static_cast<int>(ink)); }

std::string shape_of(const Path& path) {
  return " class=\"" + ink_class(path.ink) + (path.closed ? "" : " o") + "\" d=\"" + svg_path_data(path) +
         "\"";
}

std::string page_text(const Text& text) {
  std::string out = "<text class=\"" + ink_class(text.ink) + "\"" +
                    mark_attribute("x", svg_units(text.at.x)) + mark_attribute("y", svg_units(text.at.y)) +
                    mark_attribute("font-size", svg_units(text.height));
  if (text.anchor != Anchor::start) out += mark_attribute("text-anchor", svg_anchor(text.anchor));
  if (text.reads_upward) out += mark_attribute("transform", "rotate(-90 " + svg_units(text.at) + ")");
  // A telephone has another font: hold its letters to the room that was kept for them.
  return out + mark_attribute("textLength", svg_units(text_width(text.words, text.height))) +
         " lengthAdjust=\"spacingAndGlyphs\">" + escaped(text.words) + "</text>";
}

std::string page_patch(const Patch& patch) {
  return "<rect class=\"" + ink_class(Ink::floor) + "\"" + mark_attribute("x", svg_units(patch.low.x)) +
         mark_attribute("y", svg_units(patch.low.y)) +
         mark_attribute("width", svg_units(patch.high.x - patch.low.x)) +
         mark_attribute("height", svg_units(patch.high.y - patch.low.y)) + "/>";
}

std::string view_box(const Sheet& sheet) {
  return " viewBox=\"0 0 " + svg_units(sheet.width) + " " + svg_units(sheet.height) + "\"";
}

std::string rule_of_ink(Ink ink) {
  const Style style = style_of(ink);
  std::string rule =
      "." + ink_class(ink) + "{fill:" + (style.fill.empty() ? "none" : colour_name(style.fill));
  if (style.width != PaperLength{}) {
    rule += ";stroke:" + colour_name(style.line) + ";stroke-width:" + svg_units(style.width);
    if (style.dash.front() != PaperLength{}) {
      rule += ";stroke-dasharray:";
      for (std::size_t i = 0; i < style.dash.size(); ++i)
        rule += (i == 0 ? "" : " ") + svg_units(style.dash[i]);
    }
    if (style.round_ends) rule += ";stroke-linecap:round";
  }
  return rule + "}\ntext." + ink_class(ink) + "{fill:" + colour_name(style.line) + ";stroke:none}\n";
}

}  // namespace

PageDrawings::PageDrawings(std::span<const Sheet* const> sheets) {
  std::map<std::string, std::size_t> drawn;
  std::vector<std::string> order;
  for (const Sheet* sheet : sheets)
    for (const Group& group : sheet->groups)
      for (const Mark& mark : group.marks) {
        if (std::holds_alternative<Patch>(mark)) inks_.insert(Ink::floor);
        if (const Text* text = std::get_if<Text>(&mark)) inks_.insert(text->ink);
        const Path* path = std::get_if<Path>(&mark);
        if (path == nullptr) continue;
        inks_.insert(path->ink);
        if (is_of_the_move(path->ink)) continue;
        std::string shape = shape_of(*path);
        if (++drawn[shape] == 2) order.push_back(std::move(shape));
      }
  for (const std::string& shape : order) shared_.emplace(shape, shared_.size());
  join_runs(sheets);
}

void PageDrawings::join_runs(std::span<const Sheet* const> sheets) {
  std::vector<std::vector<std::size_t>> drawn;
  for (const Sheet* sheet : sheets) {
    drawn.emplace_back();
    for (const Group& group : sheet->groups)
      for (const Mark& mark : group.marks) {
        const Path* path = std::get_if<Path>(&mark);
        const auto shared = path == nullptr ? shared_.end() : shared_.find(shape_of(*path));
        if (shared == shared_.end())
          drawn.emplace_back();
        else
          drawn.back().push_back(shared->second);
      }
  }
  runs_ = shared_runs(drawn, shared_.size());
  begins_run_.assign(shared_.size(), false);
  for (const std::vector<std::size_t>& run : runs_) begins_run_[run.front()] = true;
}

std::string PageDrawings::style() const {
  std::string light = ":root{";
  std::string dark = "@media screen and (prefers-color-scheme:dark){:root{";
  for (std::size_t i = 0; i < colour_pairs.size(); ++i) {
    const std::string name = "--k" + std::to_string(i) + ":";
    light += name + std::string(colour_pairs[i].light) + ";";
    dark += name + std::string(colour_pairs[i].dark) + ";";
  }
  std::string rules = light + "}\n" + dark + "}}\n";
  for (const Ink ink : inks_) rules += rule_of_ink(ink);
  return rules + ".view .o{fill:none}\n.going ." + ink_class(Ink::moved_piece) + ",.going ." +
         ink_class(Ink::side_moved) + "{visibility:hidden}\n";
}

std::string PageDrawings::shapes() const {
  std::vector<std::string_view> shapes(shared_.size());
  for (const auto& [shape, number] : shared_) shapes[number] = shape;
  std::string out = "<svg class=\"shapes\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>\n";
  for (const std::vector<std::size_t>& run : runs_) {
    const std::string id = " id=\"s" + std::to_string(run.front()) + "\"";
    if (run.size() == 1) {
      out.append("<path").append(id).append(shapes[run.front()]).append("/>\n");
      continue;
    }
    out.append("<g").append(id).append(">");
    for (const std::size_t number : run) out.append("<path").append(shapes[number]).append("/>");
    out.append("</g>\n");
  }
  return out + "</defs></svg>\n";
}

std::string PageDrawings::marks(const Sheet& sheet) const {
  std::string out;
  for (const Group& group : sheet.groups)
    for (const Mark& mark : group.marks) {
      if (const Text* text = std::get_if<Text>(&mark)) out += page_text(*text);
      if (const Patch* patch = std::get_if<Patch>(&mark)) out += page_patch(*patch);
      const Path* path = std::get_if<Path>(&mark);
      if (path == nullptr) continue;
      const std::string shape = shape_of(*path);
      const auto shared = shared_.find(shape);
      if (shared == shared_.end())
        out.append("<path").append(shape).append("/>");
      else if (begins_run_[shared->second])
        out.append("<use href=\"#s").append(std::to_string(shared->second)).append("\"/>");
    }
  return out;
}

std::string PageDrawings::drawing(const Sheet& sheet) const {
  return "<svg class=\"view\" role=\"img\"" + mark_attribute("aria-label", sheet.title) + view_box(sheet) +
         ">" + marks(sheet) + "</svg>\n";
}

std::string PageDrawings::sign(const Sheet& sheet) const {
  return "<svg class=\"sign\" aria-hidden=\"true\"" + view_box(sheet) + ">" + marks(sheet) + "</svg>";
}

}  // namespace berthwright
