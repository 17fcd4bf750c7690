"""The network: sound at 16 kHz in, log probabilities of 39 phones and a blank every 20 ms out.

It hears as sound comes. Whatever it must remember between two pieces is in five tensors that go in and come
out; all zeros is the state before the first sound. One long piece and many short ones give the same answer,
so training, scoring and the product run the same code.
"""

import os

import numpy as np
import torch
from torch import nn
from torch.nn import functional as F

from phones import CLASSES

HOP, WINDOW = 160, 512  # 10 ms and 32 ms
TAIL = WINDOW - HOP
MELS_TRUNK, MELS_STEM = 32, 64
MELS = MELS_TRUNK + MELS_STEM
PAST, FUTURE = 27, 28  # frames of 10 ms that the trunk sees around the one it speaks of
CONTEXT = PAST + FUTURE
LEAD = 8  # frames by which the level runs ahead of what it levels
DELAY = FUTURE + LEAD  # output frame m speaks of input frame 2 m - DELAY
STEP = 4  # frames: pieces come in multiples of 40 ms
DECAY = 0.04  # dB that the level falls each frame: 4 dB a second
RANGE = 80.0  # dB below the level that are told apart
LIFT = 100.0  # makes the faintest power 0, so that zeros are silence
TRUNK_PEAK = 95.0  # dB (without LIFT) that the loudest band of an utterance is brought to, as the trunk knew it
STEM_PEAK = 17.0  # dB, how much more the loudest of the 64 bands holds than that of the 32: their sums are larger
DOUBLINGS = 12  # 2 ** 12 frames: the level has by then fallen by more than there is

_HERE = os.path.dirname(os.path.abspath(__file__))


def mel_bands(bands, low=80.0, high=7600.0):
    """Triangles evenly spaced on the mel scale, as (257 frequencies, bands)."""
    edges = np.linspace(1127 * np.log1p(low / 700), 1127 * np.log1p(high / 700), bands + 2)
    mels = 1127 * np.log1p(np.arange(257) * 31.25 / 700)
    rising = (mels[:, None] - edges[None, :-2]) / (edges[1:-1] - edges[:-2])
    falling = (edges[None, 2:] - mels[:, None]) / (edges[2:] - edges[1:-1])
    return np.maximum(0, np.minimum(rising, falling)).astype(np.float32)


def warped(bands, factor):
    """The same bands for a vocal tract shorter or longer by the factor."""
    places = np.arange(257) * factor
    below = places.astype(int)
    share = (places - below)[:, None]

    def at(index):
        return np.where((index < 257)[:, None], bands[np.minimum(index, 256)], 0)

    return ((1 - share) * at(below) + share * at(below + 1)).astype(np.float32)


class Spectrum(nn.Module):
    """Samples in -1..1 to power in mel bands: 32 as the trunk was trained on, and 64 of our own."""

    def __init__(self):
        super().__init__()
        weights = np.load(f"{_HERE}/speech-embedding.npz")
        self.bands = np.concatenate([weights["melW"].astype(np.float32), mel_bands(MELS_STEM)], 1)
        window = weights["win"].astype(np.float64)
        angle = 2 * np.pi * np.outer(np.arange(257), np.arange(WINDOW)) / WINDOW
        waves = np.concatenate([window * np.cos(angle), window * np.sin(angle)])[:, None]
        self.register_buffer("waves", torch.tensor(waves, dtype=torch.float32), persistent=False)
        self.register_buffer("mel", torch.tensor(self.bands), persistent=False)

        self.register_buffer("window", torch.tensor(window, dtype=torch.float32), persistent=False)
        # ONNX of this age has no Fourier transform: exported, it is a convolution with waves.
        self.by_waves = False

    def power(self, samples):
        """(B, 512 + 160 (T - 1)) samples to (B, T, 257)."""
        if self.by_waves:
            parts = F.conv1d(samples[:, None] * 32768.0, self.waves, stride=HOP)
            return (parts[:, :257] ** 2 + parts[:, 257:] ** 2).transpose(1, 2)
        spectrum = torch.fft.rfft(samples.unfold(1, WINDOW, HOP) * self.window * 32768.0)
        return spectrum.real**2 + spectrum.imag**2

    def forward(self, samples):
        return torch.matmul(self.power(samples), self.mel)


