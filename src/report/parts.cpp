#include "report/parts.hpp"

#include <fmt/format.h>

namespace cairn::report {

std::string_view kind_of(const Model& model, const Part& part) {
  return part.kind == Part::Kind::step && model[part.step].verb == Verb::save ? "save" : cairn::name_of(part.kind);
}

std::string name_in(const Model& model, const Part& part) {
  if (part.kind != Part::Kind::ordering) return model[part.step].id;
  return fmt::format("{} before {}", model[part.before].id, model[part.step].id);
}

std::vector<std::string> names_in(const Model& model, const std::vector<Part>& parts) {
  std::vector<std::string> names;
  names.reserve(parts.size());
  for (const Part& part : parts) names.push_back(name_in(model, part));
  return names;
}

std::vector<int> lines_of(const Model& model, const Part& part) {
  std::vector<int> lines;
  for (const StepId step : {part.before, part.step}) {
    if (!step) continue;
    const int line = model[step].span.line;
    if (line > 0 && (lines.empty() || lines.back() != line)) lines.push_back(line);
  }
  return lines;
}

}  // namespace cairn::report
