#pragma once

#include <string>
#include <string_view>

#include <berthwright/view/scene.h>

namespace berthwright {

/// Thousandths of a millimetre as a decimal number of millimetres: digits only, from integers.
std::string svg_millimetres(std::int64_t um);
/// In units of every viewBox of ours, which are 0.1 mm.
std::string svg_units(PaperLength length);
std::string svg_units(PaperPoint p);
/// What the attribute `d` says of a path.
std::string svg_path_data(const Path& path);
/// What `text-anchor` says.
std::string_view svg_anchor(Anchor anchor);

/// The same behind what `out` already holds; a sheet has some ten thousand of them.
void put_svg_units(std::string& out, PaperLength length);
void put_svg_units(std::string& out, PaperPoint p);
void put_svg_path_data(std::string& out, const Path& path);

}  // namespace berthwright
