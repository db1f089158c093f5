// Calls that are wrong are told so in words, with exit status 2 and nothing on standard output.
#include <doctest/doctest.h>

#include <sstream>

#include "cli/program.hpp"

using namespace cairn::test;

namespace {

// What the program says to a wrong call.
std::string misuse(std::vector<std::string> arguments) {
  const Ran ran = run(std::move(arguments));
  CHECK(ran.status == 2);
  CHECK(ran.out.empty());
  return ran.err;
}

std::string see(const std::string& command = "") {
  return "See `cairn " + (command.empty() ? "" : command + " ") + "--help`.\n";
}

}  // namespace

TEST_CASE("a command is wanted, and the nearest one is offered") {
  CHECK(misuse({}) == "cairn: a command is wanted: prove, why, export, walk or lint\n" + see());
  CHECK(misuse({"prov", "a.yaml"}) == "cairn: there is no command `prov`; did you mean `prove`?\n" + see());
  CHECK(misuse({"explain"}) == "cairn: there is no command `explain`\n" + see());
}

TEST_CASE("an option that there is not, and the nearest one") {
  CHECK(misuse({"prove", "a.yaml", "--crash", "1"}) ==
        "cairn: there is no option `--crash`; did you mean `--crashes`?\n" + see("prove"));
  CHECK(misuse({"prove", "a.yaml", "--no-mend"}) ==
        "cairn: there is no option `--no-mend`; did you mean `--no-mends`?\n" + see("prove"));
  CHECK(misuse({"lint", "a.yaml", "--format=json"}) == "cairn: there is no option `--format`\n" + see("lint"));
  CHECK(misuse({"--verbose"}) == "cairn: there is no option `--verbose`\n" + see());
}

TEST_CASE("files that are missing or too many") {
  CHECK(misuse({"prove"}) == "cairn: PROCEDURE is required\n" + see("prove"));
  CHECK(misuse({"lint"}) == "cairn: FILE is required\n" + see("lint"));
  CHECK(misuse({"walk", "a.yaml", "b.yaml"}) == "cairn: `b.yaml` is one file too many\n" + see("walk"));
}

TEST_CASE("export wants a procedure, one property and a folder") {
  CHECK(misuse({"export", "--property", "no-split", "--to", "q"}) == "cairn: PROCEDURE is required\n" + see("export"));
  CHECK(misuse({"export", "a.yaml", "--to", "q"}) == "cairn: --property is required\n" + see("export"));
  CHECK(misuse({"export", "a.yaml", "--property", "no-split"}) == "cairn: --to is required\n" + see("export"));
  CHECK(misuse({"export", "a.yaml", "--to", "q", "--property", "no-split", "--property", "no-clash"}) ==
        "cairn: --property is given more than once\n" + see("export"));
  CHECK(misuse({"export", "a.yaml", "--to", "q", "--property", "no-splitt"}).find("did you mean `no-split`?") !=
        std::string::npos);
}

TEST_CASE("a value that does not fit its option") {
  const auto prove = [](std::vector<std::string> options) {
    options.insert(options.begin(), {"prove", "a.yaml"});
    const std::string said = misuse(std::move(options));
    CHECK(said.ends_with(see("prove")));
    return said.substr(0, said.find("\nSee"));
  };
  CHECK(prove({"--crashes", "-1"}) == "cairn: --crashes: a whole number of 0 or more is wanted, not `-1`");
  CHECK(prove({"--cable-breaks", "1.5"}) == "cairn: --cable-breaks: a whole number of 0 or more is wanted, not `1.5`");
  CHECK(prove({"--omissions="}) == "cairn: --omissions needs a value");
  // One more than 64 bits hold.
  CHECK(prove({"--late-starts", "9223372036854775808"}) ==
        "cairn: --late-starts: 9223372036854775808 is too large: at most 9223372036854775807 is read");
  CHECK(prove({"--reduce", "none,orders"}) == "cairn: --reduce: `none` stands alone, without other names");
  CHECK(prove({"--reduce", "orders,,alike"}) ==
        "cairn: --reduce: a name is missing: give some of seniority, settings, budgets, orders, alike");
  CHECK(prove({"--time-limit", "soon"}) == "cairn: --time-limit: seconds are wanted, 0 or more, not `soon`");
  CHECK(prove({"--time-limit", "-1"}) == "cairn: --time-limit: seconds are wanted, 0 or more, not `-1`");
  CHECK(prove({"--time-limit", "inf"}) == "cairn: --time-limit: seconds are wanted, 0 or more, not `inf`");
  CHECK(prove({"--time-limit", "nan"}) == "cairn: --time-limit: seconds are wanted, 0 or more, not `nan`");
  CHECK(prove({"--memory-limit", "0"}) == "cairn: --memory-limit: a whole number of 1 or more is wanted, not `0`");
  for (const std::string wrong : {"0", "-1", "257", "two", "1.5", "18446744073709551617"}) {
    CHECK(prove({"--jobs", wrong}) == "cairn: --jobs: a whole number from 1 to 256 is wanted, not `" + wrong + "`");
  }
  CHECK(prove({"--jobs="}) == "cairn: --jobs needs a value");
  CHECK(prove({"--jobs", "1", "--jobs", "2"}) == "cairn: --jobs is given more than once");
  CHECK(prove({"--format", "xml"}) == "cairn: --format: `text` or `json` is wanted, not `xml`");
  CHECK(prove({"--format"}) == "cairn: --format needs a value");
  CHECK(prove({"--crashes", "1", "--crashes", "2"}) == "cairn: --crashes is given more than once");
}

TEST_CASE("properties by name, tolerates-loss with its number") {
  const auto asked = [](const std::string& property) {
    const std::string said = misuse({"prove", "a.yaml", "--property", property});
    return said.substr(0, said.find('\n'));
  };
  CHECK(asked("no-splt") == "cairn: --property: there is no property `no-splt`; did you mean `no-split`?");
  CHECK(asked("tolerates-loss") ==
        "cairn: --property: tolerates-loss needs a number of cables, as in `tolerates-loss=1`");
  CHECK(asked("tolerates-loss=0") ==
        "cairn: --property: after tolerates-loss=, a whole number of 1 or more is wanted, not `0`");
  CHECK(asked("no-split=2") == "cairn: --property: no-split takes no number");
  CHECK(misuse({"prove", "a", "--property", "x"}).find("The properties are no-split, primary-stays, ") !=
        std::string::npos);
  CHECK(misuse({"prove", "a", "--property", "no-split", "--property", "no-split"}) ==
        "cairn: --property: no-split is asked for twice\n" + see("prove"));
  CHECK(misuse({"walk", "a", "--property", "no-split"}) == "cairn: --property requires --events\n" + see("walk"));
}

TEST_CASE("help begins with examples and fits into 80 columns") {
  for (const std::vector<std::string>& call : {std::vector<std::string>{"--help"},
                                               {"prove", "--help"},
                                               {"why", "--help"},
                                               {"export", "--help"},
                                               {"walk", "-h"},
                                               {"lint", "--help"}}) {
    const Ran ran = run(call);
    CHECK(ran.status == 0);
    CHECK(ran.err.empty());
    CHECK(ran.out.starts_with("Examples:\n  cairn "));
    std::istringstream lines(ran.out);
    for (std::string line; std::getline(lines, line);) {
      CAPTURE(line);
      CHECK(line.size() <= 80);
    }
  }
}

TEST_CASE("the version stands by itself") {
  const Ran ran = run({"--version"});
  CHECK(ran.status == 0);
  CHECK(ran.out == "cairn 0.1.0\n");
}
