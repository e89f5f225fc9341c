#include "write/packet_page.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <set>

#include "exact/sha256.h"
#include "support/convert_trailers.h"
#include "support/demos.h"
#include "support/plan_builder.h"
#include "support/xml_nesting.h"
#include "view/packet_parts.h"
#include "view/packet_words.h"
#include "write/html.h"

namespace berthwright {
namespace {

/// A plan with all that a packet draws on.
struct HandedOver {
  explicit HandedOver(const TrailerText& text) : HandedOver(text.plan()) {}
  explicit HandedOver(Plan made)
      : plan(std::move(made)),
        answer(answered(plan).value()),
        heaters(heater_places(plan, {}).value()),
        ways(conversions(plan).value()),
        cut(covers(plan, plan->sewing).value()),
        loads(loads_of(plan)) {}
  HandedOver(const HandedOver&) = delete;
  HandedOver& operator=(const HandedOver&) = delete;

  Packet packet() const { return buyer_packet({plan, answer, heaters, ways, cut, loads}); }
  std::string shops_page() const {
    return packet_page(shop_packet({plan, answer, heaters, ways, cut, loads}));
  }
  std::string page() const { return packet_page(packet()); }

  Plan plan;
  Answer answer;
  std::vector<HeaterPlaces> heaters;
  std::vector<Conversion> ways;
  std::vector<Cover> cut;
  std::vector<Loads> loads;
};

std::size_t count_of(const std::string& text, std::string_view words) {
  std::size_t count = 0;
  for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) ++count;
  return count;
}

std::string within(const std::string& text, const std::string& tag) {
  const std::size_t from = text.find("<" + tag + ">") + tag.size() + 2;
  return text.substr(from, text.find("</" + tag + ">", from) - from);
}

const std::string& dinette_page() {
  static const std::string page = [] {
    TrailerText text = dinette_with_cushions();
    text.beds = {R"({"id": "bed", "name": "Dinette bed", "configuration": "night",
                     "pieces": ["left seat", "right seat", "left back", "right back"], "people": [{"name": "Owner"}]})"};
    return HandedOver(text).page();
  }();
  return page;
}

TEST(PacketPage, LetsNothingRunButItsOwnScriptAndStyle) {
  const std::string& page = dinette_page();
  EXPECT_EQ(count_of(page, "<script"), 1U);
  EXPECT_EQ(count_of(page, "<style"), 1U);
  EXPECT_NE(page.find("content=\"default-src 'none'; script-src '" + sha256_source(within(page, "script")) +
                      "'; style-src '" + sha256_source(within(page, "style")) +
                      "'; base-uri 'none'; form-action 'none'\""),
            std::string::npos);
  for (const char* asking : {" style=", " src=", " onclick=", "@import", "url(", "https:"})
    EXPECT_EQ(page.find(asking), std::string::npos) << asking;
  for (std::size_t at = page.find("href=\""); at != std::string::npos; at = page.find("href=\"", at + 1))
    EXPECT_EQ(page[at + 6], '#') << page.substr(at, 40);
}

TEST(PacketPage, IsNestedAndQuotedAsItMustBe) {
  std::string page = dinette_page();
  for (const char* tag : {"script", "style"}) {
    const std::string inside = within(page, tag);
    page.erase(page.find(inside), inside.size());
  }
  page.erase(0, page.find('\n') + 1);
  EXPECT_EQ(xml_fault(page), "");
}

TEST(PacketPage, ShowsEveryStepOnceWithItsWay) {
  const std::string& page = dinette_page();
  const TrailerText text = dinette_with_cushions();
  const Plan plan = text.plan();
  std::size_t steps = 0;
  for (const Conversion& way : conversions(plan).value()) steps += way.steps.size();
  ASSERT_GT(steps, 4U);
  EXPECT_EQ(count_of(page, " data-way=\""), steps);
  EXPECT_EQ(count_of(page, "<h4>At the start</h4>"), 2U);
  EXPECT_EQ(count_of(page, "<h4>Step "), steps);
}

TEST(PacketPage, RefersToNoShapeThatItDoesNotHave) {
  const std::string& page = dinette_page();
  std::size_t uses = 0;
  for (std::size_t at = page.find("<use href=\"#"); at != std::string::npos;
       at = page.find("<use href=\"#", at + 1)) {
    const std::string id = page.substr(at + 12, page.find('"', at + 12) - at - 12);
    EXPECT_EQ(count_of(page, "id=\"" + id + "\""), 1U) << id;
    ++uses;
  }
  EXPECT_GT(uses, 50U);
}

