"""proofs/check.py with generators that write one question each, right or wrong."""
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

CHECK = sys.argv.pop()

CONTRADICTION = "(assert (and |a b| (not |a b|)))"
SCRIPT = """(set-info :smt-lib-version 2.6)
(set-logic QF_UF)
(set-info :status {status})
(declare-const |a b| Bool)
{assertion}
(check-sat)
"""


def pigeons(count):
    """More pigeons than holes: a short question that takes a solver long."""
    at = [[f"p{i}_{j}" for j in range(count - 1)] for i in range(count)]
    lines = [f"(declare-const {name} Bool)" for row in at for name in row]
    lines += [f"(assert (or {' '.join(row)}))" for row in at]
    lines += [f"(assert (or (not {at[i][j]}) (not {at[k][j]})))"
              for j in range(count - 1) for i in range(count) for k in range(i)]
    return "\n".join(lines)


class Check(unittest.TestCase):
    def check(self, questions, *options):
        with tempfile.TemporaryDirectory() as folder:
            shelf = Path(folder) / "shelf"
            shelf.mkdir()
            for name, (status, assertion) in questions.items():
                (shelf / name).write_text(SCRIPT.format(status=status, assertion=assertion), encoding="utf-8")
            generator = Path(folder) / "generator"
            generator.write_text(f'#!/bin/sh\ncp -R {shelf}/. "$2"\n', encoding="utf-8")
            generator.chmod(0o755)
            run = subprocess.run([sys.executable, CHECK, "--devices", "3", *options, str(generator)],
                                 capture_output=True, text=True, check=False)
            return run.returncode, run.stdout

    def test_all_as_expected(self):
        status, text = self.check({"some.smt2": ("unsat", CONTRADICTION), "some.given.smt2": ("sat", "")})
        self.assertEqual(status, 0, text)
        self.assertIn("1 of 1", text)
        self.assertIn("2 questions", text)

    def test_a_lemma_that_does_not_hold(self):
        status, text = self.check({"some.smt2": ("unsat", "(assert |a b|)")})
        self.assertEqual(status, 1, text)
        self.assertIn("some, 3 devices: z3 says", text)
        self.assertIn("some, 3 devices: cvc5 says", text)

    def test_a_lemma_that_speaks_of_nothing(self):
        status, text = self.check({"some.smt2": ("unsat", CONTRADICTION), "some.given.smt2": ("sat", CONTRADICTION)})
        self.assertEqual(status, 1, text)
        self.assertIn("0 of 1", text)

    def test_a_file_that_is_no_smt_lib(self):
        status, text = self.check({"some.smt2": ("unsat", "(assert |no such name|)")})
        self.assertEqual(status, 1, text)

    def test_no_answer_in_time(self):
        status, text = self.check({"some.smt2": ("unsat", pigeons(14))}, "--seconds", "1")
        self.assertEqual(status, 1, text)
        self.assertIn("none in time", text)

    def test_a_lemma_without_its_question(self):
        status, text = self.check({"some.given.smt2": ("sat", "")})
        self.assertEqual(status, 1, text)

    def test_no_questions(self):
        status, text = self.check({})
        self.assertEqual(status, 1, text)


if __name__ == "__main__":
    unittest.main()
