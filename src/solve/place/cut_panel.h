#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <vector>

namespace berthwright {

/// Sides in ticks, a kerf added to each: then parts may touch.
struct KerfSize {
  std::int64_t length = 0;
  std::int64_t width = 0;
  friend bool operator==(const KerfSize&, const KerfSize&) = default;
};
struct KerfRect {
  std::int64_t x = 0;
  std::int64_t y = 0;
  KerfSize size;
};

inline constexpr std::size_t no_part = ~std::size_t{};

/// What through-cuts make of a piece: a part, nothing yet, or pieces in a row. Rows in x and in y alternate;
/// of each row what is empty lies last.
struct CutNode {
  KerfSize size;
  std::size_t part = no_part;
  bool along = false;  ///< the row runs in x
  std::vector<CutNode> row{};
  bool empty() const { return part == no_part && row.empty(); }
};

/// An empty place, and which cut comes first there.
struct PanelSpace {
  std::size_t index = 0;
  KerfSize size;
};

/// The piece with empty places beside and behind it, as large as that.
CutNode enlarged(CutNode node, KerfSize size);
/// Two pieces in a row in x (`along`) or in y.
CutNode joined(CutNode a, CutNode b, bool along);

/// A panel cut by through-cuts. Parts are numbers; their sizes are given when they are put in.
class CutPanel {
 public:
  /// `stage` is the first that its own cuts belong to; cuts of a later one than `stages` are not made.
  CutPanel(KerfRect at, std::size_t stages = no_part, std::size_t stage = 1);
  /// Filled already; the root is as large as the panel.
  CutPanel(KerfRect at, CutNode root);

  std::vector<PanelSpace> spaces() const;
  /// Into that space, by its index; false, and nothing changes, when it would take too many stages.
  bool put(std::size_t space, std::size_t part, KerfSize size, bool cross_first);
  void take_out(const std::function<bool(std::size_t part, const KerfRect& at)>& which,
                std::vector<std::size_t>& taken);
  void each_part(const std::function<void(std::size_t part, const KerfRect& at)>& visit) const;

  const KerfRect& at() const { return at_; }
  const CutNode& root() const { return root_; }
  std::size_t first_stage() const { return stage_; }

 private:
  KerfRect at_;
  std::size_t stages_ = no_part;
  std::size_t stage_ = 1;
  CutNode root_;
};

}  // namespace berthwright
