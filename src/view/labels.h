#pragma once

#include <optional>
#include <string>
#include <vector>

#include "view/paper.h"

namespace berthwright {

/// Lines of lettering set as one block, centred on each other.
struct Wording {
  std::vector<std::string> lines;
  PaperLength height;
  bool upward = false;  ///< reads from the right of the page
  bool ringed = false;  ///< a number in a ring
};

/// Something that wants to be named on the drawing.
struct LabelWish {
  std::vector<Wording> wordings;  ///< best first; may be empty: then only a number will do
  std::vector<PaperRing> home;    ///< the thing itself, inside which a label stands best; empty: a mere place
  std::vector<std::vector<PaperRing>> covers;  ///< what lies over it: no label of it there
  std::vector<std::vector<PaperRing>> avoid;   ///< where a label of it is better not
  std::vector<std::vector<PaperRing>> never;   ///< where its words never stand beside it; a number may
  std::vector<PaperRing> within;               ///< where what stands beside it stays; empty: anywhere
  PaperPoint target;                           ///< a visible point of it, where a leader ends
  std::int64_t weight = 1;                     ///< how many other names its words are worth
  bool may_stand_off = false;                  ///< its words may stand beside it, at the end of a leader
  bool may_touch = false;                      ///< or close to the target without one
  std::string key;                             ///< what the margin says beside its number
  std::string place;                           ///< where it is, in words, should even its number find no room
};

/// Where one wish ended.
struct PlacedLabel {
  Wording wording;  ///< what stands on the drawing; no lines: nothing does
  PaperBox box;
  std::optional<PaperLine> leader;  ///< from the block to the target
  bool dotted = true;               ///< the leader ends in a dot
  bool crossed = false;             ///< a light line runs through it: needs a clear patch
  int number = 0;                   ///< of the margin key; 0: the words themselves stand on the drawing
};

/// What labels must not meet.
struct LabelField {
  PaperBox area;                 ///< all labels stay in it
  std::vector<PaperBox> taken;   ///< lettering that is already placed
  std::vector<PaperLine> heavy;  ///< never crossed by lettering
  std::vector<PaperLine> light;  ///< crossed only where nothing better is left
  std::vector<PaperBox> signs;   ///< no leader runs through them
};

/// One label for each wish, in their order; no two blocks meet, none leaves the area, lies over a heavy line
/// or is crossed by a leader. A wish for whose words there is no room gets a number (from 1, in the order of
/// the wishes) and, if even that finds no room, a label without lines. Exact on small groups of labels that
/// compete, else greedy; the same wishes give the same labels.
std::vector<PlacedLabel> placed_labels(const LabelField& field, std::vector<LabelWish> wishes);

/// What lettering must keep off among marks that stand already.
void add_obstacles(LabelField& field, const std::vector<Mark>& marks);

/// The marks of one label: leader, ring and lettering.
std::vector<Mark> marks_of(const PlacedLabel& label);

/// Size of a block of lettering with its leading, lying or reading upward.
PaperPoint size_of(const Wording& wording);

}  // namespace berthwright
