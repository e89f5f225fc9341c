#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include <berthwright/plan/panel.h>

#include "plan/in_quotes.h"
#include "plan/nearest_name.h"
#include "plan/promises.h"
#include "plan/values.h"

namespace berthwright {
namespace {

/// Ids that are taken, and where.
class Register {
 public:
  explicit Register(Reading& faults) : faults_(faults) {}

  void enter(const std::string& id, const Origin& origin) {
    if (const std::string fault = fault_of_id(id); !fault.empty()) {
      faults_.add(field_of(origin, "id"),
                  {.id = id.empty() ? "id.empty" : "id.characters",
                   .message = fault,
                   .found = in_quotes(id),
                   .allowed = "1 to 40 letters, digits, spaces, hyphens and underscores",
                   .cure = std::string(cure_of_id)});
      return;
    }
    const auto [first, is_new] = taken_.emplace(id, origin);
    if (is_new) return;
    faults_.add(field_of(origin, "id"),
                {.id = "id.twice",
                 .message = "two things are called " + in_quotes(id) + "; the first stands in line " +
                            std::to_string(first->second.line),
                 .found = in_quotes(id),
                 .allowed = "an id of its own for each thing",
                 .cure = "give one of them another id"});
  }

 private:
  Reading& faults_;
  std::map<std::string, Origin> taken_;
};

void check_ids(const PlanParts& parts, Reading& faults) {
  Register things(faults);
  for (const Opening& opening : parts.openings) things.enter(opening.id.text(), opening.origin);
  for (const Fixture& fixture : parts.fixtures) {
    things.enter(fixture.id.text(), fixture.origin);
    for (const Leaf& leaf : fixture.leaves) things.enter(leaf.id.text(), leaf.origin);
  }
  for (const Piece& piece : parts.pieces) things.enter(piece.id.text(), piece.origin);
  for (const Cargo& cargo : parts.cargo) things.enter(cargo.id, cargo.origin);
  Register circuits(faults);
  if (parts.supply)
    for (const Circuit& circuit : parts.supply->circuits) circuits.enter(circuit.id, circuit.origin);
  Register configurations(faults);
  for (const Configuration& c : parts.configurations) configurations.enter(c.id.text(), c.origin);
  Register beds(faults);
  for (const Bed& bed : parts.beds) beds.enter(bed.id.text(), bed.origin);
}

/// What a name may mean.
struct KnownNames {
  std::string what;
  std::vector<std::string> names;
  const char* otherwise = "use one of these, or add it to the plan";
};

/// Reports that `name` is unknown, with the nearest of those known, which it gives.
std::string unknown(const Origin& origin, const std::string& name, const KnownNames& known, Reading& faults) {
  if (faults.full()) return "";
  const std::optional<std::string> near = nearest_name(name, known.names);
  std::string list;
  for (std::size_t i = 0; i < std::min<std::size_t>(known.names.size(), 16); ++i)
    list += (i == 0 ? "\"" : ", \"") + known.names[i] + '"';
  if (known.names.size() > 16) list += ", …";
  faults.add(origin, {.id = "reference.unknown",
                      .message = "no " + known.what + " is called " + in_quotes(name),
                      .found = in_quotes(name),
                      .allowed = list.empty() ? "nothing: the plan has no " + known.what : list,
                      .cure = near ? "write \"" + *near + '"' : known.otherwise});
  return near.value_or("");
}

template <class Things>
std::vector<std::string> ids_of(const Things& things) {
  std::vector<std::string> ids;
  for (const auto& thing : things)
    if (!thing.id.empty()) ids.push_back(thing.id.text());
  return ids;
}

/// Checks the poses of all configurations against the pieces and fixtures.
class PoseCheck {
 public:
  PoseCheck(const PlanParts& parts, Reading& faults)
      : faults_(faults), piece_ids_(ids_of(parts.pieces)), fixture_ids_(ids_of(parts.fixtures)) {
    pieces_.insert(piece_ids_.begin(), piece_ids_.end());
    fixtures_.insert(fixture_ids_.begin(), fixture_ids_.end());
    for (const Piece& piece : parts.pieces)
      if (!piece.heat) unheated_.insert(piece.id.text());
    for (const Fixture& fixture : parts.fixtures)
      if (fixture.kind == Fixture::Kind::outlet) outlets_.push_back(fixture.id.text());
    supports_ = fixture_ids_;
    supports_.insert(supports_.end(), piece_ids_.begin(), piece_ids_.end());
  }

