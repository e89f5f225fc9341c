#pragma once

#include <iosfwd>
#include <map>
#include <string>
#include <vector>

#include <berthwright/view/scene.h>

namespace berthwright {

/// Bytes by file name.
using FileMap = std::map<std::string, std::string>;

/// One file a sheet.
FileMap svg_files(const std::vector<Sheet>& drawn);

/// Writes all of them or none; the exit code, after telling what is wrong. Their names, sorted, come to
/// `names`.
int write_drawings(const std::string& folder, const FileMap& files, std::vector<std::string>& names,
                   std::ostream& err);

}  // namespace berthwright
