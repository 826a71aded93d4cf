"""What floor_bench printed: how a plan of a whole floor gets better, and how far it is from what is proved."""
import re

from report.figures import in_figures, numbers, table, words

LEVELS = ("deviation", "waste", "staleness")
FIRST = re.compile(r"(?P<heads>\d+) heads, (?P<tasks>\d+) tasks, seed (?P<seed>\d+)")
LINE = re.compile(r"(\S+) s +(plan|bound) +deviation +(\S+), waste +(\S+), staleness +(\S+) min")
GIVE = re.compile(r" s +give +(\d+) %")
MOMENTS = (1, 2, 5, 10, 30)


def read(text, seconds):
    """The plans, each (seconds, [minutes of each level]), the bound and the give at the end."""
    found = {name: int(value) for name, value in FIRST.search(text).groupdict().items()}
    plans, bound = [], None
    for time, what, *levels in LINE.findall(text):
        minutes = [float(value) for value in levels]
        if what == "bound":
            bound = minutes
        else:
            plans.append((float(time), minutes))
    give = GIVE.search(text)
    return dict(found, seconds=seconds, plans=plans, bound=bound, give=int(give.group(1)) if give else None)


def after(run, seconds):
    """The best plan there was after so many seconds, or nothing."""
    before = [minutes for time, minutes in run["plans"] if time <= seconds]
    # The last plan is written down once more at the end, a little after the last moment that is asked about.
    return run["plans"][-1][1] if seconds >= run["seconds"] else before[-1] if before else None


def in_cell(run, seconds, level):
    if seconds > run["seconds"]:
        return ""
    minutes = after(run, seconds)
    return f"{minutes[level]:,.0f}" if minutes else "none"


def over_time(runs):
    """The waste, which is the level on which plans differ, and what is proved of it after the longest time."""
    rows = []
    for run in runs:
        time, first = run["plans"][0]
        cells = [in_cell(run, seconds, LEVELS.index("waste")) for seconds in MOMENTS]
        bound = run["bound"][LEVELS.index("waste")]
        last = run["plans"][-1][1][LEVELS.index("waste")]
        rows.append(
            [run["heads"], run["seed"], run["tasks"], f"{1000 * time:.0f} ms", f"{first[1]:,.0f}"]
            + [*cells, f"{bound:,.0f}", f"{last - bound:,.0f}", "" if run["give"] is None else f"{run['give']} %"]
        )
    moments = [f"after {seconds} s" for seconds in MOMENTS]
    columns = numbers("heads", "seed", "tasks", "first plan after", "its waste", *moments, "proved bound", "gap", "give")
    return table(columns, rows)


def gaps(runs):
    """Level by level at the end of each run: the plan's minutes, what is proved, and the difference."""
    rows = []
    for run in runs:
        plan = run["plans"][-1][1]
        for level, name in enumerate(LEVELS):
            bound = run["bound"][level]
            rows.append(
                [name, run["heads"], run["seed"], f"{plan[level]:,.2f}", f"{bound:,.2f}", f"{plan[level] - bound:,.2f}"]
            )
    return table(words("level") + numbers("heads", "seed", "plan, min", "proved bound, min", "gap, min"), rows)


def first_plans(runs):
    """Milliseconds until the first plan of each run."""
    return [1000 * run["plans"][0][0] for run in runs]


def slowest_first(runs):
    return in_figures(max(first_plans(runs)))
