#include "write/interview_questions.h"

#include <algorithm>
#include <utility>

#include "plan/bare_length.h"

namespace berthwright {
namespace {

using Kind = Question::Kind;

/// Collects questions as one walks; stops where an answer is needed before it is known what to ask next.
class Walk {
 public:
  explicit Walk(const Interview& interview) : known_(interview) {}

  std::vector<Question> walked() {
    ask({.id = "title",
         .asked = "What is the trailer called?",
         .otherwise = "My trailer",
         .good_for = "the drawings"});
    choose("unit", "Which does your tape show, inches (in) or millimetres (mm)?", {"in", "mm"}, "in",
           "a number without a unit then counts in it; any length may still say its own");
    if (known_.has("unit") && room() && door() && arches()) layout();
    return std::move(questions_);
  }

 private:
  bool ask(Question question) {
    questions_.push_back(std::move(question));
    return known_.has(questions_.back().id);
  }
  bool choose(std::string id, std::string asked, std::vector<std::string> choices, std::string otherwise,
              std::string good_for) {
    return ask({.id = std::move(id),
                .asked = std::move(asked),
                .kind = Kind::choice,
                .otherwise = std::move(otherwise),
                .good_for = std::move(good_for),
                .choices = std::move(choices)});
  }
  bool measure(std::string id, std::string asked, Kind kind = Kind::length) {
    return ask({.id = std::move(id), .asked = std::move(asked), .kind = kind});
  }
  struct Least {
    std::optional<Length> length;
    std::string why;
  };
  /// A length with a usual one for each tape, unless that would be too long or too short here: what a row of
  /// the questions says.
  // NOLINTNEXTLINE(readability-function-size)
  bool usual(std::string id, std::string asked, const char* inches, const char* millimetres,
             std::string good_for, std::optional<Length> most = {}, std::string why_most = {},
             Least least = {}) {
    std::string otherwise = known_.unit() == Unit::inch ? inches : millimetres;
    const Length length = read_length(otherwise, known_.unit()).value();
    if ((most && length > *most) || (least.length && length < *least.length)) otherwise.clear();
    return ask({.id = std::move(id),
                .asked = std::move(asked),
                .kind = Kind::length,
                .otherwise = std::move(otherwise),
                .good_for = std::move(good_for),
                .most = most,
                .why_most = std::move(why_most),
                .least = least.length,
                .why_least = std::move(least.why)});
  }
  Least beyond_bench(Length more) const {
    return {known_.length("bench-depth") + more,
            "a bench is " + exact_text(known_.length("bench-depth"), known_.unit()) + " deep"};
  }
  bool chose(const char* id, const char* word) const { return known_.has(id) && known_.word(id) == word; }

  bool room() {
    choose("square", "Is the room square: do the walls and the two diagonals agree in pairs?", {"yes", "no"},
           "yes", "one length and one width; say no if they differ by more than 1/4 in");
    if (!known_.has("square")) return false;
    if (chose("square", "yes")) {
      measure("length", "How long is the room inside, from the front wall (the hitch) to the rear?");
      measure("width", "How wide is the room inside, from wall to wall?");
    } else {
      measure("front", "How wide is the front wall inside?");
      measure("rear", "How wide is the rear wall inside?");
      measure("left", "How long is the left wall inside, facing the hitch?");
      measure("right", "How long is the right wall inside?");
      measure("front-left-to-rear-right", "The diagonal from the front left corner to the rear right one?");
      measure("front-right-to-rear-left",
              "The other diagonal, from the front right corner to the rear left one?");
    }
    return measure("height",
                   "How high is the room, from the finished floor to the highest point of the roof?");
  }

  /// The longest that fits along and across; of a room out of square the shorter walls.
  Length along() const {
    return chose("square", "yes") ? known_.length("length")
                                  : std::min(known_.length("left"), known_.length("right"));
  }
  Length across() const {
    return chose("square", "yes") ? known_.length("width")
                                  : std::min(known_.length("front"), known_.length("rear"));
  }
  std::string so_long(Length length) const {
    return "the room is " + exact_text(length, known_.unit()) + " there";
  }

  /// How far along a wall something begins whose size along it is known.
  bool along_wall(std::string id, const std::string& what, const std::string& wall, Length size) {
    const bool side = wall == "left" || wall == "right";
    const Length whole = side ? along() : across();
    return ask({.id = std::move(id),
                .asked = "How far from the " + std::string(side ? "front" : "left") + " wall does " + what +
                         " begin?",
                .kind = Kind::distance,
                .most = whole - size,
                .why_most = so_long(whole)});
  }

