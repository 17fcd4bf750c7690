import type { Verdict } from '../verdict.ts';
import { wilson } from '../wilson.ts';
import type { EnrolledVoiceHeard, Pair } from './bench-enrolment.ts';

/** Lines of text on one voice: a row for each condition, and a last one on what it learnt. */
export function reportVoice(heard: EnrolledVoiceHeard): readonly string[] {
  const { voice, acquaintance, pairs, conclusion, learnt, talk, secondsToLearn } = heard;
  const conditions = [...new Set(pairs.map(({ condition }) => condition))];
  const gain =
    conclusion.kind === 'tooFew'
      ? ''
      : `${conclusion.gain.before.toFixed(2)} → ${conclusion.gain.after.toFixed(2)} nats a sound on those held back`;
  return [
    ...conditions.map((condition) =>
      row([
        `${voice} (${acquaintance})`,
        condition,
        ...cells(pairs.filter((each) => each.condition === condition)),
      ]),
    ),
    `  ${learnt} prompts learnt in ${secondsToLearn.toFixed(1)} s of one core; ${conclusion.kind}; ${gain}; ` +
      `readings in talk: ${talk.before} → ${talk.after} of ${talk.of}`,
  ];
}

export const ENROLMENT_HEAD = [
  'shares in %, with 95 % intervals by Wilson; right: understood as said, asked about or not; ± sentences that became',
  'right or wrong by it, and the chance of so many by luck (sign test, two-sided)',
  row(['voice', 'condition', 'of', 'right before', 'after', '±', 'asked', 'wrong', 'say again']),
];

const RIGHT: readonly Verdict[] = ['exact', 'checked'];

/** Exported for the test: what one row says of its pairs. */
export function cells(pairs: readonly Pair[]): readonly string[] {
  const isRight = (verdict: Verdict): boolean => RIGHT.includes(verdict);
  const count = (when: 'before' | 'after', ...verdicts: readonly Verdict[]): number =>
    pairs.filter((pair) => verdicts.includes(pair[when])).length;
  const both = (...verdicts: readonly Verdict[]): string =>
    `${count('before', ...verdicts)} → ${count('after', ...verdicts)}`;
  const gained = pairs.filter(({ before, after }) => !isRight(before) && isRight(after)).length;
  const lost = pairs.filter(({ before, after }) => isRight(before) && !isRight(after)).length;
  return [
    String(pairs.length),
    percent(count('before', ...RIGHT), pairs.length),
    percent(count('after', ...RIGHT), pairs.length),
    `+${gained} −${lost} (${signTest(gained, lost).toPrecision(1)})`,
    both('asked', 'checked'),
    both('wrong'),
    both('rejected'),
  ];
}

/** Chance that of so many changes as few, or fewer, go the rarer way, either way, when both are as likely. */
export function signTest(gained: number, lost: number): number {
  const all = gained + lost;
  let chance = 0;
  let ways = 1;
  for (let rarer = 0; rarer <= Math.min(gained, lost); rarer += 1) {
    chance += ways / 2 ** all;
    ways = (ways * (all - rarer)) / (rarer + 1);
  }
  return Math.min(1, 2 * chance);
}

function percent(hits: number, of: number): string {
  const [low, high] = wilson(hits, of).map((each) => (100 * each).toFixed(1));
  return `${((100 * hits) / Math.max(1, of)).toFixed(1)} (${low}–${high})`;
}

function row(names: readonly string[]): string {
  const widths = [36, 14, 5, 19, 19, 17, 11, 8, 9];
  return names.map((name, at) => name.padEnd(widths[at] ?? 0)).join(' ');
}
