// The program from start to end: exit statuses, streams that fail, terminals, interrupts.
#include <doctest/doctest.h>
#include <signal.h>
#include <sysexits.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <nlohmann/json.hpp>
#include <thread>

#include "cli/program.hpp"
#include "report/quay.hpp"
#include "support/allocator.hpp"

using namespace cairn::test;

namespace {

const std::string sound =
    "  - power-on: quay-3\n  - await: up(quay-3)\n  - plug: run\n  - await: follower(quay-3)\n"
    "goal: {stack: [quay-1, quay-2, quay-3], primary: quay-1}\n";
const std::string wrong = "  - unplug: span\n";

// Far more states than a test has time for: lanes of steps in any order, and faults.
std::string endless() {
  std::string lanes = "  - any-order:\n";
  for (const char* port : {"quay-1/w", "quay-1/e", "quay-2/w", "quay-2/e"}) {
    lanes += "    - - disable: " + std::string(port) + "\n";
    for (int i = 0; i < 12; ++i) {
      lanes += std::string("      - ") + (i % 2 == 0 ? "enable: " : "disable: ") + port + "\n";
    }
  }
  return quay_text(lanes +
                   "faults: {cable-breaks: 6, crashes: 6, omissions: 6, late-starts: 6, mends: true}\n"
                   "properties: [no-clash]\n");
}

}  // namespace

TEST_CASE("exit statuses are those of sysexits(3) and of a POSIX shell, where they name one") {
  // EX_SOFTWARE, "internal software error"; POSIX.1-2017, shell 2.8.2: a status over 128 for a signal.
  CHECK(EX_SOFTWARE == 70);
  CHECK(128 + SIGINT == 130);
}

TEST_CASE("where the address space is small, what is settled stands and the rest is undecided by memory" *
          doctest::skip(allocator_is_replaced)) {
  const Workplace place;
  const std::string path = place.write("endless.yaml", endless());
  for (const char* jobs : {"4", "64"}) {  // the stacks of 64 threads alone take more
    CAPTURE(jobs);
    Start start{{"prove", path, "--engine", "explore", "--format", "json", "--jobs", jobs, "--confirm-limit", "0",
                 "--reduce", "none", "--property", "no-clash", "--property", "no-split"}};
    start.address_space = 60'000'000;
    const Ran ran = run(start);
    CHECK(ran.err.empty());
    CHECK(ran.status == 1);
    const auto document = nlohmann::json::parse(ran.out);
    CHECK(document["properties"][0]["verdict"] == "undecided");
    CHECK(document["properties"][0]["reason"] == "memory");
    CHECK(document["properties"][1]["verdict"] == "refuted");
    start.arguments.resize(start.arguments.size() - 2);
    CHECK(run(start).status == 3);
  }
}

TEST_CASE("0 where all is proved, 1 where something is refuted, 3 where something is left open") {
  const Workplace place;
  const std::string good = place.write("good.yaml", quay_text(sound));
  const std::string bad = place.write("bad.yaml", quay_text(wrong));
  CHECK(run({"prove", good}).status == 0);
  CHECK(run({"prove", bad}).status == 1);
  CHECK(run({"prove", bad, "--property", "no-clash"}).status == 0);
  for (const char* engine : {"auto", "explore", "solver", "both"}) {
    CAPTURE(engine);
    const Ran late = run({"prove", good, "--time-limit", "0", "--engine", engine});
    CHECK(late.status == 3);
    CHECK(late.out.find("time limit") != std::string::npos);
  }
  CHECK(run({"prove", good, "--cable-breaks", "1"}).status == 1);
  CHECK(run({"prove", good, "--property", "tolerates-loss=1"}).status == 1);
}

TEST_CASE("why has the exit statuses of prove") {
  const Workplace place;
  const std::string good = place.write("good.yaml", quay_text(sound));
  const std::string bad = place.write("bad.yaml", quay_text(wrong));
  CHECK(run({"why", good}).status == 0);
  CHECK(run({"why", bad}).status == 1);
  CHECK(run({"why", bad, "--property", "no-clash"}).status == 0);
  CHECK(run({"why", good, "--time-limit", "0"}).status == 3);
  CHECK(run({"why", good, bad}).status == 2);
  CHECK(run({"why", place.path() + "/missing.yaml"}).status == 2);
  CHECK(run({"why", good, "--property", "no-split", "--property", "no-split"}).status == 2);
  const Ran json = run({"why", good, "--format", "json"});
  CHECK(nlohmann::json::parse(json.out)["schema"] == "cairn/why/1");
}

