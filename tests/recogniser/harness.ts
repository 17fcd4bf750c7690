/** A recogniser whose tasks, sound and engine the test holds in its hands. */
import type { RoomNoise } from '../../core/hearing/earshot.ts';
import { ENDPOINTER_SETTINGS } from '../../core/hearing/endpointing-policy.ts';
import type { Hearing } from '../../core/hearing/hearing.ts';
import type { CaptureOutcome, CaptureSink, HeldBack } from '../../client/recogniser/capture.ts';
import type { RecogniserEnvironment } from '../../client/recogniser/environment.ts';
import {
  EVENT_NAMES,
  SpeechRecognitionErrorEvent,
  SpeechRecognitionEvent,
} from '../../client/recogniser/events.ts';
import { SpeechGrammarList } from '../../client/recogniser/grammars.ts';
import type { Recognition } from '../../client/recogniser/recognition.ts';
import {
  createRecognitionClass,
  type SpeechRecognitionClass,
} from '../../client/recogniser/recognition-class.ts';
import {
  createScriptedEngine,
  type Script,
  type ScriptedEngine,
} from '../support/scripted-engine.ts';

const RATE_HZ = 16_000;
export const GRAMMAR = '#JSGF V1.0;\ngrammar g;\npublic <said> = head one ninety two | yes;';

export const heard = (words: string, confidence = 0.9): Hearing => ({
  alternatives: [{ words, confidence, wordConfidences: [] }],
});

export const zeros = (ms: number): Float32Array => new Float32Array((RATE_HZ * ms) / 1000);
/** What a microphone gives in a still room: below the endpointer's least floor, and never nothing. */
export const quiet = (ms: number): Float32Array =>
  zeros(ms).map((_, index) => (index % 2 === 0 ? 1e-5 : -1e-5));
export const loud = (ms: number): Float32Array =>
  zeros(ms).map((_, index) => 0.3 * Math.sin((2 * Math.PI * 700 * index) / RATE_HZ));

export interface Bench {
  readonly SpeechRecognition: SpeechRecognitionClass;
  readonly recognition: Recognition;
  readonly engine: ScriptedEngine;
  readonly log: string[];
  readonly levels: number[];
  readonly noises: RoomNoise[];
  readonly room: { floorDb?: number };
  /** Runs the next task, and the promises that are due. */
  readonly step: () => Promise<void>;
  /** Runs every task and promise that is due, until none is left. */
  readonly settle: () => Promise<void>;
  /** Sound arriving, all at once; its tasks stay queued. */
  readonly arrive: (...portions: readonly Float32Array[]) => void;
  /** The same, and what follows from it. */
  readonly sound: (...portions: readonly Float32Array[]) => Promise<void>;
  readonly lose: () => void;
  readonly hide: () => void;
  /** The watchdog's time is up. */
  readonly timeUp: (delayMs?: number) => void;
  /** Makes the next session's page one whose window is gone, untouched, or forbidden to recognise. */
  readonly page: {
    active: boolean;
    touched: boolean;
    allowed: boolean;
    crossOrigin: boolean;
    language: string;
  };
  readonly digitalSilences: () => number;
  readonly openCaptures: () => number;
  readonly askedTracks: (MediaStreamTrack | null)[];
}

export interface BenchOptions extends Script {
  readonly expected?: readonly string[];
  readonly refuse?: Extract<CaptureOutcome, { kind: 'refused' }>['error'];
  /** In place of the one that the script makes. */
  readonly engine?: ScriptedEngine;
  readonly onDigitalSilence?: () => void;
  /** What holds the sound back; left out, the capture cannot tell. */
  readonly heldBack?: () => HeldBack | null;
  readonly onHeldBack?: (why: HeldBack | null) => void;
  readonly onNoise?: (noise: RoomNoise) => void;
  /** Called as the microphone opens; what it throws, opening rejects with. */
  readonly onOpening?: () => void;
}

