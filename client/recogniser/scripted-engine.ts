import type { Hearing } from '../../core/hearing/hearing.ts';
import type { Engine, EngineOutcome, EngineState, Finished } from './engine.ts';

/** An engine whose words are written beforehand: for tests of everything around an engine. */
export interface ScriptedEngine extends Engine {
  /** What was done to it, in order. */
  readonly calls: readonly string[];
  /** Says words of an utterance that still grows. */
  readonly guess: (words: string) => void;
  /** Makes the next finish() answer when called rather than at once. */
  readonly holdFinish: () => () => void;
}

export interface Script {
  /** Answers of finish(), one an utterance; afterwards nothing is heard. */
  readonly hearings?: readonly Hearing[];
  readonly load?: EngineOutcome;
  readonly grammar?: EngineOutcome;
  readonly finish?: Finished;
}

const READY: EngineOutcome = { kind: 'ready' };
const NOTHING: Hearing = { alternatives: [], rejected: 'nothing' };

export function createScriptedEngine(script: Script = {}): ScriptedEngine {
  const calls: string[] = [];
  const hearings = [...(script.hearings ?? [])];
  let state: EngineState = 'absent';
  let onPartial: ((words: string) => void) | null = null;
  let held: Promise<void> = Promise.resolve();
  return {
    calls,
    state: () => state,
    load: () => {
      calls.push('load');
      const outcome = script.load ?? READY;
      state = outcome.kind === 'ready' ? 'ready' : 'absent';
      return Promise.resolve(outcome);
    },
    setGrammar: (jsgf) => {
      calls.push(`setGrammar ${jsgf}`);
      return Promise.resolve(script.grammar ?? READY);
    },
    warm: (jsgf) => void calls.push(`warm ${jsgf}`),
    accept: (samples) => void calls.push(`accept ${samples.length}`),
    finish: async () => {
      calls.push('finish');
      await held;
      return script.finish ?? { kind: 'heard', hearing: hearings.shift() ?? NOTHING };
    },
    reset: () => void calls.push('reset'),
    listen: (listener) => {
      onPartial = listener;
    },
    dispose: () => void calls.push('dispose'),
    guess: (words) => onPartial?.(words),
    holdFinish: () => {
      let release: () => void = () => undefined;
      held = new Promise((resolve) => {
        release = resolve;
      });
      return () => release();
    },
  };
}
