#include "write/start_layout.h"

#include <tuple>
#include <utility>

#include "plan/bare_length.h"

namespace berthwright {

std::string ThingWriter::length(Length length) const {
  const std::string bare = bare_length(length, unit_);
  return text(bare.empty() ? exact_text(length, unit_) : bare);
}

std::string ThingWriter::text(std::string_view text) {
  std::string quoted = "\"";
  for (const char c : text) quoted += c == '"' || c == '\\' ? std::string{'\\', c} : std::string(1, c);
  return quoted + '"';
}

std::string ThingWriter::from_wall(std::string_view wall, Length distance) const {
  return text(wall) + ": " + length(distance);
}

std::string ThingWriter::from_fixture(std::string_view word, std::string_view id, Length distance) const {
  return text(word) + ": [" + text(id) + ", " + length(distance) + "]";
}

std::string ThingWriter::sizes(Length along, Length across) const {
  return "\"length\": " + length(along) + ", \"width\": " + length(across);
}

std::string ThingWriter::thing(std::string_view id, std::string_view name, std::string_view kind) {
  return "{ \"id\": " + text(id) + ", \"name\": " + text(name) + ", \"kind\": " + text(kind);
}

namespace {

class LayoutWriter {
 public:
  LayoutWriter(const Interview& interview, const WallInsets& insets, Length across)
      : asked_(interview),
        write_(interview.unit()),
        insets_(insets),
        across_(across),
        depth_(interview.length("bench-depth")),
        top_(interview.length("bench-height")),
        board_(interview.length("board")),
        play_(write_.by_unit(Length::inches(1, 4), 6_mm)),
        ledge_(write_.by_unit(1_in, 26_mm)),
        deep_(write_.by_unit(Length::inches(3, 2), 38_mm)) {}

  StartLayout written() {
    const std::string& layout = asked_.word("layout");
    if (layout == "bunk over a cross dinette at the rear") layout_.bunk = asked_.length("bunk-width");
    if (layout == "side dinette")
      side_dinette();
    else if (layout == "U-lounge at the rear")
      lounge();
    else if (layout == "L-lounge at the rear")
      corner_lounge();
    else
      facing(layout == "facing settees");
    if (layout_.bunk > Length{}) bunk();
    return std::move(layout_);
  }

 private:
  void bench(const char* id, const char* name, Length along, Length across, const std::string& at) {
    if (layout_.store.empty()) layout_.store = id;
    layout_.fixtures.push_back(ThingWriter::thing(id, name, "bench") + ", " + write_.sizes(along, across) +
                               ", " + at + ", \"top\": " + write_.length(top_) + " }");
  }

  struct Footprint {
    Length along;
    Length across;
    std::string at;
  };

  /// A cleat that carries a board.
  void cleat(const char* id, const char* name, const Footprint& on, Length top) {
    const Length high = deep_;
    layout_.fixtures.push_back(ThingWriter::thing(id, name, "ledge") + ", " +
                               write_.sizes(on.along, on.across) + ", " + on.at +
                               ", \"base\": " + write_.length(top > high ? top - high : Length{}) +
                               ", \"top\": " + write_.length(top) + " }");
  }

  /// One that carries the board flush with the bench tops.
  void ledge(const char* id, const char* name, Length along, Length across, const std::string& at) {
    cleat(id, name, {along, across, at}, top_ - board_);
  }

  void pose(std::vector<std::string>& poses, const char* piece, const std::string& place) {
    poses.push_back("{ \"piece\": " + ThingWriter::text(piece) + ", " + place + " }");
  }

  /// A table that fills a bay by night and stands on its leg in the middle of it by day.
  void table(Length along, Length across, const std::string& place, const std::string& leg_place,
             const char* bench) {
    const Length thick = write_.by_unit(2_in, 50_mm);
    layout_.pieces.push_back(ThingWriter::thing("table", "Table", "table") + ", " +
                             write_.sizes(along, across) + ", \"thickness\": " + write_.length(board_) +
                             " }");
    layout_.pieces.push_back(
        ThingWriter::thing("leg", "Table leg", "leg") + ", " + write_.sizes(thick, thick) +
        ", \"thickness\": " + write_.length(asked_.length("table-height") - board_) + " }");
    const bool under_bunk = layout_.bunk > Length{};
    pose(layout_.day, "leg", leg_place + (under_bunk ? R"(, "on": "floor")" : ""));
    pose(layout_.day, "table", place + ", \"on\": \"leg\"");
    pose(layout_.night, "leg", "\"stowed\": " + ThingWriter::text(bench));
    pose(layout_.night, "table", place + (under_bunk ? R"(, "on": ["left ledge", "right ledge"])" : ""));
  }

  /// Half of a span less half the leg.
  Length to_leg(Length span) const { return half(span - write_.by_unit(2_in, 50_mm)); }

