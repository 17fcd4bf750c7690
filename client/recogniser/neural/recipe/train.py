"""Trains the network: `train.py --spoken FOLDER --held-out FOLDER --out FOLDER --seconds N`.

Run again with the same folders it goes on where it was. `best.pt` is the averaged network that did best on
the held-out voices beside a fan; `state.pt` is everything needed to go on.
"""

import argparse
import copy
import math
import os
import random
import time
from contextlib import nullcontext

import numpy as np
import torch
from torch.nn import functional as F

from augment import Augment, mask
from data import Spoken, batches, waveforms
from model import CONTEXT, DELAY, LEAD, MELS, MELS_TRUNK, Levelling, Listener, Network, decibels
from phones import NUMBER
from rivals import Rivals
from score import phone_errors

WARM_UP = 300  # steps
TRUNK_RATE = 0.12  # of the rest's: the trunk knows real speech, and should go on knowing it
SMOOTHING = 0.012
RIVALS, RIVALS_FROM, RIVALS_WEIGHT = 3, 0.5, 0.15
SAVE_EVERY = 45


def options():
    parser = argparse.ArgumentParser()
    parser.add_argument("--spoken", required=True)
    parser.add_argument("--held-out", required=True)
    parser.add_argument("--out", required=True)
    parser.add_argument("--seconds", type=float, required=True)
    parser.add_argument("--steps", type=int, default=10**9)
    parser.add_argument("--batch", type=int, default=96)
    parser.add_argument("--peak", type=float, default=2e-3, help="the highest learning rate")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--start", help="a checkpoint to start from")
    parser.add_argument("--leave-out", nargs="*", default=[], help="voices not to train on")
    parser.add_argument("--at-least", type=int, default=2000, help="utterances to wait for")
    parser.add_argument("--hours", type=float, default=80, help="of speech that fit the device's memory")
    return parser.parse_args()


