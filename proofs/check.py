#!/usr/bin/env python3
"""Asks z3 and cvc5 the questions of the lemmas (README.md beside this file) and prints a table of their answers.

    proofs/check.py [--devices 3-6] [--seconds 600] [--only PREFIX] GENERATOR

GENERATOR is the program generate_proofs. A row is a lemma at one number of devices: what both programs answer to "is there a
counterexample?" and the processor seconds that it took them, and how many of the questions beside it were answered as they
must be: that the hypotheses alone can hold, that the lemma fails without one of them. Ends with status 1 where any answer is
not the expected one, or did not come within the time.
"""
import argparse
import re
import resource
import shutil
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from pathlib import Path

# Each with its strictest reading of the standard.
PROGRAMS = {
    "z3": lambda program, file: [program, "-smt2", "smtlib2_compliant=true", str(file)],
    "cvc5": lambda program, file: [program, "--lang=smt2", "--strict-parsing", str(file)],
}
STATUS = re.compile(r"^\(set-info :status (\w+)\)", re.MULTILINE)


@dataclass
class Answer:
    text: str
    seconds: float


def ask(name, program, file, seconds):
    """The answer of one program, and the processor time that it took."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    run = subprocess.run(
        PROGRAMS[name](program, file), capture_output=True, text=True, check=False,
        preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds)))
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    spent = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    # A program that keeps to the standard says "success" of each command that asks nothing.
    said = "\n".join(line for line in (run.stdout + run.stderr).splitlines() if line != "success")
    if said in ("sat", "unsat") and run.returncode == 0:
        return Answer(said, spent)
    return Answer("none in time" if spent >= seconds - 1 else said.splitlines()[0] if said else "nothing", spent)


def lemma_of(file):
    """few-passes.restart.without-any.smt2 belongs to few-passes.restart."""
    return re.sub(r"\.(given|reached|without-[\w-]+)$", "", file.stem)


class Check:
    def __init__(self, programs, seconds):
        self.programs = programs
        self.seconds = seconds
        self.wrong = []

    def answers(self, file, devices):
        expected = STATUS.search(file.read_text(encoding="utf-8"))[1]
        answers = {name: ask(name, program, file, self.seconds) for name, program in self.programs.items()}
        for name, answer in answers.items():
            if answer.text != expected:
                self.wrong.append(f"{file.stem}, {devices} devices: {name} says {answer.text}, expected {expected}")
        return expected, answers

    def lemma(self, name, files, devices):
        """One row of the table."""
        main, beside = None, []
        for file in files:
            expected, answers = self.answers(file, devices)
            as_expected = all(answer.text == expected for answer in answers.values())
            if expected == "unsat":
                main = answers
            else:
                beside.append(as_expected)
        if not main:
            self.wrong.append(f"{name}, {devices} devices: its own question is missing")
            return
        told = " ".join(f"{answer.text:>12} {answer.seconds:8.2f}" for answer in main.values())
        print(f"{name:38} {devices:2} {told}   {sum(beside)} of {len(beside)}", flush=True)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("generator", type=Path)
    parser.add_argument("--devices", default="3-6", help="from-to, or one number")
    parser.add_argument("--seconds", type=int, default=600, help="processor time that an answer may take")
    parser.add_argument("--only", default="", help="lemmas whose names begin so")
    options = parser.parse_args()
    first, _, last = options.devices.partition("-")

    programs = {name: shutil.which(name) for name in PROGRAMS}
    missing = [name for name, program in programs.items() if not program]
    if missing:
        print(f"not installed: {', '.join(missing)}; scripts/setup installs them")
        return 1
    check = Check(programs, options.seconds)
    heads = " ".join(f"{name + ' says':>12} {'seconds':>8}" for name in programs)
    print(f"{'lemma':38} {'n':>2} {heads}   others as expected")
    asked = 0
    for devices in range(int(first), int(last or first) + 1):
        with tempfile.TemporaryDirectory() as folder:
            subprocess.run([options.generator, str(devices), folder], check=True)
            lemmas = {}
            for file in sorted(Path(folder).glob("*.smt2")):
                if file.stem.startswith(options.only):
                    lemmas.setdefault(lemma_of(file), []).append(file)
            for name, files in lemmas.items():
                check.lemma(name, files, devices)
                asked += len(files)
    print("\n".join(check.wrong) or f"{asked} questions, each answered as expected by {' and by '.join(programs)}")
    return 1 if check.wrong or not asked else 0


if __name__ == "__main__":
    sys.exit(main())
