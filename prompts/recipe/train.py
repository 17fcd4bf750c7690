"""Trains the phrasing model: `train.py EXAMPLES_FOLDER OUT_FOLDER --steps 4000 --seed 8`.

Goes on from OUT_FOLDER/checkpoint.pt if it is there. On a machine without a graphics card it runs all the
same, slowly: `--steps 60 --batch 32 --hidden 64 --layers 2` makes a model that is good for trying the rest of
the recipe. The weights that did best on what was kept back are the ones kept in OUT_FOLDER/best.pt.
"""

import argparse
import json
import math
import os
import time

import torch
from torch.nn import functional as F

from data import Examples
from model import Phraser, Size

WARM_UP = 0.03


def rate_at(part, peak):
    """Up over the first steps, then down along half a cosine to a fiftieth."""
    if part < WARM_UP:
        return peak * part / WARM_UP
    return peak * (0.02 + 0.98 * 0.5 * (1 + math.cos(math.pi * min(1, (part - WARM_UP) / (1 - WARM_UP)))))


def loss_of(model, batch):
    inputs, targets = batch
    logits = model(inputs)
    return F.cross_entropy(logits.flatten(0, 1), targets.flatten(), ignore_index=-100)


@torch.no_grad()
def judge(model, examples, kept_back):
    model.eval()
    loss = loss_of(model, examples.batch(kept_back)).item()
    model.train()
    return loss


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("examples")
    parser.add_argument("out")
    parser.add_argument("--steps", type=int, default=4000)
    parser.add_argument("--judge-every", type=int, default=100)
    parser.add_argument("--dropout", type=float, default=0.1)
    parser.add_argument("--seed", type=int, default=8)
    parser.add_argument("--batch", type=int, default=512)
    parser.add_argument("--peak", type=float, default=2e-3)
    parser.add_argument("--hidden", type=int, default=128)
    parser.add_argument("--layers", type=int, default=4)
    given = parser.parse_args()

    torch.manual_seed(given.seed)
    device = "cuda" if torch.cuda.is_available() else "cpu"
    examples = Examples(given.examples, device)
    learnt, kept_back = examples.split(min(1024, len(examples.rows) // 20))
    size = Size(len(examples.tokens), given.hidden, given.hidden * 11 // 4, given.layers)
    model = Phraser(size, given.dropout).to(device)
    optimiser = torch.optim.AdamW(model.parameters(), lr=given.peak, betas=(0.9, 0.98), weight_decay=0.05)
    os.makedirs(given.out, exist_ok=True)
    checkpoint = f"{given.out}/checkpoint.pt"
    step, best = 0, math.inf
    if os.path.exists(checkpoint):
        saved = torch.load(checkpoint, map_location=device)
        model.load_state_dict(saved["model"])
        optimiser.load_state_dict(saved["optimiser"])
        step, best = saved["step"], saved["best"]
    weights = examples.weights[learnt]
    parameters = sum(weight.numel() for weight in model.parameters())
    print(f"{parameters} parameters, {len(learnt)} examples, width {examples.rows.shape[1]}, on {device}", flush=True)

    def keep(name, **more):
        described = dict(size=model.described(), tokens=examples.tokens, step=step, best=best)
        torch.save(dict(model=model.state_dict(), **described, **more), f"{given.out}/{name}.pt")

    began = time.monotonic()
    model.train()
    while step < given.steps:
        for group in optimiser.param_groups:
            group["lr"] = rate_at(step / given.steps, given.peak)
        chosen = learnt[torch.multinomial(weights, given.batch, replacement=True)]
        loss = loss_of(model, examples.batch(chosen))
        optimiser.zero_grad()
        loss.backward()
        torch.nn.utils.clip_grad_norm_(model.parameters(), 1.0)
        optimiser.step()
        step += 1
        if step % given.judge_every == 0 or step == given.steps:
            judged = judge(model, examples, kept_back)
            print(f"{time.monotonic() - began:.0f} s, step {step}: {loss.item():.3f}, kept back {judged:.3f}", flush=True)
            if judged < best:
                best = judged
                keep("best")
            keep("checkpoint", optimiser=optimiser.state_dict())
    scores = dict(seed=given.seed, steps=step, batch=given.batch, dropout=given.dropout, parameters=parameters,
                  examples=len(learnt), lossKeptBack=round(best, 4))
    with open(f"{given.out}/trained.json", "w") as file:
        json.dump(scores, file, indent=2)
        file.write("\n")
    print(json.dumps(scores))


main()