  bool door() {
    if (!choose("door", "In which wall is the door?", {"right", "left", "front", "rear"}, "right",
                "the curb side where one drives on the right"))
      return false;
    const bool side = chose("door", "right") || chose("door", "left");
    const Length wall = side ? along() : across();
    usual("door-width", "How wide is the door's clear opening?", "26", "660", "most small trailers", wall,
          so_long(wall));
    if (known_.has("door-width"))
      along_wall("door-from", "the door's opening", known_.word("door"), known_.length("door-width"));
    return usual("door-height", "How high is the door's clear opening?", "68", "1730", "most small trailers",
                 known_.length("height"), so_long(known_.length("height")));
  }

  bool arches() {
    if (!choose("wheel-arches", "Do wheel arches stand in the room?", {"none", "left", "right", "both"},
                "none", "wheels outside the floor, or wholly under it"))
      return false;
    if (chose("wheel-arches", "none")) return true;
    measure("arch-length", "How long is a wheel arch along the trailer?");
    measure("arch-width", "How far does a wheel arch come in from the wall?");
    measure("arch-height", "How high is a wheel arch above the floor?");
    if (!known_.has("arch-length")) return false;
    return ask({.id = "arch-from",
                .asked = "How far from the front wall does a wheel arch begin?",
                .kind = Kind::distance,
                .most = along() - known_.length("arch-length"),
                .why_most = so_long(along())});
  }

  bool benches(const char* depth_in, const char* depth_mm, Length most_twice, const std::string& why) {
    const Length lane = Length::inches(12);
    return usual("bench-depth", "How deep is a bench, from its front to the wall behind it?", depth_in,
                 depth_mm, "a seat 18 in deep before a 4 in back cushion (common practice, no source)",
                 half(most_twice - lane), why + ", and 12 in must be left between the benches",
                 {lane, "nobody sits on less"}) &&
           usual("bench-height", "How high is the top of a bench, without its cushion?", "14", "355",
                 "a seat of 17 in once one sits on the cushion (common practice, no source)",
                 half(known_.length("height")), "half the height of the room");
  }

  void layout() {
    if (!choose("layout", "How shall one sit by day and sleep by night?", start_layouts(),
                start_layouts().front(), "two people across a room of at least 74 in width"))
      return;
    bool sized = false;
    if (chose("layout", "side dinette")) {
      sized = choose("side", "At which side does the dinette stand?", {"left", "right"},
                     chose("door", "left") ? "right" : "left", "it stands opposite the door") &&
              ask({.id = "from-front",
                   .asked = "How far from the front wall does the front bench of the dinette begin?",
                   .kind = Kind::distance,
                   .most = along() - Length::inches(40),
                   .why_most = so_long(along())}) &&
              usual("bed-length", "How long shall the bed be, along the trailer?", "75", "1905",
                    "a person of 5 ft 11 in, with 4 in to spare (common practice, no source)",
                    along() - known_.length("from-front"), so_long(along()),
                    {Length::inches(36), "a child is longer"}) &&
              usual("bed-width", "How wide shall the bed be, from the wall?", "40", "1015",
                    "one and a half persons", across() - Length::inches(18),
                    so_long(across()) + ", and a way of 18 in must be left") &&
              benches("22", "560", known_.length("bed-length"),
                      "the bed is " + exact_text(known_.length("bed-length"), known_.unit()) + " long");
    } else if (chose("layout", "facing settees")) {
      sized = usual("bench-length", "How long are the settees, along the trailer?", "75", "1905",
                    "a person of 5 ft 11 in, with 4 in to spare (common practice, no source)", along(),
                    so_long(along())) &&
              benches("24", "610", across(), so_long(across()));
    } else if (chose("layout", "L-lounge at the rear")) {
      sized =
          choose("side", "At which side does the long arm of the lounge stand?", {"left", "right"},
                 chose("door", "left") ? "right" : "left", "it stands opposite the door") &&
          benches("22", "560", across(), so_long(across())) &&
          usual("bench-length", "How far does the lounge reach along the trailer, from the rear wall?", "80",
                "2030",
                "a person of 5 ft 11 in, and the back that stays at the rear (common practice, no source)",
                along(), so_long(along()), beyond_bench(Length::inches(12))) &&
          usual("bed-width", "How wide shall the bed be, from the wall behind the long arm?", "38", "965",
                "one person with room to turn", across(), so_long(across()), beyond_bench(Length::inches(6)));
    } else {
      const bool lounge = chose("layout", "U-lounge at the rear");
      sized = benches("22", "560", across(), so_long(across())) &&
              usual("bench-length",
                    lounge ? "How far does the lounge reach along the trailer, from the rear wall?"
                           : "How long are the benches, along the trailer?",
                    lounge ? "58" : "44", lounge ? "1475" : "1120",
                    lounge ? "three who sit and two who sleep across" : "two who sleep across, head by feet",
                    along(), so_long(along()), lounge ? beyond_bench(Length::inches(12)) : Least{});
    }
    if (sized) inside();
  }

