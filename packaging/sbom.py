"""What the program is made of. In: a target triple; the manifest and its lock. Out: a CycloneDX 1.6 document on standard output:
every crate that is linked into the program for that target, with version, licence, checksum and what it asks for in turn.

With --check FILE instead of a triple: FILE is held to the schema of CycloneDX (needs cyclonedx-python-lib[json-validation])."""

import json
import pathlib
import subprocess
import sys
import tomllib

ROOT = pathlib.Path(__file__).resolve().parent.parent


def check(name):
    from cyclonedx.schema import SchemaVersion
    from cyclonedx.validation.json import JsonStrictValidator

    fault = JsonStrictValidator(SchemaVersion.V1_6).validate_str(pathlib.Path(name).read_text(encoding="utf-8"))
    if fault:
        sys.exit(f"{name}: {str(fault).splitlines()[0]}")


def checksums():
    lock = tomllib.loads((ROOT / "Cargo.lock").read_text(encoding="utf-8"))
    return {(p["name"], p["version"]): p.get("checksum") for p in lock["package"]}


def built(target):
    """Name and version of every crate that a build for the target makes: the metadata name those of unused features, too."""
    command = ["cargo", "tree", "--locked", "--edges", "normal", "--target", target, "--prefix", "none", "--no-dedupe"]
    tree = subprocess.run(command, cwd=ROOT, check=True, capture_output=True, text=True).stdout
    return {(line.split()[0], line.split()[1].removeprefix("v")) for line in tree.splitlines() if line.strip()}


def linked(metadata, target):
    """The ids of all crates that are linked, from the program on, without what is used for building and testing only; and for
    each the ids it asks for."""
    nodes = {node["id"]: node for node in metadata["resolve"]["nodes"]}
    made = built(target)
    out = {
        p["id"]
        for p in metadata["packages"]
        if any("proc-macro" in t["kind"] for t in p["targets"]) or (p["name"], p["version"]) not in made
    }
    asks, waiting = {}, [metadata["resolve"]["root"]]
    while waiting:
        at = waiting.pop()
        if at in asks:
            continue
        kept = [d["pkg"] for d in nodes[at]["deps"] if any(k["kind"] is None for k in d["dep_kinds"])]
        asks[at] = sorted(set(kept) - out)
        waiting.extend(asks[at])
    return asks


def component(package, sums):
    name, version = package["name"], package["version"]
    made = {
        "type": "library",
        "bom-ref": f"{name}@{version}",
        "name": name,
        "version": version,
        "purl": f"pkg:cargo/{name}@{version}",
        # Some crates still write `/` for OR.
        "licenses": [{"expression": package["license"].replace("/", " OR ").replace("  ", " ")}],
    }
    if sums.get((name, version)):
        made["hashes"] = [{"alg": "SHA-256", "content": sums[name, version]}]
    return made


def main(target):
    command = ["cargo", "metadata", "--locked", "--format-version", "1", "--filter-platform", target]
    metadata = json.loads(subprocess.run(command, cwd=ROOT, check=True, capture_output=True).stdout)
    packages = {package["id"]: package for package in metadata["packages"]}
    asks, sums = linked(metadata, target), checksums()
    ref = {at: f"{packages[at]['name']}@{packages[at]['version']}" for at in asks}
    program = component(packages[metadata["resolve"]["root"]], sums) | {"type": "application"}
    others = [at for at in asks if at != metadata["resolve"]["root"]]
    document = {
        "$schema": "http://cyclonedx.org/schema/bom-1.6.schema.json",
        "bomFormat": "CycloneDX",
        "specVersion": "1.6",
        "version": 1,
        "metadata": {"component": program, "properties": [{"name": "target", "value": target}]},
        "components": sorted((component(packages[at], sums) for at in others), key=lambda c: c["bom-ref"]),
        "dependencies": [
            {"ref": ref[at], "dependsOn": sorted(ref[a] for a in asks[at])} for at in sorted(asks, key=ref.get)
        ],
    }
    json.dump(document, sys.stdout, indent=1)
    print()


if __name__ == "__main__":
    if sys.argv[1] == "--check":
        check(sys.argv[2])
    else:
        main(sys.argv[1])
