#include "write/pdf_tags.h"

#include <stdexcept>

#define POINTERHOLDER_TRANSITION 4  // the guest's own pointers are the standard's
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>

namespace berthwright {
namespace {

// Gives every figure below `element` its words, in reading order.
void name_figures(QPDFObjectHandle element, const std::vector<std::string>& words, std::size_t& next) {
  if (element.isArray()) {
    for (int i = 0; i < element.getArrayNItems(); ++i) name_figures(element.getArrayItem(i), words, next);
    return;
  }
  if (!element.isDictionary() || !element.hasKey("/S")) return;
  if (element.getKey("/S").isNameAndEquals("/Figure")) {
    if (next >= words.size()) throw std::logic_error("a PDF file with more figures than were drawn");
    element.replaceKey("/Alt", QPDFObjectHandle::newUnicodeString(words[next]));
    ++next;
  }
  if (element.hasKey("/K")) name_figures(element.getKey("/K"), words, next);
}

// One document around the sections of the pages, as readers expect it.
void put_in_document(QPDF& file, QPDFObjectHandle tree) {
  QPDFObjectHandle pages = tree.getKey("/K");
  if (!pages.isArray()) pages = QPDFObjectHandle::newArray({pages});
  QPDFObjectHandle document =
      file.makeIndirectObject(QPDFObjectHandle::parse("<< /Type /StructElem /S /Document >>"));
  document.replaceKey("/P", tree);
  document.replaceKey("/K", pages);
  for (int i = 0; i < pages.getArrayNItems(); ++i) pages.getArrayItem(i).replaceKey("/P", document);
  tree.replaceKey("/K", document);
}

}  // namespace

std::string with_tags(const std::string& pdf, const PdfTags& tags) {
  QPDF file;
  file.processMemoryFile("drawings", pdf.data(), pdf.size());
  QPDFObjectHandle root = file.getRoot();
  root.replaceKey("/Lang", QPDFObjectHandle::newUnicodeString(tags.language));
  root.replaceKey("/ViewerPreferences",
                  QPDFObjectHandle::parse("<< /PrintScaling /None /DisplayDocTitle true >>"));
  std::size_t named = 0;
  if (root.hasKey("/StructTreeRoot")) {
    put_in_document(file, root.getKey("/StructTreeRoot"));
    name_figures(root.getKey("/StructTreeRoot").getKey("/K"), tags.figures, named);
  }
  if (named != tags.figures.size()) throw std::logic_error("a PDF file with fewer figures than were drawn");
  QPDFObjectHandle info = file.getTrailer().getKey("/Info");
  for (const char* date : {"/CreationDate", "/ModDate"})
    if (info.isDictionary()) info.removeKey(date);
  QPDFWriter writer(file);
  writer.setOutputMemory();
  writer.setDeterministicID(true);
  writer.setObjectStreamMode(qpdf_o_generate);
  writer.write();
  const auto bytes = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char*>(bytes->getBuffer()), bytes->getSize()};
}

}  // namespace berthwright
