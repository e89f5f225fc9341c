#include "view/face_words.h"

#include <stdexcept>

#include "plan/wall_names.h"
#include "view/called.h"

namespace berthwright {
namespace {

std::string face_of(const ApplianceFace& face) {
  switch (face.kind) {
    case ApplianceFace::Kind::front:
      return "its front";
    case ApplianceFace::Kind::back:
      return "its back";
    case ApplianceFace::Kind::top:
      return "its top";
    case ApplianceFace::Kind::underside:
      return "its underside";
    case ApplianceFace::Kind::side:
      return "its side toward the " + std::string(wall_word(face.toward)) + " wall";
  }
  throw std::logic_error("ApplianceFace::Kind out of range");
}

}  // namespace

std::string faces_with_and(const std::vector<ApplianceFace>& faces) {
  std::vector<std::string> words;
  for (const ApplianceFace& face : faces) words.push_back(face_of(face));
  return listed_with_and(words);
}

std::string before_faces(const std::vector<ApplianceFace>& faces) {
  if (faces.empty()) return "within it";
  const std::string where = faces.size() == 1 ? "" : faces.size() == 2 ? "the edge of " : "the corner of ";
  return "before " + where + faces_with_and(faces);
}

}  // namespace berthwright
