"""The published schema of plans: it is sound, accepts what the program prints, refuses what is broken.

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


def planned(path, start):
    """What the program prints for a service, and its exit status."""
    run = subprocess.run([PROGRAM, "plan", "--json", "--from", start, "-"], input=path, capture_output=True, check=False)
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


def main():
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    validator = jsonschema.Draft202012Validator(SCHEMA)
    plans = []
    for path in sorted((ROOT / "resources/demo").glob("*.json")):
        plan, status = planned(path.read_bytes(), "09:00")
        assert status == 0, f"{path.name}: nothing fits from 09:00"
        validator.validate(plan)
        plans.append(plan)
    assert len(plans) >= 4, "the demo has at least four services"

    for place, value in BROKEN:
        assert not validator.is_valid(broken(plans[0], place, value)), f"{place} = {value} was accepted"

    tight = json.loads((ROOT / "resources/demo/wig-room-three-zones.json").read_text(encoding="utf-8"))
    tight["ready_by"] = "09:20"
    answer, status = planned(json.dumps(tight).encode(), "09:00")
    assert status == 2 and answer["nothing_fits"]["text"], answer
    validator.validate(answer)
    assert not validator.is_valid(broken(answer, ["nothing_fits", "text"], None))
    print(f"{len(plans)} plans and one refusal are as the schema says; {len(BROKEN) + 1} broken ones are not.")


main()
