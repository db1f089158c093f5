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


def answer_on(cairn, name, file, wrong):
    """What the default engine says of all that the file asks; None, and a word on it, where it fails."""
    try:
        answer = cairn.prove(file, [])
    except Failure as failure:
        wrong.append(f"{name}: {failure}")
        return None
    print(f"{answer.seconds:9.3f} s  {answer.timing['solving']:9.3f} s solving  {name}", flush=True)
    return answer


def of_models(cairn, options, wrong):
    tally = Tally()
    for path, name, stated in procedures(options.only):
        answer = answer_on(cairn, name, path, wrong)
        for asked, entry in answer.properties.items() if answer else ():
            wrong += [f"{name}, {asked}: {phrase}" for phrase in differences(stated.get(asked), entry)]
            if entry["verdict"] != "refuted":
                tally.note(name, entry)
    return tally


def of_rows(cairn, options, wrong):
    tally = Tally()
    with tempfile.TemporaryDirectory() as folder:
        for row in chosen_rows(options, MANAGEABLE):
            answer = answer_on(cairn, row["model"], write_model(folder, row["model"]), wrong)
            for asked, entry in answer.properties.items() if answer else ():
                wrong += [f"{row['model']}, {asked}: {phrase}" for phrase in wrong_verdict(row, asked, entry)]
                if entry["verdict"] != "refuted":
                    tally.note(row["model"], entry)
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
        targets.note(f"proofs by facts of {what}, {tally.by_facts} of {tally.proofs}", tally.share, "%", SHARE, at_most=False)
    return wrong + targets.wrong
