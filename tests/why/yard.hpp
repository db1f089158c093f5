/// \file
/// Procedures for the yard of models/quickstart, and what `why` says of their parts by name.
#pragma once

#include <doctest/doctest.h>

#include <algorithm>
#include <cairn/cairn.hpp>
#include <string>

namespace cairn::test {

/// A procedure at the site of models/quickstart: `rest` is what follows `site:`.
inline Model at_the_yard(const std::string& rest) {
  std::map<std::string, std::string> files;
  const DiskFiles disk;
  const std::string models = CAIRN_SOURCE_DIR "/models/";
  for (const char* name : {"quickstart/yard.yaml", "platforms/bollard.yaml"}) {
    files[name] = std::get<std::string>(disk.read(models + name));
  }
  files["quickstart/new.yaml"] = "procedure: New\nsite: yard.yaml\n" + rest;
  const auto model = load_procedure("quickstart/new.yaml", MemoryFiles(files));
  if (!model) FAIL(render_diagnostics(model.problems()));
  return model.value();
}

inline Model quickstart(const std::string& name) {
  return load_procedure(CAIRN_SOURCE_DIR "/models/quickstart/" + name, DiskFiles()).value();
}

inline StepId step_named(const Model& model, const std::string& id) {
  const auto& steps = model.procedure.steps;
  const auto at = std::find_if(steps.begin(), steps.end(), [&](const Step& step) { return step.id == id; });
  REQUIRE(at != steps.end());
  return StepId(static_cast<std::size_t>(at - steps.begin()));
}

/// "s3", or "s2 before s3".
inline std::string name_of(const Model& model, const Part& part) {
  return part.before ? model[part.before].id + " before " + model[part.step].id : model[part.step].id;
}

inline std::vector<std::string> names_of(const Model& model, const std::vector<Part>& parts) {
  std::vector<std::string> names;
  for (const Part& part : parts) names.push_back(name_of(model, part));
  return names;
}

inline ProveOptions asking(Property property, std::int64_t k = 0) {
  ProveOptions options;
  options.properties = {{property, k}};
  return options;
}

/// The parts of this standing for the first property.
inline std::vector<std::string> parts_that_are(Standing standing, const Model& model, const Why& why) {
  std::vector<std::string> names;
  for (const LeftOut& left_out : why.properties.front().parts) {
    if (left_out.standing == standing) names.push_back(name_of(model, left_out.parts.front()));
  }
  return names;
}

/// The events of a refutation, by the ids and names of `model`: "s1, started yard-3".
inline std::string told(const Model& model, const Trace& events) {
  std::string text;
  for (const Event& event : events) {
    if (!text.empty()) text += ", ";
    if (event.kind != Event::Kind::step) text += std::string(cairn::name_of(event.kind)) + ' ';
    switch (event.kind) {
      case Event::Kind::step:
      case Event::Kind::omitted:
        text += model[event.step()].id;
        break;
      case Event::Kind::broke:
      case Event::Kind::mended:
        text += model[event.cable()].name;
        break;
      case Event::Kind::cold_start:
        text.pop_back();
        break;
      default:
        text += model[event.device()].name;
    }
  }
  return text;
}

}  // namespace cairn::test
