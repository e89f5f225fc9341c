#pragma once

#include "solve/place/cut_panel.h"

namespace berthwright {

/// A panel cut freely: parts anywhere, touching allowed. Spaces are the largest empty rectangles.
class FreePanel {
 public:
  FreePanel(KerfRect at, std::vector<KerfRect> defects);

  const std::vector<PanelSpace>& spaces() const { return sizes_; }
  bool put(std::size_t space, std::size_t part, KerfSize size, bool cross_first);
  void take_out(const std::function<bool(std::size_t part, const KerfRect& at)>& which,
                std::vector<std::size_t>& taken);
  void each_part(const std::function<void(std::size_t part, const KerfRect& at)>& visit) const;

  /// With less room.
  FreePanel without(const KerfRect& taken) const;

  const KerfRect& at() const { return at_; }
  const std::vector<KerfRect>& empty() const { return empty_; }

 private:
  void cut_away(const KerfRect& taken);
  void number();

  KerfRect at_;
  std::vector<KerfRect> defects_;
  std::vector<std::pair<std::size_t, KerfRect>> parts_{};
  std::vector<KerfRect> empty_;
  std::vector<PanelSpace> sizes_{};
};

}  // namespace berthwright
