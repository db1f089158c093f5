#include "differential/author.hpp"
#include "differential/conditions.hpp"

namespace cairn::differential {

/// A newcomer joins at the east end.
void Author::append() {
  add_members(1 + random_.below(3), false);
  const std::string end = members_.back();
  const std::string newcomer = add_newcomer(random_.chance(20)).name;
  link(east(end), west(newcomer), random_.chance(15));
  if (members_.size() == 1 && random_.chance(30)) {
    link(west(end), east(newcomer), false);  // a second cable, idle unless somebody plugs it
  }
  const std::size_t cable = members_.size() - 1;
  prepare(newcomer, {{west(newcomer), Side::west}});
  const std::size_t from = draft_.steps.size();
  configure_port(east(end), Side::east);
  plug(cable);
  if (random_.chance(50)) branch_out(from);
  std::vector<ConditionDraft> arrival = {atom("follower", {newcomer}), atom("together", {end, newcomer}),
                                         atom("linked", {draft_.cables[cable].ends()})};
  await(random_.pick(arrival));
  std::vector<std::string> stack = members_;
  stack.push_back(newcomer);
  aim(stack, random_.chance(70));
  if (random_.chance(90)) save_all();
}

/// A newcomer between the first two: the ring, or the chain, is opened for it.
void Author::insert() {
  const std::size_t count = 2 + random_.below(2);
  add_members(count, true);
  const std::string a = members_[0];
  const std::string b = members_[1];
  const std::string newcomer = add_newcomer(false).name;
  const std::size_t first = draft_.cables.size();
  link(east(a), west(newcomer), false);
  link(east(newcomer), west(b), false);
  prepare(newcomer, {{west(newcomer), Side::west}, {east(newcomer), Side::east}});
  const std::size_t from = draft_.steps.size();
  step(Verb::unplug, draft_.cables[0].name());
  plug(first);
  if (random_.coin()) await(atom("together", {a, newcomer}));
  plug(first + 1);
  if (random_.chance(20)) branch_out(from);
  await(atom("follower", {newcomer}));
  std::vector<std::string> stack = members_;
  stack.push_back(newcomer);
  aim(stack, random_.coin());
  if (random_.chance(70)) save_all();
}

/// A chain becomes a ring.
void Author::close() {
  add_members(2 + random_.below(2), false);
  link(east(members_.back()), west(members_.front()), false);
  configure_port(east(members_.back()), Side::east);
  configure_port(west(members_.front()), Side::west);
  if (random_.coin()) branch_out(0);
  plug(draft_.cables.size() - 1);
  aim(members_, random_.coin());
  if (random_.coin()) draft_.goal->where = atom("linked", {draft_.cables.back().ends()});
  save_all();
}

/// A member gets another number.
void Author::renumber() {
  const std::size_t count = 1 + random_.below(3);
  add_members(count, random_.coin());
  const std::string device = random_.pick(members_);
  const std::int64_t number = taken_or_free_number();
  set_number(device, number);
  if (draft_.platform.number_takes == Takes::at_restart) restart_and_wait(device);
  if (draft_.platform.settings_follow == SettingsFollow::number) {
    configure_port(west(device), Side::west);
    configure_port(east(device), Side::east);
  }
  if (random_.chance(70)) await(atom("together", members_));
  aim(members_, device != members_.front() && random_.coin());
  save_all();
  draft_.goal->where = atom("number", {device}, "=", std::to_string(number));
  if (random_.chance(50)) draft_.keep = {members_.front()};
}

/// The primary goes down on purpose, and another leads.
void Author::hand_over() {
  const bool ring = random_.coin();
  add_members(2 + random_.below(2), ring);
  const std::string heir = members_[1];
  const std::string old = members_[0];
  if (random_.coin()) {
    step_via(Verb::set_priority, heir, heir);
    draft_.steps.back().step.to = draft_.platform.priorities.high;
    save_or_apply(Verb::save, heir);
  }
  step_via(Verb::restart, old, old);
  if (random_.chance(60)) await(atom("primary", {heir}));
  await(atom("up", {old}));
  if (random_.coin()) await(atom("follower", {old}));
  aim(members_, false);
  if (random_.coin()) draft_.goal->primary = heir;
  if (random_.chance(60)) draft_.keep = std::vector<std::string>(members_.begin() + 1, members_.end());
}

/// The last of a chain or a ring leaves.
void Author::take_out() {
  const bool ring = random_.coin();
  add_members(2 + random_.below(2), ring);
  const std::string gone = members_.back();
  members_.pop_back();
  const std::size_t from = draft_.steps.size();
  step(Verb::power_off, gone);
  for (const CableDraft& cable : draft_.cables) {
    if (device_of(cable.a) == gone || device_of(cable.b) == gone) step(Verb::unplug, cable.name());
  }
  if (random_.coin()) branch_out(from);
  if (random_.coin()) configure_port(east(members_.back()), Side::none);
  aim(members_, random_.chance(60));
  save_all();
  if (random_.chance(60)) draft_.keep = members_;
}

/// A spare takes a dead device's place and number.
void Author::swap() {
  add_members(2 + random_.below(2), false);
  DeviceDraft& dead = *find_device(draft_, members_.back());
  const std::string before = members_[members_.size() - 2];
  members_.pop_back();
  draft_.stack->members = members_;
  dead.on = false;
  const std::string dead_name = dead.name;
  const std::int64_t number = *dead.number;
  DeviceDraft& spare_draft = add_newcomer(false);
  const std::string spare = spare_draft.name;
  spare_draft.number = random_.coin() ? std::optional(number) : std::nullopt;
  const std::size_t old_cable = draft_.cables.size() - 1;
  link(east(before), west(spare), false);
  step(Verb::unplug, draft_.cables[old_cable].name());
  prepare(spare, {{west(spare), Side::west}});
  plug(old_cable + 1);
  await(atom(random_.coin() ? "follower" : "up", {spare}));
  std::vector<std::string> stack = members_;
  stack.push_back(spare);
  aim(stack, random_.chance(60));
  if (random_.chance(80)) save_all();
}

/// A running switch, or another small stack of one, meets the stack.
void Author::merge() {
  add_members(1 + random_.below(2), false);
  const std::string end = members_.back();
  DeviceDraft& lone = add_newcomer(true);
  const std::string name = lone.name;
  if (random_.chance(70)) lone.number = taken_or_free_number();
  if (random_.chance(30)) lone.tenure = random_.between(0, 6);
  state_port(east(end), Side::east);
  state_port(west(name), Side::west);
  link(east(end), west(name), random_.chance(15));
  if (random_.chance(40)) {
    const std::string third = add_newcomer(random_.chance(30)).name;
    state_port(east(name), Side::east);
    state_port(west(third), Side::west);
    link(east(name), west(third), random_.coin());
    if (random_.coin()) step(Verb::power_on, third);
  }
  const std::size_t from = draft_.steps.size();
  if (random_.chance(40)) prepare(name, {});
  plug(members_.size() - 1);
  await(atom(random_.chance(60) ? "follower" : "up", {name}));
  if (random_.chance(30)) branch_out(from);
  std::vector<std::string> stack = members_;
  stack.push_back(name);
  aim(stack, random_.chance(60));
  if (random_.chance(60)) save_all();
}

/// A newcomer that comes up at the east end and, by a second cable, gives the primary's east side a second neighbour:
/// where a side leads to one neighbour, the others are orphaned in the moment in which a fresh device joins them (3.b,
/// 4.2.a).
void Author::intrude() {
  draft_.platform.side_leads_to = SideLeadsTo::one_neighbour;
  add_members(2 + random_.below(2), false);
  const std::string first = members_.front();
  DeviceDraft& newcomer_draft = add_newcomer(false);
  if (random_.coin()) newcomer_draft.priority = draft_.platform.priorities.high;
  newcomer_draft.number = random_.chance(30) ? taken_or_free_number() : free_number();
  const std::string newcomer = newcomer_draft.name;
  find_device(draft_, first)->ports.push_back(factory_port(first + "/t3"));
  state_port(first + "/t3", Side::east);
  state_port(east(members_.back()), Side::east);
  state_port(west(newcomer), Side::west);
  if (random_.coin()) state_port(east(newcomer), Side::east);
  find_port(draft_, east(newcomer))->enabled = true;
  link(east(members_.back()), west(newcomer), true);
  link(first + "/t3", east(newcomer), random_.chance(80));
  step(Verb::power_on, newcomer);
  await(atom("up", {newcomer}));
  if (random_.coin()) step(Verb::unplug, draft_.cables.back().name());
  aim(members_, random_.coin());
  if (random_.chance(70)) save_all();
}

/// Steps without a plan: what spoiling adds is all that happens.
void Author::wander() {
  const bool ring = random_.coin();
  add_members(1 + random_.below(3), ring);
  const std::string newcomer = add_newcomer(random_.coin()).name;
  link(east(members_.back()), west(newcomer), random_.coin());
  link(east(newcomer), west(members_.front()), random_.chance(30));
  if (random_.coin()) state_port(west(newcomer), Side::west);
  if (random_.coin()) state_port(east(newcomer), Side::east);
  if (random_.coin()) step(Verb::power_on, newcomer);
  if (random_.coin()) step(Verb::restart, random_.pick(members_));
  const bool with_primary = random_.coin();
  aim(random_.coin() ? members_ : std::vector<std::string>{newcomer, members_.front()}, with_primary);
}

}  // namespace cairn::differential
