#pragma once

#include <map>
#include <string>

#include <berthwright/exact/result.h>

namespace berthwright {

/// The whole of a file, or of standard input for "-". Problems: "file.unreadable" with the reason. Reads at
/// most one byte more than `most`, so that the reader can refuse what is too large.
Result<std::string> read_file(const std::string& path, std::size_t most);

struct Written {};
/// Writes every file (name → bytes) into `folder`, which is made if it is missing. Each goes to a temporary
/// name beside its goal and is synced; only when all are complete are they renamed, so that an old file is
/// replaced by a complete one or not at all. Only plain files are replaced, never read-only
/// ones, and keep who may read and write them. Problems: "output.create"
/// (folder or file cannot be made), "output.write" (it could not be written whole).
Result<Written> write_files(const std::string& folder, const std::map<std::string, std::string>& files);

}  // namespace berthwright
