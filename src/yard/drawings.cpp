#include "yard/drawings.h"

#include <ostream>

#include <berthwright/write/outputs.h>

#include "yard/commands.h"
#include "yard/files.h"
#include "yard/plan_file.h"

namespace berthwright {

int write_drawings(const std::string& folder, const FileMap& files, std::vector<std::string>& names,
                   std::ostream& err) {
  const Result<Written> written = write_files(folder, files);
  for (const auto& [name, bytes] : files) names.push_back(name);
  if (written) return exit_fine;
  tell(written.problems(), err);
  return written.problems().front().id == "output.create" ? exit_create : exit_write;
}

FileMap svg_files(const std::vector<Sheet>& drawn) {
  FileMap files;
  for (const Sheet& sheet : drawn) files[sheet.file + ".svg"] = svg(sheet);
  return files;
}

}  // namespace berthwright