TEST(PacketPage, PartsNoMeasureAtTheEndOfALine) {
  EXPECT_EQ(in_sentence("short by 1' 0 11/16 of 12 pieces"), "short by 1&#39;\u00a00\u00a011/16 of 12 pieces");
  EXPECT_EQ(in_sentence("2 of 38 1/2 x 4"), "2 of 38\u00a01/2 x 4");
}

// Without the isolation "A من ب 5" is shown with the 5 at the left of what is Arabic, and ≥ as ≤ (Unicode
// Standard Annex 9, rules W2 and L4; from memory, not re-read).
TEST(PacketPage, IsolatesNamesFromTheFiguresBesideThem) {
  EXPECT_EQ(in_sentence("From باب الخروج 5\" ≥ 3\" to מיטה, <b>."),
            "From <bdi>باب الخروج</bdi> 5&quot; ≥ 3&quot; to <bdi>מיטה</bdi>, &lt;b&gt;.");
  EXPECT_EQ(in_sentence("باب 2-أ"), "<bdi>باب 2-أ</bdi>") << "figures within a name are of it";
  EXPECT_EQ(in_sentence("باب 2 3\""), "<bdi>باب</bdi> 2 3&quot;");
  EXPECT_EQ(in_sentence("折りたたみ機 5\""), "折りたたみ機 5&quot;");
  EXPECT_EQ(in_sentence(""), "");
}

TEST(PacketPage, LiesAsAScriptDoesOnlyWhereTheWordsAreAllThePlans) {
  TrailerText text = dinette();
  text.more = R"("owner": "عائلة الحسيني", "notes": ["ملاحظة", "Second."], )";
  text.pieces.front().replace(text.pieces.front().find("\"kind\""), 0, R"("name": "طاولة", )");
  const std::string page = HandedOver(text).page();
  EXPECT_EQ(count_of(page, " dir=\"auto\""), 3U) << "the title and two notes";
  EXPECT_NE(page.find("<h1 dir=\"auto\">"), std::string::npos);
  EXPECT_NE(page.find("<li dir=\"auto\">ملاحظة</li>"), std::string::npos);
  EXPECT_NE(page.find("for <bdi>عائلة الحسيني</bdi>"), std::string::npos);
  EXPECT_GT(count_of(page, "<bdi>طاولة</bdi>"), 5U);
}

TEST(PacketPage, WritesWhatAPersonWroteAsText) {
  TrailerText text = dinette();
  text.more =
      R"("shop": "</style><img src=x onerror=alert(1)>", "owner": "\"'><b>", "notes": ["<svg onload=alert(2)>"], )";
  text.pieces.front().replace(text.pieces.front().find("\"kind\""), 0,
                              R"("name": "</script><script>alert(3)//", )");
  const std::string page = HandedOver(text).page();
  EXPECT_EQ(count_of(page, "<script"), 1U);
  EXPECT_EQ(count_of(page, "<img"), 0U);
  EXPECT_EQ(page.find("<svg onload"), std::string::npos);
  EXPECT_EQ(page.find("<b>\""), std::string::npos);
  EXPECT_NE(page.find("&lt;/script&gt;&lt;script&gt;alert(3)//"), std::string::npos);
  EXPECT_NE(page.find("for &quot;&#39;&gt;&lt;b&gt;"), std::string::npos);
  EXPECT_NE(page.find("&lt;svg onload=alert(2)&gt;"), std::string::npos);
}

TEST(PacketPage, ShowsWritingOfEveryDirectionAndLongNotes) {
  TrailerText text = dinette();
  std::string notes;
  for (int i = 0; i < 10; ++i)
    notes += (i == 0 ? "\"" : ", \"") + std::string(1999, 'a') + std::to_string(i) + "\"";
  text.more = R"("owner": "عائلة الحسيني", "notes": [)" + notes + "], ";
  text.pieces.front().replace(text.pieces.front().find("\"kind\""), 0, R"("name": "折りたたみ机", )");
  const std::string page = HandedOver(text).page();
  EXPECT_NE(page.find("عائلة الحسيني"), std::string::npos);
  EXPECT_NE(page.find("折りたたみ机"), std::string::npos);
  for (int i = 0; i < 10; ++i)
    EXPECT_NE(page.find(std::string(1999, 'a') + std::to_string(i) + "</li>"), std::string::npos) << i;
}

