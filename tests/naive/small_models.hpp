/// \file
/// Small models for the tests of the reference: one platform whose rules can be exchanged one by one, and a site and a
/// procedure in the words of docs/format.md.
#pragma once

#include <doctest/doctest.h>

#include <map>
#include <string>

#include "cairn/load.hpp"

namespace cairn::naive {

using Rules = std::map<std::string, std::string>;

/// `site` and `procedure` are the documents from their second key on. What is asked is up to each test.
inline Model small_model(const Rules& changed, const std::string& site, const std::string& procedure) {
  Rules rules = {{"numbers", "[1, 9]"},
                 {"priorities", "[1, 15]"},
                 {"factory", "{number: 1, priority: 7, enabled: true, side: none}"},
                 {"number-takes", "at-restart"},
                 {"priority-takes", "at-restart"},
                 {"settings-follow", "device"},
                 {"side-takes", "at-once"},
                 {"side-needs-disabled", "false"},
                 {"facing", "opposite"},
                 {"side-leads-to", "one-neighbour"},
                 {"software", "any"},
                 {"orphans", "restart"},
                 {"election", "[priority, tenure, number]"}};
  for (const auto& [rule, value] : changed) rules[rule] = value;
  std::string platform = "platform: Rules of a test\n";
  for (const auto& [rule, value] : rules) platform += rule + ": " + value + "\n";
  const MemoryFiles files(
      {{"platform.yaml", platform},
       {"site.yaml", "site: Small\nplatform: platform.yaml\n" + site},
       {"procedure.yaml", "procedure: Small\nsite: site.yaml\nproperties: [no-refusal]\n" + procedure}});
  const auto model = load_procedure("procedure.yaml", files);
  if (!model) FAIL(model.problems().front().message);
  return model.value();
}

/// Two to four switches in a chain, a to d, west ports t1 and east ports t2, a the primary. `more` holds further keys
/// of each.
inline std::string chain(const std::string& names, const std::map<char, std::string>& more = {}) {
  std::string devices = "devices:\n";
  std::string cables;
  std::string members;
  for (std::size_t i = 0; i < names.size(); ++i) {
    const char d = names[i];
    const auto extra = more.find(d);
    devices += std::string("  ") + d + ": {number: " + std::to_string(i + 1) + ", priority: " + std::to_string(9 - i) +
               (extra == more.end() ? "" : ", " + extra->second) + ", ports: {t1: {side: west}, t2: {side: east}}}\n";
    if (i > 0) cables += std::string("  ") + names[i - 1] + "/t2--" + d + "/t1: {}\n";
    members += (i > 0 ? std::string(", ") : std::string()) + d;
  }
  return devices + (cables.empty() ? "" : "cables:\n" + cables) + "stack: {primary: " + names[0] + ", members: [" +
         members + "]}\n";
}

inline DeviceId device(const Model& model, const std::string& name) {
  for (std::size_t i = 0; i < model.site.devices.size(); ++i) {
    if (model.site.devices[i].name == name) return DeviceId(i);
  }
  FAIL("no device " << name);
  return {};
}

}  // namespace cairn::naive
