// Draws rooms made from seeds, for the probes that look at sheets:  berthwright_random_sheets COUNT FOLDER
// Of each the plan, the heat sheet where there is one, and the raised view.

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "support/odd_room.h"

int main(int count, char** words) {
  using namespace berthwright;
  if (count != 3) {
    std::cerr << "usage: berthwright_random_sheets COUNT FOLDER\n";
    return 64;
  }
  const std::filesystem::path folder(words[2]);
  std::filesystem::remove_all(folder);
  std::filesystem::create_directories(folder);
  const auto rooms = static_cast<unsigned>(std::strtoul(words[1], nullptr, 10));
  for (unsigned seed = 0; seed < rooms; ++seed) {
    DrawnRoom room = odd_room(seed);
    const std::vector<Sheet> drawn = sheets(room.plan(), room.answer());
    for (const Sheet& sheet : drawn) {
      if (sheet.file.ends_with("-notes")) continue;
      std::ofstream out(folder / ("room-" + std::to_string(seed) + "-" + sheet.file + ".svg"),
                        std::ios::binary);
      out << svg(sheet);
      if (!out) return 74;
    }
  }
}
