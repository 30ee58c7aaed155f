"""Reads a body in space with trimesh, and says what it holds.

In: the glTF, the STL. Out: one line, or the faults.
"""

import sys

import trimesh

glb = trimesh.load(sys.argv[1])
stl = trimesh.load(sys.argv[2])
faults = []
parts = [name for name in glb.geometry]
if len(stl.faces) != sum(len(part.faces) for part in glb.geometry.values()):
    faults.append("other triangles in the STL")
if not stl.is_watertight:
    faults.append("the STL is not watertight")
if not stl.is_winding_consistent:
    faults.append("triangles wind in two ways")
if not 1.3e6 < stl.volume < 4.5e6:
    faults.append(f"{stl.volume} cubic mm")
whole = trimesh.util.concatenate(list(glb.dump()))
whole.merge_vertices(merge_norm=True)
if not whole.is_watertight:
    faults.append("the parts of the glTF do not close")
if abs(whole.volume * 1e9 / stl.volume - 1.0) > 1e-3:
    faults.append("two volumes")
print("\n".join(faults) if faults else f"{len(parts)} parts, watertight, one volume, no fault")
