#pragma once

#include <string>
#include <string_view>

namespace berthwright {

// Parts of pages. Everything that a person wrote goes through these, which escape it.

/// ` name="value"`.
std::string mark_attribute(std::string_view name, std::string_view value);
/// A sentence of ours with names in it: what is read from right to left stands in `bdi`, run by run, so that
/// it turns neither figures nor signs beside it.
std::string in_sentence(std::string_view words);
/// The sentence in a tag.
std::string tagged(std::string_view tag, std::string_view words);

/// Paper, ink and controls of every page.
std::string_view paper_style();

/// Buttons a step back and on, and between them a slider over the stages 0 to `last` of what `label` names.
std::string slide_bar(std::string_view label, std::size_t last);
/// "At the start", "Step 3 of 8".
std::string stage_name(std::size_t stage, std::size_t last);

}  // namespace berthwright
