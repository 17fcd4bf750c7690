#!/usr/bin/env bash
# Trains the phrasing model anew and writes it where the product loads it: retrain.sh [WORK_FOLDER] [STEPS].
# Stopped, it goes on where it was when run again with the same folder; a changed corpus wants a new folder.
#
# Where there is no Node (many a machine with a graphics card), write the examples before and carry the folder:
#   npx tsx tests/prompts/recipe/write-examples.ts build/phrasing
# SEED=9 trains another one. A try on a small machine:
#   TRAIN="--batch 32 --hidden 64 --layers 2 --judge-every 10" MODEL=build/try-model retrain.sh build/try 40
set -euo pipefail
recipe=$(cd "$(dirname "$0")" && pwd)
project=$(cd "$recipe/../.." && pwd)
work=$(realpath -m "${1:-$project/build/phrasing}")
python=${PYTHON:-python3}
cd "$project"
[ -e "$work/examples.tsv.gz" ] || npx tsx tests/prompts/recipe/write-examples.ts "$work"
"$python" "$recipe/train.py" "$work" "$work/trained" --steps "${2:-4000}" --seed "${SEED:-8}" ${TRAIN:-}
"$python" "$recipe/export.py" "$work/trained" "$work" "${MODEL:-$recipe/../model}"
