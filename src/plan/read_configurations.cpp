#include <algorithm>
#include <array>
#include <utility>

#include "plan/box_sides.h"
#include "plan/in_quotes.h"
#include "plan/readers.h"

namespace berthwright {
namespace {

using Manner = Pose::Manner;
using State = Pose::State;

constexpr std::array<Word<Manner>, 2> edges{{{"length", Manner::on_length}, {"width", Manner::on_width}}};
constexpr std::array<Word<State>, 3> states{
    {{"running", State::running}, {"off", State::off}, {"stowed", State::stowed}}};

/// One id, or a list of them.
std::optional<std::vector<std::string>> as_supports(const Node& node, Reading& reading) {
  if (node.kind == Node::Kind::list) return as_references(node, reading);
  const std::optional<std::string> id = as_reference(node, reading);
  return id ? std::optional(std::vector{*id}) : std::nullopt;
}

/// Reads the poses of one plan.
class PoseReader {
 public:
  PoseReader(const PlanParts& parts, Reading& reading)
      : parts_(parts), reading_(reading), room_{parts.interior.length, parts.interior.width} {
    for (const Fixture& fixture : parts.fixtures)
      landmarks_.push_back({fixture.id.text(), fixture.solid.outline().bounds()});
  }

  /// Nothing when the pose does not say which piece it is of.
  std::optional<Pose> read(const Node& node) {
    Fields fields(&node, reading_, "a pose");
    const std::optional<std::string> id = fields.required("piece", as_reference);
    Pose pose;
    pose.piece = PieceId(id.value_or(""));
    pose.origin = node.origin();
    const Piece* piece = find_piece(pose.piece);
    if (piece == nullptr) {
      allow_everything(fields);
      pose.outline = Region(Rect{{}, {1_in, 1_in}});
      pose.height = 1_in;
    } else {
      read_state(fields, *piece, pose);
      if (pose.manner == Manner::stowed)
        refuse_standing(fields);
      else
        read_standing(fields, *piece, pose);
    }
    fields.finish();
    return id ? std::optional(std::move(pose)) : std::nullopt;
  }

 private:
  const Piece* find_piece(const PieceId& id) const {
    const auto found = std::ranges::find(parts_.pieces, id, &Piece::id);
    return found == parts_.pieces.end() ? nullptr : &*found;
  }

  // Of a piece that does not exist nothing more can be judged than the names of the fields.
  static void allow_everything(Fields& fields) {
    for (const std::string_view name :
         {"at", "turn", "flipped", "on", "base", "stands_on", "faces", "state", "plugged_into", "stowed"})
      fields.find(name);
  }

  static void refuse_standing(Fields& fields) {
    for (const std::string_view name : {"at", "turn", "flipped", "on", "base", "stands_on", "faces"})
      fields.refuse(name, "what is stowed is not measured", "take it away");
    fields.refuse("plugged_into", "what is stowed is not plugged in", "take it away");
  }

  void read_state(Fields& fields, const Piece& piece, Pose& pose) {
    const Node* stowed = fields.find("stowed");
    if (stowed != nullptr) {
      pose.manner = Manner::stowed;
      pose.stowed_in = as_name(*stowed, reading_).value_or("");
    }
    if (!piece.heat) {
      fields.refuse("state", "only an appliance runs or is off", "take it away");
      fields.refuse("plugged_into", "only an appliance is plugged in", "take it away");
      return;
    }
    pose.state = stowed != nullptr ? fields.optional("state", one_of(states)).value_or(State::stowed)
                                   : fields.with_default("state", one_of(states), State::running, "running",
                                                         "the plan does not say that it is off or stowed");
    if (stowed != nullptr && pose.state != State::stowed)
      reading_.add(*fields.find("state"), {.id = "pose.state",
                                           .message = "a stowed heater can neither run nor be plugged in",
                                           .found = found_at(*fields.find("state")),
                                           .allowed = "\"stowed\"",
                                           .cure = "take \"state\" or \"stowed\" away"});
    if (stowed == nullptr && pose.state == State::stowed) {
      pose.manner = Manner::stowed;
      fields.require("stowed");
    }
  }

  void read_standing(Fields& fields, const Piece& piece, Pose& pose) {
    if (piece.heat) {
      for (const std::string_view name : {"stands_on", "flipped"})
        fields.refuse(name, "a heater stands upright", "take it away");
    } else if (const Node* edge = fields.find("stands_on")) {
      pose.manner = one_of(edges)(*edge, reading_).value_or(Manner::on_length);
    }
    if (piece.heat) pose.plugged_into = fields.optional("plugged_into", as_reference).value_or("");
    pose.manner == Manner::flat ? read_flat(fields, piece, pose) : read_on_edge(fields, piece, pose);
    read_support(fields, pose);
  }

