"""What planning is to cost, and what it costs."""
from report import floor, plans
from report.figures import in_figures, table, words

LEAST_RATIO = 100


def judged(value, most):
    return "reached" if value < most else f"missed, {in_figures(value / most)} times"


def zone_rows(found, zones, most):
    for key, case in sorted(found[plans.OURS].items()):
        family, heads, pairs, of_zones = key
        if heads > 1 or of_zones != zones:
            continue
        verdict = "missed, open" if case["open"] else judged(case["ms"], most)
        what = f"*{family}*, {pairs} {'pair' if pairs == 1 else 'pairs'} of hands"
        yield f"a plan of {zones} zones under {most:g} ms", f"{what}: {in_figures(case['ms'])} ms", verdict


def ratio_row(aim, what, ratio, is_least=False):
    missed = "not known" if is_least else f"missed, {in_figures(LEAST_RATIO / ratio)} times"
    measured = f"{what}: {'at least ' if is_least else ''}{in_figures(ratio)} times"
    return aim, measured, "reached" if ratio >= LEAST_RATIO else missed


def peer_rows(found):
    for peer, name in plans.PEERS.items():
        part = list(plans.ratios(found, peer).values())
        if part:
            yield ratio_row(f"{LEAST_RATIO} times faster than a peer at the median", name, *plans.middle_of(part))


def plan_rows(result):
    found = plans.measured(result)
    yield from zone_rows(found, 4, 0.1)
    yield from zone_rows(found, 12, 5)
    yield from peer_rows(found)
    for (zones, runs), ms in plans.forecasts(result).items():
        if runs == 100_000:
            aim = f"a forecast of {runs:,} runs of {zones} zones under 200 ms"
            yield aim, f"{in_figures(ms)} ms", judged(ms, 200)


def again_rows(rooms):
    for room in rooms:
        if (room["heads"], room["zones"]) == (4, 4):
            aim = "planning again, 4 heads of 4 zones, 99 % under 2 ms"
            yield aim, f"{in_figures(room['most_of_100'])} ms", judged(room["most_of_100"], 2)


def floor_rows(runs):
    whole = [run for run in runs if run["heads"] == 12]
    if whole:
        slowest = max(floor.first_plans(whole))
        yield "the first plan of a floor under 50 ms", f"at most {in_figures(slowest)} ms", judged(slowest, 50)


def project_rows(sets):
    for one in sets:
        yield ratio_row(f"{LEAST_RATIO} times faster than Gecode on published projects", one["set"], one["ratio"])


def aim_table(rows):
    """An aim that several rows share is named in the first of them."""
    lines, last = [], None
    for aim, measured, verdict in rows:
        lines.append(["" if aim == last else aim, measured, verdict])
        last = aim
    return table(words("aim", "measured", ""), lines)