TEST_CASE("why --drop-one has the exit statuses of prove, and goes with the other options") {
  const Workplace place;
  const std::string good = place.write("good.yaml", quay_text(sound));
  const std::string bad = place.write("bad.yaml", quay_text(wrong));
  CHECK(has(run({"why", "--drop-one", good}).out, "Left out one at a time"));
  CHECK(run({"why", "--drop-one", good}).status == 0);
  CHECK(run({"why", "--drop-one", bad}).status == 1);
  CHECK(run({"why", "--drop-one", bad, "--property", "no-clash"}).status == 0);
  CHECK(run({"why", "--drop-one", good, "--time-limit", "0"}).status == 3);
  CHECK(run({"why", "--drop-one", place.path() + "/missing.yaml"}).status == 2);
  CHECK(run({"why", "--drop-one", good, "--property", "tolerates-loss=1"}).status == 1);
  CHECK(run({"prove", "--drop-one", good}).status == 2);
  const Ran json = run({"why", good, "--format", "json", "--drop-one", "--crashes", "1"});
  const auto document = nlohmann::json::parse(json.out);
  CHECK(document["schema"] == "cairn/why/1");
  CHECK(document["faults"]["crashes"] == 1);
  CHECK(document["drop-one"].is_array());
  CHECK_FALSE(nlohmann::json::parse(run({"why", good, "--format", "json"}).out).contains("drop-one"));
}

TEST_CASE("--property takes one name, and what follows it is a file") {
  const Workplace place;
  const std::string good = place.write("good.yaml", quay_text(sound));
  const std::string bad = place.write("bad.yaml", quay_text(wrong));
  const Ran ran = run({"prove", "--format", "json", "--property", "no-split", good, bad});
  CHECK(ran.status == 1);
  CHECK(std::count(ran.out.begin(), ran.out.end(), '\n') == 2);
  CHECK(run({"prove", "--property", "no-clash", "no-split", good}).status == 2);  // `no-split` is a file, and missing
}

TEST_CASE("of several losses the one of the number asked for is walked") {
  const Workplace place;
  const std::string good = place.write("good.yaml", quay_text(sound));
  const Ran proved =
      run({"prove", "--format", "json", "--property", "tolerates-loss=1", "--property", "tolerates-loss=2", good});
  CHECK(proved.status == 1);
  const std::string verdict = place.write("verdict.json", proved.out);
  const auto breaks = [&](const std::string& property) {
    const Ran walked = run({"walk", good, "--events", verdict, "--property", property});
    CHECK(walked.status == 0);
    std::size_t count = 0;
    for (std::size_t at = 0; (at = walked.out.find("  fault  ", at)) != std::string::npos; ++at) ++count;
    return count;
  };
  CHECK(breaks("tolerates-loss") == 1);
  CHECK(breaks("tolerates-loss=2") == 2);
  CHECK(run({"walk", good, "--events", verdict, "--property", "tolerates-loss=3"}).status == 2);
}

TEST_CASE("faults are the file's unless the call says otherwise") {
  const Workplace place;
  const std::string file =
      place.write("f.yaml", quay_text(sound + "faults: {cable-breaks: 1, crashes: 2, omissions: 3, late-starts: 4, "
                                              "mends: true}\nproperties: [no-refusal]\n"));
  const auto faults = [&](std::vector<std::string> options) {
    options.insert(options.begin(), {"prove", file, "--format", "json"});
    return nlohmann::ordered_json::parse(run(options).out)["faults"].dump();
  };
  CHECK(faults({}) == R"({"cable-breaks":1,"crashes":2,"omissions":3,"late-starts":4,"mends":true})");
  CHECK(faults({"--no-mends"}) == R"({"cable-breaks":1,"crashes":2,"omissions":3,"late-starts":4,"mends":false})");
  CHECK(faults({"--cable-breaks=5", "--crashes=6", "--omissions=7", "--late-starts=8"}) ==
        R"({"cable-breaks":5,"crashes":6,"omissions":7,"late-starts":8,"mends":true})");
  CHECK(faults({"--crashes", "010"}) ==  // ten, not the eight of an octal number
        R"({"cable-breaks":1,"crashes":10,"omissions":3,"late-starts":4,"mends":true})");
  CHECK(faults({"--mends", "--crashes", "0"}) ==
        R"({"cable-breaks":1,"crashes":0,"omissions":3,"late-starts":4,"mends":true})");
}

