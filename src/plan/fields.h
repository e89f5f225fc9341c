#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "plan/values.h"

namespace berthwright {

/// Reads the fields of one object. The fields asked for are the fields allowed: `finish` reports every other
/// one with the nearest name, and the required ones that are missing.
class Fields {
 public:
  /// `what` names the object in messages: "a fixture". The node may be absent or no object: then every field
  /// is absent, and only the wrong kind of node is reported.
  Fields(const Node* node, Reading& reading, std::string what);

  template <class Read>
  auto required(std::string_view name, Read read) {
    require(name);
    return optional(name, read);
  }
  template <class Read>
  auto optional(std::string_view name, Read read) {
    const Node* node = find(name);
    return node != nullptr ? read(*node, reading_) : decltype(read(*node, reading_)){};
  }
  /// Absent or faulty: `value`; absent: also listed among the defaults as `spelled`.
  template <class Read, class Value>
  Value with_default(std::string_view name, Read read, Value value, std::string spelled, std::string why) {
    const Node* node = find(name);
    if (node == nullptr) note_default(name, std::move(spelled), std::move(why));
    return node != nullptr ? read(*node, reading_).value_or(std::move(value)) : std::move(value);
  }

  const Node* find(std::string_view name);  ///< makes it an allowed field
  void require(std::string_view name);      ///< `finish` reports it when it is missing
  bool has(std::string_view name) const;    ///< without allowing it
  /// `finish` reports the field if it is there, unless a misspelled one may be the reason; `why` says when it
  /// may stand. A field that should stand `instead` then counts as given.
  void refuse(std::string_view name, std::string why, std::string cure, std::string_view instead = {});
  void note_default(std::string_view name, std::string spelled, std::string why);
  void finish();

  const Node& node() const { return *node_; }
  bool sound() const { return is_object_; }
  Reading& reading() { return reading_; }

 private:
  bool report_unknown(const Node& child, std::vector<std::string>& missing);

  const Node* node_;
  Reading& reading_;
  std::string what_;
  bool is_object_;
  std::vector<std::string> known_;
  std::vector<std::string> required_;
  std::vector<std::string> refused_;
  Problems refusals_;
  std::vector<std::string> replaced_;
};

}  // namespace berthwright
