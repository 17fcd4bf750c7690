"""The examples as rows of token ids, all on the device at once: they are a few megabytes."""

import gzip
import json
from collections import defaultdict

import torch

PAD, END, SAY, NOT = "[PAD]", "[END]", "[SAY]", "[NOT]"
# A sentence as the corpus has it counts as much as so many that were put together.
OWN = 3.0
# How often nothing was said before, and how many other openings are kept to choose from.
NOTHING_BEFORE = 0.3
OPENINGS = 8


def read_tokens(folder):
    with open(f"{folder}/lexicon.json") as file:
        return json.load(file)["tokens"]


class Examples:
    def __init__(self, folder, device):
        self.tokens = read_tokens(folder)
        ids = {token: id for id, token in enumerate(self.tokens)}
        self.pad, self.end = ids[PAD], ids[END]
        with gzip.open(f"{folder}/examples.tsv.gz", "rt") as file:
            lines = [line.rstrip("\n").split("\t") for line in file if line.strip()]
        openings = defaultdict(set)
        for _, prompt, sentence in lines:
            openings[prompt].add(ids[sentence.split(" ")[0]])
        count = defaultdict(int)
        for _, prompt, _ in lines:
            count[prompt] += 1
        rows, starts, befores, weights = [], [], [], []
        for origin, prompt, sentence in lines:
            told = [ids[token] for token in prompt.split(" ")] + [ids[NOT], self.end, ids[SAY]]
            said = [ids[token] for token in sentence.split(" ")] + [self.end]
            others = sorted(openings[prompt] - {said[0]})[:OPENINGS] or [self.end]
            rows.append(told + said)
            starts.append(len(told))
            befores.append([others[index % len(others)] for index in range(OPENINGS)])
            weights.append((OWN if origin == "own" else 1.0) / count[prompt] ** 0.5)
        width = max(map(len, rows))
        self.rows = torch.tensor([row + [self.pad] * (width - len(row)) for row in rows], device=device)
        self.starts = torch.tensor(starts, device=device)
        self.befores = torch.tensor(befores, device=device)
        self.weights = torch.tensor(weights, device=device)
        self.device = device

    def split(self, kept_back):
        """Which rows are learnt from, and which are kept back to see when to stop."""
        order = torch.randperm(len(self.rows), generator=torch.Generator().manual_seed(1))
        return order[kept_back:].to(self.device), order[:kept_back].to(self.device)

    def batch(self, chosen):
        """Inputs and targets; only the sentence is to be learnt, and what was said before it is drawn anew."""
        rows = self.rows[chosen].clone()
        starts = self.starts[chosen]
        draw = torch.randint(OPENINGS, (len(chosen), 1), device=self.device)
        before = self.befores[chosen].gather(1, draw)
        none = torch.rand(before.shape, device=self.device) < NOTHING_BEFORE
        rows.scatter_(1, (starts - 2)[:, None], before.masked_fill(none, self.end))
        inputs, targets = rows[:, :-1], rows[:, 1:].clone()
        place = torch.arange(targets.shape[1], device=self.device)[None]
        targets[(place < (starts - 1)[:, None]) | (targets == self.pad)] = -100
        return inputs, targets
