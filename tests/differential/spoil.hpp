/// \file
/// The mistakes: one small change of a procedure, its site or its platform at a time.
#pragma once

#include "differential/draft.hpp"
#include "differential/random.hpp"

namespace cairn::differential {

/// Changes one thing at random; now and then it changes nothing, or to something that the reader refuses.
void spoil(Random& random, Draft& draft);

/// One rule of the platform gets another value.
void change_rule(Random& random, Platform& platform);

/// A step of any verb about anything in the draft.
StepDraft random_step(Random& random, Draft& draft);

}  // namespace cairn::differential
