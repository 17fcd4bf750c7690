"""The synthesisers that Debian's main archive gives, each behind `say(voice, sentence, random)`.

What comes back is (samples as int16 at 16 kHz, phones): the phones that the synthesiser says it spoke where
it tells them, else those that the sentence came with. None means the voice could not say it.
"""

import ctypes
import os
import subprocess
import tempfile
import wave

import numpy as np

import accents
import prosody
from phones import from_segments

RATE = 16000
# Where Debian's packages lie unpacked; nothing when they are installed.
ROOT = os.environ.get("VOICES_ROOT", "")
LIBRARIES = f"{ROOT}/usr/lib/x86_64-linux-gnu"


class Flite:
    """Statistical voices (rms, slt, awb) and a diphone one (kal16), all of recorded people."""

    def __init__(self):
        self._library = self._open("libflite.so.1")
        for name in ("cmulex", "usenglish"):
            self._open(f"libflite_{name}.so.1")
        for name in ("utt_relation", "relation_head", "item_next", "flite_synth_text", "utt_wave"):
            getattr(self._library, name).restype = ctypes.c_void_p
        self._library.item_feat_string.restype = ctypes.c_char_p
        stretch = [ctypes.c_void_p, ctypes.c_char_p, ctypes.c_float]
        self._library.feat_set_float.argtypes = stretch
        self._library.flite_init()
        self._voices = {}

    def _open(self, name):
        path = f"{LIBRARIES}/{name}" if ROOT else name
        return ctypes.CDLL(path, mode=ctypes.RTLD_GLOBAL)

    def _voice(self, name):
        if name not in self._voices:
            register = getattr(self._open(f"libflite_cmu_us_{name}.so.1"), f"register_cmu_us_{name}")
            register.restype = ctypes.c_void_p
            self._voices[name] = register(None)
        return self._voices[name]

    def say(self, name, sentence, random):
        voice, library = self._voice(name), self._library
        features = _FliteVoice.from_address(voice).features
        library.feat_set_float(features, b"duration_stretch", float(np.exp(random.normal(0, 0.12))))
        utterance = ctypes.c_void_p(
            library.flite_synth_text(sentence["text"].encode(), ctypes.c_void_p(voice))
        )
        sound = _FliteWave.from_address(library.utt_wave(utterance))
        samples = np.ctypeslib.as_array(sound.samples, (sound.count,)).astype(np.int16)
        names = list(self._segments(utterance))
        library.delete_utterance(utterance)
        return samples, from_segments(names)

    def _segments(self, utterance):
        library = self._library
        relation = ctypes.c_void_p(library.utt_relation(utterance, b"Segment"))
        item = library.relation_head(relation)
        while item:
            yield library.item_feat_string(ctypes.c_void_p(item), b"name").decode()
            item = library.item_next(ctypes.c_void_p(item))


class _FliteVoice(ctypes.Structure):
    _fields_ = [("name", ctypes.c_char_p), ("features", ctypes.c_void_p)]


class _FliteWave(ctypes.Structure):
    _fields_ = [
        ("type", ctypes.c_char_p),
        ("rate", ctypes.c_int),
        ("count", ctypes.c_int),
        ("channels", ctypes.c_int),
        ("samples", ctypes.POINTER(ctypes.c_short)),
    ]


