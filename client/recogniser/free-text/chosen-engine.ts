import type { Engine, EngineOutcome, LoadProgress, OnPartial, VoiceWatch } from '../engine.ts';

export interface ChosenEngineOptions {
  /** Always there. */
  readonly own: Engine;
  /** The other one, where it is wanted; the same object as long as the same one is. */
  readonly other: () => Engine | null;
  /** It did not come, and the own one hears. */
  readonly onFailed: (message: string) => void;
}

export interface ChosenEngine extends Engine {
  /** Tries the other one again at the next session, though it failed. */
  readonly forgive: () => void;
}

const UNWATCHED: VoiceWatch = { accept: () => undefined, close: () => undefined };

/** One engine or another, as chosen when a session begins; the own one wherever the other fails to load. */
export function createChosenEngine({ own, other, onFailed }: ChosenEngineOptions): ChosenEngine {
  let current = own;
  let failed: Engine | null = null;
  let onPartial: OnPartial | null = null;

  const turnTo = (next: Engine): void => {
    if (next !== current) current.listen(null);
    current = next;
    current.listen(onPartial);
  };
  const load = async (onProgress?: (progress: LoadProgress) => void): Promise<EngineOutcome> => {
    const wanted = other();
    if (wanted !== null && wanted !== failed) {
      const outcome = await wanted.load(onProgress);
      if (outcome.kind === 'ready') {
        turnTo(wanted);
        return outcome;
      }
      failed = wanted;
      onFailed(outcome.message);
    }
    turnTo(own);
    return own.load(onProgress);
  };

  return {
    forgive: () => {
      failed = null;
    },
    load,
    setGrammar: (jsgf) => current.setGrammar(jsgf),
    warm: (jsgf) => current.warm(jsgf),
    accept: (samples) => current.accept(samples),
    finish: () => current.finish(),
    reset: () => current.reset(),
    listen: (listener) => {
      onPartial = listener;
      current.listen(listener);
    },
    watch: (onVoice) => current.watch?.(onVoice) ?? UNWATCHED,
    state: () => current.state(),
    dispose: () => current.dispose(),
  };
}
