"""Reads a QTI 2.1 package with qti_convert (the package citolab-qti-convert) and lxml, and says what it holds.

In: the zip. Out: one line, `N items, N images, no fault`, or the faults.
"""

import sys
import zipfile

from lxml import etree
from qti_convert import fix_package_references, upgrade_package

ITEM = "{http://www.imsglobal.org/xsd/imsqti_v2p1}"
faults = []
source = sys.argv[1]
with zipfile.ZipFile(source) as package:
    bad = package.testzip()
    if bad:
        faults.append(f"damaged: {bad}")
    names = set(package.namelist())
    manifest = etree.fromstring(package.read("imsmanifest.xml"))
    listed = {node.get("href") for node in manifest.iter("{*}file")}
    faults += [f"not in the package: {name}" for name in sorted(listed - names)]
    faults += [f"not in the manifest: {name}" for name in sorted(names - listed - {"imsmanifest.xml"})]
    items = [name for name in names if name.startswith("case-")]
    for name in items:
        item = etree.fromstring(package.read(name))
        right = item.findtext(f"{ITEM}responseDeclaration/{ITEM}correctResponse/{ITEM}value")
        choices = [node.get("identifier") for node in item.iter(f"{ITEM}simpleChoice")]
        if choices.count(right) != 1 or len(set(choices)) != len(choices):
            faults.append(f"{name}: {right} among {choices}")
        images = [node.get("src") for node in item.iter(f"{ITEM}img")]
        faults += [f"{name}: no {image}" for image in images if image not in names]
        faults += [f"{name}: an image without words" for node in item.iter(f"{ITEM}img") if not node.get("alt")]
references = fix_package_references(source)
faults += [f"reference: {each}" for each in [*references.fixed, *references.unresolved]]
raised = upgrade_package(source)
for name in items:
    item = etree.fromstring(raised.files[name] if isinstance(raised.files[name], bytes) else raised.files[name].encode())
    if not item.tag.endswith("}qti-assessment-item"):
        faults.append(f"{name}: read as {item.tag}")
    for part in ["qti-choice-interaction", "qti-extended-text-interaction", "qti-modal-feedback", "qti-response-processing"]:
        if item.find(f".//{{*}}{part}") is None:
            faults.append(f"{name}: {part} was not read")
pictures = [name for name in names if name.endswith(".png")]
print("\n".join(faults) if faults else f"{len(items)} items, {len(pictures)} images, no fault")
