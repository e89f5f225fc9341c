#include "view/step_words.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"

namespace berthwright {
namespace {

std::string carriers_text(const Plan& plan, const PiecePlace& spot) {
  std::vector<std::string> names;
  for (const std::string& id : spot.carried_by)
    names.push_back(id == "floor" ? "the floor" : name_of(plan, id));
  return listed_with_and(names);
}

std::string opened(const Plan& plan, const Step& step) {
  std::vector<std::string> leaves;
  for (const std::string& id : step.opens)
    if (plan.leaf(id) != nullptr) leaves.push_back(id);
  return leaves.empty() ? "" : "Open " + names_with_and(plan, leaves) + ". ";
}

std::string place_of_spot(const Plan& plan, const PiecePlace& spot) {
  const Rect box = spot.pose.outline.bounds();
  return ", " + both(box.low.x, plan->unit) + " from the front and " + both(box.low.y, plan->unit) +
         " from the left wall";
}

std::string taken_up(const Plan& plan, const Step& step) {
  const std::string name = name_of(plan, step.piece.text());
  switch (step.from.kind) {
    case PiecePlace::Kind::posed:
    case PiecePlace::Kind::parked: {
      const std::string carriers = carriers_text(plan, step.from);
      return carriers.empty() ? "Take " + name + " down" : "Lift " + name + " off " + carriers;
    }
    case PiecePlace::Kind::stowed:
      return "Take " + name + " out of " + name_of(plan, step.from.place);
    case PiecePlace::Kind::outside:
      return "Bring " + name + " in again through " + name_of(plan, step.from.place);
  }
  throw std::logic_error("PiecePlace::Kind out of range");
}

std::string lying(const Plan& plan, const Step& step) {
  const Pose& pose = step.to.pose;
  const Piece& piece = *plan.piece(step.piece.text());
  if (pose.manner == Pose::Manner::flat)
    return piece.kind == Piece::Kind::leg || piece.kind == Piece::Kind::heater ? "stand it" : "lay it flat";
  const Length down = pose.manner == Pose::Manner::on_length ? piece.length : piece.width;
  const Length other = pose.manner == Pose::Manner::on_length ? piece.width : piece.length;
  return std::string("stand it on its ") + (down >= other ? "long" : "short") + " edge";
}

std::string let_go(const Plan& plan, const Step& step) {
  const std::string carriers = carriers_text(plan, step.to);
  const std::string on = carriers.empty() ? "" : " on " + carriers;
  const bool on_edge = step.to.pose.manner != Pose::Manner::flat && step.to.pose.faces.has_value();
  const std::string faces =
      on_edge ? ", its face to the " + std::string(word(term_of(*step.to.pose.faces), plan->english)) : "";
  switch (step.to.kind) {
    case PiecePlace::Kind::posed:
      return lying(plan, step) + on + (carriers == "the floor" ? place_of_spot(plan, step.to) : "") + faces;
    case PiecePlace::Kind::parked:
      return lying(plan, step) + " aside" + on + place_of_spot(plan, step.to);
    case PiecePlace::Kind::stowed:
      return "put it into " + name_of(plan, step.to.place);
    case PiecePlace::Kind::outside:
      return "carry it out through " + name_of(plan, step.to.place);
  }
  throw std::logic_error("PiecePlace::Kind out of range");
}

const Motion* find_motion(const Step& step, Motion::Kind kind) {
  const auto found = std::ranges::find(step.motions, kind, &Motion::kind);
  return found == step.motions.end() ? nullptr : &*found;
}

std::string folded_sentence(const Plan& plan, const Step& step, const Motion& fold) {
  const std::string way = step.to.pose.manner != step.from.pose.manner
                              ? fold.after.top() > fold.before.top() ? " up" : " down"
                              : " over";
  const std::string carriers = carriers_text(plan, step.to);
  return "Fold " + name_of(plan, step.piece.text()) + way + " at its hinge on " +
         name_of(plan, plan.piece(step.piece.text())->hinged_to) +
         (step.to.pose.manner == Pose::Manner::flat ? ", till it lies flat"
                                                    : ", till it hangs or stands upright") +
         (carriers.empty() ? "" : " on " + carriers) + ".";
}

std::string tilts_told(const Plan& plan, const Step& step) {
  std::string text;
  for (const Motion& motion : step.motions) {
    if (motion.kind != Motion::Kind::tilt) continue;
    const bool up = motion.after.base() > motion.before.base();
    const Wall low = low_side(*motion.swing);
    text += " Level it does not pass: on its way " + std::string(up ? "up" : "down") + " tilt it by " +
            std::to_string(motion.swing->degrees) + "°, its side to the " +
            std::string(word(term_of(low), plan->english)) + " down.";
  }
  return text;
}

std::string held_by_what(Hold hold) {
  switch (hold) {
    case Hold::lip:
      return "a lip";
    case Hold::snap:
      return "a snap";
    case Hold::hook_and_loop:
      return "hook and loop";
    case Hold::strap:
      return "a strap";
    case Hold::block:
      return "a block";
    case Hold::latch:
      return "a latch";
    case Hold::hook:
      return "a hook";
    case Hold::screws:
      return "screws";
  }
  throw std::logic_error("Hold out of range");
}

std::string undone(const Plan& plan, const Step& step) {
  const std::optional<Hold> hold = fastened_at(plan, step.from);
  return hold ? "Undo what holds " + name_of(plan, step.piece.text()) + ", " + held_by_what(*hold) + ". "
              : "";
}

std::string fastened(const Plan& plan, const Step& step) {
  const std::optional<Hold> hold = fastened_at(plan, step.to);
  return hold ? " Fasten it: it is held by " + held_by_what(*hold) + "." : "";
}

std::string steps_counted(std::size_t count) {
  return count == 0 ? "nothing moves" : count == 1 ? "1 step" : std::to_string(count) + " steps";
}

std::string reaching_into(const Plan& plan, const std::string& thing, Length by, const LengthStyle& style) {
  const std::string name = thing == "room" ? "the wall" : name_of(plan, thing);
  return by < Length{}
             ? both(-by, plan->unit, {.rounding = Rounding::up, .feet = style.feet}) + " into " + name
             : both(by, plan->unit, style) + " to " + name;
}

}  // namespace

std::string_view word(Conversion::Verdict verdict) {
  switch (verdict) {
    case Conversion::Verdict::order:
      return "order";
    case Conversion::Verdict::none:
      return "none";
    case Conversion::Verdict::undecided:
      return "undecided";
  }
  throw std::logic_error("Conversion::Verdict out of range");
}

std::string_view word(Motion::Kind kind) {
  switch (kind) {
    case Motion::Kind::lift:
      return "lift";
    case Motion::Kind::lower:
      return "lower";
    case Motion::Kind::slide:
      return "slide";
    case Motion::Kind::turn:
      return "turn";
    case Motion::Kind::tip:
      return "tip";
    case Motion::Kind::tilt:
      return "tilt";
    case Motion::Kind::fold:
      return "fold";
  }
  throw std::logic_error("Motion::Kind out of range");
}

std::string_view word(PiecePlace::Kind kind) {
  switch (kind) {
    case PiecePlace::Kind::posed:
      return "posed";
    case PiecePlace::Kind::parked:
      return "parked";
    case PiecePlace::Kind::stowed:
      return "stowed";
    case PiecePlace::Kind::outside:
      return "outside";
  }
  throw std::logic_error("PiecePlace::Kind out of range");
}

std::string step_sentence(const Plan& plan, const Step& step) {
  if (const Motion* fold = find_motion(step, Motion::Kind::fold)) return folded_sentence(plan, step, *fold);
  const bool goes_off =
      step.from.pose.state == Pose::State::running && step.to.pose.state != Pose::State::running;
  const std::string name = name_of(plan, step.piece.text());
  return (goes_off ? "Switch " + name + " off, unplug it and let it cool. " : "") + opened(plan, step) +
         undone(plan, step) + taken_up(plan, step) + (step.flipped ? ", turn it over" : "") + " and " +
         let_go(plan, step) + "." +
         (step.bent ? " It must be bent or pressed past what is near: no straight way is free." : "") +
         tilts_told(plan, step) + fastened(plan, step);
}

std::vector<std::string> bedding_sentences(const Plan& plan, const Conversion& conversion) {
  std::vector<std::string> sentences;
  if (conversion.verdict != Conversion::Verdict::order) return sentences;
  for (const bool at_end : {false, true})
    for (const Bed& bed : plan->beds) {
      const bool made = bed.configuration == (at_end ? conversion.to : conversion.from)->id;
      if (!made || !bed.linen) continue;
      const std::string place = name_of(plan, bed.linen->kept_in);
      sentences.push_back(
          at_end ? "After the last step take the bedding out of " + place + " and make " + bed.name + "."
                 : "Before the first step put the bedding of " + bed.name + " into " + place + ".");
    }
  return sentences;
}

std::string conversion_heading(const Conversion& conversion) {
  const std::string text = "From " + conversion.from->name + " to " + conversion.to->name + ": ";
  switch (conversion.verdict) {
    case Conversion::Verdict::order:
      return text + steps_counted(conversion.steps.size());
    case Conversion::Verdict::none:
      return text + "none within these moves, places and sweep bounds";
    case Conversion::Verdict::undecided:
      return text + "not decided within the bound of the search";
  }
  throw std::logic_error("Conversion::Verdict out of range");
}

std::string conversion_bound(const Conversion& conversion) {
  const std::string stages = std::to_string(conversion.stages) + " stages";
  switch (conversion.verdict) {
    case Conversion::Verdict::order:
      if (conversion.steps.empty()) return "Both are the same.";
      return conversion.at_least == conversion.steps.size()
                 ? "No order has fewer steps, wherever pieces are put aside."
                 : "No order within these moves and places has fewer steps.";
    case Conversion::Verdict::none:
      return conversion.stages > 0 ? "Every one of " + stages + " that can be reached was looked at."
                                   : "Not even if every piece that can be taken away had room aside.";
    case Conversion::Verdict::undecided:
      return "The search ended after " + stages + ": there may be an order.";
  }
  throw std::logic_error("Conversion::Verdict out of range");
}

std::string stuck_sentence(const Plan& plan, const Conversion& conversion, const Stuck& stuck) {
  const std::string when = (stuck.at_goal ? conversion.to : conversion.from)->name;
  const std::string& hinge = plan.piece(stuck.piece)->hinged_to;
  if (!hinge.empty() && stuck.by == std::vector{hinge})
    return name_of(plan, stuck.piece) + ": its hinge on " + name_of(plan, hinge) +
           " does not lead from its place of " + conversion.from->name + " to that of " +
           conversion.to->name +
           ". A hinge takes a board by a quarter or half a turn about one of its ends; look at both places "
           "and "
           "heights (base).";
  std::vector<std::string> names;
  for (const std::string& id : stuck.by)
    names.push_back(id == "room" ? "the walls or the roof" : name_of(plan, id));
  const std::string by = listed_with_and(names);
  std::string text = name_of(plan, stuck.piece) + (stuck.at_goal ? " cannot come to" : " cannot leave") +
                     " its place of " + when + ": ";
  if (stuck.by_places)
    return text + "at every height at which it could be carried off there is a place of " + by + ", of " +
           conversion.from->name + " or of " + conversion.to->name + ", which it keeps clear of.";
  if (stuck.depth == Length{}) return text + by + (names.size() == 1 ? " is" : " are") + " in the way.";
  text += "it reaches " + both(stuck.depth, plan->unit, {.rounding = Rounding::up}) + " into " + by +
          ". Take that off it, or move " + (names.size() == 1 ? "that" : "those") + " by as much";
  return text + ".";
}

std::string drop_in_sentence(const Plan& plan, const DropIn& board, const DropIn::Direction& direction) {
  const LengthStyle down{.rounding = Rounding::down, .feet = false};
  const std::string way = direction.along ? "along the " + vehicle(plan) : "across it";
  const LengthStyle up{.rounding = Rounding::up, .feet = false};
  std::string text = name_of(plan, board.board) + " " + way + ": " +
                     reaching_into(plan, direction.thing_before, *direction.before, down) + " and " +
                     reaching_into(plan, direction.thing_behind, *direction.behind, down) + ". ";
  const Length gap = *direction.gap();
  const std::string diagonal = both(direction.diagonal, plan->unit, up);
  const std::string wide = both(gap, plan->unit, down);
  if (direction.diagonal <= gap)
    return text + "Set down one side first it needs " + diagonal + " of the " + wide + " there are.";
  if (direction.size <= gap)
    return text + "It goes down level only: one side first it needs " + diagonal + ", and there are " + wide +
           ".";
  if (direction.tilt)
    return text + "It is larger than the " + wide + " there are; tilted by " +
           std::to_string(*direction.tilt) + "° it would pass, and not lie flat.";
  return text + "It is larger than the " + wide + " there are, at any tilt.";
}

std::vector<std::string> leg_sentences(const Plan& plan, const Arrangement& arrangement) {
  std::vector<std::string> sentences;
  for (const Pose& pose : arrangement.configuration->poses) {
    const std::string id = pose.piece.text();
    if (plan.piece(id)->kind != Piece::Kind::leg) continue;
    const Placed* placed = arrangement.find(id);
    std::vector<std::string> carried;
    for (const Placed& thing : arrangement.things)
      if (std::ranges::find(thing.carried_by, id) != thing.carried_by.end()) carried.push_back(thing.id);
    sentences.push_back(name_of(plan, id) +
                        (placed == nullptr ? " is kept in " + name_of(plan, pose.stowed_in)
                         : carried.empty() ? " stands under nothing"
                                           : " stands under " + names_with_and(plan, carried)) +
                        ".");
  }
  return sentences;
}

std::string held_sentence(const Plan& plan, const DropIn& board) {
  const std::string name = name_of(plan, board.board);
  if (!board.held_by)
    return "What keeps " + name + " from being lifted out or kicked back the plan does not say (held_by).";
  return name + " is held by " + held_by_what(*board.held_by) + ".";
}

std::string_view moves_tried() {
  return "Moves tried: lifted straight up, carried level along and across, turned by quarters, tipped over a "
         "lower edge, lowered straight down; boards that do not pass so tilted by steps of 4 degrees; what "
         "is hinged "
         "only folded at its hinge. While it is carried a piece counts as its box and keeps clear "
         "of "
         "every place that others may have at that height. Cushions give 1/2 in. Places tried: those of both "
         "configurations, tops of furniture, cushions and boards that have at least two thirds of the piece "
         "over them each way (our own choice) and give no heat, the floor, on another piece put aside, "
         "outside "
         "of a door.";
}

}  // namespace berthwright
