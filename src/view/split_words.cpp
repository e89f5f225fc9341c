#include "view/split_words.h"

#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"

namespace berthwright {
namespace {

std::string inches_of(const Plan& plan, Length length) { return both(length, plan->unit, {.feet = false}); }

std::string size_text(const Plan& plan, Length a, Length b) {
  return inches_of(plan, a) + " x " + inches_of(plan, b);
}

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

std::string place_text(const Plan& plan, const Rect& at) {
  return inches_of(plan, at.low.x) + " from the front, " + inches_of(plan, at.low.y) + " from the left";
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
  std::string text = "Closes exactly. ";
  text += split.moved == 0 ? "All seats stay where they lie. "
                           : count_text(split.moved, "seat is", "seats are") + " moved at night. ";
  if (split.beyond_ease > 0)
    text += count_text(split.beyond_ease, "back is", "backs are") + " lower than " + inches_of(plan, 14_in) +
            " or higher than " + inches_of(plan, 18_in) + " (common practice, no source). ";
  text += split.hip_seams == Length{} ? "No seam across under hips"
                                      : "Seams across under hips: " + inches_of(plan, split.hip_seams);
  text += split.shoulder_seams == Length{}
              ? ", none under shoulders. "
              : ", under shoulders: " + inches_of(plan, split.shoulder_seams) + ". ";
  return text + "Seams in all: " + inches_of(plan, split.seams) + ".";
}

std::string piece_sentence(const Plan& plan, const SplitPiece& piece, const CushionName& name) {
  const Length longer = std::max(piece.length, piece.width);
  const Length shorter = std::min(piece.length, piece.width);
  std::string text = name.id + ", " + name.name + ": " + size_text(plan, longer, shorter);
  if (!piece.kept_out.empty()) {
    const Rect out = piece.kept_out.bounds();
    text += ", cut out " + size_text(plan, out.width(), out.height()) + " for what rises there";
  }
  if (piece.use == SplitPiece::Use::filler)
    return text + ". By night " + place_text(plan, piece.by_night) + ".";
  if (piece.use == SplitPiece::Use::back)
    text += ", standing " + inches_of(plan, piece.height) + " high by day";
  if (piece.stays()) return text + ". It stays there by night.";
  text += ". By night " + place_text(plan, piece.by_night);
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
    case SplitCure::Kind::deeper_benches:
      return "It would close with each bench " + inches_of(plan, cure.by) +
             " deeper, and the board as much less: " + split_heading(plan, bay, cure.split);
  }
  return {};
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
         " (common practice, no source). Backs in steps of " + inches_of(plan, limits.step) +
         " and at every height that closes exactly; at most two different heights, one where a filler is "
         "used. Sizes "
         "are finished sizes, seam to seam. Not weighed: what each cushion weighs, and what foam costs.";
}

std::string split_effort_sentence(const BaySplits& splits) {
  return std::to_string(splits.candidates) + " choices of backs looked at, " + std::to_string(splits.closed) +
         " close; " + std::to_string(splits.stages) + " cushions laid on trial, " +
         std::to_string(splits.pruned) + " given up early." +
         (splits.complete ? "" : " Some searches came to their bound: there may be better.");
}

}  // namespace berthwright