TEST(PacketPage, SaysWhatThePlanDoesNotHave) {
  const std::string page = HandedOver(dinette()).page();
  for (const PacketWord missing : {PacketWord::no_bed, PacketWord::no_cushion, PacketWord::no_heat,
                                   PacketWord::no_alarm, PacketWord::no_notes})
    EXPECT_NE(page.find(word(missing, English::american)), std::string::npos)
        << word(missing, English::american);
  TrailerText stuck = dinette();
  stuck.fixtures.push_back(
      R"({"id": "roof", "kind": "locker", "length": 120, "width": 76, "at": {"rear": 0, "left": 0}, "base": 28, "top": 70})");
  const std::string none = HandedOver(stuck).page();
  EXPECT_EQ(none.find("class=\"way\""), std::string::npos);
  EXPECT_NE(none.find("From day to night: none"), std::string::npos);
}

// The dinette, its night first and its day under another name.
Plan dinette_with_a_lounge() {
  TrailerText text = dinette_with_cushions();
  text.beds = {R"({"id": "bed", "name": "Dinette bed", "configuration": "night",
                   "pieces": ["left seat", "right seat", "left back", "right back"]})"};
  text.day.swap(text.night);
  std::string moved = text.json();
  moved.replace(moved.find("\"night\": ["), 8, "\"lounge\": ");
  moved.replace(moved.find("\"day\": ["), 6, "\"night\": ");
  return plan_from(moved);
}

TEST(PacketPage, TakesForTheDayWhatHasNoBed) {
  const std::string page = HandedOver(dinette_with_a_lounge()).page();
  const std::size_t glance = page.find("<section id=\"glance\">");
  const std::string at_a_glance = page.substr(glance, page.find("</section>", glance) - glance);
  EXPECT_NE(at_a_glance.find("<h3>In lounge</h3>"), std::string::npos);
  EXPECT_EQ(at_a_glance.find("<h3>By night</h3>"), std::string::npos);
  EXPECT_EQ(count_of(page, "class=\"way\""), 2U);
}

TEST(PacketPage, ExplainsPicturesOfStepsOnlyWhereThereAreSome) {
  const std::string hint = word(PacketWord::change_hint, English::american);
  EXPECT_EQ(count_of(dinette_page(), hint), 1U);
  TrailerText still = dinette();
  still.night = still.day;
  const std::string page = HandedOver(still).page();
  EXPECT_EQ(count_of(page, hint), 0U);
  EXPECT_EQ(count_of(page, word(PacketWord::moving_hint, English::american)), 0U);
}

// "Heater to Left seat: A2: 5 ft" → A2.
std::vector<std::string> tags_among(const std::string& words) {
  static const std::regex tag("\\bA[0-9]+\\b");
  return {std::sregex_token_iterator(words.begin(), words.end(), tag), std::sregex_token_iterator()};
}

TEST(PacketPage, NumbersItsAlertsAsItsDrawingsDo) {
  std::size_t drawn = 0;
  for (const char* name : {"sanderling", "nuthatch"}) {
    const Answered& made = answered_demo(name);
    const std::vector<Cover> none;
    const Packet packet = buyer_packet({made.plan, made.answer, {}, {}, none});
    std::string listed;
    for (const PacketSection& section : packet.sections)
      for (const PacketBlock& block : section.blocks) {
        if (const PacketList* list = std::get_if<PacketList>(&block);
            list != nullptr && section.id == "alerts")
          for (const std::string& item : list->items) listed += item + "\n";
        const PacketViews* views = std::get_if<PacketViews>(&block);
        if (views == nullptr) continue;
        for (const PacketKey& key : views->keys)
          for (const std::string& tag : tags_among(key.words)) {
            EXPECT_NE(listed.find(tag + ": "), std::string::npos) << key.words;
            ++drawn;
          }
      }
    EXPECT_TRUE(listed.starts_with("A1: ")) << listed;
    const std::vector<std::string> tags = tags_among(listed);
    EXPECT_EQ(std::set<std::string>(tags.begin(), tags.end()).size(), tags.size()) << listed;
  }
  EXPECT_GT(drawn, 1U);
}

