#include "solve/place/cut_panel.h"

#include <algorithm>
#include <iterator>

namespace berthwright {
namespace {

using PartVisit = std::function<void(std::size_t, const KerfRect&)>;

std::int64_t extent(const KerfSize& size, bool along) { return along ? size.length : size.width; }
KerfSize with_extent(KerfSize size, bool along, std::int64_t extent) {
  (along ? size.length : size.width) = extent;
  return size;
}

void gather_spaces(const CutNode& node, std::vector<PanelSpace>& spaces) {
  if (node.empty()) spaces.push_back({spaces.size(), node.size});
  for (const CutNode& child : node.row) gather_spaces(child, spaces);
}

void visit_parts(const CutNode& node, std::int64_t x, std::int64_t y, const PartVisit& visit) {
  if (node.part != no_part) visit(node.part, {x, y, node.size});
  for (const CutNode& child : node.row) {
    visit_parts(child, x, y, visit);
    (node.along ? x : y) += extent(child.size, node.along);
  }
}

// Levels of cuts in a piece.
std::size_t levels(const CutNode& node) {
  std::size_t deepest = 0;
  for (const CutNode& child : node.row) deepest = std::max(deepest, levels(child));
  return node.row.empty() ? 0 : deepest + 1;
}

// The piece as a row, of one child where it is none.
std::vector<CutNode> split_off(KerfSize whole, bool along, CutNode first) {
  const std::int64_t rest = extent(whole, along) - extent(first.size, along);
  std::vector<CutNode> row{std::move(first)};
  if (rest > 0) row.push_back({with_extent(whole, along, rest)});
  return row;
}

CutNode as_node(KerfSize whole, bool along, std::vector<CutNode> row) {
  if (row.size() == 1) return std::move(row.front());
  return {whole, no_part, along, std::move(row)};
}

// An empty place becomes a part with what is left beside it: first a cut that ends a row in `along`, then
// the other.
CutNode filled(KerfSize space, const CutNode& part, bool along) {
  const KerfSize strip = with_extent(space, along, extent(part.size, along));
  CutNode inner = as_node(strip, !along, split_off(strip, !along, part));
  return as_node(space, along, split_off(space, along, std::move(inner)));
}

// A child that runs as its row does becomes part of it; what is empty goes to the end as one.
void tidy(CutNode& node) {
  if (node.row.empty()) return;
  std::vector<CutNode> row;
  std::int64_t empty = 0;
  for (CutNode& child : node.row) {
    if (!child.row.empty() && child.along == node.along)
      std::ranges::move(child.row, std::back_inserter(row));
    else
      row.push_back(std::move(child));
  }
  std::erase_if(row, [&](const CutNode& child) {
    if (child.empty()) empty += extent(child.size, node.along);
    return child.empty();
  });
  if (empty > 0 && !row.empty()) row.push_back({with_extent(node.size, node.along, empty)});
  if (row.size() == 1) {
    CutNode only = std::move(row.front());
    node = std::move(only);
    return;
  }
  node.row = std::move(row);
}

bool fill_space(CutNode& node, std::size_t& index, const CutNode& part, bool along) {
  if (node.empty()) {
    if (index-- > 0) return false;
    node = filled(node.size, part, along);
    return true;
  }
  for (CutNode& child : node.row)
    if (fill_space(child, index, part, along)) {
      tidy(node);
      return true;
    }
  return false;
}

struct TakingOut {
  const std::function<bool(std::size_t, const KerfRect&)>& which;
  std::vector<std::size_t>& taken;
};

bool take_from(CutNode& node, std::int64_t x, std::int64_t y, const TakingOut& out) {
  if (node.part != no_part && out.which(node.part, {x, y, node.size})) {
    out.taken.push_back(node.part);
    node.part = no_part;
    return true;
  }
  bool changed = false;
  for (CutNode& child : node.row) {
    const std::int64_t step = extent(child.size, node.along);
    changed |= take_from(child, x, y, out);
    (node.along ? x : y) += step;
  }
  if (changed) tidy(node);
  return changed;
}

CutNode lengthened(CutNode node, bool along, std::int64_t to) {
  const KerfSize size = with_extent(node.size, along, to);
  CutNode result = as_node(size, along, split_off(size, along, std::move(node)));
  tidy(result);
  return result;
}

}  // namespace

CutNode enlarged(CutNode node, KerfSize size) {
  return lengthened(lengthened(std::move(node), true, size.length), false, size.width);
}

CutNode joined(CutNode a, CutNode b, bool along) {
  const std::int64_t across = std::max(extent(a.size, !along), extent(b.size, !along));
  const std::int64_t sum = extent(a.size, along) + extent(b.size, along);
  CutNode result{with_extent(with_extent(a.size, !along, across), along, sum), no_part, along};
  result.row.push_back(lengthened(std::move(a), !along, across));
  result.row.push_back(lengthened(std::move(b), !along, across));
  tidy(result);
  return result;
}

CutPanel::CutPanel(KerfRect at, CutNode root) : at_(at), root_(std::move(root)) {}

CutPanel::CutPanel(KerfRect at, std::size_t stages, std::size_t stage)
    : at_(at), stages_(stages), stage_(stage), root_{at.size} {}

std::vector<PanelSpace> CutPanel::spaces() const {
  std::vector<PanelSpace> spaces;
  gather_spaces(root_, spaces);
  return spaces;
}

bool CutPanel::put(std::size_t space, std::size_t part, KerfSize size, bool cross_first) {
  if (stages_ == no_part) return fill_space(root_, space, {size, part}, cross_first);
  CutNode changed = root_;
  if (!fill_space(changed, space, {size, part}, cross_first) || levels(changed) + stage_ > stages_ + 1)
    return false;
  root_ = std::move(changed);
  return true;
}

void CutPanel::take_out(const std::function<bool(std::size_t, const KerfRect&)>& which,
                        std::vector<std::size_t>& taken) {
  take_from(root_, at_.x, at_.y, {which, taken});
}

void CutPanel::each_part(const PartVisit& visit) const { visit_parts(root_, at_.x, at_.y, visit); }

}  // namespace berthwright
