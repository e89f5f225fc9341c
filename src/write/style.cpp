#include "write/style.h"

#include <stdexcept>

namespace berthwright {
namespace {

constexpr PaperLength um(std::int64_t count) { return PaperLength::micrometres(count); }

// Steps of the line width series of drawing standards (facts: 0.13 0.18 0.25 0.35 0.5 0.7).
constexpr PaperLength finest = um(130);
constexpr PaperLength fine = um(180);
constexpr PaperLength narrow = um(250);
constexpr PaperLength medium = um(350);
constexpr PaperLength wide = um(500);
constexpr PaperLength wider = um(700);

constexpr std::string_view black = "#000000";
constexpr std::string_view white = "#ffffff";
// Okabe and Ito's palette for all kinds of colour vision; light tints of it as fills under black lettering.
constexpr std::string_view blue = "#0072b2";
constexpr std::string_view vermilion = "#d55e00";
constexpr std::string_view yellow = "#f0e442";
constexpr std::string_view green = "#009e73";
constexpr std::string_view green_tint = "#d5efe5";
// Of signs, ISO 3864-4 (as reported in other texts; the standard itself was not read).
constexpr std::string_view sign_green = "#237f52";
constexpr std::string_view sign_red = "#9b2423";
constexpr std::string_view sky_tint = "#d9edf9";
constexpr std::string_view orange_tint = "#fbeac2";
constexpr std::string_view sky_shade = "#a6d3ef";
constexpr std::string_view orange_shade = "#f0d189";
constexpr std::string_view vermilion_shade = "#eeb08c";
constexpr std::string_view vermilion_tint = "#f8d9c4";
constexpr std::string_view grey_tint = "#f1f1f0";
constexpr std::string_view grey = "#d9d9d9";
constexpr std::string_view quiet_grey = "#7a7a7a";  // 4.3 to 1 on white

// Hidden line: 12 widths drawn, 3 left out. What stands before a section's plane: 24 widths and two dots of
// half a width (ISO 128-2, from memory).
constexpr std::array<PaperLength, 6> dashed(PaperLength width) {
  return {width * 12, width * 3, width * 12, width * 3, width * 12, width * 3};
}
constexpr std::array<PaperLength, 6> double_dotted(PaperLength width) {
  return {width * 24, width * 3, width / 2, width * 3, width / 2, width * 3};
}

constexpr std::array<PaperLength, 6> short_dashes(PaperLength width) {
  return {width * 4, width * 3, width * 4, width * 3, width * 4, width * 3};
}

// Round ends make dots of strokes without length.
constexpr PaperLength paper_dots = um(3000);
constexpr std::array<PaperLength, 6> dots_apart(PaperLength apart) {
  return {um(1), apart, um(1), apart, um(1), apart};
}

// Of a zip: teeth as wide as the gaps between them.
constexpr std::array<PaperLength, 6> teeth(PaperLength width) {
  return {width * 2, width * 2, width * 2, width * 2, width * 2, width * 2};
}

Style lettering() { return {{}, black, {}, {}, false}; }
Style shape(PaperLength width, std::string_view fill) { return {width, black, fill, {}, false}; }
Style line(PaperLength width, std::string_view colour) { return {width, colour, {}, {}, false}; }

}  // namespace

// One line for each ink.
// NOLINTNEXTLINE(readability-function-size)
Style style_of(Ink ink) {
  switch (ink) {
    case Ink::frame:
      return line(wide, black);
    case Ink::rule:
      return line(narrow, black);
    case Ink::wall:
      return shape(um(2400), black);
    case Ink::floor:
      return {{}, black, white, {}, false};
    case Ink::opening:
      return shape(narrow, white);
    case Ink::fixture:
      return shape(narrow, grey_tint);
    case Ink::overhead:
      return {narrow, black, {}, dashed(narrow), false};
    case Ink::cushion:
      return shape(medium, sky_tint);
    case Ink::board:
    case Ink::table:
      return shape(medium, orange_tint);
    case Ink::appliance:
      return shape(medium, vermilion_tint);
    case Ink::grain:
      return line(finest, black);
    case Ink::bed_outline:
      return line(wider, blue);
    case Ink::alarm:
      return shape(medium, white);
    case Ink::made_up:
      return {narrow, blue, {}, short_dashes(narrow), false};
    case Ink::off_level:
      return line(fine, blue);
    case Ink::sleeping_rectangle:
      return {medium, blue, {}, dashed(medium), false};
    case Ink::section_cut:
    case Ink::chassis:
      return line(wide, black);
    case Ink::wheel:
    case Ink::coupling:
      return shape(medium, grey);
    case Ink::balance:
      return shape(medium, white);
    case Ink::balance_area:
      return {medium, blue, {}, short_dashes(medium), false};
    case Ink::asked_range:
      return shape(fine, sky_shade);
    case Ink::figure_span:
      return {{}, black, black, {}, false};
    case Ink::clash:
    case Ink::heat_line:
      return line(wide, vermilion);
    case Ink::gap:
      return shape(fine, yellow);
    case Ink::alert:
      return shape(medium, yellow);
    case Ink::quiet:
      return {fine, quiet_grey, white, {}, false};
    case Ink::quiet_overhead:
      return {fine, quiet_grey, {}, dashed(fine), false};
    case Ink::zone_published:
      return {medium, vermilion, {}, dashed(medium), false};
    case Ink::zone_plate:
      return {medium, vermilion, {}, double_dotted(medium), false};
    case Ink::zone_hatch:
      return line(fine, vermilion);
    case Ink::cord:
      return {medium, black, {}, short_dashes(medium), false};
    case Ink::site_region:
    case Ink::site_place:
      return line(medium, blue);
    case Ink::site_hatch:
    case Ink::balance_hatch:
      return line(fine, blue);
    case Ink::site_taken:
      return line(narrow, black);
    case Ink::way_band:
      return {narrow, green, green_tint, {}, false};
    case Ink::way_path:
      return line(narrow, black);
    case Ink::pinch:
      return line(wide, black);
    case Ink::still_piece:
      return {fine, quiet_grey, grey_tint, {}, false};
    case Ink::parked_piece:
      return shape(narrow, orange_tint);
    case Ink::moved_piece:
      return {wide, blue, sky_tint, {}, false};
    case Ink::side_built:
      return {{}, black, grey_tint, {}, false};
    case Ink::side_still:
      return {{}, black, grey, {}, false};
    case Ink::side_parked:
    case Ink::side_board:
      return {{}, black, orange_shade, {}, false};
    case Ink::side_moved:
    case Ink::side_cushion:
      return {{}, black, sky_shade, {}, false};
    case Ink::side_heat:
      return {{}, black, vermilion_shade, {}, false};
    case Ink::foam_dots:
      return {narrow, black, {}, dots_apart(paper_dots), true};
    case Ink::ghost:
      return {narrow, blue, {}, short_dashes(medium), false};
    case Ink::move_way:
      return line(medium, blue);
    case Ink::move_head:
      return {{}, blue, blue, {}, false};
    case Ink::zip_run:
      return {wider, black, {}, teeth(wider), false};
    case Ink::sign_exit:
      return {{}, black, sign_green, {}, false};
    case Ink::sign_alarm:
      return {{}, black, sign_red, {}, false};
    case Ink::sign_light:
      return {{}, black, white, {}, false};
    case Ink::sign_shut:
    case Ink::sign_outlet:
      return shape(medium, white);
    case Ink::ridge:
      return shape(fine, black);
    case Ink::cut_foam:
      return shape(wide, sky_tint);
    case Ink::cut_box:
      return shape(wide, white);
    case Ink::cut_board:
      return shape(wide, orange_tint);
    case Ink::cut_thin:
      return shape(narrow, black);
    case Ink::seen_behind:
      return shape(fine, white);
    case Ink::person:
      return shape(medium, grey);
    case Ink::hidden_person:
      return {fine, black, {}, dashed(fine), false};
    case Ink::before_plane:
      return {narrow, black, {}, double_dotted(narrow), false};
    case Ink::no_room:
      return {medium, vermilion, {}, dashed(medium), false};
    case Ink::hatch:
    case Ink::dimension:
    case Ink::leader:
      return line(fine, black);
    case Ink::tick:
      return {medium, black, {}, {}, true};
    case Ink::leader_dot:
      return {{}, black, black, {}, false};
    case Ink::balloon:
    case Ink::scale_bar_light:
      return shape(fine, white);
    case Ink::scale_bar_dark:
      return shape(fine, black);
    case Ink::direction:
      return line(wide, black);
    case Ink::title:
    case Ink::label:
    case Ink::note:
    case Ink::caution:
      return lettering();
  }
  throw std::logic_error("Ink out of range");
}

}  // namespace berthwright
