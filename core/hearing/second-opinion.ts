import { fit } from './confidence.ts';
import type { DecoderPort } from './decoder-port.ts';
import { textOf, withoutMarkers } from './to-hearing.ts';

/** Which of the wordings that one engine found another one holds for the likeliest. */
export interface Opinion {
  readonly words: string;
  /** Mean log probability of a frame (10 ms), 0 or below: see confidence.ts. */
  readonly fit: number;
}

/**
 * What a decoder thinks of sentences that may have been said: it chooses among them alone, in a twentieth of the time
 * that the whole grammar takes it. Null where it hears none of them, or cannot sound a word of theirs.
 */
export function opinionOn(
  decoder: DecoderPort,
  samples: Float32Array,
  wordings: readonly string[],
): Opinion | null {
  if (wordings.length === 0 || decoder.setGrammar(eitherOf(wordings)).length > 0) return null;
  decoder.start();
  decoder.acceptWhole(samples);
  decoder.stop();
  const words = withoutMarkers(decoder.words());
  return words.length === 0 ? null : { words: textOf(words), fit: fit(words) };
}

const eitherOf = (wordings: readonly string[]): string =>
  `#JSGF V1.0;\ngrammar wordings;\npublic <said> = ${wordings.join(' | ')} ;\n`;
