#include "solve/convert/table_rules.h"

#include <algorithm>

namespace berthwright {

TableRules::TableRules(const MoveTable& table)
    : table_(table),
      spots_of_(table.pieces),
      place_(table.spots.size()),
      needed_by_(table.spots.size()),
      harmless_(table.spots.size(), true),
      joints_(table.spots.size()) {
  const std::vector<SpotRow>& spots = table.spots;
  for (std::size_t at = 0; at < spots.size(); ++at) {
    std::vector<std::size_t>& own = spots_of_[spots[at].piece];
    place_[at] = own.size();
    own.push_back(at);
    harmless_[at] = harmless_[at] && spots[at].needs.none();
    for (std::size_t other = 0; other < spots.size(); ++other) {
      if (spots[at].needs[other]) needed_by_[other].set(at);
      for (const OpenWay& way : spots[at].ways)
        if (way.barred_by[other]) harmless_[other] = false;
    }
  }
  for (std::size_t at = 0; at < spots.size(); ++at)
    for (const std::size_t to : spots_of_[spots[at].piece])
      joints_[at].push_back(joined(spots[at], spots[to]));
}

std::vector<TableRules::Joint> TableRules::joined(const SpotRow& from, const SpotRow& to) {
  std::vector<Joint> joints;
  for (const OpenWay& out : from.ways)
    for (const OpenWay& in : to.ways)
      if (out.joins == in.joins)
        joints.push_back({out.barred_by | in.barred_by, out.bent || in.bent, out.joins});
  std::ranges::stable_sort(joints, {}, &Joint::bent);
  std::vector<Joint> kept;  // a way barred by all that bars another one, and more, is of no use
  for (const Joint& joint : joints)
    if (std::ranges::none_of(kept, [&](const Joint& k) { return (k.barred_by & ~joint.barred_by).none(); }))
      kept.push_back(joint);
  return kept;
}

const std::vector<TableRules::Joint>& TableRules::joints(std::size_t from, std::size_t to) const {
  return joints_[from][place_[to]];
}

std::optional<std::size_t> TableRules::joined_by(std::size_t from, std::size_t to,
                                                 const SpotSet& taken) const {
  if ((needed_by_[from] & taken).any() || (table_.spots[to].needs & ~taken).any()) return std::nullopt;
  for (const Joint& joint : joints(from, to))
    if ((joint.barred_by & taken).none()) return joint.joins;
  return std::nullopt;
}

bool TableRules::may_move(std::size_t from, std::size_t to, const SpotSet& taken) const {
  return joined_by(from, to, taken).has_value();
}

bool TableRules::is_open(std::size_t spot, const SpotSet& taken) const {
  return std::ranges::any_of(table_.spots[spot].ways,
                             [&](const OpenWay& way) { return (way.barred_by & taken).none(); });
}

}  // namespace berthwright
