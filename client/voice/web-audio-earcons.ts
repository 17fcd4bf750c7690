import { waitFor, type Clock } from '../state/clock.ts';
import type { EarconId, Earcons } from './voice.ts';

interface Tone {
  readonly fromHz: number;
  readonly toHz: number;
  readonly ms: number;
}

/** Told apart by their contour, not their pitch: a compressor's hum hides single pitches. Each under 200 ms. */
export const EARCONS: Record<EarconId, readonly Tone[]> = {
  listening: [{ fromHz: 520, toHz: 1040, ms: 140 }],
  kept: [{ fromHz: 740, toHz: 740, ms: 110 }],
  again: [
    { fromHz: 620, toHz: 590, ms: 80 },
    { fromHz: 440, toHz: 410, ms: 100 },
  ],
  timeUp: [
    { fromHz: 880, toHz: 880, ms: 60 },
    { fromHz: 660, toHz: 660, ms: 60 },
    { fromHz: 880, toHz: 880, ms: 70 },
  ],
};

const LOUDNESS = 0.25;
/** A tone that starts or stops at full loudness clicks. */
const EDGE_S = 0.012;

type Player = Pick<
  AudioContext,
  'state' | 'resume' | 'currentTime' | 'createOscillator' | 'createGain' | 'destination'
>;

export interface EarconPorts {
  /** Null where the browser has no Web Audio. */
  readonly createContext: () => Player | null;
  readonly clock: Clock;
}

export function createEarcons({ createContext, clock }: EarconPorts): Earcons {
  let context: Player | null = null;
  /** After a call iOS may leave it as it was during the call: this tone is missed, and the next one sounds. */
  const resume = (): void => {
    if (context && context.state !== 'running') void context.resume().catch(() => undefined);
  };
  return {
    unlock() {
      context ??= createContext();
      resume();
    },
    async play(which) {
      if (context?.state !== 'running') {
        resume();
        return;
      }
      playTones(context, EARCONS[which]);
      await waitFor(clock, durationMs(EARCONS[which]));
    },
  };
}

export function durationMs(tones: readonly Tone[]): number {
  return tones.reduce((sum, { ms }) => sum + ms, 0);
}

function playTones(context: Player, tones: readonly Tone[]): void {
  let startS = context.currentTime;
  for (const tone of tones) {
    playTone(context, tone, startS);
    startS += tone.ms / 1000;
  }
}

function playTone(context: Player, { fromHz, toHz, ms }: Tone, startS: number): void {
  const endS = startS + ms / 1000;
  const source = context.createOscillator();
  const gain = context.createGain();
  source.frequency.setValueAtTime(fromHz, startS);
  source.frequency.linearRampToValueAtTime(toHz, endS);
  gain.gain.setValueAtTime(0, startS);
  gain.gain.linearRampToValueAtTime(LOUDNESS, startS + EDGE_S);
  gain.gain.setValueAtTime(LOUDNESS, endS - EDGE_S);
  gain.gain.linearRampToValueAtTime(0, endS);
  source.connect(gain).connect(context.destination);
  source.start(startS);
  source.stop(endS);
}
