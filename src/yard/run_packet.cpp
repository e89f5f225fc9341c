#include <filesystem>
#include <ostream>
#include <system_error>

#include "exact/code_points.h"
#include "view/packet.h"
#include "view/packet_sheets.h"
#include "write/packet_page.h"
#include "yard/commands.h"
#include "yard/pdf_of.h"
#include "yard/plan_file.h"

namespace berthwright {

int run_packet(const PacketRequest& request, std::ostream& out, std::ostream& err) {
  int code = exit_fine;
  const std::optional<PlanFile> file = plan_file_of(request.plan, false, out, err, code);
  if (!file) return code;
  const Plan& plan = file->plan;
  const auto refused = [&](const Problems& problems) {
    return told(request.plan, problems, false, out, err);
  };
  const Result<Answer> answer = answered(plan);
  if (!answer) return refused(answer.problems());
  const Result<std::vector<HeaterPlaces>> heaters = heater_places(plan, {});
  if (!heaters) return refused(heaters.problems());
  const Result<std::vector<Conversion>> steps = conversions(plan);
  if (!steps) return refused(steps.problems());
  const Result<std::vector<Cover>> cut = covers(plan, plan->sewing);
  if (!cut) return refused(cut.problems());
  const std::vector<Loads> loads = loads_of(plan);
  const PacketMatter matter{plan, *answer, *heaters, *steps, *cut, loads};
  const Packet packet = request.for_shop ? shop_packet(matter) : buyer_packet(matter);
  const std::string stem = plan_stem(request.plan);
  const std::string name =
      std::string(request.for_shop ? "shop-packet" : "packet") + (request.pdf ? ".pdf" : ".html");
  const std::string goal = request.file.empty() ? "out/" + stem + "/" + name : request.file;
  if (std::error_code ignored; std::filesystem::equivalent(request.plan, goal, ignored)) {
    err << "berthwright: " << printable(goal, every_character) << " is the plan itself; name another file\n";
    return exit_usage;
  }
  const std::optional<std::string> bytes =
      request.pdf ? pdf_of(packet_sheets(matter, packet), plan, stem, err) : packet_page(packet);
  if (!bytes) return exit_input;
  const int done = write_named_file(goal, *bytes, err);
  if (done != exit_fine) return done;
  out << printable(goal, every_character) << '\n';
  if (exit_code(*answer) != 0)
    err << "Alerts are not met or unknown: berthwright check " << printable(request.plan, every_character)
        << '\n';
  if (exit_code(plan, loads) == 1)
    err << "Loads are not met: berthwright loads " << printable(request.plan, every_character)
        << " tells which\n";
  return exit_fine;
}

}  // namespace berthwright
