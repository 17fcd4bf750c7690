import type { RecognitionEvents } from './events.ts';
import type { SpeechGrammarList } from './grammars.ts';
import type { Handler } from './handlers.ts';
import type { SpeechRecognitionPhrase } from './phrase.ts';

/**
 * The standard's SpeechRecognition (Web Speech API, WebAudio/web-speech-api). Where browsers differ, the order of
 * events is Chromium's.
 */
export interface Recognition extends EventTarget {
  grammars: SpeechGrammarList;
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  unspokenPunctuation: boolean;
  maxAlternatives: number;
  /** Always so, whatever it is set to: no sound leaves the device. */
  processLocally: boolean;
  phrases: SpeechRecognitionPhrase[];

  /** Throws InvalidStateError while a session runs or when the track is not live sound. */
  start(audioTrack?: MediaStreamTrack): void;
  stop(): void;
  abort(): void;

  onaudiostart: Handler<'audiostart'>;
  onsoundstart: Handler<'soundstart'>;
  onspeechstart: Handler<'speechstart'>;
  onspeechend: Handler<'speechend'>;
  onsoundend: Handler<'soundend'>;
  onaudioend: Handler<'audioend'>;
  onresult: Handler<'result'>;
  onnomatch: Handler<'nomatch'>;
  onerror: Handler<'error'>;
  onstart: Handler<'start'>;
  onend: Handler<'end'>;

  addEventListener<Name extends keyof RecognitionEvents>(
    type: Name,
    listener: (this: Recognition, event: RecognitionEvents[Name]) => void,
    options?: boolean | AddEventListenerOptions,
  ): void;
  addEventListener(
    type: string,
    listener: EventListenerOrEventListenerObject | null,
    options?: boolean | AddEventListenerOptions,
  ): void;
}
