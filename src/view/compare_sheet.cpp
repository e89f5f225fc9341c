#include <berthwright/view/sheets.h>

#include <algorithm>
#include <array>
#include <functional>
#include <stdexcept>

#include "view/bay_marks.h"
#include "view/called.h"
#include "view/compare_words.h"
#include "view/draft.h"
#include "view/heat_sheet.h"
#include "view/lettering.h"
#include "view/notes.h"
#include "view/numbers_sheet.h"
#include "view/plan_page.h"
#include "view/way_sheet.h"

namespace berthwright {
namespace {

constexpr PaperLength between_cells_of_row = paper_mm(4);
constexpr PaperLength between_rows = paper_mm(2);

/// One side of a pair as it is drawn.
struct DrawnSide {
  const ComparedPlan* plan = nullptr;
  DrawnConfiguration drawn;
  const Loads* loads = nullptr;
};

DrawnSide side_of(const ComparedPlan& plan, const Configuration& configuration) {
  DrawnSide side{&plan, {plan.plan, nullptr, plan.answer->findings, {}}, nullptr};
  for (const ConfigurationAnswer& answer : plan.answer->configurations)
    if (answer.configuration == &configuration) side.drawn.answer = &answer;
  for (const Loads& loads : plan.loads)
    if (loads.configuration == &configuration) side.loads = &loads;
  if (side.drawn.answer == nullptr || side.loads == nullptr)
    throw std::logic_error("a configuration without an answer");
  return side;
}

/// A kind of sheet that is shown side by side.
struct ComparedKind {
  std::string stem;
  std::function<std::vector<Draft>(const DrawnSide&)> drafts;
};

std::vector<Draft> drafts_over(const DrawnSide& side, const std::optional<QuietSheet>& sheet) {
  return sheet ? quiet_drafts(side.drawn, *sheet) : std::vector<Draft>{};
}

std::vector<ComparedKind> compared_kinds() {
  return {{"plan", [](const DrawnSide& side) { return plan_drafts(side.drawn); }},
          {"heat", [](const DrawnSide& side) { return drafts_over(side, heat_sheet(side.drawn)); }},
          {"ways", [](const DrawnSide& side) { return drafts_over(side, way_sheet(side.drawn)); }},
          {"numbers", [](const DrawnSide& side) { return numbers_drafts(side.drawn, *side.loads); }}};
}

/// The largest scale of the first plan's ruler at which both find room.
Scale common_scale(const Plan& plan, const std::vector<Draft>& first, const std::vector<Draft>& second) {
  std::int64_t least = 0;
  for (const std::vector<Draft>* drafts : {&first, &second})
    if (!drafts->empty()) least = std::max(least, drafts->front().sheet.scale);
  for (const Scale& scale : scales(plan->unit))
    if (scale.ratio >= least) return scale;
  throw std::logic_error("no scale is small enough for both plans");
}

std::vector<Draft> drafts_at(const ComparedKind& kind, DrawnSide side, const std::vector<Draft>& best,
                             const Scale& scale) {
  if (best.empty() || best.front().sheet.scale == scale.ratio) return best;
  side.drawn.only_scales = std::span(&scale, 1);
  return kind.drafts(side);
}

void move_right(Sheet& sheet, PaperLength by) {
  for (Group& group : sheet.groups)
    for (Mark& mark : group.marks) move_by(mark, {by, {}});
}

/// Above the frame of its page.
Group letter_of(const std::string& letter, PaperLength left, bool is_lacking) {
  return {letter,
          {Text{Ink::label,
                {left + paper_mm(13), paper_mm(10)},
                lettering::bed,
                Anchor::start,
                false,
                is_lacking ? letter + ": no such drawing" : letter}},
          0};
}

/// Both pages as one; either may be lacking.
Sheet beside_each_other(const Sheet* first, const Sheet* second) {
  Sheet both_sheets = first != nullptr ? *first : *second;
  const std::string lacking = "no such drawing";
  if (first == nullptr) {
    move_right(both_sheets, second->width);
    both_sheets.width = second->width * 2;
  } else if (second == nullptr) {
    both_sheets.width = first->width * 2;
  } else {
    Sheet right = *second;
    move_right(right, first->width);
    both_sheets.width = first->width + second->width;
    both_sheets.height = std::max(first->height, second->height);
    for (Group& group : both_sheets.groups) group.title = "A, " + small_first(group.title);
    for (Group& group : right.groups) {
      group.title = "B, " + small_first(group.title);
      both_sheets.groups.push_back(std::move(group));
    }
  }
  both_sheets.groups.push_back(letter_of("A", {}, first == nullptr));
  both_sheets.groups.push_back(
      letter_of("B", first != nullptr ? first->width : second->width, second == nullptr));
  both_sheets.title = "A: " + (first != nullptr ? first->title : lacking) +
                      "; B: " + (second != nullptr ? second->title : lacking);
  both_sheets.description = "At the left A: " + (first != nullptr ? first->description : lacking + ".") +
                            " At the right B: " + (second != nullptr ? second->description : lacking + ".");
  return both_sheets;
}

void add_pair(std::vector<Sheet>& sheets, const Comparison& of, const ComparedPair& pair) {
  const DrawnSide a = side_of(*of.first, *pair.first);
  const DrawnSide b = side_of(*of.second, *pair.second);
  std::string stem = plain_stem(pair.first->id.text());
  if (pair.first->id != pair.second->id) stem += "-" + plain_stem(pair.second->id.text());
  for (const ComparedKind& kind : compared_kinds()) {
    const std::vector<Draft> first = kind.drafts(a);
    const std::vector<Draft> second = kind.drafts(b);
    if (first.empty() && second.empty()) continue;
    const Scale scale = common_scale(*of.first->plan, first, second);
    const std::vector<Sheet> left = finished(*of.first->plan, drafts_at(kind, a, first, scale));
    const std::vector<Sheet> right = finished(*of.second->plan, drafts_at(kind, b, second, scale));
    for (std::size_t i = 0; i < std::max(left.size(), right.size()); ++i) {
      sheets.push_back(
          beside_each_other(i < left.size() ? &left[i] : nullptr, i < right.size() ? &right[i] : nullptr));
      sheets.back().file = stem + "-" + kind.stem + (i == 0 ? "" : "-notes");
    }
  }
}

/// One row of the table: figure, A, B, which is better.
using TableCells = std::array<std::string, 4>;
constexpr std::array<std::int64_t, 4> cell_shares{26, 25, 25, 24};

/// Sets rows under each other, page after page.
class TablePages {
 public:
  explicit TablePages(const Comparison& of) : of_(of) {}

