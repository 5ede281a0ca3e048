# Reads DXF files with ezdxf: its audit finds nothing, each view is as large as the part that plan.json tells of, and what
# is seen of the face side closes round the part.
# python3 dxf.py FOLDER...
import json
import sys
from pathlib import Path

import ezdxf
from ezdxf import bbox

MOST = 6e-4  # plan.json tells thousandths
ACROSS = {
    "FACE_SIDE": ("length", "width"), "FAR_SIDE": ("length", "width"),
    "LEFT_END": ("thickness", "width"), "RIGHT_END": ("thickness", "width"),
    "FAR_EDGE": ("length", "thickness"), "FACE_EDGE": ("length", "thickness"),
}

faults = 0
files = 0


def fault(file, words):
    global faults
    faults += 1
    print(f"{file}: {words}", file=sys.stderr)


for folder in map(Path, sys.argv[1:]):
    plan = json.loads((folder / "plan.json").read_text("utf-8"))
    parts = {part["name"]: part["finished"] for part in plan["parts"]}
    for file in sorted(folder.glob("*.dxf")):
        files += 1
        drawing = ezdxf.readfile(file)
        audit = drawing.audit()
        for error in audit.errors + audit.fixes:
            fault(file, error.message)
        name = file.read_text("ascii").splitlines()[1].removeprefix("Treen: ").split(",")[0]
        size = parts.get(name)
        if size is None:
            fault(file, f"no part {name} in plan.json")
            continue
        layers = {entity.dxf.layer for entity in drawing.modelspace()}
        views = {layer.removesuffix("_HIDDEN") for layer in layers}
        if "FACE_SIDE" not in views:
            fault(file, "no face side")
        for view in views:
            box = bbox.extents([e for e in drawing.modelspace() if e.dxf.layer.removesuffix("_HIDDEN") == view])
            for extent, measure in zip((box.size.x, box.size.y), ACROSS[view]):
                if abs(extent - size[measure]) > MOST:
                    fault(file, f"{view}: {extent} where the {measure} is {size[measure]}")

print(f"ezdxf: {files} files, {faults} faults")
sys.exit(faults != 0)
