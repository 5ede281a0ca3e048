#!/usr/bin/env bash
# Builds the plan of every example and holds the pages against the Nu HTML checker and, where there is a Chromium, against
# axe-core; the PDFs against Poppler's readers, where those are; the assemblies against the glTF validator of the Khronos
# Group; the outlines against ezdxf, where there is a Python that can have it. Wants Node with npm, and a build of Treen.
# What is left out is said at the end, and with CI=true it is a failure where the tool could have been installed.
set -euo pipefail
cd "$(dirname "$0")"

left_out=()
could_be_had=()

# leave_out WHAT TOOL PACKAGE...: none of the packages is here; are they to be had?
leave_out() {
    local what=$1 tool=$2 package policy
    shift 2
    left_out+=("$what: no $tool here")
    for package in "$@"; do
        policy=$(apt-cache policy "$package" 2>/dev/null || true)
        if grep -q '^ *Candidate: [^( ]' <<<"$policy"; then
            could_be_had+=("$tool (apt-get install $package)")
            return
        fi
    done
}
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
"$java" -Xss4m -jar node_modules/vnu-jar/build/dist/vnu.jar --Werror "${pages[@]}"
echo "Nu HTML checker: ${#pages[@]} pages, no errors, no warnings"

chromium=$(command -v chromium || command -v chromium-browser || command -v google-chrome || true)
if [ -n "$chromium" ]; then
    node axe.mjs "$chromium" "${pages[@]}"
else
    leave_out "the pages were NOT held against axe-core" Chromium chromium chromium-browser
fi

if command -v pdftotext >/dev/null && command -v pdftoppm >/dev/null; then
    node pdf.mjs "${plans[@]}"
else
    leave_out "the PDFs were NOT read back" Poppler poppler-utils
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
    leave_out "the outlines were NOT read back" "Python with ezdxf" python3-venv
fi

if [ ${#left_out[@]} -gt 0 ]; then
    {
        echo
        echo "************************************************************************"
        printf 'LEFT OUT  %s\n' "${left_out[@]}"
        [ ${#could_be_had[@]} -eq 0 ] || printf 'to be had: %s\n' "${could_be_had[@]}"
        echo "************************************************************************"
    } >&2
    if [ "${CI:-}" = true ] && [ ${#could_be_had[@]} -gt 0 ]; then
        echo "CI wants everything that can be had: this run fails" >&2
        exit 1
    fi
fi
