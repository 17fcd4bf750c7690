"""Has the sentences spoken: `synthesise.py SENTENCES FOLDER [--held-out] [--count N] [--workers N]`.

Each worker appends to `part-K.i16` (samples at 16 kHz) and `part-K.jsonl` (where each utterance lies and
what is said in it). Run again after an interruption, it goes on where it was; training may read meanwhile.
"""

import argparse
import gzip
import json
import multiprocessing
import os

import numpy as np

from voices import HELD_OUT, TRAINED, Voices

LOUDEST = 16000


def read_sentences(path):
    with gzip.open(path, "rt") as lines:
        return [json.loads(line) for line in lines]


def voice_for(index, in_turn, random):
    """Held-out voices take turns, so that each says as much; trained ones come by their weights."""
    if in_turn:
        return in_turn[index % len(in_turn)]
    voices = list(TRAINED)
    weights = np.array([TRAINED[voice] for voice in voices], float)
    return voices[random.choice(len(voices), p=weights / weights.sum())]


def finished(folder, worker):
    """How many utterances are whole, and the bytes of sound they take; a torn last line is cut off."""
    index, sound = f"{folder}/part-{worker}.jsonl", f"{folder}/part-{worker}.i16"
    if not os.path.exists(index):
        return -1, 0
    with open(index) as lines:
        whole = [line for line in lines if line.endswith("\n")]
    with open(index, "w") as lines:
        lines.writelines(whole)
    if not whole:
        return -1, 0
    last = json.loads(whole[-1])
    size = 2 * (last["at"] + last["count"])
    os.truncate(sound, size)
    return last["sentence"], size


def work(worker, workers, sentences, folder, in_turn):
    done, size = finished(folder, worker)
    voices, at = Voices(), size // 2
    with open(f"{folder}/part-{worker}.i16", "ab") as sound, open(f"{folder}/part-{worker}.jsonl", "a") as index:
        for number in range(worker, len(sentences), workers):
            if number <= done:
                continue
            random = np.random.default_rng([number, len(in_turn)])
            # Turns are taken within a worker's own row of sentences.
            engine, voice = voice_for(number // workers if in_turn else number, in_turn, random)
            said = voices.say(engine, voice, sentences[number], random)
            if said is None:
                continue
            samples, phones = said
            samples = level(samples)
            row = dict(sentence=number, at=at, count=len(samples), engine=engine, voice=voice, phones=phones)
            row.update(kind=sentences[number]["kind"], words=sentences[number]["phones"])
            sound.write(samples.tobytes())
            sound.flush()
            index.write(json.dumps(row) + "\n")
            index.flush()
            at += len(samples)


def level(samples):
    peak = np.abs(samples.astype(np.int32)).max()
    return (samples * (LOUDEST / max(1, peak))).astype(np.int16)


def main():
    options = argparse.ArgumentParser()
    options.add_argument("sentences")
    options.add_argument("folder")
    options.add_argument("--held-out", action="store_true", help="by the voices that are never trained on")
    options.add_argument("--voices", nargs="*", help="by these in turn: flite:awb …")
    options.add_argument("--count", type=int, default=10**9)
    options.add_argument("--workers", type=int, default=os.cpu_count())
    chosen = options.parse_args()
    os.makedirs(chosen.folder, exist_ok=True)
    sentences = read_sentences(chosen.sentences)[: chosen.count]
    named = [tuple(voice.split(":")) for voice in chosen.voices or []]
    in_turn = named or (HELD_OUT if chosen.held_out else [])
    tasks = [
        multiprocessing.Process(
            target=work, args=(worker, chosen.workers, sentences, chosen.folder, in_turn)
        )
        for worker in range(chosen.workers)
    ]
    for task in tasks:
        task.start()
    for task in tasks:
        task.join()


if __name__ == "__main__":
    main()
