"""What the reductions of the exploration lean on, broken on purpose (src/explore/reduce).

Each mutant: its name, the file, the text that is replaced, and what stands there instead.
"""

MUTANTS = [
    # Cuts
    ("a crash cuts nobody off", "reduce/cuts.cpp", "s.left.crashes > 0 || ", ""),
    ("a break cuts nobody off", "reduce/cuts.cpp", " || s.left.cable_breaks > 0", ""),
    ("no side leads to two neighbours", "reduce/cuts.cpp", "if (crowded_ || ", "if ("),
    ("sides that a port may come to have crowd nobody", "reduce/cuts.cpp", "return side != Side::none && std::find", "return false && std::find"),
    ("a restart cuts nobody off", "reduce/cuts.cpp", "    case Verb::power_off:\n    case Verb::restart:\n", "    case Verb::power_off:\n"),
    ("a power-off cuts nobody off", "reduce/cuts.cpp", "    case Verb::power_off:\n    case Verb::restart:\n", "    case Verb::restart:\n"),
    ("a port that is disabled cuts nobody off", "reduce/cuts.cpp", "      return add(id, {}, world_.cables_at(step.port), precedence);", "      return;"),
    ("an unplugged cable cuts nobody off", "reduce/cuts.cpp", "      return add(id, {}, {step.cable}, precedence);", "      return;"),
    ("a reset cuts nobody off", "reduce/cuts.cpp", "        add(id, {}, cables_of(world_, step.device), precedence);", "        ;"),
    ("a side set at once cuts nobody off", "reduce/cuts.cpp", "if (platform.side_takes == SideTakes::at_once) add", "if (false) add"),
    ("applied sides cut nobody off", "reduce/cuts.cpp", "      for (const DeviceId d : step.devices) add_sides(id, d, precedence);\n", ""),
    ("sides applied to a stack cut nobody off", "reduce/cuts.cpp", "      if (!step.stack_of) return;\n", "      return;\n"),
    ("a cable that a step will plug is not cut later", "reduce/cuts.cpp", "  return std::any_of(way.plugs.begin(), way.plugs.end(), [&](StepId plug) { return semantics::pending(s, plug); });", "  return false;"),
    ("a broken cable does not mend", "reduce/cuts.cpp", "(!cable.broken || s.left.mends)", "!cable.broken"),
    ("a plug that comes after a step may come before it", "reduce/cuts.cpp", "!precedence.before(id, StepId(i))", "!precedence.before(StepId(i), id)"),
    ("a side that waits to be applied changes nothing", "reduce/cuts.cpp", "  if (port.operational_side != Side::none && port.side != port.operational_side) return true;\n", ""),
    ("a side that a start brings is not counted", "reduce/cuts.cpp", " | bit(port.startup_side)", ""),
    ("a side that waits is not counted", "reduce/cuts.cpp", "bit(port.operational_side) | bit(port.side)", "bit(port.operational_side)"),
    ("sides to come do not replace one another", "reduce/cuts.cpp", "before = (before | after) &", "before = before &"),
    ("a reset brings no side", "reduce/cuts.cpp", "before |= bit(world_.platform().factory.side);", ";"),
    # Meetings
    ("who will follow leads for good", "reduce/meetings.cpp", "if (!pending(*s_, following.step)) return false;", "return false;"),
    ("an await that is done still comes", "reduce/meetings.cpp", "    if (!pending(*s_, following.step)) return false;\n", ""),
    ("an await that some alternative demands counts", "reduce/meetings.cpp", "if (condition.kind != Condition::Kind::all) return visit(condition);", "if (condition.parts.empty()) return visit(condition);"),
    ("plugs before an await do not join", "reduce/meetings.cpp", "(*s_)[end.cable].plugged || any_pending(*s_, following.plugs[end.cable.value])", "(*s_)[end.cable].plugged"),
    ("plugged cables do not join before an await", "reduce/meetings.cpp", "(*s_)[end.cable].plugged || any_pending(*s_, following.plugs[end.cable.value])", "any_pending(*s_, following.plugs[end.cable.value])"),
    ("a leader whose rank changes stands in the way", "reduce/seniority.cpp", "    if (meetings_.may_change(w) || meetings_.may_change(d)) return false;\n", ""),
    ("anybody stands in the way", "reduce/seniority.cpp", " && semantics::outranks(world_, s, w, d);", " && w != d;"),
    ("whoever is senior in this state stands in the way", "reduce/seniority.cpp", "(may_be_asked(w, d) || !may_come_to_tenure(s, w, d)) && ", ""),
    ("a leader stands in the way where devices branch", "reduce/meetings.cpp", "    if (branches_[here.value] != 0) return true;\n", ""),
    ("cables that will be plugged carry nothing", "reduce/meetings.cpp", "whole && (s.cables[i].plugged || any_pending(s, plugs_[i]))", "whole && s.cables[i].plugged"),
    ("broken cables stay broken", "reduce/meetings.cpp", "!s.cables[i].broken || s.left.mends", "!s.cables[i].broken"),
    ("there is one way round a ring", "reduce/meetings.cpp", "  return std::any_of(ends.begin(), ends.end(),", "  return std::all_of(ends.begin(), ends.end(),"),
    # Seniority
    ("followers are never asked", "reduce/seniority.cpp", "(orphans || semantics::leads(s, d))", "semantics::leads(s, d)"),
    ("leaders are never asked", "reduce/seniority.cpp", "(orphans || semantics::leads(s, d))", "orphans"),
    ("no priority changes", "reduce/seniority.cpp", "      priorities_[step.device.value].push_back({StepId(i), step.value});", "      ;"),
    ("no number changes", "reduce/seniority.cpp", "    numbers_[step.device.value].push_back({StepId(i), step.value});  // 5.4\n", ""),
    ("a reset changes no priority", "reduce/seniority.cpp", "    priorities_[step.device.value].push_back({StepId(i), platform.factory.priority});  // 5.f\n", ""),
    ("tenure comes first", "reduce/seniority.cpp", "  before_tenure_.assign(election.begin(), tenure);", "  before_tenure_.clear();"),
    ("tenure comes last", "reduce/seniority.cpp", "  before_tenure_.assign(election.begin(), tenure);", "  before_tenure_.assign(election.begin(), election.end());\n  std::erase(before_tenure_, ElectionKey::tenure);"),
    ("equal seniority is not kept", "reduce/seniority.cpp", "          level = levels[candidates_[j].value];\n          changes = true;", "          ;"),
    ("levels are those of one senior only", "reduce/seniority.cpp", "level = std::max(level, levels[candidates_[j].value] + 1);", "level = levels[candidates_[j].value] + 1;"),
    # Settings
    ("nobody reads settings", "reduce/overwritten.cpp", "  return !readers.goal && std::none_of(", "  return true || std::none_of("),
    ("the goal reads no settings", "reduce/overwritten.cpp", "  return !readers.goal && std::none_of(", "  return std::none_of("),
    ("no condition reads a number or a priority", "reduce/overwritten.cpp", "    case Kind::number:\n    case Kind::priority:\n    case Kind::saved:\n", "    case Kind::saved:\n"),
    ("no condition reads whether all is saved", "reduce/overwritten.cpp", "    case Kind::priority:\n    case Kind::saved:\n", "    case Kind::priority:\n"),
    ("no condition reads a port", "reduce/overwritten.cpp", "      devices.push_back(model[condition.port].device);\n", ""),
    ("parts of conditions read nothing", "reduce/overwritten.cpp", "  for (const Condition& part : condition.parts) add_devices_read(model, part, devices);\n", ""),
    ("who is up gets other settings", "reduce/overwritten.cpp", "  if (s[d].power != Power::off && s[d].power != Power::starting) return false;\n", ""),
    ("a held device gets other settings", "reduce/overwritten.cpp", "s[d].power != Power::off && s[d].power != Power::starting", "s[d].power == Power::up"),
    ("no start compares numbers", "reduce/overwritten.cpp", "number_unread_(world.platform().settings_follow == SettingsFollow::device)", "number_unread_(true)"),
    # Budgets
    ("steps cannot be omitted", "reduce/unspent.cpp", "  return any_pending(s, steps_);", "  return false && any_pending(s, steps_);"),
    ("nobody starts late", "reduce/unspent.cpp", "return starting || s.left.crashes > 0 || mends || breaks || any_pending(s, all_steps_);", "return s.left.crashes > 0 || mends || breaks || any_pending(s, all_steps_);"),
    ("who crashes does not start", "reduce/unspent.cpp", "starting || s.left.crashes > 0 ||", "starting ||"),
    ("a cable that mends starts no contest", "reduce/unspent.cpp", " || mends || breaks", " || breaks"),
    ("orphans do not start again", "reduce/unspent.cpp", " || mends || breaks", " || mends"),
    ("steps start nobody", "reduce/unspent.cpp", " || any_pending(s, all_steps_);", ";"),
]

# Those that change no answer, and why.
EQUIVALENT: dict[str, str] = {}
