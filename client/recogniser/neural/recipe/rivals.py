"""Sentences that a sentence may be mistaken for: one word swapped for one like it, left out or put in."""

from collections import Counter

SHORT = 3  # phones


def distance(left, right):
    """Phones to change, leave out or put in to make one row of phones into the other."""
    row = list(range(len(right) + 1))
    for count, phone in enumerate(left, 1):
        before, row[0] = row[0], count
        for at, other in enumerate(right, 1):
            before, row[at] = row[at], min(row[at] + 1, row[at - 1] + 1, before + (phone != other))
    return row[-1]


class Rivals:
    """Knows for each word (a tuple of phones) the dozen words that sound most like it."""

    def __init__(self, sentences, near=12, at_least=3):
        counted = Counter(tuple(word) for words in sentences for word in words)
        words = [word for word, times in counted.items() if times >= at_least]
        self.short = [word for word in words if len(word) <= SHORT]
        self.near = {word: self._nearest(word, words, near) for word in words}

    def _nearest(self, word, words, near):
        bag = Counter(word)

        def unlike(other):
            return max(len(word), len(other)) - sum((bag & Counter(other)).values())

        likely = sorted((other for other in words if other != word), key=unlike)[: 3 * near]
        return sorted(likely, key=lambda other: distance(word, other))[:near]

    def of(self, words, random):
        """One rival as a flat row of phones; None if it came out the same or empty."""
        made = [tuple(word) for word in words]
        at = random.randrange(len(made))
        deed = random.random()
        if deed < 0.7:
            made[at] = random.choice(self.near.get(made[at]) or self.short)
        elif deed < 0.85 and len(made) > 1:
            del made[at]
        else:
            made.insert(at, random.choice(self.short))
        flat = [phone for word in made for phone in word]
        return flat if flat and flat != [phone for word in words for phone in word] else None
