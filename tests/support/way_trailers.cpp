#include "support/way_trailers.h"

namespace berthwright {
namespace {

std::string window(const std::string& width, const std::string& height, const std::string& sill,
                   const std::string& opens = "out") {
  return R"({"id": "window", "kind": "window", "wall": "left", "from_front": 30, "width": ")" + width +
         R"(", "height": ")" + height + R"(", "sill": ")" + sill + R"(", "opens": ")" + opens +
         R"(", "escape": true})";
}

std::string inward_door(const std::string& hinge) {
  return R"({"id": "door", "kind": "door", "wall": "right", "from_front": 80, "width": 26, "height": 68, "sill": 2,
             "opens": "in")" +
         hinge + "}";
}

std::string box(const std::string& id, const std::string& kind, const std::string& place,
                const std::string& heights) {
  return R"({"id": ")" + id + R"(", "kind": ")" + kind + R"(", )" + place + ", " + heights + "}";
}

TrailerText with(const std::string& fixture) {
  TrailerText text = way_trailer();
  text.fixtures.push_back(fixture);
  return text;
}

TrailerText with_window(const std::string& opening) {
  TrailerText text = way_trailer();
  text.openings[1] = opening;
  return text;
}

// A wall across the trailer that leaves `passage` in free at the left one.
TrailerText with_passage(const std::string& from_left) {
  return with(box("screen", "wall",
                  R"("length": 2, "width": ")" + from_left + R"(", "at": {"front": 60, "right": 0})",
                  R"("top": 70)"));
}

void add_ways(std::vector<TrailerText>& plans) {
  for (const char* width : {"40", "57 3/4", "60", "76"}) plans.push_back(with_passage(width));
  TrailerText shut = with_passage("76");
  shut.openings.pop_back();
  plans.push_back(shut);
  plans.push_back(with(box("chest", "cabinet", R"("length": 2, "width": 76, "at": {"front": 38, "left": 0})",
                           R"("top": 50)")));
  for (const char* sill : {"36", "35", "40"}) plans.push_back(with_window(window("36", "24", sill)));
  plans.push_back(with_window(window("36", "24", "30", "fixed")));
  plans.push_back(with_window(window("24", "22", "30")));
  plans.push_back(with_window(window("20", "14", "30")));
  plans.push_back(with(box("shelf", "shelf", R"("length": 10, "width": 12, "at": {"front": 40, "left": 0})",
                           R"("base": 40, "top": 42)")));
  for (const char* hinge : {R"(, "hinge": "front")", R"(, "hinge": "rear")", ""}) {
    TrailerText text = with(box(
        "stool", "cabinet", R"("length": 6, "width": 6, "at": {"front": 80, "right": 14})", R"("top": 18)"));
    text.openings[0] = inward_door(hinge);
    plans.push_back(text);
  }
}

void add_alarms(std::vector<TrailerText>& plans) {
  const std::string shelf =
      box("closet", "cabinet", R"("length": 10, "width": 20, "at": {"rear": 0, "left": 20})", R"("top": 80)");
  for (const char* more : {"", R"("built": 1961, )", R"("built": 1990, )"}) {
    for (const auto& [base, top] : {std::pair{"70", "74"}, {"60", "64"}, {"75", "79"}, {"78", "80"}}) {
      TrailerText text = with(shelf);
      text.fixtures.push_back(smoke_alarm(base, top));
      text.fixtures.push_back(box("co", "co alarm",
                                  R"("length": 2, "width": 5, "at": {"rear": 0, "right": 4})",
                                  R"("base": 60, "top": 64)"));
      text.more = more;
      plans.push_back(text);
    }
    TrailerText outside = way_trailer();
    outside.fixtures.push_back(box("smoke", "smoke alarm",
                                   R"("length": 5, "width": 2, "at": {"rear": 4, "left": 0})",
                                   R"("base": 70, "top": 74)"));
    outside.fixtures.push_back(box("drape", "curtain",
                                   R"("length": 30, "width": 1, "at": {"rear": 0, "left": 6})",
                                   R"("base": 20, "top": 76)"));
    outside.more = more;
    plans.push_back(outside);
  }
  const std::string stove = R"({"id": "stove", "kind": "cooktop", "length": 12, "width": 12, "faces": "left",
                                "at": {"rear": 0, "right": 0}, "base": 36, "top": 38})";
  plans.push_back(with(stove));
  for (const auto& [base, top] : {std::pair{"4", "8"}, {"2", "6"}, {"18", "22"}}) {
    TrailerText text = with(stove);
    text.fixtures.push_back(smoke_alarm("70", "74"));
    text.fixtures.push_back(box("sniffer", "gas alarm",
                                R"("length": 5, "width": 2, "at": {"rear": 20, "left": 0})",
                                R"("base": )" + std::string(base) + R"(, "top": )" + top));
    plans.push_back(text);
  }
  TrailerText far = with(stove);
  far.interior = R"({"length": 200, "width": 76, "height": 80})";
  far.fixtures.push_back(box("smoke", "smoke alarm",
                             R"("length": 5, "width": 2, "at": {"front": 45, "left": 0})",
                             R"("base": 70, "top": 74)"));
  plans.push_back(far);
}

}  // namespace

TrailerText way_trailer() {
  TrailerText text;
  text.interior = R"({"length": 120, "width": 76, "height": 80})";
  text.openings = {
      R"({"id": "door", "kind": "door", "wall": "right", "from_front": 80, "width": 26, "height": 68,
                       "sill": 2})",
      window("30", "20", "34")};
  text.fixtures = {
      box("bench", "bench", R"("length": 38, "width": 76, "at": {"front": 0, "left": 0})", R"("top": 14)")};
  text.pieces = {R"({"id": "mat", "kind": "cushion", "length": 38, "width": 76, "thickness": 4})"};
  text.night = {R"({"piece": "mat", "at": {"front": 0, "left": 0}})"};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["mat"]})"};
  return text;
}

std::string smoke_alarm(const std::string& base, const std::string& top) {
  return box("smoke", "smoke alarm", R"("length": 2, "width": 5, "at": {"rear": 10, "left": 24})",
             R"("base": ")" + base + R"(", "top": ")" + top + '"');
}

std::vector<TrailerText> ways_of_every_status() {
  std::vector<TrailerText> plans{way_trailer()};
  add_ways(plans);
  add_alarms(plans);
  return plans;
}

}  // namespace berthwright
