#include "view/cover_words.h"

#include <algorithm>
#include <stdexcept>
#include <vector>

#include <berthwright/view/words.h>

#include "exact/spelling.h"
#include "view/called.h"
#include "view/shape_words.h"

namespace berthwright {
namespace {

constexpr LengthStyle to_an_eighth{.rounding = Rounding::up, .feet = false, .parts = 8};

std::string joined_sizes(std::initializer_list<Length> sides, bool inches) {
  std::string text;
  for (const Length side : sides) {
    if (!text.empty()) text += " x ";
    text += inches ? imperial(side, to_an_eighth) : metric(side, Rounding::up);
  }
  return text;
}

// "10.2 lb (4.6 kg)", to a tenth: foam is light.
std::string foam_weight_text(Mass mass, Unit own) {
  const auto tenths = [&](std::int64_t unit) {
    const Int128 count = rounded(mass.units(), unit / 10, Rounding::nearest);
    return decimal_text(count, 10);
  };
  const std::string pounds = tenths(mass_units_per_pound - mass_units_per_pound % 10) + " lb";
  const std::string kilograms = tenths(1000 * mass_units_per_gram) + " kg";
  return own == Unit::inch ? pounds + " (" + kilograms + ")" : kilograms + " (" + pounds + ")";
}

std::string called(const Plan& plan, const std::vector<std::string>& ids) {
  std::vector<std::string> names;
  for (const std::string& id : ids)
    names.push_back(id == "room" ? "the wall" : id == "floor" ? "the floor" : name_of(plan, id));
  return listed_with_and(names);
}

std::string_view sight_words(EdgeSight::Kind kind) {
  return kind == EdgeSight::Kind::hidden ? "hidden" : kind == EdgeSight::Kind::stowed ? "stowed" : "in sight";
}

// "hidden by day and by night (the wall)": configurations of which the same is told are told together.
std::string told_sights(const Plan& plan, const std::vector<EdgeSight>& sights) {
  std::vector<std::string> told;
  std::vector<bool> done(sights.size(), false);
  for (std::size_t i = 0; i < sights.size(); ++i) {
    if (done[i]) continue;
    const auto& one = sights[i];
    const bool hidden = one.kind == EdgeSight::Kind::hidden;
    std::vector<std::string> when;
    for (std::size_t j = i; j < sights.size(); ++j) {
      if (sight_words(sights[j].kind) != sight_words(one.kind) || (hidden && sights[j].by != one.by))
        continue;
      done[j] = true;
      when.push_back(small_first(when_of(*sights[j].configuration)));
    }
    told.push_back(std::string(sight_words(one.kind)) + ' ' + listed_with_and(when) +
                   (hidden ? " (" + called(plan, one.by) + ")" : ""));
  }
  return listed_with_and(told);
}

std::string seen_words(int seen) {
  return seen == 0   ? "hidden"
         : seen == 1 ? "seen in one configuration"
                     : "seen in " + std::to_string(seen) + " configurations";
}

std::string listed_sizes(const std::vector<Length>& places, Unit own) {
  std::vector<std::string> texts;
  for (const Length place : places)
    texts.push_back(both(place, own, {.rounding = Rounding::nearest, .feet = false, .parts = 8}));
  return listed_with_and(texts);
}

}  // namespace

CoverTerms cover_terms(English english) {
  return english == English::american ? CoverTerms{"boxing", "welt", "batting", "zipper"}
                                      : CoverTerms{"border", "piping", "wadding", "zip"};
}

std::string_view word(EdgeSight::Kind kind) {
  switch (kind) {
    case EdgeSight::Kind::stowed:
      return "stowed";
    case EdgeSight::Kind::hidden:
      return "hidden";
    case EdgeSight::Kind::seen:
      return "seen";
    case EdgeSight::Kind::front:
      return "front";
  }
  throw std::logic_error("EdgeSight::Kind out of range");
}

std::string_view word(PanelFit fit) {
  switch (fit) {
    case PanelFit::fits:
      return "fits";
    case PanelFit::turned_only:
      return "turned only";
    case PanelFit::too_wide:
      return "too wide";
  }
  throw std::logic_error("PanelFit out of range");
}

std::string cut_size(std::initializer_list<Length> sides, Unit own) {
  const bool inches = own == Unit::inch;
  return joined_sizes(sides, inches) + " (" + joined_sizes(sides, !inches) + ")";
}

std::string edge_name(const RimEdge& edge) {
  if (edge.radius) return "rounded corner";
  if (!edge.is_straight()) return "curved edge";
  if (!edge.looks) return "slanted edge";
  const std::string side(word(term_of(*edge.looks), English::american));
  return edge.on_box ? side + " edge" : "edge of the notch that looks to the " + side;
}

std::string zip_sentence(const Plan& plan, const Cover& cover) {
  const CoverTerms terms = cover_terms(plan->english);
  const RimEdge& edge = cover.rim.edges[cover.zip.place.edge];
  const std::vector<EdgeSight>& sights = cover.zip.place.sights[cover.zip.place.edge];
  std::string text = "On the " + edge_name(edge) + ", " + cut_size({edge.length}, plan->unit) + " long";
  if (!sights.empty()) text += ": " + told_sights(plan, sights);
  text += '.';
  const int seen = times_seen(sights);
  const std::optional<Wall>& asked = cover.sewing.zip_edge;
  if (cover.sewing.shape == CoverShape::waterfall && cover.up)
    text += " The wrap goes round the front, so it is at the back.";
  else if (asked && edge.looks == asked && edge.on_box)
    text += " The plan asks for it there.";
  else if (asked)
    text += " The plan asks for the " + std::string(word(term_of(*asked), English::american)) +
            " edge, which is nowhere straight.";
  else if (is_front(sights))
    text += " Every edge long enough for a " + std::string(terms.zip) + " is looked at by who sits there.";
  else if (seen > 0)
    text += " No edge long enough for a " + std::string(terms.zip) + " is in sight less often.";
  if (const std::optional<Wall>& down = cover.zip.place.down)
    text += " Where the cushion stands on edge, its " + std::string(word(term_of(*down), English::american)) +
            " edge is down and its top panel faces the person.";
  return text;
}

std::string boxing_sentence(const Plan& plan, const Cover& cover) {
  const Boxing& boxing = cover.boxing;
  const CoverTerms terms = cover_terms(plan->english);
  std::vector<std::string> strips;
  for (const BoxingStrip& strip : boxing.strips) strips.push_back(cut_size({strip.cut}, plan->unit));
  std::string text = std::to_string(strips.size()) + (strips.size() == 1 ? " strip" : " strips") + " of " +
                     listed_with_and(strips) + ", " + cut_size({boxing.width}, plan->unit) + " wide.";
  if (boxing.along_roll)
    text += cover.sewing.fabric.up_across
                ? " Cut it along the roll, as its up lies across."
                : " Cut it along the roll: across it a join would fall where people look at it.";
  if (boxing.joins_anywhere) return text + " Its corners leave no place for joins: all strips are alike.";
  std::vector<std::string> joins;
  for (const BoxingJoin& join : boxing.joins)
    joins.push_back(
        "on the " + edge_name(cover.rim.edges[join.edge]) + " (" +
        (join.front ? "looked at by who sits there: no other place is left" : seen_words(join.seen)) + ")");
  if (!joins.empty()) text += " Joined " + listed_with_and(joins) + ".";
  return text + " With the " + std::string(terms.zip) + " it is " +
         cut_size({cover.rim.perimeter}, plan->unit) + " round, finished.";
}

std::string marks_sentence(const Plan& plan, const Cover& cover) {
  const CoverTerms terms = cover_terms(plan->english);
  std::string text;
  if (!cover.boxing.marks.empty())
    text += "Corner marks on the " + std::string(terms.boxing) + ", from its seam with the " +
            std::string(terms.zip) + " on: " + listed_sizes(cover.boxing.marks, plan->unit) + ".";
  if (!cover.zip.marks.empty())
    text += (text.empty() ? "" : " ") + std::string("On the strips of the ") + std::string(terms.zip) + ": " +
            listed_sizes(cover.zip.marks, plan->unit) + ".";
  return text;
}

std::string zip_strips_sentence(const Plan& plan, const Cover& cover) {
  const RollStrips pieces = roll_strips(cover.zip.cut_length, cover.zip.cut_width, cover.sewing.fabric.width,
                                        cover.sewing.seam_allowance * 2);
  std::string text = "2 strips of " + cut_size({cover.zip.cut_length, cover.zip.cut_width}, plan->unit);
  if (cover.sewing.fabric.up_across)
    text += ", cut along the roll";
  else if (pieces.count > 1)
    text += ", each cut along the roll or joined from " + std::to_string(pieces.count) + " pieces";
  return text + ".";
}

std::string foam_sentence(const Plan& plan, const Cover& cover) {
  const std::string grade = cover.piece->material.empty() ? "grade unknown" : cover.piece->material;
  if (!cover.foam) return grade + "; the cushion is too small for this way of cutting.";
  const FoamBlank& foam = *cover.foam;
  return grade + ", cut " + cut_size({foam.length, foam.width, foam.thickness}, plan->unit) + ", " +
         (foam.weight ? foam_weight_text(*foam.weight, plan->unit) : std::string("weight unknown")) + ".";
}

std::string panel_sentence(const Plan& plan, const Cover& cover) {
  const CoverPanel& panel = cover.panel;
  const bool one = cover.shaped && cover.shaped->shape == CoverShape::board_backed;
  std::string text = (one ? "1, cut " : "2, cut ") + cut_size({panel.length, panel.width}, plan->unit);
  if (cover.piece->outline.polygon().size() != 4) text += " over all";
  text += panel.symmetric || one ? "." : "; the bottom one is the mirror image of the top one.";
  if (!panel.sharp) text += " A slit is too narrow for the seam allowance: clip it by hand.";
  if (cover.up)
    text += " Nap and pattern point to the " + std::string(word(term_of(*cover.up), English::american)) +
            " edge.";
  return text + lay_sentence(plan, cover);
}

std::string welt_sentence(const Plan& plan, const Cover& cover) {
  if (!cover.welt) return {};
  return cut_size({cover.welt->length}, plan->unit) + ", from " + std::to_string(cover.welt->strips.count) +
         " straight strips " + cut_size({cover.welt->strip_width}, plan->unit) + " wide, which take " +
         cut_size({cover.welt->strips.of_roll}, plan->unit) + " of the roll.";
}

std::string batting_sentence(const Plan& plan, const Cover& cover) {
  if (!cover.batting) return {};
  return "2 of " + cut_size({cover.batting->length, cover.batting->width}, plan->unit) + " and a strip of " +
         cut_size({cover.batting->strip_length, cover.batting->strip_width}, plan->unit) + ".";
}

std::vector<std::string> cutting_rules(const Plan& plan, const Sewing& sewing) {
  const CoverTerms terms = cover_terms(plan->english);
  const FoamRule& foam = foam_rule(sewing.foam_cut);
  const std::string boxing(terms.boxing), zip(terms.zip);
  std::vector<std::string> rules{
      sewing_sentence(plan, sewing),
      "Foam \"" + std::string(foam.name) +
          (is_sewing_default(plan, "foam_cut") ? "\", by default (" : "\" (") + source_text(foam.source) +
          "; published ways disagree).",
      "Strips of the " + zip + " as wide as half the " + boxing +
          " and 3/4 in each (somethingfortheroad.com; upholsteryresource.com); it reaches 3 in round each "
          "corner "
          "(common practice, no source), but onto no face that people look at as they sit there.",
      "Strips of " + boxing +
          " lie across the roll, are joined where they are seen least, 1 in or more from a corner, and are 6 "
          "in or longer (own choice).",
      ("An edge is hidden where something comes within 1 in of it over three quarters of its length and half "
       "of its height (own choice)."),
      ("Shorten the stitches for 1 in on either side of a corner and clip the seam there by 3/8 in "
       "(pattern-making.com).")};
  if (sewing.fabric.repeat)
    rules.push_back("Panels are placed in the pattern; " + boxing + ", sides, strips of the " + zip +
                    " and seams within a panel are not matched to it.");
  return rules;
}

std::string_view cutting_notes() {
  return "Edges are called as the piece lies unturned, its front toward the hitch. Weight is that of the "
         "foam alone. "
         "Cut sizes are rounded up to 1/8 in and 0.1 mm. What foam and fabric must withstand in a fire is "
         "not "
         "judged here: ask those who sell them for a statement.";
}

}  // namespace berthwright
