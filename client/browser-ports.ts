import type { Expectation } from '../core/language/context.ts';
import { type KnownNames, NO_NAMES } from '../core/language/known-names.ts';
import { recogniserGrammar } from '../core/language/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../core/language/vocabulary/pronunciations.ts';
import { takeTurn } from '../core/turn/take-turn.ts';
import { createEar } from './ear/create-ear.ts';
import type { Ear } from './ear/ear.ts';
import { createSentences } from './ear/web-speech-sentences.ts';
import type { EventLog, SyncedLog } from './offline/event-log.ts';
import { createSpeechRecognition } from './recogniser/speech-recognition.ts';
import { sayNotKept } from './screens/words.ts';
import { createIds } from './state/browser-ids.ts';
import { browserClock as clock } from './state/clock.ts';
import type { Ports } from './state/ports.ts';
import { createVoice } from './voice/browser-voice.ts';
import { createEarcons } from './voice/web-audio-earcons.ts';

/** Where the build puts the acoustic model. */
const MODEL_URL = '/model/en-us';

/** Printed once: 4 ms on a desk, and an ear opens again after every sentence. */
const NARROW: Record<Exclude<Expectation, 'anything'>, string> = {
  number: recogniserGrammar('number'),
  yesOrNo: recogniserGrammar('yesOrNo'),
};

/** The whole grammar with the names of the day, which change at most with the visit. */
function createWholeGrammar() {
  let printed = { names: NO_NAMES, text: recogniserGrammar('anything') };
  return {
    with(names: KnownNames): string {
      if (printed.names !== names) printed = { names, text: recogniserGrammar('anything', names) };
      return printed.text;
    },
    /** As it was listened for last. */
    current: (): string => printed.text,
  };
}

/** The session's ports in a browser. */
export function browserPorts(log: EventLog & Pick<SyncedLog, 'canWrite'>): Ports {
  return {
    log,
    writes: () => log.canWrite,
    clock,
    takeTurn,
    sayNotKept,
    ear: browserEar(),
    voice: createVoice({
      synthesis: 'speechSynthesis' in window ? window.speechSynthesis : undefined,
      utteranceOf: (text) => new SpeechSynthesisUtterance(text),
      clock,
    }),
    earcons: createEarcons({
      createContext: () => ('AudioContext' in window ? new AudioContext() : null),
      clock,
    }),
    ids: createIds(),
  };
}

function browserEar(): Ear {
  let onLevel: (level: number) => void = () => undefined;
  let onProgress: (fraction: number) => void = () => undefined;
  const whole = createWholeGrammar();
  const SpeechRecognition = createSpeechRecognition({
    modelUrl: MODEL_URL,
    pronunciations: PRONUNCIATIONS,
    expected: () => [whole.current(), ...Object.values(NARROW)],
    onLevel: (level) => onLevel(level),
    onProgress: ({ loadedBytes, totalBytes }) => onProgress(loadedBytes / totalBytes),
  });
  return createEar({
    devices: 'mediaDevices' in navigator ? navigator.mediaDevices : undefined,
    isSecure: isSecureContext,
    wakeLock: 'wakeLock' in navigator ? navigator.wakeLock : undefined,
    page: document,
    recogniser: createSentences(SpeechRecognition),
    clock,
    grammarFor: (expectation, names) =>
      expectation === 'anything' ? whole.with(names) : NARROW[expectation],
    onLevel: (report) => {
      onLevel = report;
    },
    onProgress: (report) => {
      onProgress = report;
    },
  });
}
