"""The spoken sentences, kept on the training device, and batches of them as waveforms."""

import json
import os
import random

import numpy as np
import torch

from phones import NUMBER

GAPS = 4  # an utterance is up to four pieces with a gap after each


class Spoken:
    """All that the synthesising workers have finished; `grow` takes in what they did since."""

    def __init__(self, folder, device, hours=60, leave_out=()):
        self.folder, self.leave_out = folder, set(leave_out)
        self.sound = torch.zeros(int(hours * 3600 * 16000), dtype=torch.int16, device=device)
        self.used, self.items, self.lines_read, self.single = 0, [], {}, {}

    def grow(self):
        for name in sorted(os.listdir(self.folder)):
            if name.endswith(".jsonl"):
                self._read(name[: -len(".jsonl")])
        return len(self.items)

    def _read(self, part):
        with open(f"{self.folder}/{part}.jsonl") as lines:
            whole = [line for line in lines if line.endswith("\n")]
        rows = [json.loads(line) for line in whole[self.lines_read.get(part, 0) :]]
        if not rows:
            return
        first, last = rows[0]["at"], rows[-1]["at"] + rows[-1]["count"]
        if self.used + last - first > len(self.sound):
            return
        samples = np.fromfile(f"{self.folder}/{part}.i16", np.int16, last - first, offset=2 * first)
        self.sound[self.used : self.used + len(samples)] = torch.from_numpy(samples).to(self.sound.device)
        for row in rows:
            if row["voice"] not in self.leave_out:
                self._add(row, self.used + row["at"] - first)
        self.used += len(samples)
        self.lines_read[part] = len(whole)

    def _add(self, row, at):
        said = [word.split() for word in row["words"]]
        flat = [phone for word in said for phone in word]
        item = dict(
            pieces=[(at, row["count"])],
            labels=[NUMBER[phone] for phone in row["phones"]],
            # Rivals are made of words, which is only right where the label is made of the same words.
            words=said if flat == row["phones"] else None,
            voice=row["voice"],
            kind=row["kind"],
        )
        self.items.append(item)
        if len(said) == 1 and row["kind"] in ("word", "digits"):
            self.single.setdefault(row["voice"], []).append(item)

    def spliced(self, share):
        """Strings of single words of one voice, as a person says them who stops between words."""
        voices = [items for items in self.single.values() if len(items) > 5]
        made = []
        for _ in range(int(len(self.items) * share) if voices else 0):
            parts = random.choices(random.choice(voices), k=random.randint(2, GAPS))
            known = all(part["words"] for part in parts)
            made.append(
                dict(
                    pieces=[part["pieces"][0] for part in parts],
                    labels=[label for part in parts for label in part["labels"]],
                    words=[word for part in parts for word in part["words"]] if known else None,
                    voice=parts[0]["voice"],
                    kind="digits",
                )
            )
        return made


def batches(items, size):
    """Batches of like length in random order; a last one that is too small is left out."""
    order = np.random.permutation(len(items))
    length = np.array([sum(count for _, count in item["pieces"]) for item in items])
    made = []
    for start in range(0, len(order), size * 24):
        some = order[start : start + size * 24]
        some = some[np.argsort(length[some] + np.random.rand(len(some)) * 4000)]
        made += [some[at : at + size] for at in range(0, len(some) - size + 1, size)]
    random.shuffle(made)
    return [[items[index] for index in batch] for batch in made]


def waveforms(sound, items, plain=False):
    """(B, N) samples in -1..1 with silence around and between, at another pace and pitch unless plain.

    Gives the frame where each utterance ends as well.
    """
    device, count = sound.device, len(items)
    pace = np.exp(np.random.uniform(np.log(0.83), np.log(1.22), count))
    pace[np.random.rand(count) < 0.2] = 1
    if plain:
        pace[:] = 1
    starts, begins = np.zeros((count, GAPS)), np.zeros((count, GAPS), np.int64)
    lengths, ends = np.zeros((count, GAPS), np.int64), np.zeros(count)
    for row, item in enumerate(items):
        time = (0.3 if plain else random.uniform(0.04, 0.45)) * 16000
        for column, (at, length) in enumerate(item["pieces"]):
            begins[row, column], lengths[row, column], starts[row, column] = at, length, time
            time += length / pace[row] + (0 if plain else random.uniform(0.02, 0.28) * 16000)
        ends[row] = time
    total = int((ends.max() + (0.3 if plain else random.uniform(0.05, 0.4)) * 16000) // 640 + 1) * 640
    made = _resample(sound, total, [torch.tensor(x, device=device) for x in (starts, begins, lengths, pace)])
    return made, torch.tensor(ends / 160 + 3, device=device, dtype=torch.float32)[:, None]


def _resample(sound, total, places):
    starts, begins, lengths, pace = places
    time = torch.arange(total, device=sound.device).float()[None]
    made = torch.zeros(len(pace), total, device=sound.device)
    for column in range(GAPS):
        place = (time - starts[:, column : column + 1].float()) * pace[:, None].float()
        length = lengths[:, column : column + 1]
        inside = (place >= 0) & (place < length.float() - 1)
        place = place.clamp(min=0)
        index = torch.minimum(place.long(), (length - 2).clamp_min(0))
        share = place - index
        at = begins[:, column : column + 1] + index
        value = sound[at].float() * (1 - share) + sound[at + 1].float() * share
        made = made + torch.where(inside, value, torch.zeros_like(value))
    return made / 32768.0
