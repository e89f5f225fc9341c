#include <berthwright/exact/length.h>
#include <berthwright/geometry/region.h>

using namespace berthwright::literals;
using berthwright::Area;
using berthwright::Point;
using berthwright::Rect;
using berthwright::Region;

int main() {
  const Region bench(Rect{Point{}, Point{75_in, 20_in}});
  const Region filler(Rect{Point{0_in, 20_in}, Point{75_in, 38_in}});
  return united(bench, filler).area() == Area::rectangle(75_in, 38_in) ? 0 : 1;
}
