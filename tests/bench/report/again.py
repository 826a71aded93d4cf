"""What again_bench printed: how long planning again takes after each fact of a run."""
import re

from report.figures import in_figures, numbers, table

COUNTS = re.compile(
    r"(?P<heads>\d+) heads of (?P<zones>\d+) zones, (?P<pairs>\d+) pairs of hands: (?P<plans>\d+) plans in "
    r"(?P<runs>\d+) runs, (?P<unproved>\d+) not proved, (?P<broken>\d+) after a limit was passed"
)
TIMES = re.compile(
    r"the first (?P<first>\S+) ms; again: median (?P<median>\S+) ms, 90 % (?P<most_of_ten>\S+) ms, "
    r"99 % (?P<most_of_100>\S+) ms, most (?P<most>\S+) ms"
)


def read(text):
    found = {name: int(value) for name, value in COUNTS.search(text).groupdict().items()}
    found.update((name, float(value)) for name, value in TIMES.search(text).groupdict().items())
    return found


def again_table(rooms):
    rows = []
    for room in rooms:
        counts = [room[name] for name in ("heads", "zones", "pairs", "plans", "unproved")]
        times = [in_figures(room[name]) for name in ("first", "median", "most_of_ten", "most_of_100", "most")]
        rows.append(counts + times)
    counts = ("heads", "zones of each", "pairs of hands", "plans", "not proved")
    times = ("first plan", "again, median", "90 %", "99 %", "most")
    return table(numbers(*counts, *times), rows)
