"""What the exploration leaves out: states with and without each reduction, and how they grow."""
import tempfile

from .call import Failure, explored, write_model
from .rows import WITH_FAULTS, WITHOUT_FAULTS, all_rows, wrong_verdict
from .tables import Table, Targets, number

FORGETTING = "seniority,settings,budgets"
KINDS = ["none", "seniority", FORGETTING, "all"]
REFERENCE_LIMIT = 2_000_000  # states that are visited without any reduction, for the table

# Families of models, the sizes of their members, and the most that the states may grow by for each further device or lane.
FAMILIES = [
    ("append -n {} --crashes 1", [8, 9, 10, 11, 12], 3),
    ("insert -n {} --breaks 1", [8, 9, 10, 11, 12], 3),
    ("insert -n {} --breaks 2", [6, 7, 8], 3),
    ("append -n {} --spoil priority", [8, 9, 10, 11, 12], 3),
    ("lanes -n 2 -m {}", [2, 3, 4, 5, 6, 7, 8], 2.5),
    ("lanes -n 2 -m {} --spoil priority", [2, 3, 4, 8], 2.5),
    ("lanes -n 2 -m {} --spoil save", [2, 3, 4, 8], 2.5),
]
LARGE = [(family.format(16), 60, 4_000) for family, _, _ in FAMILIES[:4]] + [
    (family.format(8), 60, 4_000) for family, _, _ in FAMILIES[4:]]


def exploring(reductions):
    return ["--engine", "explore", "--confirm-limit", "0", "--reduce", reductions]


def asked_of(model):
    """Those that its faults are about; without faults all of them."""
    return WITH_FAULTS if "breaks" in model or "crashes" in model else WITH_FAULTS + WITHOUT_FAULTS


class Measuring:
    """One pass over the families, as far as the call asks for them."""

    def __init__(self, cairn, options, folder):
        self.cairn, self.options, self.folder = cairn, options, folder
        self.targets = Targets()
        self.rows = {row["model"]: row for row in all_rows()}

    def run(self):
        table = Table([("model", 34), ("property", 19), ("verdict", 8), ("length", 6), *((k[:9], 11) for k in KINDS[:2]),
                       ("forgetting", 11), ("all", 9), ("seconds", 8), ("growth", 6)], 3)
        for family, sizes, most in FAMILIES:
            if self.options.only and self.options.only not in family:
                continue
            for name in asked_of(family):
                self.one_property(table, family, sizes, most, name)

    def one_property(self, table, family, sizes, most, name):
        before = None  # a size, and its states
        for size in sizes:
            model = family.format(size)
            runs = {kind: self.ask(model, name, kind) for kind in KINDS if kind == "all" or self.is_small(model)}
            entry = runs["all"].properties[name]
            if model in self.rows:
                self.targets.wrong += [f"{model}, {name}: {what}" for what in wrong_verdict(self.rows[model], name, entry)]
            for other in runs.values():
                self.compare(model, name, entry, other.properties[name])
            states = explored(entry)
            growth = None
            if before and entry["verdict"] == "proved":
                growth = (states / before[1]) ** (1 / (size - before[0]))
            table.line([model, name, entry["verdict"], str(len(entry.get("events", []))) if "events" in entry else "",
                        *(number(explored(runs[kind].properties[name])) if kind in runs else "" for kind in KINDS),
                        f"{runs['all'].taken('exploring'):.3f}", f"{growth:.2f}" if growth else ""])
            if growth and size == sizes[-1]:
                self.targets.judge(f"growth of {model}, {name}", growth, "times", most)
            before = size, states

    def is_small(self, model):
        """Whether visiting every state is known to end soon."""
        row = self.rows.get(model)
        return row is not None and (row["with-faults"] or REFERENCE_LIMIT + 1) <= REFERENCE_LIMIT

    def ask(self, model, name, kind):
        return self.cairn.prove(write_model(self.folder, model), [name], exploring(kind))

    def compare(self, model, name, one, other):
        if one["verdict"] != other["verdict"] or len(one.get("events", [])) != len(other.get("events", [])):
            self.targets.wrong.append(f"{model}, {name}: reductions change the answer")

    def large(self):
        print()
        for model, seconds, megabytes in LARGE:
            if self.options.only and self.options.only not in model:
                continue
            for name in asked_of(model):
                try:
                    run = self.ask(model, name, "all")
                except Failure as failure:
                    self.targets.miss(f"{model}, {name}: {failure}")
                    continue
                entry = run.properties[name]
                what = f"{model}, {name}: {entry['verdict']}, {number(explored(entry))} states"
                if entry["verdict"] == "undecided":
                    self.targets.miss(what)
                    continue
                self.targets.note(what, run.taken("exploring"), "s", seconds)
                self.targets.judge(what, run.megabytes, "MB", megabytes)


def run(cairn, options):
    with tempfile.TemporaryDirectory() as folder:
        measuring = Measuring(cairn, options, folder)
        measuring.run()
        if options.all:
            measuring.large()
        return measuring.targets.wrong
