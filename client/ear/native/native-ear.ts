import type { Expectation } from '../../../core/language/context.ts';
import type { KnownNames } from '../../../core/language/names/known-names.ts';
import type { Clock } from '../../state/clock.ts';
import type { Ear, Heard } from '../ear.ts';
import { Supervisor } from '../supervisor.ts';
import { createWakeLock, type WakeLockPorts } from '../wake-lock.ts';
import type { NativePhrase } from './native-recognition.ts';
import { createNativeSentences, type NativePorts } from './native-sentences.ts';

export interface NativeEarPorts extends Omit<NativePorts, 'phrases'>, WakeLockPorts {
  readonly clock: Clock;
  /** Its sound for opening cannot be turned off: Android's cannot. */
  readonly beeps: boolean;
  /** What it is told to expect; null where it takes no phrases. */
  readonly phrasesFor: PhrasesFor | null;
}

export type PhrasesFor = (expectation: Expectation, names: KnownNames) => readonly NativePhrase[];

/** An ear whose microphone is the browser's own: ours must be closed, or on Android it would hear nothing. */
export interface NativeEar extends Pick<Ear, 'listen' | 'gate' | 'onHeard'> {
  readonly open: () => void;
  /** Resolves once the microphone is free. */
  readonly close: () => Promise<void>;
}

/** It keeps its session going by the supervisor that ours has; loudness it does not tell. */
export function createNativeEar(ports: NativeEarPorts): NativeEar {
  let report: (heard: Heard) => void = () => undefined;
  const lock = createWakeLock(ports);
  let wanted: readonly NativePhrase[] = [];
  const recogniser = createNativeSentences({ ...ports, phrases: () => wanted });
  const supervisor = new Supervisor({
    clock: ports.clock,
    recogniser,
    // What it can hear is not ours to say: any browser takes grammars, and none heeds them.
    grammarsFor: () => [],
    report: (heard) => report(heard),
    restsAfterSilence: ports.beeps,
  });
  ports.page.addEventListener('visibilitychange', () => {
    if (ports.page.visibilityState === 'hidden') supervisor.hide();
    else if (supervisor.show()) report({ kind: 'news', news: 'back' });
  });
  return {
    open: () => lock.hold(),
    listen(expectation, names) {
      wanted = ports.phrasesFor?.(expectation, names) ?? [];
      supervisor.listen({ track: null, expectation, names });
    },
    gate: () => supervisor.gate(),
    close() {
      supervisor.gate();
      lock.letGo();
      return recogniser.ended();
    },
    onHeard(listener) {
      report = listener;
    },
  };
}
