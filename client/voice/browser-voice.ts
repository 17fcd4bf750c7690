import type { Clock } from '../state/clock.ts';
import { breathsOf } from './breaths.ts';
import { speechDurationMs } from './speech-duration.ts';
import type { Voice } from './voice.ts';

export interface VoicePorts {
  /** Absent where the browser cannot speak at all. */
  readonly synthesis:
    Pick<SpeechSynthesis, 'getVoices' | 'speak' | 'cancel' | 'resume'> | undefined;
  readonly utteranceOf: (text: string) => SpeechSynthesisUtterance;
  readonly clock: Clock;
  readonly rate?: number;
}

/** `end` has been seen missing: half as long again as it should take, then it counts as said. */
const OVERDUE = 1.5;
const OVERDUE_START_MS = 2_000;

/**
 * Speaks through the browser, by a voice on the device only: a remote voice would send what is said to its
 * maker, and is silent without a network.
 */
export function createVoice({ synthesis, utteranceOf, clock, rate = 1.05 }: VoicePorts): Voice {
  let speech = 0;
  let endBreath: (() => void) | null = null;
  synthesis?.getVoices(); // the first call makes Chromium load its list

  const sayBreath = (text: string): Promise<void> =>
    new Promise((resolve) => {
      const utterance = utteranceOf(text);
      const voice = localVoice(synthesis);
      const done = (): void => {
        callOff();
        endBreath = null;
        resolve();
      };
      const overdueMs = speechDurationMs(text, rate) * OVERDUE + OVERDUE_START_MS;
      const callOff = clock.after(overdueMs, () => {
        synthesis?.cancel();
        done();
      });
      endBreath = done;
      utterance.rate = rate;
      if (voice) utterance.voice = voice;
      utterance.lang = voice?.lang ?? 'en';
      utterance.onend = done;
      utterance.onerror = done;
      try {
        synthesis?.speak(utterance);
        synthesis?.resume();
      } catch (error) {
        // Whatever synthesis does, the ear behind it opens again.
        console.error(error);
        done();
      }
    });

  return {
    canSpeak: () => localVoice(synthesis) !== null,
    async speak(spoken) {
      const mine = (speech += 1);
      for (const breath of breathsOf(spoken)) {
        if (mine !== speech || !localVoice(synthesis)) return;
        await sayBreath(breath);
      }
    },
    hush() {
      speech += 1;
      synthesis?.cancel();
      endBreath?.();
    },
    unlock() {
      if (!synthesis || !localVoice(synthesis)) return;
      const silence = utteranceOf(' ');
      silence.volume = 0;
      synthesis.speak(silence);
    },
  };
}

function localVoice(synthesis: VoicePorts['synthesis']): SpeechSynthesisVoice | null {
  const local = (synthesis?.getVoices() ?? []).filter(
    (voice) => voice.localService && voice.lang.toLowerCase().startsWith('en'),
  );
  return local.find((voice) => voice.default) ?? local[0] ?? null;
}
