#include "yard/pdf_of.h"

#include <algorithm>
#include <ostream>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "yard/font.h"
#include "yard/plan_file.h"

namespace berthwright {

std::optional<std::string> pdf_of(const std::vector<Sheet>& drawn, const Plan& plan, const std::string& name,
                                  std::ostream& err) {
  const Result<std::string> font = lettering_font();
  const Title& said = plan->title;
  Result<std::string> bytes =
      font ? pdf(drawn, {said.title.empty() ? name : said.title, said.shop, plan->english}, *font) : font;
  if (!bytes) {
    tell(bytes.problems(), err);
    return std::nullopt;
  }
  if (std::ranges::any_of(drawn, lacks_letters))
    err << "Letters that DejaVu Sans lacks are empty boxes in the PDF; drawings as SVG and pages as HTML "
           "show them.\n";
  return std::move(bytes).value();
}

}  // namespace berthwright
