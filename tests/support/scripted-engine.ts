import type { Hearing } from '../../core/hearing/hearing.ts';
import type { Standing } from '../../core/hearing/standing.ts';
import type {
  Engine,
  EngineOutcome,
  EngineState,
  Finished,
  OnPartial,
  OnVoice,
} from '../../client/recogniser/engine.ts';

/** An engine whose words are written beforehand. */
export interface ScriptedEngine extends Engine {
  /** What was done to it, in order. */
  readonly calls: readonly string[];
  /** Says words of an utterance that still grows, and what may follow them. */
  readonly guess: (words: string, standing?: Standing) => void;
  /** Says what a detector makes of the sound so far; where it never does, there is none. */
  readonly voice: OnVoice;
  /** Makes the next finish() answer when called rather than at once. */
  readonly holdFinish: () => () => void;
}

export interface Script {
  /** Answers of finish(), one an utterance; afterwards nothing is heard. */
  readonly hearings?: readonly Hearing[];
  /** In place of written answers: hears the sound of the utterance so far by the grammar that is set. */
  readonly hear?: (sound: readonly Float32Array[], jsgf: string) => Hearing;
  readonly load?: EngineOutcome | (() => EngineOutcome);
  readonly grammar?: EngineOutcome | ((jsgf: string) => EngineOutcome);
  readonly finish?: Finished;
}

const READY: EngineOutcome = { kind: 'ready' };
const NOTHING: Hearing = { alternatives: [], rejected: 'nothing' };
const ABSENT = { kind: 'failed', message: 'The engine is not loaded.' } as const;

export function createScriptedEngine(script: Script = {}): ScriptedEngine {
  const calls: string[] = [];
  let state: EngineState = 'absent';
  let onPartial: OnPartial | null = null;
  let onVoice: OnVoice | null = null;
  let held: Promise<void> = Promise.resolve();
  const utterance = createUtterance(script);
  return {
    calls,
    watch: (listener) => {
      onVoice = listener;
      return { accept: () => undefined, close: () => (onVoice = null) };
    },
    state: () => state,
    load: () => {
      calls.push('load');
      const outcome = state === 'ready' ? READY : outcomeOf(script.load, '');
      state = outcome.kind === 'ready' ? 'ready' : 'absent';
      return Promise.resolve(outcome);
    },
    setGrammar: (jsgf) => {
      calls.push(`setGrammar ${jsgf}`);
      const outcome = state === 'ready' ? outcomeOf(script.grammar, jsgf) : ABSENT;
      if (outcome.kind === 'ready') utterance.setGrammar(jsgf);
      return Promise.resolve(outcome);
    },
    warm: (jsgf) => void calls.push(`warm ${jsgf}`),
    accept: (samples) => {
      calls.push(`accept ${samples.length}`);
      const words = utterance.accept(samples);
      if (words !== undefined) onPartial?.(words, null);
    },
    finish: async () => {
      calls.push('finish');
      const finished = state === 'ready' ? utterance.finish() : ABSENT;
      await held;
      return finished;
    },
    reset: () => {
      calls.push('reset');
      utterance.forget();
    },
    listen: (listener) => {
      onPartial = listener;
    },
    dispose: () => {
      calls.push('dispose');
      state = 'absent';
    },
    guess: (words, standing) => onPartial?.(words, standing ?? null),
    voice: (chances, untilSample) => onVoice?.(chances, untilSample),
    holdFinish: () => {
      let release: () => void = () => undefined;
      held = new Promise((resolve) => {
        release = resolve;
      });
      return () => release();
    },
  };
}

/** What is heard of one utterance after the other, as it is written. */
function createUtterance(script: Script) {
  const hearings = [...(script.hearings ?? [])];
  let grammar = '';
  let sound: Float32Array[] = [];
  const soFar = (): Hearing =>
    sound.length === 0 ? NOTHING : (script.hear?.(sound, grammar) ?? NOTHING);
  return {
    setGrammar: (jsgf: string): void => {
      grammar = jsgf;
      sound = [];
    },
    accept: (samples: Float32Array): string | undefined => {
      sound.push(samples);
      return script.hear && soFar().alternatives[0]?.words;
    },
    finish: (): Finished => {
      const hearing = script.hear ? soFar() : (hearings.shift() ?? NOTHING);
      sound = [];
      return script.finish ?? { kind: 'heard', hearing };
    },
    forget: (): void => {
      sound = [];
    },
  };
}

function outcomeOf(
  written: EngineOutcome | ((jsgf: string) => EngineOutcome) | undefined,
  jsgf: string,
): EngineOutcome {
  return typeof written === 'function' ? written(jsgf) : (written ?? READY);
}
