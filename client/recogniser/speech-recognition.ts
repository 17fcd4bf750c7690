import type { RoomNoise } from '../../core/hearing/earshot.ts';
import {
  ENDPOINTER_SETTINGS,
  type EndpointerSettings,
} from '../../core/hearing/endpointing-policy.ts';
import { afterDelay } from './browser/after-delay.ts';
import { fetchText } from './browser/fetch-text.ts';
import { createBrowserCapture } from './browser/browser-capture.ts';
import { documentPage } from './browser/document-page.ts';
import { createTaskQueue } from './browser/task-queue.ts';
import type { HeldBack } from './capture.ts';
import type { Engine, LoadProgress } from './engine.ts';
import type { RecogniserEnvironment } from './environment.ts';
import { createRecognitionClass, type SpeechRecognitionClass } from './recognition-class.ts';

export interface RecogniserOptions {
  /** What hears: `createBrowserEngines` gives ours. */
  readonly engine: Engine;
  /** Loudness 0..1, fifty times a second while a session hears; 0 when it stops. */
  readonly onLevel?: (level: number) => void;
  /** How far a voice stands above the room: once a second between sentences, and as one ends, before its words. */
  readonly onNoise?: (noise: RoomNoise) => void;
  readonly onProgress?: (progress: LoadProgress) => void;
  /** A session ended without speech, and without a single sample that was not zero. */
  readonly onDigitalSilence?: () => void;
  /**
   * No sound comes because the browser lets this page play nothing, or because something else has taken it; the session
   * ends. Null: it flows again.
   */
  readonly onHeldBack?: (why: HeldBack | null) => void;
  /** Grammars that sessions will switch between: made ready once the first session hears. */
  readonly expected?: RecogniserEnvironment['expected'];
  readonly endpointing?: Partial<EndpointerSettings>;
}

/**
 * The standard's SpeechRecognition over an engine of ours: always, whatever the browser has, as a browser's own may need
 * a network. What the standard has no place for (loudness, progress) goes through the options.
 */
export function createSpeechRecognition(options: RecogniserOptions): SpeechRecognitionClass {
  return createRecognitionClass(browserEnvironment(options));
}

function browserEnvironment(options: RecogniserOptions): RecogniserEnvironment {
  const onHeldBack = options.onHeldBack ?? (() => undefined);
  return {
    engine: options.engine,
    capture: createBrowserCapture(onHeldBack),
    page: documentPage,
    queueTask: createTaskQueue(),
    after: afterDelay,
    fetchText,
    onHidden: whenHidden,
    endpointing: { ...ENDPOINTER_SETTINGS, ...options.endpointing },
    expected: options.expected ?? (() => []),
    onLevel: options.onLevel ?? (() => undefined),
    onNoise: options.onNoise ?? (() => undefined),
    onDigitalSilence: options.onDigitalSilence ?? (() => undefined),
    onHeldBack,
    onProgress: options.onProgress ?? (() => undefined),
    room: {},
  };
}

function whenHidden(task: () => void): () => void {
  const check = (): void => {
    if (document.hidden) task();
  };
  document.addEventListener('visibilitychange', check);
  return () => document.removeEventListener('visibilitychange', check);
}
