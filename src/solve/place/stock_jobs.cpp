#include <berthwright/solve/place/stock_jobs.h>

#include <algorithm>

namespace berthwright {
namespace {

/// Gathers the parts of every material.
class JobGatherer {
 public:
  explicit JobGatherer(const StockList& stock) : stock_(stock) {
    for (const StockMaterial& material : stock.materials) {
      StockJob job{&material,
                   {material.stock, material.parts, material.kerf, material.manner, material.stages}};
      job.task.least_offcut = material.least_offcut;
      job.parts.resize(material.parts.size());
      jobs_.jobs.push_back(std::move(job));
    }
  }

  void add_foam(const Cover& cover) {
    const Piece& piece = *cover.piece;
    const auto without = [&](PartWithoutStock::Why why) {
      jobs_.without.push_back({StockGoods::foam, piece.name, piece.material, piece.thickness, why});
    };
    if (!cover.foam) return without(PartWithoutStock::Why::not_reckoned);
    if (piece.material.empty()) return without(PartWithoutStock::Why::unnamed);
    const FoamBlank& foam = *cover.foam;
    const auto glued = glue_up(foam.length, foam.width, foam.thickness, sheets_of(piece.material));
    if (!glued) return without(PartWithoutStock::Why::no_material);
    const bool by_its_box = Region(foam.outline).area() != Area::rectangle(foam.length, foam.width);
    const JobPart what{&piece, by_its_box && glued->is_one_piece(), foam.density};
    std::size_t number = 0;
    for (const FoamLayer& layer : glued->layers)
      for (const Length length : layer.along)
        for (const Length width : layer.across) {
          const std::string id =
              piece.name + (glued->is_one_piece() ? "" : ", piece " + std::to_string(++number));
          StockJob* job = job_for(StockGoods::foam, piece.material, layer.sheet.thickness);
          add(*job, {id, length, width, 1, PartLay::quarters}, what);
        }
  }

  void add_board(const Piece& piece) {
    StockJob* job =
        piece.material.empty() ? nullptr : job_for(StockGoods::board, piece.material, piece.thickness);
    if (job == nullptr) {
      const auto why =
          piece.material.empty() ? PartWithoutStock::Why::unnamed : PartWithoutStock::Why::no_material;
      jobs_.without.push_back({StockGoods::board, piece.name, piece.material, piece.thickness, why});
      return;
    }
    const bool across = piece.grain == Piece::Grain::along_width;
    const PartLay lay = piece.grain ? PartLay::grain : PartLay::quarters;
    const Area box = Area::rectangle(piece.length, piece.width);
    add(*job, {piece.name, across ? piece.width : piece.length, across ? piece.length : piece.width, 1, lay},
        {&piece, Region(piece.outline.polygon()).area() != box});
  }

  void add_cloth(const Cover& cover) {
    const Fabric& fabric = cover.sewing.fabric;
    const auto without = [&](PartWithoutStock::Why why) {
      jobs_.without.push_back({StockGoods::cloth, cover.piece->name, fabric.name, {}, why});
    };
    if (fabric.name.empty()) return without(PartWithoutStock::Why::unnamed);
    StockJob* job = job_for(StockGoods::cloth, fabric.name, {});
    if (job == nullptr) return without(PartWithoutStock::Why::no_material);
    if (fabric.repeat) return without(PartWithoutStock::Why::patterned);
    if (!cover.reckoned()) return without(PartWithoutStock::Why::not_reckoned);
    add_panels(*job, cover);
    if (cover.shaped)
      add_shaped(*job, cover);
    else
      add_strips(*job, cover);
    if (cover.welt && cover.welt->strips.count > 0)
      add(*job,
          {cover.piece->name + ", welt strip", cover.welt->strip_width, fabric.width,
           static_cast<std::size_t>(cover.welt->strips.count), lay_of(fabric)},
          {cover.piece});
  }

  StockJobs jobs() && {
    std::erase_if(jobs_.jobs, [](const StockJob& job) { return job.task.parts.empty(); });
    return std::move(jobs_);
  }

 private:
  static PartLay lay_of(const Fabric& fabric) { return fabric.may_turn() ? PartLay::quarters : PartLay::nap; }

  static void add(StockJob& job, StockPart part, JobPart what) {
    job.task.parts.push_back(std::move(part));
    job.parts.push_back(what);
  }

  StockJob* job_for(StockGoods goods, const std::string& name, std::optional<Length> thickness) {
    const auto job = std::ranges::find_if(jobs_.jobs, [&](const StockJob& of) {
      const StockMaterial& material = *of.material;
      return material.goods == goods && material.name == name && material.thickness == thickness;
    });
    return job == jobs_.jobs.end() ? nullptr : &*job;
  }

  // What of that grade can be cut at all, as a glue-up asks for it.
  std::vector<FoamSheet> sheets_of(const std::string& grade) const {
    std::vector<FoamSheet> sheets;
    for (const StockMaterial& material : stock_.materials)
      if (material.goods == StockGoods::foam && material.name == grade)
        for (const StockKind& kind : material.stock) {
          const Length trim = kind.trim + kind.trim;
          if (kind.count != std::size_t{0})
            sheets.push_back({kind.length - trim, kind.width - trim, *material.thickness});
        }
    return sheets;
  }

