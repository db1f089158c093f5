#include "base/edit_distance.hpp"

#include <array>
#include <string_view>
#include <vector>

#include <doctest/doctest.h>

using cairn::edit_distance;
using cairn::nearest;

TEST_CASE("published distances") {
  // Wagner and Fischer, "The String-to-String Correction Problem", J. ACM 21(1), 1974, define the distance; the two
  // word pairs are the usual textbook examples (from memory: Jurafsky and Martin, "Speech and Language Processing", on
  // minimum edit distance, 5 with a cost of 1 for a replacement; the second is common practice).
  CHECK(edit_distance("intention", "execution") == 5);
  CHECK(edit_distance("kitten", "sitting") == 3);
  // The restricted distance with swaps does not edit a swapped pair again: 3, where the unrestricted one has 2 (from
  // memory: Boytsov, "Indexing methods for approximate dictionary searching", 2011).
  CHECK(edit_distance("ca", "abc") == 3);
}

TEST_CASE("the distance of a word from itself is 0, from nothing its length; it is symmetric") {
  constexpr std::array<std::string_view, 5> words = {"", "a", "yard-1", "yard-12", "dray-1"};
  for (const auto a : words) {
    CHECK(edit_distance(a, a) == 0);
    CHECK(edit_distance(a, "") == a.size());
    for (const auto b : words) {
      CHECK(edit_distance(a, b) == edit_distance(b, a));
      for (const auto c : words) CHECK(edit_distance(a, c) <= edit_distance(a, b) + edit_distance(b, c));
    }
  }
}

TEST_CASE("a swap is one edit") {
  CHECK(edit_distance("yadr-1", "yard-1") == 1);
}

TEST_CASE("nearest: the fewest edits, the first among equals") {
  constexpr std::array<std::string_view, 4> known = {"primary-stays", "members-stay", "yard-2", "yard-1"};
  CHECK(nearest("primry-stays", known) == "primary-stays");
  CHECK(nearest("yard-3", known) == "yard-2");
  CHECK(nearest("YARD-1", known) == "yard-1");
  CHECK(nearest("quay", known).empty());
  const std::vector<std::string_view> verbs = {"power-on", "power-off"};
  CHECK(nearest("power-of", verbs) == "power-off");  // as near as power-on, and beginning alike for longer
  CHECK(nearest("", known).empty());
}

TEST_CASE("nearest: short words") {
  constexpr std::array<std::string_view, 3> known = {"a", "t1", "t2"};
  CHECK(nearest("b", known).empty());
  CHECK(nearest("A", known) == "a");
  CHECK(nearest("t9", known) == "t1");
  CHECK(nearest("x9", known).empty());
}

TEST_CASE("nearest: words too long for a name are near to nothing") {
  const std::string word(65, 'a');
  const std::array<std::string_view, 1> known = {word};
  CHECK(nearest(word, known).empty());
}
