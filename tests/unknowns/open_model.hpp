/// \file
/// Models of which only what they leave open counts.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "cairn/model.hpp"

namespace cairn::test {

/// Parameters a, b, c, … of these ranges; devices d0, d1, … with these addresses, and then so many whose address is
/// open.
inline Model open_model(const std::vector<Range>& ranges, const std::vector<std::uint64_t>& known = {},
                        std::size_t open = 0) {
  Model model;
  for (const Range& range : ranges) {
    model.unknowns.parameters.push_back(
        {std::string(1, static_cast<char>('a' + model.unknowns.parameters.size())), range});
  }
  for (std::size_t i = 0; i < known.size() + open; ++i) {
    Device device;
    device.name = "d" + std::to_string(i);
    if (i < known.size()) device.address = known[i];
    if (i >= known.size()) model.unknowns.addresses.emplace_back(i);
    model.site.devices.push_back(device);
  }
  return model;
}

/// The unknown with this place.
inline Quantity q(std::size_t place) {
  return unknown(UnknownId(place));
}

}  // namespace cairn::test
