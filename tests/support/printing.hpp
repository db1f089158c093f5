/// \file
/// How doctest shows the values of the library in a failed check.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

#include "cairn/verdict.hpp"
#include "cairn/walk.hpp"

namespace doctest {

template <class Tag>
struct StringMaker<cairn::Id<Tag>> {
  static String convert(const cairn::Id<Tag>& id) {
    return id ? String(("#" + std::to_string(id.value)).c_str()) : String("none");
  }
};

template <class First, class Second>
struct StringMaker<std::pair<First, Second>> {
  static String convert(const std::pair<First, Second>& pair) {
    return "(" + toString(pair.first) + ", " + toString(pair.second) + ")";
  }
};

template <class T>
struct StringMaker<std::vector<T>> {
  static String convert(const std::vector<T>& list) {
    String text = "[";
    for (const T& item : list) text += " " + toString(item);
    return text + " ]";
  }
};

template <>
struct StringMaker<cairn::Power> {
  static String convert(cairn::Power power) {
    constexpr const char* names[] = {"off", "starting", "up", "held"};
    return names[static_cast<int>(power)];
  }
};

template <>
struct StringMaker<cairn::Side> {
  static String convert(cairn::Side side) {
    constexpr const char* names[] = {"none", "east", "west"};
    return names[static_cast<int>(side)];
  }
};

template <>
struct StringMaker<cairn::Refusal> {
  static String convert(cairn::Refusal refusal) {
    constexpr const char* names[] = {"none",         "not_off",      "already_off",     "not_reachable",
                                     "out_of_range", "port_enabled", "already_plugged", "port_occupied",
                                     "not_plugged"};
    return names[static_cast<int>(refusal)];
  }
};

template <>
struct StringMaker<cairn::Event> {
  static String convert(const cairn::Event& event) {
    return String(std::string(cairn::name_of(event.kind)).c_str()) + " " + std::to_string(event.place).c_str();
  }
};

template <>
struct StringMaker<cairn::Breach::Cause> {
  static String convert(cairn::Breach::Cause cause) {
    return ("cause " + std::to_string(static_cast<int>(cause))).c_str();
  }
};

template <>
struct StringMaker<cairn::Breach::GoalPart> {
  static String convert(cairn::Breach::GoalPart part) {
    return ("part " + std::to_string(static_cast<int>(part))).c_str();
  }
};

}  // namespace doctest
