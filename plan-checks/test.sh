#!/usr/bin/env bash
# Builds the plan of every example and holds the pages against the Nu HTML checker and, where there is a Chromium, against
# axe-core; the PDFs against Poppler's readers, where those are; the assemblies against the glTF validator of the Khronos
# Group; the outlines against ezdxf, where there is a Python that can have it. Wants Node with npm, and a build of Treen.
set -euo pipefail
cd "$(dirname "$0")"
root=$(cd .. && pwd)
bash ../editor-support/node-modules.sh .

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
pages=()
plans=()
assemblies=()
for project in "$root"/examples/*/; do
    name=$(basename "$project")
    [ -f "$project/$name.treen" ] || continue
    "${TREEN_LAUNCHER:-$root/treen}" build "$project$name.treen" -o "$work/$name" >/dev/null 2>"$work/notes" ||
        { cat "$work/notes" >&2; exit 1; }
    pages+=("$work/$name/plan.html" "$work/$name/labels.html")
    plans+=("$work/$name")
    for templates in "$work/$name"/templates-*.html; do
        [ ! -f "$templates" ] || pages+=("$templates")
    done
    [ ! -f "$work/$name/assembly.gltf" ] || assemblies+=("$work/$name/assembly.gltf")
done

java=$(command -v java || true)
[ -n "$java" ] || java=$(compgen -G '/usr/lib/jvm/*25*/bin/java' | head -n 1)
"$java" -jar node_modules/vnu-jar/build/dist/vnu.jar --Werror "${pages[@]}"
echo "Nu HTML checker: ${#pages[@]} pages, no errors, no warnings"

chromium=$(command -v chromium || command -v chromium-browser || command -v google-chrome || true)
if [ -n "$chromium" ]; then
    node axe.mjs "$chromium" "${pages[@]}"
else
    echo "no Chromium here: the pages were NOT held against axe-core"
fi

if command -v pdftotext >/dev/null && command -v pdftoppm >/dev/null; then
    node pdf.mjs "${plans[@]}"
else
    echo "no Poppler here: the PDFs were NOT held against it"
fi

node gltf.mjs "${assemblies[@]}"

python=$(command -v python3 || true)
if [ -n "$python" ] && ! "$python" -c 'import ezdxf' 2>/dev/null; then
    { [ -x .venv/bin/python ] || "$python" -m venv .venv; } &&
        .venv/bin/python -m pip install --quiet --disable-pip-version-check -r requirements.txt &&
        python=.venv/bin/python || python=
fi
if [ -n "$python" ]; then
    "$python" dxf.py "${plans[@]}"
else
    echo "no Python with ezdxf here: the outlines were NOT read back"
fi
