#include "solve/bed/foam.h"

#include <algorithm>

namespace berthwright {
namespace {

constexpr int least_density = 8;
constexpr int greatest_density = 60;
constexpr int least_firmness = 5;

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool joins(char c) {
  return is_digit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '.' || c == ',' ||
         c == '/' || static_cast<unsigned char>(c) >= 0x80;
}

std::optional<FoamGrade> grade_of(std::string_view word) {
  if (word.ends_with('.') || word.ends_with(',')) word.remove_suffix(1);
  if (word.size() != 4 || !std::ranges::all_of(word, is_digit)) return std::nullopt;
  const auto number = [&](std::size_t at) { return (word[at] - '0') * 10 + word[at + 1] - '0'; };
  const FoamGrade grade{number(0), number(2)};
  const bool likely =
      grade.density >= least_density && grade.density <= greatest_density && grade.firmness >= least_firmness;
  return likely ? std::optional(grade) : std::nullopt;
}

bool is_listed(const std::vector<PieceId>& ids, const Piece& piece) {
  return std::ranges::find(ids, piece.id) != ids.end();
}

}  // namespace

std::optional<FoamGrade> foam_grade(std::string_view material) {
  std::optional<FoamGrade> found;
  for (std::size_t from = 0; from < material.size();) {
    std::size_t to = from;
    while (to < material.size() && joins(material[to])) ++to;
    if (const auto grade = grade_of(material.substr(from, to - from))) {
      if (found) return std::nullopt;
      found = grade;
    }
    from = to + 1;
  }
  return found;
}

std::vector<BareFoam> foam_on_boards(const Arrangement& arrangement, const Bed& bed,
                                     const Mattress& mattress) {
  std::vector<BareFoam> pieces;
  for (const Placed& placed : arrangement.things) {
    if (!placed.is_soft() || placed.pose->manner != Pose::Manner::flat) continue;
    if (!is_listed(bed.pieces, *placed.piece)) continue;
    if (!is_listed(mattress.in_surface, *placed.piece) && !is_listed(mattress.dropped_out, *placed.piece))
      continue;
    const bool on_foam_alone =
        !placed.carried_by.empty() && std::ranges::all_of(placed.carried_by, [&](const std::string& id) {
          const Placed* below = arrangement.find(id);
          return below != nullptr && below->is_soft();
        });
    if (!on_foam_alone)
      pieces.push_back({placed.piece, placed.solid.height(), foam_grade(placed.piece->material)});
  }
  return pieces;
}

}  // namespace berthwright