  void inside() {
    if (!usual("cushions", "How thick are the cushions?", "4", "100",
               "sitting by day and sleeping by night (common practice, no source)", Length::inches(10),
               "more is a mattress"))
      return;
    if (!usual("board", "How thick is the board that closes the bed, or the table's top?", "3/4", "18",
               "plywood; what it carries is told by the check", half(known_.length("bench-height")),
               "it lies on cleats below the bench tops"))
      return;
    if (!chose("layout", "facing settees"))
      usual("table-height", "How high is the table's top above the floor?", "28", "710",
            "eating; 11 to 12 in above the seat (common practice, no source)", known_.length("height"),
            so_long(known_.length("height")),
            {known_.length("bench-height") + known_.length("board"), "it would stand below the benches"});
    if (chose("layout", "bunk over a cross dinette at the rear") && !bunk()) return;
    if (!choose("counter", "Where is the galley, with its counter?", {"none", "left", "right"}, "none",
                "it can be written into the plan later"))
      return;
    if (!chose("counter", "none")) {
      usual("counter-length", "How long is the counter, along the trailer?", "34", "865",
            "a sink and two burners", along(), so_long(along()));
      usual("counter-depth", "How deep is the counter, from the wall?", "20", "510", "most small trailers",
            across() - Length::inches(12), so_long(across()));
      usual("counter-height", "How high is the counter's top?", "36", "915",
            "standing at it (common practice, no source)", known_.length("height"),
            so_long(known_.length("height")));
      if (!known_.has("counter-length")) return;
      along_wall("counter-from", "the counter", "left", known_.length("counter-length"));
    }
    if (heater()) windows();
  }

  /// A bunk that stays over the bed; most of what is asked of it has a published figure.
  bool bunk() {
    if (!known_.has("table-height")) return false;
    const Length height = known_.length("height");
    const Length bed = known_.length("bench-height") + known_.length("cushions");
    const Length board = known_.length("board");
    usual("bunk-width", "How wide is the bunk over the bed, from the rear wall?", "28", "710",
          "a child; the trade's narrowest mattress (common practice, no source)", along(), so_long(along()),
          {Length::inches(12), "a child is wider"});
    if (!usual("bunk-mattress", "How thick is the mattress of the bunk?", "4", "100",
               "a child; what is thicker takes from the guard rail", Length::inches(10),
               "so much is too soft"))
      return false;
    const Length mattress = known_.length("bunk-mattress");
    // The cleats hang below the board.
    const Length cleat = known_.unit() == Unit::inch ? Length::inches(3, 2) : 38_mm;
    const Length step = known_.unit() == Unit::inch ? Length::inches(1, 2) : 10_mm;
    const Length above_bed = half(height - bed - board - mattress - cleat) + cleat;
    const Length usual_height = step * ((bed + above_bed).ticks() / step.ticks());
    const Length headroom = Length::inches(12);
    const Length least = bed + cleat + headroom;
    const Length most = height - board - mattress - headroom;
    if (!ask({.id = "bunk-height",
              .asked = "How high above the floor is the underside of the bunk's board?",
              .kind = Kind::length,
              .otherwise = least <= usual_height && usual_height <= most
                               ? bare_length(usual_height, known_.unit())
                               : "",
              .good_for = "as much room over its mattress as over the bed below",
              .most = most,
              .why_most = "12 in must be left over its mattress",
              .least = least,
              .why_least = "12 in must be left over the bed below"}))
      return false;
    usual("guard-rail", "How high does the bunk's guard rail rise above the mattress?", "5 1/2", "140",
          "5 in at the least are asked of bunks (16 CFR 1213.3(a))");
    return usual("bunk-opening", "How wide is the opening in the rail for climbing in?", "14", "355",
                 "15 in at the most are asked of bunks (16 CFR 1213.3(a))", half(across()),
                 so_long(across()) + ", and the rail goes along most of it") &&
           choose("bunk-end", "At which end of the bunk is the opening?", {"left", "right"},
                  chose("door", "left") ? "left" : "right", "nearer to the door");
  }