class Festival:
    """Festival kept running: text by its American voices, rows of sounds by any voice of diphones."""

    # voice: (festival's name, its sounds, its name for silence, a usual pitch in Hz)
    DIPHONES = {
        "ked": ("voice_ked_diphone", accents.ENGLISH, "pau", 105),
        "lp": ("voice_lp_diphone", accents.ITALIAN, "#", 180),
        "pc": ("voice_pc_diphone", accents.ITALIAN, "#", 115),
        "lj": ("voice_suo_fi_lj_diphone", accents.FINNISH, "#", 185),
        "mv": ("voice_hy_fi_mv_diphone", accents.FINNISH, "#", 105),
        "nsk": ("voice_hindi_NSK_diphone", accents.HINDI, "pau", 120),
    }
    TEXTS = {"ked-text": "voice_ked_diphone", "slt-hts": "voice_cmu_us_slt_arctic_hts"}

    def __init__(self):
        environment = {**os.environ, **({"LD_LIBRARY_PATH": f"{LIBRARIES}:{ROOT}/extra"} if ROOT else {})}
        library = ["--libdir", f"{ROOT}/usr/share/festival"] if ROOT else []
        self._process = subprocess.Popen(
            [f"{ROOT}/usr/bin/festival", *library, "--pipe"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            text=True,
            env=environment,
        )
        self._file = tempfile.mktemp(suffix=".wav", dir="/dev/shm")
        self._current = None
        self._ask('(set! load-path (cons (string-append libdir "/hindi_scm") load-path))')

    def _ask(self, command):
        """Runs a command and gives what it printed, up to a line of our own that marks its end."""
        self._process.stdin.write(f'{command}\n(format t "\\ndone\\n") (fflush nil)\n')
        self._process.stdin.flush()
        lines = []
        for line in self._process.stdout:
            if line.strip().endswith("done"):
                return lines
            lines.append(line.strip())
        raise RuntimeError("festival ended")

    def say(self, name, sentence, random):
        if os.path.exists(self._file):
            os.remove(self._file)
        by_text = name in self.TEXTS
        self._use(self.TEXTS[name] if by_text else self.DIPHONES[name][0])
        made = self._text(sentence) if by_text else self._segments(name, sentence, random)
        printed = self._ask(
            f"(set! said {made}) (utt.synth said) (utt.wave.resample said {RATE})"
            f' (utt.save.wave said "{self._file}" \'riff)'
            + " (mapcar (lambda (s) (format t \"%s \" (item.name s))) (utt.relation.items said 'Segment))"
        )
        if not os.path.exists(self._file):
            return None
        with wave.open(self._file) as sound:
            samples = np.frombuffer(sound.readframes(sound.getnframes()), np.int16)
        if by_text:
            return samples, from_segments(" ".join(printed).split())
        return samples, [phone for word in sentence["phones"] for phone in word.split()]

    def _use(self, voice):
        if voice != self._current:
            self._ask(f"({voice})")
            self._current = voice

    def _text(self, sentence):
        return f'(Utterance Text "{sentence["text"]}")'

    def _segments(self, name, sentence, random):
        _, sounds, silence, pitch = self.DIPHONES[name]
        words = [word.split() for word in sentence["phones"]]
        said = []
        for phone, seconds, hertz in prosody.plan(words, pitch, random):
            names = [silence] if phone is None else sounds[phone]
            for part in names:
                share = seconds / len(names) if len(names) < 2 else seconds * 0.65
                said.append(f"({part} {share:.3f} ({share / 2:.3f} {hertz:.0f}))")
        return f"(Utterance Segments ({' '.join(said)}))"


class Espeak:
    """Formant voices: no proxy for people, but any pace, pitch, accent and throat."""

    ACCENTS = "en-us en-gb en-gb-scotland en-gb-x-gbclan en-gb-x-rp en-gb-x-gbcwmd en-029 en-us-nyc".split()
    # The variants that speak as people might, not as robots or in a whisper.
    VARIANTS = (
        "f1 f3 f4 f5 m1 m2 m4 m5 m6 m7 m8 adam Alex Alicia Andrea Andy Annie antonio aunty belinda benjamin "
        "boris caleb david Denis Diogo ed edward Gene Gene2 Henrique Hugo iven iven2 iven3 iven4 Jacky john "
        "lee linda marcelo Marco Mario max Michael michel miguel mike Nguyen norbert pablo paul pedro quincy "
        "rob robert sandro shelby steph steph2 steph3 travis victor zac anika grandma grandpa klatt klatt2 "
        "klatt3 klatt5 klatt6"
    ).split()
    HELD_OUT = ["f2", "m3", "edward2", "kaukovalta"]

    def say(self, name, sentence, random):
        """`accent+variant` reads the text; a language of accents.ESPEAK says the phones with its own sounds."""
        base = name.split("+")[0]
        words = [word.split() for word in sentence["phones"]]
        foreign = base in accents.ESPEAK
        text = accents.espeak_phonemes(words, base) if foreign else sentence["text"]
        speed = int(165 * np.exp(random.normal(0, 0.16)))
        pitch = int(np.clip(random.normal(50, 16), 5, 95))
        command = [f"{ROOT}/usr/bin/espeak-ng", "-v", name, "-s", str(speed), "-p", str(pitch), "--stdout", text]
        environment = os.environ
        if ROOT:
            paths = {"LD_LIBRARY_PATH": f"{LIBRARIES}:{ROOT}/extra", "ESPEAK_DATA_PATH": LIBRARIES}
            environment = {**os.environ, **paths}
        made = subprocess.run(command, capture_output=True, env=environment, timeout=20)
        samples = np.frombuffer(made.stdout[44:], np.int16)
        if len(samples) < RATE // 10:
            return None
        return resample(samples, 22050), [phone for word in words for phone in word]


def resample(samples, rate):
    """To 16 kHz by the spectrum, which is exact enough for speech that is quiet at both ends."""
    count = len(samples) * RATE // rate
    spectrum = np.fft.rfft(samples.astype(np.float64))
    kept = spectrum[: count // 2 + 1]
    return np.clip(np.fft.irfft(kept, count) * count / len(samples), -32767, 32767).astype(np.int16)


# (synthesiser, voice): how often of a hundred. Voices of people first; formant voices for variety.
TRAINED = {
    ("flite", "rms"): 14,
    ("flite", "slt"): 14,
    ("flite", "awb"): 14,
    ("festival", "ked"): 10,
    ("festival", "ked-text"): 3,
    ("festival", "nsk"): 5,
    ("festival", "lp"): 3,
    ("festival", "pc"): 3,
    ("festival", "lj"): 3,
    ("festival", "mv"): 3,
    ("espeak", "english"): 22,
    ("espeak", "foreign"): 6,
}

# Never trained on. kal16 is a speaker of his own; slt-hts is a trained speaker through another engine.
HELD_OUT = [
    ("flite", "kal16"),
    ("festival", "slt-hts"),
    ("espeak", "en-us+f2"),
    ("espeak", "en-gb+m3"),
]


class Voices:
    """Every synthesiser, started when first asked."""

    def __init__(self):
        self._made = {}

    def _engine(self, name):
        kinds = {"flite": Flite, "festival": Festival, "espeak": Espeak}
        if name not in self._made:
            self._made[name] = kinds[name]()
        return self._made[name]

    def say(self, engine, voice, sentence, random):
        if voice == "english":
            voice = f"{random.choice(Espeak.ACCENTS)}+{random.choice(Espeak.VARIANTS)}"
        elif voice == "foreign":
            voice = f"{random.choice(list(accents.ESPEAK))}+{random.choice(Espeak.VARIANTS)}"
        try:
            said = self._engine(engine).say(voice, sentence, random)
        except (RuntimeError, BrokenPipeError, KeyError, subprocess.TimeoutExpired, wave.Error, EOFError):
            self._made.pop(engine, None)
            return None
        if said is None or said[1] is None or len(said[0]) < RATE // 8 or not said[1]:
            return None
        return said
