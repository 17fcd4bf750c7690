import type { Expectation } from '../core/language/context.ts';
import { recogniserGrammar } from '../core/language/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../core/language/vocabulary/pronunciations.ts';
import { takeTurn } from '../core/turn/take-turn.ts';
import { createEar } from './ear/create-ear.ts';
import type { Ear } from './ear/ear.ts';
import { createSentences } from './ear/web-speech-sentences.ts';
import type { EventLog } from './offline/event-log.ts';
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
const GRAMMARS: Record<Expectation, string> = {
  anything: recogniserGrammar('anything'),
  number: recogniserGrammar('number'),
  yesOrNo: recogniserGrammar('yesOrNo'),
};

/** The session's ports in a browser. */
export function browserPorts(log: EventLog): Ports {
  return {
    log,
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
  const SpeechRecognition = createSpeechRecognition({
    modelUrl: MODEL_URL,
    pronunciations: PRONUNCIATIONS,
    expected: Object.values(GRAMMARS),
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
    grammarFor: (expectation) => GRAMMARS[expectation],
    onLevel: (report) => {
      onLevel = report;
    },
    onProgress: (report) => {
      onProgress = report;
    },
  });
}
