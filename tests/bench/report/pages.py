"""Blocks of Markdown made of what was measured, and where they stand in a page.

The first block of each part of what is measured says under what conditions it was, for all of them. A block stands between
the lines `<!-- measured: NAME -->` and `<!-- measured until here -->`, which a reader does not see.
"""
import re

from report import again, aims, conditions, floor, plans, plot, projects

END = "<!-- measured until here -->"


def begin(name):
    return f"<!-- measured: {name} -->"


def as_list(sentences):
    return [f"- {sentence}." for sentence in sentences] or ["Nowhere."]


def plan_blocks(result):
    found = plans.measured(result)
    wrong, allowed = plans.disagreements(found)
    blocks = {
        "coats": plans.coat_table(found),
        "rooms": plans.room_table(found),
        "ratios": plans.ratio_table(found) + [""] + agreement(wrong, allowed),
        "slower plans": as_list(plans.slower(found)),
        "uncertain": plans.uncertain_table(result),
        "forecast": plans.forecast_table(result),
    }
    return blocks, plot.picture(found), wrong


def agreement(wrong, allowed):
    if wrong:
        return [f"**Contradictions, {len(wrong)}:** {'; '.join(wrong)}."]
    sentence = "Where both sides proved their answer they agree on what fits, on the deviation and on the waste"
    if not allowed:
        return [f"{sentence}."]
    return [f"{sentence}, except that seconds allow less waste than whole minutes here: {'; '.join(allowed)}."]


def floor_blocks(runs):
    short = [run for run in runs if run["seconds"] < max(floor.MOMENTS)]
    whole = [run for run in runs if run["seconds"] >= max(floor.MOMENTS)] or short
    return {"floor over time": floor.over_time(whole), "floor gaps": floor.gaps(short)}


def project_blocks(sets):
    # Without the published sets the page keeps what it shows of them.
    if not any(one["published"] for one in sets):
        return {}
    judged = aims.aim_table(aims.project_rows([one for one in sets if one["published"]]))
    return {
        "projects": projects.project_table(sets) + [""] + judged,
        "slower projects": as_list(projects.slower(sets)),
    }


def made_of(found):
    """({name: lines}, the picture or nothing, what contradicts each other), of the parts that were measured."""
    blocks, picture, wrong = {}, None, []
    of_parts = {
        "again": lambda rooms: {"again": again.again_table(rooms)},
        "floor": floor_blocks,
        "projects": project_blocks,
    }
    for part, measured in found.items():
        told = conditions.in_a_sentence(measured["conditions"])
        if part == "plans":
            made, picture, wrong = plan_blocks(measured["result"])
        else:
            made = of_parts[part](measured["result"])
        for name, lines in made.items():
            blocks[name] = [*([told, ""] if name == next(iter(made)) else []), *lines]
    if {"plans", "again", "floor"} <= found.keys():
        result = {part: found[part]["result"] for part in found}
        rows = [*aims.plan_rows(result["plans"]), *aims.again_rows(result["again"]), *aims.floor_rows(result["floor"])]
        blocks["aims"] = aims.aim_table(rows)
    return blocks, picture, wrong


def as_page(blocks):
    return "\n".join("\n".join([f"## {name}", "", *lines, ""]) for name, lines in blocks.items())


def put_into(path, blocks):
    """Replaces each block where it stands. A page without one of them is not what this was written for."""
    text = path.read_text(encoding="utf-8")
    for name, lines in blocks.items():
        pattern = re.escape(begin(name)) + r"\n.*?" + re.escape(END)
        inside = "\n".join([begin(name), *lines, END])
        text, count = re.subn(pattern, lambda _, inside=inside: inside, text, flags=re.S)
        if count != 1:
            raise SystemExit(f"{path} has {count} places for '{name}'; nothing was written into it")
    path.write_text(text, encoding="utf-8")