TEST(PacketPage, SpeaksBothKindsOfEnglish) {
  TrailerText text = dinette();
  const std::string american = HandedOver(text).page();
  text.more = R"("english": "british", )";
  const std::string british = HandedOver(text).page();
  EXPECT_NE(american.find("<html lang=\"en-US\""), std::string::npos);
  EXPECT_NE(american.find("This goes home with the trailer."), std::string::npos);
  EXPECT_NE(british.find("<html lang=\"en-GB\""), std::string::npos);
  EXPECT_NE(british.find("This goes home with the caravan."), std::string::npos);
  for (int i = 0; i <= static_cast<int>(PacketWord::on_paper); ++i)
    for (const English english : {English::american, English::british}) {
      const std::string words = word(static_cast<PacketWord>(i), english);
      EXPECT_FALSE(words.empty()) << i;
      EXPECT_EQ(words.find('['), std::string::npos) << words;
    }
}

// Two backs of one size, two seats of another: counted together. 38 x 22 and 38 x 16 in, foam half an inch
// over: 38 1/2 x 22 1/2 and 38 1/2 x 16 1/2.
TEST(PacketPage, OfTheShopCountsEqualSizesTogether) {
  const std::string page = HandedOver(dinette_with_cushions()).shops_page();
  EXPECT_NE(page.find("2 of 38\u00a01/2&quot; x 22\u00a01/2&quot; x 4&quot;"), std::string::npos);
  EXPECT_NE(page.find("2 of 38\u00a01/2&quot; x 16\u00a01/2&quot; x 4&quot;"), std::string::npos);
  EXPECT_NE(page.find("1 of 37\u00a03/4&quot; x 31\u00a03/4&quot; x 3/4&quot;"), std::string::npos)
      << "the table";
  EXPECT_EQ(count_of(page, "<section id=\"parts\">"), 1U);
  EXPECT_EQ(page.find("class=\"way\""), std::string::npos);
}

// Zips along edges of 38 in and 3 in round each corner, but not onto the end of a back that is seen:
// 38 + 3 + 3 = 44 and 38 + 3 = 41.
TEST(PacketPage, OfTheShopLeavesOutNothingThatIsBought) {
  TrailerText text = dinette_with_cushions();
  text.more = R"("sewing": {"batting": true, "fabric": {"name": "Canvas", "width": 54}}, )";
  const std::string page = HandedOver(text).shops_page();
  const std::size_t at = page.find("<section id=\"purchase\">");
  const std::string bought = page.substr(at, page.find("</section>", at) - at);
  EXPECT_NE(bought.find("<th scope=\"row\">Zipper</th>"), std::string::npos) << bought;
  EXPECT_NE(bought.find(">2 of 44&quot; (1117.6 mm); 2 of 41&quot; (1041.4 mm)<"), std::string::npos)
      << bought;
  EXPECT_NE(bought.find("<th scope=\"row\">Batting</th>"), std::string::npos) << bought;
  EXPECT_NE(bought.find("<th scope=\"row\">Fabric</th><td data-head=\"How much\">not added up"),
            std::string::npos)
      << bought;
  EXPECT_NE(bought.find("<th scope=\"row\">All foam together</th><td data-head=\"How much\">unknown</td>"),
            std::string::npos)
      << bought;
}

std::string section_of(const std::string& page, const std::string& id) {
  const std::size_t at = page.find("<section id=\"" + id + "\">");
  return at == std::string::npos ? "" : page.substr(at, page.find("</section>", at) - at);
}

// 60 of 1000 lb are 6 %.
TEST(PacketPage, TellsLoadsThatAreNotMetBeforeEverythingElse) {
  TrailerText text;
  const auto weighed = [](const std::string& coupling, const std::string& axle) {
    return R"("chassis": {"coupling": 40, "axle": 70, "weighed": {"coupling": ")" + coupling +
           R"( lb", "axle": ")" + axle + R"( lb"}}, )";
  };
  const std::string words = "The share on the coupling is ";
  text.more = weighed("60", "940");
  const HandedOver light(text);
  EXPECT_NE(section_of(light.page(), "alerts").find(words), std::string::npos);
  EXPECT_NE(section_of(light.shops_page(), "open").find(words), std::string::npos);
  text.more = weighed("120", "880");
  const HandedOver within(text);
  EXPECT_EQ(section_of(within.page(), "alerts").find(words), std::string::npos);
  EXPECT_EQ(section_of(within.shops_page(), "open").find(words), std::string::npos);
}

