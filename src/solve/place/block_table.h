#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "solve/place/cover_rows.h"

namespace berthwright {

/// For every choice of parts (so many of each kind) the sizes of the blocks that through-cuts of any number
/// of stages can be taken apart to them from, none of which is smaller both ways than another: a dynamic
/// programme over the choices. Exact.
class BlockTable {
 public:
  /// None when it would join more than `most_merges` pairs of choices. Blocks larger than all stock are left
  /// out.
  static std::optional<BlockTable> made(const std::vector<KerfPart>& parts,
                                        const std::vector<KerfSize>& stock, std::size_t most_merges);

  std::size_t choices() const { return sizes_.size(); }  ///< the last holds all parts
  std::size_t kinds() const { return parts_.size(); }
  std::size_t count(std::size_t choice, std::size_t part) const {
    return choice / steps_[part] % (parts_[part].count + 1);
  }
  /// From narrow to long: lengths rise, widths fall.
  const std::vector<KerfSize>& sizes(std::size_t choice) const { return sizes_[choice]; }
  /// The choice is joined of these and what they leave; not itself, not nothing; one of each pair at least.
  std::vector<std::size_t> halves(std::size_t choice) const;
  /// How a block of that size, which must be one of those of the choice, is cut; its parts are the numbers of
  /// the kinds.
  CutNode cut(std::size_t choice, KerfSize size) const;

 private:
  explicit BlockTable(std::vector<KerfPart> parts) : parts_(std::move(parts)) {}
  void fill(std::size_t choice, const std::vector<KerfSize>& stock);

  std::vector<KerfPart> parts_;
  std::vector<std::size_t> steps_{};
  std::vector<std::vector<KerfSize>> sizes_{};
};

/// The least cost that cuts all parts from stock by through-cuts, and the sheets that do.
struct LeastCut {
  std::int64_t cost = 0;
  struct Sheet {
    std::size_t stock = 0;
    std::size_t choice = 0;
    KerfSize size;
  };
  std::vector<Sheet> sheets{};
};
/// None: the stock does not suffice.
std::optional<LeastCut> least_cut(const BlockTable& table, const std::vector<KerfStock>& stock);

}  // namespace berthwright
