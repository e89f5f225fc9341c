#include <cairo-ft.h>
#include <cairo-pdf.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>
#include <stdexcept>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "exact/code_points.h"
#include "geometry/root.h"
#include "view/letter_widths.h"
#include "view/letters.h"
#include "write/pdf_tags.h"
#include "write/style.h"

namespace berthwright {
namespace {

constexpr double points_in_mm = 72 / 25.4;

double in_mm(PaperLength length) { return static_cast<double>(length.micrometres()) / 1000; }

template <auto destroy>
struct PdfDestroying {
  template <class T>
  void operator()(T* thing) const {
    destroy(thing);
  }
};
using PdfSurface = std::unique_ptr<cairo_surface_t, PdfDestroying<cairo_surface_destroy>>;
using PdfPen = std::unique_ptr<cairo_t, PdfDestroying<cairo_destroy>>;
using PdfFontFace = std::unique_ptr<cairo_font_face_t, PdfDestroying<cairo_font_face_destroy>>;
using PdfFontOptions = std::unique_ptr<cairo_font_options_t, PdfDestroying<cairo_font_options_destroy>>;

/// A font read from memory: the letters of the reader need its bytes for as long as they live.
class PdfFont {
 public:
  explicit PdfFont(const std::string& bytes) : bytes_(bytes) {
    if (FT_Init_FreeType(&library_) != 0) throw std::runtime_error("FreeType does not start");
    const auto* const data = reinterpret_cast<const FT_Byte*>(bytes_.data());
    if (FT_New_Memory_Face(library_, data, static_cast<FT_Long>(bytes_.size()), 0, &face_) != 0)
      face_ = nullptr;
  }
  PdfFont(const PdfFont&) = delete;
  PdfFont& operator=(const PdfFont&) = delete;
  ~PdfFont() {
    if (face_ != nullptr) FT_Done_Face(face_);
    FT_Done_FreeType(library_);
  }
  FT_Face face() const { return face_; }

  /// Has each letter the width with which the sheets were laid out?
  bool is_that_of_the_sheets() const {
    if (face_->units_per_EM != letter_units) return false;
    for (const LetterWidth& known : letter_widths) {
      const FT_UInt glyph = FT_Get_Char_Index(face_, known.letter);
      if (glyph == 0 || FT_Load_Glyph(face_, glyph, FT_LOAD_NO_SCALE) != 0) return false;
      if (face_->glyph->metrics.horiAdvance != known.units) return false;
    }
    return true;
  }

