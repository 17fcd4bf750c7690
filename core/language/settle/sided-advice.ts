import { PARTS } from '../../terms/names.ts';
import { SIDE } from '../../terms/which-one.ts';
import type { Context } from '../context.ts';
import { partNamedIn } from '../questions/named-in.ts';
import type { Recommendation, Utterance } from '../utterance.ts';
import type { Reads } from './reads.ts';

const ADVISES =
  /\b(?:needs?|order|quote|recommend|should|ought|replace|change|going to want|could use)\b/i;
/** "A left door gasket": which, before what it is. */
const SIDED = new RegExp(
  `\\b(?:an?|the|one|that|their|new)\\s+(?:new\\s+)?(${SIDE})\\s+(?:new\\s+)?(?!one\\b|side\\b)([a-z]+(?: [a-z]+){0,3})`,
  'i',
);

/** "Need to order a left gasket": advised as without its side, which the name of the part keeps. */
export function ofSided(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const { text } = said;
  const [all = '', side, thing = ''] = ADVISES.test(text) ? (SIDED.exec(text) ?? []) : [];
  const part = side === undefined ? null : partNamedIn(` ${thing.toLowerCase()} `);
  if (side === undefined || part === null) return null;
  const again = reads(
    text.replace(all, all.replace(new RegExp(`\\b${side}\\s+`, 'i'), '')),
    context,
  );
  const named = ({ recommendations }: Utterance): number =>
    recommendations.filter((each) => each.do !== 'asSaid').length;
  const isMore = named(again) > named(said) && again.unclaimed.length <= said.unclaimed.length;
  if (!isMore) return null;
  const called = `${side.toLowerCase()} ${PARTS[part]}`;
  const recommendations = again.recommendations.map((each): Recommendation =>
    each.part === part && each.called === undefined ? { ...each, called } : each,
  );
  return { ...again, recommendations, text };
}
