#pragma once

#include <filesystem>
#include <map>
#include <string>

namespace berthwright {

/// A folder of one test's own; it and all in it are gone when it goes out of sight.
class TemporaryFolder {
 public:
  TemporaryFolder();
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  ~TemporaryFolder();

  std::string path(const std::string& name = {}) const;
  /// Writes a file and returns its path.
  std::string put(const std::string& name, const std::string& bytes) const;

 private:
  std::filesystem::path folder_;
};

std::string bytes_of(const std::filesystem::path& file);
/// Every file below a folder, hidden ones too: path from the folder → bytes. Empty when there is no folder.
std::map<std::string, std::string> files_in(const std::filesystem::path& folder);

}  // namespace berthwright
