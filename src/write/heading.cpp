#include "write/heading.h"

#include "exact/code_points.h"
#include "write/wrap.h"

namespace berthwright {

std::string heading(const Plan& plan) {
  std::string text = plan->title.title;
  if (!plan->title.shop.empty()) text += ", " + plan->title.shop;
  if (!plan->title.owner.empty()) text += ", for " + plan->title.owner;
  if (!plan->title.date.empty()) text += ", " + plan->title.date;
  return wrapped(printable(text, every_character), {});
}

}  // namespace berthwright