// Nothing that draws is moved, so the supply is as by day; what the room holds is, and so its numbers differ.
TEST(PacketPage, TellsNumbersThatAreTheSameOnce) {
  TrailerText text = dinette();
  text.road = text.night;
  text.more = R"("supply": {"volts": 120, "circuits": [{"id": "c", "name": "Galley", "breaker": 15,
                 "loads": [{"name": "Kettle", "watts": 900}]}]}, "chassis": {"coupling": 40, "axle": 70,
                 "weighed": {"coupling": "120 lb", "axle": "880 lb", "with": "everything",
                             "configuration": "road"}}, )";
  const std::string numbers = section_of(HandedOver(text).page(), "numbers");
  EXPECT_EQ(count_of(numbers, "<th scope=\"row\">Galley</th>"), 1U) << numbers;
  EXPECT_EQ(count_of(numbers, "<p>Supply: as by day.</p>"), 2U);
  EXPECT_EQ(count_of(numbers, "<h4>Weight and balance</h4>"), 2U);
  EXPECT_EQ(count_of(numbers, "<p>Weight and balance: as by night.</p>"), 1U) << "the road";
  EXPECT_NE(numbers.find("met: all on, 7.5 A (900 W): within."), std::string::npos);
  EXPECT_NE(numbers.find("of a bar: what is asked"), std::string::npos) << "the key";
  EXPECT_LT(numbers.find("<h3>By day</h3>"), numbers.find("<h3>By night</h3>"));
  EXPECT_LT(numbers.find("<h3>By night</h3>"), numbers.find("<h3>On the road</h3>"));
}

TEST(LoadsDayFirst, PutTheRoadLast) {
  const Plan plan = small_plan(R"("configurations": {"road": [], "night": [], "day": []})");
  const std::vector<Loads> all = loads_of(plan);
  std::string order;
  for (const Loads* one : loads_day_first(all)) order += one->configuration->id.text() + " ";
  EXPECT_EQ(order, "day night road ");
}

TEST(PacketPage, CallsAVanAVan) {
  TrailerText text = dinette();
  text.more = R"("english": "british", "chassis": {"towed": false}, )";
  const HandedOver of(text);
  const std::string page = of.page();
  for (const char* words : {"caravan", "towed, coupling", "noseweight", "on the coupling"})
    EXPECT_EQ(page.find(words), std::string::npos) << words;
  EXPECT_NE(page.find("This goes home with the van."), std::string::npos);
  EXPECT_NE(page.find("Weigh the van loaded as it is driven, each axle:"), std::string::npos);
  EXPECT_EQ(of.shops_page().find("caravan"), std::string::npos);
}

TEST(PacketPage, OfTheShopHeadsNothingWithUnknown) {
  TrailerText text = dinette_with_cushions();
  const std::string bought = section_of(HandedOver(text).shops_page(), "purchase");
  EXPECT_EQ(bought.find("<th scope=\"row\">unknown"), std::string::npos);
  EXPECT_EQ(bought.find("Foam unknown"), std::string::npos);
  EXPECT_NE(bought.find("of a panel that the plan does not give</th>"), std::string::npos) << bought;
  EXPECT_NE(bought.find("Foam of a grade that the plan does not give</th>"), std::string::npos) << bought;
}

// 120 of 1000 lb are 12 %.
TEST(PacketPage, HoldsTheNumbersForBoth) {
  TrailerText text = dinette();
  EXPECT_NE(HandedOver(text).page().find("The plan says too little of weights"), std::string::npos);
  text.more =
      R"("chassis": {"coupling": 40, "axle": 70, "weighed": {"coupling": "120 lb", "axle": "880 lb"}}, )";
  const HandedOver weighed(text);
  for (const std::string& page : {weighed.page(), weighed.shops_page()}) {
    const std::size_t at = page.find("<section id=\"numbers\">");
    ASSERT_NE(at, std::string::npos);
    const std::string numbers = page.substr(at, page.find("</section>", at) - at);
    EXPECT_NE(numbers.find("no figure here replaces a scale"), std::string::npos);
    EXPECT_NE(numbers.find("Share on the coupling</text>"), std::string::npos) << numbers;
    EXPECT_NE(numbers.find("<h3>By night</h3>"), std::string::npos);
    EXPECT_EQ(numbers.find("The plan says too little"), std::string::npos);
  }
}

TEST(PacketPage, IsTheSameEachTime) {
  TrailerText text = dinette();
  EXPECT_TRUE(HandedOver(text).page() == HandedOver(text).page());
}

}  // namespace
}  // namespace berthwright
