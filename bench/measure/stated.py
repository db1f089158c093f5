"""What the files of models/ state about themselves (models/README.md)."""
import re
from typing import NamedTuple

from .call import ROOT, Failure, why_undecided

MARK = "# expect:"
LINE = re.compile(r"(?P<name>[a-z-]+(?:=[1-9]\d*)?) (?:(?P<proved>proved)(?P<vacuous> vacuous)?|refuted (?P<events>\d+))")


class Stated(NamedTuple):
    """What must come out for one property; `events` is the length of a shortest refutation, None where it is proved."""
    verdict: str
    vacuous: bool
    events: int | None


def read_stated(text):
    """What a procedure's opening comment states, by the property's label."""
    stated = {}
    for line in text.splitlines():
        if not line.startswith("#"):
            break
        if not line.startswith(MARK):
            continue
        found = LINE.fullmatch(line[len(MARK):].strip())
        if not found:
            raise Failure(f"cannot read the line {line!r}")
        events = found["events"]
        stated[found["name"]] = Stated("proved" if found["proved"] else "refuted", bool(found["vacuous"]),
                                       None if events is None else int(events))
    return stated


def procedures(only=None):
    """The procedures of models/ whose path matches `only`: (path, name to print, what is stated), sorted."""
    found = []
    for path in sorted((ROOT / "models").rglob("*.yaml")):
        name = str(path.relative_to(ROOT / "models").with_suffix(""))
        if only and not re.search(only, name):
            continue
        text = path.read_text()
        if re.search(r"^procedure:", text, re.MULTILINE):
            found.append((path, name, read_stated(text)))
    return found


def differences(stated, entry):
    """How the verdict on one property differs from what is stated of it (None: nothing), as a list of phrases."""
    if stated is None:
        return ["the file states nothing"]
    if entry["verdict"] != stated.verdict:
        reason = f" ({why_undecided(entry)})" if entry["verdict"] == "undecided" else ""
        return [f"{entry['verdict']}{reason}, the file states {stated.verdict}"]
    if stated.events is not None and len(entry["events"]) != stated.events:
        return [f"refuted by {len(entry['events'])} events, the file states {stated.events}"]
    if stated.verdict == "proved" and stated.vacuous != ("vacuous" in entry):
        return [f"{'not ' if stated.vacuous else ''}vacuous, the file states otherwise"]
    return []