  /// Two benches along the side walls, their backs to them, with a table or two boards between.
  void facing(bool settees) {
    const Length along = asked_.length("bench-length");
    const Length span = across_ - 2 * depth_;
    const auto rear = [&](Length more) { return write_.from_wall("rear", insets_.rear + more); };
    bench("left bench", settees ? "Left settee" : "Left bench", along, depth_,
          ThingWriter::at(rear(Length{}), write_.from_wall("left", insets_.left)));
    bench("right bench", settees ? "Right settee" : "Right bench", along, depth_,
          ThingWriter::at(rear(Length{}), write_.from_wall("right", insets_.right)));
    ledge("left ledge", "Left ledge", along, ledge_,
          ThingWriter::at(rear(Length{}), write_.from_fixture("right_of", "left bench", Length{})));
    ledge("right ledge", "Right ledge", along, ledge_,
          ThingWriter::at(rear(Length{}), write_.from_fixture("left_of", "right bench", Length{})));
    const auto between = [&](Length more) { return write_.from_fixture("right_of", "left bench", more); };
    if (!settees) {
      table(along - play_, span - play_, ThingWriter::at(rear(half(play_)), between(half(play_))),
            ThingWriter::at(rear(to_leg(along)), between(to_leg(span))), "left bench");
      return;
    }
    // The boards meet in the middle: a gap there would part the bay.
    for (const auto& [id, name, from] :
         {std::tuple{"rear board", "Rear board", half(play_)}, {"front board", "Front board", half(along)}}) {
      layout_.pieces.push_back(ThingWriter::thing(id, name, "board") + ", " +
                               write_.sizes(half(along) - half(play_), span - play_) +
                               ", \"thickness\": " + write_.length(board_) + " }");
      pose(layout_.day, id, "\"stowed\": \"left bench\"");
      pose(layout_.night, id, ThingWriter::at(rear(from), between(half(play_))));
    }
  }

  /// A bunk from wall to wall across the rear, which stays by day; its board lies on a cleat at the wall and
  /// on one behind its front, on which the guard rail stands.
  void bunk() {
    const Length width = layout_.bunk;
    const Length under = asked_.length("bunk-height");
    const Length mattress = asked_.length("bunk-mattress");
    const Length opening = asked_.length("bunk-opening");
    const Length thick = write_.by_unit(Length::inches(3, 4), 18_mm);
    const auto rear = [&](Length more) { return write_.from_wall("rear", insets_.rear + more); };
    const auto left = [&](Length more) { return write_.from_wall("left", insets_.left + more); };
    const auto rail = [&](const char* id, const char* name, Length across, Length from, Length base,
                          Length top) {
      layout_.fixtures.push_back(
          ThingWriter::thing(id, name, "guard rail") + ", " + write_.sizes(thick, across) + ", " +
          ThingWriter::at(rear(width), left(from)) + ", \"base\": " + write_.length(base) +
          ", \"top\": " + write_.length(top) + " }");
    };
    cleat("bunk rear cleat", "Bunk rear cleat", {deep_, across_, ThingWriter::at(rear({}), left({}))}, under);
    layout_.fixtures.back().insert(0, "// The bunk. What carries its front is not reckoned here.\n");
    cleat("bunk front cleat", "Bunk front cleat",
          {deep_, across_, ThingWriter::at(rear(width - deep_), left({}))}, under);
    rail("bunk front", "Bunk front", across_, {}, under - deep_, under + board_);
    rail("guard rail", "Guard rail", across_ - opening,
         asked_.word("bunk-end") == "left" ? opening : Length{}, under + board_,
         under + board_ + mattress + asked_.length("guard-rail"));
    const auto piece = [&](const char* id, const char* name, const char* kind, Length play, Length high,
                           const char* on) {
      layout_.pieces.push_back(ThingWriter::thing(id, name, kind) + ", " +
                               write_.sizes(width - play, across_ - play) +
                               ", \"thickness\": " + write_.length(high) + " }");
      for (std::vector<std::string>* poses : {&layout_.day, &layout_.night})
        pose(*poses, id, ThingWriter::at(rear(half(play)), left(half(play))) + ", \"on\": " + on);
    };
    piece("bunk board", "Bunk board", "board", play_, board_, R"(["bunk rear cleat", "bunk front cleat"])");
    piece("bunk mattress", "Bunk mattress", "cushion", {}, mattress, R"("bunk board")");
    layout_.beds.push_back(
        R"({ "id": "bunk", "name": "Bunk", "configuration": "night", "pieces": ["bunk mattress"] })");
  }