  void read_flat(Fields& fields, const Piece& piece, Pose& pose) {
    fields.refuse("faces", "a piece that lies flat has no face to a side",
                  piece.heat ? "turn the heater with \"turn\"" : "add \"stands_on\", or take it away");
    Placement& placement = pose.placement;
    placement.turn = fields.with_default("turn", as_turn, Turn{}, "0", "not turned");
    if (!piece.heat)
      placement.flipped =
          fields.with_default("flipped", as_flag, false, "false", "the same face up as it is drawn");
    if (piece.heat && !placement.turn.is_quarter()) {
      reading_.add(*fields.find("turn"), {.id = "heat.turn",
                                          .message = "what gives heat can only be turned by quarter turns",
                                          .found = found_at(*fields.find("turn")),
                                          .allowed = "0, 90, 180 or 270",
                                          .cure = "turn it by the nearest of these"});
      placement.turn = Turn{};
    }
    const Rect box = placement(piece.outline.polygon()).bounds();
    placement.shift = read_place(fields, box, pose.origin);
    pose.outline = Region(placement(piece.outline.polygon()));
    for (const Arc& arc : piece.outline.arcs()) pose.arcs.push_back(placement(arc));
    pose.height = piece.thickness;
    if (piece.heat) pose.faces = turned(piece.heat->faces, placement.turn);
  }

  // Worked corners do not show in plan when a piece stands on edge: its box is taken.
  void read_on_edge(Fields& fields, const Piece& piece, Pose& pose) {
    for (const std::string_view name : {"turn", "flipped"})
      fields.refuse(name, "\"faces\" says how a piece on edge stands", "take it away");
    const bool on_length = pose.manner == Manner::on_length;
    const Length edge = on_length ? piece.length : piece.width;
    pose.height = on_length ? piece.width : piece.length;
    pose.faces = fields.required("faces", as_wall).value_or(Wall::rear);
    const bool looks_along = *pose.faces == Wall::front || *pose.faces == Wall::rear;
    const Rect box{{}, looks_along ? Point{piece.thickness, edge} : Point{edge, piece.thickness}};
    const Vector shift = read_place(fields, box, pose.origin);
    pose.outline = Region(Rect{box.low + shift, box.high + shift});
  }

  Vector read_place(Fields& fields, const Rect& box, const Origin& origin) {
    const std::optional<Place> place = fields.required("at", as_place);
    if (!place) return {};
    bool known = true;
    for (const Measure* measure : leanings(*place)) {
      if (std::ranges::find(landmarks_, measure->fixture, &Landmark::id) != landmarks_.end()) continue;
      report_unknown_fixture(*measure, landmarks_, reading_);
      known = false;
    }
    const Vector shift = known ? shift_to(*place, box, room_, landmarks_).value() : Vector{};
    return within_reach(box, shift, origin, reading_) ? shift : Vector{};
  }

  void read_support(Fields& fields, Pose& pose) {
    pose.base = fields.optional("base", as_length);
    pose.on = fields.optional("on", as_supports).value_or(std::vector<std::string>{});
    if (fields.has("base"))
      fields.refuse("on", "the height is already given by \"base\"", "keep one of the two");
    if (pose.on == std::vector<std::string>{"floor"}) {
      pose.on.clear();
      pose.base = Length{};
    }
  }

  const PlanParts& parts_;
  Reading& reading_;
  RoomExtent room_;
  std::vector<Landmark> landmarks_;
};

}  // namespace

std::vector<Configuration> read_configurations(const Node* node, const PlanParts& parts, Reading& reading,
                                               std::vector<std::string>& unsound) {
  std::vector<Configuration> configurations;
  if (node == nullptr || !is_object(*node, reading, "configurations")) return configurations;
  PoseReader reader(parts, reading);
  for (const Node& child : node->children) {
    Configuration configuration{ConfigurationId(child.key), child.key, {}, child.origin()};
    if (const std::string fault = fault_of_id(child.key); !fault.empty())
      reading.add(child, {.id = "id.characters",
                          .line = child.key_line,
                          .column = child.key_column,
                          .message = fault,
                          .found = in_quotes(child.key),
                          .allowed = "1 to 40 letters, digits, spaces, hyphens and underscores",
                          .cure = "write a short name of letters, such as day, night or road"});
    if (!is_list(child, reading, "a list of poses")) {
      unsound.push_back(child.pointer);
    } else {
      for (const Node& pose : child.children) {
        if (std::optional<Pose> read = reader.read(pose))
          configuration.poses.push_back(*std::move(read));
        else
          unsound.push_back(child.pointer);
      }
    }
    configurations.push_back(std::move(configuration));
  }
  return configurations;
}

}  // namespace berthwright
