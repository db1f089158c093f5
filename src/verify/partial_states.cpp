#include "verify/partial_states.hpp"

#include "verify/nobody.hpp"

namespace cairn::verify {

using Kind = system::Variable::Kind;

PartialStates::PartialStates(const semantics::World& world, const FaultBudget& faults, const Reductions& reductions,
                             const explore::Visited& visited)
    : space_(world.model(), faults),
      world_(world),
      visited_(visited),
      forgetter_(world, reductions),
      expander_(world, faults, visited.layout(), reductions),
      state_(visited.any()) {}

const State& PartialStates::at(std::uint64_t index) {
  visited_.read(static_cast<explore::StateIndex>(index), state_);
  return state_;
}

void PartialStates::unknown(std::uint64_t index, std::vector<system::VariableId>& out) {
  const explore::Unasked unasked = forgetter_.unasked(at(index));
  out.clear();
  for (const auto& [d, e] : unasked.seniority) {
    out.push_back(space_.senior(d, e));
    out.push_back(space_.senior(e, d));
  }
  for (const DeviceId d : unasked.settings) {
    out.push_back(space_.of_device(Kind::priority, d));
    if (unasked.numbers) out.push_back(space_.of_device(Kind::number, d));
    for (const PortId p : world_.model()[d].ports) {
      for (const Kind kind : {Kind::enabled, Kind::side, Kind::operational_side}) {
        out.push_back(space_.of_port(kind, p));
      }
    }
  }
  if (unasked.omissions) out.push_back(space_.left(system::Fault::omission));
  if (unasked.late_starts) out.push_back(space_.left(system::Fault::late_start));
}

void PartialStates::ways(std::uint64_t index, std::vector<Way>& out) {
  Nobody nobody;
  out.clear();
  expander_.open(visited_.packed(static_cast<explore::StateIndex>(index)));
  for (const Event& event : expander_.events()) {
    expander_.take(event, nobody);
    if (const auto to = visited_.find(expander_.packed_next())) out.push_back({event, *to});
  }
}

}  // namespace cairn::verify
