#include "differential/templates.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "cairn/prove.hpp"
#include "differential/generate.hpp"
#include "differential/random.hpp"
#include "naive/explore.hpp"
#include "support/engines.hpp"

namespace cairn::differential {

namespace {

/// Instances of a template that are worth running.
constexpr std::size_t most_instances = 60;

using Place = std::optional<Quantity>*;

// ---- Random templates

/// Every place of a draft where a parameter may stand, and a known number does.
std::vector<Quantity*> open_places(Draft& draft) {
  std::vector<Quantity*> places;
  for (DeviceDraft& device : draft.devices) {
    for (const Place value :
         {&device.number, &device.next_number, &device.priority, &device.startup_priority, &device.tenure}) {
      if (*value) places.push_back(&**value);
    }
  }
  for (StepDraft* step : all_steps(draft.steps)) {
    if (step->verb == Verb::set_number || step->verb == Verb::set_priority) places.push_back(&step->to);
  }
  return places;
}

// NOLINTNEXTLINE(misc-no-recursion): as deep as the conditions of random models
void number_atoms(ConditionDraft& condition, std::vector<ConditionDraft*>& atoms) {
  if (condition.word == "number" || condition.word == "priority") atoms.push_back(&condition);
  for (ConditionDraft& part : condition.parts) number_atoms(part, atoms);
}

class Opener {
 public:
  Opener(Random& random, Draft& draft) : random_(random), draft_(draft) {}

  void run() {
    if (random_.chance(70)) open_addresses();
    const std::size_t parameters = draft_.devices.empty() || random_.chance(15) ? 0 : 1 + random_.below(2);
    for (std::size_t i = 0; i < parameters; ++i) open_values();
    const std::size_t clauses = random_.below(3);
    for (std::size_t i = 0; i < clauses; ++i) assume();
  }

 private:
  static std::string address(std::int64_t last) { return fmt::format("\"02:00:00:00:00:{:02x}\"", last); }

  // All are stated then. Now and then two follow each other, with no place between them.
  void open_addresses() {
    std::vector<std::int64_t> last;
    for (std::size_t i = 0; i < draft_.devices.size(); ++i) {
      last.push_back(random_.chance(15) && i > 0 ? last.back() + 1 : 16 * static_cast<std::int64_t>(i + 1));
    }
    random_.shuffle(last);
    for (std::size_t i = 0; i < draft_.devices.size(); ++i) draft_.devices[i].address = address(last[i]);
    const std::size_t open = 1 + random_.below(3);
    for (std::size_t i = 0; i < open; ++i) random_.pick(draft_.devices).address = "any";
  }

  // The same parameter in one place or in several.
  void open_values() {
    const Quantity code = unknown(UnknownId(draft_.parameters.size()));
    const std::string name = fmt::format("$p{}", draft_.parameters.size());
    std::vector<Quantity*> places = open_places(draft_);
    std::erase_if(places, [](const Quantity* q) { return !is_known(*q); });
    if (places.empty()) return;
    random_.shuffle(places);
    const std::int64_t near = *places.front();
    const std::int64_t low = std::max<std::int64_t>(random_.chance(10) ? -1 : 0, near - random_.between(0, 2));
    draft_.parameters.push_back({low, std::max(low, near + random_.between(0, 2))});
    const std::size_t several = random_.chance(60) ? 1 : std::min<std::size_t>(places.size(), 2 + random_.below(2));
    for (std::size_t i = 0; i < several; ++i) *places[i] = code;
    std::vector<ConditionDraft*> atoms;
    for (ConditionDraft* condition : all_conditions(draft_)) number_atoms(*condition, atoms);
    for (ConditionDraft* atom : atoms) {
      const bool same = atom->value == std::to_string(near);
      if (random_.chance(same ? 80 : 15)) atom->value = name;
    }
  }

