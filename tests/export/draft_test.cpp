// The text around a question: names of files, what breaks a property, and what the comment explains.
#include "verify/export_draft.hpp"

#include <doctest/doctest.h>

#include "support/model_builder.hpp"

using namespace cairn;
using namespace cairn::test;
using verify::Draft;
using verify::slug;
using verify::written;

namespace {

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

// The comment as one line.
std::string comment_of(const std::string& script) {
  std::string text;
  for (std::size_t at = 0; at < script.size();) {
    const std::size_t end = script.find('\n', at);
    if (script[at] != ';') break;
    text += script.substr(at + 1, end - at - 1);
    at = end + 1;
  }
  return text;
}

struct Yard {
  Yard() : model(build()), system(model, {}, system::stated_domains(model, {})) {}
  static Model build() {
    ModelBuilder b;
    DeviceIs low;
    low.priority = 4;
    const DeviceId one = b.device("yard-1");
    b.device("yard-2", low);
    b.save({one});
    return b.model();
  }
  [[nodiscard]] system::Term now(system::Variable::Kind kind, std::int64_t value) const {
    return system.now.state.of(kind, DeviceId(0)).is(value);
  }
  Model model;
  system::System system;
};

}  // namespace

TEST_CASE("a slug has letters, digits and single dashes, and is not long") {
  CHECK(slug("yard-1 keeps priority 220") == "yard-1-keeps-priority-220");
  CHECK(slug("once s3 is done, cable Run/1 -- is plugged.") == "once-s3-is-done-cable-run-1-is-plugged");
  CHECK(slug("tolerates-loss=2") == "tolerates-loss-2");
  CHECK(slug("Größe 1") == "gr-e-1");
  CHECK(slug("..") == "");
  const std::string of_many =
      slug("a fact that speaks of a great number of devices, each of which has a name of its own");
  CHECK(of_many == "a-fact-that-speaks-of-a-great-number-of-devices-each-of");
  CHECK(slug(std::string(100, 'x')) == std::string(60, 'x'));
}

TEST_CASE("what breaks a property is told for each of them") {
  const Yard yard;
  for (int i = 0; i < property_count; ++i) {
    const AskedProperty asked{static_cast<Property>(i), 3};
    const std::string words = verify::breach_in_words(yard.model, asked);
    CAPTURE(words);
    CHECK(words.size() > 30);
    CHECK(has(words, "(yard-1, yard-2)") == speaks_of_keep(asked.property));
    CHECK(has(words, " 3 ") == (asked.property == Property::tolerates_loss));
  }
}

TEST_CASE("the comment explains the variables that there are, and no others") {
  Yard yard;
  const AskedProperty asked{Property::no_clash, 0};
  const auto comment = [&](const system::Term term) {
    const ExportedQuestion question =
        written(yard.system, asked, {"name", "What it says.", true, "a state", {{"So.", term}}});
    CHECK(question.name == "name");
    CHECK(question.says == "What it says.");
    CHECK(question.satisfiable);
    CHECK(question.script.starts_with("; " + std::string(export_mark) + "\n;\n; What it says.\n"));
    CHECK(has(question.script, "(set-info :status sat)"));
    CHECK(has(question.script, "; So.\n"));
    return comment_of(question.script);
  };
  const system::Term high = yard.now(system::Variable::Kind::priority, 5);
  const std::string of_state = comment(high);
  CHECK(has(of_state, "Expected: sat. There is a state."));
  CHECK(has(of_state, "One of the questions on no-clash of the procedure"));
  CHECK(has(of_state, "Where `priority of yard-1 is 5` is false, it is 4."));
  CHECK_FALSE(has(of_state, "With '"));
  CHECK_FALSE(has(of_state, "`step s1`"));
  CHECK_FALSE(has(of_state, "n1"));

  system::Terms& terms = yard.system.terms;
  const std::string of_event = comment(terms.both(high, yard.system.events.front().happens));
  CHECK(has(of_event, "`step s1` says that the event that happens is the step s1"));
  CHECK(has(of_event, "n1, n2, ... are abbreviations"));
  const std::string afterwards = comment(terms.variable("priority of yard-1 is 5'"));
  CHECK(has(afterwards, "With ' at its end a variable speaks of the state after the event"));
  CHECK_FALSE(has(afterwards, "is false, it is 4"));
  const std::string at_first = comment(terms.variable("priority of yard-1 is 5 at the start"));
  CHECK(has(at_first, "speaks of the state that the site file describes"));
  const std::string of_run = comment(terms.variable("step s1 @4"));
  CHECK(has(of_run, "`step s1 @4` says that the event number 4 of the run"));
  CHECK_FALSE(has(of_run, "The other variables"));
}