  void check(const Configuration& configuration, bool sound) {
    std::map<std::string, const Pose*> all;
    for (const Pose& pose : configuration.poses) all.emplace(pose.piece.text(), &pose);
    std::set<std::string> laid;
    std::set<std::string> meant;
    for (const Pose& pose : configuration.poses) {
      const std::string& id = pose.piece.text();
      const Origin origin = field_of(pose.origin, "piece");
      if (!pieces_.contains(id))
        meant.insert(unknown(origin, id, {"piece", piece_ids_}, faults_));
      else if (laid.contains(id))
        faults_.add(origin, {.id = "pose.twice",
                             .message = "the piece " + in_quotes(id) + " is already posed in line " +
                                        std::to_string(all.at(id)->origin.line),
                             .found = in_quotes(id),
                             .allowed = "each piece once in a configuration",
                             .cure = "take one of the two away"});
      for (std::size_t i = 0; i < pose.on.size(); ++i) check_support(pose, i, all, laid);
      if (!pose.plugged_into.empty()) check_plug(pose);
      laid.insert(id);
    }
    laid.merge(meant);
    if (sound) check_complete(configuration, laid);
  }

 private:
  void check_support(const Pose& pose, std::size_t i, const std::map<std::string, const Pose*>& all,
                     const std::set<std::string>& laid) {
    const std::string& id = pose.on[i];
    const Origin origin = field_of(pose.origin, "on/" + std::to_string(i));
    if (fixtures_.contains(id)) return;
    if (!pieces_.contains(id)) {
      unknown(origin, id, {"fixture or piece", supports_}, faults_);
      return;
    }
    const auto support = all.find(id);
    std::string why;
    bool is_later = false;
    if (id == pose.piece.text())
      why = "a piece cannot lie on itself";
    else if (support == all.end())
      why = "the piece " + in_quotes(id) + " is not in this configuration";
    else if (support->second->manner == Pose::Manner::stowed)
      why = "the piece " + in_quotes(id) + " is stowed in this configuration";
    else if (is_later = !laid.contains(id); is_later)
      why = "the piece " + in_quotes(id) +
            " is laid later, and the poses stand in the order in which they are laid";
    if (why.empty()) return;
    faults_.add(origin, {.id = "pose.support",
                         .message = why,
                         .found = in_quotes(id),
                         .allowed = "a fixture, or a piece that is laid before this one",
                         .cure = is_later ? "move " + in_quotes(id) + " further up the list"
                                          : "name what carries it here, or leave \"on\" away"});
  }

  void check_plug(const Pose& pose) {
    const Origin origin = field_of(pose.origin, "plugged_into");
    if (std::ranges::find(outlets_, pose.plugged_into) == outlets_.end())
      unknown(origin, pose.plugged_into, {"outlet", outlets_}, faults_);
    if (pose.manner != Pose::Manner::stowed && !unheated_.contains(pose.piece.text())) return;
    faults_.add(origin, {.id = "pose.plug",
                         .message = "only an appliance that stands in the room is plugged in",
                         .found = in_quotes(pose.plugged_into),
                         .allowed = "nothing",
                         .cure = "take it away"});
  }

  void check_complete(const Configuration& configuration, const std::set<std::string>& laid) {
    std::vector<std::string> missing;
    for (const std::string& id : piece_ids_)
      if (!laid.contains(id)) missing.push_back(id);
    if (missing.empty()) return;
    std::string list;
    for (std::size_t i = 0; i < std::min<std::size_t>(missing.size(), 12); ++i)
      list += (i == 0 ? "\"" : ", \"") + missing[i] + '"';
    if (missing.size() > 12) list += " and " + std::to_string(missing.size() - 12) + " more";
    faults_.add(
        configuration.origin,
        {.id = "pose.missing",
         .message = "the configuration " + in_quotes(configuration.id.text()) + " does not say where " +
                    list + (missing.size() == 1 ? " is" : " are"),
         .found = std::to_string(laid.size()) + " of " + std::to_string(piece_ids_.size()) + " pieces",
         .allowed = "a pose for every piece",
         .cure = R"(add its place, or where it is stowed: {"piece": ")" + missing.front() +
                 R"(", "stowed": "locker"})"});
  }

