#include <fmt/format.h>

#include "cairn/render.hpp"
#include "report/fatal.hpp"
#include "report/narrate.hpp"
#include "report/why.hpp"
#include "report/words.hpp"
#include "semantics/events.hpp"

namespace cairn {

namespace {

using report::listed;
using semantics::Derived;
using semantics::World;
using Cause = Breach::Cause;

/// Says in one clause what is wrong.
class Explainer {
 public:
  Explainer(const Model& model, const Breach& breach, const Walk& walk)
      : world_(model),
        model_(model),
        breach_(breach),
        walk_(walk),
        state_(report::fatal_state(world_, walk, breach)),
        derived_(derive(world_, state_)) {}

  [[nodiscard]] std::string sentence() const {
    switch (breach_.cause) {
      case Cause::taken_down:
      case Cause::refused:
      case Cause::not_complete:
      case Cause::too_many_members:
      case Cause::loss_cuts:
        return report::capitalised(clause()) + ".";
      case Cause::goal_missed:
        return walk_.moments.empty() || walk_.moments.back().event.kind != Event::Kind::cold_start
                   ? fmt::format("The procedure ends and its goal is missed: {}.", clause())
                   : fmt::format("When power has failed and returned, the goal is missed: {}.", clause());
      default:
        break;
    }
    if (walk_.moments.empty()) return fmt::format("At the start, before any event, {}.", clause());
    return fmt::format("When {}, {}.", report::as_clause(model_, walk_.moments.back()), clause());
  }

 private:
  [[nodiscard]] const State& s() const { return state_; }
  [[nodiscard]] const std::string& a() const { return model_[breach_.a].name; }
  [[nodiscard]] const std::string& b() const { return model_[breach_.b].name; }

  [[nodiscard]] std::string clause() const {
    switch (breach_.cause) {
      case Cause::two_leaders:
        return fmt::format("{} and {}, both to be kept, are no longer one stack: {} and {}", a(), b(),
                           report::standing(model_, s(), breach_.a), report::standing(model_, s(), breach_.b));
      case Cause::cut_apart:
        return fmt::format("{} and {}, members of the stack of {}, are cut off from each other", a(), b(),
                           model_[s()[breach_.a].leader].name);
      case Cause::kept_device_held:
      case Cause::settled_held:
        return fmt::format("{}, which is to be kept, is held out of the stack{}", a(), clash());
      case Cause::held:
        return fmt::format("{} is held out of every stack{}", a(), clash());
      case Cause::settled_down:
        return settled_down();
      case Cause::taken_down:
        return taken_down();
      case Cause::same_number:
        return fmt::format("{} and {} are members of one stack and both have number {}", a(), b(),
                           s()[breach_.a].number);
      case Cause::refused:
        return refused();
      case Cause::not_complete:
        return not_complete();
      case Cause::goal_missed:
        return goal_missed();
      case Cause::too_many_members:
        return too_many_members();
      case Cause::loss_cuts:
        return loss_cuts();
    }
    return {};
  }

  [[nodiscard]] std::string clash() const {
    const DeviceId other = report::clashes_with(derived_, s(), breach_.a);
    if (!other) return "";
    return fmt::format(", because {} has number {} too", model_[other].name, s()[breach_.a].number);
  }

  [[nodiscard]] std::string settled_down() const {
    const DeviceId leader = s()[breach_.a].leader;
    const bool leads = leader == breach_.a;
    const bool leader_here = derived_.together(breach_.a, leader) && s()[leader].leader == leader;
    const DeviceId winner = report::winner_over(world_, s(), breach_.a);
    if (!leader_here) {
      return winner
                 ? fmt::format("{} restarts, because it is cut off from {}, its primary, and now meets {}, which leads",
                               a(), model_[leader].name, model_[winner].name)
                 : fmt::format(
                       "{} restarts, because it is cut off from {}, its primary, and this platform restarts "
                       "such devices",
                       a(), model_[leader].name);
    }
    const std::string contest = fmt::format("{}, which leads too, wins the contest by {}", model_[winner].name,
                                            report::why_outranks(model_, s(), winner, leader));
    if (leads) return fmt::format("{}, which leads, restarts: {}", a(), contest);
    return fmt::format("{} restarts with its primary {}: {}", a(), model_[leader].name, contest);
  }

