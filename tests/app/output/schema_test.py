"""The published schemas of plans, explanations and forecasts: they are sound, accept what the program prints, refuse what is broken.

Usage: schema_test.py ROOT PROGRAM, with ROOT the top of the tree. Needs the Debian package python3-jsonschema.
"""

import copy
import json
import pathlib
import subprocess
import sys

import jsonschema

ROOT, PROGRAM = pathlib.Path(sys.argv[1]), sys.argv[2]
SCHEMA = json.loads((ROOT / "resources/schema/basinbell-plan-1.schema.json").read_text(encoding="utf-8"))
EXPLANATION = json.loads((ROOT / "resources/schema/basinbell-explanation-1.schema.json").read_text(encoding="utf-8"))
FORECAST = json.loads((ROOT / "resources/schema/basinbell-forecast-1.schema.json").read_text(encoding="utf-8"))

# Two toners, one pair of hands, one rinse: mids develop at least 8 min longer than ends, or ends 10 longer than mids.
TONERS = {
    "basinbell": 1,
    "name": "Toners",
    "zone": "Europe/London",
    "crew": {"hands": [{"name": "Wig room"}]},
    "coats": [
        {
            "zones": [
                {"name": "Mids", "apply": 10, "develop": {"least": 12, "target": 15, "most": 18}},
                {"name": "Ends", "apply": 8, "develop": {"least": 12, "target": 15, "most": 18}},
            ],
            "rinse": [{"length": 5}],
        }
    ],
}

# Each breaks a right explanation of those at one place.
BROKEN_EXPLANATION = [
    (["basinbell_explanation"], "1"),
    (["fits"], True),
    (["complete"], None),
    (["cures"], None),
    (["cures", 0, "number"], 0),
    (["cures", 0, "steps"], []),
    (["cures", 0, "steps", 0, "kind"], "hope"),
    (["cures", 0, "steps", 0, "by_seconds"], -60),
    (["cures", 0, "plan", "worth"], None),
    (["cures", 2, "steps", 0, "until"], None),
    (["nothing_fits", "demands"], "all"),
]

# Each breaks a right forecast at one place.
BROKEN_FORECAST = [
    (["basinbell_forecast"], 2),
    (["runs"], 0),
    (["zones", 0, "inside"], -1),
    (["zones", 0, "development_seconds", "middle"], None),
    (["rinses", 0, "water", "low"], 1200),
    (["influences", 0, "share"], 1.5),
    (["influences", 0, "task"], "the root"),
    (["all_inside"], None),
]

# Each breaks a right plan at one place; None removes the key.
BROKEN = [
    (["basinbell_plan"], 2),
    (["services"], []),
    (["start"], "2026-03-14 09:00"),
    (["proved"], "yes"),
    (["worth", "waste_seconds"], -1),
    (["worth", "waste_seconds"], 1.5),
    (["worth", "cheer"], 1),
    (["tasks", 0, "id"], "mix the bowl"),
    (["tasks", 0, "kind"], "sing"),
    (["tasks", 0, "state"], "late"),
    (["tasks", 0, "hands"], 3),
    (["zones", 0, "clock"], "never"),
    (["zones", 0, "water"], None),
    (["zones", 0, "first_strand_most_seconds"], "none"),
    (["zones"], None),
    (["proved_bound"], None),
    (["nothing_fits"], {"text": "", "minimal": True, "stopped": False, "demands": []}),
]


def printed(command, service, start, *others):
    """What the program prints for a service, with those in other files, and its exit status."""
    line = [PROGRAM, command, "--json", "--from", start, "-", *others]
    run = subprocess.run(line, input=service, capture_output=True, check=False)
    assert run.returncode in (0, 2), (run.returncode, run.stderr)
    return json.loads(run.stdout), run.returncode


def broken(plan, place, value):
    """A copy of the plan with one thing wrong."""
    plan = copy.deepcopy(plan)
    inner = plan
    for step in place[:-1]:
        inner = inner[step]
    if value is None:
        del inner[place[-1]]
    else:
        inner[place[-1]] = value
    return plan


def look_at_explanations():
    """How many explanations of each kind were looked at."""
    jsonschema.Draft202012Validator.check_schema(EXPLANATION)
    validator = jsonschema.Draft202012Validator(EXPLANATION)
    why_not, status = printed("explain", json.dumps(TONERS).encode(), "09:00")
    assert status == 2 and len(why_not["cures"]) == 5, why_not
    validator.validate(why_not)
    for place, value in BROKEN_EXPLANATION:
        assert not validator.is_valid(broken(why_not, place, value)), f"{place} = {value} was accepted"
    loose = broken(TONERS, ["coats", 0, "zones", 0, "develop", "most"], 30)
    why_so, status = printed("explain", json.dumps(loose).encode(), "09:00")
    assert status == 0 and why_so["holds"], why_so
    validator.validate(why_so)
    assert not validator.is_valid(broken(why_so, ["holds", 0, "what"], ""))
    return len(BROKEN_EXPLANATION) + 1


def look_at_forecasts():
    """How many broken forecasts were refused."""
    jsonschema.Draft202012Validator.check_schema(FORECAST)
    validator = jsonschema.Draft202012Validator(FORECAST)
    service = (ROOT / "resources/demo/wig-room-three-zones.json").read_bytes()
    forecast, status = printed("forecast", service, "09:00")
    assert status == 0 and forecast["runs"] == 2000, forecast
    validator.validate(forecast)
    again, _ = printed("forecast", service, "09:00")
    assert forecast == again, "the same seed gave another forecast"
    for place, value in BROKEN_FORECAST:
        assert not validator.is_valid(broken(forecast, place, value)), f"{place} = {value} was accepted"
    return len(BROKEN_FORECAST)


def look_at_several_heads(validator):
    """Every line names its head."""
    heads = sorted((ROOT / "resources/demo/premiere").glob("*.json"))
    together, status = printed("plan", heads[0].read_bytes(), "14:00", *heads[1:])
    assert status == 0, "the heads of the premiere do not fit from 14:00"
    validator.validate(together)
    assert len(together["services"]) == len(heads) == 3
    names = {service["head"] for service in together["services"]}
    assert {task["head"] for task in together["tasks"]} == names == {zone["head"] for zone in together["zones"]}
    assert not validator.is_valid(broken(together, ["tasks", 0, "head"], 3))


def main():
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    validator = jsonschema.Draft202012Validator(SCHEMA)
    plans = []
    for path in sorted((ROOT / "resources/demo").glob("*.json")):
        plan, status = printed("plan", path.read_bytes(), "09:00")
        assert status == 0, f"{path.name}: nothing fits from 09:00"
        validator.validate(plan)
        plans.append(plan)
    assert len(plans) >= 4, "the demo has at least four services"

    look_at_several_heads(validator)

    for place, value in BROKEN:
        assert not validator.is_valid(broken(plans[0], place, value)), f"{place} = {value} was accepted"

    tight = json.loads((ROOT / "resources/demo/wig-room-three-zones.json").read_text(encoding="utf-8"))
    tight["ready_by"] = "09:20"
    answer, status = printed("plan", json.dumps(tight).encode(), "09:00")
    assert status == 2 and answer["nothing_fits"]["text"], answer
    validator.validate(answer)
    assert not validator.is_valid(broken(answer, ["nothing_fits", "text"], None))
    explained = look_at_explanations()
    print(f"{len(plans)} plans and one refusal are as the schema says; {len(BROKEN) + 1} broken ones are not.")
    print(f"One forecast is as its schema says; {look_at_forecasts()} broken ones are not.")
    print(f"Two explanations are as theirs says; {explained} broken ones are not.")


main()
