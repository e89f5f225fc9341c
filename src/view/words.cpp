#include <berthwright/view/words.h>

#include <array>
#include <stdexcept>

namespace berthwright {
namespace {

struct Entry {
  Term term;
  std::string_view american;
  std::string_view british;
};

constexpr std::array entries{
    Entry{Term::trailer, "trailer", "caravan"},
    Entry{Term::curb_side, "curb side", "nearside"},
    Entry{Term::street_side, "street side", "offside"},
    Entry{Term::wheel_arch, "wheel well", "wheel arch"},
    Entry{Term::cleat, "cleat", "bearer"},
    Entry{Term::filler, "filler", "infill"},
    Entry{Term::counter, "counter", "worktop"},
    Entry{Term::cooktop, "cooktop", "hob"},
    Entry{Term::outlet, "outlet", "socket"},
    Entry{Term::locker, "overhead cabinet", "locker"},
    Entry{Term::front, "front", "front"},
    Entry{Term::rear, "rear", "rear"},
    Entry{Term::left, "left", "left"},
    Entry{Term::right, "right", "right"},
    Entry{Term::met, "met", "met"},
    Entry{Term::close, "close", "close"},
    Entry{Term::not_met, "not met", "not met"},
    Entry{Term::unknown, "unknown", "unknown"},
    Entry{Term::alert, "alert", "alert"},
    Entry{Term::advice, "advice", "advice"},
    Entry{Term::information, "information", "information"},
};

}  // namespace

std::string_view word(Term term, English english) {
  for (const Entry& entry : entries)
    if (entry.term == term) return english == English::american ? entry.american : entry.british;
  throw std::logic_error("a term without words");
}

Term term_of(Status status) {
  switch (status) {
    case Status::met:
      return Term::met;
    case Status::close:
      return Term::close;
    case Status::not_met:
      return Term::not_met;
    case Status::unknown:
      return Term::unknown;
  }
  throw std::logic_error("Status out of range");
}

Term term_of(Weight weight) {
  switch (weight) {
    case Weight::alert:
      return Term::alert;
    case Weight::advice:
      return Term::advice;
    case Weight::information:
      return Term::information;
  }
  throw std::logic_error("Weight out of range");
}

Term term_of(Wall wall) {
  switch (wall) {
    case Wall::front:
      return Term::front;
    case Wall::rear:
      return Term::rear;
    case Wall::left:
      return Term::left;
    case Wall::right:
      return Term::right;
  }
  throw std::logic_error("Wall out of range");
}

std::string_view word(Fixture::Kind kind, English english) {
  switch (kind) {
    case Fixture::Kind::bench:
      return "bench";
    case Fixture::Kind::cabinet:
      return "cabinet";
    case Fixture::Kind::locker:
      return word(Term::locker, english);
    case Fixture::Kind::shelf:
      return "shelf";
    case Fixture::Kind::counter:
      return word(Term::counter, english);
    case Fixture::Kind::sink:
      return "sink";
    case Fixture::Kind::refrigerator:
      return english == English::american ? "refrigerator" : "fridge";
    case Fixture::Kind::heater:
      return "heater";
    case Fixture::Kind::furnace_outlet:
      return english == English::american ? "furnace outlet" : "warm-air outlet";
    case Fixture::Kind::oven:
      return "oven";
    case Fixture::Kind::cooktop:
      return word(Term::cooktop, english);
    case Fixture::Kind::outlet:
      return word(Term::outlet, english);
    case Fixture::Kind::smoke_alarm:
      return "smoke alarm";
    case Fixture::Kind::co_alarm:
      return "CO alarm";
    case Fixture::Kind::gas_alarm:
      return "gas alarm";
    case Fixture::Kind::light:
      return "light";
    case Fixture::Kind::tank:
      return "tank";
    case Fixture::Kind::battery:
      return "battery";
    case Fixture::Kind::leg:
      return "leg";
    case Fixture::Kind::ledge:
      return word(Term::cleat, english);
    case Fixture::Kind::wheel_arch:
      return word(Term::wheel_arch, english);
    case Fixture::Kind::protrusion:
      return "protrusion";
    case Fixture::Kind::curtain:
      return "curtain";
    case Fixture::Kind::wall:
      return "wall";
    case Fixture::Kind::guard_rail:
      return "guard rail";
  }
  throw std::logic_error("Fixture::Kind out of range");
}

std::string_view deferral(English english) {
  return english == English::american
             ? "Maker's instructions, local codes and licensed trades come first."
             : "Maker's instructions, local regulations and qualified trades come first.";
}

std::string_view caution_line(English english) {
  return english == English::american ? "Figures compared with the sources named, not a verdict. Maker's "
                                        "instructions, local codes and licensed "
                                        "trades come first. Measure before you cut."
                                      : "Figures compared with the sources named, not a verdict. Maker's "
                                        "instructions, local regulations and "
                                        "qualified trades come first. Measure before you cut.";
}

}  // namespace berthwright
