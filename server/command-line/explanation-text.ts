import type { Data, Tags } from '../../core/grammar/nodes.ts';
import type { Context } from '../../core/language/context.ts';
import { type Explained, explain } from '../../core/language/explain.ts';
import type { NearMiss } from '../../core/language/parse/near-misses.ts';
import { understand } from '../../core/language/understand.ts';

/** Why a sentence was understood as it was, for whoever adds a way to say something. */
export function explanationText(text: string, context: Context): string {
  const { rules, leftOver, nearMisses } = explain(text, context);
  return [
    `said        ${text}`,
    ...understoodLines(text, context),
    ...rules.flatMap(ruleLines),
    ...leftOver.map((words) => `left over   "${words}"`),
    ...nearMisses.flatMap(nearLines),
    '',
  ].join('\n');
}

function understoodLines(text: string, context: Context): readonly string[] {
  const { text: _, ...parts } = understand(text, context);
  const filled = Object.entries(parts).filter(([, found]) => found.length > 0);
  if (filled.length === 0) return ['understood  nothing'];
  return filled.map(
    ([name, found], index) =>
      `${index === 0 ? 'understood' : ''.padEnd(10)}  ${name} ${JSON.stringify(found)}`,
  );
}

function ruleLines({ shape, words, from, to, tags, gave }: Explained): readonly string[] {
  return [
    `rule        ${shortened(shape)}`,
    `  read      "${words}", ${spanWords(from, to)}`,
    `  found     ${tagsText(tags) || 'nothing in its holes'}`,
    `  gave      ${gave.join(', ') || 'nothing: talk that is not for us'}`,
  ];
}

const spanWords = (from: number, to: number): string =>
  to - from === 1 ? `word ${to}` : `words ${from + 1} to ${to}`;

function nearLines({ shape, read, stoppedAt, expected }: NearMiss): readonly string[] {
  const wanted = expected.length === 0 ? 'another value' : `one of: ${expected.join(', ')}`;
  return [
    `nearly      ${shortened(shape)}`,
    `  read      "${read}"`,
    `  stopped   ${stoppedAt === null ? 'at the end' : `at "${stoppedAt}"`}; it could go on with ${wanted}`,
  ];
}

const LONGEST_SHAPE = 90;

/** Its beginning is enough to find it by in the rules. */
const shortened = (shape: string): string =>
  shape.length <= LONGEST_SHAPE ? shape : `${shape.slice(0, LONGEST_SHAPE)}…`;

function tagsText(tags: Tags): string {
  return Object.entries(tags)
    .map(([slot, data]) => `${slot}=${dataText(data)}`)
    .join(' ');
}

const dataText = (data: Data): string =>
  typeof data === 'object' ? `(${tagsText(data)})` : String(data);
