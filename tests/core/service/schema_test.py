"""The published schema of the service file: it is sound, accepts what the program accepts, refuses what is broken.

Usage: schema_test.py ROOT, with ROOT the top of the tree. Needs the Debian package python3-jsonschema.
"""

import copy
import json
import pathlib
import re
import sys

import jsonschema

ROOT = pathlib.Path(sys.argv[1])
SCHEMA = json.loads((ROOT / "resources/schema/basinbell-service-1.schema.json").read_text(encoding="utf-8"))

REMOVE = object()

# Each breaks the full example of docs/service-file.md at one place.
BROKEN = [
    (["basinbell"], REMOVE),
    (["basinbell"], 2),
    (["name"], ""),
    (["name"], " x"),
    (["name"], "two\nlines"),
    (["nme"], "x"),
    (["zone"], 7),
    (["date"], "28 November"),
    (["buffer"], -1),
    (["buffer"], 1441),
    (["buffer"], "10 min"),
    (["buffer"], None),
    (["ready_by"], "24:00"),
    (["ready_by"], "2026-11-28 14:00"),
    (["head", "kind"], "doll"),
    (["head", "comes_apart"], True),
    (["head", "colour"], "red"),
    (["crew", "basins"], 0),
    (["crew", "basins"], 1.5),
    (["crew", "hands"], []),
    (["crew", "hands", 0, "name"], REMOVE),
    (["crew", "hands", 1, "does"], []),
    (["crew", "hands", 1, "does", 0], "sing"),
    (["crew", "hands", 1, "does", 0], "apply"),
    (["crew", "hands", 1, "away", 0, "until"], REMOVE),
    (["coats"], []),
    (["coats"], REMOVE),
    (["coats", 0, "name"], REMOVE),
    (["coats", 0, "zones"], []),
    (["coats", 0, "rinse"], REMOVE),
    (["coats", 0, "rinse", 0, "length"], 0),
    (["coats", 0, "rinse", 0, "name"], REMOVE),
    (["coats", 0, "rinse", 1, "water", "soonest"], "10:00"),
    (["coats", 0, "bowls", 0, "name"], REMOVE),
    (["coats", 0, "bowls", 0, "pot_life"], "0:00"),
    (["coats", 0, "bowls", 0, "mixing"], 4),
    (["coats", 0, "dry"], 20),
    (["coats", 0, "gap", "least"], "soon"),
    (["coats", 0, "zones", 0, "name"], REMOVE),
    (["coats", 0, "zones", 0, "bowl"], REMOVE),
    (["coats", 0, "zones", 0, "group"], REMOVE),
    (["coats", 0, "zones", 0, "apply"], 0),
    (["coats", 0, "zones", 0, "apply"], "1:60"),
    (["coats", 0, "zones", 0, "apply", "usual"], REMOVE),
    (["coats", 0, "zones", 0, "apply", "fastest"], 3),
    (["coats", 0, "zones", 0, "develop"], REMOVE),
    (["coats", 0, "zones", 0, "develop", "target"], REMOVE),
    (["coats", 0, "zones", 0, "develop", "most"], "long"),
    (["coats", 0, "zones", 0, "clock"], "start"),
    (["coats", 0, "zones", 0, "under"], 1000.5),
    (["coats", 0, "zones", 0, "late", 0, "before"], REMOVE),
    (["coats", 0, "zones", 1, "looks", "first"], REMOVE),
    (["coats", 0, "zones", 1, "looks", "every"], 0),
    (["coats", 0, "zones", 1, "after", 0, "zone"], REMOVE),
    (["coats", 0, "zones", 2, "alone"], "yes"),
    (["coats", 0, "zones", 0, "where"], ["crown roots", "crown roots"]),
    (["coats", 0, "zones", 0, "where"], ["crown root"]),
    (["coats", 0, "zones", 0, "where"], "crown roots"),
    (["coats", 0, "zones", 2, "after", 0], 3),
    (["coats", 0, "zones", 2, "not_before"], 10),
]


def broken(service, path, value):
    service = copy.deepcopy(service)
    target = service
    for step in path[:-1]:
        target = target[step]
    if value is REMOVE:
        del target[path[-1]]
    else:
        target[path[-1]] = value
    return service


def open_objects(schema, place="#"):
    """Every object of the schema that would let unknown keys through."""
    if isinstance(schema, dict):
        if schema.get("type") == "object" and schema.get("additionalProperties") is not False:
            yield place
        for key, value in schema.items():
            yield from open_objects(value, f"{place}/{key}")
    elif isinstance(schema, list):
        for index, value in enumerate(schema):
            yield from open_objects(value, f"{place}/{index}")


def undescribed(schema, place="#"):
    """Every key of a service file that the schema does not explain."""
    definitions = SCHEMA["$defs"]
    if isinstance(schema, dict):
        for key, value in schema.get("properties", {}).items():
            is_explained = "description" in value or "description" in definitions.get(
                value.get("$ref", "").rpartition("/")[2], {})
            if schema.get("type") == "object" and not is_explained:
                yield f"{place}/{key}"
        for key, value in schema.items():
            yield from undescribed(value, f"{place}/{key}")


def main():
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    validator = jsonschema.Draft202012Validator(SCHEMA)
    faults = [f"{place} lets unknown keys through" for place in open_objects(SCHEMA)]
    faults += [f"{place} has no description" for place in undescribed(SCHEMA)]

    page = (ROOT / "docs/service-file.md").read_text(encoding="utf-8")
    examples = [json.loads(block) for block in re.findall(r"```json\n(.*?)```", page, re.S)]
    demos = {path.name: json.loads(path.read_text(encoding="utf-8"))
             for path in sorted((ROOT / "resources/demo").glob("*.json"))}
    right = {f"example {index}": example for index, example in enumerate(examples)} | demos
    if len(examples) < 2 or len(demos) < 4:
        faults.append("examples or demonstration services are missing")
    for name, service in right.items():
        faults += [f"{name}: {error.json_path}: {error.message}" for error in validator.iter_errors(service)]

    full = examples[1]
    for path, value in BROKEN:
        if validator.is_valid(broken(full, path, value)):
            faults.append(f"accepted although broken: {path} = {'removed' if value is REMOVE else repr(value)}")

    print("\n".join(faults) or f"{len(right)} accepted, {len(BROKEN)} refused")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
