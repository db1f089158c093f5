#!/usr/bin/env python3
"""What bench/run holds figures against is noticed where it is missed.

    measure_test.py ROOT
"""
import contextlib
import io
import json
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

ROOT = Path(sys.argv.pop(1)).resolve()
sys.path.insert(0, str(ROOT / "bench"))

from measure import confirm, facts, models, rows, speed, stated, tables, unrolling  # noqa: E402
from measure.call import Failure, Run  # noqa: E402


def proved(by="facts", confirmed=True, **more):
    return {"name": "no-split", "verdict": "proved", **more,
            "settled": {"by": by, "facts": 3, "any-number": False, "length": 4, "explored": 20, "confirmed": confirmed}}


def refuted(events, confirmed=True):
    return {"name": "no-split", "verdict": "refuted", "events": [{}] * events,
            "settled": {"by": "refutation", "explored": 20, "confirmed": confirmed}}


UNDECIDED = {"name": "no-split", "verdict": "undecided", "reason": "time"}


def quietly(function, *arguments):
    with contextlib.redirect_stdout(io.StringIO()):
        return function(*arguments)


class Stated(unittest.TestCase):
    def test_the_lines_of_a_heading(self):
        text = ("# Words.\n# expect: no-split proved\n# expect: primary-stays proved vacuous\n"
                "# expect: tolerates-loss=2 refuted 12\nprocedure: It\n# expect: no-clash proved\n")
        self.assertEqual(stated.read_stated(text), {"no-split": ("proved", False, None),
                                                    "primary-stays": ("proved", True, None),
                                                    "tolerates-loss=2": ("refuted", False, 12)})

    def test_a_line_that_is_no_expectation(self):
        for line in ("no-split", "no-split maybe", "no-split refuted", "no-split refuted soon", "no-split proved 3"):
            with self.assertRaises(Failure, msg=line):
                stated.read_stated(f"# expect: {line}\n")

    def test_every_procedure_states_something(self):
        shelf = stated.procedures()
        self.assertGreater(len(shelf), 50)
        self.assertEqual([name for _, name, lines in shelf if not lines], [])

    def test_a_verdict_that_differs(self):
        self.assertEqual(stated.differences(stated.Stated("proved", False, None), proved()), [])
        self.assertEqual(stated.differences(stated.Stated("refuted", False, 3), refuted(3)), [])
        for expected, entry in ((("proved", False, None), refuted(3)), (("refuted", False, 4), refuted(3)),
                                (("refuted", False, 4), proved()), (("proved", True, None), proved()),
                                (("proved", False, None), proved(vacuous="no run is complete")),
                                (("proved", False, None), UNDECIDED)):
            self.assertTrue(stated.differences(stated.Stated(*expected), entry), f"{expected} {entry}")
        self.assertTrue(stated.differences(None, proved()))


class Rows(unittest.TestCase):
    ROW = {"model": "append -n 4 --breaks 1", "with-faults": 108, "without-faults": 20, "refuted": {"no-split": 1}}

    def test_verdict_and_length(self):
        self.assertEqual(rows.wrong_verdict(self.ROW, "no-split", refuted(1)), [])
        self.assertEqual(rows.wrong_verdict(self.ROW, "no-clash", proved()), [])
        for name, entry in (("no-split", refuted(2)), ("no-split", proved()), ("no-clash", refuted(1)),
                            ("no-clash", UNDECIDED)):
            self.assertTrue(rows.wrong_verdict(self.ROW, name, entry), f"{name} {entry}")

    def test_states(self):
        self.assertEqual(rows.wrong_states(self.ROW, "no-refusal", proved()), [])
        entry = proved()
        entry["settled"]["explored"] = 21
        self.assertEqual(rows.wrong_states(self.ROW, "no-clash", entry), [])
        self.assertTrue(rows.wrong_states(self.ROW, "no-refusal", entry))
        del entry["settled"]["explored"]
        self.assertTrue(rows.wrong_states(self.ROW, "no-clash", entry))


class Models(unittest.TestCase):
    def kinds(self, expected, entry, solving=0.1):
        return {kind for kind, _ in models.judge(stated.Stated(*expected), entry, {"solving": solving}, 600)}

    def test_what_is_as_it_should_be(self):
        self.assertEqual(self.kinds(("proved", False, None), proved()), set())
        self.assertEqual(self.kinds(("proved", False, None), proved("unrolling")), set())
        self.assertEqual(self.kinds(("refuted", False, 3), refuted(3)), set())

    def test_each_thing_that_may_be_wrong(self):
        self.assertEqual(self.kinds(("refuted", False, 4), refuted(3)), {"different"})
        self.assertEqual(self.kinds(("proved", False, None), UNDECIDED), {"undecided"})
        self.assertEqual(self.kinds(("proved", False, None), proved(confirmed=False)), {"not confirmed"})
        self.assertEqual(self.kinds(("refuted", False, 3), refuted(3, confirmed=False)), {"not confirmed"})
        self.assertEqual(self.kinds(("proved", False, None), proved("states")), {"by one engine alone"})
        self.assertEqual(self.kinds(("refuted", False, 3), refuted(3), solving=600.1), {"by one engine alone"})


