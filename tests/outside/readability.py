"""The reading grade of texts. In: text files. Out: a line each: the Flesch-Kincaid grade by textstat, the file."""

import sys

import textstat

for name in sys.argv[1:]:
    with open(name, encoding="utf-8") as file:
        print(f"{textstat.flesch_kincaid_grade(file.read()):.2f} {name}")
