import { SpeechGrammarList } from '../recogniser/grammars.ts';
import type { SpeechRecognitionClass } from '../recogniser/recognition-class.ts';
import type { Read } from './voice-teaching.ts';

interface PromptSound {
  readonly track: MediaStreamTrack;
  /** Called when sound flows: nothing said before is heard. */
  readonly onHearing: () => void;
}

/** One prompt at a time through the standard interface, with a grammar of that prompt alone. */
export interface PromptReader {
  readonly read: (prompt: string, sound: PromptSound) => Promise<Read>;
  readonly stop: () => void;
}

export function createPromptReader(SpeechRecognition: SpeechRecognitionClass): PromptReader {
  const recognition = new SpeechRecognition();
  recognition.lang = 'en-US';
  let heard: Read = 'silence';
  let stopped = false;
  const isStopped = (): boolean => stopped;
  let onHearing: () => void = () => undefined;
  let resolve: (read: Read) => void = () => undefined;
  /** A session may start only when the one before has ended. */
  let running: Promise<unknown> = Promise.resolve();
  recognition.addEventListener('audiostart', () => onHearing());
  // Whether it is the prompt is for the lesson to tell: an accent may be why it is not known by now.
  recognition.addEventListener('speechend', () => {
    heard = 'spoken';
  });
  recognition.addEventListener('error', ({ error }) => {
    if (error !== 'no-speech') heard = 'failed';
  });
  recognition.addEventListener('end', () => resolve(heard));
  const start = (prompt: string, sound: PromptSound): Promise<Read> => {
    heard = 'silence';
    onHearing = sound.onHearing;
    const grammars = new SpeechGrammarList();
    grammars.addFromString(`#JSGF V1.0; grammar prompt; public <prompt> = ${prompt} ;`);
    recognition.grammars = grammars;
    return new Promise((settle) => {
      resolve = settle;
      recognition.start(sound.track);
    });
  };
  return {
    read: async (prompt, sound) => {
      stopped = false;
      await running;
      if (isStopped()) return 'stopped';
      const reading = start(prompt, sound);
      running = reading.catch(() => undefined);
      return reading.then(
        (read) => (isStopped() ? 'stopped' : read),
        () => 'failed',
      );
    },
    stop: () => {
      stopped = true;
      recognition.abort();
    },
  };
}
