import type { Hearing } from '../../core/hearing/hearing.ts';
import { SpeechRecognitionEvent } from './events.ts';
import type { SpeechRecognitionPhrase } from './phrase.ts';
import {
  makeAlternative,
  makeResult,
  makeResultList,
  type SpeechRecognitionResult,
} from './results.ts';
import { weighByPhrases } from './weigh-by-phrases.ts';

/** The results of one session: finals stay, the guess at the end may change. */
export interface Transcript {
  /** Null when the guess is what it was. */
  readonly guess: (words: string) => SpeechRecognitionEvent | null;
  /** A final result, `nomatch` for what may not be acted on, null for no word at all. */
  readonly settle: (hearing: Hearing) => SpeechRecognitionEvent | null;
}

export function createTranscript(
  maxAlternatives: number,
  phrases: () => readonly SpeechRecognitionPhrase[],
): Transcript {
  const finals: SpeechRecognitionResult[] = [];
  let guessed = '';

  const toResult = (
    alternatives: readonly { readonly words: string; readonly confidence: number }[],
    isFinal: boolean,
  ): SpeechRecognitionResult => {
    // Transcripts put one after the other must read as one text.
    const lead = finals.length === 0 ? '' : ' ';
    const shown = alternatives.slice(0, Math.max(1, maxAlternatives));
    return makeResult(
      shown.map(({ words, confidence }) => makeAlternative(lead + words, confidence)),
      isFinal,
    );
  };
  const toEvent = (type: 'result' | 'nomatch', last: readonly SpeechRecognitionResult[]) =>
    new SpeechRecognitionEvent(type, {
      resultIndex: finals.length,
      results: makeResultList([...finals, ...last]),
    });

  return {
    guess: (words) => {
      if (words === guessed) return null;
      guessed = words;
      return toEvent('result', words === '' ? [] : [toResult([{ words, confidence: 0 }], false)]);
    },
    settle: (hearing) => {
      guessed = '';
      if (hearing.rejected === 'nothing') return null;
      const best = weighByPhrases(hearing.alternatives, phrases());
      const last = best.length === 0 ? [] : [toResult(best, true)];
      if (hearing.rejected !== undefined) return toEvent('nomatch', last);
      const event = toEvent('result', last);
      finals.push(...last);
      return event;
    },
  };
}
