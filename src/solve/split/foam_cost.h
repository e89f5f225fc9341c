#pragma once

#include <optional>
#include <span>

#include <berthwright/solve/split/split.h>

namespace berthwright {

/// As told at `FoamCost`; none where no sheet of that thickness is in stock.
std::optional<FoamCost> foam_cost(std::span<const SplitPiece> pieces, const SplitLimits& limits);

/// Foam of a cushion this large, its cut-outs not taken off.
Mass weight_of_foam(Length length, Length width, const SplitLimits& limits);

}  // namespace berthwright
