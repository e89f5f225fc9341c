#include <berthwright/yard/program.h>

#include <CLI/CLI.hpp>

#include <algorithm>
#include <exception>
#include <ostream>
#include <sstream>

#include "exact/code_points.h"
#include "yard/commands.h"

namespace berthwright {
namespace {

struct Asked {
  CheckRequest check;
  DrawRequest draw;
  HeaterRequest heater;
  StepsRequest steps;
  SplitRequest split;
  CutRequest cut;
  LoadsRequest loads;
  CompareRequest compare;
  FmtRequest fmt;
  UnitsRequest units;
  NewRequest start;
  WatchRequest watch;
  PacketRequest packet;
  ReferenceRequest reference;
  ExplainRequest explain;
};

constexpr auto plan_help = "plan file, or - for standard input";

CLI::App* define_check(CLI::App& app, CheckRequest& check) {
  CLI::App* verb =
      app.add_subcommand("check", "Stand the plan up by day and by night and compare every figure");
  verb->add_option("PLAN", check.plan, plan_help)->required();
  verb->add_flag("--json", check.json, "one JSON object instead of text (plans/check.schema.json)");
  verb->add_flag("--details", check.details,
                 "add rule names, places, shares of the population and the numbers of what is met");
  verb->add_flag("--defaults", check.defaults, "list every default that was applied");
  verb->add_flag("--tape", check.tape,
                 "tell instead what may turn over while measures are off, and which to take again\n"
                 "(--json: plans/tape.schema.json); not with --details or --defaults");
  // Two options that one excludes stand in the help in the order of their addresses: another each time.
  verb->callback([&check] {
    if (check.tape && (check.details || check.defaults))
      throw CLI::ExcludesError("--tape", check.details ? "--details" : "--defaults");
  });
  verb->footer(
      "Example:\n  berthwright check plans/sanderling.json\n  berthwright check --tape "
      "plans/nuthatch.json\n\n"
      "Exit code: 0 every alert met or close; 1 an alert not met; 2 none not met but one unknown;\n"
      "with --tape also 1 where an alert may turn out not met, 2 where one may turn out unknown;\n"
      "65 the plan is wrong; 66 it cannot be read. With --json a wrong plan gives {\"problems\": [...]}.");
  return verb;
}

CLI::App* define_draw(CLI::App& app, DrawRequest& draw) {
  CLI::App* verb = app.add_subcommand(
      "draw", "Draw every configuration to scale as SVG or PDF: plans, sections, heat, ways out");
  verb->add_option("PLAN", draw.plan, plan_help)->required();
  verb->add_option("--out", draw.folder, "folder for the drawings (default: out/ and the plan's file name)");
  verb->add_flag("--pdf", draw.pdf,
                 "one PDF file with all sheets, named for the plan, in place of SVG files");
  verb->footer(
      "Example:\n  berthwright draw plans/sanderling.json --out drawings\n"
      "  berthwright draw plans/sanderling.json --pdf\n\n"
      "Exit code: 0 drawn, whatever the check says; 65 the plan is wrong; 66 it, or for a PDF the\n"
      "font DejaVu Sans, cannot be read; 73 the folder or a file cannot be made; 74 it could not be written "
      "whole\n(old drawings stay).");
  return verb;
}

CLI::App* define_heater(CLI::App& app, HeaterRequest& heater) {
  CLI::App* verb = app.add_subcommand("heater", "Look for places where each heater may stand");
  verb->add_option("PLAN", heater.plan, plan_help)->required();
  verb->add_option("--configuration", heater.configurations,
                   "only this configuration (may be given several times; default: all but the road)")
      ->allow_extra_args(false)
      ->take_all();
  verb->add_flag("--json", heater.json, "one JSON object instead of text (plans/heater.schema.json)");
  verb->footer(
      "Example:\n  berthwright heater plans/sanderling.json --configuration day\n\n"
      "Exit code: 0 each heater has a place that keeps every rule; 1 one has none; 2 each has, but a figure "
      "is\n"
      "lacking, or the plan shows no heater; 64 no such configuration; 65 the plan is wrong; 66 it cannot be "
      "read.");
  return verb;
}

CLI::App* define_steps(CLI::App& app, StepsRequest& steps) {
  CLI::App* verb =
      app.add_subcommand("steps", "Find the fewest steps from each configuration to each other one");
  verb->add_option("PLAN", steps.plan, plan_help)->required();
  verb->add_option("--from", steps.from, "only from this configuration");
  verb->add_option("--to", steps.to, "only to this configuration");
  verb->add_flag("--json", steps.json,
                 "one JSON object instead of text (plans/steps.schema.json), with all that is swept");
  verb->footer(
      "Example:\n  berthwright steps plans/sanderling.json --from day --to night\n\n"
      "Exit code: 0 each has an order; 1 one has none within the moves and places tried; 2 one was not "
      "decided\n"
      "within the bound, or there is no pair; 64 no such configuration; 65 the plan is wrong; 66 it cannot "
      "be "
      "read.");
  return verb;
}

CLI::App* define_split(CLI::App& app, SplitRequest& split) {
  CLI::App* verb = app.add_subcommand(
      "split", "Propose cushions that close the bed by night and are seats and backs by day");
  verb->add_option("PLAN", split.plan, plan_help)->required();
  verb->add_option("--day", split.day, "configuration in which people sit (default: day)");
  verb->add_option("--night", split.night, "configuration in which boards close the bay (default: night)");
  verb->add_option("--thickness", split.thickness, "of all cushions (default: 4 in)");
  verb->add_option("--least-back", split.least_back, "lowest back (default: rule seat.low-back)");
  verb->add_option("--most-back", split.most_back, "highest back (default: rule seat.high-back)");
  verb->add_option("--least-side", split.least_side, "shortest side of a cushion (default: 6 in)");
  verb->add_option("--longest-side", split.longest_side, "longest side of a cushion (default: 80 in)");
  verb->add_option("--gap", split.gap, "widest gap shown where nothing closes exactly (default: none)");
  verb->add_option("--fillers", split.fillers, "how many cushions may have no use by day (default: 1)")
      ->check(CLI::Range(std::size_t{0}, std::size_t{3}));
  verb->add_option("--out", split.folder, "draw the proposals for each bay side by side in this folder");
  verb->add_option("--write", split.write, "write the plan with the chosen cushions to this file");
  verb->add_option(
          "--choose", split.choose,
          "number of the proposal to write, for each bay in turn (default: 1; 0 leaves the bay as it is)")
      ->allow_extra_args(false)
      ->take_all();
  verb->add_flag("--force", split.force, "replace the file of --write if it exists");
  verb->add_flag("--reuse", split.reuse,
                 "propose no new cushions: lay those that the plan has, and tell what they leave open");
  verb->add_flag("--json", split.json, "one JSON object instead of text (plans/split.schema.json)");
  verb->footer(
      "Example:\n  berthwright split plans/sanderling.json --fillers 0\n"
      "  berthwright split plans/sanderling.json --reuse\n\n"
      "Exit code: 0 each bay closes; 1 one does not; 2 there is none; 64 the command is wrong; 65 the plan "
      "is\n"
      "wrong; 66 it cannot be read; 73 the file of --write exists or cannot be made; 74 it could not be "
      "written.");
  return verb;
}

CLI::App* define_cut(CLI::App& app, CutRequest& cut) {
  CLI::App* verb = app.add_subcommand(
      "cut", "List what is cut for every cushion, or place foam, boards and cloth on stock");
  verb->add_option("PLAN", cut.plan, plan_help)->required();
  CLI::Option* stock = verb->add_option("--stock", cut.stock,
                                        "stock file, or - for standard input: place all parts on it, least "
                                        "cost first (plans/stock.schema.json)");
  verb->add_option("--effort", cut.effort, "rounds of the search for a cheaper placing (default: 20000)")
      ->needs(stock)
      ->check(CLI::Range(0, 100'000'000));
  verb->add_option("--out", cut.folder,
                   "also draw into this folder: the key to the cushions and their labels; with --stock a "
                   "sheet for every piece of stock");
  verb->add_flag("--json", cut.json,
                 "one JSON object instead of text (plans/cut.schema.json; with --stock "
                 "plans/placing.schema.json)");
  verb->footer(
      "Example:\n  berthwright cut plans/dunnock.json\n"
      "  berthwright cut plans/dunnock.json --stock plans/stock/plover-lane.json --out sheets\n\n"
      "Exit code: 0 every cushion is told whole; 1 one cannot be cut from the plan's own roll or foam "
      "sheets;\n"
      "2 the grade of a foam is unknown, a shape is not reckoned, or there is no cushion. With --stock: 0 "
      "every\npart has a place; 1 one has none; 2 the file has no material for one, or there is no part. 65 "
      "plan or\nstock file is wrong; 66 one cannot be read; 73, 74 the drawings cannot be made.");
  return verb;
}

CLI::App* define_loads(CLI::App& app, LoadsRequest& loads) {
  CLI::App* verb =
      app.add_subcommand("loads", "Weigh what coupling and axle, each circuit and the heater have to carry");
  verb->add_option("PLAN", loads.plan, plan_help)->required();
  verb->add_option("--configuration", loads.configurations,
                   "only this configuration (may be given several times; default: all)")
      ->allow_extra_args(false)
      ->take_all();
  verb->add_flag("--json", loads.json, "one JSON object instead of text (plans/loads.schema.json)");
  verb->footer(
      "Example:\n  berthwright loads plans/sanderling.json --configuration road\n\n"
      "Exit code: 0 all that is compared is met; 1 something is not; 2 something is unknown, or nothing is "
      "compared;\n"
      "64 no such configuration; 65 the plan is wrong; 66 it cannot be read.");
  return verb;
}

CLI::App* define_compare(CLI::App& app, CompareRequest& compare) {
  CLI::App* verb = app.add_subcommand(
      "compare", "Tell every figure that differs between two plans, or two configurations of one");
  verb->add_option("PLAN", compare.plan, plan_help)->required();
  verb->add_option("WITH", compare.with, "another plan file; or two configurations of the plan")
      ->required()
      ->expected(1, 2);
  verb->add_option("--configuration", compare.configurations,
                   "of two plans only this configuration (may be given several times; default: all that "
                   "both have)")
      ->allow_extra_args(false)
      ->take_all();
  verb->add_option("--out", compare.folder, "also draw both side by side at one scale into this folder");
  verb->add_flag("--json", compare.json, "one JSON object instead of text (plans/compare.schema.json)");
  verb->footer(
      "Example:\n  berthwright compare plans/dunnock.json plans/sanderling.json\n"
      "  berthwright compare plans/sanderling.json day night --out drawings\n\n"
      "Exit code: 0 no figure differs; 1 one does; 2 none that is known, but one is unknown, be it of both; "
      "64 no\n"
      "such configuration; 65 a plan is wrong; 66 it cannot be read; 73, 74 the drawings cannot be made.");
  return verb;
}

CLI::App* define_fmt(CLI::App& app, FmtRequest& fmt) {
  CLI::App* verb = app.add_subcommand("fmt", "Put plan files in house order and spacing, comments and all");
  verb->add_option("PLAN", fmt.plans, "plan files, each written in place; - reads standard input and prints")
      ->required();
  verb->add_flag("--check", fmt.check, "write nothing; name the plans that are not in house order");
  verb->footer(
      "Example:\n  berthwright fmt --check plans/nuthatch.json plans/sanderling.json\n\n"
      "Exit code: 0 in order now; 1 with --check: one is not; 65 a plan is wrong (it is not touched); 66 "
      "one\n"
      "cannot be read; 73 or 74 one cannot be written (it stays as it was). With several, the largest.");
  return verb;
}

CLI::App* define_units(CLI::App& app, UnitsRequest& units) {
  CLI::App* verb = app.add_subcommand(
      "convert-units", "Write a plan in the other unit; no length changes, and no rounding is done");
  verb->add_option("PLAN", units.plan, plan_help)->required();
  verb->add_option("--to", units.to, "in or mm (default: the unit that the plan does not have)")
      ->check(CLI::IsMember({"in", "mm"}));
  verb->add_option("--write", units.write, "write to this file (default: standard output)");
  verb->add_flag("--force", units.force, "replace the file of --write if it exists");
  verb->footer(
      "Example:\n  berthwright convert-units plans/sanderling.json --to mm\n\n"
      "Exit code: 0 written; 64 the command is wrong; 65 the plan is wrong; 66 it cannot be read; 73 the "
      "file "
      "of\n--write exists or cannot be made; 74 it could not be written.");
  return verb;
}

CLI::App* define_new(CLI::App& app, NewRequest& start) {
  CLI::App* verb = app.add_subcommand("new", "Ask for what a tape measures and write a plan from it");
  verb->add_option("PLAN", start.plan, "the plan file to be made")->required();
  verb->add_option("--answers", start.answers, "read answers from this file, one a line: length: 10 ft");
  verb->add_option("--answer", start.answer, "one answer, \"length: 10 ft\" (may be given several times)")
      ->allow_extra_args(false)
      ->take_all();
  verb->add_flag("--usual", start.usual, "take what is usual for all that is not answered");
  verb->add_flag("--force", start.force, "replace the plan file if it exists");
  verb->footer(
      "Example:\n  berthwright new mine.json --usual --answer length:120 --answer width:76 --answer "
      "height:74 "
      "--answer door-from:80\n\n"
      "At every question: Enter takes what is usual, \"back\" goes back. Answers are kept beside the plan "
      "after each\n"
      "one, so that Ctrl-C loses none: the same command goes on from there.\n\n"
      "Exit code: 0 written; 64 an answer is wrong; 66 the answers ended before all was asked; 73 the plan "
      "exists\n"
      "or cannot be made; 74 it could not be written.");
  return verb;
}

CLI::App* define_watch(CLI::App& app, WatchRequest& watch) {
  CLI::App* verb =
      app.add_subcommand("watch", "Show a plan in a browser of this machine, anew at every save of the file");
  verb->add_option("PLAN", watch.plan, "plan file that is being written")->required();
  verb->add_option("--port", watch.port, "of the page's address (default: 4680; 0: any that is free)")
      ->check(CLI::Range(0, 65535));
  verb->footer(
      "Example:\n  berthwright watch plans/sanderling.json --port 4681\n\n"
      "Open the address that it says. The page is served to this machine alone and nothing is written. A "
      "broken\n"
      "file leaves the last good drawings beside its faults. Ctrl-C ends it.\n\n"
      "Exit code: 0 ended by Ctrl-C; 64 the command is wrong; 66 the file cannot be read when it begins; 73 "
      "the\n"
      "port is taken (a free one is named).");
  return verb;
}

CLI::App* define_packet(CLI::App& app, PacketRequest& packet) {
  CLI::App* verb =
      app.add_subcommand("packet", "Write the handover packet that the buyer takes home: one HTML file");
  verb->add_option("PLAN", packet.plan, plan_help)->required();
  verb->add_option("--out", packet.file,
                   "file to write (default: packet.html, shop-packet.html, or with --pdf .pdf, in out/ and "
                   "the plan's file name)");
  verb->add_flag("--pdf", packet.pdf,
                 "the same on paper as one PDF file, with the full sheets, in place of HTML");
  verb->add_option_function<std::string>(
          "--for", [&packet](const std::string& whom) { packet.for_shop = whom == "shop"; },
          "buyer (default), or shop: parts, cut sheets, what to buy (fabric is not added up), checks, open "
          "items")
      ->check(CLI::IsMember({"buyer", "shop"}));
  verb->footer(
      "Example:\n  berthwright packet plans/sanderling.json --out sanderling.html\n\n"
      "The file holds all it needs and asks for nothing: it opens on a telephone without a network and "
      "prints.\n\n"
      "Exit code: 0 written, whatever the check says; 65 the plan is wrong; 66 it, or for a PDF the "
      "font\nDejaVu Sans, cannot be read; 73 the file cannot be made; 74 it could not be written whole (an "
      "old one stays).");
  return verb;
}

/// For contributors: it makes plans/REFERENCE.md, so no help lists it.
CLI::App* define_reference(CLI::App& app, ReferenceRequest& reference) {
  CLI::App* verb = app.add_subcommand("reference", "Print the page that tells every field of a plan file");
  verb->add_option("PLAN", reference.plans, "plan files to take examples from");
  verb->group("");
  return verb;
}

CLI::App* define_explain(CLI::App& app, ExplainRequest& explain) {
  CLI::App* verb = app.add_subcommand("explain", "Tell what a rule measures, its number and who says so");
  verb->add_option("RULE", explain.rule, "name of a rule; without it all rules are listed");
  verb->add_flag("--json", explain.json, "JSON instead of text");
  verb->footer("Example:\n  berthwright explain heat.three-feet");
  return verb;
}

int dispatched(const std::vector<std::string>& arguments, std::ostream& out, std::ostream& err) {
  Asked asked;
  CLI::App app{"Berthwright turns the measures of a small travel trailer into checked day and night plans.",
               "berthwright"};
  app.set_version_flag("-V,--version", "berthwright " BERTHWRIGHT_VERSION);
  app.require_subcommand(1);
  app.footer("Example:\n  berthwright check plans/sanderling.json\n\n'berthwright VERB --help' tells more.");
  const CLI::App* check = define_check(app, asked.check);
  const CLI::App* draw = define_draw(app, asked.draw);
  const CLI::App* heater = define_heater(app, asked.heater);
  const CLI::App* steps = define_steps(app, asked.steps);
  const CLI::App* split = define_split(app, asked.split);
  const CLI::App* cut = define_cut(app, asked.cut);
  const CLI::App* loads = define_loads(app, asked.loads);
  const CLI::App* compare = define_compare(app, asked.compare);
  const CLI::App* fmt = define_fmt(app, asked.fmt);
  const CLI::App* units = define_units(app, asked.units);
  const CLI::App* start = define_new(app, asked.start);
  const CLI::App* watch = define_watch(app, asked.watch);
  const CLI::App* packet = define_packet(app, asked.packet);
  const CLI::App* reference = define_reference(app, asked.reference);
  const CLI::App* explain = define_explain(app, asked.explain);
  if (!arguments.empty() && !arguments.front().starts_with('-') &&
      app.get_subcommands([&](const CLI::App* verb) { return verb->get_name() == arguments.front(); })
          .empty()) {
    err << "berthwright: no verb is called " << printable(arguments.front(), every_character)
        << "; the verbs are new, check, draw, heater, steps, split, cut, loads, compare, packet, fmt, "
           "convert-units, watch and explain\n";
    return exit_usage;
  }
  try {
    app.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
  } catch (const CLI::ParseError& error) {
    std::ostringstream faults;
    const bool fine = app.exit(error, out, faults) == 0;
    // The faults repeat what was typed, or what a file name brought in.
    std::istringstream lines(faults.str());
    for (std::string line; std::getline(lines, line);) err << printable(line, every_character) << '\n';
    return fine ? exit_fine : exit_usage;
  }
  if (check->parsed()) return run_check(asked.check, out, err);
  if (draw->parsed()) return run_draw(asked.draw, out, err);
  if (heater->parsed()) return run_heater(asked.heater, out, err);
  if (steps->parsed()) return run_steps(asked.steps, out, err);
  if (split->parsed()) return run_split(asked.split, out, err);
  if (cut->parsed()) return run_cut(asked.cut, out, err);
  if (loads->parsed()) return run_loads(asked.loads, out, err);
  if (compare->parsed()) return run_compare(asked.compare, out, err);
  if (fmt->parsed()) return run_fmt(asked.fmt, out, err);
  if (units->parsed()) return run_units(asked.units, out, err);
  if (start->parsed()) return run_new(asked.start, out, err);
  if (watch->parsed()) return run_watch(asked.watch, out, err);
  if (packet->parsed()) return run_packet(asked.packet, out, err);
  if (reference->parsed()) return run_reference(asked.reference, out, err);
  return explain->parsed() ? run_explain(asked.explain, out, err) : exit_usage;
}

}  // namespace

int run(const std::vector<std::string>& arguments, std::ostream& out, std::ostream& err) {
  try {
    const int code = dispatched(arguments, out, err);
    out.flush();
    if (out) return code;
    err << "berthwright: the result could not be written to standard output\n";
    return exit_write;
  } catch (const std::exception& error) {
    err << "berthwright: a fault of our own, not of your plan: " << error.what() << "\n"
        << "Please report it with the plan file that shows it.\n";
    return exit_own_fault;
  }
}

}  // namespace berthwright
