"""What exploring in several threads gains."""
import re
import tempfile
from statistics import median

from .call import EXPLORING, Failure, explored, write_model
from .tables import Table, Targets, number

MODELS = ["append -n 10 --crashes 1", "insert -n 10 --breaks 1"]  # about a million states each
PROPERTY = "no-clash"
JOBS = 2
GAIN = 1.7  # times as fast, on a quiet machine with as many processors
ROUNDS = 5


def told(document):
    """What must not depend on the number of jobs: all but what it took."""
    return {part: content for part, content in document.items() if part not in ("timing", "costs")}


def measure(cairn, file, model, targets, table):
    runs = {1: [], JOBS: []}
    for _ in range(ROUNDS):  # in turns, so that a busy machine slows both down
        for jobs, done in runs.items():
            done.append(cairn.prove(file, [PROPERTY], [*EXPLORING, "--jobs", str(jobs)]))
    answers = [told(run.document) for done in runs.values() for run in done]
    if any(answer != answers[0] for answer in answers):
        targets.miss(f"{model}: the answer depends on the number of jobs")
    wall = {jobs: median(run.timing["exploring"] for run in done) for jobs, done in runs.items()}
    core = {jobs: median(run.core for run in done) for jobs, done in runs.items()}
    gain = wall[1] / wall[JOBS]
    entry = runs[1][0].properties[PROPERTY]
    table.line([model, entry["verdict"], number(explored(entry)), f"{wall[1]:.2f}", f"{wall[JOBS]:.2f}", f"{gain:.2f}",
                f"{core[1]:.2f}", f"{core[JOBS]:.2f}", f"{core[JOBS] / core[1]:.2f}"])
    targets.judge(f"{model}: {JOBS} jobs against one", gain, "times as fast", GAIN, at_most=False)


def run(cairn, options):
    targets = Targets()
    table = Table([("model", 26), ("verdict", 8), ("states", 10), ("one s", 7), (f"{JOBS} s", 7), ("gain", 5),
                   ("one core s", 10), (f"{JOBS} core s", 10), ("ratio", 5)], words=2)
    with tempfile.TemporaryDirectory() as folder:
        for model in MODELS:
            if options.only and not re.search(options.only, model):
                continue
            try:
                measure(cairn, write_model(folder, model), model, targets, table)
            except Failure as failure:
                targets.miss(f"{model}: {failure}")
    return targets.wrong
