#include "system/space.hpp"

#include <fmt/format.h>

#include <array>

namespace cairn::system {

using Kind = Variable::Kind;

Space::Space(const Model& model, const FaultBudget& budget, Counting counting)
    : model_(&model), budget_(budget), counting_(counting) {
  for (std::uint32_t d = 0; d < devices(); ++d) {
    for (VariableId kind = 0; kind < per_device; ++kind) variables_.push_back({static_cast<Kind>(kind), d, 0});
  }
  senior_ = static_cast<VariableId>(variables_.size());
  for (std::uint32_t d = 0; d < devices(); ++d) {
    for (std::uint32_t e = 0; e < devices(); ++e) {
      if (d != e) variables_.push_back({Kind::senior, d, e});
    }
  }
  ports_ = static_cast<VariableId>(variables_.size());
  for (std::uint32_t p = 0; p < ports(); ++p) {
    for (VariableId kind = 0; kind < per_port; ++kind) {
      variables_.push_back({static_cast<Kind>(kind + static_cast<VariableId>(Kind::enabled)), p, 0});
    }
  }
  cables_ = static_cast<VariableId>(variables_.size());
  for (std::uint32_t c = 0; c < cables(); ++c) {
    variables_.push_back({Kind::plugged, c, 0});
    variables_.push_back({Kind::broken, c, 0});
  }
  done_ = static_cast<VariableId>(variables_.size());
  for (std::uint32_t s = 0; s < steps(); ++s) variables_.push_back({Kind::done, s, 0});
  left_ = static_cast<VariableId>(variables_.size());
  for (std::uint32_t fault = 0; fault < fault_count; ++fault) variables_.push_back({Kind::left, fault, 0});
  variables_.push_back({Kind::halted, 0, 0});
}

std::int64_t Space::budget_of(Fault fault) const {
  switch (fault) {
    case Fault::cable_break:
      return budget_.cable_breaks;
    case Fault::crash:
      return budget_.crashes;
    case Fault::omission:
      return budget_.omissions;
    case Fault::late_start:
      return budget_.late_starts;
  }
  return 0;
}

bool Space::is_truth(VariableId v) const {
  switch (variables_[v].kind) {
    case Kind::senior:
    case Kind::enabled:
    case Kind::startup_enabled:
    case Kind::plugged:
    case Kind::broken:
    case Kind::done:
    case Kind::halted:
      return true;
    default:
      return false;
  }
}

std::string Space::name(VariableId v) const {
  const Variable& variable = variables_[v];
  const auto device = [&](std::uint32_t place) { return model_->site.devices[place].name; };
  const auto port = [&] { return model_->site.ports[variable.place].name; };
  const auto cable = [&] { return model_->site.cables[variable.place].name; };
  switch (variable.kind) {
    case Kind::power:
      return fmt::format("power of {}", device(variable.place));
    case Kind::leader:
      return fmt::format("leader of {}", device(variable.place));
    case Kind::number:
      return fmt::format("number of {}", device(variable.place));
    case Kind::next_number:
      return fmt::format("next number of {}", device(variable.place));
    case Kind::priority:
      return fmt::format("priority of {}", device(variable.place));
    case Kind::startup_priority:
      return fmt::format("startup priority of {}", device(variable.place));
    case Kind::senior:
      return fmt::format("{} senior to {}", device(variable.place), device(variable.other));
    case Kind::enabled:
      return fmt::format("{} enabled", port());
    case Kind::startup_enabled:
      return fmt::format("{} enabled in startup", port());
    case Kind::side:
      return fmt::format("side of {}", port());
    case Kind::startup_side:
      return fmt::format("startup side of {}", port());
    case Kind::operational_side:
      return fmt::format("operational side of {}", port());
    case Kind::plugged:
      return fmt::format("{} plugged", cable());
    case Kind::broken:
      return fmt::format("{} broken", cable());
    case Kind::done:
      return fmt::format("{} done", model_->procedure.steps[variable.place].id);
    case Kind::left: {
      static constexpr std::array<const char*, fault_count> words{"cable breaks", "crashes", "omissions",
                                                                  "late starts"};
      return fmt::format("{} left", words.at(variable.place));
    }
    case Kind::halted:
      return "halted";
  }
  return {};
}

std::string Space::value_name(VariableId v, std::int64_t value) const {
  static constexpr std::array<const char*, 4> powers{"off", "starting", "up", "held"};
  static constexpr std::array<const char*, 3> sides{"none", "east", "west"};
  switch (variables_[v].kind) {
    case Kind::power:
      return powers.at(static_cast<std::size_t>(value));
    case Kind::leader:
      return value == nobody ? "none" : model_->site.devices[static_cast<std::size_t>(value)].name;
    case Kind::side:
    case Kind::startup_side:
    case Kind::operational_side:
      return sides.at(static_cast<std::size_t>(value));
    default:
      return is_truth(v) ? (value != 0 ? "true" : "false") : std::to_string(value);
  }
}

std::int64_t Space::read(const State& s, VariableId v) const {
  const auto [kind, place, other] = variables_[v];
  const auto leader_of = [&](const DeviceState& d) { return d.leader ? std::int64_t{d.leader.value} : nobody; };
  switch (kind) {
    case Kind::power:
      return static_cast<std::int64_t>(s.devices[place].power);
    case Kind::leader:
      return leader_of(s.devices[place]);
    case Kind::number:
      return s.devices[place].number;
    case Kind::next_number:
      return s.devices[place].next_number;
    case Kind::priority:
      return s.devices[place].priority;
    case Kind::startup_priority:
      return s.devices[place].startup_priority;
    case Kind::senior:
      return s.devices[place].seniority != 0 && s.devices[place].seniority < s.devices[other].seniority ? 1 : 0;
    case Kind::enabled:
      return s.ports[place].enabled ? 1 : 0;
    case Kind::startup_enabled:
      return s.ports[place].startup_enabled ? 1 : 0;
    case Kind::side:
      return static_cast<std::int64_t>(s.ports[place].side);
    case Kind::startup_side:
      return static_cast<std::int64_t>(s.ports[place].startup_side);
    case Kind::operational_side:
      return static_cast<std::int64_t>(s.ports[place].operational_side);
    case Kind::plugged:
      return s.cables[place].plugged ? 1 : 0;
    case Kind::broken:
      return s.cables[place].broken ? 1 : 0;
    case Kind::done:
      return s.done[place] != 0 ? 1 : 0;
    case Kind::left:
      switch (static_cast<Fault>(place)) {
        case Fault::cable_break:
          return s.left.cable_breaks;
        case Fault::crash:
          return s.left.crashes;
        case Fault::omission:
          return s.left.omissions;
        case Fault::late_start:
          return s.left.late_starts;
      }
      return 0;
    case Kind::halted:
      return s.halted ? 1 : 0;
  }
  return 0;
}

}  // namespace cairn::system
