#include <cairn/cairn.hpp>
#include <iostream>

int main() {
  const cairn::DiskFiles disk;
  const auto model = cairn::load_procedure("append.yaml", disk);
  if (!model) {
    std::cerr << cairn::render_diagnostics(model.problems());
    return 2;
  }
  const auto report = cairn::prove(model.value());
  if (!report) {
    std::cerr << cairn::render_diagnostics(report.problems());
    return 2;
  }
  std::cout << cairn::render_text(model.value(), report.value());
  return report.value().verdict() == cairn::Verdict::proved ? 0 : 1;
}