def decibels(power):
    """0 for the faintest."""
    return 10 * torch.log10(power.clamp_min(1e-10)) + LIFT


def running_level(decibel, level):
    """The loudest band so far, falling slowly: (B, T, bands) and the level before it to (B, T) levels.

    A running maximum in closed form: each doubling lets a frame know twice as many frames before it.
    """
    known = decibel[..., :MELS_TRUNK].amax(2)
    known = torch.cat([level, known], 1)
    for doubling in range(DOUBLINGS):
        reach = 2**doubling
        earlier = F.pad(known, (reach, 0))[:, :-reach] - DECAY * reach
        known = torch.maximum(known, earlier)
    return known[:, 1:]


class Trunk(nn.Module):
    """A public network trained on real speech (see the model card), its maps at 20 and 40 ms put out."""

    POOLS = {2: (2, 2), 6: (1, 2), 10: (2, 2), 14: (1, 2)}
    OUTPUT = 768

    def __init__(self):
        super().__init__()
        weights = np.load(f"{_HERE}/speech-embedding.npz")
        layers = range(19)
        self.weights = nn.ParameterList([_parameter(weights[f"w{layer}"]) for layer in layers])
        self.biases = nn.ParameterList([_parameter(weights[f"b{layer}"]) for layer in layers])

    def forward(self, mels):
        """(B, T + 55, 32) to (B, T / 2, 768)."""
        maps, fine = mels[:, None], None
        for layer, (weight, bias) in enumerate(zip(self.weights, self.biases)):
            maps = F.conv2d(maps, weight, bias, padding=(0, 1) if weight.shape[3] == 3 else 0)
            maps = F.leaky_relu(maps, 0.2).clamp_min(-0.4)
            if layer == 10:
                fine = maps[:, :, 8:-9].permute(0, 2, 1, 3).flatten(2)
            if layer in self.POOLS:
                maps = F.max_pool2d(maps, self.POOLS[layer], self.POOLS[layer])
        coarse = maps.permute(0, 2, 1, 3).flatten(2)
        return torch.cat([fine, torch.stack([coarse, coarse], 2).flatten(1, 2)], 2)


def _parameter(values):
    return nn.Parameter(torch.tensor(values.astype(np.float32)))


