#include <algorithm>
#include <array>
#include <cstdint>

#include <berthwright/exact/measure.h>
#include <berthwright/plan/stock.h>

#include "plan/decimal.h"
#include "plan/fields.h"
#include "plan/in_quotes.h"

namespace berthwright {
namespace {

constexpr std::array<Word<Unit>, 2> stock_units{{{"in", Unit::inch}, {"mm", Unit::millimetre}}};
constexpr std::array<Word<StockGoods>, 3> goods_words{
    {{"foam", StockGoods::foam}, {"board", StockGoods::board}, {"cloth", StockGoods::cloth}}};
constexpr std::array<Word<CutManner>, 2> manner_words{
    {{"through", CutManner::through}, {"free", CutManner::free}}};
constexpr std::array<Word<PartLay>, 3> lay_words{
    {{"any way", PartLay::quarters}, {"along the grain", PartLay::grain}, {"along the nap", PartLay::nap}}};

bool is_stock_version(const Node& root, Reading& reading) {
  const Node* node = root.find("berthwright_stock");
  if (node == nullptr || (node->kind == Node::Kind::number && node->text == "1")) return true;
  reading.add(*node, {.id = "stock.version",
                      .message = "this version of the stock format cannot be read here",
                      .found = found_at(*node),
                      .allowed = "the number 1",
                      .cure = "write \"berthwright_stock\": 1"});
  return false;
}

std::optional<std::int64_t> as_price(const Node& node, Reading& reading) {
  return as_decimal(node, reading, 2, "a price such as 89 or 89.50");
}

std::optional<int> as_stages(const Node& node, Reading& reading) {
  const std::optional<int> count = as_count(node, reading);
  if (!count || (*count >= 1 && *count <= 9)) return count;
  reading.add(node, {.id = "stock.stages",
                     .message = "no cutting order has so many stages",
                     .found = found_at(node),
                     .allowed = "1 to 9; without the field as many as are needed",
                     .cure = "write how many times the fence may be turned"});
  return std::nullopt;
}

/// A fault of one field of an object that was read.
void add_fault(Fields& fields, std::string_view name, Problem problem) {
  const Node* node = fields.find(name);
  const Node& at = node != nullptr ? *node : fields.node();
  problem.found = found_at(at);
  fields.reading().add(at, std::move(problem));
}

Rect read_defect(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a defect");
  const Length x = fields.required("from_end", as_length).value_or(Length{});
  const Length y = fields.required("from_edge", as_length).value_or(Length{});
  const Length length = fields.required("length", as_size).value_or(one_tick);
  const Length width = fields.required("width", as_size).value_or(one_tick);
  fields.finish();
  return {{x, y}, {x + length, y + width}};
}

void read_defects(Fields& fields, StockKind& stock) {
  const Node* node = fields.find("defects");
  if (node == nullptr || !is_list(*node, fields.reading(), "a list of defects")) return;
  for (const Node& child : node->children) {
    const Rect defect = read_defect(child, fields.reading());
    stock.defects.push_back(defect);
    if (defect.high.x > stock.length || defect.high.y > stock.width)
      fields.reading().add(child,
                           {.id = "stock.defect",
                            .message = "this defect reaches beyond its sheet",
                            .found = found_at(child),
                            .allowed = "within " + exact_text(stock.length, fields.reading().unit) + " by " +
                                       exact_text(stock.width, fields.reading().unit),
                            .cure = "measure it from the end and the edge that the sheet begins with"});
  }
}

StockKind read_stock_kind(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a piece of stock");
  StockKind stock;
  stock.id = fields.required("name", as_name).value_or("");
  stock.length = fields.required("length", as_size).value_or(one_tick);
  stock.width = fields.required("width", as_size).value_or(one_tick);
  stock.remnant = fields.optional("remnant", as_flag).value_or(false);
  if (!stock.remnant) fields.require("price");
  stock.price = fields.optional("price", as_price).value_or(0);
  if (const std::optional<int> count = fields.optional("count", as_count))
    stock.count = static_cast<std::size_t>(*count);
  else if (stock.remnant)
    stock.count = 1;
  stock.sold_by = fields.optional("sold_by", as_size);
  stock.weight = fields.optional("weight", as_mass);
  stock.trim = fields.optional("trim", as_length).value_or(Length{});
  read_defects(fields, stock);
  fields.finish();
  if (fields.sound() && std::min(stock.length, stock.width) <= stock.trim + stock.trim)
    add_fault(
        fields, "trim",
        {.id = "stock.trim",
         .message = "trimming every edge by so much leaves nothing",
         .allowed = "less than half of " + exact_text(std::min(stock.length, stock.width), reading.unit),
         .cure = "write what is taken off one edge"});
  if (stock.sold_by && *stock.sold_by > stock.length)
    add_fault(fields, "sold_by",
              {.id = "stock.sold-by",
               .message = "it is sold in steps longer than the whole",
               .allowed = "at most " + exact_text(stock.length, reading.unit),
               .cure = "write the least length that is sold, and the price of so much"});
  return stock;
}

StockPart read_stock_part(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a part");
  StockPart part;
  part.id = fields.required("name", as_name).value_or("");
  part.length = fields.required("length", as_size).value_or(one_tick);
  part.width = fields.required("width", as_size).value_or(one_tick);
  part.count = static_cast<std::size_t>(fields.optional("count", as_count).value_or(1));
  part.lay = fields.optional("lies", one_of(lay_words)).value_or(PartLay::quarters);
  fields.finish();
  return part;
}

template <class Read>
auto read_list(const Node* node, Reading& reading, std::string_view what, Read read) {
  std::vector<decltype(read(*node, reading))> result;
  if (node == nullptr || !is_list(*node, reading, what)) return result;
  for (const Node& child : node->children) result.push_back(read(child, reading));
  return result;
}

void refuse_twins(const Node& list, const std::vector<StockKind>& stock, Reading& reading) {
  for (std::size_t i = 0; i < stock.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (!stock[i].id.empty() && stock[i].id == stock[j].id) {
        const Node& node = list.children[i];
        const Node* name = node.find("name");
        reading.add(name != nullptr ? *name : node, {.id = "stock.twice",
                                                     .message = "two pieces of stock have this name",
                                                     .found = in_quotes(stock[i].id),
                                                     .allowed = "a name that no other has",
                                                     .cure = "give one of them another name"});
        break;
      }
}

StockMaterial read_material(const Node& node, Reading& reading) {
  Fields fields(&node, reading, "a material");
  StockMaterial material;
  material.origin = node.origin();
  material.name = fields.required("material", as_name).value_or("");
  material.goods = fields.required("goods", one_of(goods_words)).value_or(StockGoods::board);
  material.thickness = fields.optional("thickness", as_size);
  if (material.goods != StockGoods::cloth) fields.require("thickness");
  material.kerf = fields.required("kerf", as_length).value_or(Length{});
  material.manner = fields.optional("cut", one_of(manner_words)).value_or(CutManner::through);
  if (const std::optional<int> stages = fields.optional("stages", as_stages))
    material.stages = static_cast<std::size_t>(*stages);
  material.least_offcut = fields.optional("keep_from", as_size).value_or(material.least_offcut);
  const Node* stock = fields.find("stock");
  fields.require("stock");
  material.stock = read_list(stock, reading, "a list of stock", read_stock_kind);
  if (stock != nullptr) refuse_twins(*stock, material.stock, reading);
  material.parts = read_list(fields.find("parts"), reading, "a list of parts", read_stock_part);
  std::size_t count = 0;
  for (const StockPart& part : material.parts) count += part.count;
  if (count > most_things)
    add_fault(fields, "parts",
              {.id = "stock.many",
               .message = "so many parts are not placed at once",
               .allowed = std::to_string(most_things) + " parts of one material",
               .cure = "divide the job into several files"});
  fields.finish();
  return material;
}

StockList read_stock_list(const Node& root, Reading& reading) {
  Fields fields(&root, reading, "a stock file");
  StockList list;
  fields.require("berthwright_stock");
  fields.find("berthwright_stock");
  fields.optional("$schema", as_text);
  list.title = fields.required("title", as_name).value_or("");
  list.unit = fields.required("unit", one_of(stock_units)).value_or(Unit::inch);
  reading.unit = list.unit;
  list.currency = fields.required("currency", as_name).value_or("");
  fields.require("materials");
  list.materials = read_list(fields.find("materials"), reading, "a list of materials", read_material);
  list.notes = read_list(fields.find("notes"), reading, "a list of notes",
                         [](const Node& node, Reading& of) { return as_note(node, of).value_or(""); });
  fields.finish();
  return list;
}

}  // namespace

Result<StockList> read_stock(std::string_view text) {
  Document document = read_document(text);
  if (!document.root) return document.problems;
  Reading reading;
  reading.problems = std::move(document.problems);
  StockList list;
  if (is_object(*document.root, reading, "a stock file") && is_stock_version(*document.root, reading))
    list = read_stock_list(*document.root, reading);
  if (reading.problems.empty()) return list;
  sort_problems(reading.problems);
  return reading.problems;
}

}  // namespace berthwright
