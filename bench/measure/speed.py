"""Times and memory against targets. Where cairn tells seconds, those of a processor are meant: see Run.taken."""
import statistics
import subprocess
import tempfile
import time

from .call import EXPLORING, explored, why_undecided, write_model
from .stated import procedures
from .tables import Targets

# The states that are looked at for candidates, where all of them would take longer than the proof.
FEW = ["--confirm-limit", "5000"]
OF_LARGE = 1  # seconds of solving
OF_LONG = 5
OF_MODEL = 2
BY_FACTS = "proved by facts"


def call_seconds(command, times):
    """The median wall time of a command that proves."""
    taken = []
    for _ in range(times):
        began = time.perf_counter()
        subprocess.run(command, check=True, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL)
        taken.append(time.perf_counter() - began)
    return statistics.median(taken)


def of_exploring(cairn, folder, targets):
    explore = [cairn.program, "prove", "--jobs", "1", *EXPLORING]
    small = write_model(folder, "append -n 4")
    targets.note("load, explore and print a small model", 1000 * call_seconds([*explore, str(small)], 25), "ms", 20)
    long_one = write_model(folder, "grow -n 2 -k 13")
    steps = sum(line.startswith("  - ") for line in long_one.read_text().split("\nsteps:\n")[1].splitlines())
    targets.note(f"load, explore and print a procedure of {steps} steps", call_seconds([*explore, str(long_one)], 5), "s", 1)

    fast = cairn.prove(write_model(folder, "append -n 8 --crashes 1"), ["no-clash"], EXPLORING)
    states = explored(fast.properties["no-clash"])
    targets.note("append -n 8 --crashes 1", states / fast.taken("exploring"), "states/s", 500_000, at_most=False)

    large = cairn.prove(write_model(folder, "append -n 10 --crashes 1"), ["no-clash"], EXPLORING)
    states = explored(large.properties["no-clash"])
    targets.note(f"memory for ten million states, from {states:,} of append -n 10 --crashes 1",
                 large.megabytes / 1e3 / states * 1e7, "GB", 1.5)


def outcome_of(entry):
    """The verdict on a property and what settled it, in words."""
    if entry["verdict"] == "undecided":
        return f"undecided ({why_undecided(entry)})"
    return f"{entry['verdict']} by {entry['settled']['by']}"


def of_scaled(cairn, folder, targets):
    """Proofs by facts of stacks of 16."""
    asked = [("append -n 16 --keep yard-1 --breaks 2", "primary-stays", OF_LARGE, []),
             ("append -n 16 --keep yard-1 --crashes 1", "primary-stays", OF_LARGE, FEW)]
    asked += [("append -n 16 --breaks 1", name, OF_LONG, [])
              for name in ("primary-stays", "members-stay", "no-clash", "no-refusal", "reaches-goal", "survives-cold-start")]
    for model, name, target, options in asked:
        what = f"{model}, {name}"
        answer = targets.answer(what, lambda: cairn.prove(write_model(folder, model), [name], options))
        if answer is None:
            continue
        seconds, outcome = answer.taken("solving"), outcome_of(answer.properties[name])
        if outcome == BY_FACTS:
            targets.note(f"{what}, by facts", seconds, "s", target)
        else:
            targets.miss(f"{what}: {outcome}, not by facts, after {seconds:.1f} s of solving")


def of_models(cairn, options, targets):
    """Proofs by facts of models/, each by itself. Those that are settled by states are told and not judged."""
    taken = []
    for path, name, stated in procedures(options.only):
        for asked, expected in stated.items():
            if expected.verdict != "proved":
                continue
            what = f"{name}, {asked}"
            answer = targets.answer(what, lambda: cairn.prove(path, [asked]))
            if answer is None:
                continue
            seconds, outcome = answer.taken("solving"), outcome_of(answer.properties[asked])
            if outcome == BY_FACTS:
                taken.append((seconds, what))
            elif answer.properties[asked]["verdict"] == "proved":
                print(f"        {what}: {outcome}, after {seconds:.2f} s of solving", flush=True)
            else:
                targets.miss(f"{what}: {outcome}")
    if not taken:
        return
    slow = [(seconds, what) for seconds, what in sorted(taken, reverse=True) if seconds > OF_MODEL]
    for seconds, what in slow or [max(taken)]:
        targets.note(f"{what}, by facts", seconds, "s", OF_MODEL)
    print(f"{len(taken) - len(slow)} of {len(taken)} proofs by facts of models/ within {OF_MODEL} s, half of them within"
          f" {statistics.median(seconds for seconds, _ in taken):.2f} s.")


def run(cairn, options):
    targets = Targets()
    with tempfile.TemporaryDirectory() as folder:
        of_exploring(cairn, folder, targets)
        of_scaled(cairn, folder, targets)
    of_models(cairn, options, targets)
    return targets.wrong