class Stem(nn.Module):
    """Two convolutions over 64 finer bands, for what the trunk's 32 do not show."""

    def __init__(self, width):
        super().__init__()
        self.first = nn.Conv2d(1, 32, 3, padding=(0, 1), stride=(1, 2))
        self.second = nn.Conv2d(32, 32, 3, padding=(0, 1), stride=(2, 2))
        self.out = nn.Linear(32 * MELS_STEM // 4, width)

    def forward(self, mels):
        """(B, T + 55, 64) to (B, T / 2, width)."""
        maps = F.gelu(self.first(mels[:, None, PAST - 2 : 1 - FUTURE]))
        return self.out(F.gelu(self.second(maps)).permute(0, 2, 1, 3).flatten(2))


class Block(nn.Module):
    """Looks back over 0.2 s, each channel by itself, then mixes the channels."""

    REACH = 10

    def __init__(self, width, dropout):
        super().__init__()
        self.look = nn.Conv1d(width, width, self.REACH + 1, groups=width)
        self.norm = nn.LayerNorm(width)
        self.widen = nn.Linear(width, 2 * width)
        self.narrow = nn.Linear(2 * width, width)
        self.drop = nn.Dropout(dropout)

    def forward(self, frames, before):
        seen = torch.cat([before, frames.transpose(1, 2)], 2)
        mixed = self.narrow(F.gelu(self.widen(self.norm(self.look(seen).transpose(1, 2)))))
        return frames + self.drop(mixed), seen[:, :, -self.REACH :]


class Network(nn.Module):
    """Levelled mel frames to log probabilities."""

    def __init__(self, width=256, blocks=8, dropout=0.15):
        super().__init__()
        self.width, self.depth = width, blocks
        self.trunk = Trunk()
        self.trunk_norm = nn.LayerNorm(Trunk.OUTPUT)
        self.trunk_out = nn.Linear(Trunk.OUTPUT, width)
        self.stem = Stem(width)
        self.blocks = nn.ModuleList([Block(width, dropout) for _ in range(blocks)])
        self.middle_out = nn.Linear(width, CLASSES)
        self.norm = nn.LayerNorm(width)
        self.out = nn.Linear(width, CLASSES)
        self.drop = nn.Dropout(dropout)

    def forward(self, levelled, memory, trunk_mask=None):
        """(B, T + 55, 96) in 0..80 and the blocks' memory; gives scores, the middle's scores, memory."""
        inner, middle, memory = self.listen(levelled, memory, trunk_mask)
        return self.out(inner), middle, memory

    def listen(self, levelled, memory, trunk_mask=None):
        """As forward, with what the last layer looks at in place of its scores."""
        trunk = self.trunk((levelled[..., :MELS_TRUNK] - RANGE + TRUNK_PEAK) / 10 + 2)
        trunk = self.trunk_norm(trunk)
        if trunk_mask is not None:
            trunk = trunk * trunk_mask
        stem = self.stem((levelled[..., MELS_TRUNK:] - RANGE - STEM_PEAK) / 20 + 2)
        if self.training:
            # A quarter of the utterances without the stem: it must not learn the voices by heart.
            stem = stem * (torch.rand(len(stem), 1, 1, device=stem.device) > 0.25)
        frames = self.trunk_out(self.drop(trunk)) + stem
        middle, after = None, []
        for number, block in enumerate(self.blocks):
            frames, kept = block(frames, memory[number])
            after.append(kept)
            if number == self.depth // 2 - 1:
                middle = self.middle_out(frames)
        return self.norm(frames), middle, torch.stack(after)

    def fresh_memory(self, batch, device=None):
        return torch.zeros(self.depth, batch, self.width, Block.REACH, device=device)


class Levelling(nn.Module):
    """Decibels to 0..80 below a running level; the frames come out LEAD later than they went in."""

    def forward(self, decibel, waiting, level):
        levels = running_level(decibel, level)
        frames = torch.cat([waiting, decibel], 1)
        levelled = (frames[:, :-LEAD] - levels[..., None] + RANGE).clamp_min(0)
        return levelled, frames[:, -LEAD:], levels[:, -1:]


class Listener(nn.Module):
    """What is exported: sound and state in; log probabilities, what its last layer looks at, and state out."""

    def __init__(self, network):
        super().__init__()
        self.spectrum, self.levelling, self.network = Spectrum(), Levelling(), network

    def forward(self, samples, audio, waiting, level, mels, memory):
        """samples (1, 640 n); the names of the state's parts and their shapes are in `fresh_state`."""
        heard = torch.cat([audio, samples], 1)
        decibel = decibels(self.spectrum(heard))
        levelled, waiting, level = self.levelling(decibel, waiting, level)
        window = torch.cat([mels, levelled], 1)
        inner, _, memory = self.network.listen(window, memory)
        state = (heard[:, -TAIL:], waiting, level, window[:, -CONTEXT:], memory)
        return (torch.log_softmax(self.network.out(inner), 2), inner, *state)

    def fresh_state(self, batch=1, device=None):
        return (
            torch.zeros(batch, TAIL, device=device),
            torch.zeros(batch, LEAD, MELS, device=device),
            torch.zeros(batch, 1, device=device),
            torch.zeros(batch, CONTEXT, MELS, device=device),
            self.network.fresh_memory(batch, device),
        )

    @torch.no_grad()
    def hear(self, samples):
        """All of (B, N) samples at once, flushed to the end: (B, frames, classes)."""
        batch, count = samples.shape
        step = STEP * HOP
        padded = F.pad(samples, (0, -(-count // step) * step - count + DELAY * HOP))
        return self(padded, *self.fresh_state(batch, samples.device))[0][:, DELAY // 2 :]