  AssumedDraft side() {
    if (draft_.parameters.empty() || random_.chance(30)) return {random_.between(0, 6), {}};
    return {unknown(UnknownId(random_.below(draft_.parameters.size()))), {}};
  }

  void assume() {
    static const std::vector<std::string> signs{"=", "!=", "<", "<=", ">", ">="};
    std::vector<AssumptionDraft> clause;
    const std::size_t parts = 1 + random_.below(2);
    for (std::size_t i = 0; i < parts; ++i) {
      AssumptionDraft part{side(), random_.pick(signs), side()};
      if (random_.chance(35)) {
        part.left = {0, random_.pick(draft_.devices).name};
        part.right = {0, random_.pick(draft_.devices).name};
      }
      clause.push_back(part);
    }
    draft_.assume.push_back(clause);
  }

  Random& random_;
  Draft& draft_;
};

// ---- Instances, one by one

struct Choice {
  std::vector<std::int64_t> parameters;
  std::map<std::string, std::int64_t> addresses;  ///< of all devices

  bool operator<(const Choice& other) const {
    return std::tie(parameters, addresses) < std::tie(other.parameters, other.addresses);
  }
};

bool compare_as(const std::string& sign, std::int64_t a, std::int64_t b) {
  if (sign == "=") return a == b;
  if (sign == "!=") return a != b;
  if (sign == "<") return a < b;
  if (sign == "<=") return a <= b;
  return sign == ">" ? a > b : a >= b;
}

/// Goes through all choices at which `assume` holds; addresses in every order that has room.
class Choices {
 public:
  explicit Choices(const Draft& draft) : draft_(draft) {
    for (const DeviceDraft& device : draft.devices) {
      if (device.address == "any") {
        open_.push_back(device.name);
      } else if (device.address) {
        known_.emplace_back(value_of(*device.address), device.name);
      }
    }
    std::ranges::sort(known_);
  }

  std::vector<Choice> all() {
    std::vector<std::string> order;
    order.reserve(known_.size());
    for (const auto& [address, name] : known_) order.push_back(name);
    place(0, order);
    return std::move(found_);
  }

 private:
  static std::int64_t value_of(const std::string& address) {
    std::string digits;
    for (const char c : address) {
      if (c != ':' && c != '"') digits += c;
    }
    return std::stoll(digits, nullptr, 16);
  }

  // NOLINTNEXTLINE(misc-no-recursion): as deep as there are open addresses
  void place(std::size_t next, const std::vector<std::string>& order) {
    if (next == open_.size()) return give_addresses(order);
    for (std::size_t at = 0; at <= order.size(); ++at) {
      std::vector<std::string> more = order;
      more.insert(more.begin() + static_cast<std::ptrdiff_t>(at), open_[next]);
      place(next + 1, more);
    }
  }

  // Those behind a known one follow it without a gap.
  void give_addresses(const std::vector<std::string>& order) {
    choice_.addresses.clear();
    std::int64_t free = 0;
    for (const std::string& name : order) {
      const auto known = std::ranges::find(known_, name, [](const auto& k) { return k.second; });
      if (known != known_.end()) {
        if (known->first < free) return;  // there was no room
        free = known->first;
      }
      choice_.addresses[name] = free++;
    }
    choice_.parameters.clear();
    choose();
  }

  // NOLINTNEXTLINE(misc-no-recursion): as deep as there are parameters
  void choose() {
    if (choice_.parameters.size() == draft_.parameters.size()) {
      if (is_assumed()) found_.push_back(choice_);
      return;
    }
    const Range range = draft_.parameters[choice_.parameters.size()];
    for (std::int64_t value = range.low; value <= range.high; ++value) {
      choice_.parameters.push_back(value);
      choose();
      choice_.parameters.pop_back();
    }
  }

  [[nodiscard]] std::int64_t value_of(const AssumedDraft& side) const {
    if (!side.address_of.empty()) return choice_.addresses.at(side.address_of);
    return is_known(side.quantity) ? side.quantity : choice_.parameters[unknown_of(side.quantity).value];
  }