TEST_CASE("several procedures: all are read first, the worst status counts, one summary line each") {
  const Workplace place;
  const std::string good = place.write("good.yaml", quay_text(sound));
  const std::string bad = place.write("bad.yaml", quay_text(wrong));
  const std::string broken = place.write("broken.yaml", "procedure: [\n");
  const Ran both = run({"prove", good, bad});
  CHECK(both.status == 1);
  CHECK(both.out.ends_with("\nproved     " + good + ": At the quay\nrefuted    " + bad + ": no-split\n"));
  const Ran quiet = run({"prove", good, bad, "--quiet"});
  CHECK(quiet.out == "proved     " + good + ": At the quay\nrefuted    " + bad + ": no-split\n");
  const Ran json = run({"prove", bad, good, "--format", "json"});
  CHECK(std::count(json.out.begin(), json.out.end(), '\n') == 2);
  CHECK(json.out.find("\"refuted\"") < json.out.find("\"proved\",\"faults\""));

  const Ran stopped = run({"prove", bad, broken});
  CHECK(stopped.status == 2);
  CHECK(stopped.out.empty());
  CHECK(has(stopped.err, "broken.yaml:"));
  // What the question makes wrong counts as well.
  const std::string goalless = place.write("goalless.yaml", quay_text(wrong));
  const Ran unasked = run({"prove", good, goalless, "--property", "reaches-goal"});
  CHECK(unasked.status == 2);
  CHECK(unasked.out.empty());
  CHECK(has(unasked.err, "no goal"));
}

TEST_CASE("- is standard input") {
  Start start;
  start.arguments = {"prove", "-", "--quiet"};
  start.input = quay_text(sound);
  CHECK(run(start).status == 0);
  start.arguments = {"walk", "-"};
  CHECK(has(run(start).out, "Every step is done."));
  start.arguments = {"lint", "-"};
  CHECK(run(start).status == 0);
  start.arguments = {"walk", "-", "--events", "-"};
  const Ran twice = run(start);
  CHECK(twice.status == 2);
  CHECK(has(twice.err, "standard input cannot be both files at once"));
}

TEST_CASE("same call, same bytes") {
  const Workplace place;
  const std::string bad = place.write("bad.yaml", quay_text(wrong));
  CHECK(run({"prove", bad}).out == run({"prove", bad}).out);
  CHECK(has(run({"prove", bad, "--timing"}).out, "What it cost"));
}

TEST_CASE("a verdict is walked, the refutation asked for") {
  const Workplace place;
  const std::string bad = place.write("bad.yaml", quay_text(wrong + "keep: [quay-1, quay-2]\n"));
  const std::string verdict = place.write("v.json", run({"prove", bad, "--format", "json"}).out);
  const Ran walked = run({"walk", bad, "--events", verdict});
  CHECK(walked.status == 0);
  CHECK(has(walked.out, "A run that breaks no-split."));
  CHECK(has(walked.out, "What broke  When the operator unplugs cable span"));
  const Ran other = run({"walk", bad, "--events", verdict, "--property", "no-clash"});
  CHECK(other.status == 2);
  CHECK(other.out.empty());
  CHECK(has(other.err, "it holds no refutation of no-clash"));
  // The procedure has changed since: its events are no run of it any more.
  const std::string changed = place.write("changed.yaml", quay_text("  - save: quay-1\n  - unplug: span\n"));
  const Ran stale = run({"walk", changed, "--events", verdict});
  CHECK(stale.status == 2);
  CHECK(has(stale.err, "does not fit this procedure"));
}

TEST_CASE("a walk that ends early, or with a refusal, is no success") {
  const Workplace place;
  CHECK(run({"walk", place.write("a.yaml", quay_text(sound))}).status == 0);
  CHECK(run({"walk", place.write("b.yaml", quay_text("  - await: up(quay-3)\n"))}).status == 1);
  CHECK(run({"walk", place.write("c.yaml", quay_text("  - save: quay-3\n"))}).status == 1);
  CHECK(run({"walk", place.path() + "/none.yaml"}).status == 2);
}