  bool heater() {
    if (!choose("heater", "Is there a portable electric heater?", {"no", "yes"}, "no",
                "none is drawn, and none is judged"))
      return false;
    if (chose("heater", "no")) return true;
    measure("heater-length", "How long is the heater along the trailer, as it stands by day?");
    measure("heater-width", "How wide is the heater across the trailer?");
    measure("heater-height", "How high is the heater?");
    if (!known_.has("heater-width") || !known_.has("heater-length")) return false;
    along_wall("heater-from-front", "the heater", "left", known_.length("heater-length"));
    along_wall("heater-from-left", "the heater", "front", known_.length("heater-width"));
    choose("heater-faces", "Which way does the front of the heater look?", {"rear", "front", "left", "right"},
           "rear", "it warms the lounge");
    usual("heater-cord", "How long is the heater's own cord?", "72", "1830",
          "most portable heaters; measure yours");
    if (!choose("plate", "Does the heater's data plate give distances to what can burn?", {"not read", "yes"},
                "not read", "they stay unknown, and the published 3 ft is asked"))
      return false;
    if (chose("plate", "yes")) {
      measure("plate-front", "How far must what can burn stay before the heater's front?", Kind::distance);
      measure("plate-back", "And behind the heater's back?", Kind::distance);
      measure("plate-sides", "And beside the heater?", Kind::distance);
      measure("plate-top", "And above the heater?", Kind::distance);
    }
    if (!choose("outlet", "In which wall is the outlet for the heater?",
                {"none", "left", "right", "front", "rear"}, "none",
                "whether its cord reaches one is then unknown"))
      return false;
    if (chose("outlet", "none")) return true;
    along_wall("outlet-from", "the outlet", known_.word("outlet"), Length::inches(3));
    return usual("outlet-height", "How high above the floor is the lower edge of the outlet?", "12", "305",
                 "most trailers", known_.length("height"), so_long(known_.length("height")));
  }

  void windows() {
    if (!choose("windows", "How many windows are there?", {"0", "1", "2", "3"}, "0",
                "a way out through a window is then not known"))
      return;
    const int count = known_.word("windows").front() - '0';
    for (int i = 1; i <= count; ++i) {
      const std::string name = "window-" + std::to_string(i);
      const std::string window = "window " + std::to_string(i);
      if (!choose(name, "In which wall is " + window + "?", {"left", "right", "front", "rear"}, "left",
                  "any of them"))
        return;
      const bool side = known_.word(name) == "left" || known_.word(name) == "right";
      const Length wall = side ? along() : across();
      usual(name + "-width", "How wide is the clear opening of " + window + "?", "30", "760",
            "measure it open", wall, so_long(wall));
      if (!known_.has(name + "-width")) return;
      along_wall(name + "-from", "the opening of " + window, known_.word(name),
                 known_.length(name + "-width"));
      usual(name + "-height", "How high is the clear opening of " + window + "?", "18", "455",
            "measure it open", known_.length("height"), so_long(known_.length("height")));
      usual(name + "-sill", "How high above the floor is the lower edge of " + window + "?", "32", "815",
            "over a bench", known_.length("height"), so_long(known_.length("height")));
      choose(name + "-opens", "Does " + window + " open wide enough to climb out?", {"yes", "no"}, "no",
             "a window that is fixed or only tilts");
    }
  }

  const Interview& known_;
  std::vector<Question> questions_;
};

}  // namespace

const std::vector<std::string>& start_layouts() {
  static const std::vector<std::string> layouts{
      "cross dinette at the rear", "side dinette",   "U-lounge at the rear",
      "L-lounge at the rear",      "facing settees", "bunk over a cross dinette at the rear"};
  return layouts;
}

std::string bed_of_layout(std::string_view layout) {
  const auto names = [&](std::string_view word) { return layout.find(word) != std::string_view::npos; };
  return names("lounge") ? "Lounge bed" : names("settees") ? "Settee bed" : "Dinette bed";
}

std::vector<Question> questions_after(const Interview& interview) { return Walk(interview).walked(); }

}  // namespace berthwright
