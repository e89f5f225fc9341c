#include "view/numbers_sheet.h"

#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/circuit_table.h"
#include "view/fitted_plan.h"
#include "view/lettering.h"
#include "view/load_bars.h"
#include "view/load_words.h"
#include "view/packet_words.h"
#include "view/page.h"
#include "view/plan_notes.h"
#include "view/quiet_sheet.h"
#include "view/signs.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength around_coupling = paper_mm(4);
constexpr PaperLength between_blocks = paper_mm(4);
constexpr PaperLength least_block_width = paper_mm(154);  // two bars beside each other
constexpr PaperLength widest_block = paper_mm(190);
constexpr std::size_t movers_named = 5;
constexpr PaperLength shown_area = paper_mm(48, 10);  ///< a smaller one lies under the sign

/// Where the centre of gravity lies in the room, as far as it is known.
struct MiddleSpan {
  Rect box;
  bool across_known = false;
};

struct Weighing {
  const DrawnConfiguration& of;
  const Loads& loads;
  const Plan& plan() const { return *of.plan; }
  const Balance& balance() const { return loads.balance(); }
  bool is_whole() const { return balance().whole_along.has_value(); }
};

std::optional<MiddleSpan> middle_of_weight(const Weighing& of) {
  const Balance& balance = of.balance();
  const auto& along = of.is_whole() ? balance.whole_along : balance.along;
  const auto& across = of.is_whole() ? balance.whole_across : balance.across;
  if (!along) return std::nullopt;
  const LengthSpan aside = across.value_or(LengthSpan{{}, of.plan()->interior.width});
  return MiddleSpan{{{along->low, aside.low}, {along->high, aside.high}}, across.has_value()};
}

Length middle_line(const Plan& plan) { return half(plan->interior.width); }

/// The load as it is told beside its place: in the plan's own unit and the other.
std::string load_label(const std::string& what, const std::optional<LoadSpan>& load,
                       const std::optional<LoadSpan>& change, Unit own) {
  if (load) return what + " " + load_text(*load, own);
  if (change)
    return what +
           (change->low || change->high ? ": change " + change_text(*change, own) : ": change unknown");
  return what;
}

/// What is told at a place, within the room where it lies in it.
struct ToldAt {
  Point place;
  std::string words;
  bool in_room = true;
};

void lay_label(const DrawnConfiguration& of, const PlanView& view, const ToldAt& told, Laid& laid) {
  LabelWish wish = place_wish(of, view, told.place);
  if (!told.in_room) wish.within.clear();
  add_wordings(wish, told.words, lettering::label);
  wish.target = view(told.place);
  wish.weight = weight_of_figures;
  wish.may_touch = true;
  wish.key = told.words;
  laid.wishes.push_back(std::move(wish));
}

void lay_chassis(const Weighing& of, const PlanView& view, Laid& laid) {
  const Plan& plan = of.plan();
  if (!plan->chassis) return;
  const Chassis& chassis = *plan->chassis;
  const Balance& balance = of.balance();
  const Length middle = middle_line(plan);
  Group drawn{"Coupling and axle", {}, 0};
  if (chassis.axle) {
    const Length reach = half(chassis.track.value_or(plan->interior.width));
    const Point left{*chassis.axle, middle - reach};
    const Point right{*chassis.axle, middle + reach};
    drawn.marks.emplace_back(straight(Ink::chassis, view(left), view(right)));
    if (chassis.track)
      for (const Point wheel : {left, right}) {
        add(drawn.marks, wheel_sign(view(wheel)));
        laid.signs.push_back(wheel_box(view(wheel)));
      }
    const Point told{*chassis.axle, middle + half(half(reach))};
    lay_label(of.of, view, {told, load_label("axle", balance.axle, std::nullopt, plan->unit)}, laid);
  }
  if (chassis.coupling) {
    const Point ball{-*chassis.coupling, middle};
    const PaperPoint at = view(ball);
    drawn.marks.emplace_back(straight(Ink::chassis, at, view({Length{}, middle})));
    add(drawn.marks, coupling_sign(at));
    laid.signs.push_back(sign_box(at, paper_mm(2)));
    const std::string what = balance.coupling ? std::string(coupling_load(plan->english)) : "coupling";
    lay_label(of.of, view,
              {ball, load_label(what, balance.coupling, balance.coupling_change, plan->unit), false}, laid);
  }
  laid.above.push_back(std::move(drawn));
}

