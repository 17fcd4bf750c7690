"""What stands beside the speech: fans, compressors, rooms, talk, telephones. All made, none recorded."""

import math

import torch
from torch.nn import functional as F

RATE = 16000


def uniform(low, high, *shape, device):
    return torch.rand(*shape, device=device) * (high - low) + low


def chance(share, batch, device):
    return (torch.rand(batch, 1, device=device) < share).float()


def random_curve(batch, size, spread, points=9, *, device):
    """A smooth random curve in dB over frequency."""
    knots = torch.randn(batch, 1, points, device=device) * spread
    return F.interpolate(knots, size=size, mode="linear", align_corners=True)[:, 0]


def power_of_two(samples):
    return 1 << (samples - 1).bit_length()


def coloured(batch, samples, slope, bumps, device):
    """Noise that falls with frequency to the power of -slope/2, with smooth random bumps of `bumps` dB."""
    size = power_of_two(samples)
    half = size // 2 + 1
    frequency = torch.linspace(0, RATE / 2, half, device=device)[None]
    shape = (frequency / 500 + 0.06) ** (-slope / 2)
    shape = shape * 10 ** (random_curve(batch, half, 1.0, device=device) * bumps / 20)
    random = torch.view_as_complex(torch.randn(batch, half, 2, device=device))
    noise = torch.fft.irfft(random * shape, size)[:, :samples]
    return noise / noise.std(1, keepdim=True)


def tones(batch, samples, base, count, device):
    """A tone and its overtones, each weaker: mains hum, or the blades of a fan."""
    time = torch.arange(samples, device=device)[None] / RATE
    total = torch.zeros(batch, samples, device=device)
    for overtone in range(1, count + 1):
        phase = torch.rand(batch, 1, device=device)
        strength = torch.rand(batch, 1, device=device) / overtone
        total = total + strength * torch.sin(2 * math.pi * (base * overtone * time + phase))
    return total


def machine_noise(batch, samples, device):
    """Air, hum and blades in any proportion, swelling and beating."""
    noise = coloured(
        batch,
        samples,
        uniform(0, 2.3, batch, 1, device=device),
        5 * chance(0.7, batch, device),
        device,
    )
    mains = torch.tensor([50.0, 60.0, 100.0, 120.0], device=device)
    hum = tones(batch, samples, mains[torch.randint(0, 4, (batch, 1), device=device)], 5, device)
    blades = tones(batch, samples, uniform(18, 260, batch, 1, device=device), 4, device)
    sung = hum + blades * chance(0.7, batch, device)
    noise = noise + sung * uniform(0, 1.6, batch, 1, device=device) * chance(0.6, batch, device)
    time = torch.arange(samples, device=device)[None] / RATE
    beat = torch.sin(2 * math.pi * uniform(0.4, 12, batch, 1, device=device) * time)
    return noise * (1 + uniform(0, 0.5, batch, 1, device=device) * beat)


def fan_noise(batch, samples, device):
    """The fan that scores are given for: rumble and rush with hum and blade tones, no two alike."""
    slope = uniform(0.8, 2.0, batch, 1, device=device)
    air = coloured(batch, samples, slope, 3.0, device)
    hum = tones(batch, samples, torch.full((batch, 1), 120.0, device=device), 4, device)
    blades = tones(batch, samples, uniform(60, 220, batch, 1, device=device), 4, device)
    noise = air + 0.5 * hum + 0.7 * blades
    return noise / noise.std(1, keepdim=True)


def speech_power(samples):
    """Mean power of the parts that are not silence: (B, 1)."""
    loud = (samples.abs() > 0.03 * samples.abs().amax(1, keepdim=True)).float()
    active = F.max_pool1d(loud[:, None], 801, 160, 400)[:, 0].sum(1, keepdim=True) * 160
    return samples.square().sum(1, keepdim=True) / active.clamp_min(1600)


def beside(speech, noise, decibels):
    """The speech with the noise that many dB below it."""
    noise = noise / noise.std(1, keepdim=True).clamp_min(1e-6)
    return speech + noise * speech_power(speech).sqrt() * 10 ** (-decibels / 20)