export function createBench(options: BenchOptions = {}): Bench {
  const tasks: (() => void)[] = [];
  const log: string[] = [];
  const levels: number[] = [];
  const noises: RoomNoise[] = [];
  const askedTracks: (MediaStreamTrack | null)[] = [];
  const room = {};
  const engine = options.engine ?? createScriptedEngine(options);
  let sink: CaptureSink | null = null;
  let open = 0;
  let hidden: (() => void) | null = null;
  const timers: { readonly delayMs: number; readonly task: () => void }[] = [];
  const page = { active: true, touched: true, allowed: true, crossOrigin: false, language: '' };
  let digitalSilences = 0;

  const openCapture = (track: MediaStreamTrack | null, given: CaptureSink): CaptureOutcome => {
    askedTracks.push(track);
    if (options.refuse) return { kind: 'refused', error: options.refuse, message: 'why' };
    sink = given;
    open += 1;
    return {
      kind: 'open',
      close: () => {
        open -= 1;
      },
      ...(options.heldBack && { heldBack: options.heldBack }),
    };
  };
  const environment: RecogniserEnvironment = {
    engine,
    capture: {
      open: async (track, given) => {
        options.onOpening?.();
        await Promise.resolve();
        return openCapture(track, given);
      },
    },
    queueTask: (task) => void tasks.push(task),
    page: {
      isActive: () => page.active,
      wasTouched: () => page.touched,
      allowsOnDevice: () => page.allowed,
      isCrossOrigin: () => page.crossOrigin,
      language: () => page.language,
    },
    after: (delayMs, task) => {
      const timer = { delayMs, task };
      timers.push(timer);
      return () => {
        if (timers.includes(timer)) timers.splice(timers.indexOf(timer), 1);
      };
    },
    fetchText: (address) =>
      address === 'good.jsgf' ? Promise.resolve(GRAMMAR) : Promise.reject(new Error(address)),
    onHidden: (task) => {
      hidden = task;
      return () => {
        hidden = null;
      };
    },
    endpointing: ENDPOINTER_SETTINGS,
    expected: () => (options.expected ?? []).map((text) => [{ text, weight: 1 }]),
    onLevel: (level) => void levels.push(level),
    onNoise: (noise) => {
      noises.push(noise);
      options.onNoise?.(noise);
    },
    onDigitalSilence: () => {
      digitalSilences += 1;
      options.onDigitalSilence?.();
    },
    onHeldBack: (why) => options.onHeldBack?.(why),
    onProgress: () => undefined,
    room,
  };
  const settle = async (): Promise<void> => {
    for (let idle = 0; idle < 20; idle += 1) {
      await Promise.resolve();
      const task = tasks.shift();
      if (task === undefined) continue;
      idle = 0;
      task();
    }
  };
  const step = async (): Promise<void> => {
    for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
    tasks.shift()?.();
  };
  const arrive = (...portions: readonly Float32Array[]): void => {
    for (const portion of portions) sink?.onSamples(portion);
  };
  const SpeechRecognition = createRecognitionClass(environment);
  const recognition = new SpeechRecognition();
  recognition.grammars = grammarList();
  logEvents(recognition, log);
  return {
    SpeechRecognition,
    recognition,
    engine,
    log,
    levels,
    noises,
    room,
    step,
    settle,
    arrive,
    sound: async (...portions) => {
      arrive(...portions);
      await settle();
    },
    lose: () => sink?.onLost(),
    hide: () => hidden?.(),
    timeUp: (delayMs) => {
      const due = timers.find((timer) => delayMs === undefined || timer.delayMs === delayMs);
      if (due !== undefined) timers.splice(timers.indexOf(due), 1);
      due?.task();
    },
    page,
    digitalSilences: () => digitalSilences,
    openCaptures: () => open,
    askedTracks,
  };
}

export function grammarList(text = GRAMMAR): SpeechGrammarList {
  const list = new SpeechGrammarList();
  list.addFromString(text);
  return list;
}

/** `result(1) a|b*` is a result whose first change is at 1, with a final a and a guess b. */
export function logEvents(recognition: Recognition, log: string[], name = ''): void {
  for (const type of EVENT_NAMES) {
    recognition.addEventListener(type, (event) => log.push(name + describe(event)));
  }
}

function describe(event: Event): string {
  if (event instanceof SpeechRecognitionErrorEvent) return `error:${event.error}`;
  if (!(event instanceof SpeechRecognitionEvent)) return event.type;
  const results = [...event.results].map(
    (result) => `${result[0]?.transcript ?? ''}${result.isFinal ? '' : '*'}`,
  );
  return `${event.type}(${event.resultIndex}) ${results.join('|')}`;
}