  void add_heading(const std::string& words, const std::string& sum) {
    SetNotes set = set_notes({{Note::Kind::heading, words, 0, false, std::nullopt},
                              {Note::Kind::text, sum, 0, false, std::nullopt}},
                             {rest_of_page(paper_mm(30))});
    place(std::move(set.marks), words + ": " + sum);
    add_heads();
  }

  void add_row(const TableCells& cells, Note::Kind kind = Note::Kind::text) {
    std::vector<Mark> marks;
    if (!has_room({}) || !set_row(cells, kind, rest_of_page({}), marks)) {
      new_page();
      add_heads();
      marks.clear();
      if (!set_row(cells, kind, rest_of_page({}), marks)) throw std::logic_error("a row that fits no page");
    }
    std::string told;
    for (const std::string& cell : cells) told += cell + (cell.ends_with('.') ? " " : "; ");
    place(std::move(marks), kind == Note::Kind::text ? told : "");
  }

  void leave_space() { top_ = top_ + between_rows; }

  void add_words(const std::string& words) {
    const std::vector<Note> note{{Note::Kind::text, words, 0, false, std::nullopt}};
    SetNotes set = set_notes(note, {rest_of_page({})});
    if (!set.rest.empty()) {
      new_page();
      set = set_notes(note, {rest_of_page({})});
    }
    place(std::move(set.marks), words);
  }

