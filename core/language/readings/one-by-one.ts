import type { Tags } from '../../grammar/nodes.ts';
import { drawn, electrical } from '../electrical/electrical.ts';
import { pointed } from '../electrical/meter-figures.ts';
import { amountIn, withMore } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, placeId, tagsIn } from '../slots.ts';
import { startsClause } from '../words/clause-start.ts';
import type { Reading } from '../utterance.ts';

type Metered = 'current' | 'resistance';
const UNITS = { current: 'A', resistance: 'ohm' } as const;

/** What there are several of in one unit, and each of them is metered. */
const SEVERAL: ReadonlySet<Reading['place']> = new Set<Reading['place']>([
  ...(['defrostHeater', 'doorHeater', 'evaporatorFan', 'condenserFan'] as const),
]);

interface Of {
  readonly metered: Metered;
  readonly place: Reading['place'];
}

/** One row of the sheet for all of them: which one it was stands in the note as it was said. */
function ofOne(tags: Tags, { metered, place }: Of, frame: Frame): Meaning | null {
  const { unit } = amountIn(tags);
  if (!SEVERAL.has(place) || (unit !== null && unit !== UNITS[metered])) return null;
  const told = { ...tags, unit: UNITS[metered] };
  const found = metered === 'current' ? drawn(told, place, frame) : electrical(told, place, frame);
  if (found?.quantity !== metered) return null;
  // "Heater one forty eight" is the first one at 48, or one at 148.
  const which = numberIn(tagsIn(tags['bare'])?.['number']);
  const isTwoFigures = Number.isInteger(found.value) && (found.value ?? 0) >= TWO_FIGURES;
  if (which !== null && isTwoFigures && found.value !== undefined)
    return { doubts: [withMore(found, { why: 'saidTwoWays', or: which * 100 + found.value })] };
  return { readings: [found], remarks: [frame.wordsOf(frame.span)] };
}
const TWO_FIGURES = 10;

/** "Amps on the heaters now, first one is four point three" */
const named =
  (metered: Metered): Means =>
  (tags, frame) => {
    const place = placeId(tags['place']) ?? frame.context.lastPlace;
    return ofOne(tags, { metered, place }, frame);
  };

const lastMetered = ({ context: { lastQuantity } }: Frame): Metered | null =>
  lastQuantity === 'current' || lastQuantity === 'resistance' ? lastQuantity : null;

/** "Second is zero", "two is forty nine", a sentence behind the first of them. */
const nextOne: Means = (tags, frame) => {
  const metered = lastMetered(frame);
  return metered === null ? null : ofOne(tags, { metered, place: frame.context.lastPlace }, frame);
};
const wasOneOfSeveral = (frame: Frame): boolean =>
  lastMetered(frame) !== null && SEVERAL.has(frame.context.lastPlace) && startsClause(frame);

/** Ours: heaters of one coil are alike. */
const MOST_APART = 2;

/** "Four three, four four, four three on the heaters", with the power on: what each draws. */
const drawnInTurn: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const readings = ['one', 'two', 'three'].flatMap(
    (slot) => drawn({ ...pointed(tagsIn(tags[slot]) ?? {}), unit: 'A' }, place, frame) ?? [],
  );
  const values = readings.flatMap(({ value }) => value ?? []);
  const isAlike = values.length === 3 && Math.max(...values) <= Math.min(...values) * MOST_APART;
  return isAlike && SEVERAL.has(place) && !frame.context.powerIsOff
    ? { readings, remarks: [frame.wordsOf(frame.span)] }
    : null;
};

const WHICH =
  '[(and|then|so|but)] [the] ((first|second|third|fourth|last|next|other|top|bottom|middle|left|right) [(one|heater|fan)]|number <nth:which>)';
const READS =
  '(is|is at|at|reads|reading|has|draws|pulls|is (drawing|pulling|reading)|ohms [out] [at])';
const LEADS: Readonly<Record<Metered, string>> = {
  current: '(amps|current|amp draw|amping|amped)',
  resistance: '(ohms|resistance|ohming|ohmed|ohm)',
};
const METERED = ['current', 'resistance'] as const;
const NOW = '[out] [(now|next)] [<pause>]';

/** What is metered of several alike, one after the other: the part is named once. */
export const ONE_BY_ONE_RULES: readonly Rule[] = METERED.flatMap((metered) => [
  rule(
    `[(ok|so|and|checking|i)] [(my|the)] ${LEADS[metered]} [(on|of|for|at)] (<the> <place>|them|each of them) ${NOW} ${WHICH} ${READS} <amount>`,
    named(metered),
    {
      unheard: true,
      examples:
        metered === 'current'
          ? ['amps on the heaters now first one is four point three']
          : ['ohming the heaters now first one is forty eight'],
    },
  ),
  rule(
    `[(ok|so|and|checking|i)] [(my|the)] ${LEADS[metered]} [(on|of|for|at)] (them|each of them|all of them) ${NOW} [the] <place> [number] (<nth:bare> <amount>|<nth:which> ${READS} <amount>)`,
    named(metered),
    { unheard: true, examples: [] },
  ),
]).concat([
  rule(
    `(${WHICH}|[(and|then|so|but)] [number] <nth:which>) ${READS} [(also|about|only)] <amount> [(too|as well|also)]`,
    nextOne,
    {
      unheard: true,
      apart: true,
      only: wasOneOfSeveral,
      examples: [],
    },
  ),
  rule(
    '[(i have|i got|i am getting|it is|we have|got)] <dropped:one> [and] <dropped:two> [and] <dropped:three> [(amps|amp)] (on|at|across) (the|all three|my|both) <place>',
    drawnInTurn,
    { unheard: true, examples: ['four three four four four three on the heaters'] },
  ),
]);
