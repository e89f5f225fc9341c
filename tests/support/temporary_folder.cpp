#include "support/temporary_folder.h"

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace berthwright {

namespace fs = std::filesystem;

TemporaryFolder::TemporaryFolder() {
  std::string name = (fs::temp_directory_path() / "berthwright-test-XXXXXX").string();
  if (mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
  folder_ = name;
  fs::permissions(folder_, fs::perms{0755});
}

TemporaryFolder::~TemporaryFolder() {
  std::error_code ignored;
  fs::remove_all(folder_, ignored);
}

std::string TemporaryFolder::path(const std::string& name) const {
  return (name.empty() ? folder_ : folder_ / name).string();
}

std::string TemporaryFolder::put(const std::string& name, const std::string& bytes) const {
  fs::create_directories((folder_ / name).parent_path());
  std::ofstream(folder_ / name, std::ios::binary) << bytes;
  return path(name);
}

std::string bytes_of(const fs::path& file) {
  std::ifstream stream(file, std::ios::binary);
  if (!stream) throw std::runtime_error("cannot open " + file.string());
  return {std::istreambuf_iterator<char>(stream), {}};
}

std::map<std::string, std::string> files_in(const fs::path& folder) {
  std::map<std::string, std::string> files;
  if (!fs::exists(folder)) return files;
  for (const auto& entry : fs::recursive_directory_iterator(folder))
    if (!entry.is_directory())
      files[entry.path().lexically_relative(folder).generic_string()] = bytes_of(entry.path());
  return files;
}

}  // namespace berthwright
