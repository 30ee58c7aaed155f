"""Checks FHIR R4 bundles without network: the official JSON schema, the classes of fhir.resources, and what both miss.
usage: validate_fhir.py SCHEMA codes.csv FILE...   a line a file; exit 1 on any problem"""
import base64
import csv
import hashlib
import json
import re
import sys

from fhir.resources.R4B.bundle import Bundle
from jsonschema import Draft6Validator

LOINC, SNOMED = "http://loinc.org", "http://snomed.info/sct"


def loinc_ok(code):
    """The check digit of LOINC: modulo 10."""
    found = re.fullmatch(r"(\d{1,7})-(\d)", code)
    if not found:
        return False
    turned = found[1][::-1]
    digits = str(int(turned[::2]) * 2) + turned[1::2]
    return -sum(map(int, digits)) % 10 == int(found[2])


DIHEDRAL = [
    [0, 1, 2, 3, 4, 5, 6, 7, 8, 9], [1, 2, 3, 4, 0, 6, 7, 8, 9, 5], [2, 3, 4, 0, 1, 7, 8, 9, 5, 6],
    [3, 4, 0, 1, 2, 8, 9, 5, 6, 7], [4, 0, 1, 2, 3, 9, 5, 6, 7, 8], [5, 9, 8, 7, 6, 0, 4, 3, 2, 1],
    [6, 5, 9, 8, 7, 1, 0, 4, 3, 2], [7, 6, 5, 9, 8, 2, 1, 0, 4, 3], [8, 7, 6, 5, 9, 3, 2, 1, 0, 4],
    [9, 8, 7, 6, 5, 4, 3, 2, 1, 0],
]
TURNS = [list(range(10))]
for _ in range(7):
    TURNS.append([TURNS[-1][x] for x in [1, 5, 7, 6, 2, 8, 3, 0, 9, 4]])


def snomed_ok(code):
    """The check digit of SNOMED CT: Verhoeff."""
    check = 0
    for at, digit in enumerate(reversed(code)):
        check = DIHEDRAL[check][TURNS[at % 8][int(digit)]]
    return check == 0


def walk(value, path=""):
    yield path, value
    inside = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for key, part in inside:
        yield from walk(part, f"{path}/{key}")


def problems(schema, allowed, bundle):
    found = []
    try:
        Bundle.model_validate_json(json.dumps(bundle))
    except ValueError as fault:
        found.append("fhir.resources: " + str(fault).replace("\n", " ")[:300])
    alone = {key: value for key, value in bundle.items() if key != "entry"}
    for resource in [alone] + [entry["resource"] for entry in bundle["entry"]]:
        kind = {"$schema": schema["$schema"], "$ref": "#/definitions/" + resource["resourceType"]}
        for fault in Draft6Validator({**kind, "definitions": schema["definitions"]}).iter_errors(resource):
            found.append(f"schema: {resource['resourceType']}: {fault.message[:160]}")
    urls = {entry["fullUrl"] for entry in bundle["entry"]}
    for path, value in walk(bundle):
        if not isinstance(value, dict):
            continue
        if "reference" in value and value["reference"] not in urls:
            found.append(f"{path}: refers to nothing")
        if "data" in value and "contentType" in value:
            try:
                data = base64.b64decode(value["data"], validate=True)
            except ValueError:
                found.append(f"{path}: base64")
                continue
            digest = base64.b64encode(hashlib.sha1(data).digest()).decode()
            if value["size"] != len(data) or value["hash"] != digest:
                found.append(f"{path}: size or hash")
        system, code = value.get("system"), value.get("code")
        if system == LOINC and not loinc_ok(code) or system == SNOMED and not snomed_ok(code):
            found.append(f"{path}: check digit of {code}")
        if system in (LOINC, SNOMED) and (system, code) not in allowed:
            found.append(f"{path}: {code} is not free to send")
    return found


def main():
    schema = json.load(open(sys.argv[1], encoding="utf-8"))
    rows = [line for line in open(sys.argv[2], encoding="utf-8") if not line.startswith("#")]
    allowed = {(row["system"], row["code"]) for row in csv.DictReader(rows)}
    bad = 0
    for name in sys.argv[3:]:
        found = problems(schema, allowed, json.load(open(name, encoding="utf-8")))
        bad += bool(found)
        print(name, "OK" if not found else "; ".join(found))
    sys.exit(1 if bad else 0)


main()
