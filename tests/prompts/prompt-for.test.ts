import { describe, expect, it } from 'vitest';
import { guard } from '../../core/replies/guard/guard.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import { EXAMPLES } from '../../prompts/examples.ts';
import { promptFor, promptText } from '../../prompts/prompt-for.ts';

const SENTENCE = 'Head is 252 psi, should be 174 psi: 78 psi over.';

describe('what a model is given', () => {
  it.each(EXAMPLES)('shows it only what the guard lets through: $phrasing', (example) => {
    expect(guard(example.phrasing, example.verdict)).toEqual({ kind: 'passed' });
    expect(example.phrasing).not.toBe(verdictSaid(example.verdict).text);
  });

  it.each(EXAMPLES)(
    'puts the example most like a $verdict.answer last',
    ({ verdict, phrasing }) => {
      const messages = promptFor(verdict, SENTENCE);
      expect(messages.at(-1)).toEqual({ role: 'user', content: SENTENCE });
      expect(messages.at(-2)).toEqual({ role: 'assistant', content: phrasing });
    },
  );

  it('takes turns, as a model that converses must be given them', () => {
    const [task, ...turns] = promptFor({ kind: 'needs', about: null, need: 'before' }, SENTENCE);
    expect(task?.role).toBe('system');
    expect(turns.map(({ role }) => role)).toEqual(
      turns.map((_, index) => (index % 2 === 0 ? 'user' : 'assistant')),
    );
    expect(turns).toHaveLength(2 * EXAMPLES.length + 1);
  });

  it('ends the plain text where the answer begins', () => {
    const text = promptText(promptFor({ kind: 'needs', about: null, need: 'before' }, SENTENCE));
    expect(text.endsWith(`\nGiven: ${SENTENCE}\nSaid:`)).toBe(true);
  });
});
