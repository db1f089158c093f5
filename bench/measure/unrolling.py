"""How long constraints alone take to refute, beside the exploration."""
import re
import subprocess
import tempfile

from .call import EXPLORING, Failure, why_undecided, write_model
from .rows import all_rows, size_of
from .tables import Table, Targets, number

TIMES = 50
FLOOR = 0.001  # seconds: what an exploration is taken to last at least; of less there is hardly anything but noise
SIZE = 8
IN_ALL = re.compile(r"^refuted by (?P<length>\d+) events in (?P<seconds>[\d.]+) s", re.MULTILINE)


def spoilt_rows(options, size=None):
    """The rows with a mistake that the call asks for: those that match, or all, or those with stacks of so many devices."""
    rows = [r for r in all_rows() if "--spoil" in r["model"]]
    if options.only:
        return [r for r in rows if re.search(options.only, r["model"])]
    return [r for r in rows if options.all or size is None or size_of(r["model"])[0] == size]


def times_as_long(solving, exploring):
    return solving / max(exploring, FLOOR)


def time_of(part, cairn, file, asked, length, options):
    """Seconds of a processor that `part` took to refute one property.

    \\raises Failure  where it does not, or by so many events
    """
    answer = cairn.prove(file, [asked], options)
    entry = answer.properties[asked]
    if entry["verdict"] != "refuted":
        reason = f" ({why_undecided(entry)})" if entry["verdict"] == "undecided" else ""
        raise Failure(f"{entry['verdict']}{reason} after {answer.taken(part):.1f} s of {part}")
    if len(entry["events"]) != length:
        raise Failure(f"refuted by {len(entry['events'])} events when {part}, the reference has {length}")
    return answer.taken(part)


def read_unrolling(text, length):
    """Seconds that bench_unrolling tells of one refutation.

    \\raises Failure  where it tells of none, or of one by another number of events
    """
    found = IN_ALL.search(text)
    if not found or int(found["length"]) != length:
        raise Failure(f"the unrolling does not end in a refutation by {length} events")
    return float(found["seconds"])


def unrolling_of(program, file, asked, length, time_limit):
    """Seconds of CaDiCaL on runs of 0, 1, 2 … events, with no fact tried before."""
    try:
        told = subprocess.run([program, str(file), asked], check=True, capture_output=True, text=True, timeout=time_limit)
    except subprocess.TimeoutExpired:
        raise Failure(f"the unrolling takes more than {time_limit:g} s") from None
    return read_unrolling(told.stdout, length)


def run(cairn, options):
    """Each refutation of a spoilt row by itself, by exploration and by constraints alone (`solving`: a quick look
    for it, then facts, then runs of every length). Beside it what CaDiCaL takes for the unrolling alone."""
    rows = spoilt_rows(options, SIZE)
    if not rows:
        raise Failure("no spoilt row matches")
    program = cairn.companion("bench_unrolling")
    table = Table([("model", max(len(r["model"]) for r in rows)), ("property", 19), ("length", 6), ("exploring s", 11),
                   ("solving s", 10), ("times", 8), ("unrolling s", 11)], words=2)
    targets = Targets()
    with tempfile.TemporaryDirectory() as folder:
        for row in rows:
            file = write_model(folder, row["model"])
            for asked, length in row["refuted"].items():
                what = f"{row['model']}, {asked}"
                try:
                    exploring = time_of("exploring", cairn, file, asked, length, EXPLORING)
                    solving = time_of("solving", cairn, file, asked, length, ["--engine", "solver"])
                    unrolling = unrolling_of(program, file, asked, length, cairn.time_limit)
                except Failure as failure:
                    targets.miss(f"{what}: {failure}")
                    continue
                times = times_as_long(solving, exploring)
                good = targets.judge(f"{what}: solving beside exploring", times, "times as long", TIMES)
                table.line([row["model"], asked, number(length), f"{exploring:.5f}", f"{solving:.3f}", f"{times:.1f}",
                            f"{unrolling:.3f}", "" if good else "MISSED"])
    print(f"Target: at most {TIMES} times as long as exploring, which is taken to last {FLOOR * 1e3:g} ms at least.")
    return targets.wrong
