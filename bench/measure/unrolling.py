"""How long constraints alone take to refute, beside the exploration."""
import re
import tempfile

from .call import EXPLORING, Failure, why_undecided, write_model
from .rows import all_rows, size_of
from .tables import Table, Targets, number

TIMES = 50
FLOOR = 0.001  # seconds: what an exploration is taken to last at least; of less there is hardly anything but noise
SIZE = 8


def spoilt_rows(options, size=None):
    """The rows with a mistake that the call asks for: those that match, or all, or those with stacks of so many devices."""
    rows = [r for r in all_rows() if "--spoil" in r["model"]]
    if options.only:
        return [r for r in rows if re.search(options.only, r["model"])]
    return [r for r in rows if options.all or size is None or size_of(r["model"])[0] == size]


def times_as_long(solving, exploring):
    return solving / max(exploring, FLOOR)


def time_of(part, cairn, file, asked, length, options):
    """Seconds that `part` took to refute one property.

    \\raises Failure  where it does not, or by so many events
    """
    answer = cairn.prove(file, [asked], options)
    entry = answer.properties[asked]
    if entry["verdict"] != "refuted":
        reason = f" ({why_undecided(entry)})" if entry["verdict"] == "undecided" else ""
        raise Failure(f"{entry['verdict']}{reason} after {answer.timing[part]:.1f} s of {part}")
    if len(entry["events"]) != length:
        raise Failure(f"refuted by {len(entry['events'])} events when {part}, the reference has {length}")
    return answer.timing[part]


def run(cairn, options):
    """Each refutation of a spoilt row by itself, by exploration and by constraints alone."""
    rows = spoilt_rows(options, SIZE)
    if not rows:
        raise Failure("no spoilt row matches")
    table = Table([("model", max(len(r["model"]) for r in rows)), ("property", 19), ("length", 6), ("exploring s", 11),
                   ("solving s", 10), ("times", 8)], words=2)
    targets = Targets()
    with tempfile.TemporaryDirectory() as folder:
        for row in rows:
            file = write_model(folder, row["model"])
            for asked, length in row["refuted"].items():
                what = f"{row['model']}, {asked}"
                try:
                    exploring = time_of("exploring", cairn, file, asked, length, EXPLORING)
                    solving = time_of("solving", cairn, file, asked, length, ["--engine", "solver"])
                except Failure as failure:
                    targets.miss(f"{what}: {failure}")
                    continue
                times = times_as_long(solving, exploring)
                good = targets.judge(f"{what}: solving beside exploring", times, "times as long", TIMES)
                table.line([row["model"], asked, number(length), f"{exploring:.5f}", f"{solving:.3f}", f"{times:.1f}",
                            "" if good else "MISSED"])
    print(f"Target: at most {TIMES} times as long as exploring, which is taken to last {FLOOR * 1e3:g} ms at least.")
    return targets.wrong
