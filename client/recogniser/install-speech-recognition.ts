import { SpeechRecognitionErrorEvent, SpeechRecognitionEvent } from './events.ts';
import { SpeechGrammar, SpeechGrammarList } from './grammars.ts';
import { SpeechRecognitionPhrase } from './phrase.ts';
import type { SpeechRecognitionClass } from './recognition-class.ts';
import {
  SpeechRecognitionAlternative,
  SpeechRecognitionResult,
  SpeechRecognitionResultList,
} from './results.ts';

const ANYWHERE = { SpeechGrammar, SpeechGrammarList };
const SECURE_ONLY = {
  SpeechRecognitionAlternative,
  SpeechRecognitionErrorEvent,
  SpeechRecognitionEvent,
  SpeechRecognitionPhrase,
  SpeechRecognitionResult,
  SpeechRecognitionResultList,
};

/** Names that the standard dropped. Left in place they would go on leading to the browser's own recogniser. */
const PREFIXED = [
  'webkitSpeechGrammar',
  'webkitSpeechGrammarList',
  'webkitSpeechRecognition',
  'webkitSpeechRecognitionError',
  'webkitSpeechRecognitionEvent',
];

/**
 * Makes this recogniser the global one, with every interface that belongs to it: as the standard says, outside a
 * secure context the grammars alone. Load it in each window that shall have it: the objects are of the window whose
 * code made them.
 */
export function installSpeechRecognition(
  target: object,
  SpeechRecognition: SpeechRecognitionClass,
): void {
  const secureOnly = { ...SECURE_ONLY, SpeechRecognition };
  remove(target, [...PREFIXED, ...Object.keys(secureOnly)]);
  const secure = Reflect.get(target, 'isSecureContext') !== false;
  const interfaces = { ...ANYWHERE, ...(secure ? secureOnly : {}) };
  for (const [name, value] of Object.entries(interfaces)) {
    Object.defineProperty(target, name, {
      value,
      writable: true,
      enumerable: false,
      configurable: true,
    });
  }
  removeWhenGone(target, Object.keys(interfaces));
}

function remove(target: object, names: readonly string[]): void {
  for (const name of names) Reflect.deleteProperty(target, name);
}

/** A browser takes its own from the window of a frame that was taken out; a page that may come back keeps them. */
function removeWhenGone(target: object, names: readonly string[]): void {
  if (!(target instanceof EventTarget)) return;
  target.addEventListener('pagehide', (event) => {
    if (Reflect.get(event, 'persisted') !== true) remove(target, names);
  });
}
