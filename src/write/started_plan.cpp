#include <algorithm>
#include <array>
#include <optional>
#include <stdexcept>
#include <utility>

#include <berthwright/geometry/four_walls.h>
#include <berthwright/plan/house_text.h>
#include <berthwright/write/interview.h>

#include "write/start_layout.h"

namespace berthwright {
namespace {

/// The walls of a room that is out of square; none of a square one.
std::optional<Result<FittedWalls>> walls_of(const Interview& asked) {
  if (asked.word("square") == "yes") return std::nullopt;
  return fitted({asked.length("front"), asked.length("rear"), asked.length("left"), asked.length("right"),
                 asked.length("front-left-to-rear-right"), asked.length("front-right-to-rear-left")});
}

class PlanStarter {
 public:
  PlanStarter(const Interview& asked, const std::optional<FittedWalls>& walls)
      : asked_(asked), write_(asked.unit()), walls_(walls) {}

  std::string text() {
    const WallInsets insets = insets_of_walls();
    const Length across = walls_ ? box().y - insets.left - insets.right : asked_.length("width");
    StartLayout layout = start_layout(asked_, insets, across);
    add_arches(layout, insets);
    add_counter(layout, insets);
    add_heater(layout, insets);
    const std::string unit = asked_.word("unit");
    return "// Written by berthwright new from what a tape gave. A number without a unit counts in " +
           std::string(unit == "in" ? "inches" : "millimetres") +
           "; \"6 ft 4 in\", \"19 1/2 in\" and \"483 mm\" are read as well.\n"
           "// x runs from the front wall (the hitch) to the rear, y from the left wall to the right, "
           "heights from the floor.\n"
           "{ \"berthwright\": 1, \"title\": " +
           ThingWriter::text(asked_.word("title")) + ", \"unit\": " + ThingWriter::text(unit) + ",\n" +
           interior() +
           ",\n// Doors and windows: the clear opening, as one climbs through it.\n\"openings\": [" +
           openings() +
           "],\n// What stays. \"at\" takes one measure along the trailer and one across, to the nearer "
           "face.\n\"fixtures\": [" +
           joined(layout.fixtures) +
           "],\n// What is moved, as it lies unturned: length along the trailer, width across "
           "it.\n\"pieces\": [" +
           joined(layout.pieces) +
           "],\n// Where each piece is, in the order in which they are laid; heights are found by resting.\n"
           "\"configurations\": { \"day\": [" +
           joined(layout.day) + "], \"night\": [" + joined(layout.night) + "] }" +
           (layout.beds.empty() ? "" : ", \"beds\": [" + joined(layout.beds) + "]") + " }\n";
  }

 private:
  static std::string joined(const std::vector<std::string>& things) {
    std::string all;
    for (const std::string& thing : things) all += (all.empty() ? "" : ",\n") + thing;
    return all;
  }

  /// The far corner of the box around the room.
  Point box() const {
    Point far{};
    for (const Point& corner : walls_->corners) far = {std::max(far.x, corner.x), std::max(far.y, corner.y)};
    return far;
  }

  WallInsets insets_of_walls() const {
    if (!walls_) return {};
    const auto& [front_left, rear_left, rear_right, front_right] = walls_->corners;
    return {.rear = box().x - std::min(rear_left.x, rear_right.x),
            .left = std::max(front_left.y, rear_left.y),
            .right = box().y - std::min(front_right.y, rear_right.y)};
  }

  std::string interior() const {
    const std::string height = "\"height\": " + write_.length(asked_.length("height")) + " }";
    if (!walls_)
      return "// Inside measures.\n\"interior\": { " +
             write_.sizes(asked_.length("length"), asked_.length("width")) + ", " + height;
    std::string text = "// Four walls and two diagonals, and the corners that fit them best:\n";
    for (const std::string& line : misfits_of(asked_)) text += "// " + line + "\n";
    text += "\"interior\": { \"outline\": [";
    for (std::size_t i = 0; i < 4; ++i)
      text += (i > 0 ? ", [" : "[") + write_.length(walls_->corners[i].x) + ", " +
              write_.length(walls_->corners[i].y) + "]";
    return text + "], " + height;
  }

  std::string opening(const std::string& id, const std::string& name, const char* kind,
                      const std::string& wall, const std::string& rest) const {
    const bool side = wall == "left" || wall == "right";
    return ThingWriter::thing(id, name, kind) + ", \"wall\": " + ThingWriter::text(wall) + ", \"" +
           (side ? "from_front" : "from_left") + "\": " + write_.length(asked_.length(id + "-from")) +
           ", \"width\": " + write_.length(asked_.length(id + "-width")) +
           ", \"height\": " + write_.length(asked_.length(id + "-height")) + rest + " }";
  }

  std::string openings() const {
    std::vector<std::string> all{opening("door", "Door", "door", asked_.word("door"), ", \"escape\": true")};
    const int count = asked_.word("windows").front() - '0';
    for (int i = 1; i <= count; ++i) {
      const std::string id = "window-" + std::to_string(i);
      const bool opens = asked_.word(id + "-opens") == "yes";
      all.push_back(
          opening(id, "Window " + std::to_string(i), "window", asked_.word(id),
                  ", \"sill\": " + write_.length(asked_.length(id + "-sill")) +
                      (opens ? ", \"opens\": \"out\", \"escape\": true" : ", \"opens\": \"fixed\"")));
    }
    return joined(all);
  }

