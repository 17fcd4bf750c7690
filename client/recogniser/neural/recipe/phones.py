"""The sounds the model tells apart: the CMU phones without stress, and CTC's blank as number 0."""

PHONES = (
    "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH"
).split()
CLASSES = 1 + len(PHONES)
NUMBER = {phone: index + 1 for index, phone in enumerate(PHONES)}
VOWELS = set("AA AE AH AO AW AY EH ER EY IH IY OW OY UH UW".split())

# What the American voices of flite and festival call differently.
_SPOKEN = {"AX": "AH", "AXR": "ER", "IX": "IH", "EL": "AH L", "EM": "AH M", "EN": "AH N", "DX": "T"}
_SILENT = {"PAU", "SSIL", "BRTH", "H#", "#"}


def from_segments(names):
    """Our phones from the names of a synthesiser's segments, its pauses left out; None if one is unknown."""
    spoken = []
    for name in (name.upper() for name in names):
        if name not in _SILENT:
            spoken += _SPOKEN.get(name, name).split()
    return spoken if all(phone in NUMBER for phone in spoken) else None
