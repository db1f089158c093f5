"""Rows: procedures that scaled.py makes, beside the figures of a plain exploration."""
import json
import math
import re
import tempfile

from .call import BENCH, EXPLORING, Failure, explored, why_undecided, write_model
from .tables import Table, number

WITH_FAULTS = ["no-split", "primary-stays", "members-stay", "no-clash"]
WITHOUT_FAULTS = ["no-refusal", "reaches-goal", "survives-cold-start"]
SMALL = 60_000  # states: what all questions together take a minute or two for


def all_rows():
    return json.loads((BENCH / "reference.json").read_text())["rows"]


def states_of(row):
    """How many states a plain exploration visits, the larger of the two; infinity where it was not finished."""
    return max(row["with-faults"] or math.inf, row["without-faults"] or math.inf)


def chosen_rows(options, usual):
    """The rows that the call asks for: those that match, or all, or those of at most so many states, `usual` by default."""
    if options.only:
        return [r for r in all_rows() if re.search(options.only, r["model"])]
    up_to = usual if options.up_to is None else options.up_to
    return [r for r in all_rows() if options.all or states_of(r) <= up_to]


def reference_states(row, name):
    return row["with-faults" if name in WITH_FAULTS else "without-faults"]


def wrong_verdict(row, name, entry):
    """What is wrong with the verdict and the length of one property of a row, as a list of phrases."""
    length = row["refuted"].get(name)
    expected = "refuted" if length is not None else "proved"
    if entry["verdict"] != expected:
        reason = f" ({why_undecided(entry)})" if entry["verdict"] == "undecided" else ""
        return [f"{entry['verdict']}{reason}, the reference says {expected}"]
    if length is not None and len(entry["events"]) != length:
        return [f"a refutation of {len(entry['events'])} events, the reference has {length}"]
    return []


def wrong_states(row, name, entry):
    """What is wrong with the number of states visited, as a list of phrases."""
    wrong = []
    limit = reference_states(row, name)
    if limit is not None and (explored(entry) or 0) > limit:
        wrong.append(f"{explored(entry)} states visited, the reference has {limit}")
    if entry["verdict"] == "proved" and explored(entry) is None:
        wrong.append("the verdict does not say how many states were visited")
    return wrong


def size_of(model):
    """The size that a family of models grows by, and the family: the model without it."""
    option = "-m" if model.startswith("lanes") else "-k" if model.startswith("grow") else "-n"
    size = int(re.search(rf"{option} (\d+)", model)[1])
    return size, re.sub(rf"{option} \d+", option, model)


class Growth:
    """Times as many states for one device or lane more, against the last smaller row of the same family."""

    def __init__(self):
        self.last = {}

    def note(self, model, asked, states):
        size, family = size_of(model)
        before = self.last.get((family, asked))
        self.last[family, asked] = (size, states)
        if not before or not states or not before[1] or size <= before[0]:
            return ""
        return f"{math.pow(states / before[1], 1 / (size - before[0])):.2f}"


def measure(row, asked, run, table, growth):
    """Prints one line a property (one for several with the same states) and returns what is wrong."""
    wrong = []
    for names in (WITH_FAULTS, WITHOUT_FAULTS):
        entries = [(n, run.properties[n]) for n in names if n in run.properties]
        if not entries:
            continue
        for name, entry in entries:
            wrong += [f"{row['model']}, {name} asked {asked}: {w}"
                      for w in wrong_verdict(row, name, entry) + wrong_states(row, name, entry)]
        states = max((explored(e) or 0 for _, e in entries)) or None
        alone = len(entries) == 1
        name, entry = entries[0]
        if not alone:
            name = f"{'with' if names is WITH_FAULTS else 'without'} faults"
        verdicts = {e["verdict"] for _, e in entries}
        limit = reference_states(row, entries[0][0])
        reference = number(limit) if limit is not None else f">{row['at-least']:,}"
        length = len(entry["events"]) if alone and "events" in entry else None
        exploring = run.timing["exploring"]
        rate = f"{states / exploring:,.0f}" if states and states > 1000 and alone else ""
        table.line([row["model"], name, "/".join(sorted(verdicts)), number(length), number(states), reference, rate,
                    f"{run.seconds:.3f}", f"{'' if run.memory_seen else '<'}{run.megabytes:.0f}",
                    growth.note(row["model"], name, states)])
    return wrong


def run(cairn, options):
    """Verdicts, lengths and states of the rows, all properties together and each by itself, by exploration alone: the
    reference is one of states."""
    rows = chosen_rows(options, SMALL)
    if not rows:
        raise Failure("no row matches")
    table = Table([("model", max(len(r["model"]) for r in rows)), ("property", 19), ("verdict", 9), ("length", 6),
                   ("states", 11), ("reference", 11), ("states/s", 10), ("seconds", 8), ("MB", 6), ("growth", 6)], words=3)
    growth, wrong = Growth(), []
    with tempfile.TemporaryDirectory() as folder:
        for row in rows:
            file = write_model(folder, row["model"])
            questions = [("all together", [])]
            if not options.together_only:
                questions += [("by itself", [name]) for name in WITH_FAULTS + WITHOUT_FAULTS]
            for asked, properties in questions:
                try:
                    wrong += measure(row, asked, cairn.prove(file, properties, EXPLORING), table, growth)
                except Failure as failure:
                    wrong.append(f"{row['model']}, {' '.join(properties) or 'all'}: {failure}")
    return wrong
