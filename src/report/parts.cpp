#include "report/parts.hpp"

#include <fmt/format.h>

namespace cairn::report {

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

}  // namespace cairn::report