  void add_arches(StartLayout& layout, const WallInsets& insets) const {
    const std::string& where = asked_.word("wheel-arches");
    for (const std::string side : {"left", "right"}) {
      if (where != side && where != "both") continue;
      layout.fixtures.push_back(
          ThingWriter::thing(side + " arch", side == "left" ? "Left wheel arch" : "Right wheel arch",
                             "wheel arch") +
          ", " + write_.sizes(asked_.length("arch-length"), asked_.length("arch-width")) + ", " +
          ThingWriter::at(write_.from_wall("front", asked_.length("arch-from")),
                          write_.from_wall(side, side == "left" ? insets.left : insets.right)) +
          ", \"top\": " + write_.length(asked_.length("arch-height")) + " }");
    }
  }

  void add_counter(StartLayout& layout, const WallInsets& insets) const {
    const std::string& side = asked_.word("counter");
    if (side == "none") return;
    layout.fixtures.push_back(
        ThingWriter::thing("galley", "Galley", "counter") + ", " +
        write_.sizes(asked_.length("counter-length"), asked_.length("counter-depth")) + ", " +
        ThingWriter::at(write_.from_wall("front", asked_.length("counter-from")),
                        write_.from_wall(side, side == "left" ? insets.left : insets.right)) +
        ", \"top\": " + write_.length(asked_.length("counter-height")) + " }");
  }

  /// The outlet as it hangs on its wall, its front into the room.
  std::string outlet(const WallInsets& insets) const {
    const std::string& wall = asked_.word("outlet");
    const Length from = asked_.length("outlet-from");
    const Length base = asked_.length("outlet-height");
    const bool side = wall == "left" || wall == "right";
    const Length inset = wall == "left"    ? insets.left
                         : wall == "right" ? insets.right
                         : wall == "rear"  ? insets.rear
                                           : Length{};
    const Length broad = write_.by_unit(3_in, 75_mm);
    const Length thin = write_.by_unit(1_in, 25_mm);
    const std::string to_wall = write_.from_wall(wall, inset);
    const char* faces = wall == "left"    ? "right"
                        : wall == "right" ? "left"
                        : wall == "front" ? "rear"
                                          : "front";
    return ThingWriter::thing("outlet", "Outlet", "outlet") + ", " +
           (side ? write_.sizes(broad, thin) : write_.sizes(thin, broad)) + ", " +
           (side ? ThingWriter::at(write_.from_wall("front", from), to_wall)
                 : ThingWriter::at(to_wall, write_.from_wall("left", from))) +
           ", \"base\": " + write_.length(base) +
           ", \"top\": " + write_.length(base + write_.by_unit(4_in, 100_mm)) +
           ", \"faces\": " + ThingWriter::text(faces) + " }";
  }

  void add_heater(StartLayout& layout, const WallInsets& insets) const {
    if (asked_.word("heater") == "no") return;
    std::string plate;
    if (asked_.word("plate") == "yes")
      for (const std::string face : {"front", "back", "sides", "top"})
        plate += (plate.empty() ? ", \"data_plate\": { " : ", ") +
                 write_.from_wall(face, asked_.length("plate-" + face));
    const bool plugged = asked_.word("outlet") != "none";
    if (plugged) layout.fixtures.push_back(outlet(insets));
    layout.pieces.push_back(ThingWriter::thing("heater", "Heater", "heater") + ", " +
                            write_.sizes(asked_.length("heater-length"), asked_.length("heater-width")) +
                            ", \"height\": " + write_.length(asked_.length("heater-height")) +
                            ", \"faces\": " + ThingWriter::text(asked_.word("heater-faces")) + plate +
                            (plate.empty() ? "" : " }") + ", \"cord\": { \"length\": " +
                            write_.length(asked_.length("heater-cord")) + " } }");
    const Length room = walls_ ? box().x - insets.rear : asked_.length("length");
    const bool under_bunk =
        layout.bunk > Length{} &&
        asked_.length("heater-from-front") + asked_.length("heater-length") > room - layout.bunk;
    layout.day.push_back("{ \"piece\": \"heater\", " +
                         ThingWriter::at(write_.from_wall("front", asked_.length("heater-from-front")),
                                         write_.from_wall("left", asked_.length("heater-from-left"))) +
                         (under_bunk ? R"(, "on": "floor")" : "") + ", \"state\": \"running\"" +
                         (plugged ? ", \"plugged_into\": \"outlet\"" : "") + " }");
    layout.night.push_back("{ \"piece\": \"heater\", \"stowed\": " + ThingWriter::text(layout.store) + " }");
  }

  const Interview& asked_;
  ThingWriter write_;
  const std::optional<FittedWalls>& walls_;
};

}  // namespace

Result<std::string> started_plan(const Interview& interview) {
  if (interview.next()) throw std::logic_error("a plan was begun before all was answered");
  std::optional<FittedWalls> walls;
  if (const auto result = walls_of(interview)) {
    if (!*result) return result->problems();
    walls = **result;
  }
  return house_text(PlanStarter(interview, walls).text());
}

std::vector<std::string> misfits_of(const Interview& interview) {
  const auto result = walls_of(interview);
  if (!result || !*result) return {};
  constexpr std::array<const char*, 6> names{
      "front", "rear", "left", "right", "front-left-to-rear-right", "front-right-to-rear-left"};
  const Length nothing = Length::inches(1, 1000);
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < names.size(); ++i) {
    const Length misfit = (*result)->misfits[i];
    const std::string amount = both(abs(misfit), interview.unit(), {.parts = 32});
    lines.push_back(std::string(names[i]) + ": measured " + interview.word(names[i]) +
                    (abs(misfit) < nothing ? ", fits"
                     : misfit > Length{}   ? ", too long by " + amount
                                           : ", too short by " + amount));
  }
  return lines;
}

}  // namespace berthwright
