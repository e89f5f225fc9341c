#include "view/cushion_words.h"

#include <algorithm>
#include <set>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/cover_words.h"

namespace berthwright {
namespace {

constexpr std::size_t longest_letter = 2;

std::string nth_letter(std::size_t number) {
  constexpr std::size_t letters = 26;
  const std::string letter(1, static_cast<char>('A' + number % letters));
  return number < letters ? letter : letter + std::to_string(number / letters);
}

// " on Front bench": what carries it, by name.
std::string carriers_of(const Plan& plan, const Placed& placed) {
  std::vector<std::string> names;
  for (const std::string& id : placed.carried_by)
    names.push_back(id == "floor" ? "the floor" : name_of(plan, id));
  return names.empty() ? std::string() : " on " + listed_with_and(names);
}

}  // namespace

std::vector<std::string> cushion_letters(const Plan& plan) {
  std::set<std::string> taken;
  for (const Piece& piece : plan->pieces) taken.insert(capital_first(piece.id.text()));
  std::vector<std::string> letters;
  std::size_t next = 0;
  for (const Piece& piece : plan->pieces) {
    std::string letter = piece.id.text();
    if (piece.is_soft() && letter.size() > longest_letter) {
      while (taken.contains(nth_letter(next))) ++next;
      letter = nth_letter(next++);
    }
    letters.push_back(std::move(letter));
  }
  return letters;
}

std::vector<std::string> cover_letters(const Plan& plan, std::span<const Cover> covers) {
  const std::vector<std::string> all = cushion_letters(plan);
  std::vector<std::string> letters;
  for (const Cover& cover : covers)
    letters.push_back(all[static_cast<std::size_t>(cover.piece - plan->pieces.data())]);
  return letters;
}

std::string lettered_name(const std::string& letter, const Piece& piece) {
  return piece.name == letter ? letter : letter + ", " + piece.name;
}

std::string cushion_place_sentence(const Plan& plan, const Arrangement& arrangement, const Piece& piece) {
  const std::string when = when_of(*arrangement.configuration);
  const Placed* self = arrangement.find(piece.id.text());
  if (self == nullptr) {
    for (const Pose& pose : arrangement.configuration->poses)
      if (pose.piece == piece.id && !pose.stowed_in.empty())
        return when + " it is kept in " + name_of(plan, pose.stowed_in) + ".";
    return when + " it is kept elsewhere.";
  }
  const Pose& pose = *self->pose;
  if (pose.manner == Pose::Manner::flat)
    return when + (pose.placement.flipped ? " it lies, turned over," : " it lies") +
           carriers_of(plan, *self) + ".";
  const std::string faces =
      pose.faces ? ", its top panel to the " + std::string(word(term_of(*pose.faces), plan->english)) : "";
  return when + " it stands on edge" + carriers_of(plan, *self) + faces + ".";
}

std::string radius_sentence(const Plan& plan, const Rim& rim) {
  std::vector<std::string> radii;
  for (const RimEdge& edge : rim.edges)
    if (edge.radius) {
      const std::string radius = both(*edge.radius, plan->unit, {.feet = false});
      if (std::ranges::find(radii, radius) == radii.end()) radii.push_back(radius);
    }
  if (radii.empty()) return {};
  return (radii.size() == 1 ? "Radius of rounded corners: " : "Radii of rounded corners: ") +
         listed_with_and(radii) + ".";
}

std::string up_sentence(const Cover& cover) {
  if (!cover.up) return {};
  return "Up, for nap and pattern: the " + std::string(word(term_of(*cover.up), English::american)) +
         " edge.";
}

}  // namespace berthwright
