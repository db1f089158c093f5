"""How many proofs the solver makes from facts alone, with no closed set of states."""
import tempfile

from .call import Failure, label, why_undecided, write_model
from .rows import chosen_rows, wrong_verdict
from .stated import differences, procedures
from .tables import Targets

MANAGEABLE = 300_000  # states of a plain exploration: what takes the default engine minutes and not hours
SHARE = 80  # percent


class Tally:
    """How proofs came about. `others` are those not made from facts, with what is known of why."""

    def __init__(self):
        self.by_facts = 0
        self.others = []

    def note(self, where, entry):
        """Counts a property that is to be proved; one that is undecided was not proved by facts either."""
        if entry.get("settled", {}).get("by") == "facts":
            self.by_facts += 1
        else:
            self.others.append(f"{where}, {label(entry)}: {why_not(entry)}")

    @property
    def proofs(self):
        return self.by_facts + len(self.others)

    @property
    def share(self):
        """In percent; of nothing, none."""
        return 100 * self.by_facts / self.proofs if self.proofs else 0


def why_not(entry):
    """Why a property was not proved by facts, as far as the verdict tells."""
    if entry["verdict"] == "undecided":
        return f"undecided ({why_undecided(entry)})"
    settled = entry["settled"]
    return f"{settled.get('not-by-facts', 'no reason told')}; {settled['explored']:,} states"


def of_one(cairn, name, file, differs, tally, wrong):
    """Asks the default engine for all that the file asks. `differs` tells what is wrong with one verdict."""
    try:
        answer = cairn.prove(file, [])
    except Failure as failure:
        wrong.append(f"{name}: {failure}")
        return
    before = tally.by_facts, tally.proofs
    for asked, entry in answer.properties.items():
        wrong += [f"{name}, {asked}: {phrase}" for phrase in differs(asked, entry)]
        if entry["verdict"] != "refuted":
            tally.note(name, entry)
    print(f"{tally.by_facts - before[0]} of {tally.proofs - before[1]} by facts {answer.timing['solving']:9.3f} s solving"
          f" {answer.seconds:9.3f} s in all  {name}", flush=True)


def of_models(cairn, options, wrong):
    tally = Tally()
    for path, name, stated in procedures(options.only):
        of_one(cairn, name, path, lambda asked, entry, stated=stated: differences(stated.get(asked), entry), tally, wrong)
    return tally


def of_rows(cairn, options, wrong):
    tally = Tally()
    with tempfile.TemporaryDirectory() as folder:
        for row in chosen_rows(options, MANAGEABLE):
            of_one(cairn, row["model"], write_model(folder, row["model"]),
                   lambda asked, entry, row=row: wrong_verdict(row, asked, entry), tally, wrong)
    return tally


def run(cairn, options):
    """The share of proofs by facts, of models/ and of the rows, by the default engine."""
    targets, wrong = Targets(), []
    tallies = [(what, tally) for what, tally in (("models/", of_models(cairn, options, wrong)),
                                                 ("the rows", of_rows(cairn, options, wrong))) if tally.proofs]
    if not tallies and not wrong:
        raise Failure("nothing that matches is proved")
    for what, tally in tallies:
        print(f"\nProofs of {what} that are not by facts: {len(tally.others)}")
        for line in tally.others:
            print(f"  {line}")
    print()
    for what, tally in tallies:
        targets.note(f"proofs by facts of {what}, {tally.by_facts} of {tally.proofs}", tally.share, "%", SHARE,
                     at_most=False)
    return wrong + targets.wrong
