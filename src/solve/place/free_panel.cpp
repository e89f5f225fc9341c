#include "solve/place/free_panel.h"

#include <algorithm>
#include <tuple>

namespace berthwright {
namespace {

bool share(const KerfRect& a, const KerfRect& b) {
  return a.x < b.x + b.size.length && b.x < a.x + a.size.length && a.y < b.y + b.size.width &&
         b.y < a.y + a.size.width;
}
bool lies_in(const KerfRect& inner, const KerfRect& outer) {
  return outer.x <= inner.x && outer.y <= inner.y &&
         inner.x + inner.size.length <= outer.x + outer.size.length &&
         inner.y + inner.size.width <= outer.y + outer.size.width;
}

}  // namespace

FreePanel::FreePanel(KerfRect at, std::vector<KerfRect> defects)
    : at_(at), defects_(std::move(defects)), empty_{at} {
  for (const KerfRect& defect : defects_) cut_away(defect);
  number();
}

// Each empty rectangle that is met falls apart into the up to four largest beside what was taken.
void FreePanel::cut_away(const KerfRect& taken) {
  std::vector<KerfRect> kept;
  std::vector<KerfRect> split;
  for (const KerfRect& e : empty_) {
    if (!share(e, taken)) {
      kept.push_back(e);
      continue;
    }
    const std::int64_t right = e.x + e.size.length - (taken.x + taken.size.length);
    const std::int64_t above = e.y + e.size.width - (taken.y + taken.size.width);
    if (taken.x > e.x) split.push_back({e.x, e.y, {taken.x - e.x, e.size.width}});
    if (right > 0) split.push_back({taken.x + taken.size.length, e.y, {right, e.size.width}});
    if (taken.y > e.y) split.push_back({e.x, e.y, {e.size.length, taken.y - e.y}});
    if (above > 0) split.push_back({e.x, taken.y + taken.size.width, {e.size.length, above}});
  }
  for (std::size_t i = 0; i < split.size(); ++i) {
    const bool inside_kept =
        std::ranges::any_of(kept, [&](const KerfRect& k) { return lies_in(split[i], k); });
    bool inside_split = false;
    for (std::size_t j = 0; j < split.size() && !inside_split; ++j)
      inside_split = j != i && lies_in(split[i], split[j]) && (!lies_in(split[j], split[i]) || j < i);
    if (!inside_kept && !inside_split) kept.push_back(split[i]);
  }
  empty_ = std::move(kept);
}

FreePanel FreePanel::without(const KerfRect& taken) const {
  FreePanel result = *this;
  result.cut_away(taken);
  result.number();
  return result;
}

void FreePanel::number() {
  sizes_.clear();
  for (const KerfRect& e : empty_) sizes_.push_back({sizes_.size(), e.size});
}

bool FreePanel::put(std::size_t space, std::size_t part, KerfSize size, bool /*cross_first*/) {
  const KerfRect at{empty_[space].x, empty_[space].y, size};
  parts_.emplace_back(part, at);
  cut_away(at);
  number();
  return true;
}

void FreePanel::take_out(const std::function<bool(std::size_t, const KerfRect&)>& which,
                         std::vector<std::size_t>& taken) {
  const std::size_t before = taken.size();
  std::erase_if(parts_, [&](const auto& part) {
    const bool out = which(part.first, part.second);
    if (out) taken.push_back(part.first);
    return out;
  });
  if (taken.size() == before) return;
  empty_ = {at_};
  for (const KerfRect& defect : defects_) cut_away(defect);
  for (const auto& [part, at] : parts_) cut_away(at);
  number();
}

void FreePanel::each_part(const std::function<void(std::size_t, const KerfRect&)>& visit) const {
  for (const auto& [part, at] : parts_) visit(part, at);
}

}  // namespace berthwright
