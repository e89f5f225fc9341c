#include "oracle/cut_check.h"

#include <algorithm>

namespace berthwright::oracle {
namespace {

std::int64_t across(const CheckedBox& box) { return box[2] - box[0]; }
std::int64_t up(const CheckedBox& box) { return box[3] - box[1]; }
bool apart(const CheckedBox& a, const CheckedBox& b, std::int64_t by) {
  return a[2] + by <= b[0] || b[2] + by <= a[0] || a[3] + by <= b[1] || b[3] + by <= a[1];
}

struct SawnPiece {
  CheckedBox box{};
  std::size_t stage = 0;
  bool crosswise = false;
};

class SheetChecker {
 public:
  SheetChecker(const CutCase& of, const CheckedSheet& sheet, std::vector<std::string>& faults)
      : of_(of), sheet_(sheet), stock_(of.stock.at(sheet.stock)), faults_(faults) {}

  void check() {
    for (const CheckedPlace& place : sheet_.places) check_place(place);
    std::vector<CheckedBox> boxes;
    for (const CheckedPlace& place : sheet_.places) boxes.push_back(place.at);
    for (const CheckedBox& offcut : sheet_.offcuts) {
      if (std::min(across(offcut), up(offcut)) < of_.least_offcut) say("an offcut too small to keep");
      boxes.push_back(offcut);
    }
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      check_within(boxes[i]);
      for (std::size_t j = 0; j < i; ++j)
        if (!apart(boxes[i], boxes[j], of_.kerf)) say("less than the kerf between two");
    }
    if (of_.through) saw(boxes);
  }

 private:
  void say(const std::string& fault) { faults_.push_back(fault); }

  void check_place(const CheckedPlace& place) {
    const CheckedPart& part = of_.parts.at(place.part);
    const std::int64_t length = place.turned ? up(place.at) : across(place.at);
    const std::int64_t width = place.turned ? across(place.at) : up(place.at);
    if (length != part.length || width != part.width) say("not the size of the part");
    if (place.turned && !part.turns) say("turned against grain or nap");
  }

  void check_within(const CheckedBox& box) {
    const std::int64_t trim = stock_.trim;
    if (box[0] < trim || box[1] < trim || box[2] > stock_.length - trim || box[3] > stock_.width - trim)
      say("reaches beyond the trimmed stock");
    for (const CheckedBox& defect : stock_.defects)
      if (!apart(box, defect, 0)) say("lies on a defect");
  }

  void saw(const std::vector<CheckedBox>& wanted) {
    const std::int64_t trim = stock_.trim;
    std::vector<SawnPiece> pieces{{{trim, trim, stock_.length - trim, stock_.width - trim}}};
    for (const CheckedCut& cut : sheet_.cuts) {
      const auto piece = std::ranges::find(pieces, cut.piece, &SawnPiece::box);
      if (piece == pieces.end()) {
        say("a cut through a piece that is not there");
        return;
      }
      const std::size_t low = cut.crosswise ? 0 : 1;
      if (cut.at <= cut.piece[low] || cut.at > cut.piece[low + 2]) say("a cut beside its piece");
      const std::size_t stage =
          piece->stage + (piece->stage > 0 && piece->crosswise == cut.crosswise ? 0 : 1);
      if (of_.most_stages > 0 && stage > of_.most_stages) say("more stages than allowed");
      if (cut.stage < stage) say("a stage too early");
      CheckedBox first = cut.piece;
      CheckedBox second = cut.piece;
      first[low + 2] = cut.at;
      second[low] = cut.at + of_.kerf;
      pieces.erase(piece);
      pieces.push_back({first, stage, cut.crosswise});
      if (second[low] < second[low + 2]) pieces.push_back({second, stage, cut.crosswise});
    }
    for (const CheckedBox& box : wanted)
      if (std::ranges::find(pieces, box, &SawnPiece::box) == pieces.end()) say("not cut out by the cuts");
  }

  const CutCase& of_;
  const CheckedSheet& sheet_;
  const CheckedStock& stock_;
  std::vector<std::string>& faults_;
};

}  // namespace

std::vector<std::string> cut_faults(const CutCase& of) {
  std::vector<std::string> faults;
  std::int64_t cost = 0;
  std::vector<std::int64_t> lying(of.parts.size());
  std::vector<std::int64_t> used(of.stock.size());
  for (const CheckedSheet& sheet : of.sheets) {
    SheetChecker(of, sheet, faults).check();
    cost += of.stock.at(sheet.stock).price;
    ++used[sheet.stock];
    for (const CheckedPlace& place : sheet.places) ++lying.at(place.part);
    if (sheet.places.empty()) faults.emplace_back("stock of which nothing is cut");
  }
  for (std::size_t p = 0; p < lying.size(); ++p)
    if (lying[p] != of.parts[p].count) faults.emplace_back("a part not as often as wanted");
  for (std::size_t s = 0; s < used.size(); ++s)
    if (of.stock[s].count >= 0 && used[s] > of.stock[s].count)
      faults.emplace_back("more stock than there is");
  if (cost != of.cost) faults.emplace_back("the prices sum to something else");
  return faults;
}

}  // namespace berthwright::oracle
