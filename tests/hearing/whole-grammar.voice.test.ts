import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { heardGrammars } from '../../core/language/heard/recogniser-grammar.ts';
import { tokenise } from '../../core/language/words/tokenise.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { createNodeHearing, type NodeHearing } from '../../server/hearing/node-hearing.ts';
import { speak } from './signals.ts';

/** At least this many of ten, by a voice made from a recorded person, with the whole grammar. */
const AT_LEAST = 8;
const LINES = [
  'head one ninety two',
  'suction fourteen',
  'box forty four',
  'ambient eighty eight',
  'what should head be',
  'how far off am i',
  "condenser's plugged",
  'i brushed the condenser',
  'mark this as after',
  'read me the note',
];
const PATIENCE_MS = 120_000;

describe('the whole grammar', { timeout: PATIENCE_MS }, () => {
  let hearing: NodeHearing;
  beforeAll(async () => {
    hearing = await createNodeHearing({
      grammars: heardGrammars('anything'),
      pronunciations: PRONUNCIATIONS,
    });
  }, PATIENCE_MS);
  afterAll(() => hearing.dispose());

  /** What a text says, however its contractions are written. */
  const said = (text: string): string => JSON.stringify(tokenise(text).map((token) => token.text));

  it.each(['rms', 'slt'] as const)('hears eight of ten typical lines by %s', (voice) => {
    const missed = LINES.filter((line) => {
      const heard = hearing.hear(speak(line, voice));
      const words = heard.rejected === undefined ? heard.alternatives[0]?.words : undefined;
      return said(words ?? '') !== said(line);
    });
    expect(missed.length).toBeLessThanOrEqual(LINES.length - AT_LEAST);
  });

  it('takes no stray sentence for one of ours', () => {
    const stray = ['my uncle went fishing on saturday', 'the game last night was terrible'];
    expect(stray.map((line) => hearing.hear(speak(line, 'slt')).rejected)).not.toContain(undefined);
  });
});
