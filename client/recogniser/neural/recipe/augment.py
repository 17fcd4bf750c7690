"""Makes each utterance another one: another mouth, room, microphone, fan and pace each time it is heard."""

import math

import numpy as np
import torch
from torch.nn import functional as F

from model import MELS, MELS_STEM, MELS_TRUNK, RANGE, TAIL, warped
from noise import RATE, beside, chance, machine_noise, power_of_two, random_curve, uniform

WARPS = np.exp(np.linspace(np.log(0.82), np.log(1.22), 17))
NEVER = 9e9  # Hz: a cut-off that cuts nothing


def _where(share, values, other):
    return torch.where(torch.rand(values.shape, device=values.device) < share, values, other)


class Augment:
    def __init__(self, spectrum, device):
        self.device = device
        self.spectrum = spectrum
        self.warped = torch.tensor(np.stack([warped(spectrum.bands, warp) for warp in WARPS]), device=device)

    def __call__(self, speech, ends):
        """Speech in -1..1 as (B, N), the frame where each utterance ends, to mel power (B, T, 96)."""
        sound = self.microphone(self.surroundings(self.room(speech)))
        power = self.spectrum.power(F.pad(sound, (TAIL, 0)))
        batch = len(sound)
        warps = torch.randint(0, len(WARPS), (batch,), device=self.device)
        middle = torch.full_like(warps, len(WARPS) // 2)
        mels = torch.bmm(power, self.warped[_where(0.75, warps, middle)])
        return self.colour(self.pace(mels, ends))

    def _filter(self, sound, decibels_at):
        size = power_of_two(sound.shape[1] + 6400)
        half = size // 2 + 1
        frequency = torch.linspace(0, RATE / 2, half, device=self.device)[None]
        gain = 10 ** (decibels_at(frequency) / 20)
        return torch.fft.irfft(torch.fft.rfft(sound, size) * gain, size)[:, : sound.shape[1]]

    def room(self, speech):
        """Half of them with an echo that dies away, most through another microphone's response."""
        batch, device, size = len(speech), self.device, power_of_two(speech.shape[1] + 6400)
        time = torch.arange(6400, device=device)[None] / RATE
        decay = uniform(0.08, 0.5, batch, 1, device=device)
        echo = torch.randn(batch, 6400, device=device) * torch.exp(-6.9 * time / decay) * (time > 0.002)
        direct = uniform(-2, 16, batch, 1, device=device)
        echo = echo / echo.norm(dim=1, keepdim=True) * 10 ** (-direct / 20) * chance(0.5, batch, device)
        echo[:, 0] += 1
        spectrum = torch.fft.rfft(speech, size) * torch.fft.rfft(echo, size)
        echoed = torch.fft.irfft(spectrum, size)[:, : speech.shape[1]]
        return self._filter(echoed, self._response(batch))

    def _response(self, batch):
        device = self.device
        never = torch.full((batch, 1), NEVER, device=device)
        telephone = uniform(3200, 4100, batch, 1, device=device)
        narrow = uniform(4100, 7800, batch, 1, device=device)
        low_pass = _where(0.36, telephone, _where(0.3, narrow, never))
        high_pass = uniform(60, 320, batch, 1, device=device)
        with_high_pass, bent = chance(0.35, batch, device), chance(0.7, batch, device)

        def decibels_at(frequency):
            curve = random_curve(batch, frequency.shape[1], 3.5, device=device) * bent
            curve = curve - 60 * torch.sigmoid((frequency - low_pass) / 60)
            return curve - 40 * torch.sigmoid((high_pass - frequency) / 20) * with_high_pass

        return decibels_at

    def surroundings(self, speech):
        batch, device = len(speech), self.device
        noise = machine_noise(batch, speech.shape[1], device)
        others = sum(
            torch.roll(speech[torch.randperm(batch, device=device)], int(shift), 1)
            for shift in np.random.randint(0, speech.shape[1], 3)
        )
        others = others / others.std(1, keepdim=True).clamp_min(1e-4)
        noise = noise + others * uniform(0.3, 1.5, batch, 1, device=device) * chance(0.12, batch, device)
        loud, faint = uniform(-3, 30, batch, 1, device=device), uniform(30, 65, batch, 1, device=device)
        return beside(speech, noise, _where(0.75, loud, faint))

    def microphone(self, sound):
        """Narrow bands, clipping, a telephone's coding, hiss, and a gain that the level must undo."""
        batch, device = len(sound), self.device
        never = torch.full((batch, 1), NEVER, device=device)
        low_pass = _where(0.25, uniform(3300, 7000, batch, 1, device=device), never)
        sound = self._filter(sound, lambda frequency: -60 * torch.sigmoid((frequency - low_pass) / 60))
        sound = sound / sound.abs().amax(1, keepdim=True).clamp_min(1e-5)
        driven = (sound * uniform(1.2, 4, batch, 1, device=device)).clamp(-1, 1)
        sound = torch.where(chance(0.06, batch, device) > 0, driven, sound)
        sound = torch.where(chance(0.12, batch, device) > 0, _mu_law(sound), sound)
        sound = sound + torch.randn_like(sound) * 10 ** (uniform(-85, -55, batch, 1, device=device) / 20)
        sound = sound * 10 ** (uniform(-30, 0, batch, 1, device=device) / 20)
        # The product flushes with digital silence: half of the endings are cut to it.
        length = sound.shape[1]
        cut = uniform(length - 8000, length - 5760, batch, 1, device=device)
        cut = _where(0.5, cut, torch.full_like(cut, length))
        return sound * (torch.arange(length, device=device)[None] < cut)

    def pace(self, mels, ends):
        """Faster, slower and uneven, in the mel frames."""
        batch, frames, bands = mels.shape
        device = self.device
        speed = torch.exp(uniform(math.log(0.88), math.log(1.2), batch, 1, device=device))
        speed = _where(0.6, speed, torch.ones_like(speed))
        speed = torch.maximum(speed, (ends / frames).clamp(max=1.0))
        spread = uniform(0, 0.22, batch, 1, device=device)
        uneven = random_curve(batch, frames, 1.0, max(4, frames // 9), device=device) * spread
        steps = speed * torch.exp(uneven - uneven.mean(1, keepdim=True))
        places = torch.cumsum(steps, 1) - steps
        # Whatever the pace, all that was said is reached.
        places = places * (ends.clamp(max=frames - 1.0) / places[:, -1:]).clamp(min=1.0)
        places = places.clamp(max=frames - 1.001)
        below = places.long()
        share = (places - below)[..., None]

        def at(index):
            return torch.gather(mels, 1, index[..., None].expand(-1, -1, bands))

        return at(below) * (1 - share) + at(below + 1) * share

    def colour(self, mels):
        """A gain that wanders by a few dB over time and frequency."""
        batch, frames, _ = mels.shape
        device = self.device
        spread = uniform(0, 3.2, batch, 1, 1, 1, device=device)
        spread = spread * (torch.rand(batch, 1, 1, 1, device=device) < 0.8)
        knots = torch.randn(batch, 1, max(3, frames // 24), 7, device=device) * spread
        fields = [
            F.interpolate(knots, size=(frames, bands), mode="bilinear", align_corners=True)[:, 0]
            for bands in (MELS_TRUNK, MELS_STEM)
        ]
        return mels * 10 ** (torch.cat(fields, 2) / 10)


def _mu_law(sound):
    coded = torch.sign(sound) * torch.log1p(255 * sound.abs()) / math.log(256)
    coded = torch.round(coded * 127) / 127
    return torch.sign(coded) * (256 ** coded.abs() - 1) / 255


def mask(levelled):
    """Stretches of time and of frequency blanked out (SpecAugment, arXiv 1904.08779), in levelled frames."""
    batch, frames, _ = levelled.shape
    device = levelled.device
    time = torch.arange(frames, device=device)[None]
    for _ in range(2):
        start = (torch.rand(batch, 1, device=device) * max(1, frames - 14)).long()
        width = torch.randint(0, 14, (batch, 1), device=device)
        inside = ((time >= start) & (time < start + width))[..., None]
        levelled = torch.where(inside, torch.full_like(levelled, 0.15 * RANGE), levelled)
    band = torch.arange(MELS, device=device)[None]
    for first, count, widest in ((0, MELS_TRUNK, 4), (MELS_TRUNK, MELS_STEM, 10)):
        start = torch.randint(first, first + count, (batch, 1), device=device)
        width = torch.randint(0, widest, (batch, 1), device=device)
        inside = ((band >= start) & (band < start + width) & (band < first + count))[:, None]
        levelled = torch.where(inside, levelled.mean((1, 2), keepdim=True), levelled)
    return levelled