std::string middle_label(const Weighing& of) {
  return of.is_whole() ? "centre of gravity" : "centre of gravity of what the plan holds";
}

void lay_middle(const Weighing& of, const PlanView& view, Laid& laid) {
  const std::optional<MiddleSpan> middle = middle_of_weight(of);
  if (!middle) return;
  const Rect& box = middle->box;
  const PaperBox area{view({box.low.x, box.high.y}), view({box.high.x, box.low.y})};
  const Point centre{half(box.low.x + box.high.x), half(box.low.y + box.high.y)};
  Group drawn{"Centre of gravity", {}, 0};
  const bool is_point = middle->across_known && area.width() < shown_area && area.height() < shown_area;
  if (is_point) {
    add(drawn.marks, balance_sign(view(centre)));
    laid.signs.push_back(sign_box(view(centre), paper_mm(26, 10)));
  } else {
    drawn.marks.emplace_back(closed_path(Ink::balance_area, area));
    laid.hatched.push_back({{{area.low, {area.high.x, area.low.y}, area.high, {area.low.x, area.high.y}}},
                            Ink::balance_area,
                            Ink::balance_hatch,
                            Diagonal::rising});
  }
  laid.above.push_back(std::move(drawn));
  lay_label(of.of, view, {centre, middle_label(of)}, laid);
}

/// The things that move the load on the coupling most have their names; of water the tank.
void name_movers(const Weighing& of, Laid& laid) {
  const Balance& balance = of.balance();
  for (const std::size_t i : movers(balance)) {
    laid.named.insert(balance.things[i].id);
    if (laid.named.size() == movers_named) return;
  }
}

std::vector<Note> numbers_notes(const Weighing& of, bool has_table) {
  const Plan& plan = of.plan();
  std::vector<Note> notes = warning_notes(plan, numbers_cautions(plan));
  const auto say = [&](const std::string& heading, const std::vector<std::string>& sentences) {
    if (sentences.empty()) return;
    notes.push_back({Note::Kind::heading, heading, 0, false, std::nullopt});
    for (const std::string& sentence : sentences)
      notes.push_back({Note::Kind::text, sentence, 0, false, std::nullopt});
  };
  say("Weight and balance", weight_sentences(plan, of.loads));
  std::vector<std::string> supply = supply_sentences(plan, of.loads);
  // What the table shows is not told once more.
  if (has_table) supply = supply_remarks(plan, *of.loads.supply);
  say("Supply", supply);
  say("Warming", warm_up_sentences(plan, of.loads));
  if (!of.balance().on_coupling.empty() && !movers(of.balance()).empty())
    notes.push_back({Note::Kind::text,
                     "Named on the drawing are the things that move the load on the coupling most.", 0, false,
                     std::nullopt});
  notes.push_back({Note::Kind::text,
                   "What these figures suppose, with every source, is told where they are told in words: by "
                   "the verb loads, and in a packet under “" +
                       word(PacketWord::numbers, plan->english) + "”.",
                   0, false, std::nullopt});
  return notes;
}

/// Bars and table under the plan.
struct NumberBlocks {
  std::vector<LoadBar> bars;
  std::optional<CircuitTable> table;
  PaperLength height;
};

NumberBlocks blocks_of(const Weighing& of, PaperLength width) {
  NumberBlocks blocks{load_bars(of.plan(), of.loads), circuit_table(of.plan(), of.loads, width), {}};
  if (!blocks.bars.empty()) blocks.height = height_of(blocks.bars, width) + between_blocks;
  if (blocks.table) blocks.height = blocks.height + blocks.table->height + between_blocks;
  return blocks;
}

