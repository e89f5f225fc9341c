#pragma once

#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

namespace berthwright::support {

/// Place and size in plan as a person types them: x, y, length along x, width along y.
struct Spot {
  std::string x;
  std::string y;
  std::string length;
  std::string width;
};

/// Writes a plan with one configuration, "night", piece by piece, in inches. `more` are further members of
/// the fixture, the piece or the pose, such as R"("on": ["bench"])".
class Furniture {
 public:
  Furniture& interior(std::string members);
  Furniture& fixture(std::string id, std::string kind, Spot spot, std::string base, std::string top,
                     std::string more = "");
  /// A piece that lies flat at its spot.
  Furniture& lay(std::string id, std::string kind, Spot spot, std::string thickness, std::string pose = "",
                 std::string more = "");
  /// Members of a door, window or hatch, its id among them.
  Furniture& opening(std::string members);
  Furniture& bed(std::string id, const std::vector<std::string>& pieces, std::string more = "");
  std::string text() const;
  Plan plan() const;

 private:
  std::string interior_ = R"("length": 120, "width": 76, "height": 76)";
  std::vector<std::string> openings_;
  std::vector<std::string> fixtures_;
  std::vector<std::string> pieces_;
  std::vector<std::string> poses_;
  std::vector<std::string> beds_;
};

}  // namespace berthwright::support
