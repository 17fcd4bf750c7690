import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guard } from '../../core/replies/guard/guard.ts';
import { suits } from '../../prompts/corpus/corpus-line.ts';
import { parseCorpus } from '../../prompts/corpus/parse-corpus.ts';
import { fill } from '../../prompts/record/fill.ts';
import { recordOf } from '../../prompts/record/record-of.ts';
import { readCorpus } from '../support/corpus.ts';
import { circuitAnswer } from '../replies/random-circuit-verdicts.ts';
import { settlingAnswer } from '../replies/random-settling-verdicts.ts';
import { known } from '../replies/random-verdicts.ts';
import { visitAnswer } from '../replies/random-visit-verdicts.ts';

const EACH = 12;
const LINES = readCorpus('replies');

/** Some have many sides that are there or not: more of them, so that each line meets a verdict it suits. */
const VERDICTS = [
  ...fc.sample(known, { numRuns: 6000, seed: 8 }),
  ...fc.sample(settlingAnswer, { numRuns: 6000, seed: 8 }),
  ...fc.sample(circuitAnswer, { numRuns: 3000, seed: 8 }),
  ...fc.sample(visitAnswer, { numRuns: 8000, seed: 8 }),
];
const TOLD = VERDICTS.flatMap((verdict) => {
  const record = recordOf(verdict);
  return record ? [{ verdict, record }] : [];
});

describe('the corpus of replies', () => {
  it.each([...new Set(LINES.map(({ kind }) => kind))])(
    'says what the guard lets through: %s',
    (kind) => {
      const ofKind = TOLD.filter(({ record }) => record.kind === kind);
      const faults = LINES.filter((line) => line.kind === kind).flatMap((line) => {
        const suited = ofKind.filter(({ record }) => suits(line, record)).slice(0, EACH);
        if (suited.length === 0) return [`suits no verdict: ${line.sentence}`];
        return suited.flatMap(({ verdict, record }) => {
          const text = fill(line.sentence, record)?.text ?? '';
          const judged = guard(text, verdict);
          return judged.kind === 'passed'
            ? []
            : [`${line.sentence}: ${text} (${judged.why} ${judged.at})`];
        });
      });
      expect(faults).toEqual([]);
    },
  );

  it('has a dozen ways to put nineteen answers of twenty', () => {
    const some = TOLD.slice(0, 2000);
    const ways = some.map(({ record }) => LINES.filter((line) => suits(line, record)).length);
    const rich = ways.filter((count) => count >= 12).length;
    console.log(
      `corpus: ${LINES.length} lines; ${rich} of ${some.length} answers have a dozen ways`,
    );
    expect(rich / some.length).toBeGreaterThanOrEqual(0.95);
  });

  it.each([
    ['*\tshort', 'write what it needs'],
    ['*\tlong\t{about} is {measured}.', 'no register long'],
    ['*\tshort\t{about} is 9.', 'no digits'],
    ['*\tshort\t{about} is “high”.', 'no "“"'],
    ['*\tshort\t{about} is {measured}', 'full stop'],
    ['*\tshort\t{about} is {measured} .', 'one space after a mark'],
  ])('tells what is wrong with %j', (line, message) => {
    const parsed = parseCorpus('value', `# a comment\n${line}\n`);
    expect(parsed).toMatchObject({ kind: 'unusable', line: 2 });
    expect(parsed.kind === 'unusable' ? parsed.message : '').toContain(message);
  });

  it('takes a line about "over" the other way round too', () => {
    const line = 'over alongsideOver\tshort\t{about} is high: above {low}, {difference} over.';
    expect(parseCorpus('compare', line)).toMatchObject({
      lines: [
        { needs: ['over', 'alongsideOver'] },
        {
          needs: ['under', 'alongsideUnder'],
          sentence: '{about} is low: below {low}, {difference} under.',
        },
      ],
    });
  });
});
