import { SpeechGrammarList } from '../recogniser/grammars.ts';
import type { SpeechRecognitionClass } from '../recogniser/recognition-class.ts';
import type { Read } from './voice-teaching.ts';

/** One prompt at a time through the standard interface, with a grammar of that prompt alone. */
export interface PromptReader {
  readonly read: (
    prompt: string,
    sound: { readonly track: MediaStreamTrack; readonly onHearing: () => void },
  ) => Promise<Read>;
  readonly stop: () => void;
}

export function createPromptReader(SpeechRecognition: SpeechRecognitionClass): PromptReader {
  const recognition = new SpeechRecognition();
  recognition.lang = 'en-US';
  let read: Read = 'silence';
  let stopped = false;
  let onHearing: () => void = () => undefined;
  let resolve: (read: Read) => void = () => undefined;
  recognition.addEventListener('audiostart', () => onHearing());
  // Whether it is the prompt is for the lesson to tell: an accent may be why it is not known by now.
  recognition.addEventListener('speechend', () => {
    read = 'spoken';
  });
  recognition.addEventListener('error', ({ error }) => {
    if (error !== 'no-speech') read = 'failed';
  });
  recognition.addEventListener('end', () => resolve(stopped ? 'stopped' : read));
  return {
    read: (prompt, sound) =>
      new Promise((settle) => {
        read = 'silence';
        stopped = false;
        onHearing = sound.onHearing;
        resolve = settle;
        const grammars = new SpeechGrammarList();
        grammars.addFromString(`#JSGF V1.0; grammar prompt; public <prompt> = ${prompt} ;`);
        recognition.grammars = grammars;
        recognition.start(sound.track);
      }),
    stop: () => {
      stopped = true;
      recognition.abort();
    },
  };
}
