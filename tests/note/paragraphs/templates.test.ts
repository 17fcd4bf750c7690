import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardPassage } from '../../../core/note/guard/guard-passage.ts';
import { passageText } from '../../../core/note/paragraphs/sentences.ts';
import { facts, passagesOf } from './random-facts.ts';

describe('the templates of a note’s passages', () => {
  it('say what the guard lets through, whatever the facts', () => {
    fc.assert(
      fc.property(facts, (all) => {
        for (const passage of passagesOf(all)) {
          const text = passageText(passage);
          const judged = guardPassage(text, passage);
          if (judged.kind === 'rejected') {
            expect.fail(`${text} (${judged.why}: ${judged.at})`);
          }
        }
      }),
      { numRuns: 2000, seed: 21 },
    );
  });
});
