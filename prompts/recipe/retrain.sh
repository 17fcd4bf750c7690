#!/usr/bin/env bash
# Trains the phrasing model anew and writes it where the product loads it: retrain.sh [WORK_FOLDER] [SECONDS].
# Stopped, it goes on where it was when run again with the same folder; a changed corpus wants a new folder.
#
# Where there is no Node (many a machine with a graphics card), write the examples before and carry the folder:
#   npx tsx tests/prompts/recipe/write-examples.ts build/phrasing
# SEED=9 trains another one; BATCH=32 retrain.sh build/try 30 tries it all on a small machine.
set -euo pipefail
recipe=$(cd "$(dirname "$0")" && pwd)
project=$(cd "$recipe/../.." && pwd)
work=$(realpath -m "${1:-$project/build/phrasing}")
python=${PYTHON:-python3}
cd "$project"
[ -e "$work/examples.tsv.gz" ] || npx tsx tests/prompts/recipe/write-examples.ts "$work"
"$python" "$recipe/train.py" "$work" "$work/trained" --seconds "${2:-240}" --seed "${SEED:-8}" --batch "${BATCH:-512}"
"$python" "$recipe/export.py" "$work/trained" "$work" "${MODEL:-$recipe/../model}"
