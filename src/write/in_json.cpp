#include "write/in_json.h"

#include <stdexcept>

namespace berthwright {

std::string_view kind_word(Source::Kind kind) {
  switch (kind) {
    case Source::Kind::published:
      return "published";
    case Source::Kind::maker:
      return "maker";
    case Source::Kind::common_practice:
      return "common practice";
    case Source::Kind::from_memory:
      return "from memory";
    case Source::Kind::own_choice:
      return "own choice";
  }
  throw std::logic_error("Source::Kind out of range");
}

}  // namespace berthwright
