"""English phones said with the sounds of another language's voice: accents, and voices of more people.

The Italian, Finnish and Hindi voices of festival were cut from recordings of real people, and
festival says any row of their own sounds. What a language lacks is replaced as its speakers replace it,
so the label stays the English phone: that is what a listener must understand.
"""

from phones import VOWELS

_SAME = "B D F G K L M N P R S T V Z".split()
_PLAIN = {phone: [phone.lower()] for phone in _SAME}

ENGLISH = {
    phone: [phone.lower()]
    for phone in (
        "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG "
        "OW OY P R S SH T TH UH UW V W Y Z ZH"
    ).split()
}

ITALIAN = {
    **_PLAIN,
    **dict(AA=["a"], AE=["E"], AH=["a"], AO=["O"], AW=["a", "u"], AY=["a", "i"], EH=["E"], ER=["E", "r"]),
    **dict(EY=["e", "i"], IH=["i"], IY=["i"], OW=["o", "u"], OY=["O", "i"], UH=["u"], UW=["u"]),
    **dict(CH=["tS"], DH=["d"], HH=[], JH=["dZ"], NG=["ng"], SH=["S"], TH=["t"], W=["w"], Y=["j"], ZH=["Z"]),
}

FINNISH = {
    **_PLAIN,
    **dict(AA=["a:"], AE=["@"], AH=["a"], AO=["o:"], AW=["a", "u"], AY=["a", "i"], EH=["e"], ER=["7", "r"]),
    **dict(EY=["e", "i"], IH=["i"], IY=["i:"], OW=["o", "u"], OY=["o", "i"], UH=["u"], UW=["u:"]),
    **dict(CH=["t", "s"], DH=["d"], HH=["h"], JH=["d", "j"], NG=["N"], SH=["s"], TH=["t"], W=["v"], Y=["j"]),
    **dict(Z=["s"], ZH=["s"]),
}

HINDI = {
    **_PLAIN,
    **dict(AA=["aa"], AE=["eh"], AH=["a"], AO=["oh"], AW=["aw"], AY=["ay"], EH=["eh"], ER=["a", "r"]),
    **dict(EY=["ee"], IH=["ih"], IY=["iy"], OW=["oo"], OY=["oh", "iy"], UH=["uh"], UW=["uw"]),
    **dict(CH=["ch"], D=["D"], DH=["d"], HH=["h"], JH=["j"], NG=["n", "g"], SH=["sh"], T=["T"], TH=["th"]),
    **dict(W=["v"], Y=["y"], Z=["j"], ZH=["sh"]),
}

# espeak-ng's own names for sounds; these vowels are in every language used below.
_ESPEAK_COMMON = dict(
    AA="a", AE="E", AH="a", AO="O", AW="aU", AY="aI", B="b", CH="tS", D="d", DH="D", EH="E", ER="@r",
    EY="eI", F="f", G="g", HH="h", IH="i:", IY="i:", JH="dZ", K="k", L="l", M="m", N="n", NG="N", OW="oU",
    OY="OI", P="p", R="r", S="s", SH="S", T="t", TH="T", UH="u:", UW="u:", V="v", W="w", Y="j", Z="z",
    ZH="Z",
)  # fmt: skip

ESPEAK = {
    "de": {**_ESPEAK_COMMON, "TH": "s", "DH": "z", "W": "v", "IH": "I", "UH": "U"},
    "fr": {**_ESPEAK_COMMON, "TH": "s", "DH": "z", "HH": "", "OY": "O i:", "AW": "a u:"},
    "es": {**_ESPEAK_COMMON, "Z": "s", "JH": "j", "V": "b"},
    "pt": {**_ESPEAK_COMMON, "TH": "t", "DH": "d"},
    "el": {**_ESPEAK_COMMON, "SH": "s", "CH": "ts", "JH": "dz", "ZH": "z"},
    "ro": {**_ESPEAK_COMMON, "TH": "t", "DH": "d"},
    "sv": {**_ESPEAK_COMMON, "TH": "t", "DH": "d", "Z": "s", "W": "v", "IH": "I"},
    "hi": {**_ESPEAK_COMMON, "TH": "t", "DH": "d", "W": "v", "IH": "I", "AH": "V", "OY": "O i:"},
}


def espeak_phonemes(words, language):
    """A sentence, as words of English phones, in a language's own sounds, each word stressed once."""
    table = ESPEAK[language]
    return "[[" + " ".join(_stressed(phones, table) for phones in words) + "]]"


def _stressed(phones, table):
    spelled, waiting = "", True
    for phone in phones:
        sound = table[phone]
        is_vowel = phone in VOWELS
        spelled += "'" + sound if is_vowel and waiting else sound
        waiting = waiting and not is_vowel
    return spelled.replace(" ", "")
