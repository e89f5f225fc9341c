#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include <berthwright/solve/answer.h>
#include <berthwright/solve/convert/steps.h>
#include <berthwright/view/scene.h>

#include "view/on_screen.h"

namespace berthwright {

// What a browser is shown of a plan while it is being written: values that point into nothing.

/// A line of the plan file, and what stands there: "Heater", "Heater by night".
struct FileLine {
  std::size_t line = 0;
  std::string what;
};

struct ScreenFinding {
  std::string title;  ///< of its rule
  Status status = Status::unknown;
  Weight weight = Weight::advice;
  std::string configuration;  ///< id; empty: holds for the trailer
  std::string words;          ///< what to do where something is not met, then what was found; sentences
  std::vector<FileLine> lines;
  std::vector<Point> where;  ///< its place, or both nearest points, from above; may be empty
};

struct ScreenFindings {
  std::string title;  ///< of the plan
  std::string shop;   ///< whose work it is, and for whom
  std::string verdict;
  std::string caution;
  std::vector<ScreenFinding> list;
};
ScreenFindings screen_findings(const Plan& plan, const Answer& answer);

/// An SVG and its name, which is another one as soon as a byte of it is.
struct Picture {
  std::string name;
  std::string title;
  std::string description;
  PaperLength width;
  PaperLength height;
  std::shared_ptr<const std::string> bytes;
};
Picture picture_of(const Sheet& sheet);

/// Where a finding is marked on a sheet.
struct ScreenPin {
  std::size_t finding = 0;  ///< from 0
  std::vector<PaperPoint> at;
};
struct ScreenSheet {
  std::string key;   ///< the same from save to save: "day", "day-sections", "day-sections.2"
  std::string name;  ///< its title without the plan's
  Picture picture;
  std::vector<ScreenPin> pins;
};

/// The plans of `sheets`, which may be those of `plan_sheets` or the first of all, with every finding of `answer`
/// that has a place on them.
std::vector<ScreenSheet> screen_plans(const Plan& plan, const Answer& answer, const std::vector<PlanSheet>& sheets);
/// Sheets without marks; keys do not repeat those of `before`.
std::vector<ScreenSheet> screen_sheets(const Plan& plan, const std::vector<Sheet>& sheets,
                                       const std::vector<ScreenSheet>& before);

struct ScreenStage {
  std::vector<std::string> words;
  Picture above;
  Picture raised;
};
struct ScreenConversion {
  std::string key;
  std::string heading;              ///< "From day to night: 8 steps"
  std::vector<std::string> words;   ///< where there is no order: what keeps it; else how few it could be
  std::vector<ScreenStage> stages;  ///< the start, then after each step; empty where there is no order
};

ScreenConversion screen_conversion(const Plan& plan, const Conversion& conversion);

/// A part of what is shown, and the save that it is of; 0: there is none yet.
template <class T>
struct Shown {
  std::size_t save = 0;
  std::shared_ptr<const T> value;
};

/// All that is shown at one time.
struct WatchBoard {
  std::string file;           ///< as it was named
  std::uint64_t edition = 1;  ///< grows whenever anything else here changes
  std::size_t save = 0;       ///< how often the file was read
  std::shared_ptr<const std::string> text;
  Problems problems;      ///< of that save; with faults all else is of an earlier one
  std::string own_fault;  ///< not empty: we failed over that save
  Shown<ScreenFindings> findings;
  Shown<std::vector<ScreenSheet>> plans;
  Shown<std::vector<ScreenSheet>> others;
  Shown<std::vector<ScreenConversion>> conversions;
};

/// The whole page as HTML; its script, style and pictures are at addresses of their own ("/watch.js",
/// "/watch.css", "/NAME.svg"). Everything that a person wrote is escaped.
std::string watch_page(const WatchBoard& board);

std::string_view watch_style();
std::string_view watch_script();

}  // namespace berthwright
