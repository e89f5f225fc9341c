#include <stdexcept>
#include <string>

#include <berthwright/view/sheets.h>

#include "view/lettering.h"
#include "view/paper.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength half_of_heaviest = paper_mm(35, 100);

struct Lettered {
  PaperBox box;
  const Text* text;
};

void look(const Sheet& sheet, std::vector<Lettered>& lettered, std::vector<PaperLine>& heavy) {
  for (const Group& group : sheet.groups)
    for (const Mark& mark : group.marks) {
      if (const Text* text = std::get_if<Text>(&mark)) lettered.push_back({box_of(*text), text});
      const Path* path = std::get_if<Path>(&mark);
      if (path == nullptr || !is_heavy(path->ink)) continue;
      for (const PaperLine& line : seen_lines(*path)) heavy.push_back(line);
    }
}

std::string quoted(const Text& text) { return "'" + text.words + "'"; }

}  // namespace

// One line for each ink.
// NOLINTNEXTLINE(readability-function-size)
bool is_heavy(Ink ink) {
  switch (ink) {
    case Ink::frame:
    case Ink::wall:
    case Ink::bed_outline:
    case Ink::heat_line:
    case Ink::clash:
    case Ink::section_cut:
    case Ink::direction:
    case Ink::cut_foam:
    case Ink::cut_box:
    case Ink::cut_board:
    case Ink::pinch:
    case Ink::moved_piece:
    case Ink::zip_run:
    case Ink::chassis:
      return true;
    case Ink::rule:
    case Ink::floor:
    case Ink::opening:
    case Ink::fixture:
    case Ink::overhead:
    case Ink::cushion:
    case Ink::board:
    case Ink::table:
    case Ink::appliance:
    case Ink::grain:
    case Ink::alarm:
    case Ink::made_up:
    case Ink::sleeping_rectangle:
    case Ink::off_level:
    case Ink::gap:
    case Ink::ridge:
    case Ink::cut_thin:
    case Ink::seen_behind:
    case Ink::person:
    case Ink::hidden_person:
    case Ink::before_plane:
    case Ink::no_room:
    case Ink::hatch:
    case Ink::alert:
    case Ink::quiet:
    case Ink::quiet_overhead:
    case Ink::zone_published:
    case Ink::zone_plate:
    case Ink::zone_hatch:
    case Ink::cord:
    case Ink::site_region:
    case Ink::site_taken:
    case Ink::site_hatch:
    case Ink::site_place:
    case Ink::way_band:
    case Ink::way_path:
    case Ink::still_piece:
    case Ink::parked_piece:
    case Ink::side_built:
    case Ink::side_still:
    case Ink::side_parked:
    case Ink::side_moved:
    case Ink::side_cushion:
    case Ink::side_board:
    case Ink::side_heat:
    case Ink::foam_dots:
    case Ink::ghost:
    case Ink::move_way:
    case Ink::move_head:
    case Ink::sign_exit:
    case Ink::sign_shut:
    case Ink::sign_alarm:
    case Ink::sign_light:
    case Ink::sign_outlet:
    case Ink::wheel:
    case Ink::coupling:
    case Ink::balance:
    case Ink::balance_area:
    case Ink::balance_hatch:
    case Ink::asked_range:
    case Ink::figure_span:
    case Ink::dimension:
    case Ink::tick:
    case Ink::leader:
    case Ink::leader_dot:
    case Ink::balloon:
    case Ink::scale_bar_light:
    case Ink::scale_bar_dark:
    case Ink::title:
    case Ink::label:
    case Ink::note:
    case Ink::caution:
      return false;
  }
  throw std::logic_error("Ink out of range");
}

std::vector<std::string> lettering_faults(const Sheet& sheet) {
  std::vector<Lettered> lettered;
  std::vector<PaperLine> heavy;
  look(sheet, lettered, heavy);
  const PaperBox page{{}, {sheet.width, sheet.height}};
  std::vector<std::string> faults;
  for (std::size_t i = 0; i < lettered.size(); ++i) {
    const auto& [box, text] = lettered[i];
    if (!holds(page, box)) faults.push_back(quoted(*text) + " leaves the page");
    if (text->height < lettering::least) faults.push_back(quoted(*text) + " is set too small");
    for (const PaperLine& line : heavy)
      if (crosses(line, grown(box, half_of_heaviest))) {
        faults.push_back(quoted(*text) + " lies over a heavy line");
        break;
      }
    for (std::size_t j = 0; j < i; ++j)
      if (overlaps(box, lettered[j].box))
        faults.push_back(quoted(*text) + " meets " + quoted(*lettered[j].text));
  }
  return faults;
}

}  // namespace berthwright
