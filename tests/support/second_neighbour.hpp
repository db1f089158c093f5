/// \file
/// The model of docs/semantics-questions.md, 2: a second neighbour is cabled to a side of a running primary.
#pragma once

#include "support/model_builder.hpp"

namespace cairn::test {

/// d leads e; both of d's west ports are cabled, one to e, one to f, which the procedure powers on. Sides lead to one
/// neighbour. Where orphans restart, e and f then restart one another for ever, against 5.k.
struct SecondNeighbour {
  explicit SecondNeighbour(Orphans orphans) {
    b.platform().side_leads_to = SideLeadsTo::one_neighbour;
    b.platform().orphans = orphans;
    d = b.device("d", {.priority = 9, .ports = {{.name = "p", .side = Side::west}, {.name = "q", .side = Side::west}}});
    e = b.device("e");
    f = b.device("f", {.on = false});
    b.cable(b.east(e), b.port(d, "p"));
    b.cable(b.east(f), b.port(d, "q"));
    b.stack(d, {d, e});
    b.power_on(f);
  }

  ModelBuilder b;
  DeviceId d;
  DeviceId e;
  DeviceId f;
};

}  // namespace cairn::test
