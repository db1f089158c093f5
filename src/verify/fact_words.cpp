#include "verify/fact_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <optional>
#include <string_view>
#include <vector>

#include "base/text.hpp"

namespace cairn::verify {

using solver::Fact;
using solver::Within;
using system::Space;
using system::Variable;
using Kind = Variable::Kind;

namespace {

using Words = std::vector<std::string>;

std::string any_of(const Words& words) {
  const std::vector<std::string_view> views(words.begin(), words.end());
  return one_of(views);
}

// "a", "a and b", "a, b and c"
std::string all_of(const Words& words) {
  if (words.size() < 2) return words.empty() ? "" : words.front();
  const Words first(words.begin(), words.end() - 1);
  return fmt::format("{} and {}", fmt::join(first, ", "), words.back());
}

Words names_of(const Space& space, const Within& claim) {
  Words names;
  for (const std::int64_t value : claim.values) names.push_back(space.value_name(claim.variable, value));
  return names;
}

// "3", "3 or 5", "3 to 7"
std::string number_words(const Space& space, const Within& claim) {
  const auto& values = claim.values;
  const bool in_a_row = values.back() - values.front() + 1 == static_cast<std::int64_t>(values.size());
  if (values.size() > 2 && in_a_row) return fmt::format("{} to {}", values.front(), values.back());
  return any_of(names_of(space, claim));
}

std::string power_words(const Space& space, const Within& claim, bool stays) {
  Words missing;
  for (std::int64_t power = 0; power <= static_cast<std::int64_t>(Power::held); ++power) {
    const bool possible = std::ranges::binary_search(claim.values, power);
    if (!possible) missing.push_back(space.value_name(claim.variable, power));
  }
  if (missing.size() == 1) return fmt::format("is {} {}", stays ? "never" : "not", missing.front());
  return fmt::format("{} {}", stays && claim.values.size() == 1 ? "stays" : "is", any_of(names_of(space, claim)));
}

std::string leader_words(const Space& space, const Within& claim, bool stays) {
  Words others;
  bool itself = false;
  bool none = false;
  for (const std::int64_t leader : claim.values) {
    none = none || leader == system::nobody;
    itself = itself || leader == space[claim.variable].place;
    if (leader != system::nobody && leader != space[claim.variable].place) {
      others.push_back(space.value_name(claim.variable, leader));
    }
  }
  const bool only_one = claim.values.size() == 1;
  if (none && !itself && others.size() == 1) return fmt::format("follows nobody but {}", others.front());
  Words all;
  if (itself) all.emplace_back(stays && only_one ? "always leads itself" : "leads itself");
  if (!others.empty()) all.push_back(fmt::format("{}follows {}", stays && only_one ? "always " : "", any_of(others)));
  if (none) all.emplace_back(stays && only_one ? "never has a leader" : "has no leader");
  return any_of(all);
}

// What the two values are called.
struct TruthWords {
  const char* no;
  const char* yes;
};

std::string truth_words(const Within& claim, bool stays, TruthWords words) {
  if (claim.values.size() > 1) return fmt::format("is {} or {}", words.yes, words.no);
  return fmt::format("{} {}", stays ? "stays" : "is", claim.values.front() != 0 ? words.yes : words.no);
}

std::string side_words(const Space& space, const Within& claim, bool stays, std::string_view where) {
  const bool keeps = stays && claim.values.size() == 1;
  const bool none = claim.values.size() == 1 && claim.values.front() == static_cast<std::int64_t>(Side::none);
  if (none) return fmt::format("{} in {}", keeps ? "never has a side" : "has no side", where);
  return fmt::format("{} side {} in {}", keeps ? "keeps" : "has", any_of(names_of(space, claim)), where);
}

std::string left_words(const Space& space, const Within& claim) {
  static constexpr std::array<const char*, system::fault_count> faults{"cable break", "crash", "omission",
                                                                       "late start"};
  const bool one = claim.values.back() == 1;
  const std::string_view plural = space[claim.variable].place == 1 ? "es" : "s";
  return fmt::format("{} {}{} {} left", number_words(space, claim), faults.at(space[claim.variable].place),
                     one ? "" : plural, one ? "is" : "are");
}

/// Who it is about. "it" can stand for it where it was named just before.
std::string subject_of(const Space& space, system::VariableId v) {
  const Variable& variable = space[v];
  switch (variable.kind) {
    case Kind::enabled:
    case Kind::startup_enabled:
    case Kind::side:
    case Kind::startup_side:
    case Kind::operational_side:
      return space.model()[PortId(variable.place)].name;
    case Kind::plugged:
    case Kind::broken:
      return "cable " + space.model()[CableId(variable.place)].name;
    case Kind::done:
      return space.model()[StepId(variable.place)].id;
    case Kind::left:
      return {};
    case Kind::halted:
      return "the procedure";
    default:
      return space.model()[DeviceId(variable.place)].name;
  }
}

/// What is said of it. \param stays  it has been so from the start
std::string predicate_of(const Space& space, const Within& claim, bool stays) {
  const Variable& variable = space[claim.variable];
  const bool only_one = claim.values.size() == 1;
  const auto holds = [&] { return only_one && claim.values.front() != 0; };
  const auto numbered = [&](std::string_view what, std::string_view where) {
    return fmt::format("{} {} {}{}", stays && only_one ? "keeps" : "has", what, number_words(space, claim), where);
  };
  switch (variable.kind) {
    case Kind::power:
      return power_words(space, claim, stays);
    case Kind::leader:
      return leader_words(space, claim, stays);
    case Kind::number:
      return numbered("number", "");
    case Kind::next_number:
      return numbered("next number", "");
    case Kind::priority:
      return numbered("priority", "");
    case Kind::startup_priority:
      return numbered("priority", " in startup");
    case Kind::senior:
      if (!only_one) return "may have been up longer";
      return fmt::format("has {}been up longer than {}",
                         holds() ? ""
                         : stays ? "never "
                                 : "not ",
                         space.model()[DeviceId(variable.other)].name);
    case Kind::enabled:
      return truth_words(claim, stays, {"disabled", "enabled"});
    case Kind::startup_enabled:
      return truth_words(claim, stays, {"disabled", "enabled"}) + " in startup";
    case Kind::side:
      return side_words(space, claim, stays, "running");
    case Kind::startup_side:
      return side_words(space, claim, stays, "startup");
    case Kind::operational_side:
      return side_words(space, claim, stays, "operational");
    case Kind::plugged:
      return truth_words(claim, stays, {"unplugged", "plugged"});
    case Kind::broken:
      return truth_words(claim, stays, {"unbroken", "broken"});
    case Kind::done:
      return truth_words(claim, false, {"not done", "done"});
    case Kind::left:
      return left_words(space, claim);
    case Kind::halted:
      if (!only_one) return "may have halted";
      if (holds()) return "has halted";
      return stays ? "never halts" : "has not halted";
  }
  return {};
}

std::string sentence_of(const Space& space, const Within& claim, bool stays, const std::string& named_before = {}) {
  const std::string subject = subject_of(space, claim.variable);
  std::string predicate = predicate_of(space, claim, stays);
  if (subject.empty()) return predicate;
  return fmt::format("{} {}", subject == named_before ? "it" : subject, predicate);
}

/// What a fact is said under: how far the procedure has come, and how things stand.
struct Conditions {
  Words done;
  Words pending;
  std::vector<const Within*> others;

