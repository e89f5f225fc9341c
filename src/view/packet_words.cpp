#include "view/packet_words.h"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <string_view>

#include <berthwright/view/words.h>

#include "view/called.h"

namespace berthwright {
namespace {

/// One row: the British words are the American ones, [trailer] in their own, but where they are given.
struct PacketRow {
  PacketWord which;
  std::string_view american;
  std::string_view british{};
};
constexpr std::array packet_rows{
    PacketRow{PacketWord::lead,
              "This goes home with the [trailer]. It shows how it is laid out by day and by night, how the "
              "one becomes "
              "the other, how large each bed is and whom it suits, what gives heat and how to get out."},
    PacketRow{PacketWord::lead_plan,
              "It was made from the shop's plan and knows no more than that plan says."},
    PacketRow{PacketWord::lead_file, "It needs no network: keep the file on your telephone, or print it."},
    PacketRow{PacketWord::glance, "The [trailer] at a glance"},
    PacketRow{PacketWord::night, "The night"},
    PacketRow{PacketWord::no_bed, "The plan names no bed."},
    PacketRow{PacketWord::changing, "From day to night and back"},
    PacketRow{
        PacketWord::change_hint,
        "Each picture shows how all stands after its step. Blue is what the step moves, the dashes are where "
        "it was, the arrow is its way; grey squares are places to stand. The raised view leaves off what is "
        "built in high up."},
    PacketRow{
        PacketWord::moving_hint,
        "While it is on its way a piece is drawn as a box, dashed where its way was not worked out: out "
        "of and into lockers, beyond doors, and where a cushion is bent past what is near."},
    PacketRow{PacketWord::steps_on_sheets, "See the sheets of its steps, further on."},
    PacketRow{PacketWord::view_on_sheet, "Drawn on a sheet of its own, further on."},
    PacketRow{PacketWord::one_configuration, "The plan shows nothing that becomes another thing."},
    PacketRow{PacketWord::nothing_moves, "Nothing moves."},
    PacketRow{PacketWord::before_driving, "Before you drive", "Before you drive off"},
    PacketRow{PacketWord::cushions, "The cushions"},
    PacketRow{PacketWord::no_cushion, "The plan has no cushion."},
    PacketRow{PacketWord::cushion, "Cushion"},
    PacketRow{PacketWord::finished_size, "Size"},
    PacketRow{PacketWord::where_it_lies, "Where it lies"},
    PacketRow{PacketWord::foam, "Foam"},
    PacketRow{PacketWord::zip_side, "Zipper and upper edge, as it lies unturned",
              "Zip and upper edge, as it lies unturned"},
    PacketRow{PacketWord::unknown_foam, "unknown"},
    PacketRow{PacketWord::foam_no_grade, "of a grade that the plan does not give"},
    PacketRow{PacketWord::board_no_panel, "Board of a panel that the plan does not give"},
    PacketRow{PacketWord::heat, "Heat"},
    PacketRow{PacketWord::no_heat, "The plan shows nothing that gives heat."},
    PacketRow{PacketWord::may_stand, "Where it may stand"},
    PacketRow{PacketWord::before_bed, "Before the bed is made"},
    PacketRow{PacketWord::ways, "Ways out and alarms"},
    PacketRow{PacketWord::no_ways, "The plan shows no door and no way out."},
    PacketRow{PacketWord::alarms, "Alarms"},
    PacketRow{PacketWord::no_alarm, "The plan shows no alarm."},
    PacketRow{PacketWord::numbers, "Weight, balance and supply"},
    PacketRow{PacketWord::balance, "Weight and balance"},
    PacketRow{PacketWord::supply, "Supply"},
    PacketRow{PacketWord::warming, "Warming"},
    PacketRow{PacketWord::figure, "Figure"},
    PacketRow{PacketWord::asked, "Compared with"},
    PacketRow{PacketWord::circuit, "Circuit"},
    PacketRow{PacketWord::breaker, "Breaker"},
    PacketRow{PacketWord::hangs_on_it, "On it"},
    PacketRow{PacketWord::no_numbers,
              "The plan says too little of weights, coupling, circuits or walls to reckon anything here."},
    PacketRow{PacketWord::handover, "What the shop hands over"},
    PacketRow{PacketWord::no_notes, "The shop has written no handover notes into the plan."},
    PacketRow{PacketWord::figures, "What was measured"},
    PacketRow{
        PacketWord::figures_lead,
        "Everything that was compared and what came of it; where a number is asked for, with who asks for "
        "it."},
    PacketRow{PacketWord::what, "What"},
    PacketRow{PacketWord::found, "Found"},
    PacketRow{PacketWord::result, "Result"},
    PacketRow{PacketWord::alerts, "To know before the first night"},
    PacketRow{PacketWord::alerts_lead, "A1 is what the drawings call A1, and so on."},
    PacketRow{PacketWord::cautions, "Cautions"},
    PacketRow{PacketWord::unknown_means,
              "“Unknown” means that the plan does not say. Ask the shop, or measure; it never means that all "
              "is well."},
    PacketRow{PacketWord::signatures, "Handed over"},
    PacketRow{PacketWord::handed_over, "For the shop: name, place and date"},
    PacketRow{PacketWord::taken_over, "For the owner: name, place and date"},
    PacketRow{PacketWord::shop_lead,
              "For the bench: the parts of the [trailer], what is cut and bought, what was compared and what "
              "is open. The "
              "drawings with every measure are made by draw and cut."},
    PacketRow{PacketWord::parts, "Parts"},
    PacketRow{PacketWord::part, "Part"},
    PacketRow{PacketWord::kind, "Kind"},
    PacketRow{PacketWord::material, "Material"},
    PacketRow{PacketWord::weight, "Weight"},
    PacketRow{PacketWord::unknown_weight, "not in the plan"},
    PacketRow{PacketWord::cut_sheets, "Cut sheets"},
    PacketRow{PacketWord::purchase, "To buy, or to have"},
    PacketRow{PacketWord::purchase_lead,
              "Counted from the parts, each by itself: nothing is laid on sheets or on the roll yet, and "
              "nothing is added "
              "for waste."},
    PacketRow{PacketWord::how_much, "How much"},
    PacketRow{PacketWord::all_foam, "All foam together"},
    PacketRow{PacketWord::unknown_sum, "unknown"},
    PacketRow{PacketWord::fabric, "Fabric"},
    PacketRow{PacketWord::fabric_by_cut,
              "not added up: what every part takes of the roll stands in the cut sheets"},
    PacketRow{PacketWord::welt_cord, "Welt cord", "Piping cord"},
    PacketRow{PacketWord::templates, "Templates"},
    PacketRow{PacketWord::templates_note,
              "Full-size templates are not made. The key to the cushions, among the drawings, has every "
              "outline with all "
              "of its measures and radii; measure before you cut."},
    PacketRow{PacketWord::open_items, "Open items"},
    PacketRow{PacketWord::nothing_open, "Nothing that was compared is open."},
    PacketRow{PacketWord::on_paper, "Handover packet"}};

static_assert(packet_rows.size() == static_cast<std::size_t>(PacketWord::on_paper) + 1);

std::string words_about(PacketWord which, English english, const std::string& trailer) {
  const auto row = std::ranges::find(packet_rows, which, &PacketRow::which);
  if (row == packet_rows.end()) throw std::logic_error("PacketWord out of range");
  std::string text(english == English::british && !row->british.empty() ? row->british : row->american);
  constexpr std::string_view mark = "[trailer]";
  for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark))
    text.replace(at, mark.size(), trailer);
  return text;
}

}  // namespace

std::string word(PacketWord which, English english) {
  return words_about(which, english, std::string(word(Term::trailer, english)));
}

std::string word(PacketWord which, const Plan& plan) {
  return words_about(which, plan->english, vehicle(plan));
}

}  // namespace berthwright