class Trainer:
    def __init__(self, chosen):
        self.chosen = chosen
        self.device = "cuda" if torch.cuda.is_available() else "cpu"
        for seed in (torch.manual_seed, np.random.seed, random.seed):
            seed(chosen.seed)
        torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
        self.network = Network()
        if chosen.start:
            loaded = torch.load(chosen.start, map_location="cpu")["network"]
            self.network.load_state_dict({name: value.float() for name, value in loaded.items()})
        self.network.to(self.device)
        self.average = copy.deepcopy(self.network).eval()
        self.levelling = Levelling()
        self.augment = Augment(Listener(self.average).spectrum.to(self.device), self.device)
        self.optimiser = self._optimiser()
        self.step, self.elapsed, self.best, self.epoch = 0, 0.0, math.inf, 0
        self.spoken = Spoken(chosen.spoken, self.device, chosen.hours, chosen.leave_out)
        self.held_out = Spoken(chosen.held_out, self.device, 2)
        self.rivals = None
        os.makedirs(chosen.out, exist_ok=True)
        self._resume()

    def _optimiser(self):
        trunk, rest = [], []
        for name, parameter in self.network.named_parameters():
            (trunk if name.startswith("trunk.") else rest).append(parameter)
        groups = [dict(params=rest, share=1.0), dict(params=trunk, share=TRUNK_RATE)]
        return torch.optim.AdamW(groups, lr=self.chosen.peak, weight_decay=0.02, betas=(0.9, 0.98))

    def _resume(self):
        path = f"{self.chosen.out}/state.pt"
        if not os.path.exists(path):
            return
        state = torch.load(path, map_location=self.device)
        self.network.load_state_dict(state["network"])
        self.average.load_state_dict(state["average"])
        self.optimiser.load_state_dict(state["optimiser"])
        self.step, self.elapsed, self.best = state["step"], state["elapsed"], state["best"]

    def save(self):
        state = dict(network=self.network.state_dict(), average=self.average.state_dict())
        state.update(optimiser=self.optimiser.state_dict(), step=self.step, elapsed=self.elapsed, best=self.best)
        _write(state, f"{self.chosen.out}/state.pt")

    def run(self):
        while self.spoken.grow() < self.chosen.at_least:
            time.sleep(2)
        self.held_out.grow()
        print("utterances", len(self.spoken.items), "held out", len(self.held_out.items), flush=True)
        begun, before, saved = time.time(), self.elapsed, time.time()
        waiting, running = [], 0.0
        while self.elapsed < self.chosen.seconds and self.step < self.chosen.steps:
            if not waiting:
                waiting = self._epoch()
            loss = self.train_on(waiting.pop())
            running = loss if running == 0 else 0.98 * running + 0.02 * loss
            self.step += 1
            self.elapsed = before + time.time() - begun
            if time.time() - saved > SAVE_EVERY or self.step in (5, 50):
                self.check(running)
                saved = time.time()
        self.check(running)

    def _epoch(self):
        """Everything spoken by now, in a new order; few at first, so that what comes later is soon seen."""
        self.epoch += 1
        self.spoken.grow()
        items = self.spoken.items + self.spoken.spliced(1 / 7)
        return batches(items, self.chosen.batch)[: max(1, 40_000 // self.chosen.batch)]

    @torch.no_grad()
    def _frames(self, items):
        """A batch as levelled frames with the context that the network looks into."""
        speech, ends = waveforms(self.spoken.sound, items)
        decibel = decibels(self.augment(speech, ends))
        batch = len(items)
        silence = torch.zeros(batch, DELAY, MELS, device=self.device)
        loudest = decibel[..., :MELS_TRUNK].amax((1, 2))[:, None]
        # Half of them begin with a level that an earlier utterance, or a bang, has left behind.
        left = loudest + torch.rand(batch, 1, device=self.device) * 16 - 6
        level = left * (torch.rand(batch, 1, device=self.device) < 0.5)
        decibel = torch.cat([decibel, silence], 1)
        levelled, _, _ = self.levelling(decibel, silence[:, :LEAD], level)
        before = torch.zeros(batch, CONTEXT, MELS, device=self.device)
        return torch.cat([before, mask(levelled)], 1)

    def train_on(self, items):
        frames = self._frames(items)
        batch = len(items)
        trunk_mask = (torch.rand(batch, 1, 768, device=self.device) > 0.12).float()
        progress = self.elapsed / self.chosen.seconds
        for group in self.optimiser.param_groups:
            warm = min(1, (self.step + 1) / WARM_UP)
            group["lr"] = group["share"] * (self.chosen.peak * warm * (0.5 + 0.5 * math.cos(math.pi * progress)) + 1e-6)
        self.network.train()
        precision = torch.autocast("cuda", dtype=torch.bfloat16) if self.device == "cuda" else nullcontext()
        with precision:
            memory = self.network.fresh_memory(batch, self.device)
            scores, middle, _ = self.network(frames, memory, trunk_mask)
        final = torch.log_softmax(scores[:, DELAY // 2 :].float(), 2)
        labels = [item["labels"] for item in items]
        costs = self._costs(final, labels)
        lengths = torch.tensor([len(label) for label in labels], device=self.device)
        early = self._costs(torch.log_softmax(middle[:, DELAY // 2 :].float(), 2), labels)
        loss = (costs / lengths).mean() + 0.3 * (early / lengths).mean() - SMOOTHING * final.mean()
        if progress > RIVALS_FROM:
            loss = loss + RIVALS_WEIGHT * self._against_rivals(final, costs, items)
        self.optimiser.zero_grad(set_to_none=True)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(self.network.parameters(), 1.0)
        self.optimiser.step()
        if self.step % 4 == 0:
            self._average()
        return loss.item() if self.step % 10 == 0 or self.step < 50 else loss.detach()

    def _costs(self, log_probabilities, labels):
        """What each row of labels costs, in nats."""
        frames = log_probabilities.transpose(0, 1)
        flat = torch.tensor([label for row in labels for label in row], device=self.device)
        heard = torch.full((len(labels),), len(frames), dtype=torch.long)
        said = torch.tensor([len(row) for row in labels])
        return F.ctc_loss(frames, flat, heard, said, reduction="none", zero_infinity=True)

    def _against_rivals(self, final, costs, items):
        """How far what was said is from being likelier than sentences it may be mistaken for.

        A sampled stand-in for maximum mutual information: the posterior of what was said among a few rivals.
        """
        if self.rivals is None:
            self.rivals = Rivals(item["words"] for item in self.spoken.items if item["words"])
        rows, labels = [], []
        for row, item in enumerate(items):
            for _ in range(RIVALS if item["words"] else 0):
                rival = self.rivals.of(item["words"], random)
                if rival is not None and len(rival) < final.shape[1] // 2:
                    rows.append(row)
                    labels.append([NUMBER[phone] for phone in rival])
        if not rows:
            return 0.0
        where = torch.tensor(rows, device=self.device)
        rival_costs = self._costs(final[where], labels)
        # An impossible rival costs nothing by CTC's rule for infinities: it is no rival.
        likelier = torch.where(rival_costs > 0, (costs[where] - rival_costs).clamp(-20, 20), -20.0)
        total = torch.zeros(len(items), device=self.device).index_add(0, where, likelier.exp())
        return torch.log1p(total).mean()

    @torch.no_grad()
    def _average(self):
        kept = min(0.998, (self.step + 1) / (self.step + 40))
        mine, new = list(self.average.parameters()), list(self.network.parameters())
        torch._foreach_mul_(mine, kept)
        torch._foreach_add_(mine, new, alpha=1 - kept)

    def check(self, running):
        listener = Listener(self.average).to(self.device).eval()
        errors = {decibel: phone_errors(listener, self.held_out, decibel) for decibel in (40, 10)}
        summed = sum(sum(row.values()) / max(1, len(row)) for row in errors.values()) / len(errors)
        if summed < self.best:
            self.best = summed
            halves = {name: value.half() for name, value in self.average.state_dict().items()}
            _write(dict(network=halves, step=self.step, errors=errors), f"{self.chosen.out}/best.pt")
        self.save()
        shown = {f"{level} dB": {voice: round(value, 3) for voice, value in row.items()} for level, row in errors.items()}
        print(
            f"step {self.step} pass {self.epoch} at {self.elapsed:.0f} s of {len(self.spoken.items)}:"
            f" loss {float(running):.3f} held out {summed:.4f} best {self.best:.4f} {shown}",
            flush=True,
        )


def _write(state, path):
    torch.save(state, f"{path}.new")
    os.replace(f"{path}.new", path)


if __name__ == "__main__":
    Trainer(options()).run()
