"""Judges exams by the schema of the exam language. Arguments: the schema, a JSON list of exams. Prints a verdict a line."""

import json
import sys

from jsonschema import Draft202012Validator

schema = json.load(open(sys.argv[1], encoding="utf-8"))
Draft202012Validator.check_schema(schema)
validator = Draft202012Validator(schema)
for exam in json.load(open(sys.argv[2], encoding="utf-8")):
    print("valid" if validator.is_valid(exam) else "invalid")
