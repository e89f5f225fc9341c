#include <algorithm>
#include <utility>

#include <berthwright/plan/plan.h>

#include "plan/promises.h"
#include "plan/readers.h"
#include "plan/tape_reading.h"

namespace berthwright {
namespace {

PlanParts read_parts(const Node& root, Reading& reading, std::vector<std::string>& unsound,
                     TapeWishes& tape) {
  Fields fields(&root, reading, "a plan");
  PlanParts parts{.interior = plain_interior({"/interior", root.line, root.column})};
  read_header(fields, parts);
  for (const std::string_view name : {"interior", "configurations"}) fields.require(name);
  if (const Node* interior = fields.find("interior")) parts.interior = read_interior(interior, reading);
  const RoomExtent room{parts.interior.length, parts.interior.width};
  parts.openings = read_openings(fields.find("openings"), reading);
  parts.fixtures = read_fixtures(fields.find("fixtures"), room, reading);
  parts.sewing = read_sewing(fields.find("sewing"), reading);
  parts.pieces = read_pieces(fields.find("pieces"), parts.sewing, reading);
  parts.configurations = read_configurations(fields.find("configurations"), parts, reading, unsound);
  parts.beds = read_beds(fields.find("beds"), reading);
  parts.overrides = read_overrides(fields.find("rules"), reading);
  parts.lifting = read_lifting(fields.find("lifting"), reading);
  tape = read_tape(fields.find("tape"), reading);
  parts.split = read_cushion_wishes(fields.find("split"), reading);
  parts.chassis = read_chassis(fields.find("chassis"), reading);
  parts.cargo = read_cargo(fields.find("cargo"), reading);
  parts.supply = read_supply(fields.find("supply"), reading);
  parts.warming = read_warming(fields.find("warming"), reading);
  parts.notes = read_notes(fields.find("notes"), reading);
  fill_foam(parts, reading);
  if (!fields.has("sewing") && std::ranges::any_of(parts.pieces, &Piece::is_soft))
    fields.note_default("sewing", "seams of 1/2 in, fabric 54 in wide, boxed, no welt, foam 1/2 in over",
                        "usual ways of the trade");
  fields.finish();
  return parts;
}

/// What the parts broke, at the very value where the file breaks it.
void add_broken_promises(const PlanParts& parts, const std::vector<std::string>& unsound, const Node& root,
                         Problems& problems) {
  const bool sound_so_far = problems.empty();
  for (Problem& problem : broken_promises(parts, unsound)) {
    // An id or a section that could not be read has been reported as such.
    if (!sound_so_far &&
        (problem.id == "id.empty" || problem.id == "id.characters" || problem.id == "plan.no-configuration"))
      continue;
    const Node& node = innermost(root, problem.pointer);
    if (problem.id == "bed.empty" && node.kind != Node::Kind::list) continue;
    problem.line = node.line;
    problem.column = node.column;
    problems.push_back(std::move(problem));
  }
}

Problems in_order(Problems problems) {
  sort_problems(problems);
  if (problems.size() < most_problems) return problems;
  problems.resize(most_problems - 1);
  const Problem last = problems.back();
  problems.push_back({"plan.many-faults", "", last.line, last.column,
                      "there are more faults than are listed here", "more faults", "none",
                      "mend these first"});
  return problems;
}

}  // namespace

std::vector<SpelledMeasure> in_file_order(std::vector<SpelledMeasure> measures) {
  const auto place = [](const SpelledMeasure& m) { return std::pair(m.origin.line, m.origin.column); };
  std::ranges::sort(measures, {}, place);
  const auto repeated = std::ranges::unique(measures, {}, place);
  measures.erase(repeated.begin(), repeated.end());
  return measures;
}

Result<PlanParts> read_with(const Node& root, const OtherLengths& other) {
  Reading reading;
  reading.other = &other;
  std::vector<std::string> unsound;
  TapeWishes tape;
  PlanParts parts = read_parts(root, reading, unsound, tape);
  if (!reading.problems.empty()) return in_order(std::move(reading.problems));
  parts.defaults = std::move(reading.defaults);
  return parts;
}

Result<Plan> read_plan(std::string_view text) {
  std::vector<SpelledMeasure> ignored;
  return read_plan(text, ignored);
}

Result<Plan> read_plan(std::string_view text, std::vector<SpelledMeasure>& measures) {
  Document document = read_document(text);
  if (!document.root) return document.problems;
  const Node& root = *document.root;
  Reading reading;
  reading.problems = std::move(document.problems);
  if (!is_object(root, reading, "a plan")) return in_order(std::move(reading.problems));
  if (!is_known_version(root, reading)) return in_order(std::move(reading.problems));
  std::vector<std::string> unsound;
  TapeWishes tape;
  PlanParts parts = read_parts(root, reading, unsound, tape);
  add_broken_promises(parts, unsound, root, reading.problems);
  // A length that could not be read is no measure yet, and its name would not be found.
  if (reading.problems.empty() && !tape.entries.empty())
    taped_measures(root, in_file_order(reading.measures), tape, reading);
  if (!reading.problems.empty()) return in_order(std::move(reading.problems));
  parts.defaults = std::move(reading.defaults);
  measures = in_file_order(std::move(reading.measures));
  return Plan::checked(std::move(parts));
}

}  // namespace berthwright
