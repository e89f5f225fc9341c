#pragma once

#include <cstddef>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// The medial axis of a region: every place of its inside that is nearest to two parts of the border at once.
/// In plain doubles, so it only guides a search whose answer is then taken from the border itself.
struct Skeleton {
  /// A corner of the axis, and its distance from the border; in ticks.
  struct Node {
    double x;
    double y;
    double clearance;
  };
  /// A stretch of the axis between two nodes, and the two parts of the border that it is nearest to: whole
  /// edges, or single corners (`from` == `to`).
  struct Link {
    std::size_t from;
    std::size_t to;
    Edge left;
    Edge right;
    double clearance;  ///< least along the stretch
    bool narrows;      ///< it is least between the nodes (or all along), where the two parts face each other
  };
  std::vector<Node> nodes;
  std::vector<Link> links;
};

/// `border` must consist of edges that only touch; links outside of `region` are left out. O(n log n + n x
/// links).
Skeleton skeleton_of(const Region& region, const std::vector<Edge>& border);

/// Places along a link from its first node to its second, at most `parts` straight pieces, for drawing.
std::vector<Point> along(const Skeleton& skeleton, const Skeleton::Link& link, int parts);

}  // namespace berthwright
