import type { Tags } from '../../grammar/nodes.ts';
import { isAskedWithDo } from '../words/clause-start.ts';
import { dueIn, stretchIn } from './due.ts';
import { settledFan } from '../words/fans.ts';
import { endsTheList, isTimerOfOurs, nameGoesOn } from '../findings/part-lists.ts';
import { type Amounted, amountIn } from '../numbers/measure.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { partId, tagsIn } from '../slots.ts';
import type { PartId } from '../../terms/names.ts';
import type { Due, Recommendation } from '../utterance.ts';
import { WEIGHTS } from '../work-done/weighed.ts';

const isWeight = ({ value, low, unit }: Amounted): boolean =>
  (value !== null || low !== null) && unit !== null && WEIGHTS.has(unit);

/** Weighed by nobody yet: the charge that it will take is kept as it was said, its number with it. */
function chargeIn(tags: Tags | null, frame: Frame): readonly Recommendation[] | null {
  if (tags === null) return [];
  const words = frame.wordsOf(frame.span);
  const [said] = CHARGE.exec(words) ?? [];
  // "Four pounds of ice" is no charge.
  const goesOn = /^(?:of|is)$/i.test(frame.wordsOf({ from: frame.span.to, to: frame.span.to + 1 }));
  if (said === undefined || goesOn || !isWeight(amountIn(tags))) return null;
  return [{ do: 'add', part: null, reason: said, words }];
}
const FIGURE = `[\\d./]+|${[...ONES, ...TEENS, ...TENS].join('|')}|hundred|point|half|quarters?|oh`;
const UNIT = 'pounds?|lbs?|ounces?|oz|kilos?|kg|grams?|g';
const MORE = 'and|of|a|an|b|c|r-?\\w*|more|gas|refrigerant|freon|charge';
/** From its number, or what hedges it, to the last word that is said of it. */
const CHARGE = new RegExp(
  `(?:(?:another|about|around|roughly|maybe|almost|nearly|probably) )*(?:${FIGURE}|an?)(?:[ -](?:${FIGURE}|and|of|an?))* ?(?:${UNIT})\\b(?:[ -](?:${FIGURE}|${UNIT}|${MORE})(?!\\w))*`,
  'i',
);

/** "Needs a compressor, a contactor and a drier", "needs a valve, a drier and about four pounds" */
const replaceEach: Means = (tags, frame) => {
  if (isAskedWithDo(frame) || nameGoesOn(frame) || isTimerOfOurs(frame)) return null;
  const words = frame.wordsOf(frame.span);
  const parts = [tags['part'], tagsIn(tags['second'])?.['part'], tagsIn(tags['third'])?.['part']];
  if (tags['second'] !== undefined && tags['charge'] === undefined && !endsTheList(frame))
    return null;
  const replaced = parts
    .map(partId)
    .flatMap((part): readonly Recommendation[] =>
      part === null ? [] : [{ do: 'replace', part: settledFan(part, frame.context), words }],
    );
  const charge = chargeIn(tagsIn(tags['charge']), frame);
  const gear = START_GEAR.test(words) ? STARTS : [];
  if (charge === null || replaced.length === 0) return null;
  const starts = gear.map((part): Recommendation => ({ do: 'replace', part, words }));
  return { recommendations: [...replaced, ...starts, ...charge] };
};

/** What starts a motor, told by one name. */
const START_GEAR = /\bstart(?:ing)? (?:components|gear)\b/i;
const STARTS: readonly PartId[] = ['startRelay', 'startCapacitor'];

const chargeAlone: Means = (tags, frame) => {
  const [charge] = chargeIn(tagsIn(tags['charge']), frame) ?? [];
  const due = tagsIn(tags['due']);
  const by = due && dueIn(due);
  if (charge === undefined || (due !== null && by === null)) return null;
  return { recommendations: [by ? { ...charge, by } : charge] };
};

/** "Leak check thirty days": how far off it is, told with or without its "in". */
const leakCheckAgain: Means = (tags, frame) => {
  const due = tagsIn(tags['due']);
  const away = tagsIn(tags['away']);
  const stretch = away && stretchIn({ ...away, unit: tags['unit'] ?? '' });
  const by: Due | null = due ? dueIn(due) : stretch && { said: 'on', kind: 'in', ...stretch };
  const words = frame.wordsOf(frame.span);
  return by === null ? null : { recommendations: [{ do: 'leakCheck', part: null, by, words }] };
};
const LEAK_CHECK =
  '[(do (a|another)|another|a|follow up|repeat)] (leak (check|test|search)|(recheck|check) [again] for leaks) [again]';

const NEEDS =
  '([(it|they|this|this one|unit|the unit|system|the system|customer|the customer)] (needs|need|wants|will need|is going to need|are going to need|could use)|[(i|they|we|you)] (recommend|should (have|get|put in|install)|need to (put in|install|get))|quote [them])';
const NEW = '[(new|brand new|replacement|universal|bigger|smaller)]';
const A = `((a|an|another) ${NEW} [<size>]|<size>|<nth:many> ${NEW})`;
const next = (slot: string): string =>
  `([<pause>] [and] ${A} <neededPart:${slot}>|(and|<pause> [and]) [new] <neededPart:${slot}>)`;
const OF_GAS = '[more] [of (gas|refrigerant|freon|charge|<refrigerant>)] [(in it|added|put in)]';
const CHARGED = `[<pause>] [and] <amount:charge> ${OF_GAS}`;

/** Parts that are needed, and how much gas. */
export const NEEDED_RULES: readonly Rule[] = [
  rule(`${LEAK_CHECK} <due:due>`, leakCheckAgain, {
    unheard: true,
    apart: true,
    examples: ['leak check in thirty days'],
  }),
  ...(['day', 'week', 'month'] as const).map((unit) =>
    rule(`${LEAK_CHECK} <number:away> (${unit}|${unit}s) [out]`, leakCheckAgain, {
      unheard: true,
      apart: true,
      tags: { unit },
      examples: unit === 'day' ? ['leak check thirty days'] : [],
    }),
  ),
  rule(
    `${NEEDS} ${A} <neededPart> [${next('second')} [${next('third')}]] [(${CHARGED}|<number:volts> (volts|volt|v))]`,
    replaceEach,
    {
      examples: [
        'needs a door gasket and a hinge',
        'it needs a thirty amp contactor',
        'needs a valve a dryer and about four pounds',
      ],
    },
  ),
  rule(
    `${NEEDS} (a|an|<number>) [new] <part> [(a|an)] [new] <part:second> and [(a|an)] [new] <part:third>`,
    replaceEach,
    { examples: ['they need a new compressor dryer and contactor'] },
  ),
  rule(
    '[i] (recommend|suggest|quote|quoting|recommending) [(a|new|a new)] <part> (<pause> [(and|plus)]|and|plus) [(a|new|a new)] (<part:second>|start (components|gear)) [[<pause>] (and|plus) [(a|new|a new)] <part:third>]',
    replaceEach,
    { unheard: true, examples: ['recommend compressor, start relay and dryer'] },
  ),
  rule(
    `([(it|this|unit|the unit|system|the system)] [(probably|really|just)] (needs|will need|is going to need|going to need|could use|wants|will take|is going to take|needs to have)|[(i|we)] (recommend|suggest) (adding|putting in)|[(they|we|i|you|somebody)] (should|ought to|will have to|have to) (add|put in|weigh in)) [another] <amount:charge> ${OF_GAS} [<due:due>]`,
    chargeAlone,
    { examples: ['it is going to need about four pounds', 'recommend adding four pounds of gas'] },
  ),
];
