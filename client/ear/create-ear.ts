import type { RoomNoise } from '../../core/hearing/earshot.ts';
import type { Clock } from '../state/clock.ts';
import type { HeldBack } from '../recogniser/capture.ts';
import type { Deafness } from './deafness.ts';
import type { Ear, EarNews, EarOpening, EngineChanged, Heard } from './ear.ts';
import { createMicrophone, type MicrophonePorts } from './microphone.ts';
import type { SentenceRecogniser } from './sentence-recogniser.ts';
import { Supervisor, type SupervisorPorts } from './supervisor.ts';
import { createWakeLock, type WakeLockPorts } from './wake-lock.ts';

export interface EarPorts extends Omit<MicrophonePorts, 'onTakenAway'>, WakeLockPorts {
  readonly recogniser: SentenceRecogniser;
  readonly clock: Clock;
  readonly grammarsFor: SupervisorPorts['grammarsFor'];
  readonly onLevel: Ear['onLevel'];
  readonly onProgress: Ear['onProgress'];
  readonly onEngineChange: (report: (change: EngineChanged) => void) => void;
  /** A sentence was waited for in vain, and not one sample came that was not zero. */
  readonly onDigitalSilence: (report: () => void) => void;
  /** The browser lets the page play nothing, or something else has the sound; null: it flows again. */
  readonly onHeldBack: (report: (why: HeldBack | null) => void) => void;
  readonly onNoise: (report: (noise: RoomNoise) => void) => void;
  /** What else the recogniser has to say of itself. */
  readonly onNews: (report: (news: EarNews) => void) => void;
}

const WHY_HELD_BACK: Record<HeldBack, Deafness> = {
  blocked: 'soundHeldBack',
  interrupted: 'interrupted',
};

/** Microphone, recogniser and screen lock as one ear. */
export function createEar(ports: EarPorts): Ear {
  let report: (heard: Heard) => void = () => undefined;
  let track: MediaStreamTrack | null = null;
  const silence = createSilenceWatch(() => report({ kind: 'news', news: 'silent' }));
  const tell = (heard: Heard): void => {
    if (heard.kind === 'words' || heard.kind === 'unclear') silence.broken();
    report(heard);
  };
  const supervisor = new Supervisor({ ...ports, report: tell });
  const microphone = createMicrophone({ ...ports, onTakenAway: () => takenAway() });
  const lock = createWakeLock(ports);

  const deafen = (why: Deafness): void => {
    supervisor.gate();
    lock.letGo();
    tell({ kind: 'deaf', why });
  };
  const takenAway = (): void => {
    track = null;
    deafen('takenAway');
  };
  const holding = createHoldingWatch({
    hears: () => supervisor.hears(),
    onHeldBack: (why) => deafen(WHY_HELD_BACK[why]),
    onBack: () => {
      lock.hold();
      tell({ kind: 'soundBack' });
    },
  });

  passOn(ports, supervisor, tell);
  ports.onDigitalSilence(silence.heard);
  ports.onHeldBack(holding.turned);
  return {
    async open() {
      holding.forget();
      lock.hold();
      silence.begin();
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
      holding.forget();
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

/** What the recogniser has to say of itself, and the page's going out of sight. */
function passOn(ports: EarPorts, supervisor: Supervisor, tell: (heard: Heard) => void): void {
  ports.onEngineChange(tell);
  ports.onNoise((noise) => tell({ kind: 'noise', noise }));
  ports.onNews((news) => tell({ kind: 'news', news }));
  ports.page.addEventListener('visibilitychange', () => {
    if (ports.page.visibilityState === 'hidden') supervisor.hide();
    else if (supervisor.show()) tell({ kind: 'news', news: 'back' });
  });
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

/**
 * Nobody is told who is not waiting to be heard, as while the page speaks or is out of sight: the next sentence finds out.
 * The end is told to whoever was told of the beginning, unless a press came between.
 */
function createHoldingWatch(ports: {
  readonly hears: () => boolean;
  readonly onHeldBack: (why: HeldBack) => void;
  readonly onBack: () => void;
}) {
  let isTold = false;
  return {
    turned: (why: HeldBack | null): void => {
      if (why === null && isTold) {
        isTold = false;
        ports.onBack();
      } else if (why !== null && ports.hears()) {
        isTold = true;
        ports.onHeldBack(why);
      }
    },
    forget: (): void => {
      isTold = false;
    },
  };
}

/**
 * Eight seconds each. A headset that gates its own noise gives zeros too while nobody speaks: 24 s of them, and never
 * again once it has let a word through.
 */
const SILENCES_BEFORE_TOLD = 3;

function createSilenceWatch(onSilent: () => void) {
  let silences = 0;
  return {
    begin: (): void => {
      silences = 0;
    },
    heard: (): void => {
      silences += 1;
      if (silences === SILENCES_BEFORE_TOLD) onSilent();
    },
    broken: (): void => {
      silences = Infinity;
    },
  };
}