  Conditions(const Space& space, const std::vector<Within>& given) {
    for (const Within& each : given) {
      const bool of_step = space[each.variable].kind == Kind::done && each.values.size() == 1;
      if (!of_step) {
        others.push_back(&each);
      } else {
        (each.values.front() != 0 ? done : pending).push_back(subject_of(space, each.variable));
      }
    }
  }

  /// Nothing has to have happened for it to hold: so it has held from the start.
  [[nodiscard]] bool from_the_start() const { return done.empty() && others.empty() && pending.size() < 2; }
};

// "between s2 and s3, where yard-3 is up, "
std::string condition_words(const Space& space, const Conditions& given) {
  const auto are = [](const Words& steps) { return steps.size() == 1 ? "is" : "are"; };
  std::string words;
  if (given.done.size() == 1 && given.pending.size() == 1) {
    words = fmt::format("between {} and {}, ", given.done.front(), given.pending.front());
  } else {
    if (!given.done.empty()) words += fmt::format("once {} {} done, ", all_of(given.done), are(given.done));
    if (!given.pending.empty()) words += fmt::format("until {} is done, ", any_of(given.pending));
  }
  Words where;
  for (const Within* each : given.others) where.push_back(sentence_of(space, *each, false));
  if (!where.empty()) words += fmt::format("where {}, ", all_of(where));
  return words;
}

// What the claims have in common, from the start, is said once: "each of yard-3 to yard-5 keeps priority 100".
struct Alike {
  std::string predicate;
  std::vector<system::VariableId> subjects;
};

/// A name as what it begins with and the number at its end: "yard-12" is "yard-" and 12.
struct Numbered {
  std::string stem;
  std::optional<std::int64_t> number;

