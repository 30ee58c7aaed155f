"""Numbers of this program and printed tables, held against scipy and pygrowthstandards.

Arguments: a file with `z centile` lines of this program, and the published table of newborn sizes.
Prints one line for each disagreement, and one with what was compared; fails when anything disagrees.
"""

import csv
import sys

from pygrowthstandards.functional.data import DATA, get_lms, get_table
from scipy.stats import norm

ours, newborn = sys.argv[1:]
faults = []

lines = [line.split() for line in open(ours)]
for z, centile in ((float(a), float(b)) for a, b in lines):
    if abs(100 * norm.cdf(z) - centile) > 1e-9:
        faults.append(f"z {z}: {centile} is not {100 * norm.cdf(z)}")

rows = list(csv.DictReader(line for line in open(newborn) if not line.startswith("#")))
measures = {"weight_kg": "weight", "length_cm": "stature", "headcirc_cm": "head_circumference"}
cells = 0
for row in rows:
    weeks, over = map(int, row["ga_weeks_days"].split("+"))
    days = weeks * 7 + over
    table = "newborn" if days >= 33 * 7 else "very_preterm_newborn"
    for name, theirs in measures.items():
        for sex, letter in (("boy", "M"), ("girl", "F")):
            l, m, s = get_lms(get_table(DATA, (table, theirs, letter, "gestational_age")), days)
            for column, z in (("p03", -1.880794), ("p50", 0.0), ("p97", 1.880794)):
                value = m * (1 + l * s * z) ** (1 / l)
                printed = float(row[f"{name}_{sex}_{column}"])
                cells += 1
                # Their medians are the printed ones to one in the last digit of either; their spread is fitted, and leaves
                # the outer centiles by up to 5 %.
                digit = 0.01 if name == "weight_kg" else 0.05
                allowed = digit + 1e-9 if column == "p50" else 0.05 * printed
                if abs(value - printed) > allowed:
                    faults.append(f"{row['ga_weeks_days']} {sex} {name} {column}: {printed} is not {value:.3f}")

print("\n".join(faults))
print(f"{len(lines)} centiles and {cells} cells compared")
sys.exit(bool(faults))