  void lounge() {
    const Length along = asked_.length("bench-length");
    const Length span = across_ - 2 * depth_;
    const Length open = along - depth_;
    const std::string rear = write_.from_wall("rear", insets_.rear);
    bench("left bench", "Left bench", along, depth_,
          ThingWriter::at(rear, write_.from_wall("left", insets_.left)));
    bench("right bench", "Right bench", along, depth_,
          ThingWriter::at(rear, write_.from_wall("right", insets_.right)));
    bench("rear bench", "Rear bench", depth_, span,
          ThingWriter::at(rear, write_.from_fixture("right_of", "left bench", Length{})));
    const auto ahead = [&](Length more) { return write_.from_fixture("ahead_of", "rear bench", more); };
    const auto between = [&](Length more) { return write_.from_fixture("right_of", "left bench", more); };
    ledge("left ledge", "Left ledge", open, ledge_, ThingWriter::at(ahead(Length{}), between(Length{})));
    ledge("right ledge", "Right ledge", open, ledge_,
          ThingWriter::at(ahead(Length{}), write_.from_fixture("left_of", "right bench", Length{})));
    ledge("rear ledge", "Rear ledge", deep_, span - 2 * ledge_,
          ThingWriter::at(ahead(Length{}), between(ledge_)));
    table(open - play_, span - play_, ThingWriter::at(ahead(half(play_)), between(half(play_))),
          ThingWriter::at(ahead(to_leg(open)), between(to_leg(span))), "left bench");
  }

  /// A bench across the rear and one ahead of it along a side; the table fills the corner, on a leg of its
  /// own where nothing else bears it.
  void corner_lounge() {
    const std::string& side = asked_.word("side");
    const bool left = side == "left";
    const Length inset = left ? insets_.left : insets_.right;
    const Length open = asked_.length("bench-length") - depth_;
    const Length span = asked_.length("bed-width") - depth_;
    const Length thick = write_.by_unit(2_in, 50_mm);
    const auto ahead = [&](Length more) { return write_.from_fixture("ahead_of", "rear bench", more); };
    const auto beside = [&](Length more) {
      return write_.from_fixture(left ? "right_of" : "left_of", "side bench", more);
    };
    bench("rear bench", "Rear bench", depth_, across_,
          ThingWriter::at(write_.from_wall("rear", insets_.rear), write_.from_wall("left", insets_.left)));
    bench("side bench", left ? "Left bench" : "Right bench", open, depth_,
          ThingWriter::at(ahead(Length{}), write_.from_wall(side, inset)));
    ledge("side ledge", "Side ledge", open, deep_, ThingWriter::at(ahead(Length{}), beside(Length{})));
    ledge("rear ledge", "Rear ledge", deep_, span - deep_, ThingWriter::at(ahead(Length{}), beside(deep_)));
    table(open - half(play_), span - half(play_), ThingWriter::at(ahead(half(play_)), beside(half(play_))),
          ThingWriter::at(ahead(to_leg(open)), beside(to_leg(span))), "side bench");
    layout_.pieces.push_back(ThingWriter::thing("bed leg", "Bed leg", "leg") + ", " +
                             write_.sizes(thick, thick) + ", \"thickness\": " + write_.length(top_ - board_) +
                             " }");
    pose(layout_.day, "bed leg", "\"stowed\": \"side bench\"");
    layout_.night.insert(
        layout_.night.begin(),
        "{ \"piece\": \"bed leg\", " + ThingWriter::at(ahead(open - thick), beside(span - thick)) + " }");
  }

  void side_dinette() {
    const std::string& side = asked_.word("side");
    const Length inset = side == "left" ? insets_.left : insets_.right;
    const Length front = asked_.length("from-front");
    const Length bed = asked_.length("bed-length");
    const Length wide = asked_.length("bed-width");
    const Length span = bed - 2 * depth_;
    const auto wall = [&](Length more) { return write_.from_wall(side, inset + more); };
    const auto behind = [&](Length more) { return write_.from_fixture("behind", "front bench", more); };
    bench("front bench", "Front bench", depth_, wide,
          ThingWriter::at(write_.from_wall("front", front), wall(Length{})));
    bench("rear bench", "Rear bench", depth_, wide,
          ThingWriter::at(write_.from_wall("front", front + bed - depth_), wall(Length{})));
    ledge("front ledge", "Front ledge", ledge_, wide - deep_, ThingWriter::at(behind(Length{}), wall(deep_)));
    ledge("rear ledge", "Rear ledge", ledge_, wide - deep_,
          ThingWriter::at(write_.from_fixture("ahead_of", "rear bench", Length{}), wall(deep_)));
    ledge("wall ledge", "Wall ledge", span, deep_, ThingWriter::at(behind(Length{}), wall(Length{})));
    table(span - play_, wide - half(play_), ThingWriter::at(behind(half(play_)), wall(half(play_))),
          ThingWriter::at(behind(to_leg(span)), wall(to_leg(wide))), "front bench");
  }

  const Interview& asked_;
  ThingWriter write_;
  WallInsets insets_;
  Length across_;
  Length depth_;
  Length top_;
  Length board_;
  Length play_;   ///< of a board between what stands on both its sides, in all
  Length ledge_;  ///< how deep a ledge is between two that face each other
  Length deep_;   ///< and opposite a free side, to which the table may be shoved by 1/2 in
  StartLayout layout_;
};

}  // namespace

StartLayout start_layout(const Interview& interview, const WallInsets& insets, Length across) {
  return LayoutWriter(interview, insets, across).written();
}

}  // namespace berthwright
