"""Times and memory against targets."""
import statistics
import subprocess
import tempfile
import time

from .call import EXPLORING, Failure, explored, why_undecided, write_model
from .stated import procedures
from .tables import Targets

# The states that are looked at for candidates, where all of them would take longer than the proof.
FEW = ["--confirm-limit", "5000"]
OF_LARGE = 1  # seconds of solving
OF_LONG = 5
OF_MODEL = 2


def call_seconds(command, times):
    """The median wall time of a command that proves."""
    taken = []
    for _ in range(times):
        began = time.perf_counter()
        subprocess.run(command, check=True, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL)
        taken.append(time.perf_counter() - began)
    return statistics.median(taken)


def of_exploring(cairn, folder, targets):
    explore = [cairn.program, "prove", *EXPLORING]
    small = write_model(folder, "append -n 4")
    targets.note("load, explore and print a small model", 1000 * call_seconds([*explore, str(small)], 25), "ms", 20)
    long_one = write_model(folder, "grow -n 2 -k 13")
    steps = sum(line.startswith("  - ") for line in long_one.read_text().split("\nsteps:\n")[1].splitlines())
    targets.note(f"load, explore and print a procedure of {steps} steps", call_seconds([*explore, str(long_one)], 5), "s", 1)

    fast = cairn.prove(write_model(folder, "append -n 8 --crashes 1"), ["no-clash"], EXPLORING)
    states = explored(fast.properties["no-clash"])
    targets.note("append -n 8 --crashes 1", states / fast.timing["exploring"], "states/s", 500_000, at_most=False)

    large = cairn.prove(write_model(folder, "append -n 10 --crashes 1"), ["no-clash"], EXPLORING)
    states = explored(large.properties["no-clash"])
    targets.note(f"memory for ten million states, from {states:,} of append -n 10 --crashes 1",
                 large.megabytes / 1e3 / states * 1e7, "GB", 1.5)


def by_facts(cairn, file, asked, options=()):
    """Seconds of solving for a proof by facts of one property.

    \\raises Failure  where it is not settled in this way
    """
    answer = cairn.prove(file, [asked], options)
    entry = answer.properties[asked]
    if entry["verdict"] == "undecided":
        raise Failure(f"undecided ({why_undecided(entry)})")
    if entry["verdict"] == "refuted" or entry["settled"]["by"] != "facts":
        raise Failure(f"{entry['verdict']} by {entry['settled']['by']}, not by facts,"
                      f" after {answer.timing['solving']:.1f} s of solving")
    return answer.timing["solving"]


def of_scaled(cairn, folder, targets):
    """Proofs by facts of stacks of 16."""
    asked = [("append -n 16 --keep yard-1 --breaks 2", "primary-stays", OF_LARGE, []),
             ("append -n 16 --keep yard-1 --crashes 1", "primary-stays", OF_LARGE, FEW)]
    asked += [("append -n 16 --breaks 1", name, OF_LONG, [])
              for name in ("primary-stays", "members-stay", "no-clash", "no-refusal", "reaches-goal", "survives-cold-start")]
    for model, name, target, options in asked:
        try:
            seconds = by_facts(cairn, write_model(folder, model), name, options)
            targets.note(f"{model}, {name}, by facts", seconds, "s", target)
        except Failure as failure:
            targets.miss(f"{model}, {name}: {failure}")


def of_models(cairn, options, targets):
    """Proofs by facts of models/; those that are settled otherwise are none of this question."""
    taken = []
    for path, name, stated in procedures(options.only):
        for asked, expected in stated.items():
            if expected.verdict != "proved":
                continue
            answer = cairn.prove(path, [asked])
            if answer.properties[asked].get("settled", {}).get("by") == "facts":
                taken.append((answer.timing["solving"], f"{name}, {asked}"))
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
