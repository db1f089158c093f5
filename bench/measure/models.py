"""Every procedure of models/ by both engines, beside what its file states."""
from collections import Counter

from .call import Failure, why_undecided
from .stated import differences, procedures
from .tables import Table, number

BOTH = ["--engine", "both"]


def words_of(entry):
    """How a verdict was settled, in a few words."""
    settled = entry.get("settled")
    if not settled:
        return why_undecided(entry)
    if settled["by"] == "facts":
        return f"{settled['facts']} facts" + (", any number of faults" if settled["any-number"] else "")
    if settled["by"] == "unrolling":
        return f"runs of up to {settled['length']} events"
    if settled["by"] == "states":
        return f"{settled['explored']:,} states"
    return "replayed"


def constraints_decided(entry, timing, time_limit):
    """Whether constraints alone had an answer. Of a proof the verdict tells: it would be theirs. Of a refutation it does
    not: their time was up, or they agree."""
    if entry["verdict"] == "proved":
        return entry["settled"]["by"] != "states"
    return entry["verdict"] == "refuted" and timing["solving"] < time_limit


def judge(stated, entry, timing, time_limit):
    """What is wrong with a verdict, as a list of (what is counted, phrase)."""
    if entry["verdict"] == "undecided":
        return [("undecided", f"undecided: {why_undecided(entry)}")]
    wrong = [("different", phrase) for phrase in differences(stated, entry)]
    if not entry["settled"].get("confirmed"):
        wrong.append(("not confirmed", "not confirmed"))
    if not constraints_decided(entry, timing, time_limit):
        wrong.append(("by one engine alone", "constraints alone have no answer"))
    return wrong


def closing(counts, wrong):
    """The line that sums up."""
    proofs = sum(counts["proved", by] for by in ("facts", "unrolling", "states"))
    told = ", ".join(f"{wrong[what]} {what}"
                     for what in ("different", "undecided", "not confirmed", "by one engine alone", "failed"))
    return (f"{counts['properties']} verdicts on {counts['procedures']} procedures: {proofs} proved"
            f" ({counts['proved', 'facts']} by facts, {counts['proved', 'unrolling']} by unrolling,"
            f" {counts['proved', 'states']} by states), {counts['refuted', 'refutation']} refuted. {told}.")


def run(cairn, options):
    """One line a property, asked by itself."""
    shelf = procedures(options.only)
    if not shelf:
        raise Failure("no procedure of models/ matches")
    table = Table([("procedure", max(len(name) for _, name, _ in shelf)), ("property", 19), ("verdict", 9),
                   ("settled by", 30), ("confirmed", 9), ("length", 6), ("states", 9), ("seconds", 8)], words=5)
    counts, kinds, wrong = Counter(), Counter(), []
    for path, name, stated in shelf:
        counts["procedures"] += 1
        for asked, expected in stated.items():
            counts["properties"] += 1
            try:
                answer = cairn.prove(path, [asked], BOTH)
            except Failure as failure:
                kinds["failed"] += 1
                wrong.append(f"{name}, {asked}: {failure}")
                continue
            entry = answer.properties[asked]
            counts[entry["verdict"], entry.get("settled", {}).get("by")] += 1
            found = judge(expected, entry, answer.timing, cairn.time_limit)
            kinds.update(what for what, _ in found)
            wrong += [f"{name}, {asked}: {phrase}" for _, phrase in found]
            settled = entry.get("settled", {})
            length = len(entry["events"]) if "events" in entry else None
            table.line([name, asked, entry["verdict"], words_of(entry), "yes" if settled.get("confirmed") else "no",
                        number(length), number(settled.get("explored")), f"{answer.seconds:.3f}",
                        "; ".join(phrase for _, phrase in found)])
    print(closing(counts, kinds))
    return wrong