  [[nodiscard]] bool is_assumed() const {
    return std::ranges::all_of(draft_.assume, [&](const auto& clause) {
      return std::ranges::any_of(clause, [&](const AssumptionDraft& part) {
        return compare_as(part.sign, value_of(part.left), value_of(part.right));
      });
    });
  }

  const Draft& draft_;
  std::vector<std::string> open_;
  std::vector<std::pair<std::int64_t, std::string>> known_;
  Choice choice_;
  std::vector<Choice> found_;
};

Draft instance_of(Draft draft, const Choice& choice) {
  for (Quantity* q : open_places(draft)) {
    if (!is_known(*q)) *q = choice.parameters[unknown_of(*q).value];
  }
  std::vector<ConditionDraft*> atoms;
  for (ConditionDraft* condition : all_conditions(draft)) number_atoms(*condition, atoms);
  for (ConditionDraft* atom : atoms) {
    if (atom->value.starts_with("$p"))
      atom->value = std::to_string(choice.parameters[std::stoul(atom->value.substr(2))]);
  }
  for (DeviceDraft& device : draft.devices) {
    if (device.address != "any") continue;
    const std::int64_t a = choice.addresses.at(device.name);
    device.address = fmt::format("\"{:02x}:{:02x}:{:02x}:{:02x}:{:02x}:{:02x}\"", a >> 40 & 255, a >> 32 & 255,
                                 a >> 24 & 255, a >> 16 & 255, a >> 8 & 255, a & 255);
  }
  draft.parameters.clear();
  draft.assume.clear();
  return draft;
}

bool is_open(const Draft& draft) {
  return !draft.parameters.empty() || !draft.assume.empty() ||
         std::ranges::any_of(draft.devices, [](const DeviceDraft& device) { return device.address == "any"; });
}

/// Addresses are ordered here only where all of them are stated, or none is spoken of.
bool speaks_of_unstated_addresses(const Draft& draft) {
  const auto by_address = [](const auto& clause) {
    return std::ranges::any_of(clause, [](const AssumptionDraft& part) { return !part.left.address_of.empty(); });
  };
  const bool spoken_of =
      std::ranges::any_of(draft.assume, by_address) ||
      std::ranges::any_of(draft.devices, [](const DeviceDraft& device) { return device.address == "any"; });
  return spoken_of && std::ranges::any_of(draft.devices, [](const DeviceDraft& device) { return !device.address; });
}

// ---- What all instances say together

struct Together {
  bool refuted = false;
  std::size_t length = 0;
  bool vacuous = true;
};

std::string name_with_k(const AskedProperty& asked) {
  return fmt::format("{}{}", name_of(asked.property), asked.k > 0 ? fmt::format("={}", asked.k) : "");
}

/// The instance that the library names, refuted by the events that it gives.
std::string check_named(const Draft& draft, const Model& model, const Report& report, const PropertyVerdict& verdict,
                        const std::vector<Choice>& choices) {
  if (!verdict.instance) return "no instance is named";
  const std::vector<std::int64_t>& values = verdict.instance->values;
  Choice named;
  named.parameters.assign(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(draft.parameters.size()));
  // Of its addresses only the order matters: the choice with the same one is looked for.
  std::map<std::string, std::int64_t> addresses;
  for (std::size_t i = 0; i < model.site.devices.size(); ++i) {
    const Quantity q = model.address(DeviceId(i));
    addresses[model.site.devices[i].name] = is_known(q) ? q : values[unknown_of(q).value];
  }
  const auto same = std::ranges::find_if(choices, [&](const Choice& choice) {
    if (choice.parameters != named.parameters) return false;
    return std::ranges::all_of(choice.addresses, [&](const auto& one) {
      return std::ranges::all_of(choice.addresses, [&](const auto& other) {
        return (one.second < other.second) == (addresses.at(one.first) < addresses.at(other.first));
      });
    });
  });
  if (same == choices.end()) return "what is named is no instance";
  const auto plain = read(instance_of(draft, *same));
  if (!plain) return "the instance that is named cannot be read";
  const FaultBudget none;
  const FaultBudget& faults = asked_with_faults(verdict.asked.property) ? report.faults : none;
  const std::string why = naive::replay(*plain, faults, verdict.asked, verdict.events);
  return why.empty() ? "" : "the refutation does not fit the instance that is named: " + why;
}

}  // namespace

Draft generate_template(std::uint64_t seed) {
  Draft draft = generate(seed);
  Random random(seed ^ 0x7e3a11ce);
  Opener(random, draft).run();
  return draft;
}

Comparison compare_instances(const Draft& draft) {
  Comparison comparison;
  const auto leave = [&](Comparison::Outcome outcome) {
    comparison.outcome = outcome;
    return comparison;
  };
  const auto differ = [&](std::string how) {
    comparison.outcome = Comparison::Outcome::disagree;
    comparison.difference = std::move(how);
    return comparison;
  };
  if (!is_open(draft) || speaks_of_unstated_addresses(draft)) return leave(Comparison::Outcome::unreadable);
  const std::vector<Choice> choices = Choices(draft).all();
  if (choices.size() > most_instances) return leave(Comparison::Outcome::too_large);
  const auto model = read(draft);
  std::vector<Model> instances;
  for (const Choice& choice : choices) {
    if (auto plain = read(instance_of(draft, choice))) instances.push_back(std::move(*plain));
  }
  // 9.e: a template without instances is an error, and one of which some instance would be one.
  if (instances.empty() || instances.size() < choices.size()) {
    if (!model) return leave(Comparison::Outcome::unreadable);
    return differ("a template is taken of which some instance is an error, or which has none");
  }
  if (!model) return differ("a template is refused of which every instance is taken");
  std::vector<Together> together(model->procedure.properties.size());
  for (const Model& instance : instances) {
    const auto explored = naive::explore(instance, most_states);
    if (!explored) return leave(Comparison::Outcome::too_large);
    for (std::size_t i = 0; i < together.size(); ++i) {
      const naive::Answer& answer = explored->answers[i];
      if (answer.cycle) return leave(Comparison::Outcome::endless);
      comparison.states += answer.explored;
      if (answer.refuted && (!together[i].refuted || answer.preferred.size() < together[i].length)) {
        together[i].length = answer.preferred.size();
      }
      together[i].refuted = together[i].refuted || answer.refuted;
      together[i].vacuous = together[i].vacuous && answer.vacuous;
    }
  }
  const Report report = prove(*model, test::exploring()).value();
  for (std::size_t i = 0; i < together.size(); ++i) {
    const PropertyVerdict& ours = report.properties[i];
    const Together& theirs = together[i];
    const std::string name = name_with_k(ours.asked) + ": ";
    comparison.verdicts.push_back({ours.asked, theirs.refuted, !theirs.refuted && theirs.vacuous});
    if (ours.verdict == Verdict::undecided) return differ(name + "undecided: " + ours.contradiction);
    if ((ours.verdict == Verdict::refuted) != theirs.refuted) {
      return differ(fmt::format("{}{} by the library, and by its instances {}", name, name_of(ours.verdict),
                                theirs.refuted ? "refuted" : "proved"));
    }
    if (theirs.refuted && ours.events.size() != theirs.length) {
      return differ(fmt::format("{}refuted by {} events, and the shortest of an instance has {}", name,
                                ours.events.size(), theirs.length));
    }
    if (!theirs.refuted && theirs.vacuous != !ours.vacuous.empty()) return differ(name + "vacuous by one of the two");
    if (!theirs.refuted) continue;
    const std::string wrong = check_named(draft, *model, report, ours, choices);
    if (!wrong.empty()) return differ(name + wrong);
  }
  return comparison;
}

}  // namespace cairn::differential
