import type { UnitId } from '../../units/units.ts';
import { startsClause } from '../words/clause-start.ts';
import { spokenUnit } from '../numbers/measure.ts';
import type { SpokenUnit } from '../vocabulary/unit-names.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { tagsIn } from '../slots.ts';
import { command } from './command.ts';

/** What a gauge or a thermometer is read in; no ohm and no pound. */
const SCALES: readonly UnitId[] = ['psi', 'bar', 'kPa', 'degF', 'degC'];
const isScale = (unit: SpokenUnit): unit is UnitId => SCALES.some((scale) => scale === unit);

const useSaid: Means = (tags, frame) => {
  const said = [tags['unit'], tagsIn(tags['one'])?.['unit'], tagsIn(tags['other'])?.['unit']]
    .map(spokenUnit)
    .filter((unit) => unit !== null);
  const units = said.filter(isScale);
  if (units.length === 0 || units.length < said.length) return null;
  return frame.context.unitless === null ? command({ do: 'useUnits', units }) : null;
};

const use =
  (...units: readonly UnitId[]): Means =>
  () =>
    command({ do: 'useUnits', units });

const LEAD =
  '[(ok|okay|no|and|please|can you|could you|let us|let is)] (use|take|switch [(over|back)] to|change [(over|back)] to|go [back] to|stick (with|to)|stay (in|with)|work in|read in|[i am] (working|reading|talking|speaking) in|i (work|read|talk|speak|say|give you|use) [it|them|everything] [in]|my (gages|gauges|numbers|readings|pressures|temperatures|temps) (are|read|is) [all] in|everything [(i say|i give you|i read)] is [in]|(all|all of) [(my|the|these)] (numbers|readings|pressures|temperatures|temps) are [in]|(pressures|temperatures|temps|numbers|readings) [are] in|[i am] (on|in))';
const TAIL =
  '[(units|please|instead|only|from (here|now) [on]|for (pressure|pressures|temperature|temperatures|everything|the pressures|the temperatures))]';

/** In which units bare numbers are meant, where it is told rather than shown by a reading. */
export const UNIT_HABIT_RULES: readonly Rule[] = [
  rule(`${LEAD} <unit> ${TAIL}`, useSaid, {
    alone: true,
    only: startsClause,
    unheard: true,
    examples: ['use celsius', 'my gages are in bar'],
  }),
  rule(`${LEAD} <unit:one> and <unit:other> ${TAIL}`, useSaid, {
    alone: true,
    only: startsClause,
    unheard: true,
    examples: ['use bar and celsius'],
  }),
  rule(`[no] [in] <unit> [please]`, useSaid, {
    alone: true,
    unheard: true,
    examples: ['psi'],
  }),
  rule(`[no] [in] <unit:one> and <unit:other> [please]`, useSaid, {
    alone: true,
    unheard: true,
    examples: ['bar and celsius'],
  }),
  rule(`[${LEAD}] (metric|si) ${TAIL}`, use('bar', 'degC'), {
    alone: true,
    unheard: true,
    examples: ['use metric'],
  }),
  rule(`[${LEAD}] (imperial|us|american|english) units ${TAIL}`, use('psi', 'degF'), {
    alone: true,
    unheard: true,
    examples: ['use imperial units'],
  }),
  rule(`${LEAD} imperial ${TAIL}`, use('psi', 'degF'), {
    alone: true,
    unheard: true,
    examples: ['use imperial'],
  }),
];
