"""What confirming costs beside finding."""
import re
import subprocess
import tempfile

from .call import write_model
from .stated import procedures
from .tables import Table, Targets, number
from .unrolling import spoilt_rows

GRACE = 0.050  # seconds that a refutation may take to be confirmed, beyond what it took to find
TIMES = 2  # as long as the exploration, a closed set
REDUCED_TIMES = 3  # a reduced one: three-valued, and each event is taken anew, to know where it leads
SMALL = 5_000  # states: below, the time goes into writing the formulas down as programs, which no exploration needs
CLOSED_SETS = ["append -n 8 --crashes 1", "insert -n 8 --breaks 1", "close -n 32 --breaks 2", "lanes -n 2 -m 3",
               "append -n 8 --spoil priority"]
REDUCED_SETS = ["append -n 10 --crashes 1", "insert -n 8 --breaks 2", "lanes -n 2 -m 4"]
MEASURED = re.compile(r"(?P<what>.*?) +(?P<states>\d+) +\d+ +\d+ +(?P<exploring>[\d.]+) +(?P<confirming>[\d.]+) +"
                      r"(?P<ratio>[\d.]+) +(?P<outcome>agrees|differs|unclear|unfinished)")


def refutations(options, folder):
    """Every refutation of a spoilt row and of models/: (what to call it, file, property). A file lasts until the next."""
    for row in spoilt_rows(options):
        file = write_model(folder, row["model"])
        yield from ((row["model"], file, asked) for asked in row["refuted"])
    for path, name, stated in procedures(options.only):
        yield from ((name, path, asked) for asked, expected in stated.items() if expected.verdict == "refuted")


def of_refutations(cairn, options, targets):
    table = Table([("refutation of", 46), ("property", 19), ("length", 6), ("finding ms", 10), ("replaying ms", 12),
                   ("confirming ms", 13), ("of target", 9)], words=2)
    with tempfile.TemporaryDirectory() as folder:
        for name, file, asked in refutations(options, folder):
            what = f"{name}, {asked}"
            answer = targets.answer(what, lambda: cairn.prove(file, [asked]))
            if answer is None:
                continue
            entry, timing = answer.properties[asked], answer.timing
            if entry["verdict"] != "refuted" or not entry["settled"]["confirmed"]:
                targets.miss(f"{what}: {entry['verdict']}, where a confirmed refutation is expected")
                continue
            took, allowed = timing["confirming"] + timing["replaying"], timing["exploring"] + GRACE
            good = targets.judge(f"{what}: confirmed", took * 1e3, "ms", round(allowed * 1e3, 1))
            table.line([name, asked, number(len(entry["events"])), f"{timing['exploring'] * 1e3:.2f}",
                        f"{timing['replaying'] * 1e3:.2f}", f"{timing['confirming'] * 1e3:.2f}", f"{took / allowed:.0%}",
                        "" if good else "MISSED"])


def judge_closed_sets(model, lines, targets, times=TIMES):
    """What bench_closed_set has measured on one model, held against the target; prints each line."""
    judged = 0
    for line in lines:
        found = MEASURED.fullmatch(line.strip())
        if not found:
            continue
        kind = "without faults" if "no faults" in found["what"] else "as asked"
        small = int(found["states"]) < SMALL
        print(f"{model:<36} {kind:<14} {int(found['states']):>9,} states  {found['exploring']:>9} ms exploring  "
              f"{found['confirming']:>9} ms confirming  {float(found['ratio']):6.2f} times"
              f"{'  (small: not judged)' if small else ''}", flush=True)
        if found["outcome"] != "agrees":
            targets.miss(f"{model}, {kind}: the formulas do not agree with the exploration: {found['outcome']}")
        if not small:
            judged += 1
            targets.judge(f"{model}, {kind}: confirming a closed set", float(found["ratio"]), "times the exploration", times)
    if not judged:
        targets.miss(f"{model}: no closed set of {SMALL:,} states or more was measured")


def of_closed_sets(cairn, options, targets):
    program = cairn.companion("bench_closed_set")
    with tempfile.TemporaryDirectory() as folder:
        for models, how, times in (CLOSED_SETS, [], TIMES), (REDUCED_SETS, ["--reduced"], REDUCED_TIMES):
            for model in models:
                if options.only and not re.search(options.only, model):
                    continue
                call = [program, *how, str(write_model(folder, model))]
                told = subprocess.run(call, check=True, capture_output=True, text=True)
                judge_closed_sets(" ".join([model, *how]), told.stdout.splitlines(), targets, times)


def run(cairn, options):
    """Refutations of the spoilt rows and of models/, each by itself, and closed and reduced sets of a few rows."""
    targets = Targets()
    of_refutations(cairn, options, targets)
    print(f"Target: replaying and confirming take less than finding and {GRACE * 1e3:g} ms.\n")
    of_closed_sets(cairn, options, targets)
    print(f"Target: at most {TIMES} times as long as the exploration, reduced sets {REDUCED_TIMES} times.")
    return targets.wrong
