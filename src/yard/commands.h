#pragma once

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace berthwright {

/// Exit codes above those of a check itself (0, 1, 2); the values of sysexits.h.
inline constexpr int exit_fine = 0;
inline constexpr int exit_not_in_order = 1;  ///< of `fmt --check`
inline constexpr int exit_usage = 64;
inline constexpr int exit_plan = 65;
inline constexpr int exit_input = 66;
inline constexpr int exit_own_fault = 70;
inline constexpr int exit_create = 73;
inline constexpr int exit_write = 74;

struct CheckRequest {
  std::string plan;
  bool tape = false;  ///< what may turn over while measures are off, in place of the check
  bool json = false;
  bool details = false;
  bool defaults = false;
};
struct DrawRequest {
  std::string plan;
  std::string folder;  ///< empty: out/ and the stem of the plan's file name
  bool pdf = false;    ///< one file in place of many
};
struct HeaterRequest {
  std::string plan;
  std::vector<std::string> configurations;  ///< ids; empty: all
  bool json = false;
};
struct StepsRequest {
  std::string plan;
  std::string from;  ///< id of a configuration; empty: any
  std::string to;
  bool json = false;
};
struct SplitRequest {
  std::string plan;
  std::string day;  ///< ids of configurations; empty: "day" and "night" where the plan has them
  std::string night;
  std::string thickness;  ///< lengths as typed; empty: the usual one
  std::string least_back;
  std::string most_back;
  std::string least_side;
  std::string longest_side;
  std::string gap;
  std::optional<std::size_t> fillers;
  std::vector<std::size_t> choose;  ///< number of a proposal, for each bay
  std::string folder;               ///< for drawings; empty: none
  std::string write;                ///< file for the plan with what was chosen; empty: none
  bool force = false;
  bool reuse = false;  ///< lay the plan's own cushions instead
  bool json = false;
};
struct CutRequest {
  std::string plan;
  std::string stock;                  ///< file of stock that the parts are placed on; empty: none
  std::optional<std::size_t> effort;  ///< rounds of the search for a cheaper placing
  std::string folder;  ///< for drawings; empty: none
  bool json = false;
};
struct LoadsRequest {
  std::string plan;
  std::vector<std::string> configurations;  ///< ids; empty: all
  bool json = false;
};
struct CompareRequest {
  std::string plan;
  std::vector<std::string> with;            ///< one: another plan; two: ids of configurations of `plan`
  std::vector<std::string> configurations;  ///< of two plans only these; ids, empty: all
  std::string folder;                       ///< for drawings; empty: none
  bool json = false;
};
struct FmtRequest {
  std::vector<std::string> plans;
  bool check = false;
};
struct UnitsRequest {
  std::string plan;
  std::string to;     ///< "in" or "mm"; empty: the one the plan does not have
  std::string write;  ///< empty: standard output
  bool force = false;
};
struct NewRequest {
  std::string plan;                 ///< the file to be made
  std::string answers;              ///< file; empty: none but what is kept beside the plan
  std::vector<std::string> answer;  ///< "length: 10 ft", after those of the file
  bool usual = false;               ///< what is not answered is taken as usual, where there is a usual
  bool force = false;
};
struct WatchRequest {
  std::string plan;
  int port = 4680;  ///< 0: any that is free
};
struct PacketRequest {
  std::string plan;
  std::string
      file;  ///< empty: packet.html, of the shop shop-packet.html, in out/ and the stem of the plan's name
  bool for_shop = false;
  bool pdf = false;  ///< in place of HTML
};
struct ReferenceRequest {
  std::vector<std::string> plans;  ///< where examples come from
};
struct ExplainRequest {
  std::string rule;  ///< empty: list all
  bool json = false;
};

int run_check(const CheckRequest& request, std::ostream& out, std::ostream& err);
/// Of a check with `tape`.
int run_tape(const CheckRequest& request, std::ostream& out, std::ostream& err);
int run_draw(const DrawRequest& request, std::ostream& out, std::ostream& err);
int run_heater(const HeaterRequest& request, std::ostream& out, std::ostream& err);
int run_steps(const StepsRequest& request, std::ostream& out, std::ostream& err);
int run_split(const SplitRequest& request, std::ostream& out, std::ostream& err);
int run_cut(const CutRequest& request, std::ostream& out, std::ostream& err);
int run_loads(const LoadsRequest& request, std::ostream& out, std::ostream& err);
int run_compare(const CompareRequest& request, std::ostream& out, std::ostream& err);
int run_fmt(const FmtRequest& request, std::ostream& out, std::ostream& err);
int run_units(const UnitsRequest& request, std::ostream& out, std::ostream& err);
int run_new(const NewRequest& request, std::ostream& out, std::ostream& err);
int run_watch(const WatchRequest& request, std::ostream& out, std::ostream& err);
int run_packet(const PacketRequest& request, std::ostream& out, std::ostream& err);
int run_reference(const ReferenceRequest& request, std::ostream& out, std::ostream& err);
int run_explain(const ExplainRequest& request, std::ostream& out, std::ostream& err);

}  // namespace berthwright
