// Each answer of drop_one compared with the procedure as somebody would write it without the part: a line taken out of
// the file, or two lines put in any order, read anew and proved by visiting every state.
#include <doctest/doctest.h>

#include <sstream>

#include "support/engines.hpp"
#include "support/printing.hpp"
#include "why/yard.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

using Lines = std::vector<std::string>;

const std::string models = CAIRN_SOURCE_DIR "/models/";

/// A file whose procedure is one step after the other.
struct Written {
  Lines head;
  std::vector<Lines> steps;  ///< each with the lines that it goes on for
  Lines tail;

  [[nodiscard]] std::string text() const {
    std::string text;
    const auto add = [&](const Lines& lines) {
      for (const std::string& line : lines) text += line + "\n";
    };
    add(head);
    for (const Lines& step : steps) add(step);
    add(tail);
    return text;
  }
};

Written written(const std::string& path) {
  std::istringstream text(std::get<std::string>(DiskFiles().read(models + path)));
  Written file;
  for (std::string line; std::getline(text, line);) {
    if (line.starts_with("  - ")) {
      file.steps.push_back({line});
    } else if (file.tail.empty() && !file.steps.empty() && line.starts_with("    ")) {
      file.steps.back().push_back(line);
    } else {
      (file.steps.empty() ? file.head : file.tail).push_back(line);
    }
  }
  return file;
}

// As it would be written without the part, which is a step or the ordering of two steps that follow one another.
Written without_it(Written file, const Part& part) {
  const auto step = file.steps.begin() + part.step.value;
  if (part.kind != Part::Kind::ordering) {
    file.steps.erase(step);
    return file;
  }
  REQUIRE(part.before.value + 1 == part.step.value);
  for (const auto branch : {step - 1, step}) {
    for (std::string& line : *branch) line.insert(0, "    ");
  }
  file.steps.insert(step - 1, {"  - any-order:"});
  return file;
}

/// The disk, but for one file that holds something else.
class Changed final : public Files {
 public:
  Changed(std::string path, std::string text) : path_(std::move(path)), text_(std::move(text)) {}
  [[nodiscard]] std::variant<std::string, Unreadable> read(const std::string& path) const override {
    return path == path_ ? std::variant<std::string, Unreadable>(text_) : DiskFiles().read(path);
  }

 private:
  std::string path_;
  std::string text_;
};

Model read(const std::string& path, const Written& file) {
  const auto model = load_procedure(models + path, Changed(models + path, file.text()));
  if (!model) FAIL(render_diagnostics(model.problems()));
  return model.value();
}

// The verdict on one property, every state visited.
PropertyVerdict proved_anew(const Model& model, const AskedProperty& asked) {
  ProveOptions options = test::exploring();
  options.properties = {asked};
  return prove(model, options).value().properties.front();
}

// The answer on one part is the verdict on `variant`, which was written without it.
void check_against(const Model& variant, const Dropped& dropped) {
  for (const LeftOut& proof : dropped.proofs) {
    CAPTURE(cairn::name_of(proof.outcome.asked.property));
    const PropertyVerdict anew = proved_anew(variant, proof.outcome.asked);
    CHECK((anew.verdict == Verdict::refuted) == (proof.standing == Standing::needed));
    CHECK(anew.events.size() == proof.outcome.events.size());
    CHECK(anew.vacuous == proof.outcome.vacuous);
  }
}

// Checks the answer on the part of `text` of this name against `without_it`.
void check_written(const std::string& text, const std::string& name, const std::string& without_it) {
  CAPTURE(name);
  const Model model = at_the_yard(text);
  const DropOne answer = drop_one(model).value();
  const auto part = std::ranges::find(answer.dropped, name, [&](const Dropped& d) { return name_of(model, d.part); });
  REQUIRE(part != answer.dropped.end());
  check_against(at_the_yard(without_it), *part);
}

const std::string asked =
    "goal: {stack: [yard-1, yard-2]}\nproperties: [no-split, no-refusal, reaches-goal, survives-cold-start]\n";

}  // namespace

TEST_CASE("every answer is the verdict on the file without the part") {
  std::size_t idle = 0;
  std::size_t needed = 0;
  for (const char* path : {"quickstart/append.yaml", "quickstart/append-outranks.yaml", "procedures/append-east.yaml",
                           "procedures/guard-by-check.yaml", "procedures/reuse-spare.yaml", "procedures/hand-over.yaml",
                           "procedures/close-chain.yaml"}) {
    CAPTURE(path);
    const Written file = written(path);
    const Model model = read(path, file);
    REQUIRE(model.procedure.steps.size() == file.steps.size());
    const DropOne answer = drop_one(model).value();
    for (const Dropped& dropped : answer.dropped) {
      CAPTURE(name_of(model, dropped.part));
      check_against(read(path, without_it(file, dropped.part)), dropped);
      for (const LeftOut& proof : dropped.proofs) ++(proof.standing == Standing::needed ? needed : idle);
    }
  }
  // It would say nothing, were all of them alike.
  CHECK(idle > 100);
  CHECK(needed > 50);
}

TEST_CASE("orderings of steps that branch, as somebody would write the steps without them") {
  const std::string text = R"(steps:
  - power-on: {device: yard-3, id: power}
  - any-order:
      - await: {condition: up(yard-3), id: seen}
      - save: {devices: yard-1, id: kept}
  - set-priority: {device: yard-3, to: 90, id: tame}
)" + asked;
  check_written(text, "seen before tame", R"(steps:
  - power-on: {device: yard-3, id: power}
  - any-order:
      - await: {condition: up(yard-3), id: seen}
      - - save: {devices: yard-1, id: kept}
        - set-priority: {device: yard-3, to: 90, id: tame}
)" + asked);
  check_written(text, "kept before tame", R"(steps:
  - power-on: {device: yard-3, id: power}
  - any-order:
      - - await: {condition: up(yard-3), id: seen}
        - set-priority: {device: yard-3, to: 90, id: tame}
      - save: {devices: yard-1, id: kept}
)" + asked);
  check_written(text, "power before seen", R"(steps:
  - any-order:
      - await: {condition: up(yard-3), id: seen}
      - - power-on: {device: yard-3, id: power}
        - save: {devices: yard-1, id: kept}
  - set-priority: {device: yard-3, to: 90, id: tame}
)" + asked);
}

TEST_CASE("an await that a condition asks to be done, as somebody would write the condition without it") {
  check_written(R"(steps:
  - any-order:
      - - power-on: {device: yard-3, id: power}
        - await: {condition: up(yard-3), id: seen}
      - - await: {condition: done(seen), id: told}
        - set-priority: {device: yard-3, to: 90}
)" + asked,
                "seen", R"(steps:
  - any-order:
      - power-on: {device: yard-3, id: power}
      - - await: {condition: done(power), id: told}
        - set-priority: {device: yard-3, to: 90}
)" + asked);
}
