#!/usr/bin/env bash
# Trains the acoustic model anew and writes it where the product loads it: retrain.sh WORK_FOLDER [SECONDS].
# Stopped, it goes on where it was when run again with the same folder.
#
# FRESH=1 starts from nothing instead of from the kept checkpoint. LEAVE_OUT="awb" trains without a voice.
# A try on a small machine: SENTENCES=80 HELD_OUT=8 AT_LEAST=40 BATCH=4 HOURS=1 retrain.sh WORK_FOLDER 30
set -euo pipefail
recipe=$(cd "$(dirname "$0")" && pwd)
project=$(cd "$recipe/../../../.." && pwd)
work=$(realpath -m "$1")
seconds=${2:-1300}
python=${PYTHON:-python3}
mkdir -p "$work"

write_sentences() {
  [ -e "$work/$1.jsonl.gz" ] && return
  (cd "$project" && npx tsx tests/recogniser/neural/write-sentences.ts "$work/$1.jsonl.gz" "$2" "$3")
}
synthesise() {
  local libraries=${VOICES_ROOT:+$VOICES_ROOT/usr/lib/x86_64-linux-gnu:$VOICES_ROOT/extra}
  LD_LIBRARY_PATH=$libraries OMP_NUM_THREADS=1 "$python" "$recipe/synthesise.py" "$@"
}

write_sentences sentences "${SENTENCES:-130000}" 20261125
write_sentences held-out "${HELD_OUT:-400}" 4099
synthesise "$work/held-out.jsonl.gz" "$work/held-out" --held-out --workers 8

# Training begins with the first thousands and takes in what is spoken meanwhile.
synthesise "$work/sentences.jsonl.gz" "$work/spoken" &
speaking=$!
trap 'kill $speaking 2>/dev/null || true' EXIT
start=(--start "$recipe/checkpoint.pt" --peak 1e-3)
[ -n "${FRESH:-}" ] && start=(--peak 2e-3)
"$python" "$recipe/train.py" --spoken "$work/spoken" --held-out "$work/held-out" --out "$work/trained" \
  --seconds "$seconds" --at-least "${AT_LEAST:-2000}" --batch "${BATCH:-96}" --hours "${HOURS:-80}" \
  --leave-out ${LEAVE_OUT:-} "${start[@]}"

"$python" "$recipe/score.py" "$work/trained/best.pt" "$work/held-out" --out "$work/scores.json"
"$python" "$recipe/export.py" "$work/trained/best.pt" "${MODEL:-$recipe/../model}" \
  --reference "${REFERENCE:-$project/tests/recogniser/neural/reference}" --held-out "$work/held-out"
echo "Trained. If scores.json is better than the model card says, keep the model, put its scores in the card,"
echo "and copy $work/trained/best.pt over checkpoint.pt; else take the model back with git."