  [[nodiscard]] std::string taken_down() const {
    const Step& step = model_[breach_.step];
    return fmt::format("step {} takes down {}, which is to be kept{}", step.id, a(),
                       walk_.moments.back().before[breach_.a].leader == breach_.a ? " and leads" : "");
  }

  [[nodiscard]] std::string refused() const {
    const Step& step = model_[breach_.step];
    return fmt::format("step {} (to {}) is refused: {}", step.id, report::what_to_do(model_, step),
                       report::why_refused(model_, walk_.moments.back()));
  }

  [[nodiscard]] std::string not_complete() const {
    if (s().halted) {
      const Moment& failed = failed_check();
      const Step& check = model_[failed.event.step()];
      const Derived derived = derive(world_, failed.before);
      return fmt::format("check {} fails and the procedure stops there: {} does not hold: {}", check.id,
                         check.condition_text, report::why_false(world_, failed.before, derived, check.condition));
    }
    std::vector<std::string> waits;
    for (std::size_t i = 0; i < model_.procedure.steps.size(); ++i) {
      if (!semantics::has_turn(world_, s(), StepId(i))) continue;
      const Step& step = model_.procedure.steps[i];
      waits.push_back(fmt::format("{} waits for {}, but {}", step.id, step.condition_text,
                                  report::why_false(world_, s(), derived_, step.condition)));
    }
    return fmt::format("the procedure is stuck for ever: {}", fmt::join(waits, "; "));
  }

  // Demands that a check has failed.
  [[nodiscard]] const Moment& failed_check() const {
    const Moment* failed = &walk_.moments.back();
    while (failed->before.halted) --failed;
    return *failed;
  }

  [[nodiscard]] std::string goal_missed() const {
    switch (breach_.missed) {
      case Breach::GoalPart::together:
        return not_together();
      case Breach::GoalPart::one_leader:
        return fmt::format("{} and {}", report::standing(model_, s(), breach_.a),
                           report::standing(model_, s(), breach_.b));
      case Breach::GoalPart::primary:
        return fmt::format("{} leads, not {}", a(), b());
      case Breach::GoalPart::saved:
        return fmt::format("not saved on {}: {}", a(), listed(report::unsaved(model_, s(), breach_.a)));
      case Breach::GoalPart::where:
        return fmt::format("{} does not hold: {}", model_.procedure.goal->where_text,
                           report::why_false(world_, s(), derived_, *model_.procedure.goal->where));
      case Breach::GoalPart::none:
        break;
    }
    return {};
  }

  [[nodiscard]] std::string not_together() const {
    for (const DeviceId d : {breach_.a, breach_.b}) {
      if (s()[d].power != Power::up) return report::standing(model_, s(), d);
    }
    std::vector<std::string> cables;
    for (const CableId c : report::open_cables(world_, s(), derived_, breach_.a, breach_.b)) {
      cables.push_back(fmt::format("cable {} forms no link ({})", model_[c].name,
                                   listed(report::why_no_link(world_, s(), derived_, c))));
    }
    const std::string apart = fmt::format("{} and {} are not together", a(), b());
    return apart + (cables.empty() ? ", since no cable between them is plugged in" : ", since " + listed(cables));
  }

  [[nodiscard]] std::string too_many_members() const {
    std::int64_t members = 0;
    for (DeviceId d = breach_.a; d; d = derived_.next_in_class[d.value]) ++members;
    return fmt::format("the stack around {} ends up with {} members, and this platform allows {}", a(), members,
                       model_.platform.max_members);
  }

  [[nodiscard]] std::string loss_cuts() const {
    std::vector<std::string> cables;
    const State& before = walk_.moments.empty() ? s() : report::state_before_end(walk_, breach_);
    for (std::size_t i = 0; i < s().cables.size(); ++i) {
      if (s().cables[i].broken && !before.cables[i].broken) cables.push_back(model_.site.cables[i].name);
    }
    const std::string apart = fmt::format("{} and {} are not together", a(), b());
    if (cables.empty()) return fmt::format("there is no cable left to lose, and {}", apart);
    return fmt::format("with {} lost, {}", listed(cables), apart);
  }

  World world_;
  const Model& model_;
  const Breach& breach_;
  const Walk& walk_;
  const State& state_;
  Derived derived_;
};

}  // namespace

std::string explain(const Model& model, const Breach& breach, const Walk& walk) {
  return Explainer(model, breach, walk).sentence();
}

}  // namespace cairn
