#include <berthwright/plan/panel.h>

#include <algorithm>
#include <array>
#include <vector>

#include "plan/laminate.h"

namespace berthwright {
namespace {

// One row of the table: stiffness along the grain, then by 3, 4 and 5 plies.
struct RatedRow {
  const char* rating;
  std::int64_t stiffness_along;
  std::array<std::int64_t, 3> stiffness_across;
  std::array<std::int64_t, 3> strength_along;
  std::array<std::int64_t, 3> strength_across;
  const char* category;            // the thickness that usually bears this rating
  std::int64_t label_thousandths;  // printed on its label, in thousandths of an inch; 0: we have none
};

constexpr std::array rated{
    RatedRow{"24/0", 66'000, {3'600, 7'900, 11'000}, {250, 275, 300}, {54, 65, 97}, "3/8", 354},
    RatedRow{"24/16", 86'000, {5'200, 11'500, 16'000}, {320, 350, 385}, {64, 77, 115}, "7/16", 0},
    RatedRow{"32/16", 125'000, {8'100, 18'000, 25'000}, {370, 405, 445}, {92, 110, 165}, "15/32", 451},
    RatedRow{"40/20", 250'000, {18'000, 39'500, 56'000}, {625, 690, 750}, {150, 180, 270}, "19/32", 578},
    RatedRow{"48/24", 440'000, {29'500, 65'000, 91'500}, {845, 930, 1'000}, {225, 270, 405}, "23/32", 703},
    RatedRow{"24 oc", 330'000, {26'000, 57'000, 80'500}, {640, 705, 770}, {215, 260, 385}, "23/32", 703},
};

Source rated_source() {
  return {.kind = Source::Kind::published,
          .text = "AWC ASD/LRFD Manual, Table M9.2-1, reference values of plywood by span rating",
          .edition = {},
          .address = "yumpu.com/en/document/view/32600583 (page 75)"};
}

Source label_source(const RatedRow& row) {
  if (row.label_thousandths == 0) return {};
  return {.kind = Source::Kind::from_memory,
          .text = std::string("thickness on the label of US PS 1 category ") + row.category +
                  " in, which usually bears the rating " + row.rating,
          .edition = {},
          .address = {}};
}

void add_rated(std::vector<Panel>& panels) {
  for (const RatedRow& row : rated)
    for (std::size_t i = 0; i < 3; ++i) {
      Panel panel{.name = row.rating,
                  .plies = static_cast<int>(3 + i),
                  .thickness = {},
                  .along = {row.stiffness_along, row.strength_along[i]},
                  .across = {row.stiffness_across[i], row.strength_across[i]},
                  .source = rated_source(),
                  .thickness_source = label_source(row)};
      if (row.label_thousandths != 0) panel.thickness = Length::inches(row.label_thousandths, 1000);
      panels.push_back(std::move(panel));
    }
}

struct BirchRow {
  const char* name;
  int plies;
  Length mean_thickness;
};

constexpr std::array birch{
    BirchRow{"birch 6.5 mm", 5, Length::millimetres(64, 10)},
    BirchRow{"birch 9 mm", 7, Length::millimetres(92, 10)},
    BirchRow{"birch 12 mm", 9, Length::millimetres(120, 10)},
    BirchRow{"birch 15 mm", 11, Length::millimetres(148, 10)},
    BirchRow{"birch 18 mm", 13, Length::millimetres(176, 10)},
    BirchRow{"birch 21 mm", 15, Length::millimetres(204, 10)},
    BirchRow{"birch 24 mm", 17, Length::millimetres(232, 10)},
};

// Characteristic strengths to what loads without a factor may ask: medium-term load 0.8, material 1.2, load
// 1.5, as EN 1995-1-1 has them from memory.
constexpr double allowed_of_characteristic = 0.8 / (1.2 * 1.5);
constexpr double newtons_per_pound = 4.4482216152605;
constexpr double mm_per_inch = 25.4;

StripValues strip(const PlywoodValues& values, double thickness_mm) {
  const double foot = 12 * mm_per_inch;
  const double second_moment = foot * thickness_mm * thickness_mm * thickness_mm / 12;
  const double section = foot * thickness_mm * thickness_mm / 6;
  const double stiffness = values.modulus * second_moment / (newtons_per_pound * mm_per_inch * mm_per_inch);
  const double strength =
      values.strength * allowed_of_characteristic * section / (newtons_per_pound * mm_per_inch);
  return {static_cast<std::int64_t>(stiffness), static_cast<std::int64_t>(strength)};
}

void add_birch(std::vector<Panel>& panels) {
  const Source source{.kind = Source::Kind::from_memory,
                      .text =
                          "birch plywood of 1.4 mm veneers, laminate model and handbook table after EN 789; "
                          "strength for use times 0.8/(1.2 × 1.5) of EN 1995-1-1",
                      .edition = {},
                      .address = {}};
  const Source thickness{.kind = Source::Kind::from_memory,
                         .text = "mean thickness of birch plywood at this nominal thickness",
                         .edition = {},
                         .address = {}};
  for (const BirchRow& row : birch) {
    const Laminate values = laminate(row.plies, row.mean_thickness);
    const double mm = static_cast<double>(row.mean_thickness.ticks()) / ticks_per_mm;
    panels.push_back({.name = row.name,
                      .plies = {},
                      .thickness = row.mean_thickness,
                      .along = strip(values.along, mm),
                      .across = strip(values.across, mm),
                      .source = source,
                      .thickness_source = thickness});
  }
}

std::vector<Panel> every_panel() {
  std::vector<Panel> panels;
  add_rated(panels);
  add_birch(panels);
  return panels;
}

StripValues least(const StripValues& a, const StripValues& b) {
  return {std::min(a.stiffness, b.stiffness), std::min(a.strength, b.strength)};
}

}  // namespace

std::span<const Panel> all_panels() {
  static const std::vector<Panel> panels = every_panel();
  return panels;
}

std::optional<Panel> panel_named(std::string_view name, std::optional<int> plies) {
  std::optional<Panel> weakest;
  for (const Panel& panel : all_panels()) {
    if (panel.name != name) continue;
    if (panel.plies && panel.plies == plies) return panel;
    if (!weakest) weakest = panel;
    weakest->plies.reset();
    weakest->along = least(weakest->along, panel.along);
    weakest->across = least(weakest->across, panel.across);
  }
  return weakest;
}

}  // namespace berthwright