TEST_CASE("lint: 0 clean, 1 findings, 2 problems, 3 cut short") {
  const Workplace place;
  const std::string clean = place.write("clean.yaml", quay_text(sound));
  const std::string odd = place.write("odd.yaml", quay_text("  - save: quay-1\n"));
  const std::string broken = place.write("broken.yaml", "procedure: 1\n");
  CHECK(run({"lint", clean}).status == 0);
  CHECK(run({"lint", clean, odd}).status == 1);
  CHECK(run({"lint", clean, odd, "--time-limit", "0"}).status == 3);
  const Ran all = run({"lint", odd, broken, clean});
  CHECK(all.status == 2);
  CHECK(has(all.out, "odd.yaml: 1 finding"));
  CHECK(has(all.out, "clean.yaml: nothing suspicious"));
  CHECK(has(all.err, "broken.yaml:"));
}

TEST_CASE("a reader that has gone away is no failure") {
  const Workplace place;
  Start start;
  start.arguments = {"prove", place.write("bad.yaml", quay_text(wrong))};
  start.close_output = true;
  const Ran ran = run(start);
  CHECK(ran.status == 1);
  CHECK(ran.err.empty());
}

TEST_CASE("a full disk is a failure that looks like no verdict") {
  const Workplace place;
  Start start;
  start.arguments = {"prove", place.write("good.yaml", quay_text(sound))};
  start.output_file = "/dev/full";
  const Ran ran = run(start);
  CHECK(ran.status == 70);
  CHECK(ran.err == "cairn: could not write the answer: No space left on device\n");
}

TEST_CASE("colours go to a terminal that wants them") {
  const Workplace place;
  Start start;
  start.arguments = {"prove", place.write("good.yaml", quay_text(sound))};
  const auto coloured = [&] { return has(run(start).out, "\x1b[1;32m"); };
  start.environment = {"TERM=xterm"};
  CHECK(!coloured());  // a pipe
  start.on_terminal = true;
  CHECK(coloured());
  start.environment = {"TERM=xterm", "NO_COLOR=1"};
  CHECK(!coloured());
  // https://no-color.org: "when present and not an empty string (regardless of its value)".
  start.environment = {"TERM=xterm", "NO_COLOR="};
  CHECK(coloured());
  start.environment = {"TERM=dumb"};
  CHECK(!coloured());
  start.environment = {};
  CHECK(!coloured());
}

TEST_CASE("progress is shown to a terminal alone, and wiped at the end") {
  const Workplace place;
  Start start;
  start.arguments = {
      "prove", place.write("endless.yaml", endless()), "--engine", "explore", "--reduce", "none", "--time-limit", "1"};
  start.environment = {"TERM=xterm", "NO_COLOR=1"};
  const Ran piped = run(start);
  CHECK(piped.status == 3);
  CHECK(piped.err.empty());
  start.on_terminal = true;
  const Ran watched = run(start);
  CHECK(has(watched.out, " states after "));
  CHECK(has(watched.out, "\r\x1b[KUNDECIDED"));
  start.arguments.push_back("--quiet");
  CHECK(!has(run(start).out, " states after "));
}

TEST_CASE("Ctrl-C ends with what is known by then") {
  const Workplace place;
  Start start;
  start.arguments = {"prove", place.write("endless.yaml", endless()), "--engine", "explore", "--reduce", "none"};
  start.meanwhile = [](int child) {
    std::this_thread::sleep_for(std::chrono::milliseconds(500));
    kill(child, SIGINT);
  };
  const Ran once = run(start);
  CHECK(once.status == 130);
  CHECK(once.out.starts_with("UNDECIDED"));
  CHECK(has(once.out, "interrupted first"));
}

TEST_CASE("a memory limit ends the search with an answer") {
  const Workplace place;
  const Ran ran = run({"prove", place.write("endless.yaml", endless()), "--engine", "explore", "--reduce", "none",
                       "--memory-limit", "3"});
  CHECK(ran.status == 3);
  CHECK(has(ran.out, "the memory limit was met first"));
}
