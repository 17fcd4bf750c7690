import type { Clock } from '../state/clock.ts';
import type { SpareVoice } from './spare/spare-voice.ts';
import type { Voice } from './voice.ts';

export interface BothVoices {
  readonly browsers: Voice;
  readonly spare: SpareVoice;
  /** False where whoever works here wants replies on the screen only, rather than the spare voice fetched. */
  readonly wantsSpare: () => boolean;
  readonly clock: Clock;
}

/** A browser may list its voices only a while after it was asked first. */
const VOICES_LATE_MS = 2_000;

/** The browser's voice; and where it has none on the device, the page's own, which is fetched only then. */
export function createVoiceOfBoth({ browsers, spare, wantsSpare, clock }: BothVoices): Voice {
  let asked = false;
  const fetchWhereNone = (): void => {
    if (!browsers.canSpeak() && wantsSpare()) spare.load();
  };
  const current = (): Voice => (browsers.canSpeak() ? browsers : spare);
  return {
    canSpeak: () => current().canSpeak(),
    speak: (spoken) => (current().canSpeak() ? current().speak(spoken) : Promise.resolve()),
    hush() {
      browsers.hush();
      spare.hush();
    },
    unlock() {
      browsers.unlock();
      if (!browsers.canSpeak()) spare.unlock();
      if (asked) fetchWhereNone();
      else clock.after(VOICES_LATE_MS, fetchWhereNone);
      asked = true;
    },
  };
}
