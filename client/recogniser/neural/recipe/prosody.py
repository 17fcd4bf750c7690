"""Durations and a melody for a row of phones, made up anew each time: no two people say a line alike."""

import numpy as np

# Seconds at an unhurried pace. From memory of the usual tables for American English; jittered anyway.
_LONG = {phone: 0.13 for phone in "AW AY OY EY OW".split()}
_VOWEL = dict(AA=0.12, AE=0.11, AH=0.07, AO=0.12, EH=0.09, ER=0.11, IH=0.07, IY=0.10, UH=0.07, UW=0.10)
_CONSONANT = {
    **{phone: 0.085 for phone in "S SH F TH CH".split()},
    **{phone: 0.07 for phone in "P T K Z V JH ZH M N NG".split()},
    **{phone: 0.055 for phone in "B D G DH L R W Y HH".split()},
}
DURATION = {**_LONG, **_VOWEL, **_CONSONANT}


def plan(words, pitch, random):
    """(phone or None for a pause, seconds, Hz) for every sound of a sentence given as words of phones."""
    rate = np.exp(random.normal(0, 0.16))
    pitch = pitch * np.exp(random.normal(0, 0.12))
    fall = random.uniform(0.05, 0.25)
    planned = [(None, random.uniform(0.1, 0.25), pitch)]
    for at, phones in enumerate(words):
        accent = 1 + (random.uniform(0.03, 0.28) if random.random() < 0.6 else 0)
        level = pitch * (1 - fall * at / max(1, len(words))) * accent
        last = at == len(words) - 1
        for phone in phones:
            seconds = DURATION[phone] / rate * np.exp(random.normal(0, 0.15)) * (1.3 if last else 1)
            planned.append((phone, seconds, level * np.exp(random.normal(0, 0.02))))
        if not last and random.random() < 0.12:
            planned.append((None, random.uniform(0.06, 0.3), level))
    return planned + [(None, random.uniform(0.1, 0.25), pitch * (1 - fall))]
