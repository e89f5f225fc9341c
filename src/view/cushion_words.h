#pragma once

#include <span>
#include <string>
#include <vector>

#include <berthwright/solve/cover/cover.h>

namespace berthwright {

/// The letter of every cushion and bolster of `plan`, among the ids of its other pieces, in their order: an
/// id of one or two signs as it stands, else the first of A to Z, A1 to Z1 and so on that is nobody's.
std::vector<std::string> cushion_letters(const Plan& plan);

/// Those of the covers' pieces, in their order.
std::vector<std::string> cover_letters(const Plan& plan, std::span<const Cover> covers);

/// "A, Front seat": the letter before the name; the name alone where it is the letter.
std::string lettered_name(const std::string& letter, const Piece& piece);

/// "By day it lies on Front bench." Of every configuration off the road, in their order.
std::string cushion_place_sentence(const Plan& plan, const Arrangement& arrangement, const Piece& piece);

/// "Rounded corner 4 1/4" (108 mm)." for every radius of the outline; empty: none.
std::string radius_sentence(const Plan& plan, const Rim& rim);
/// Which way nap and pattern point: "Up: front edge."
std::string up_sentence(const Cover& cover);

}  // namespace berthwright