 private:
  std::string bytes_;
  FT_Library library_ = nullptr;
  FT_Face face_ = nullptr;
};

// The drawing library keeps letters beyond our own use of them, so the font goes when it lets go.
PdfFontFace font_face(std::unique_ptr<PdfFont> font) {
  static const cairo_user_data_key_t key{};
  PdfFontFace face(cairo_ft_font_face_create_for_ft_face(font->face(), FT_LOAD_NO_HINTING));
  const auto forget = [](void* held) { delete static_cast<PdfFont*>(held); };
  if (cairo_font_face_set_user_data(face.get(), &key, font.get(), forget) != CAIRO_STATUS_SUCCESS)
    throw std::runtime_error("no memory for a font");
  static_cast<void>(font.release());  // the drawing library holds it now
  return face;
}

struct PdfPoint {
  double x = 0;
  double y = 0;
  friend PdfPoint operator+(PdfPoint a, PdfPoint b) { return {a.x + b.x, a.y + b.y}; }
  friend PdfPoint operator-(PdfPoint a, PdfPoint b) { return {a.x - b.x, a.y - b.y}; }
  friend PdfPoint operator*(PdfPoint a, double times) { return {a.x * times, a.y * times}; }
};
PdfPoint pdf_point(PaperPoint p) { return {in_mm(p.x), in_mm(p.y)}; }

void curve(cairo_t* pen, PdfPoint a, PdfPoint b, PdfPoint c) {
  cairo_curve_to(pen, a.x, a.y, b.x, b.y, c.x, c.y);
}

// Two curves that meet at the apex, each of at most a quarter turn: off the arc by 3 parts in 10,000 at most.
// With the half chord h and the rise s, tan(turn / 4) = s / h; its half gives the reach of the handles.
void arc(cairo_t* pen, PdfPoint from, PdfPoint to, double radius, bool clockwise) {
  const PdfPoint chord = to - from;
  const double half_chord = length_of(chord.x, chord.y) / 2;
  if (half_chord == 0) return;
  const double depth = root(radius * radius - half_chord * half_chord);
  const double rise = radius - depth;
  if (rise <= 0) return cairo_line_to(pen, to.x, to.y);  // too flat to tell
  const PdfPoint along = chord * (0.5 / half_chord);
  // Clockwise as seen, y downward: the centre lies to the right of who goes along the chord.
  const PdfPoint inward = clockwise ? PdfPoint{-along.y, along.x} : PdfPoint{along.y, -along.x};
  const PdfPoint middle = (from + to) * 0.5;
  const PdfPoint centre = middle + inward * depth;
  const PdfPoint apex = middle - inward * rise;
  const double quarter = rise / half_chord;
  const double reach = radius * 4 / 3 * (root(1 + quarter * quarter) - 1) / quarter;
  const auto heading = [&](PdfPoint at) {
    const PdfPoint out = (at - centre) * (1 / radius);
    return clockwise ? PdfPoint{-out.y, out.x} : PdfPoint{out.y, -out.x};
  };
  curve(pen, from + heading(from) * reach, apex - along * reach, apex);
  curve(pen, apex + along * reach, to - heading(to) * reach, to);
}

int digit(char c) { return c <= '9' ? c - '0' : c - 'a' + 10; }

// "#0072b2"
void take_colour(cairo_t* pen, std::string_view colour) {
  const auto part = [&](std::size_t at) { return (digit(colour[at]) * 16 + digit(colour[at + 1])) / 255.0; };
  cairo_set_source_rgb(pen, part(1), part(3), part(5));
}

void draw(cairo_t* pen, const Path& path) {
  const Style style = style_of(path.ink);
  PdfPoint at = pdf_point(path.from);
  cairo_move_to(pen, at.x, at.y);
  for (const Stretch& stretch : path.stretches) {
    const PdfPoint to = pdf_point(stretch.to);
    if (stretch.radius == PaperLength{})
      cairo_line_to(pen, to.x, to.y);
    else
      arc(pen, at, to, in_mm(stretch.radius), stretch.clockwise);
    at = to;
  }
  if (path.closed) cairo_close_path(pen);
  if (path.closed && !style.fill.empty()) {
    take_colour(pen, style.fill);
    cairo_fill_preserve(pen);
  }
  if (style.width != PaperLength{}) {
    take_colour(pen, style.line);
    cairo_set_line_width(pen, in_mm(style.width));
    cairo_set_line_cap(pen, style.round_ends ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    std::array<double, 6> dash{};
    for (std::size_t i = 0; i < dash.size(); ++i) dash.at(i) = in_mm(style.dash.at(i));
    cairo_set_dash(pen, dash.data(), dash.front() > 0 ? static_cast<int>(dash.size()) : 0, 0);
    cairo_stroke_preserve(pen);
  }
  cairo_new_path(pen);
}

void draw(cairo_t* pen, const Patch& patch) {
  const PdfPoint low = pdf_point(patch.low);
  const PdfPoint high = pdf_point(patch.high);
  cairo_set_source_rgb(pen, 1, 1, 1);
  cairo_rectangle(pen, low.x, low.y, high.x - low.x, high.y - low.y);
  cairo_fill(pen);
}

// Bytes of one letter in UTF-8.
int bytes_in(char32_t letter) { return letter < 0x80 ? 1 : letter < 0x800 ? 2 : letter < 0x10000 ? 3 : 4; }

double part_before(Anchor anchor) {
  switch (anchor) {
    case Anchor::start:
      return 0;
    case Anchor::middle:
      return 0.5;
    case Anchor::end:
      return 1;
  }
  throw std::logic_error("Anchor out of range");
}

// Every letter where the advance table has it: the words are as wide as the sheet took them to be.
void draw(cairo_t* pen, FT_Face face, const Text& text) {
  const std::string words = printable(text.words, every_character);
  const double height = in_mm(text.height);
  const double left = in_mm(text_width(text.words, text.height)) * part_before(text.anchor);
  std::vector<cairo_glyph_t> glyphs;
  std::vector<cairo_text_cluster_t> clusters;
  std::int64_t units = 0;
  for (const char32_t letter : code_points(words).text) {
    glyphs.push_back(
        {FT_Get_Char_Index(face, letter), static_cast<double>(units) * height / letter_units - left, 0});
    clusters.push_back({bytes_in(letter), 1});
    units += advance_of(letter);
  }
  const PdfPoint at = pdf_point(text.at);
  const cairo_matrix_t upward{0, -1, 1, 0, at.x, at.y};
  cairo_save(pen);
  if (text.reads_upward)
    cairo_transform(pen, &upward);
  else
    cairo_translate(pen, at.x, at.y);
  cairo_set_font_size(pen, height);
  take_colour(pen, style_of(text.ink).line);
  cairo_show_text_glyphs(pen, words.data(), static_cast<int>(words.size()), glyphs.data(),
                         static_cast<int>(glyphs.size()), clusters.data(), static_cast<int>(clusters.size()),
                         static_cast<cairo_text_cluster_flags_t>(0));
  cairo_restore(pen);
}

std::string words_of(const Group& group) {
  std::string words = group.title;
  for (const Mark& mark : group.marks)
    if (const Text* text = std::get_if<Text>(&mark))
      words += (words == group.title ? ": " : " ") + text->words;
  return printable(plain_blanks(words), every_character);
}

/// Draws pages one after the other, keeping the words of their figures for the tags.
class PdfPages {
 public:
  PdfPages(cairo_surface_t* surface, PdfFontFace font, FT_Face face)
      : surface_(surface), font_(std::move(font)), face_(face) {}

  void add(const Sheet& sheet) {
    cairo_pdf_surface_set_size(surface_, in_mm(sheet.width) * points_in_mm,
                               in_mm(sheet.height) * points_in_mm);
    const PdfPen held(cairo_create(surface_));
    cairo_t* pen = held.get();
    cairo_scale(pen, points_in_mm, points_in_mm);
    cairo_set_font_face(pen, font_.get());
    const PdfFontOptions options(cairo_font_options_create());
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    cairo_set_font_options(pen, options.get());
    cairo_set_miter_limit(pen, 4);  // as in SVG
    cairo_tag_begin(pen, "Sect", nullptr);
    // The first figure tells what the whole sheet shows.
    std::string lead = sheet.title + ". " + sheet.description + " ";
    for (const Group& group : sheet.groups) {
      const bool lettering_alone = std::ranges::all_of(
          group.marks, [](const Mark& mark) { return std::holds_alternative<Text>(mark); });
      if (lettering_alone)
        add_lines(pen, group);
      else
        add_figure(pen, group, std::exchange(lead, {}));
    }
    cairo_tag_end(pen, "Sect");
    cairo_show_page(pen);
    if (cairo_status(pen) != CAIRO_STATUS_SUCCESS)
      throw std::runtime_error(std::string("drawing a page: ") + cairo_status_to_string(cairo_status(pen)));
  }
  const std::vector<std::string>& figures() const { return figures_; }

 private:
  void add_mark(cairo_t* pen, const Mark& mark) {
    if (const Text* text = std::get_if<Text>(&mark)) draw(pen, face_, *text);
    if (const Path* path = std::get_if<Path>(&mark)) draw(pen, *path);
    if (const Patch* patch = std::get_if<Patch>(&mark)) draw(pen, *patch);
  }
  void add_lines(cairo_t* pen, const Group& group) {
    for (const Mark& mark : group.marks) {
      cairo_tag_begin(pen, "P", nullptr);
      add_mark(pen, mark);
      cairo_tag_end(pen, "P");
    }
  }
  void add_figure(cairo_t* pen, const Group& group, const std::string& lead) {
    figures_.push_back(printable(plain_blanks(lead), every_character) + words_of(group));
    cairo_tag_begin(pen, "Figure", nullptr);
    for (const Mark& mark : group.marks) add_mark(pen, mark);
    cairo_tag_end(pen, "Figure");
  }

  cairo_surface_t* surface_;
  PdfFontFace font_;
  FT_Face face_;
  std::vector<std::string> figures_;
};

// Without what the whole file is called.
std::string bookmark_words(const Sheet& sheet, const std::string& file) {
  const std::string before = file + ": ";
  return sheet.title.starts_with(before) ? sheet.title.substr(before.size()) : sheet.title;
}

// PdfPages that go on with what the page before them began stand under its bookmark.
void add_bookmarks(cairo_surface_t* surface, const std::vector<Sheet>& sheets, const std::string& file) {
  int above = CAIRO_PDF_OUTLINE_ROOT;
  std::string last;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    const std::string words = bookmark_words(sheets[i], file);
    const std::string number = std::to_string(i + 1);
    const std::string line = printable(number + " " + words, every_character);
    const std::string link = "page=" + number;
    const int parent = words == last ? above : CAIRO_PDF_OUTLINE_ROOT;
    const int id = cairo_pdf_surface_add_outline(surface, parent, line.c_str(), link.c_str(),
                                                 static_cast<cairo_pdf_outline_flags_t>(0));
    if (words != last) above = id;
    last = words;
  }
}

cairo_status_t take_bytes(void* out, const unsigned char* data, unsigned int length) {
  static_cast<std::string*>(out)->append(reinterpret_cast<const char*>(data), length);
  return CAIRO_STATUS_SUCCESS;
}

void say_of_itself(cairo_surface_t* surface, const PdfTitle& about) {
  const auto say = [&](cairo_pdf_metadata_t what, const std::string& words) {
    if (!words.empty())
      cairo_pdf_surface_set_metadata(surface, what, printable(words, every_character).c_str());
  };
  say(CAIRO_PDF_METADATA_TITLE, about.title);
  say(CAIRO_PDF_METADATA_AUTHOR, about.author);
  say(CAIRO_PDF_METADATA_CREATOR, "Berthwright");
  // Else the clock is asked; the tags take it out again.
  say(CAIRO_PDF_METADATA_CREATE_DATE, "2000-01-01T00:00:00Z");
  say(CAIRO_PDF_METADATA_MOD_DATE, "2000-01-01T00:00:00Z");
}

Problem font_problem(std::string id, std::string message) {
  Problem problem;
  problem.id = std::move(id);
  problem.message = std::move(message);
  problem.allowed = "the file DejaVuSans.ttf, revision 2.37";
  problem.cure = "Install DejaVu Sans (Debian: fonts-dejavu-core).";
  return problem;
}

}  // namespace

Result<std::string> pdf(const std::vector<Sheet>& sheets, const PdfTitle& about, const std::string& font) {
  auto open = std::make_unique<PdfFont>(font);
  if (open->face() == nullptr)
    return font_problem("font.unreadable", "the font of the drawings cannot be read");
  if (!open->is_that_of_the_sheets())
    return font_problem("font.other", "the font's letters are not as wide as those of the drawings");
  const FT_Face face = open->face();
  std::string bytes;
  const PdfSurface surface(cairo_pdf_surface_create_for_stream(take_bytes, &bytes, 1, 1));
  say_of_itself(surface.get(), about);
  PdfPages pages(surface.get(), font_face(std::move(open)), face);
  for (const Sheet& sheet : sheets) pages.add(sheet);
  add_bookmarks(surface.get(), sheets, about.title);
  cairo_surface_finish(surface.get());
  if (const cairo_status_t status = cairo_surface_status(surface.get()); status != CAIRO_STATUS_SUCCESS)
    throw std::runtime_error(std::string("writing PDF: ") + cairo_status_to_string(status));
  return with_tags(bytes, {about.english == English::british ? "en-GB" : "en-US", pages.figures()});
}

}  // namespace berthwright
