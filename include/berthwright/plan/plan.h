#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <berthwright/exact/mass.h>
#include <berthwright/plan/cushion_wishes.h>
#include <berthwright/plan/interior.h>
#include <berthwright/plan/load.h>
#include <berthwright/plan/rules.h>
#include <berthwright/plan/sewing.h>
#include <berthwright/plan/things.h>

namespace berthwright {

/// Where every piece is at one time. The order of the poses is the order in which the pieces are laid.
struct Configuration {
  ConfigurationId id;
  std::string name;
  std::vector<Pose> poses;  ///< one for each piece of the plan
  Origin origin;
};

struct Person {
  std::string name;
  std::optional<Length> stature;
  Length width;  ///< sleeping width at the shoulders; 24 in unless the plan says else
  std::optional<Mass> weight{};
};

/// Pillows, blankets and sheets of a bed: where they are kept while it is not made, and how large a bundle.
struct BedLinen {
  std::string kept_in;                         ///< id of a fixture or of a leaf of one
  std::optional<std::array<Length, 3>> sides;  ///< length, width, height; none: the plan does not say
  Origin origin;
};

/// Pieces that people sleep on in one configuration.
struct Bed {
  BedId id;
  std::string name;
  ConfigurationId configuration;
  std::vector<PieceId> pieces;
  std::vector<Person> people;
  std::optional<BedLinen> linen{};  ///< none: the plan does not say
  Origin origin;
};

/// What one person lifts, and how far they reach from where they stand, in place of common practice.
struct Lifting {
  std::optional<Mass> weight{};
  std::optional<Length> reach{};
  std::string reason{};  ///< not empty where one of them is given
};

/// What the title block says.
struct Title {
  std::string title;
  std::string shop;
  std::string owner;
  std::string date;  ///< as the plan writes it; empty: none is printed
  std::string revision;
  std::string drawn_by;
  std::optional<int> built{};  ///< the year, where the plan says
};

enum class English { american, british };
/// What drawings are laid out for: Letter and Tabloid of ASME Y14.1 (from memory), A4 and A3 of ISO 216.
enum class Paper { letter, tabloid, a4, a3 };

/// A default the reader applied, so that it can be listed.
struct AppliedDefault {
  std::string pointer;
  std::string value;
  std::string why;
};

/// Everything a plan file says. Public so that tests can build one; only `Plan` promises anything.
struct PlanParts {
  Title title{};
  Unit unit = Unit::inch;
  English english = English::american;
  bool drives_on_right = true;
  Paper paper = Paper::letter;
  Interior interior;
  std::vector<Opening> openings{};
  std::vector<Fixture> fixtures{};
  std::vector<Piece> pieces{};
  std::vector<Configuration> configurations{};
  std::vector<Bed> beds{};
  std::vector<Override> overrides{};
  Lifting lifting{};
  Sewing sewing{};
  CushionWishes split{};
  std::optional<Chassis> chassis{};
  std::vector<Cargo> cargo{};
  std::optional<Supply> supply{};
  std::optional<Warming> warming{};
  std::vector<std::string> notes{};
  std::vector<AppliedDefault> defaults{};
};

/// A checked, immutable plan. Promises: ids are unique over fixtures, their leaves, pieces, cargo and
/// openings; every reference resolves; each configuration poses each piece once; all lengths are within
/// `farthest`; sizes positive.
class Plan {
 public:
  /// The only door: a Problem, with the pointer and place of its origin, for each broken promise.
  static Result<Plan> checked(PlanParts parts);

  const PlanParts* operator->() const { return &parts_; }
  const Fixture* fixture(std::string_view id) const;  ///< nullptr: none
  const Piece* piece(std::string_view id) const;      ///< nullptr: none
  const Configuration* configuration(std::string_view id) const;
  const Bed* bed(std::string_view id) const;
  const Opening* opening(std::string_view id) const;
  const Leaf* leaf(std::string_view id) const;
  /// The rule's limit, or the plan's own in its place. std::logic_error for a rule without limit.
  Length limit(const Rule& rule) const;
  const Override* override_of(const Rule& rule) const;

 private:
  explicit Plan(PlanParts parts) : parts_(std::move(parts)) {}
  PlanParts parts_;
};

/// Reads a whole plan file. All faults are reported at once, in the order of the file, each with line and
/// column, pointer, what was found, what is allowed and the nearest known name. Comments (// and /* */) are
/// allowed. Limits: 4 MiB, 64 levels, 2,000 things of a kind, names of 200 characters. Never throws on input.
Result<Plan> read_plan(std::string_view text);

}  // namespace berthwright
