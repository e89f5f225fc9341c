#pragma once

#include <initializer_list>
#include <string>
#include <string_view>

#include <berthwright/solve/cover/cover.h>

namespace berthwright {

/// What Americans and the British call the parts of a cover.
struct CoverTerms {
  std::string_view boxing;
  std::string_view welt;
  std::string_view batting;
  std::string_view zip;
};
CoverTerms cover_terms(English english);

/// As a machine reads it: "hidden", "fits"…
std::string_view word(EdgeSight::Kind kind);
std::string_view word(PanelFit fit);

/// A cut size, rounded up to 1/8 in and 0.1 mm, own unit first; of one, two or three sides.
std::string cut_size(std::initializer_list<Length> sides, Unit own);

/// "rear edge", "rounded corner", "slanted edge"; as the piece lies unturned.
std::string edge_name(const RimEdge& edge);
/// Where the zip goes and why there; sentences.
std::string zip_sentence(const Plan& plan, const Cover& cover);
/// How the strips of boxing are cut and where they are joined.
std::string boxing_sentence(const Plan& plan, const Cover& cover);
/// Where boxing and zip strips meet the corners of the panels.
std::string marks_sentence(const Plan& plan, const Cover& cover);
std::string zip_strips_sentence(const Plan& plan, const Cover& cover);
std::string foam_sentence(const Plan& plan, const Cover& cover);
/// Top and bottom panel, how they lie on the roll, which way nap and pattern point.
std::string panel_sentence(const Plan& plan, const Cover& cover);
std::string welt_sentence(const Plan& plan, const Cover& cover);     ///< empty: none
std::string batting_sentence(const Plan& plan, const Cover& cover);  ///< empty: none
/// The ways of cutting that hold for all covers, each with who says so.
std::vector<std::string> cutting_rules(const Plan& plan, const Sewing& sewing);
/// How edges are called, and what is not judged.
std::string_view cutting_notes();

}  // namespace berthwright
