#include "write/packet_page.h"

#include <stdexcept>
#include <string_view>

#include "exact/sha256.h"
#include "write/escaped.h"
#include "write/html.h"
#include "write/page_svg.h"
#include "write/screen.h"
#include "write/svg_units.h"

namespace berthwright {
namespace {

/// All sheets of a packet, in order.
std::vector<const Sheet*> drawn_in(const Packet& packet) {
  std::vector<const Sheet*> sheets;
  for (const PacketSection& section : packet.sections)
    for (const PacketBlock& block : section.blocks) {
      if (const PacketViews* views = std::get_if<PacketViews>(&block)) {
        for (const Sheet& sheet : views->views) sheets.push_back(&sheet);
        for (const PacketKey& key : views->keys)
          if (key.sign) sheets.push_back(&*key.sign);
      }
      if (const PacketStages* stages = std::get_if<PacketStages>(&block))
        for (const StageDrawing& stage : stages->stages) {
          sheets.push_back(&stage.above);
          sheets.push_back(&stage.raised);
        }
    }
  return sheets;
}

// What the shop alone has written lies as its script does.
std::string shops_words(std::string_view tag, std::string_view words) {
  return "<" + std::string(tag) + " dir=\"auto\">" + escaped(words) + "</" + std::string(tag) + ">\n";
}

std::string line_of(std::string_view tag, std::string_view words) { return tagged(tag, words) + "\n"; }

std::string_view tone_class(PacketText::Tone tone) {
  switch (tone) {
    case PacketText::Tone::plain:
      return "";
    case PacketText::Tone::alert:
      return "alert";
    case PacketText::Tone::quiet:
      return "quiet";
  }
  throw std::logic_error("PacketText::Tone out of range");
}

std::string paragraph(const PacketText& text) {
  std::string looks(tone_class(text.tone));
  if (text.on_screen_alone) looks += looks.empty() ? "on-screen" : " on-screen";
  return "<p" + (looks.empty() ? looks : mark_attribute("class", looks)) + ">" + in_sentence(text.words) +
         "</p>\n";
}

// "x y width height, foot, edges, followed" of every moment, in units of the drawings.
std::string carried_text(const std::vector<CarriedMoment>& carried) {
  std::string text;
  for (const CarriedMoment& moment : carried) {
    text += text.empty() ? "" : ";";
    for (const PaperLength length :
         {moment.above.low.x, moment.above.low.y, moment.above.width(), moment.above.height(), moment.foot.x,
          moment.foot.y, moment.along, moment.lean, moment.depth, moment.height})
      text += svg_units(length) + " ";
    text += moment.followed ? "1" : "0";
  }
  return text;
}

/// Blocks as HTML.
struct BlockPage {
  const PageDrawings& drawings;

