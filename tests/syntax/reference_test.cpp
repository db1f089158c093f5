#include "syntax/reference.hpp"

#include <doctest/doctest.h>

#include "support/read_yaml.hpp"

using namespace cairn::syntax;

namespace {

/// The names of the reference that `text` begins with, with bars between them and what is left behind `#`.
std::string scanned(const std::string& text, bool blanks = false) {
  std::size_t at = 0;
  const auto result = scan_reference(text, at, blanks);
  if (const auto* failed = std::get_if<NotScanned>(&result)) {
    return "at " + std::to_string(failed->at.offset) + ": " + failed->expected;
  }
  const auto& found = std::get<Scanned>(result);
  std::string out;
  for (std::size_t i = 0; i < found.names; ++i)
    out += (i > 0 ? "|" : "") + text.substr(found.at[i].offset, found.at[i].length);
  return out + '#' + text.substr(at);
}

}  // namespace

TEST_CASE("names, ports and ends") {
  CHECK(scanned("yard-1") == "yard-1#");
  CHECK(scanned("yard-1/t2") == "yard-1|t2#");
  CHECK(scanned("yard-1/t2--yard-2/t1") == "yard-1|t2|yard-2|t1#");
  CHECK(scanned("a--b") == "a--b#");  // a cable's id
  CHECK(scanned("up)") == "up#)");
}

TEST_CASE("a name is as long as it can be, but `--` ends the name of a port") {
  CHECK(scanned("a/p-1--b-2/q.3") == "a|p-1|b-2|q.3#");
  CHECK(scanned("a-/p-") == "a-|p-#");
  CHECK(scanned("a/p---b/q") == "at 5: the name of a device after `--`");
  CHECK(scanned("a/p--b/q--c/r") == "a|p|b|q#--c/r");
}

TEST_CASE("what is no reference") {
  CHECK(scanned("") == "at 0: a name");
  CHECK(scanned("/p") == "at 0: a name");
  CHECK(scanned("a/") == "at 2: the name of a port after `/`");
  CHECK(scanned("a--b/p") == "at 0: the name of a device, in which `--` does not stand");
  CHECK(scanned("a/p--b") == "at 6: `/` and the name of a port");
  CHECK(scanned("a/p--b--c/q") == "at 5: the name of a device after `--`");
}

TEST_CASE("blanks between the parts, where they may stand") {
  CHECK(scanned("a / p -- b / q )", true) == "a|p|b|q# )");
  CHECK(scanned("a / p", false) == "a# / p");
  CHECK(scanned("a )", true) == "a# )");
}