  Reading& faults_;
  std::vector<std::string> piece_ids_;
  std::vector<std::string> fixture_ids_;
  std::vector<std::string> supports_;
  std::set<std::string> pieces_;
  std::set<std::string> fixtures_;
  std::set<std::string> unheated_;
  std::vector<std::string> outlets_;
};

KnownNames places_to_keep(const PlanParts& parts) {
  KnownNames places{"fixture, door, lid or drawer", ids_of(parts.fixtures)};
  for (const Fixture& fixture : parts.fixtures)
    for (const Leaf& leaf : fixture.leaves) places.names.push_back(leaf.id.text());
  return places;
}

bool is_among(const std::vector<std::string>& names, const std::string& name) {
  return std::ranges::find(names, name) != names.end();
}

const Pose* pose_of(const Configuration& configuration, const PieceId& piece) {
  const auto found = std::ranges::find(configuration.poses, piece, &Pose::piece);
  return found == configuration.poses.end() ? nullptr : &*found;
}

void check_bed_piece(const Origin& origin, const PieceId& id, const Configuration* configuration,
                     const PlanParts& parts, Reading& faults) {
  const auto piece = std::ranges::find(parts.pieces, id, &Piece::id);
  if (piece == parts.pieces.end()) {
    unknown(origin, id.text(), {"piece", ids_of(parts.pieces)}, faults);
    return;
  }
  if (!piece->is_soft() && piece->kind != Piece::Kind::board)
    faults.add(origin,
               {.id = "bed.piece-kind",
                .message = "nobody lies on " + in_quotes(id.text()) + ", which is neither soft nor a board",
                .found = in_quotes(id.text()),
                .allowed = "cushions, bolsters and boards",
                .cure = "name the cushions that lie on it"});
  const Pose* pose = configuration == nullptr ? nullptr : pose_of(*configuration, id);
  if (pose == nullptr || pose->manner != Pose::Manner::stowed) return;
  faults.add(origin, {.id = "bed.piece-stowed",
                      .message = "the piece " + in_quotes(id.text()) + " is stowed in the configuration " +
                                 in_quotes(configuration->id.text()),
                      .found = in_quotes(id.text()),
                      .allowed = "pieces that are laid out in the configuration of the bed",
                      .cure = "take it off the bed, or give it a place"});
}

void check_bed(const Bed& bed, const PlanParts& parts, Reading& faults) {
  const auto found = std::ranges::find(parts.configurations, bed.configuration, &Configuration::id);
  const Configuration* configuration = found == parts.configurations.end() ? nullptr : &*found;
  if (configuration == nullptr && !bed.configuration.empty())
    unknown(field_of(bed.origin, "configuration"), bed.configuration.text(),
            {"configuration", ids_of(parts.configurations)}, faults);
  if (bed.pieces.empty())
    faults.add(field_of(bed.origin, "pieces"), {.id = "bed.empty",
                                                .message = "a bed needs at least one piece to lie on",
                                                .found = "[ ]",
                                                .allowed = "the ids of cushions, bolsters and boards",
                                                .cure = "name what people lie on, or take the bed away"});
  if (bed.linen) {
    const KnownNames places = places_to_keep(parts);
    if (!is_among(places.names, bed.linen->kept_in) && !bed.linen->kept_in.empty())
      unknown(field_of(bed.linen->origin, "kept_in"), bed.linen->kept_in, places, faults);
  }
  std::set<PieceId> seen;
  for (std::size_t i = 0; i < bed.pieces.size(); ++i) {
    const Origin origin = field_of(bed.origin, "pieces/" + std::to_string(i));
    if (!seen.insert(bed.pieces[i]).second)
      faults.add(origin,
                 {.id = "bed.piece-twice",
                  .message = "the piece " + in_quotes(bed.pieces[i].text()) + " stands twice in one bed",
                  .found = in_quotes(bed.pieces[i].text()),
                  .allowed = "each piece once",
                  .cure = "take one of the two away"});
    else
      check_bed_piece(origin, bed.pieces[i], configuration, parts, faults);
  }
}

void check_panels(const PlanParts& parts, Reading& faults) {
  std::vector<std::string> names;
  for (const Panel& panel : all_panels())
    if (names.empty() || names.back() != panel.name) names.push_back(panel.name);
  for (const Piece& piece : parts.pieces)
    if (!piece.panel.empty() && std::ranges::find(names, piece.panel) == names.end())
      unknown(field_of(piece.origin, "panel"), piece.panel,
              {"panel", names, "use one of these, or take it away: of no other panel the values are known"},
              faults);
}

void check_hinges(const PlanParts& parts, Reading& faults) {
  const std::vector<std::string> fixtures = ids_of(parts.fixtures);
  for (const Piece& piece : parts.pieces)
    if (!piece.hinged_to.empty() && std::ranges::find(fixtures, piece.hinged_to) == fixtures.end())
      unknown(field_of(piece.origin, "hinged_to"), piece.hinged_to,
              {"fixture", fixtures,
               "name the fixture that bears the hinge; at a wall, the ledge that it is screwed to"},
              faults);
}

void check_cargo_places(const PlanParts& parts, Reading& faults) {
  const KnownNames places = places_to_keep(parts);
  for (const Cargo& cargo : parts.cargo)
    if (!cargo.kept_in.empty() && !is_among(places.names, cargo.kept_in))
      unknown(field_of(cargo.origin, "kept_in"), cargo.kept_in, places, faults);
}

void check_weighing(const PlanParts& parts, const Weighed& weighed, Reading& faults) {
  const std::vector<std::string> pieces = ids_of(parts.pieces);
  std::vector<std::string> things = ids_of(parts.fixtures);
  things.insert(things.end(), pieces.begin(), pieces.end());
  for (const Cargo& cargo : parts.cargo) things.push_back(cargo.id);
  const std::vector<std::string> configurations = ids_of(parts.configurations);
  const Origin of_configuration = field_of(weighed.origin, "configuration");
  if (!weighed.configuration.empty() && !is_among(configurations, weighed.configuration))
    unknown(of_configuration, weighed.configuration, {"configuration", configurations}, faults);
  for (std::size_t i = 0; i < weighed.with.size(); ++i) {
    const Origin origin = field_of(weighed.origin, "with/" + std::to_string(i));
    if (!is_among(things, weighed.with[i]))
      unknown(origin, weighed.with[i], {"fixture, piece or cargo", things}, faults);
    else if (weighed.configuration.empty() && is_among(pieces, weighed.with[i]))
      faults.add(origin, {.id = "weighed.piece",
                          .message = "where " + in_quotes(weighed.with[i]) + " was on the scales is not said",
                          .found = in_quotes(weighed.with[i]),
                          .allowed = R"(pieces together with a "configuration")",
                          .cure = "write the configuration in which the trailer was weighed"});
  }
}

void check_feeds(const PlanParts& parts, Reading& faults) {
  if (!parts.supply) return;
  const std::vector<std::string> fixtures = ids_of(parts.fixtures);
  std::map<std::string, std::string> fed;
  for (const Circuit& circuit : parts.supply->circuits)
    for (std::size_t i = 0; i < circuit.feeds.size(); ++i) {
      const Origin origin = field_of(circuit.origin, "feeds/" + std::to_string(i));
      const auto [first, is_new] = fed.emplace(circuit.feeds[i], circuit.id);
      if (!is_among(fixtures, circuit.feeds[i]))
        unknown(origin, circuit.feeds[i],
                {"fixture", fixtures, R"(name a fixture, or write what is not drawn into "loads")"}, faults);
      else if (!is_new)
        faults.add(origin, {.id = "supply.twice",
                            .message = in_quotes(circuit.feeds[i]) + " already hangs on the circuit " +
                                       in_quotes(first->second),
                            .found = in_quotes(circuit.feeds[i]),
                            .allowed = "each fixture on one circuit",
                            .cure = "take one of the two away"});
    }
}

void check_overrides(const PlanParts& parts, Reading& faults) {
  std::vector<std::string> with_limit;
  for (const Rule& rule : all_rules())
    if (rule.limit) with_limit.push_back(rule.id.text());
  std::set<RuleId> seen;
  for (const Override& own : parts.overrides) {
    const Rule* rule = find_rule(own.rule.text());
    if (rule == nullptr)
      unknown(own.origin, own.rule.text(), {"rule", with_limit}, faults);
    else if (!rule->limit)
      faults.add(own.origin, {.id = "rule.no-limit",
                              .message = "the rule " + in_quotes(own.rule.text()) +
                                         " only reports and compares with no number",
                              .found = in_quotes(own.rule.text()),
                              .allowed = "a rule with a limit",
                              .cure = "take it away"});
    if (own.reason.empty() || !seen.insert(own.rule).second)
      faults.add(own.origin, {.id = "rule.reason",
                              .message = "a number of your own is given once, with its reason",
                              .found = in_quotes(own.rule.text()),
                              .allowed = "one limit and one reason",
                              .cure = "say why the number was chosen"});
  }
}

}  // namespace

void check_references(const PlanParts& parts, const std::vector<std::string>& unsound, Reading& faults) {
  check_ids(parts, faults);
  check_panels(parts, faults);
  check_hinges(parts, faults);
  check_cargo_places(parts, faults);
  if (parts.chassis && parts.chassis->weighed) check_weighing(parts, *parts.chassis->weighed, faults);
  check_feeds(parts, faults);
  PoseCheck poses(parts, faults);
  for (const Configuration& configuration : parts.configurations)
    poses.check(configuration, std::ranges::find(unsound, configuration.origin.pointer) == unsound.end());
  if (parts.configurations.empty())
    faults.add(Origin{"/configurations", 1, 1},
               {.id = "plan.no-configuration",
                .message = "the plan has no configuration, so nothing stands anywhere",
                .found = "nothing",
                .allowed = R"(at least one, as in "configurations": {"day": [ … ], "night": [ … ]})",
                .cure = "say where every piece is by day"});
  for (const Bed& bed : parts.beds) check_bed(bed, parts, faults);
  check_overrides(parts, faults);
}

}  // namespace berthwright
