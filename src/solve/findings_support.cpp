#include <algorithm>
#include <stdexcept>

#include "plan/wall_names.h"
#include "solve/comparing.h"
#include "solve/findings.h"
#include "solve/room/flush.h"

namespace berthwright {
namespace {

// Common practice for a grown person; whoever kneels on a board puts all of it in one place.
constexpr Mass person = Mass::pounds(250);
// Ledges this much lower than the others are meant to carry and stand too low.
constexpr Length meant_to_carry_within = 2_in;
// Shorter ones are clipped corners.
constexpr Length shortest_free_edge = 6_in;

/// All that findings about the boards of one configuration share.
struct Boards {
  const Plan& plan;
  const ConfigurationAnswer& answer;
  std::vector<Finding>& findings;

  Finding begin(std::string_view rule) const {
    Finding finding = finding_of(plan, rule);
    finding.configuration = answer.configuration->id;
    return finding;
  }
  Finding about(std::string_view rule, const BoardSupport& board, Point where) const {
    Finding finding = begin(rule);
    finding.subjects = {board.piece};
    finding.where = {{where, board.underside}};
    return finding;
  }
  const Placed& placed(const BoardSupport& board) const { return *answer.arrangement.find(board.piece); }
  bool is_table(const BoardSupport& board) const { return placed(board).piece->kind == Piece::Kind::table; }
  /// Nothing in the plan carries it, and a board has no hook or flange that the plan would not name.
  bool floats(const BoardSupport& board) const {
    return board.held == BoardSupport::Held::at_height && !is_table(board);
  }
};

bool lies(const BoardSupport& board) { return board.held == BoardSupport::Held::lies; }

// Ledges under the board that stand a little too low to carry it: raised to its underside they would.
std::optional<Cure> raising_of_low_ledges(const Boards& scene, const BoardSupport& board) {
  std::optional<Cure> cure;
  for (const Placed& thing : scene.answer.arrangement.things) {
    const Length low = board.underside - thing.solid.top();
    const bool is_low_ledge = thing.fixture != nullptr && thing.fixture->kind == Fixture::Kind::ledge &&
                              low > Length{} && low <= meant_to_carry_within;
    if (!is_low_ledge || !overlaps(thing.solid.outline(), scene.placed(board).solid.outline())) continue;
    if (!cure)
      cure = Cure{Cure::Kind::raise, thing.id, low, board.underside, {}};
    else if (low == cure->by)
      cure->alike.push_back(thing.id);
  }
  return cure;
}

// A ledge, leg or bracket of that height carries the board, whatever lies beneath it now.
Cure carrying_at_its_height(const BoardSupport& board) {
  return {Cure::Kind::carry_at, board.piece, {}, board.underside, {}};
}

void add_unbalanced(const Boards& scene, const BoardSupport& board) {
  Finding finding = scene.about("support.rests", board, board.centroid);
  const std::vector<std::string>& carriers = scene.placed(board).carried_by;
  finding.subjects.insert(finding.subjects.end(), carriers.begin(), carriers.end());
  compare(scene.plan, finding, board.beyond);
  finding.cure = raising_of_low_ledges(scene, board).value_or(carrying_at_its_height(board));
  scene.findings.push_back(std::move(finding));
}

void add_floating(const Boards& scene, const BoardSupport& board) {
  Finding finding = scene.about("support.rests", board, board.centroid);
  finding.variant = "nothing";
  Length highest;
  for (const Placed& thing : scene.answer.arrangement.things)
    if (thing.solid.top() < board.underside && thing.solid.top() > highest &&
        overlaps(thing.solid.outline(), scene.placed(board).solid.outline())) {
      highest = thing.solid.top();
      finding.subjects = {board.piece, thing.id};
    }
  compare(scene.plan, finding, board.underside - highest);
  finding.cure = raising_of_low_ledges(scene, board).value_or(carrying_at_its_height(board));
  scene.findings.push_back(std::move(finding));
}

void add_rests(const Boards& scene) {
  bool any = false;
  bool all_rest = true;
  for (const BoardSupport& board : scene.answer.support.boards) {
    any = any || lies(board);
    all_rest = all_rest && !scene.floats(board) && (!lies(board) || board.balanced);
    if (scene.floats(board)) {
      add_floating(scene, board);
    } else if (!lies(board)) {
      Finding finding = scene.about("support.fastening", board, board.centroid);
      finding.variant = board.held == BoardSupport::Held::on_legs ? "leg" : "height";
      const std::vector<std::string>& carriers = scene.placed(board).carried_by;
      finding.subjects.insert(finding.subjects.end(), carriers.begin(), carriers.end());
      finding.measured = board.underside;
      finding.cure = board.held == BoardSupport::Held::on_legs ? Cure{Cure::Kind::as_told, board.piece, {}}
                                                               : carrying_at_its_height(board);
      scene.findings.push_back(std::move(finding));
    } else if (!board.balanced) {
      add_unbalanced(scene, board);
    }
  }
  if (!any || !all_rest) return;
  Finding met = scene.begin("support.rests");
  compare(scene.plan, met, Length{});
  scene.findings.push_back(std::move(met));
}

void add_bearing(const Boards& scene, const BoardSupport& board) {
  for (const BearingSide& side : board.sides) {
    if (side.is_free() || side.on == std::vector<std::string>{"floor"}) continue;
    Finding finding = scene.about("support.bearing", board, side.where);
    finding.subjects.insert(finding.subjects.end(), side.on.begin(), side.on.end());
    finding.variant = std::string(wall_word(side.toward));
    if (side.play > Length{}) finding.besides = {side.depth, side.play};
    compare(scene.plan, finding, side.at_play);
    if (finding.status == Status::not_met) {
      const Placed* bearer = side.on.empty() ? nullptr : scene.answer.arrangement.find(side.on.front());
      const bool on_ledge =
          bearer != nullptr && bearer->fixture != nullptr && bearer->fixture->kind == Fixture::Kind::ledge;
      finding.cure = Cure{Cure::Kind::widen, on_ledge ? bearer->id : board.piece,
                          marked_out(shortfall(finding), scene.plan->unit)};
      finding.cure->side = on_ledge ? opposite(side.toward) : side.toward;
    }
    scene.findings.push_back(std::move(finding));
  }
}

Length place_of_side(const Rect& box, Wall side) {
  switch (side) {
    case Wall::front:
      return -box.low.x;
    case Wall::rear:
      return box.high.x;
    case Wall::left:
      return -box.low.y;
    default:
      return box.high.y;
  }
}

// What bears the board farthest out is made to reach its edge; where that is nothing built in, a ledge or leg
// is wanted there.
Cure bearing_to_the_edge(const Boards& scene, const BoardSupport& board) {
  const Rect edge = scene.placed(board).solid.outline().bounds();
  const Rect borne = board.bearing.bounds();
  std::optional<Cure> first;
  for (const Wall side : {Wall::front, Wall::rear, Wall::left, Wall::right}) {
    const Length short_of_it = place_of_side(edge, side) - place_of_side(borne, side);
    if (short_of_it <= Length{}) continue;
    Cure cure{Cure::Kind::widen, {}, marked_out(short_of_it, scene.plan->unit)};
    cure.side = side;
    for (const std::string& id : scene.placed(board).carried_by) {
      const Fixture* fixture = scene.plan.fixture(id);
      if (fixture == nullptr ||
          place_of_side(fixture->solid.outline().bounds(), side) < place_of_side(borne, side))
        continue;
      if (cure.subject.empty())
        cure.subject = id;
      else
        cure.alike.push_back(id);
    }
    if (cure.subject.empty()) return carrying_at_its_height(board);
    add_step(first, std::move(cure));
  }
  return first.value_or(carrying_at_its_height(board));
}

void add_tipping(const Boards& scene) {
  bool any = false;
  bool any_overhang = false;
  for (const BoardSupport& board : scene.answer.support.boards) {
    if (!lies(board) || !board.balanced) continue;
    any = true;
    if (board.overhang == Length{}) continue;
    any_overhang = true;
    Finding finding = scene.about("support.tipping", board, board.overhangs_at);
    finding.compared = person;
    finding.besides = {board.overhang};
    if (!board.tips_at || *board.tips_at < person) finding.cure = bearing_to_the_edge(scene, board);
    if (board.tips_at) {
      finding.besides.emplace_back(*board.weight);
      finding.measured = *board.tips_at;
      finding.status = *board.tips_at < person ? Status::not_met : Status::met;
    }
    scene.findings.push_back(std::move(finding));
  }
  if (!any || any_overhang) return;
  Finding met = scene.begin("support.tipping");
  met.compared = person;
  met.status = Status::met;
  scene.findings.push_back(std::move(met));
}

Length length_of(const Edge& edge) {
  const auto x = Int128{(edge.to.x - edge.from.x).ticks()};
  const auto y = Int128{(edge.to.y - edge.from.y).ticks()};
  return SquaredLength(x * x + y * y, 1).floor();
}

void add_span(const Boards& scene, const BoardSupport& board) {
  const FreeSpan* span = board.span();
  if (span == nullptr) return;
  Finding finding = scene.about("support.span", board, span->from);
  finding.where.push_back({span->to, board.underside});
  finding.variant = span->across == Piece::Grain::along_length ? "length" : "width";
  finding.measured = span->clear;
  finding.besides = {span->carried};
  finding.status = Status::met;
  scene.findings.push_back(std::move(finding));
  for (const BearingSide& side : board.sides) {
    if (!side.is_free() || length_of(side.edge) < shortest_free_edge) continue;
    Finding edge = scene.about("support.free-edge", board, side.where);
    edge.variant = std::string(wall_word(side.toward));
    edge.measured = length_of(side.edge);
    edge.status = Status::met;
    scene.findings.push_back(std::move(edge));
  }
}

void add_flush(const Boards& scene) {
  for (const FlushTop& top : flush_tops(scene.answer.arrangement, scene.answer.support)) {
    Finding finding = scene.begin("support.flush");
    finding.subjects = {top.board};
    finding.subjects.insert(finding.subjects.end(), top.beside.begin(), top.beside.end());
    finding.variant = top.step == Length{} ? "" : top.step < Length{} ? "lower" : "higher";
    finding.where = {{top.where, top.ledge_now}};
    compare(scene.plan, finding, abs(top.step));
    if (finding.status != Status::met) {
      Cure cure{top.step < Length{} ? Cure::Kind::raise : Cure::Kind::lower, top.ledges.front(),
                abs(top.step)};
      cure.to = top.ledge_flush;
      cure.alike.assign(top.ledges.begin() + 1, top.ledges.end());
      finding.cure = std::move(cure);
    }
    scene.findings.push_back(std::move(finding));
  }
}

}  // namespace

void add_support_findings(const Plan& plan, const ConfigurationAnswer& answer,
                          std::vector<Finding>& findings) {
  const Boards scene{plan, answer, findings};
  add_rests(scene);
  for (const BoardSupport& board : answer.support.boards) {
    if (!lies(board)) continue;
    add_bearing(scene, board);
    add_span(scene, board);
  }
  add_tipping(scene);
  add_flush(scene);
}

}  // namespace berthwright
