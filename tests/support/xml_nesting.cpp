#include "support/xml_nesting.h"

#include <array>
#include <vector>

namespace berthwright {
namespace {

constexpr std::array<std::string_view, 5> entities{"&amp;", "&lt;", "&gt;", "&quot;", "&#39;"};

bool text_is_clean(std::string_view text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto c = static_cast<unsigned char>(text[i]);
    if (c < 0x20 && c != '\n') return false;
    if (text[i] == '<' || text[i] == '>') return false;
    if (text[i] != '&') continue;
    bool known = false;
    for (const std::string_view entity : entities) known |= text.substr(i).starts_with(entity);
    if (!known) return false;
  }
  return true;
}

// Takes `name="value"` pairs off the front of what stands within a tag.
std::string attributes_fault(std::string_view rest) {
  while (!rest.empty()) {
    if (rest.front() != ' ') return "no blank before an attribute";
    rest.remove_prefix(1);
    const std::size_t sign = rest.find("=\"");
    if (sign == std::string_view::npos || sign == 0) return "an attribute without value";
    rest.remove_prefix(sign + 2);
    const std::size_t end = rest.find('"');
    if (end == std::string_view::npos) return "an open quote";
    if (!text_is_clean(rest.substr(0, end))) return "an attribute that is not escaped";
    rest.remove_prefix(end + 1);
  }
  return {};
}

}  // namespace

std::string xml_fault(std::string_view text) {
  std::vector<std::string_view> open;
  while (!text.empty()) {
    const std::size_t tag = text.find('<');
    if (!text_is_clean(text.substr(0, tag))) return "text that is not escaped";
    if (tag == std::string_view::npos) break;
    text.remove_prefix(tag + 1);
    const std::size_t end = text.find('>');
    if (end == std::string_view::npos) return "an open tag";
    std::string_view inner = text.substr(0, end);
    text.remove_prefix(end + 1);
    const bool closes = inner.starts_with('/');
    if (closes) inner.remove_prefix(1);
    const bool alone = inner.ends_with('/');
    if (alone) inner.remove_suffix(1);
    const std::string_view name = inner.substr(0, inner.find(' '));
    if (closes) {
      if (open.empty() || open.back() != name) return "a tag closed that was not open: " + std::string(name);
      open.pop_back();
      continue;
    }
    if (const std::string fault = attributes_fault(inner.substr(name.size())); !fault.empty()) return fault;
    if (!alone) open.push_back(name);
  }
  return open.empty() ? "" : "never closed: " + std::string(open.back());
}

}  // namespace berthwright
