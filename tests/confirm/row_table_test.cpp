// The table of rows: a row is found when it was added, and not otherwise.
#include "solver/row_table.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <set>
#include <vector>

using namespace cairn;
using solver::RowTable;

TEST_CASE("a row is found when it was added, and not otherwise") {
  for (const std::size_t words : {std::size_t{1}, std::size_t{3}}) {
    std::mt19937_64 random(words);
    const auto draw = [&] {
      std::vector<std::uint64_t> row;
      for (std::size_t i = 0; i < words; ++i) row.push_back(random() % 20);  // many rows differ in one word alone
      return row;
    };
    RowTable table(words, 3000);
    std::set<std::vector<std::uint64_t>> added;
    while (table.size() < 3000) {
      const std::size_t count = std::min<std::uint64_t>(system::most_rows, 3000 - table.size());
      for (std::size_t i = 0; i < count; ++i) {
        std::vector<std::uint64_t> row = draw();
        if (words == 1) row[0] = random() % 5000;
        std::copy(row.begin(), row.end(), table.next() + i * words);
        added.insert(std::move(row));
      }
      table.add(count);
    }
    for (int round = 0; round < 20; ++round) {
      std::vector<std::vector<std::uint64_t>> asked;
      std::vector<std::uint64_t> rows;
      for (std::size_t i = 0; i < 300; ++i) {
        asked.push_back(draw());
        if (words == 1) asked.back()[0] = random() % 5000;
        rows.insert(rows.end(), asked.back().begin(), asked.back().end());
      }
      const system::Block found = table.find(rows.data(), asked.size());
      for (std::size_t i = 0; i < asked.size(); ++i) {
        REQUIRE((found.words[i / 64] >> i % 64 & 1) == added.count(asked[i]));
      }
    }
  }
}

TEST_CASE("an empty table holds nothing") {
  const RowTable table(2, 0);
  const std::vector<std::uint64_t> row{0, 0};
  CHECK((table.find(row.data(), 1).words[0] & 1) == 0);
}