/// Room for the coupling ahead of the front wall, for wheels outside the side walls, and below all for bars
/// and table, whose least width is made up on both sides.
Surroundings room_for_numbers(const Weighing& of, std::int64_t ratio) {
  const Plan& plan = of.plan();
  Surroundings around = bare_surroundings(plan, ratio);
  auto& lanes = around.lanes;
  if (plan->chassis && plan->chassis->coupling)
    lanes[Wall::front].depth =
        std::max(lanes[Wall::front].depth, on_paper(*plan->chassis->coupling, ratio) + around_coupling);
  if (plan->chassis && plan->chassis->track && *plan->chassis->track > plan->interior.width) {
    const PaperLength beyond =
        on_paper(half(*plan->chassis->track - plan->interior.width), ratio) + around_coupling;
    for (const Wall wall : {Wall::left, Wall::right}) lanes[wall].depth = std::max(lanes[wall].depth, beyond);
  }
  const PaperLength width = on_paper(plan->interior.outline.polygon().bounds().width(), ratio) +
                            lanes[Wall::front].depth + lanes[Wall::rear].depth;
  if (width < least_block_width) {
    const PaperLength more = least_block_width - width;
    lanes[Wall::front].depth = lanes[Wall::front].depth + more / 2;
    lanes[Wall::rear].depth = lanes[Wall::rear].depth + (more - more / 2);
  }
  // However wide the room, and at their widest a table of long names finds room too.
  lanes[Wall::left].depth = lanes[Wall::left].depth + blocks_of(of, widest_block).height;
  return around;
}

PlanDrawing numbers_drawing(const Weighing& of, const Layout& layout) {
  const PaperBox& box = layout.page.drawing;
  PaperBox below = box;
  const PaperLength width = std::min(box.width(), widest_block);
  below.low.x = box.low.x + (box.width() - width) / 2;
  below.high.x = below.low.x + width;
  NumberBlocks blocks = blocks_of(of, width);
  below.low.y = box.high.y - blocks.height;
  QuietSheet sheet;
  sheet.notes = numbers_notes(of, blocks.table.has_value());
  sheet.laid = [&](const PlanView& view) {
    Laid laid;
    lay_chassis(of, view, laid);
    lay_middle(of, view, laid);
    name_movers(of, laid);
    if (!blocks.bars.empty())
      laid.above.push_back({"Bars: what is asked, and the figure",
                            marks_of(blocks.bars, {{below.low.x, below.low.y + between_blocks}, below.high}),
                            0});
    if (blocks.table) {
      for (Mark& mark : blocks.table->marks) move_by(mark, {below.low.x, box.high.y - blocks.table->height});
      laid.above.push_back({"Circuits", blocks.table->marks, 0});
    }
    return laid;
  };
  return quiet_drawing(of.of, sheet, layout.view, {box.low, {box.high.x, below.low.y}});
}

}  // namespace

std::vector<std::string> numbers_cautions(const Plan& plan) {
  return {weighing_caution(plan), std::string("Wiring is for a ") +
                                      (plan->english == English::american ? "licensed" : "qualified") +
                                      " person and the local code."};
}

std::vector<Draft> numbers_drafts(const DrawnConfiguration& of, const Loads& loads) {
  if (!states_loads(*of.plan, loads)) return {};
  const Weighing weighing{of, loads};
  const std::vector<Layout> layouts =
      layouts_of(of, [&](std::int64_t ratio) { return room_for_numbers(weighing, ratio); });
  std::string told = "Plan seen from above, front at the left, with centre of gravity, axle and coupling.";
  for (const LoadBar& bar : load_bars(*of.plan, loads))
    told += " " + bar.name + ": " + bar.figures + "; " + bar.asked + ": " + bar.verdict + ".";
  for (const std::string& sentence : supply_sentences(*of.plan, loads)) told += " " + sentence;
  return fitted_drafts(of, layouts,
                       {name_of(*of.answer->configuration) + ", numbers", "",
                        of.answer->configuration->id.text(), "-numbers", told},
                       {}, [&](const Layout& layout) { return numbers_drawing(weighing, layout); });
}

}  // namespace berthwright
