import { SpeechGrammarList } from '../recogniser/grammars.ts';
import type { SpeechRecognitionClass } from '../recogniser/recognition-class.ts';
import type { RecogniserReport, SentenceRecogniser } from './sentence-recogniser.ts';

/** The ear's sentences through the standard interface: one object, one `start` a sentence. */
export function createSentences(SpeechRecognition: SpeechRecognitionClass): SentenceRecogniser {
  const recognition = new SpeechRecognition();
  recognition.lang = 'en-US';
  let report: (report: RecogniserReport) => void = () => undefined;
  recognition.addEventListener('audiostart', () => report({ kind: 'hearing' }));
  recognition.addEventListener('nomatch', () => report({ kind: 'noMatch' }));
  recognition.addEventListener('error', ({ error }) => report({ kind: 'error', error }));
  recognition.addEventListener('end', () => report({ kind: 'ended' }));
  recognition.addEventListener('result', ({ results }) =>
    report({ kind: 'words', words: results[0]?.[0]?.transcript ?? '' }),
  );
  return {
    async load() {
      const loaded = await SpeechRecognition.install({ langs: [recognition.lang] });
      if (!loaded) throw new Error('The recogniser’s files did not come.');
    },
    start(sentence) {
      const grammars = new SpeechGrammarList();
      grammars.addFromString(sentence.grammar);
      recognition.grammars = grammars;
      report = sentence.report;
      recognition.start(sentence.track);
    },
    abort: () => recognition.abort(),
  };
}