  explicit Numbered(const std::string& name) {
    std::size_t begin = name.size();
    while (begin > 0 && std::isdigit(static_cast<unsigned char>(name[begin - 1])) != 0) --begin;
    const std::size_t digits = name.size() - begin;
    stem = name.substr(0, begin);
    if (digits > 0 && digits < 10 && name[begin] != '0') number = std::stoll(name.substr(begin));
  }
  [[nodiscard]] bool is_followed_by(const Numbered& next) const {
    return number && next.number && stem == next.stem && *next.number == *number + 1;
  }
};

// "yard-1", "yard-1 and yard-2", "yard-1 to yard-4": names that count up are told by the first and the last.
Words runs_of(const Space& space, const std::vector<system::VariableId>& subjects) {
  Words names;
  for (const system::VariableId v : subjects) names.push_back(subject_of(space, v));
  Words words;
  for (std::size_t i = 0; i < names.size();) {
    std::size_t end = i + 1;
    while (end < names.size() && Numbered(names[end - 1]).is_followed_by(Numbered(names[end]))) ++end;
    if (end - i > 2) {
      words.push_back(fmt::format("{} to {}", names[i], names[end - 1]));
    } else {
      words.insert(words.end(), names.begin() + static_cast<std::ptrdiff_t>(i),
                   names.begin() + static_cast<std::ptrdiff_t>(end));
    }
    i = end;
  }
  return words;
}

// Who has been up longer than whom, per device.
std::string seniority_words(const Space& space, const std::vector<Within>& claims) {
  Words sentences;
  for (std::size_t i = 0; i < claims.size();) {
    const std::uint32_t device = space[claims[i].variable].place;
    Words juniors;
    std::size_t end = i;
    for (; end < claims.size() && space[claims[end].variable].place == device; ++end) {
      juniors.push_back(space.model()[DeviceId(space[claims[end].variable].other)].name);
    }
    const bool never = claims[i].values.front() == 0;
    sentences.push_back(fmt::format("{} has {}been up longer than {}", subject_of(space, claims[i].variable),
                                    never ? "never " : "", never ? any_of(juniors) : all_of(juniors)));
    i = end;
  }
  return fmt::format("{}", fmt::join(sentences, "; "));
}

// Each has a number of its own, and keeps it; and their names count up, so that it is plain whose is which.
bool is_a_number_each(const Space& space, const std::vector<Within>& claims) {
  const Kind kind = space[claims.front().variable].kind;
  std::vector<system::VariableId> subjects;
  subjects.reserve(claims.size());
  for (const Within& claim : claims) subjects.push_back(claim.variable);
  return (kind == Kind::number || kind == Kind::next_number) && runs_of(space, subjects).size() == 1 &&
         std::ranges::all_of(claims, [](const Within& claim) { return claim.values.size() == 1; });
}

// Many claims of one kind as one sentence, in the order of the site.
std::string family_words(const Space& space, const std::vector<Within>& claims) {
  const bool of_seniority = space[claims.front().variable].kind == Kind::senior;
  if (of_seniority && claims.front().values.size() == 1) return seniority_words(space, claims);
  if (is_a_number_each(space, claims)) {
    std::vector<system::VariableId> subjects;
    Words numbers;
    for (const Within& claim : claims) {
      subjects.push_back(claim.variable);
      numbers.push_back(number_words(space, claim));
    }
    return fmt::format("each of {} keeps its {}: {}", all_of(runs_of(space, subjects)),
                       space[claims.front().variable].kind == Kind::number ? "number" : "next number",
                       fmt::join(numbers, ", "));
  }
  std::vector<Alike> groups;
  for (const Within& claim : claims) {
    const std::string predicate = predicate_of(space, claim, true);
    const auto same = std::ranges::find_if(groups, [&](const Alike& group) { return group.predicate == predicate; });
    if (same == groups.end()) {
      groups.push_back({predicate, {claim.variable}});
    } else {
      same->subjects.push_back(claim.variable);
    }
  }
  Words sentences;
  for (const Alike& group : groups) {
    const bool alone = group.subjects.size() == 1;
    sentences.push_back(
        fmt::format("{}{} {}", alone ? "" : "each of ", all_of(runs_of(space, group.subjects)), group.predicate));
  }
  return fmt::format("{}", fmt::join(sentences, "; "));
}

std::string never_words(const Space& space, const std::vector<Within>& given) {
  Words all;
  for (const Within& each : given) all.push_back(sentence_of(space, each, false));
  return all.empty() ? "there is no state at all" : fmt::format("it never happens that {}", all_of(all));
}

std::string within_words(const Space& space, const Fact& fact) {
  if (fact.holds.values.empty()) return never_words(space, fact.given);
  if (!fact.also.empty()) return family_words(space, claims_of(fact));
  const Conditions given(space, fact.given);
  const bool of_step =
      space[fact.holds.variable].kind == Kind::done && fact.holds.values == std::vector<std::int64_t>{1};
  if (of_step && fact.given.size() == 1 && given.done.size() == 1) {
    return fmt::format("{} comes after {}", given.done.front(), subject_of(space, fact.holds.variable));
  }
  const std::string named = given.others.empty() ? "" : subject_of(space, given.others.back()->variable);
  return condition_words(space, given) + sentence_of(space, fact.holds, given.from_the_start(), named);
}

std::string_view law_words(system::Law law) {
  switch (law) {
    case system::Law::leaders:
      return "only a device that is up has a leader";
    case system::Law::seniority:
      return "how long they have been up puts the devices that are up or held in an order, in which some may be equal";
    case system::Law::plugs:
      return "of the cables of a port at most one is plugged";
  }
  return {};
}

}  // namespace

std::string words_of(const Space& space, const Fact& fact) {
  const auto conditions = [&] { return condition_words(space, Conditions(space, fact.given)); };
  switch (fact.kind) {
    case Fact::Kind::within:
      return within_words(space, fact);
    case Fact::Kind::law:
      return conditions() + std::string(law_words(static_cast<system::Law>(fact.place)));
    case Fact::Kind::order:
      return conditions() + "every step comes after those that it waits for";
    case Fact::Kind::spent:
      return fmt::format("{}the cables that are broken and the breaks that are left are together at most {}",
                         conditions(), space.budget().cable_breaks);
  }
  return {};
}

}  // namespace cairn::verify
