#pragma once

#include <list>

#include <berthwright/solve/answer.h>

namespace berthwright {

/// A plan and its answer put together by hand, so that drawings can be tested without any solver: every place
/// and figure is the test's own. Everything is one configuration, "day", unless another is begun.
class DrawnRoom {
 public:
  DrawnRoom(Unit unit, Length length, Length width);

  PlanParts parts;  ///< titles, openings, names: change at will before `plan`

  DrawnRoom& fixture(const std::string& id, Fixture::Kind kind, const Rect& box, Length base, Length top);
  /// Where a piece lies in the configuration begun last.
  DrawnRoom& piece(const std::string& id, Piece::Kind kind, const Region& outline, Length base, Length top);
  DrawnRoom& stow(const std::string& id, const std::string& where);
  DrawnRoom& begin(const std::string& configuration);
  /// A bed of the named pieces in the configuration begun last, under the roof alone, 36 in clear and more.
  DrawnRoom& bed(const std::string& id, const std::vector<std::string>& pieces);
  DrawnRoom& gap(const Region& region, Length width, Point where);
  DrawnRoom& ridge(Point where, Length step);
  /// A distance from a source to a bed, made up, in the configuration begun last, and its finding.
  DrawnRoom& heat(const std::string& source, const std::string& bed, Point3 from, Point3 to, Length distance);

  /// Built at the first call; nothing may be added afterwards.
  const Plan& plan();
  const Answer& answer();

 private:
  struct Lying {
    std::string id;
    Region outline;
    Length base;
    Length top;
  };
  struct Layout {
    std::string id;
    std::vector<Lying> lying;
    std::vector<std::pair<std::string, std::string>> stowed;
    std::vector<std::pair<std::string, std::vector<std::string>>> beds;
    std::vector<Gap> gaps;
    std::vector<Ridge> ridges;
    std::vector<HeatDistance> heat;
  };
  ConfigurationAnswer answer_of(const Layout& layout) const;
  std::vector<Layout> layouts_;
  std::vector<Finding> findings_;
  std::list<Plan> plan_;
  std::optional<Answer> answer_;
};

/// Whole inches, or whole millimetres.
Rect inches(int x0, int y0, int x1, int y1);
Rect mm(int x0, int y0, int x1, int y1);

/// A trailer of 120 by 72 in with a table between two benches across the rear, by day and by night.
DrawnRoom rear_dinette();
/// A room full of pieces: `count` cushions and boards in rows, with names of all lengths made from `seed`.
DrawnRoom crowded_room(unsigned seed, int count);

}  // namespace berthwright
