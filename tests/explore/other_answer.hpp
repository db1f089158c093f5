/// \file
/// Whether a model shows that no more may be forgotten than the reductions forget.
#pragma once

#include <doctest/doctest.h>

#include <optional>

#include "explore/explore.hpp"
#include "explore/plain_search.hpp"
#include "support/model_builder.hpp"

namespace cairn::test {

/// The refutation, told by its events; nothing where there is none.
inline std::optional<Trace> refutation(const Model& model, Property property, const Reductions& reductions) {
  const semantics::World world(model);
  const explore::Guard guard({}, {});
  return explore::explore(world, model.procedure.faults, {{property, 0}}, guard, {.reductions = reductions})
      .answers.front()
      .refutation;
}

/// All that is forgotten leaves what is found as it is, and as a plain search finds it. With orders left out too it is
/// as long. With what `too_much` forgets it is not.
inline void expect_other_answer(const ModelBuilder& b, Property property, const Forget& too_much) {
  const Model model = b.model();
  const auto whole = refutation(model, property, Reductions::none());
  Reductions forgetting;
  forgetting.orders = false;
  CHECK(refutation(model, property, forgetting) == whole);
  const auto shortest = refutation(model, property, {});
  CHECK(shortest.has_value() == whole.has_value());
  if (shortest && whole) CHECK(shortest->size() == whole->size());
  const auto plain = plain_search(model, property, [](State&) {});
  CHECK(plain.has_value() == whole.has_value());
  if (plain && whole) CHECK(*plain == whole->size());
  CHECK(plain_search(model, property, too_much) != plain);
}

}  // namespace cairn::test
