#pragma once

#include <berthwright/solve/bed/mattress.h>

namespace berthwright {

/// Ridges between the pieces, highest first; of equal ones in the order of the pieces.
std::vector<Ridge> ridges_between(const std::vector<const Placed*>& pieces);

}  // namespace berthwright