  std::string operator()(const PacketText& text) const { return paragraph(text); }
  std::string operator()(const PacketHeading& heading) const {
    return line_of(heading.minor ? "h4" : "h3", heading.words);
  }
  std::string operator()(const PacketList& list) const {
    const std::string tag = list.numbered ? "ol" : "ul";
    std::string out = "<" + tag + ">\n";
    for (const std::string& item : list.items)
      out += list.of_the_shop ? shops_words("li", item) : line_of("li", item);
    return out + "</" + tag + ">\n";
  }
  std::string operator()(const PacketTable& table) const {
    std::string out = "<table>\n";
    out += "<thead><tr>";
    for (const std::string& head : table.heads) out += "<th scope=\"col\">" + in_sentence(head) + "</th>";
    out += "</tr></thead>\n<tbody>\n";
    for (const std::vector<std::string>& row : table.rows) {
      out += "<tr>";
      for (std::size_t i = 0; i < row.size(); ++i)
        out += i == 0 ? "<th scope=\"row\">" + in_sentence(row[i]) + "</th>"
                      : "<td" + mark_attribute("data-head", table.heads[i]) + ">" + in_sentence(row[i]) +
                            "</td>";
      out += "</tr>\n";
    }
    return out + "</tbody></table>\n";
  }
  std::string operator()(const PacketViews& views) const {
    std::string out = views.views.size() == 1 ? "<figure class=\"alone\">" : "<figure>";
    out += "<div class=\"views\">\n";
    for (const Sheet& sheet : views.views) out += drawings.drawing(sheet);
    out += "</div>";
    if (!views.keys.empty()) out += "<figcaption>";
    for (const PacketKey& key : views.keys)
      out += "<span class=\"key\">" + (key.sign ? drawings.sign(*key.sign) : std::string{}) +
             (key.number > 0 ? "<b>" + std::to_string(key.number) + "</b> " : std::string{}) + "<span>" +
             in_sentence(key.words) + "</span></span>\n";
    if (!views.keys.empty()) out += "</figcaption>";
    return out + "</figure>\n";
  }
  std::string operator()(const PacketStages& stages) const {
    const std::size_t last = stages.stages.size() - 1;
    std::string out = "<div class=\"way\">\n" + line_of("h3", stages.heading) +
                      slide_bar(stages.heading, last) +
                      "<p class=\"unseen\" role=\"status\"></p>\n<ol class=\"stages\">\n";
    for (std::size_t i = 0; i <= last; ++i) {
      const StageDrawing& stage = stages.stages[i];
      out += "<li" + (stage.carried.empty() ? "" : mark_attribute("data-way", carried_text(stage.carried))) +
             ">" + tagged("h4", stage_name(i, last)) + "<div class=\"views\">\n" +
             drawings.drawing(stage.above) + drawings.drawing(stage.raised) + "</div>";
      for (const std::string& words : stage.words) out += line_of("p", words);
      out += "</li>\n";
    }
    return out + "</ol></div>\n";
  }
  std::string operator()(const PacketSignatures& signatures) const {
    std::string out = "<div class=\"signatures\">\n";
    for (const std::string& who : signatures.who) out += line_of("p", who);
    return out + "</div>\n";
  }
};

std::string contents(const Packet& packet) {
  std::string out = "<nav aria-label=\"Contents\"><ul>\n";
  for (const PacketSection& section : packet.sections)
    out += "<li><a href=\"#" + section.id + "\">" + escaped(section.heading) + "</a></li>\n";
  return out + "</ul></nav>\n";
}

}  // namespace

std::string packet_page(const Packet& packet) {
  const PageDrawings drawings(drawn_in(packet));
  const std::string style = std::string(paper_style()) + std::string(packet_style()) + drawings.style();
  const std::string policy = "default-src 'none'; script-src '" + sha256_source(packet_script()) +
                             "'; style-src '" + sha256_source(style) +
                             "'; base-uri 'none'; form-action 'none'";
  std::string out = "<!DOCTYPE html>\n<html lang=\"";
  out += packet.english == English::american ? "en-US" : "en-GB";
  out +=
      "\">\n<head>\n<meta charset=\"utf-8\"/>\n<meta http-equiv=\"Content-Security-Policy\" content=\"" +
      policy + "\"/>\n<title>" + escaped(packet.title) +
      "</title>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
      "<meta name=\"color-scheme\" content=\"light dark\"/>\n<style>" +
      style + "</style>\n</head>\n<body>\n" + drawings.shapes() + "<header>\n" +
      "<button type=\"button\" id=\"larger\" aria-pressed=\"false\" hidden=\"\">Larger letters</button>\n" +
      shops_words("h1", packet.title);
  if (!packet.under_title.empty()) out += "<p class=\"shop\">" + in_sentence(packet.under_title) + "</p>\n";
  for (const PacketText& text : packet.lead) out += paragraph(text);
  out += contents(packet) + "</header>\n<main>\n";
  for (const PacketSection& section : packet.sections) {
    out += "<section id=\"" + section.id + "\">\n" + tagged("h2", section.heading) + "\n";
    for (const PacketBlock& block : section.blocks) out += std::visit(BlockPage{drawings}, block);
    out += "</section>\n";
  }
  return out + "</main>\n<footer>\n" + line_of("p", packet.caution) + "</footer>\n<script>" +
         std::string(packet_script()) + "</script>\n</body>\n</html>\n";
}

}  // namespace berthwright
