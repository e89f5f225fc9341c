#pragma once

#include <cstddef>
#include <string_view>

#include "plan/document.h"

namespace berthwright {

// The published schema of plans, as data: what it says of a value, and the order in which it lists fields. A
// schema that is `nullptr` says nothing.

/// Of the whole plan.
const Node* plan_schema();
/// The part called `name` ("properties", "items") of a schema, of what it refers to, or of the first of its
/// choices that has one; nullptr: none.
const Node* schema_part(const Node* node, std::string_view name);
/// What the schema at `node` refers to, where it does no more than that; else itself.
const Node* referred(const Node* node);
/// Of a member or an element of a value that `node` describes.
const Node* schema_of_member(const Node* node, std::string_view name);
const Node* schema_of_element(const Node* node, std::size_t index);
/// The place of a field in the house order, which is that of the schema; fields without a place come last.
std::size_t place_of_field(const Node* node, std::string_view name);

}  // namespace berthwright
