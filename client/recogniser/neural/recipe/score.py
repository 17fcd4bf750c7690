"""Scores a checkpoint on held-out voices beside a fan: `score.py CHECKPOINT HELD_OUT [--out FILE]`.

For each voice and noise: the share of phones wrong (the likeliest phone of each frame, no grammar), and how
often what was said beats every rival: other sentences, and itself with a word swapped, left out or put in.
For digit strings, open-loop Viterbi over the eleven digit words as well.
"""

import argparse
import json
import random
from collections import defaultdict

import torch
from torch.nn import functional as F

from data import Spoken, waveforms
from model import DELAY, Listener, Network
from noise import beside, fan_noise
from phones import NUMBER
from rivals import Rivals, distance

CLEAN = 60  # dB
LEVELS = (CLEAN, 20, 15, 10, 5)
RIVALS = 100
# Nats for each phone of a word: CTC's scores favour short words.
PHONE_BONUS = 2.0
DIGITS = [
    phones.split()
    for phones in (
        "Z IH R OW;OW;W AH N;T UW;TH R IY;F AO R;F AY V;S IH K S;S EH V AH N;EY T;N AY N".split(";")
    )
]


@torch.no_grad()
def heard(listener, spoken, items, decibels, batch=32):
    """(item, log probabilities) for each, with a fan that many dB below, the same fan at every call."""
    device = spoken.sound.device
    order = sorted(items, key=lambda item: item["pieces"][0][1])
    with torch.random.fork_rng(devices=[0] if device.type == "cuda" else []):
        torch.manual_seed(5)
        for start in range(0, len(order), batch):
            some = order[start : start + batch]
            speech, _ = waveforms(spoken.sound, some, plain=True)
            sound = beside(speech, fan_noise(*speech.shape, device), decibels)
            sound = sound / sound.abs().amax(1, keepdim=True) * 0.4
            for item, log_probabilities in zip(some, listener.hear(sound).float()):
                yield item, log_probabilities


def greedy(log_probabilities):
    best = log_probabilities.argmax(1).tolist()
    return [label for label, before in zip(best, [0] + best) if label and label != before]


def phone_errors(listener, spoken, decibels):
    """voice: share of phones wrong."""
    wrong, said = defaultdict(int), defaultdict(int)
    for item, log_probabilities in heard(listener, spoken, spoken.items, decibels):
        wrong[item["voice"]] += distance(greedy(log_probabilities), item["labels"])
        said[item["voice"]] += len(item["labels"])
    return {voice: wrong[voice] / said[voice] for voice in sorted(said)}


def costs(log_probabilities, candidates):
    frames = log_probabilities[:, None].expand(-1, len(candidates), -1)
    flat = torch.tensor([NUMBER[phone] for row in candidates for phone in row], device=frames.device)
    said = torch.tensor([len(row) for row in candidates])
    full = torch.full((len(candidates),), len(frames), dtype=torch.long)
    return F.ctc_loss(frames, flat, full, said, reduction="none") - PHONE_BONUS * said.to(frames.device)


def digits_of(log_probabilities):
    """Viterbi over digit words in any number: the row of indices into DIGITS."""
    frames = log_probabilities.tolist()
    words = [[NUMBER[phone] for phone in word] for word in DIGITS]
    # Per word: scores in each phone and in the blank after it; histories beside them.
    states = [[(-1e30, ())] * (2 * len(word)) for word in words]
    between = (0.0, ())  # before any word, or in the blank after the last
    for frame in frames:
        after = []
        for index, word in enumerate(words):
            row, now = states[index], []
            enter = max([between, *(_end(*ended, word[0]) for ended in zip(states, words))])
            for at, label in enumerate(word):
                stay = row[2 * at]
                if at == 0:
                    come = (enter[0], enter[1] + (index,))
                else:
                    come = max(row[2 * at - 1], row[2 * at - 2] if word[at - 1] != label else (-1e30, ()))
                come = (come[0] + PHONE_BONUS, come[1])
                best = max(stay, come)
                now.append((best[0] + frame[label], best[1]))
                blank = max(row[2 * at], row[2 * at + 1])
                now.append((blank[0] + frame[0], blank[1]))
            after.append(now)
        between = (between[0] + frame[0], between[1]) if between[0] > -1e29 else between
        states = after
    return max([between, *(max(row[-2], row[-1]) for row in states)])[1]


def _end(row, word, next_label):
    """The best way out of a word; the same sound twice is only told apart by a blank between."""
    return row[-1] if word[-1] == next_label else max(row[-2], row[-1])


def sentence_right(item, log_probabilities, rivals, others, chooser):
    made = [rivals.of(item["words"], chooser) for _ in range(RIVALS)]
    said = [phone for word in item["words"] for phone in word]
    most = len(log_probabilities) // 2
    candidates = [said] + [row for row in made if row and len(row) < most]
    candidates += [row for row in chooser.sample(others, min(RIVALS, len(others))) if row != said and len(row) < most]
    return int(costs(log_probabilities, candidates).argmin()) == 0


def report(listener, spoken, level):
    """voice: phone errors, sentences right among rivals, digit strings right."""
    chooser = random.Random(3)
    known = [item for item in spoken.items if item["words"]]
    rivals = Rivals((item["words"] for item in known), at_least=1)
    others = [[phone for word in item["words"] for phone in word] for item in known]
    counts = defaultdict(lambda: defaultdict(int))
    for item, log_probabilities in heard(listener, spoken, spoken.items, level):
        count = counts[item["voice"]]
        count["wrong"] += distance(greedy(log_probabilities), item["labels"])
        count["phones"] += len(item["labels"])
        if item["words"] and item["kind"] in ("sentence", "number", "digits"):
            count["sentences"] += 1
            count["right"] += sentence_right(item, log_probabilities, rivals, others, chooser)
        if item["kind"] == "digits" and item["words"] and all(word in DIGITS for word in item["words"]):
            count["strings"] += 1
            found = digits_of(log_probabilities.cpu())
            count["strings right"] += [DIGITS[index] for index in found] == item["words"]
    return {voice: dict(count) for voice, count in sorted(counts.items())}


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("checkpoint")
    parser.add_argument("held_out")
    parser.add_argument("--out")
    parser.add_argument("--levels", type=int, nargs="*", default=LEVELS)
    chosen = parser.parse_args()
    device = "cuda" if torch.cuda.is_available() else "cpu"
    network = Network()
    loaded = torch.load(chosen.checkpoint, map_location="cpu")["network"]
    network.load_state_dict({name: value.float() for name, value in loaded.items()})
    listener = Listener(network).to(device).eval()
    spoken = Spoken(chosen.held_out, device, 2)
    spoken.grow()
    table = {}
    for level in chosen.levels:
        table[level] = report(listener, spoken, level)
        print(level, "dB", json.dumps(table[level]), flush=True)
    if chosen.out:
        with open(chosen.out, "w") as file:
            json.dump(table, file, indent=1)


if __name__ == "__main__":
    main()
