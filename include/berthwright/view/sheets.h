#pragma once

#include <berthwright/solve/answer.h>
#include <berthwright/view/scene.h>

namespace berthwright {

/// Every sheet of a plan, numbered in order: a plan of each configuration, then the sections of those that
/// have a bed or a seat, then the clear heights over each bed where something hangs within 36 in. Each is followed by pages for those of its notes that found no room beside it.
std::vector<Sheet> sheets(const Plan& plan, const Answer& answer);

/// Width of `words` set in the lettering font at `height`, from its advance table without kerning, rounded
/// up.
PaperLength text_width(std::string_view words, PaperLength height);

/// Two boxes of lettering that meet, or lettering off the page; empty when the sheet is clean. `sheets`
/// throws std::logic_error rather than return a sheet for which this is not empty.
std::vector<std::string> lettering_faults(const Sheet& sheet);

}  // namespace berthwright
