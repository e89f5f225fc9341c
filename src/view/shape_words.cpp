#include "view/shape_words.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/view/words.h>

#include "exact/required.h"
#include "view/called.h"
#include "view/cover_words.h"

namespace berthwright {
namespace {

// What the plan gives is not rounded up.
std::string as_given(Length length, Unit own) {
  return both(length, own, {.rounding = Rounding::nearest, .feet = false});
}

std::string fabric_text(const Plan& plan, const Fabric& fabric) {
  std::string text = (fabric.name.empty() ? "unknown" : fabric.name) + ", " +
                     as_given(fabric.width, plan->unit) + " usable, " +
                     (fabric.one_way ? "one way up" : "either way up");
  if (fabric.up_across) text += " across the roll";
  if (fabric.roll) text += ", " + as_given(*fabric.roll, plan->unit) + " of it";
  if (!fabric.repeat) return text;
  const Repeat& repeat = *fabric.repeat;
  text += ", its pattern again after ";
  if (repeat.along > Length{}) text += as_given(repeat.along, plan->unit) + " along the roll";
  if (repeat.along > Length{} && repeat.across > Length{}) text += " and ";
  if (repeat.across > Length{}) text += as_given(repeat.across, plan->unit) + " across it";
  return text + (repeat.half_drop ? ", every second column dropped by half" : "");
}

std::string welt_text(const Plan& plan, const Sewing& sewing) {
  const std::string welt(cover_terms(plan->english).welt);
  return sewing.welt ? welt + " over a cord of " + as_given(*sewing.welt, plan->unit) : "no " + welt;
}

// "3 pieces, 12" (…), 54" (…) and 12" (…) wide".
std::string pieces_text(const PanelLay& lay, Unit own) {
  std::vector<std::string> widths;
  for (const Length width : lay.widths) widths.push_back(cut_size({width}, own));
  const bool alike = std::ranges::all_of(lay.widths, [&](Length w) { return w == lay.widths.front(); });
  return std::to_string(lay.widths.size()) + " pieces " +
         (alike ? widths.front() + " wide each" : listed_with_and(widths) + " wide");
}

std::string begin_text(const Plan& plan, const Cover& cover, const Repeat& repeat) {
  const RepeatPlace& begins = required(cover.lay.begins);
  std::string text = " Begin the cut ";
  const LengthStyle style{.rounding = Rounding::nearest, .feet = false, .parts = 8};
  if (repeat.along > Length{})
    text +=
        both(begins.along, plan->unit, style) + " along the roll" + (repeat.across > Length{} ? " and " : "");
  if (repeat.across > Length{}) text += both(begins.across, plan->unit, style) + " across it";
  text += repeat.along > Length{} ? " behind the middle of a motif" : " behind the middle of a stripe";
  return text + (cover.up
                     ? ": so the pattern's middle stands in the middle of the seat and runs on to its backs."
                     : ": so the pattern's middle stands in its own.");
}

std::string listed_strips(const std::vector<Length>& strips, Unit own) {
  std::vector<std::string> texts;
  for (const Length strip : strips) texts.push_back(cut_size({strip}, own));
  return listed_with_and(texts);
}

}  // namespace

std::string_view word(CoverShape shape) {
  switch (shape) {
    case CoverShape::boxed:
      return "boxed";
    case CoverShape::knife_edge:
      return "knife edge";
    case CoverShape::waterfall:
      return "waterfall";
    case CoverShape::bolster:
      return "bolster";
    case CoverShape::board_backed:
      return "board backed";
  }
  throw std::logic_error("CoverShape out of range");
}

std::string_view word(ShapedPart::What what) {
  switch (what) {
    case ShapedPart::What::wrap:
      return "wrap";
    case ShapedPart::What::side:
      return "side";
    case ShapedPart::What::disc:
      return "disc";
    case ShapedPart::What::zip_strip:
      return "zip strip";
    case ShapedPart::What::board:
      return "board";
  }
  throw std::logic_error("ShapedPart::What out of range");
}

bool is_sewing_default(const Plan& plan, std::string_view field) {
  const std::string pointer = "/sewing/" + std::string(field);
  return std::ranges::any_of(plan->defaults, [&](const AppliedDefault& one) {
    return one.pointer == "/sewing" || one.pointer == pointer;
  });
}

std::string sewing_sentence(const Plan& plan, const Sewing& sewing) {
  const bool all = is_sewing_default(plan, "");
  const auto mark = [&](const char* field) {
    return !all && is_sewing_default(plan, field) ? " (default)" : "";
  };
  return (all ? "The plan does not say how to sew; so by default: seam" : "Seam") +
         std::string(" allowance ") + as_given(sewing.seam_allowance, plan->unit) + mark("seam_allowance") +
         "; fabric " + fabric_text(plan, sewing.fabric) + "; " + welt_text(plan, sewing) + mark("welt") +
         "; " + (sewing.batting ? "with " : "no ") + std::string(cover_terms(plan->english).batting) +
         mark("batting") + "; " + std::string(word(sewing.shape)) + mark("shape") + ".";
}

std::string own_sewing_sentence(const Plan& plan, const Sewing& usual, const Cover& cover) {
  const Sewing& own = cover.sewing;
  std::vector<std::string> parts;
  if (own.seam_allowance != usual.seam_allowance)
    parts.push_back("seam allowance " + as_given(own.seam_allowance, plan->unit));
  if (own.fabric != usual.fabric) parts.push_back("fabric " + fabric_text(plan, own.fabric));
  if (own.welt != usual.welt) parts.push_back(welt_text(plan, own));
  if (own.batting != usual.batting)
    parts.push_back((own.batting ? "with " : "no ") + std::string(cover_terms(plan->english).batting));
  if (own.foam_cut != usual.foam_cut)
    parts.push_back("foam \"" + std::string(foam_rule(own.foam_cut).name) + "\"");
  if (own.shape != usual.shape) parts.emplace_back(word(own.shape));
  return parts.empty() ? "" : capital_first(listed_with_and(parts)) + ".";
}

std::string lay_sentence(const Plan& plan, const Cover& cover) {
  const PanelLay& lay = cover.lay;
  const Fabric& fabric = cover.sewing.fabric;
  const Unit own = plan->unit;
  const std::string width = cut_size({fabric.width}, own);
  const std::string pieces = "cut it from " + pieces_text(lay, own) + ", a seam between each two";
  std::string text;
  if (lay.fit == PanelFit::turned_only)
    text += " Pointing along the roll it is wider than the fabric, " + width +
            ": turn it by a quarter (railroad it) if the fabric may be, else " + pieces + ".";
  else if (lay.fit == PanelFit::too_wide)
    text += " Both its sides are wider than the fabric, " + width + ": " + pieces + ", or take wider fabric.";
  else if (lay.turned && cover.up)
    text += " It lies turned by a quarter on the roll (railroaded).";
  if (!fabric.repeat) return text;
  const Repeat& repeat = *fabric.repeat;
  if (repeat.along > Length{})
    text += " Each takes " + cut_size({lay.takes}, own) + " of the roll: whole repeats.";
  return text + begin_text(plan, cover, repeat);
}

bool has_zip_edge(const Cover& cover) {
  return cover.sewing.shape != CoverShape::bolster && cover.sewing.shape != CoverShape::board_backed;
}

std::string zip_place_sentence(const Plan& plan, const Cover& cover) {
  if (!cover.reckoned() || cover.sewing.shape == CoverShape::board_backed) return {};
  if (cover.sewing.shape == CoverShape::bolster)
    return "In the seam along the wrap, " + cut_size({required(cover.shaped).zip}, plan->unit) + " long.";
  return zip_sentence(plan, cover);
}

std::vector<std::string> shape_sentences(const Plan& plan, const Cover& cover) {
  const ShapedCover& shaped = required(cover.shaped);
  const std::string name = capital_first(word(shaped.shape));
  if (!shaped.reckoned())
    return {name + ": there is no such form for this outline, so its cloth is not reckoned."};
  std::vector<std::string> all;
  for (const ShapedPart& part : shaped.parts) {
    const std::string size = cut_size({part.length, part.width}, plan->unit);
    switch (part.what) {
      case ShapedPart::What::wrap:
        all.push_back("Wrap: 1 of " + size + ".");
        break;
      case ShapedPart::What::side:
        all.push_back(
            "Sides: 2 of " + size +
            ", the front end a half circle; notches at its top, tip and foot. The second is the mirror "
            "image of the first.");
        break;
      case ShapedPart::What::disc:
        all.push_back("Discs: 2, " + cut_size({part.length}, plan->unit) + " across.");
        break;
      case ShapedPart::What::zip_strip:
        all.push_back(capital_first(cover_terms(plan->english).zip) + " strips, at the back: 2 of " + size +
                      ".");
        break;
      case ShapedPart::What::board:
        all.push_back(
            "Board: " + size +
            ", 1 in smaller than the cushion (1 to 2 in are usual: littlevintagetrailer.com; "
            "upholsteryresource.com). The panel reaches 3 in behind it to be stapled; add twice the "
            "board's thickness.");
        break;
    }
  }
  return all;
}

std::string glue_sentence(const Plan& plan, const Cover& cover) {
  if (!cover.glued || cover.glued->is_one_piece()) return {};
  const Unit own = plan->unit;
  std::string text = "Glue it up from " + std::to_string(cover.glued->layers.size()) +
                     (cover.glued->layers.size() == 1 ? " layer:" : " layers:");
  bool edges = false;
  for (const FoamLayer& layer : cover.glued->layers) {
    text += (&layer == &cover.glued->layers.front() ? " " : "; ") + cut_size({layer.sheet.thickness}, own) +
            " thick";
    if (layer.pieces() == 1) continue;
    edges = true;
    text += ", " + std::to_string(layer.pieces()) + " pieces";
    if (layer.along.size() > 1) text += ", along the length " + listed_strips(layer.along, own);
    if (layer.across.size() > 1) text += ", along the width " + listed_strips(layer.across, own);
  }
  text += ".";
  if (edges)
    text +=
        " Joints in a block are for backs, off the middle where people sit (common practice, no source); a "
        "seat is better cut from a larger sheet.";
  return text;
}

std::vector<std::string> cut_problems(const Plan& plan, const Sewing& usual, const Cover& cover) {
  const Fabric& fabric = cover.sewing.fabric;
  const Unit own = plan->unit;
  std::vector<std::string> all;
  if (fabric.roll && fabric.repeat && fabric.repeat->along > *fabric.roll)
    all.push_back("The repeat of the fabric, " + cut_size({fabric.repeat->along}, own) +
                  ", is longer than the roll, " + cut_size({*fabric.roll}, own) +
                  ": no two panels can have the same part of the pattern.");
  else if (fabric.roll && cover.has_panel() && cover.lay.takes > *fabric.roll)
    all.push_back("A panel takes " + cut_size({cover.lay.takes}, own) + " of the roll, which is " +
                  cut_size({*fabric.roll}, own) + " long.");
  if (cover.foam && !cover.glued && !usual.foam_sheets.empty()) {
    const NearThickness near = near_thickness(cover.foam->thickness, usual.foam_sheets);
    std::string text = "Foam " + cut_size({cover.foam->thickness}, own) +
                       " thick is not in stock, nor are up to 4 layers together.";
    if (near.below) text += " Next below: " + cut_size({*near.below}, own) + ".";
    if (near.above) text += " Next above: " + cut_size({*near.above}, own) + ".";
    all.push_back(std::move(text));
  }
  return all;
}

}  // namespace berthwright
