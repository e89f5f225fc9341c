#include <algorithm>
#include <array>
#include <map>
#include <stdexcept>

#include <berthwright/view/words.h>

#include "write/escaped.h"
#include "write/html.h"
#include "write/screen.h"

namespace berthwright {
namespace {

constexpr std::size_t most_lines = 5000;  // of the plan's text that are shown

std::string number_text(std::size_t number) { return std::to_string(number); }

std::string count_text(std::size_t count, std::string_view thing) {
  return number_text(count) + " " + std::string(thing) + (count == 1 ? "" : "s");
}

// Parts of a sheet's width or height as a decimal with four places, from whole numbers.
std::string share_text(PaperLength part, PaperLength whole) {
  const std::int64_t share =
      std::clamp<std::int64_t>(part.micrometres() * 10'000 / whole.micrometres(), 0, 10'000);
  if (share == 10'000) return "1";
  std::string digits = number_text(static_cast<std::size_t>(share));
  return "0." + std::string(4 - digits.size(), '0') + digits;
}

std::string_view class_of(Status status) {
  switch (status) {
    case Status::met:
      return "met";
    case Status::close:
      return "close";
    case Status::not_met:
      return "not-met";
    case Status::unknown:
      return "unknown";
  }
  throw std::logic_error("Status out of range");
}

std::string line_link(std::size_t line) {
  return "<a class=\"line\" href=\"#L" + number_text(line) + "\">line " + number_text(line) + "</a>";
}

/// Everything the parts of the page ask of a board.
class WatchParts {
 public:
  explicit WatchParts(const WatchBoard& board) : board_(board) {
    if (board.text) {
      for (std::size_t from = 0; from <= board.text->size() && lines_.size() <= most_lines;) {
        const std::size_t end = std::min(board.text->find('\n', from), board.text->size());
        lines_.push_back(std::string_view(*board.text).substr(from, end - from));
        from = end + 1;
      }
      if (!lines_.empty() && lines_.back().empty()) lines_.pop_back();
    }
  }

  bool broken() const { return !board_.problems.empty() || !board_.own_fault.empty(); }
  bool findings_are_new() const { return board_.findings.value && board_.findings.save == board_.save; }
  bool is_drawn() const { return board_.plans.value != nullptr; }

  std::string title() const {
    if (broken()) return plan_title() + ": faults in the file";
    return findings_are_new() ? plan_title() + ": " + board_.findings.value->verdict : plan_title();
  }

  std::string heading() const {
    const std::string shop = board_.findings.value ? board_.findings.value->shop : "";
    return tagged("h1", plan_title()) +
           (shop.empty() ? "" : "<p class=\"shop\">" + in_sentence(shop) + "</p>");
  }

  std::string state() const {
    if (board_.save == 0) return tagged("b", "The file is being read…");
    const std::string save = "Save " + number_text(board_.save);
    if (!board_.own_fault.empty())
      return tagged("b", save + " led us into a fault of our own.") + shown_beside();
    if (!board_.problems.empty())
      return tagged("b", save + " has " + count_text(board_.problems.size(), "fault") + ".") + shown_beside();
    if (!findings_are_new()) return tagged("b", save + " is being worked out…");
    return tagged("b", save + ": " + board_.findings.value->verdict) +
           (board_.plans.save == board_.save ? board_.others.save == board_.save
                                                   ? ""
                                                   : " " + tagged("span", "More sheets are being drawn…")
                                             : " " + tagged("span", "Being drawn…"));
  }

  std::string faults() const {
    std::string out;
    if (!board_.own_fault.empty())
      out += "<li><p><b>A fault of our own, not of your plan:</b> " + escaped(board_.own_fault) +
             "</p><p>Please report it with the plan file that shows it.</p></li>";
    for (const Problem& problem : board_.problems) out += fault(problem);
    return out.empty() ? out : "<h2>Faults in the file</h2><ol class=\"faults\">" + out + "</ol>";
  }

  std::string drawing() const {
    if (!is_drawn()) return "<p class=\"empty\">" + std::string(empty_words()) + "</p>";
    std::string options;
    std::string sheets;
    const auto add = [&](const Shown<std::vector<ScreenSheet>>& shown) {
      if (!shown.value) return;
      for (const ScreenSheet& sheet : *shown.value) {
        options += "<option" + mark_attribute("value", sheet.key) + ">" +
                   escaped(sheet.name + old_words(shown.save)) + "</option>\n";
        sheets += figure(sheet, shown.save);
      }
    };
    add(board_.plans);
    add(board_.others);
    return "<h2>Sheets</h2>\n"
           "<p class=\"tools\"><button type=\"button\" id=\"before\" aria-label=\"Sheet before\">◂</button>"
           "<label for=\"sheet\" class=\"unseen\">Sheet</label><select id=\"sheet\">\n" +
           options +
           "</select><button type=\"button\" id=\"after\" aria-label=\"Sheet after\">▸</button>"
           "<button type=\"button\" id=\"smaller\" aria-label=\"Smaller\">−</button>"
           "<button type=\"button\" id=\"larger\" aria-label=\"Larger\">+</button>"
           "<label><input type=\"checkbox\" id=\"pins\" checked> marks</label></p>\n" +
           sheets;
  }

  std::string findings() const {
    if (!board_.findings.value) return "";
    constexpr std::array order{Status::not_met, Status::unknown, Status::close};
    std::string out;
    for (const Status status : order)
      out +=
          group(std::string(word(term_of(status), English::american)), true, [&](const ScreenFinding& one) {
            return one.status == status && one.weight != Weight::information;
          });
    out += group("met", false, [](const ScreenFinding& one) {
      return one.status == Status::met && one.weight != Weight::information;
    });
    out += group("for information", false,
                 [](const ScreenFinding& one) { return one.weight == Weight::information; });
    return "<h2>Findings" + escaped(old_words(board_.findings.save)) + "</h2>" + out;
  }

  std::string conversions() const {
    if (!board_.conversions.value || board_.conversions.value->empty()) return "";
    std::string options;
    std::string ways;
    for (const ScreenConversion& one : *board_.conversions.value) {
      options += "<option" + mark_attribute("value", one.key) + ">" + escaped(one.heading) + "</option>\n";
      ways += way(one);
    }
    return "<h2>From one configuration to another" + escaped(old_words(board_.conversions.save)) +
           "</h2>\n<p class=\"tools\"><label for=\"way\" class=\"unseen\">Conversion</label>"
           "<select id=\"way\">\n" +
           options + "</select></p>\n" + ways;
  }

  std::string file() const {
    std::map<std::size_t, std::string> marks;
    for (const Problem& problem : board_.problems)
      if (problem.line > 0) marks[problem.line] += "<mark>fault</mark>";
    if (board_.findings.value && findings_are_new())
      for (std::size_t i = 0; i < board_.findings.value->list.size(); ++i) {
        const ScreenFinding& one = board_.findings.value->list[i];
        if (!asks(one)) continue;
        for (const FileLine& line : one.lines)
          marks[line.line] += "<a href=\"#f" + number_text(i + 1) + "\" class=\"" +
                              std::string(class_of(one.status)) + "\">" + number_text(i + 1) + "</a>";
      }
    std::string out = "<details id=\"text\"><summary><h2>" + escaped(board_.file) + "</h2></summary>\n<ol>\n";
    for (std::size_t i = 0; i < std::min(lines_.size(), most_lines); ++i) {
      const auto mark = marks.find(i + 1);
      out += "<li id=\"L" + number_text(i + 1) + "\"" + (mark == marks.end() ? "" : " class=\"marked\"") +
             "><code>" + escaped_line(lines_[i]) + "</code>" +
             (mark == marks.end() ? "" : "<span class=\"refs\">" + mark->second + "</span>") + "</li>\n";
    }
    out += "</ol>\n";
    if (lines_.size() > most_lines)
      out += "<p>The first " + number_text(most_lines) + " lines of the file.</p>\n";
    return out + "</details>";
  }

  std::string caution() const {
    return board_.findings.value ? tagged("p", board_.findings.value->caution) : "";
  }

 private:
  std::string plan_title() const {
    const bool named = board_.findings.value && !board_.findings.value->title.empty();
    return named ? board_.findings.value->title : board_.file;
  }

  std::string_view empty_words() const {
    return broken() ? "Nothing is drawn before the file is free of faults."
                    : "The first drawings are being made…";
  }

  std::string shown_beside() const {
    return is_drawn() && board_.plans.save != board_.save
               ? " " + tagged("span", "What is drawn is save " + number_text(board_.plans.save) +
                                          ", the last good one.")
               : "";
  }

  std::string old_words(std::size_t save) const {
    return save == board_.save ? "" : " (of save " + number_text(save) + ")";
  }

  static bool asks(const ScreenFinding& one) {
    return one.status != Status::met && one.weight != Weight::information;
  }

  static std::string_view without_indent(std::string_view line) {
    line.remove_prefix(std::min(line.find_first_not_of(" \t"), line.size()));
    return line;
  }

  static std::string escaped_line(std::string_view line) {
    std::string spaced;
    for (const char c : line.substr(0, 400))
      spaced += c == '\t' ? std::string("  ") : c == '\r' ? std::string{} : std::string(1, c);
    return escaped(spaced);
  }

  std::string fault(const Problem& problem) const {
    std::string out = "<li><p>";
    if (problem.line > 0) out += line_link(problem.line) + ", column " + number_text(problem.column) + ": ";
    out += tagged("b", problem.message + ".") + "</p>";
    if (problem.line > 0 && problem.line <= lines_.size())
      out += "<pre>" + number_text(problem.line) + "  " +
             escaped_line(without_indent(lines_[problem.line - 1])) + "</pre>";
    out += "<dl>";
    const auto detail = [&](std::string_view name, const std::string& words) {
      if (!words.empty()) out += "<div>" + tagged("dt", name) + tagged("dd", words) + "</div>";
    };
    detail("mend", problem.cure);
    detail("found", problem.found);
    detail("allowed", problem.allowed);
    detail("where", problem.pointer);
    return out + "</dl></li>\n";
  }

  std::string picture(const Picture& picture) const {
    return "<img loading=\"lazy\" src=\"/" + picture.name + ".svg\"" +
           mark_attribute("alt", picture.title + ". " + picture.description) +
           mark_attribute("width", number_text(static_cast<std::size_t>(picture.width.micrometres() / 100))) +
           mark_attribute("height",
                          number_text(static_cast<std::size_t>(picture.height.micrometres() / 100))) +
           ">";
  }

  std::string figure(const ScreenSheet& sheet, std::size_t save) const {
    std::string pins;
    std::string ties;
    const bool marked = save == board_.findings.save && board_.findings.value;
    for (const ScreenPin& pin : sheet.pins) {
      if (!marked || pin.finding >= board_.findings.value->list.size()) break;
      const ScreenFinding& finding = board_.findings.value->list[pin.finding];
      const std::string number = number_text(pin.finding + 1);
      const std::string look = std::string(class_of(finding.status)) + (asks(finding) ? "" : " quiet");
      pins += "<button type=\"button\" class=\"pin " + look + "\" data-finding=\"" + number + "\" data-x=\"" +
              share_text(pin.at.front().x, sheet.picture.width) + "\" data-y=\"" +
              share_text(pin.at.front().y, sheet.picture.height) + "\"" +
              mark_attribute("aria-label", "Finding " + number + ": " + finding.words) + ">" + number +
              "</button>\n";
      for (std::size_t i = 1; i < pin.at.size(); ++i)
        ties += "<path class=\"" + look + "\" data-finding=\"" + number + "\" d=\"M" + units(pin.at[i - 1]) +
                "L" + units(pin.at[i]) + "\"/>";
    }
    const Picture& of = sheet.picture;
    return "<figure class=\"sheet\" hidden" + mark_attribute("data-key", sheet.key) +
           "><div class=\"paper\" tabindex=\"0\" role=\"group\"" + mark_attribute("aria-label", sheet.name) +
           "><div class=\"page\">" + picture(of) + "<svg class=\"ties\" aria-hidden=\"true\" viewBox=\"0 0 " +
           units({of.width, of.height}) + "\">" + ties + "</svg>" + pins +
           "</div></div><figcaption><a href=\"/" + of.name + ".svg\" target=\"_blank\">" +
           in_sentence(sheet.name) + " by itself, true to scale</a>" + escaped(old_words(save)) +
           "</figcaption></figure>\n";
  }

  static std::string units(PaperPoint point) {
    return std::to_string(point.x.micrometres() / 100) + " " + std::to_string(point.y.micrometres() / 100);
  }

  template <class Holds>
  std::string group(const std::string& name, bool open, const Holds& holds) const {
    std::string items;
    std::size_t count = 0;
    for (std::size_t i = 0; i < board_.findings.value->list.size(); ++i)
      if (holds(board_.findings.value->list[i])) {
        items += finding(board_.findings.value->list[i], i + 1);
        ++count;
      }
    if (count == 0) return "";
    std::string heading = name + " (" + number_text(count) + ")";
    heading.front() = static_cast<char>(heading.front() - 'a' + 'A');
    return "<details" + mark_attribute("data-group", name) + (open ? " open" : "") + "><summary><h3>" +
           escaped(heading) + "</h3></summary><ul>\n" + items + "</ul></details>\n";
  }

  static std::string finding(const ScreenFinding& one, std::size_t number) {
    const bool alert = one.weight == Weight::alert && one.status != Status::met;
    std::string out = "<li id=\"f" + number_text(number) + "\" tabindex=\"-1\" class=\"finding " +
                      std::string(class_of(one.status)) + "\"" +
                      mark_attribute("data-configuration", one.configuration) + ">";
    const std::string figure = number_text(number);
    out += one.where.empty()
               ? "<span class=\"number\">" + figure + "</span>"
               : "<button type=\"button\" class=\"number\" data-finding=\"" + figure +
                     "\" aria-label=\"Show finding " + figure + " on the drawing\">" + figure + "</button>";
    out += "<div><p class=\"rule\">" + (alert ? std::string("<b>Alert</b> ") : std::string{}) +
           escaped(one.title) + "</p>" + tagged("p", one.words);
    std::string lines;
    for (const FileLine& line : one.lines)
      lines += (lines.empty() ? "" : ", ") + line_link(line.line) + " (" + in_sentence(line.what) + ")";
    if (!lines.empty()) out += "<p class=\"lines\">In the file: " + lines + "</p>";
    return out + "</div></li>\n";
  }

  std::string way(const ScreenConversion& one) const {
    std::string out = "<div class=\"way\" hidden" + mark_attribute("data-key", one.key) + ">";
    if (!one.stages.empty()) {
      const std::size_t last = one.stages.size() - 1;
      out += slide_bar(one.heading, last) + "<ol start=\"0\">\n";
      for (std::size_t i = 0; i < one.stages.size(); ++i) {
        const ScreenStage& stage = one.stages[i];
        out += "<li hidden>" + tagged("h3", stage_name(i, last));
        for (const std::string& words : stage.words) out += tagged("p", words);
        out += "<div class=\"views\">" + picture(stage.above) + picture(stage.raised) + "</div></li>\n";
      }
      out += "</ol>";
    }
    for (const std::string& words : one.words) out += tagged("p", words);
    return out + "</div>\n";
  }

  const WatchBoard& board_;
  std::vector<std::string_view> lines_;
};

std::string part(std::string_view tag, std::string_view id, const std::string& html) {
  return "<" + std::string(tag) + " id=\"" + std::string(id) + "\" class=\"part\">" + html + "</" +
         std::string(tag) + ">\n";
}

}  // namespace

std::string watch_page(const WatchBoard& board) {
  const WatchParts page(board);
  const auto state = [](std::string_view name, std::uint64_t value) {
    return " data-" + std::string(name) + "=\"" + std::to_string(value) + "\"";
  };
  return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>" +
         escaped(page.title()) +
         "</title>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
         "<link rel=\"icon\" href=\"/watch.svg\" type=\"image/svg+xml\">\n"
         "<link rel=\"stylesheet\" href=\"/watch.css\">\n<script src=\"/watch.js\" defer></script>\n</head>\n"
         "<body" +
         state("edition", board.edition) + state("save", board.save) +
         state("findings", board.findings.save) + state("plans", board.plans.save) +
         state("others", board.others.save) + state("conversions", board.conversions.save) + ">\n<header>\n" +
         part("div", "heading", page.heading()) + "<p id=\"state\" class=\"part\" role=\"status\"" +
         (page.broken() ? " data-broken" : "") + ">" + page.state() +
         "</p>\n<p id=\"lost\" role=\"alert\" hidden>The program does not answer any more; what is shown may "
         "be "
         "old.</p>\n<noscript><p>This page follows the file with a script of its own, which is switched "
         "off here; load it again after each save.</p></noscript>\n</header>\n<main>\n" +
         part("section", "faults", page.faults()) + part("section", "drawing", page.drawing()) +
         part("section", "findings", page.findings()) + part("section", "ways", page.conversions()) +
         part("section", "file", page.file()) + "</main>\n" + part("footer", "caution", page.caution()) +
         "</body>\n</html>\n";
}

}  // namespace berthwright
