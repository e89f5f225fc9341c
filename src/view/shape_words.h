#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <berthwright/solve/cover/cover.h>

namespace berthwright {

/// "boxed", "knife edge"…, as a plan writes it; "wrap", "disc"…
std::string_view word(CoverShape shape);
std::string_view word(ShapedPart::What what);

/// Whether the plan does not say it; `field` as in "welt"; empty: nothing of sewing at all.
bool is_sewing_default(const Plan& plan, std::string_view field);

/// Seam allowance, fabric, welt and shape of all covers, and which of them are defaults.
std::string sewing_sentence(const Plan& plan, const Sewing& sewing);
/// What a cushion's own cover has otherwise than the plan's; empty: nothing.
std::string own_sewing_sentence(const Plan& plan, const Sewing& usual, const Cover& cover);

/// How the panels lie on the roll, in pieces where they must, and where the pattern stands: sentences behind
/// a blank; empty: nothing to say.
std::string lay_sentence(const Plan& plan, const Cover& cover);
/// The zip lies in the seam along an edge of the outline: not of a bolster, nor over a board.
bool has_zip_edge(const Cover& cover);
/// Where the zip goes; empty: there is none.
std::string zip_place_sentence(const Plan& plan, const Cover& cover);
/// The parts of a cover that is not boxed, one sentence each.
std::vector<std::string> shape_sentences(const Plan& plan, const Cover& cover);
/// How foam is glued together that comes out of no sheet in one piece; empty: it does, or no sheets are
/// known.
std::string glue_sentence(const Plan& plan, const Cover& cover);
/// What cannot be cut as it is asked.
std::vector<std::string> cut_problems(const Plan& plan, const Sewing& usual, const Cover& cover);

}  // namespace berthwright