  std::vector<Sheet> sheets() && { return finished(*of_.first->plan, std::move(drafts_)); }

 private:
  void add_heads() { add_row({"Figure", "A", "B", "Which is better"}, Note::Kind::heading); }

  static bool set_row(const TableCells& cells, Note::Kind kind, const PaperBox& rest,
                      std::vector<Mark>& marks) {
    const PaperLength open =
        rest.width() - between_cells_of_row * static_cast<std::int64_t>(cells.size() - 1);
    PaperLength left = rest.low.x;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const PaperLength width = open * cell_shares[i] / 100;
      SetNotes set = set_notes({{kind, cells[i], 0, false, std::nullopt}},
                               {{{left, rest.low.y}, {left + width, rest.high.y}}});
      if (!set.rest.empty()) return false;
      add(marks, std::move(set.marks));
      left = left + width + between_cells_of_row;
    }
    return true;
  }

  bool has_room(PaperLength least) const { return !drafts_.empty() && page_.high.y - top_ >= least; }

  PaperBox rest_of_page(PaperLength least) {
    if (!has_room(least)) new_page();
    return {{page_.low.x, top_}, page_.high};
  }

  void new_page() {
    const Page page = strip_page(*of_.first->plan, false);
    page_ = page.drawing;
    Draft draft = draft_of(*of_.first->plan, "What differs", "none", page);
    draft.subject = subject();
    draft.id = "what";
    draft.suffix = "-differs";
    draft.sheet.scale = 0;
    draft.sheet.description = "Every figure that differs between A and B, or is unknown.";
    drafts_.push_back(std::move(draft));
    top_ = page_.low.y;
  }

  std::string subject() const {
    const auto name = [](const ComparedPlan& plan) { return (*plan.plan)->title.title; };
    const std::string a = name(*of_.first);
    const std::string b = name(*of_.second);
    return a == b ? std::string{} : "A " + a + ", B " + b;
  }

  void place(std::vector<Mark> marks, const std::string& told) {
    top_ = bottom_of(marks, top_) + between_rows;
    Sheet& sheet = drafts_.back().sheet;
    if (!told.empty()) sheet.description += " " + told;
    sheet.groups.push_back({"Row", std::move(marks), 0});
  }

  const Comparison& of_;
  std::vector<Draft> drafts_;
  PaperBox page_{};
  PaperLength top_;
};

std::vector<Sheet> table_sheets(const Comparison& of) {
  TablePages pages(of);
  for (const ComparedPair& pair : of.pairs) {
    pages.add_heading(pair_heading(of, pair), pair_sum(pair));
    for (const ComparedFigure& figure : pair.figures) {
      const std::string a = compared_side(*of.first, figure.first);
      const std::string b = compared_side(*of.second, figure.second);
      pages.add_row({compared_name(of, figure), a.empty() ? "none" : a, b.empty() ? "none" : b,
                     compared_verdict(of, figure)});
    }
  }
  pages.leave_space();
  for (const std::string& sentence : lacking_configurations(of)) pages.add_words(sentence);
  pages.add_words(std::string(compared_caution()));
  return std::move(pages).sheets();
}

}  // namespace

std::vector<Sheet> compare_sheets(const Comparison& comparison) {
  std::vector<Sheet> all;
  for (const ComparedPair& pair : comparison.pairs)
    if (pair.first != nullptr) add_pair(all, comparison, pair);
  for (std::size_t i = 0; i < all.size(); ++i) all[i].file = std::to_string(i + 1) + "-" + all[i].file;
  for (Sheet& sheet : table_sheets(comparison)) {
    sheet.file = std::to_string(all.size() + 1) + "-what-differs";
    all.push_back(std::move(sheet));
  }
  for (const Sheet& sheet : all)
    if (const std::vector<std::string> faults = lettering_faults(sheet); !faults.empty())
      throw std::logic_error("sheet " + sheet.file + ": " + faults.front());
  return all;
}

}  // namespace berthwright
