import type { WeightedGrammar } from '../../core/hearing/jsgf.ts';
import type { Alternative } from '../../core/language/choose-understanding.ts';
import { SpeechGrammarList } from '../recogniser/grammars.ts';
import type { SpeechRecognitionClass } from '../recogniser/recognition-class.ts';
import type { SpeechRecognitionResult } from '../recogniser/results.ts';
import type { RecogniserReport, SentenceRecogniser } from './sentence-recogniser.ts';

/** Ours: what a number is misheard as stands among the first few or not at all, and each is read by every rule. */
const MOST_ALTERNATIVES = 5;

const lists = new WeakMap<readonly WeightedGrammar[], SpeechGrammarList>();

/** Made once: as an address a text of 0.3 MB takes some milliseconds to write. */
function listOf(grammars: readonly WeightedGrammar[]): SpeechGrammarList {
  const known = lists.get(grammars);
  if (known !== undefined) return known;
  const list = new SpeechGrammarList();
  for (const { text, weight } of grammars) list.addFromString(text, weight);
  lists.set(grammars, list);
  return list;
}

/** The ear's sentences through the standard interface: one object, one `start` a sentence. */
export function createSentences(SpeechRecognition: SpeechRecognitionClass): SentenceRecogniser {
  const recognition = new SpeechRecognition();
  recognition.lang = 'en-US';
  recognition.maxAlternatives = MOST_ALTERNATIVES;
  recognition.interimResults = true;
  let report: (report: RecogniserReport) => void = () => undefined;
  recognition.addEventListener('audiostart', () => report({ kind: 'hearing' }));
  recognition.addEventListener('nomatch', () => report({ kind: 'noMatch' }));
  recognition.addEventListener('error', ({ error }) => report({ kind: 'error', error }));
  recognition.addEventListener('end', () => report({ kind: 'ended' }));
  recognition.addEventListener('result', ({ results }) => {
    const [result] = results;
    const alternatives = alternativesIn(result);
    if (result?.isFinal === true) report({ kind: 'words', alternatives });
    else report({ kind: 'guess', words: alternatives[0]?.words.trim() ?? '' });
  });
  return {
    async load() {
      const loaded = await SpeechRecognition.install({ langs: [recognition.lang] });
      if (!loaded) throw new Error('The recogniser’s files did not come.');
    },
    start(sentence) {
      recognition.grammars = listOf(sentence.grammars);
      report = sentence.report;
      if (sentence.track === null) recognition.start();
      else recognition.start(sentence.track);
    },
    abort: () => recognition.abort(),
  };
}

const alternativesIn = (result: SpeechRecognitionResult | undefined): readonly Alternative[] =>
  [...(result ?? [])].map(({ transcript, confidence }) => ({ words: transcript, confidence }));
