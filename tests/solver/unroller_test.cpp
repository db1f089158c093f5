// The relation laid out in a row: with the events put in, its states are those of the concrete semantics.
#include <doctest/doctest.h>

#include "cairn/walk.hpp"
#include "solver/unroller.hpp"
#include "spec/random_models.hpp"

using namespace cairn;
using namespace cairn::test;
using solver::Unroller;
using system::Term;

namespace {

// A chain of two and a third that is to join: steps that begin a start, so that events may come in several orders.
Model joining() {
  ModelBuilder b;
  DeviceIs spare;
  spare.on = false;
  const auto yard = b.devices({"yard-1", "yard-2"});
  const DeviceId joiner = b.device("yard-3", spare);
  b.chain({yard[0], yard[1], joiner});
  b.stack(yard[0], yard);
  b.power_on(joiner);
  b.restart(yard[1]);
  return b.model();
}

// The variables of the depths below that of `events.size()`, put as the events say.
system::Substitution as_in(Unroller& unroller, const Trace& events) {
  system::Substitution put(unroller.system().terms);
  for (std::size_t t = 0; t < events.size(); ++t) {
    for (std::size_t i = 0; i < unroller.system().events.size(); ++i) {
      const Term happens = unroller.happens(t, i);
      const bool is = unroller.system().events[i].event == events[t];
      if (happens == system::never || happens == system::always) {
        CHECK((happens == system::always) == is);
      } else {
        put.put(happens, is ? system::always : system::never);
      }
    }
  }
  return put;
}

void check_state(Unroller& unroller, system::Substitution& put, std::size_t t, const State& expected) {
  const system::Space& space = unroller.system().space;
  for (system::VariableId v = 0; v < space.size(); ++v) {
    CAPTURE(space.name(v));
    CHECK(put(unroller.state(t)[v].is(space.read(expected, v))) == system::always);
  }
}

}  // namespace

TEST_CASE("depth 0 is the settled initial state, all constants") {
  const Model model = joining();
  system::System system(model, {}, system::static_domains(model, {}));
  Unroller unroller(system);
  system::Substitution nothing(system.terms);
  check_state(unroller, nothing, 0, walk(model).moments.front().before);
}

TEST_CASE("an event that cannot happen at a depth is false there, one that must is true") {
  const Model model = joining();
  system::System system(model, {}, system::static_domains(model, {}));
  Unroller unroller(system);
  // Nothing but the first step may happen first; then its start may complete, or the second step may be taken.
  for (std::size_t i = 0; i < system.events.size(); ++i) {
    const Event& event = system.events[i].event;
    CHECK(unroller.happens(0, i) == (event == Event{Event::Kind::step, 0} ? system::always : system::never));
    const bool may = event == Event{Event::Kind::step, 1} || event == Event{Event::Kind::started, 2};
    CHECK((unroller.happens(1, i) != system::never) == may);
  }
  CHECK(unroller.one_event(0) == system::always);
  CHECK(unroller.one_event(1) != system::always);
}

TEST_CASE("runs of random models: with their events put in, every state is that of the walk") {
  Random random(17);
  std::size_t moments = 0;
  for (int round = 0; round < 40; ++round) {
    const Model model = random_model(random, {});
    const Walk run = walk(model);
    system::System system(model, {}, system::static_domains(model, {}));
    Unroller unroller(system);
    Trace events;
    for (const Moment& moment : run.moments) events.push_back(moment.event);
    system::Substitution put = as_in(unroller, events);
    for (std::size_t t = 0; t < events.size(); ++t) {
      CHECK(put(unroller.one_event(t)) == system::always);
      check_state(unroller, put, t, run.moments[t].before);
      check_state(unroller, put, t + 1, run.moments[t].after());
      ++moments;
    }
  }
  CHECK(moments > 100);
}
