// The seeds of the fuzzers and all that they ever found.
#include <filesystem>
#include <fstream>
#include <sstream>

#include <doctest/doctest.h>

#include "inputs.hpp"

namespace {

namespace fs = std::filesystem;

std::size_t run_all(const char* folder, const char* input, std::string (*run)(const std::string&)) {
  std::size_t count = 0;
  for (const auto& entry : fs::directory_iterator(fs::path(CAIRN_SOURCE_DIR) / "tests" / "fuzz" / folder / input)) {
    std::ifstream in(entry.path(), std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    CHECK_MESSAGE(run(text.str()).empty(), entry.path().string());
    ++count;
  }
  return count;
}

}  // namespace

TEST_CASE("the reader keeps its promises on every seed and finding") {
  CHECK(run_all("corpus", "reader", cairn::test::try_reader) > 0);
  CHECK(run_all("found", "reader", cairn::test::try_reader) > 0);
}

TEST_CASE("conditions: every seed and finding") {
  CHECK(run_all("corpus", "condition", cairn::test::try_condition) > 0);
  CHECK(run_all("found", "condition", cairn::test::try_condition) > 0);
}

TEST_CASE("the reader keeps its promises on every prefix of a model, and with any byte spoilt") {
  const std::string model =
      "procedure: x\nsite: site.yaml\nkeep: [a, b]\nsteps:\n- power-on: c\n- any-order:\n  - - {await: \"up(c) and "
      "number(c) = 9\"}\n"
      "  - plug: splice\n- check: >\n    linked(a/q--b/p)\n    or done(s1)\ngoal: {stack: [a, b], saved: true}\n";
  REQUIRE(cairn::test::try_reader(model).empty());
  for (std::size_t i = 0; i < model.size(); ++i) {
    CHECK(cairn::test::try_reader(model.substr(0, i)).empty());
    for (const char c : {'\0', '\n', ' ', ':', '\xFF', '"', '[', '&', '$'}) {
      auto spoilt = model;
      spoilt[i] = c;
      CHECK(cairn::test::try_reader(spoilt).empty());
    }
  }
}
