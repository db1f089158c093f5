#include "solver/decode.hpp"

#include "base/contradiction.hpp"

namespace cairn::solver {

std::vector<std::size_t> decode(Unroller& unroller, const Clauses& clauses, std::size_t length) {
  const std::size_t count = unroller.system().events.size();
  std::vector<std::size_t> places;
  for (std::size_t t = 0; t < length; ++t) {
    std::size_t event = 0;
    while (event < count && !clauses.value_of(unroller.happens(t, event))) ++event;
    if (event == count) throw Contradiction("a model of the unrolled constraints has a depth without an event");
    places.push_back(event);
  }
  return places;
}

Trace trace_of(const system::System& system, const std::vector<std::size_t>& places) {
  Trace trace;
  for (const std::size_t place : places) trace.push_back(system.events[place].event);
  return trace;
}

}  // namespace cairn::solver