class Facts(unittest.TestCase):
    def test_the_share(self):
        tally = facts.Tally()
        self.assertEqual(tally.share, 0)
        for entry in (proved(), proved("states"), UNDECIDED, proved()):
            tally.note("append", entry)
        self.assertEqual((tally.by_facts, tally.proofs, tally.share), (2, 4, 50))

    def test_the_reason_is_told_where_the_verdict_has_one(self):
        entry = proved("states")
        self.assertIn("no reason told", facts.why_not(entry))
        entry["settled"]["not-by-facts"] = "the effort was spent"
        self.assertIn("the effort was spent", facts.why_not(entry))


class Figures(unittest.TestCase):
    def test_targets(self):
        targets = tables.Targets()
        quietly(targets.note, "fast", 2, "s", 2)
        quietly(targets.note, "many", 80, "%", 80, False)
        self.assertEqual(targets.wrong, [])
        quietly(targets.note, "slow", 2.1, "s", 2)
        quietly(targets.note, "few", 79, "%", 80, False)
        self.assertEqual(len(targets.wrong), 2)

    def test_what_settled_a_property(self):
        self.assertEqual(speed.outcome_of(proved()), speed.BY_FACTS)
        for entry in (proved("states"), refuted(3), UNDECIDED):
            self.assertNotEqual(speed.outcome_of(entry), speed.BY_FACTS)

    def test_seconds_of_a_processor(self):
        run = Run([sys.executable, "-c", "import json, time; time.sleep(0.3)\n"
                                         "print(json.dumps({'properties': [], 'timing': {'solving': 10}}))"])
        self.assertLess(run.taken("solving"), 10)
        self.assertEqual(run.timing["solving"], 10)

    def test_an_exploration_lasts_a_while(self):
        self.assertEqual(unrolling.times_as_long(0.05, 0.000001), unrolling.times_as_long(0.05, unrolling.FLOOR))
        self.assertEqual(unrolling.times_as_long(1, 0.5), 2)

    def test_the_unrolling_alone(self):
        text = "no-split: formulas written in 0.018 s\n   17       3923      22805      0.033\n{} in 0.098 s \n\n"
        self.assertEqual(unrolling.read_unrolling(text.format("refuted by 18 events"), 18), 0.098)
        for end in ("refuted by 17 events", "proved", "undecided"):
            with self.assertRaises(Failure, msg=end):
                unrolling.read_unrolling(text.format(end), 18)

    def judged(self, *lines, times=confirm.TIMES):
        targets = tables.Targets()
        quietly(confirm.judge_closed_sets, "append", lines, targets, times)
        return len(targets.wrong)

    def test_closed_sets(self):
        line = "model.yaml                 {:>9}     77000     90000      20.00       {:.2f}   {:.2f}  {}"
        self.assertEqual(self.judged(line.format(20000, 30, 1.5, "agrees")), 0)
        self.assertEqual(self.judged(line.format(20000, 50, 2.5, "agrees")), 1)
        self.assertEqual(self.judged(line.format(20000, 50, 2.5, "agrees"), times=confirm.REDUCED_TIMES), 0)
        for outcome in "differs", "unclear", "unfinished":
            self.assertEqual(self.judged(line.format(20000, 30, 1.5, outcome)), 1)
        self.assertEqual(self.judged(line.format(20, 30, 1.5, "agrees")), 1, "a small set stands for nothing")
        self.assertEqual(self.judged("model.yaml all is refuted before every state is visited"), 1)


class Whole(unittest.TestCase):
    """bench/run, on a program that answers whatever it is told to."""

    def status(self, entry):
        with tempfile.TemporaryDirectory() as folder:
            program = Path(folder) / "program"
            document = {"properties": [entry], "timing": {"exploring": 0, "replaying": 0, "solving": 0, "confirming": 0}}
            program.write_text(f"#!{sys.executable}\nimport json, sys\n"
                               f"answer = json.loads({json.dumps(json.dumps(document))})\n"
                               "answer['properties'][0]['name'] = sys.argv[-1]\nprint(json.dumps(answer))\n")
            program.chmod(0o755)
            return subprocess.run([sys.executable, "-B", ROOT / "bench" / "run", "--program", program, "--models",
                                   "--only", "quickstart/append$"], capture_output=True).returncode

    def test_exit_status(self):
        self.assertEqual(self.status(proved()), 0)
        self.assertEqual(self.status(refuted(3)), 1)
        self.assertEqual(self.status(proved(confirmed=False)), 1)
        self.assertEqual(self.status(UNDECIDED), 1)


if __name__ == "__main__":
    unittest.main()