  static void add_panels(StockJob& job, const Cover& cover) {
    if (!cover.has_panel()) return;
    const bool one = cover.shaped && cover.shaped->shape == CoverShape::board_backed;
    const bool by_its_box =
        Region(cover.panel.outline).area() != Area::rectangle(cover.panel.length, cover.panel.width);
    for (const Length width : cover.lay.widths)
      add(job,
          {cover.piece->name + (one ? ", panel" : ", top and bottom panel"), cover.lay.takes, width,
           one ? std::size_t{1} : 2, lay_of(cover.sewing.fabric)},
          {cover.piece, by_its_box});
  }

  static void add_strips(StockJob& job, const Cover& cover) {
    const Fabric& fabric = cover.sewing.fabric;
    const std::string name = cover.piece->name;
    const bool along = cover.boxing.along_roll;
    for (const BoxingStrip& strip : cover.boxing.strips)
      add(job,
          {name + ", border strip", along ? strip.cut : cover.boxing.width,
           along ? cover.boxing.width : strip.cut, 1, lay_of(fabric)},
          {cover.piece});
    const bool zip_along = along || cover.zip.cut_length > fabric.width;
    add(job,
        {name + ", strip of the zip", zip_along ? cover.zip.cut_length : cover.zip.cut_width,
         zip_along ? cover.zip.cut_width : cover.zip.cut_length, 2, lay_of(fabric)},
        {cover.piece});
  }

  static void add_shaped(StockJob& job, const Cover& cover) {
    for (const ShapedPart& part : cover.shaped->parts)
      if (part.what != ShapedPart::What::board)
        add(job,
            {cover.piece->name + ", " + std::string(name_of(part.what)), part.length, part.width,
             static_cast<std::size_t>(part.count), lay_of(cover.sewing.fabric)},
            {cover.piece, part.what == ShapedPart::What::disc});
  }

  static std::string_view name_of(ShapedPart::What what) {
    switch (what) {
      case ShapedPart::What::wrap:
        return "wrap";
      case ShapedPart::What::side:
        return "side";
      case ShapedPart::What::disc:
        return "disc";
      case ShapedPart::What::zip_strip:
        return "strip of the zip";
      case ShapedPart::What::board:
        return "board";
    }
    return "part";
  }

  const StockList& stock_;
  StockJobs jobs_{};
};

std::optional<Mass> weight_of(const StockJob& job, const StockTaken& taken) {
  const StockKind& kind = job.task.stock[taken.kind];
  const auto count = static_cast<std::int64_t>(taken.count);
  if (kind.weight)
    return *kind.weight * (kind.sold_by ? taken.length.ticks() / kind.sold_by->ticks() : 1) * count;
  const auto known =
      std::ranges::find_if(job.parts, [](const JobPart& part) { return part.density.has_value(); });
  if (known == job.parts.end() || !job.material->thickness) return {};
  return foam_weight(Area::rectangle(taken.length, kind.width), *job.material->thickness, *known->density) *
         count;
}

}  // namespace

std::vector<StockTaken> stock_taken(const StockJob& job) {
  std::vector<StockTaken> result;
  for (const StockCut& cut : job.placing.cuts) {
    const auto same = std::ranges::find_if(result, [&](const StockTaken& taken) {
      return taken.kind == cut.kind && taken.length == cut.length;
    });
    StockTaken& taken = same != result.end() ? *same : result.emplace_back(StockTaken{cut.kind, cut.length});
    ++taken.count;
    taken.cost += cut.price;
  }
  for (StockTaken& taken : result) taken.weight = weight_of(job, taken);
  return result;
}

StockUse stock_use(const StockJob& job) {
  StockUse use;
  const auto area = [](const Rect& rect) { return Area::rectangle(rect.width(), rect.height()); };
  for (const StockCut& cut : job.placing.cuts) {
    use.stock += Area::rectangle(cut.length, job.task.stock[cut.kind].width);
    for (const StockPlace& place : cut.places) use.parts += area(place.at);
    for (const Rect& offcut : cut.offcuts) use.kept += area(offcut);
  }
  return use;
}

StockJobs stock_jobs(const Plan& plan, const std::vector<Cover>& covers, const StockList& stock,
                     const PlacingEffort& effort) {
  JobGatherer gatherer(stock);
  for (const Cover& cover : covers) gatherer.add_foam(cover);
  for (const Piece& piece : plan->pieces)
    if (piece.kind == Piece::Kind::board || piece.kind == Piece::Kind::table) gatherer.add_board(piece);
  for (const Cover& cover : covers) gatherer.add_cloth(cover);
  StockJobs jobs = std::move(gatherer).jobs();
  for (StockJob& job : jobs.jobs) job.placing = placed(job.task, effort);
  return jobs;
}

}  // namespace berthwright
