import type { RoomNoise } from '../../core/hearing/earshot.ts';
import type { WeightedGrammar } from '../../core/hearing/jsgf.ts';
import type { EndpointerSettings } from '../../core/hearing/endpointing-policy.ts';
import type { Capture, HeldBack } from './capture.ts';
import type { Engine, LoadProgress } from './engine.ts';
import type { HostPage } from './host-page.ts';

/** Everything a recogniser needs from outside, so that tests can count steps in place of waiting. */
export interface RecogniserEnvironment {
  readonly engine: Engine;
  readonly capture: Capture;
  readonly page: HostPage;
  /** Runs it later, in order: a task, never a microtask. */
  readonly queueTask: (task: () => void) => void;
  /** Runs it after a while unless the returned function is called. */
  readonly after: (delayMs: number, task: () => void) => () => void;
  readonly fetchText: (address: string) => Promise<string>;
  /** Calls when the page is hidden, as browsers then take the microphone; returns how to stop. */
  readonly onHidden: (task: () => void) => () => void;
  readonly endpointing: EndpointerSettings;
  /** The grammars that sessions will switch between, as each will be given them. */
  readonly expected: () => readonly (readonly WeightedGrammar[])[];
  readonly onLevel: (level: number) => void;
  /** Once a second between sentences, and as one ends. */
  readonly onNoise: (noise: RoomNoise) => void;
  /** A session waited in vain and got nothing but zeros: as from a muted headset, not from a quiet room. */
  readonly onDigitalSilence: () => void;
  /** No sound comes because it is held back: starting again will not help. Null: it flows again. */
  readonly onHeldBack: (why: HeldBack | null) => void;
  readonly onProgress: (progress: LoadProgress) => void;
  /** What the last session measured of the room, for the next one. */
  readonly room: { floorDb?: number };
}
