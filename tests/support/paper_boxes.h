#pragma once

#include <cstdint>

#include "view/paper.h"

namespace berthwright::support {

inline PaperBox box_mm(std::int64_t x0, std::int64_t y0, std::int64_t x1, std::int64_t y1) {
  return {{paper_mm(x0), paper_mm(y0)}, {paper_mm(x1), paper_mm(y1)}};
}

}  // namespace berthwright::support
