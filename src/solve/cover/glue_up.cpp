#include <berthwright/solve/cover/glue_up.h>

#include <algorithm>
#include <array>
#include <functional>
#include <tuple>
#include <utility>

namespace berthwright {
namespace {

std::vector<Length> thicknesses_of(std::span<const FoamSheet> sheets) {
  std::vector<Length> all;
  for (const FoamSheet& sheet : sheets) all.push_back(sheet.thickness);
  std::ranges::sort(all, std::greater<>());
  all.erase(std::ranges::unique(all).begin(), all.end());
  return all;
}

// Goes through the layers that sheets can make, thickest first; `visit` is given each with its sum and says
// whether to go on with more layers on it.
class Layerings {
 public:
  using Visit = std::function<bool(const std::vector<Length>&, Length)>;

  Layerings(std::span<const FoamSheet> sheets, Visit visit)
      : thicknesses_(thicknesses_of(sheets)), visit_(std::move(visit)) {}

  void go(std::size_t first = 0, Length sum = {}) {
    if (layers_.size() == most_layers) return;
    for (std::size_t i = first; i < thicknesses_.size(); ++i) {
      layers_.push_back(thicknesses_[i]);
      if (visit_(layers_, sum + thicknesses_[i])) go(i, sum + thicknesses_[i]);
      layers_.pop_back();
    }
  }

 private:
  std::vector<Length> thicknesses_;
  Visit visit_;
  std::vector<Length> layers_;
};

// Strips of at most `most` that make up `total`.
std::vector<Length> strips_of(Length total, Length most) {
  const std::int64_t count = (total.ticks() + most.ticks() - 1) / most.ticks();
  if (count == 1) return {total};
  if (count == 2) {
    const Length first = std::max(half(total + one_tick), std::min(most, total - least_foam_strip));
    return {first, total - first};
  }
  std::vector<Length> strips(static_cast<std::size_t>(count), most);
  const Length ends = total - most * (count - 2);
  // Of an odd number the middle one stays whole; of an even one both halves would meet in the middle.
  const bool odd = count % 2 != 0;
  Length& other = odd ? strips.front() : strips[strips.size() - 2];
  other = odd ? half(ends + one_tick) : std::min(most, ends - least_foam_strip);
  strips.back() = ends - other;
  return strips;
}

// Fewer pieces are better, then a smaller sheet.
auto rank_of(const FoamLayer& layer) {
  const Area area = Area::rectangle(layer.sheet.length, layer.sheet.width);
  return std::tuple(layer.pieces(), area, layer.sheet.length, layer.turned);
}

FoamLayer layer_of(Length length, Length width, Length thickness, std::span<const FoamSheet> sheets) {
  std::optional<FoamLayer> best;
  for (const FoamSheet& sheet : sheets) {
    if (sheet.thickness != thickness) continue;
    for (const bool turned : {false, true}) {
      FoamLayer layer{sheet, turned, strips_of(length, turned ? sheet.width : sheet.length),
                      strips_of(width, turned ? sheet.length : sheet.width)};
      if (!best || rank_of(layer) < rank_of(*best)) best = std::move(layer);
    }
  }
  return *best;
}

}  // namespace

std::optional<GlueUp> glue_up(Length length, Length width, Length thickness,
                              std::span<const FoamSheet> sheets) {
  std::optional<std::vector<Length>> best;
  Layerings(sheets, [&](const std::vector<Length>& tried, Length sum) {
    if (sum == thickness && (!best || tried.size() < best->size())) best = tried;
    return sum < thickness;
  }).go();
  if (!best) return std::nullopt;
  GlueUp glued;
  for (const Length layer : *best) glued.layers.push_back(layer_of(length, width, layer, sheets));
  return glued;
}

NearThickness near_thickness(Length thickness, std::span<const FoamSheet> sheets) {
  NearThickness near;
  Layerings(sheets, [&](const std::vector<Length>&, Length sum) {
    if (sum < thickness) near.below = std::max(near.below.value_or(sum), sum);
    if (sum > thickness) near.above = std::min(near.above.value_or(sum), sum);
    return sum < thickness;
  }).go();
  return near;
}

std::span<const FoamSheet> usual_foam_sheets() {
  static constexpr std::array<FoamSheet, 8> sheets{{{82_in, 72_in, Length::inches(1, 2)},
                                                    {82_in, 72_in, 1_in},
                                                    {82_in, 72_in, Length::inches(3, 2)},
                                                    {82_in, 72_in, 2_in},
                                                    {82_in, 72_in, 3_in},
                                                    {82_in, 72_in, 4_in},
                                                    {82_in, 72_in, 5_in},
                                                    {82_in, 72_in, 6_in}}};
  return sheets;
}

}  // namespace berthwright
