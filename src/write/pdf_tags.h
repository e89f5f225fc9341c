#pragma once

#include <string>
#include <vector>

namespace berthwright {

/// What the drawing library cannot say in a PDF file.
struct PdfTags {
  std::string language;              ///< "en-US"
  std::vector<std::string> figures;  ///< of each figure in order, what it shows in words
};
/// The same pages with it, asking to be printed at their size, without dates and with an id that depends on
/// nothing but what they hold. Throws std::logic_error where the file has another number of figures.
std::string with_tags(const std::string& pdf, const PdfTags& tags);

}  // namespace berthwright
