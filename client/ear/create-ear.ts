import type { Clock } from '../state/clock.ts';
import type { Ear, EarOpening, EngineChanged, Heard } from './ear.ts';
import { createMicrophone, type MicrophonePorts } from './microphone.ts';
import type { SentenceRecogniser } from './sentence-recogniser.ts';
import { Supervisor, type SupervisorPorts } from './supervisor.ts';
import { createWakeLock, type WakeLockPorts } from './wake-lock.ts';

export interface EarPorts extends Omit<MicrophonePorts, 'onTakenAway'>, WakeLockPorts {
  readonly recogniser: SentenceRecogniser;
  readonly clock: Clock;
  readonly grammarFor: SupervisorPorts['grammarFor'];
  readonly onLevel: Ear['onLevel'];
  readonly onProgress: Ear['onProgress'];
  readonly onEngineChange: (report: (change: EngineChanged) => void) => void;
}

/** Microphone, recogniser and screen lock as one ear. */
export function createEar(ports: EarPorts): Ear {
  let report: (heard: Heard) => void = () => undefined;
  let track: MediaStreamTrack | null = null;
  const tell = (heard: Heard): void => report(heard);
  const supervisor = new Supervisor({ ...ports, report: tell });
  const microphone = createMicrophone({ ...ports, onTakenAway: () => takenAway() });
  const lock = createWakeLock(ports);

  const takenAway = (): void => {
    track = null;
    supervisor.gate();
    lock.letGo();
    tell({ kind: 'deaf', why: 'takenAway' });
  };

  ports.onEngineChange(tell);
  relistenOnReturn(ports.page, supervisor);
  return {
    async open() {
      lock.hold();
      const opening = await microphone.open();
      if (opening.kind === 'open') track = opening.track;
      const loaded = opening.kind === 'open' ? await load(ports.recogniser) : opening;
      if (loaded.kind === 'deaf') lock.letGo();
      return loaded;
    },
    listen(expectation, names) {
      if (track) supervisor.listen({ track, expectation, names });
    },
    gate: () => supervisor.gate(),
    close() {
      supervisor.gate();
      microphone.close();
      lock.letGo();
      track = null;
    },
    onHeard(listener) {
      report = listener;
    },
    onLevel: ports.onLevel,
    onProgress: ports.onProgress,
  };
}

async function load(recogniser: SentenceRecogniser): Promise<EarOpening> {
  try {
    await recogniser.load();
    return { kind: 'open' };
  } catch (error) {
    console.error(error);
    return { kind: 'deaf', why: 'recogniserFailed' };
  }
}

/** A hidden page's audio stands still; what was half heard then is not worth finishing. */
function relistenOnReturn(page: EarPorts['page'], supervisor: Supervisor): void {
  page.addEventListener('visibilitychange', () => {
    if (page.visibilityState === 'visible') supervisor.startAgain();
  });
}
