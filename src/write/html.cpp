#include "write/html.h"

#include "write/escaped.h"

namespace berthwright {

std::string mark_attribute(std::string_view name, std::string_view value) {
  return " " + std::string(name) + "=\"" + escaped(value) + "\"";
}

std::string tagged(std::string_view tag, std::string_view words) {
  return "<" + std::string(tag) + ">" + escaped(words) + "</" + std::string(tag) + ">";
}

std::string slide_bar(std::string_view label, std::size_t last) {
  return "<p class=\"slide\"><button type=\"button\" class=\"back\" aria-label=\"Step back\">◂</button>"
         "<input type=\"range\" min=\"0\" value=\"0\" max=\"" +
         std::to_string(last) + "\"" + mark_attribute("aria-label", label) +
         "/><button type=\"button\" class=\"on\" aria-label=\"Step on\">▸</button></p>\n";
}

std::string stage_name(std::size_t stage, std::size_t last) {
  return stage == 0 ? "At the start" : "Step " + std::to_string(stage) + " of " + std::to_string(last);
}

}  // namespace berthwright
