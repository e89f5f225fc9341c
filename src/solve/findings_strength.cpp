#include <algorithm>
#include <map>
#include <optional>

#include "solve/comparing.h"
#include "solve/findings.h"
#include "solve/room/bending.h"
#include "solve/room/screws.h"

namespace berthwright {
namespace {

/// One way that the face grain may run, as far as the plan says.
struct GrainWay {
  bool along = true;
  StripValues values;
};

/// A board under cushions over its free span, and the panel it is cut from.
struct LoadedBoard {
  const Plan& plan;
  const ConfigurationAnswer& answer;
  const Piece& piece;
  const FreeSpan& span;
  Length underside;
  SpannedBoard board;
  Panel panel;
  std::vector<GrainWay> ways;  ///< one, or both with the weaker last

  bool is_grain_known() const { return ways.size() == 1; }
  const StripValues& weakest() const { return ways.back().values; }

  Finding begin(std::string_view rule) const {
    Finding finding = finding_of(plan, rule);
    finding.configuration = answer.configuration->id;
    finding.subjects = {piece.id.text()};
    finding.where = {{span.from, underside}, {span.to, underside}};
    finding.besides = {span.clear};
    return finding;
  }
};

std::string described(const LoadedBoard& board) {
  const bool by_plies = std::ranges::any_of(all_panels(), [&](const Panel& panel) {
    return panel.name == board.panel.name && panel.plies.has_value();
  });
  std::string text = board.panel.name;
  if (board.panel.plies) text += " of " + std::to_string(*board.panel.plies) + " plies";
  if (by_plies && !board.panel.plies) text += ", the least values of its plies";
  if (!board.is_grain_known()) return text + ", way of the face grain not known, the weaker one";
  return text + (board.ways.front().along ? ", face grain along the span" : ", face grain across the span");
}

std::vector<GrainWay> ways_of(const Piece& piece, const Panel& panel, const FreeSpan& span) {
  const GrainWay along{true, panel.along};
  const GrainWay across{false, panel.across};
  if (!piece.grain) return {along, across};
  return {*piece.grain == span.across ? along : across};
}

// The least length that a shop marks out is rounded up; this one must not be
// exceeded.
Length marked_within(Length length, Unit unit) {
  const std::int64_t step = unit == Unit::inch ? ticks_per_inch / 8 : ticks_per_mm;
  return Length::from_ticks(length.ticks() / step * step);
}

Cure cure_of(const LoadedBoard& board, Bent question) {
  const std::string& id = board.piece.id.text();
  if (board.is_grain_known() && !board.ways.front().along && is_met(question, board.board, board.panel.along))
    return {Cure::Kind::turn_grain, id, {}};
  const Length longest = longest_span(question, board.board, board.weakest());
  Cure cure{Cure::Kind::bear_between, id, marked_within(longest, board.plan->unit)};
  cure.panel = next_stronger(question, board.board, board.panel, board.ways.back().along);
  return cure;
}

// Met only where it is met whichever way the grain runs.
void judge(const LoadedBoard& board, Bent question, bool nearly_all_used, Finding& finding) {
  const auto met = [&](const GrainWay& way) { return is_met(question, board.board, way.values); };
  finding.variant = described(board);
  if (std::ranges::all_of(board.ways, met)) {
    finding.status = nearly_all_used ? Status::close : Status::met;
  } else if (std::ranges::any_of(board.ways, met)) {
    finding.status = Status::unknown;
    finding.cure = Cure{Cure::Kind::state_grain, board.piece.id.text(), {}};
  } else {
    finding.status = Status::not_met;
    finding.cure = cure_of(board, question);
  }
}

// Close: within 5 % of what is asked.
bool is_nearly_all(std::int64_t used, std::int64_t whole) { return used * 20 > whole * 19; }

Finding sag_of(const LoadedBoard& board) {
  Finding finding = board.begin("strength.sag");
  const Length depth = under_sleepers(board.board, board.weakest()).sag;
  const Length limit = Length::from_ticks(board.span.clear.ticks() / sag_divisor);
  finding.measured = Sag{depth, board.span.clear};
  finding.compared = Sag{limit, board.span.clear};
  finding.margin = limit - depth;
  judge(board, Bent::too_far_by_sleepers, is_nearly_all(depth.ticks(), limit.ticks()), finding);
  return finding;
}

Finding moment_of(const LoadedBoard& board, std::string_view rule, Bent question, const Bending& bent) {
  constexpr Portion whole{1000};
  Finding finding = board.begin(rule);
  finding.measured = bent.used;
  finding.compared = whole;
  finding.source = board.panel.source;
  judge(board, question, is_nearly_all(bent.used.thousandths, whole.thousandths), finding);
  return finding;
}

std::vector<Finding> bending_of(const LoadedBoard& board) {
  const Bending slept = under_sleepers(board.board, board.weakest());
  const Bending knelt = under_knee(board.board, board.weakest());
  Finding knee = moment_of(board, "strength.knee", Bent::too_hard_by_knee, knelt);
  knee.besides.emplace_back(width_under_knee(board.board));
  Finding knee_sag = board.begin("strength.knee-sag");
  knee_sag.besides = knee.besides;
  knee_sag.variant = knee.variant;
  knee_sag.measured = Sag{knelt.sag, board.span.clear};
  knee_sag.status = Status::met;
  return {sag_of(board), moment_of(board, "strength.load", Bent::too_hard_by_sleepers, slept), knee,
          knee_sag};
}

// What holds by day and by night alike is told once, of the trailer.
void add_once(std::vector<Finding>& findings, Finding finding) {
  const auto same = std::ranges::find_if(findings, [&](const Finding& other) {
    return other.rule == finding.rule && other.subjects == finding.subjects &&
           other.variant == finding.variant && other.measured == finding.measured &&
           other.besides == finding.besides && other.status == finding.status;
  });
  if (same == findings.end())
    findings.push_back(std::move(finding));
  else
    same->configuration = ConfigurationId();
}

bool is_under_cushions(const ConfigurationAnswer& answer, const std::string& piece) {
  return std::ranges::any_of(answer.arrangement.things, [&](const Placed& thing) {
    return thing.is_soft() && std::ranges::find(thing.carried_by, piece) != thing.carried_by.end();
  });
}

void add_board(const Plan& plan, const ConfigurationAnswer& answer, const BoardSupport& support,
               std::vector<Finding>& findings) {
  const FreeSpan* span = support.span();
  const Piece* piece = plan.piece(support.piece);
  const std::optional<Panel> panel = panel_named(piece->panel, piece->plies);
  if (panel) {
    const LoadedBoard board{plan,
                            answer,
                            *piece,
                            *span,
                            support.underside,
                            spanned(support, *span),
                            *panel,
                            ways_of(*piece, *panel, *span)};
    for (Finding& finding : bending_of(board)) add_once(findings, std::move(finding));
    return;
  }
  Finding unknown = finding_of(plan, "strength.panel");
  unknown.configuration = answer.configuration->id;
  unknown.subjects = {support.piece};
  unknown.where = {{span->from, support.underside}, {span->to, support.underside}};
  unknown.besides = {span->clear};
  unknown.cure = Cure{Cure::Kind::state_panel, support.piece, {}};
  add_once(findings, std::move(unknown));
}

/// What leans on one ledge.
struct LedgeLoad {
  Area leaning;
  std::vector<std::string> boards;
  Point3 where;
};

void add_ledges(const Plan& plan, const ConfigurationAnswer& answer,
                const std::vector<const BoardSupport*>& boards, std::vector<Finding>& findings) {
  std::map<std::string, LedgeLoad> ledges;
  for (const BoardSupport* board : boards)
    for (const BearingSide& side : board->sides)
      for (const std::string& id : side.on) {
        const Fixture* fixture = plan.fixture(id);
        if (fixture == nullptr || fixture->kind != Fixture::Kind::ledge) continue;
        LedgeLoad& ledge = ledges[id];
        ledge.leaning += leaning_on(side, spanned(*board, *board->span()), *board->span());
        ledge.where = {side.where, board->underside};
        if (ledge.boards.empty() || ledge.boards.back() != board->piece) ledge.boards.push_back(board->piece);
      }
  for (const auto& [id, ledge] : ledges) {
    Finding finding = finding_of(plan, "strength.ledge");
    finding.configuration = answer.configuration->id;
    finding.subjects = {id};
    finding.subjects.insert(finding.subjects.end(), ledge.boards.begin(), ledge.boards.end());
    finding.where = {ledge.where};
    const Mass load = load_on_ledge(ledge.leaning);
    finding.measured = screws_for(load, assumed_screw());
    finding.besides = {load_of_sleepers(ledge.leaning), load};
    finding.status = Status::met;
    add_once(findings, std::move(finding));
  }
}

}  // namespace

void add_strength_findings(const Plan& plan, const ConfigurationAnswer& answer,
                           std::vector<Finding>& findings) {
  std::vector<const BoardSupport*> boards;
  for (const BoardSupport& board : answer.support.boards)
    if (board.span() != nullptr && board.span()->carried > Length{} && is_under_cushions(answer, board.piece))
      boards.push_back(&board);
  for (const BoardSupport* board : boards) add_board(plan, answer, *board, findings);
  add_ledges(plan, answer, boards, findings);
}

void add_panel_thicknesses(const Plan& plan, std::vector<Finding>& findings) {
  for (const Piece& piece : plan->pieces) {
    const std::optional<Panel> panel = panel_named(piece.panel, piece.plies);
    if (!panel || !panel->thickness) continue;
    Finding finding = finding_of(plan, "strength.thickness");
    finding.subjects = {piece.id.text()};
    finding.variant = panel->name;
    compare(plan, finding, abs(piece.thickness - *panel->thickness));
    if (finding.status == Status::not_met)
      finding.cure = Cure{Cure::Kind::real_thickness, piece.id.text(), *panel->thickness};
    findings.push_back(std::move(finding));
  }
}

}  // namespace berthwright
