#include "view/split_words.h"

#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"

namespace berthwright {
namespace {

std::string count_text(std::size_t count, const std::string& one, const std::string& more) {
  return (count == 0 ? "no" : std::to_string(count)) + " " + (count == 1 ? one : more);
}

// "Left" of "Left bench".
std::string short_name(const Plan& plan, const FixtureId& bench) {
  std::string name = name_of(plan, bench.text());
  for (const std::string_view end : {" bench", " seat", " settee"})
    if (name.size() > end.size() && name.ends_with(end)) return name.substr(0, name.size() - end.size());
  return name;
}

// The n-th of A, B, … Z, AA, AB, …
std::string letter(std::size_t n) {
  std::string result;
  for (++n; n > 0; n = (n - 1) / 26) result.insert(result.begin(), static_cast<char>('A' + (n - 1) % 26));
  return result;
}

bool is_used(const Plan& plan, const NightBay& bay, const std::string& id) {
  if (plan.fixture(id) != nullptr || plan.leaf(id) != nullptr || plan.opening(id) != nullptr) return true;
  const Piece* piece = plan.piece(id);
  return piece != nullptr && std::ranges::find(bay.cushions, piece->id) == bay.cushions.end();
}

std::string where_it_stands(BackManner manner) {
  switch (manner) {
    case BackManner::on_seat:
      return "on the seat.";
    case BackManner::behind_seat:
      return "behind the seat, on the bench.";
    case BackManner::stays:
      return "behind the seat, on the bench, where it stays by night.";
  }
  return "";
}

// "89.50", in whatever money the plan's prices are.
std::string money_text(std::int64_t hundredths) {
  const std::string rest = std::to_string(hundredths % 100);
  return std::to_string(hundredths / 100) + (rest.size() < 2 ? ".0" : ".") + rest;
}

// "2.5", of tenths.
std::string tenths_text(int tenths) {
  return std::to_string(tenths / 10) + (tenths % 10 == 0 ? "" : "." + std::to_string(tenths % 10));
}

std::string foam_text(const Plan& plan, const SplitLimits& limits) {
  std::string text = "Foam is weighed at " + tenths_text(limits.foam_density) + " lb/ft3";
  text += limits.most_weight
              ? ", no cushion above " + mass_text(*limits.most_weight, plan->unit, Rounding::down) + ". "
              : " (common practice, no source, unless the plan gives it), with no limit to a cushion. ";
  const bool in_stock = std::ranges::find(limits.foam_stock, limits.thickness, &PricedFoam::thickness) !=
                        limits.foam_stock.end();
  if (in_stock)
    return text +
           "What foam costs: each cushion's share, by area, of the cheapest sheet of the plan on which it "
           "fits, cut 1/2 in over; offcuts are not reckoned.";
  return text +
         (limits.foam_stock.empty() ? "The plan names no sheets of foam with prices"
                                    : "No sheet of foam of the plan is as thick") +
         ": the less foam, by volume, the better.";
}

std::string manner_text(const Plan& plan, const NightBay& bay, const Split& split) {
  std::string text;
  for (std::size_t i = 0; i < bay.lids.size(); ++i) {
    // Benches alike are told together.
    std::vector<std::string> benches;
    const auto alike = [&](std::size_t j) {
      return split.manners[j] == split.manners[i] && split.heights[j] == split.heights[i] &&
             bay.lids[j].depth() == bay.lids[i].depth();
    };
    bool told = false;
    for (std::size_t j = 0; j < i; ++j) told = told || alike(j);
    if (told) continue;
    for (std::size_t j = i; j < bay.lids.size(); ++j)
      if (alike(j)) benches.push_back(name_of(plan, bay.lids[j].bench.text()));
    text += (text.empty() ? "" : " ") + listed_with_and(benches) + ": a back " +
            inches_of(plan, split.heights[i]) + " high " + where_it_stands(split.manners[i]);
  }
  return text;
}

}  // namespace

std::string inches_of(const Plan& plan, Length length) { return both(length, plan->unit, {.feet = false}); }

std::string box_text(const Plan& plan, Length a, Length b) {
  return inches_of(plan, std::max(a, b)) + " x " + inches_of(plan, std::min(a, b));
}

std::string corner_text(const Plan& plan, const Rect& at) {
  return inches_of(plan, at.low.x) + " from the front, " + inches_of(plan, at.low.y) + " from the left";
}

std::vector<CushionName> cushion_names(const Plan& plan, const NightBay& bay, const Split& split,
                                       const std::vector<std::string>& others) {
  std::vector<CushionName> result;
  std::size_t next = 0;
  const auto next_id = [&] {
    while (is_used(plan, bay, letter(next)) || std::ranges::find(others, letter(next)) != others.end())
      ++next;
    return letter(next++);
  };
  for (const SplitPiece& piece : split.pieces) {
    const auto alike = std::ranges::count_if(split.pieces, [&](const SplitPiece& other) {
      return other.use == piece.use && other.bench == piece.bench;
    });
    std::string name = piece.use == SplitPiece::Use::filler ? "Filler" : short_name(plan, piece.bench);
    if (piece.use == SplitPiece::Use::seat) name += " seat";
    if (piece.use == SplitPiece::Use::back) name += " back";
    if (alike > 1) name += " " + std::to_string(piece.number + 1);
    result.push_back({next_id(), name});
  }
  return result;
}

void add_ids(std::vector<std::string>& others, const Plan& plan, const BaySplits& splits) {
  const std::vector<std::string> before = others;
  for (const Split& split : splits.best)
    for (const CushionName& name : cushion_names(plan, splits.bay, split, before)) others.push_back(name.id);
}

std::string bay_heading(const Plan& plan, const NightBay& bay) {
  std::vector<std::string> ids;
  for (const Lid& lid : bay.lids) ids.push_back(lid.bench.text());
  ids.insert(ids.end(), bay.boards.begin(), bay.boards.end());
  const Rect all = bay.bounds();
  std::string text = names_with_and(plan, ids) + ": to be covered, " + inches_of(plan, all.width()) +
                     " along and " + inches_of(plan, all.height()) + " across, tops at " +
                     inches_of(plan, bay.level);
  if (!bay.risen.empty()) text += "; " + names_with_and(plan, bay.risen) + " rises through it";
  return text;
}

std::string split_heading(const Plan& plan, const NightBay& bay, const Split& split) {
  std::string text = manner_text(plan, bay, split);
  if (split.short_backs) text += " The backs end at the corners.";
  return text + " " + std::to_string(split.pieces.size()) + " cushions of " +
         count_text(split.sizes, "size", "sizes") + ", " + count_text(split.fillers, "filler", "fillers") +
         ".";
}

std::string split_reasons(const Plan& plan, const Split& split) {
  std::string text = split.gap ? "Leaves a gap of " + inches_of(plan, gap_width(split)) + " along " +
                                     inches_of(plan, std::max(split.gap->width(), split.gap->height())) +
                                     ", " + corner_text(plan, *split.gap) + ". "
                               : "Closes exactly. ";
  text += split.moved == 0 ? "All seats stay where they lie. "
                           : count_text(split.moved, "seat is", "seats are") + " moved at night. ";
  if (split.beyond_ease > 0)
    text += count_text(split.beyond_ease, "back is", "backs are") + " lower than " + inches_of(plan, 14_in) +
            " or higher than " + inches_of(plan, 18_in) + " (common practice, no source). ";
  text += split.hip_seams == Length{} ? "No seam across under hips"
                                      : "Seams across under hips: " + inches_of(plan, split.hip_seams);
  text += split.shoulder_seams == Length{} ? ", none under shoulders"
                                           : ", under shoulders: " + inches_of(plan, split.shoulder_seams);
  text += " (places of our own choice). Seams in all: " + inches_of(plan, split.seams) + ", on " +
          count_text(split.seam_lines, "line", "lines") + ". ";
  text += "The heaviest has " + mass_text(split.heaviest, plan->unit, Rounding::up) + " of foam";
  if (split.foam) {
    text += "; all foam comes to " + money_text(split.foam->hundredths);
    if (split.foam->glued > 0)
      text +=
          ", " + count_text(split.foam->glued, "cushion", "cushions") + " glued up, larger than any sheet";
  }
  return text + ".";
}

std::string piece_sentence(const Plan& plan, const SplitPiece& piece, const CushionName& name) {
  std::string text = name.id + ", " + name.name + ": " + box_text(plan, piece.length, piece.width);
  if (!piece.kept_out.empty()) {
    const Rect out = piece.kept_out.bounds();
    text += ", cut out " + inches_of(plan, out.width()) + " x " + inches_of(plan, out.height()) +
            " for what rises there";
  }
  if (piece.use == SplitPiece::Use::filler)
    return text + ". By night " + corner_text(plan, piece.by_night) + ".";
  if (piece.use == SplitPiece::Use::back)
    text += ", standing " + inches_of(plan, piece.height) + " high by day";
  if (piece.stays()) return text + ". It stays there by night.";
  text += ". By night " + corner_text(plan, piece.by_night);
  return text + (piece.turned() ? ", turned by a quarter." : ".");
}

std::string split_cure_sentence(const Plan& plan, const NightBay& bay, const SplitCure& cure) {
  switch (cure.kind) {
    case SplitCure::Kind::filler:
      return "It would close with " + count_text(cure.split.fillers, "filler", "fillers") +
             ", the narrowest " + inches_of(plan, cure.by) + " wide: " + split_heading(plan, bay, cure.split);
    case SplitCure::Kind::higher_back:
      return "It would close with a back " + inches_of(plan, cure.by) +
             " high: " + split_heading(plan, bay, cure.split);
    case SplitCure::Kind::narrower_piece:
      return "It would close if a cushion might be as narrow as " + inches_of(plan, cure.by) + ": " +
             split_heading(plan, bay, cure.split);
    case SplitCure::Kind::pressed_together:
      return "It would close with all cushions pressed together by " + inches_of(plan, cure.by) +
             " (foam gives 1/2 in or so, and buckles beyond 1 in: common practice, no source): " +
             split_heading(plan, bay, cure.split);
    case SplitCure::Kind::deeper_benches:
      return "It would close with each bench " + inches_of(plan, cure.by) +
             " deeper, and the board as much less: " + split_heading(plan, bay, cure.split);
  }
  return {};
}

std::string no_bay_sentence() {
  return "The plan has no bay to cover: no bench and board side by side at one height by night.";
}

std::string off_level_sentence(const Plan& plan, const OffLevel& off) {
  return name_of(plan, off.board) + " lies " + inches_of(plan, abs(off.above)) +
         (off.above < Length{} ? " below " : " above ") + name_of(plan, off.bench) +
         " by night: no bed is planned over it. Bring its top to within 1/2 in of the bench, by its ledge or "
         "with a board on it.";
}

std::string split_limits_sentence(const Plan& plan, const SplitLimits& limits) {
  return "Cushions " + inches_of(plan, limits.thickness) + " thick, backs from " +
         inches_of(plan, limits.least_back) + " to " + inches_of(plan, limits.most_back) +
         " high, sides from " + inches_of(plan, limits.least_side) + " to " +
         inches_of(plan, limits.longest_side) + ", at most " +
         count_text(limits.fillers, "filler", "fillers") +
         " (common practice, no source, where neither plan nor command gives them). Backs in steps of " +
         inches_of(plan, limits.step) +
         " and at every height that closes exactly; at most two different heights, one where a filler is "
         "used. " +
         (limits.most_gap > Length{} ? "Where nothing closes exactly, one gap of up to " +
                                           inches_of(plan, limits.most_gap) + " is shown. "
                                     : std::string{}) +
         "Seams are told under hips from 44 to 60 %, under shoulders from 76 to 88 % of the bed's length "
         "from "
         "the foot (own choice). Sizes are finished sizes, seam to seam. " +
         foam_text(plan, limits);
}

std::string split_effort_sentence(const BaySplits& splits) {
  return std::to_string(splits.candidates) + " choices of backs looked at, " +
         std::to_string(splits.by_area) + " given up by their areas, " + std::to_string(splits.closed) +
         " close; " + std::to_string(splits.stages) + " cushions laid on trial, " +
         std::to_string(splits.pruned) + " given up early." +
         (splits.complete ? "" : " Some searches came to their bound: there may be better.");
}

}  // namespace berthwright
