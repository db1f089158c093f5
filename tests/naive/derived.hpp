/// \file
/// Sections 3 and 8: what a state implies.
#pragma once

#include "naive/world.hpp"

namespace cairn::naive {

bool cable_up(const Model& model, const World& world, CableId c);  ///< 3.a
bool linked(const Model& model, const World& world, CableId c);    ///< 3.b

/// All devices together with d, d included (3.c); empty where d is not up. This is d's class (3.d).
std::set<DeviceId> class_of(const Model& model, const World& world, DeviceId d);

/// 3.c
bool together(const Model& model, const World& world, const std::vector<DeviceId>& devices);

/// 3.d: every class.
std::set<std::set<DeviceId>> classes(const Model& model, const World& world);

/// 8
bool holds(const Model& model, const World& world, const Condition& condition);

/// 8, `saved(d)`
bool saved(const Model& model, const World& world, DeviceId d);

/// 5.h: d is reachable via v.
bool reachable(const Model& model, const World& world, DeviceId d, DeviceId v);

}  // namespace cairn::naive
