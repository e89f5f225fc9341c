#pragma once

#include "view/page.h"

namespace berthwright {

/// A sheet without its title block, which waits for the count of all sheets.
struct Draft {
  Sheet sheet;
  Page page;
  std::string drawing;  ///< "Night, sections"
  std::string subject;  ///< "over Rear bed"; may be empty
  std::string scale;
  std::string sides;   ///< how the drawing lies on the page; empty: as plans do
  std::string id;      ///< of the configuration
  std::string suffix;  ///< of the file's stem: "-sections"
};
Draft draft_of(const Plan& plan, const std::string& drawing, const std::string& scale, const Page& page);

/// The notes as sentences, behind the words that say what is drawn.
std::string description_of(std::string lead, const std::vector<Note>& notes);

/// A page, or more, for notes that found no room beside their drawing.
void add_notes_pages(std::vector<Draft>& drafts, const Plan& plan, const Draft& drawing,
                     std::vector<Note> rest);

/// Pages of nothing but notes.
struct TextPages {
  std::string drawing;  ///< as the title block calls them
  std::string id;       ///< of the file's stem
  std::string suffix;
};
void add_text_pages(std::vector<Draft>& drafts, const Plan& plan, const TextPages& pages, std::vector<Note> rest);

/// The drafts numbered in order, with file names and title blocks. std::logic_error where lettering meets
/// lettering.
std::vector<Sheet> finished(const Plan& plan, std::vector<Draft> drafts);

/// Letters and digits of an id, so that no name of a person's choosing becomes a path.
std::string plain_stem(const std::string& id);

/// What a person calls the configuration.
std::string name_of(const Configuration& configuration);

}  // namespace berthwright
