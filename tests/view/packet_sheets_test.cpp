#include "view/packet_sheets.h"

#include <gtest/gtest.h>

#include <algorithm>

#include <berthwright/view/sheets.h>

#include "support/convert_trailers.h"

namespace berthwright {
namespace {

/// A packet on paper, and all that it is made of.
struct OnPaper {
  explicit OnPaper(const TrailerText& text)
      : plan(text.plan()),
        answer(answered(plan).value()),
        ways(conversions(plan).value()),
        cut(covers(plan, plan->sewing).value()),
        loads(loads_of(plan)) {}
  OnPaper(const OnPaper&) = delete;
  OnPaper& operator=(const OnPaper&) = delete;

  PacketMatter matter() const { return {plan, answer, {}, ways, cut, loads}; }
  std::vector<Sheet> buyers() const { return packet_sheets(matter(), buyer_packet(matter())); }
  std::vector<Sheet> shops() const { return packet_sheets(matter(), shop_packet(matter())); }

  Plan plan;
  Answer answer;
  std::vector<Conversion> ways;
  std::vector<Cover> cut;
  std::vector<Loads> loads;
};

std::string lettering_of(const std::vector<Sheet>& sheets) {
  std::string words;
  for (const Sheet& sheet : sheets)
    for (const Group& group : sheet.groups)
      for (const Mark& mark : group.marks)
        if (const Text* text = std::get_if<Text>(&mark)) words += text->words + " ";
  return words;
}

bool has_sheet(const std::vector<Sheet>& sheets, const std::string& ending) {
  return std::ranges::any_of(sheets, [&](const Sheet& sheet) { return sheet.file.ends_with(ending); });
}

const OnPaper& packed_dinette() {
  static const OnPaper one([] {
    TrailerText text = dinette_with_cushions();
    text.more = R"("notes": ["Tighten the wheel nuts after the first 50 miles."], )";
    return text;
  }());
  return one;
}

TEST(PacketSheets, HoldTheBuyersWordsAndTheFullSheets) {
  const std::vector<Sheet> sheets = packed_dinette().buyers();
  EXPECT_TRUE(sheets.front().file.ends_with("-packet"));
  for (const char* ending :
       {"-day", "-day-to-night-steps", "-night-to-day-steps", "-cushions-key", "-night-ways"})
    EXPECT_TRUE(has_sheet(sheets, ending)) << ending;
  const std::string words = lettering_of(sheets);
  for (const char* said :
       {"This goes home with the", "Tighten the wheel nuts", "For the owner: name,", "What was measured"})
    EXPECT_NE(words.find(said), std::string::npos) << said;
  for (const Sheet& sheet : sheets)
    EXPECT_EQ(lettering_faults(sheet), std::vector<std::string>{}) << sheet.file;
}

TEST(PacketSheets, SayNothingOfTelephonesAndWhereTheStepsAre) {
  const std::string words = lettering_of(packed_dinette().buyers());
  for (const char* of_a_screen : {"telephone", "needs no network", "While it is on its way"})
    EXPECT_EQ(words.find(of_a_screen), std::string::npos) << of_a_screen;
  EXPECT_NE(words.find("See the sheets of its"), std::string::npos);
  EXPECT_NE(words.find("Drawn on a sheet of"), std::string::npos);
  EXPECT_NE(words.find("knows no more"), std::string::npos);
}

TEST(PacketSheets, HoldTheSheetsOfNumbersWhereThePlanSaysEnough) {
  EXPECT_FALSE(has_sheet(packed_dinette().buyers(), "-numbers"));
  TrailerText text = dinette();
  text.more = R"("chassis": {"coupling": 40, "axle": 70, "weighed": {"coupling": "120 lb", "axle": "880 lb"}}, )";
  const OnPaper weighed(text);
  EXPECT_TRUE(has_sheet(weighed.buyers(), "-night-numbers"));
  EXPECT_TRUE(has_sheet(weighed.shops(), "-day-numbers"));
}

TEST(PacketSheets, OfTheShopListPartsCutsAndGoods) {
  const std::vector<Sheet> sheets = packed_dinette().shops();
  EXPECT_TRUE(has_sheet(sheets, "-cushions-key"));
  EXPECT_FALSE(has_sheet(sheets, "-day-to-night-steps"));
  const std::string words = lettering_of(sheets);
  for (const char* said : {"Parts", "Cut sheets", "To buy, or to have", "Templates", "Open items"})
    EXPECT_NE(words.find(said), std::string::npos) << said;
}

}  // namespace
}  // namespace berthwright
