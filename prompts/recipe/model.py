"""A small Llama: one table of tokens for both ends, RMS norms without weights of their own before each block
(they would only scale what the next matrix scales anyway), rotary positions, SiLU."""

import math
from dataclasses import asdict, dataclass

import torch
from torch import nn
from torch.nn import functional as F


@dataclass
class Size:
    vocabulary: int
    hidden: int = 128
    inner: int = 352
    layers: int = 4
    heads: int = 4
    positions: int = 160
    theta: float = 10000.0
    epsilon: float = 1e-6

    @property
    def head(self):
        return self.hidden // self.heads


def normed(x, epsilon):
    return x * torch.rsqrt(x.pow(2).mean(-1, keepdim=True) + epsilon)


def rotary_table(size):
    rates = size.theta ** (-torch.arange(0, size.head, 2).float() / size.head)
    angles = torch.outer(torch.arange(size.positions).float(), rates)
    angles = torch.cat([angles, angles], -1)
    return angles.cos(), angles.sin()


def rotated(x, cos, sin):
    first, second = x.chunk(2, -1)
    return x * cos + torch.cat([-second, first], -1) * sin


class Block(nn.Module):
    def __init__(self, size, dropout):
        super().__init__()
        self.size = size
        self.qkv = nn.Linear(size.hidden, 3 * size.hidden, bias=False)
        self.out = nn.Linear(size.hidden, size.hidden, bias=False)
        self.gate_up = nn.Linear(size.hidden, 2 * size.inner, bias=False)
        self.down = nn.Linear(size.inner, size.hidden, bias=False)
        self.dropout = nn.Dropout(dropout)

    def forward(self, x, cos, sin, mask):
        batch, length, _ = x.shape
        size = self.size
        qkv = self.qkv(normed(x, size.epsilon)).view(batch, length, 3, size.heads, size.head)
        q, k, v = (part.transpose(1, 2) for part in qkv.unbind(2))
        q, k = rotated(q, cos, sin), rotated(k, cos, sin)
        scores = q @ k.transpose(-1, -2) / math.sqrt(size.head) + mask
        seen = (scores.softmax(-1) @ v).transpose(1, 2).reshape(batch, length, size.hidden)
        x = x + self.dropout(self.out(seen))
        gate, up = self.gate_up(normed(x, size.epsilon)).chunk(2, -1)
        return x + self.dropout(self.down(F.silu(gate) * up))


class Phraser(nn.Module):
    def __init__(self, size, dropout=0.1):
        super().__init__()
        self.size = size
        self.tokens = nn.Embedding(size.vocabulary, size.hidden)
        self.blocks = nn.ModuleList(Block(size, dropout) for _ in range(size.layers))
        cos, sin = rotary_table(size)
        self.register_buffer("cos", cos, persistent=False)
        self.register_buffer("sin", sin, persistent=False)
        for name, weight in self.named_parameters():
            deep = name.endswith(("out.weight", "down.weight"))
            nn.init.normal_(weight, std=0.05 / math.sqrt(2 * size.layers) if deep else 0.05)

    def forward(self, ids):
        length = ids.shape[1]
        mask = torch.full((length, length), -1e9, device=ids.device).triu(1)
        x = self.tokens(ids)
        for block in self.blocks:
            x = block(x, self.cos[:length], self.sin[:length], mask)
        return normed(x, self.size.epsilon) @ self.tokens.weight.t()

    def described(self):
        return asdict(self.size)
