#pragma once

#include <vector>

#include "oracle/tilings.h"

namespace berthwright::oracle {

/// The fewest cells that stay open when tiles, each laid or left over, lie on free cells without overlap, and
/// what stays open makes at most so many rectangles. -1: no laying does. Cell by cell; slow.
int least_open(const TilingCase& of, int openings);
/// The same, whatever shape stays open.
int least_open(const TilingCase& of);

}  // namespace berthwright::oracle
