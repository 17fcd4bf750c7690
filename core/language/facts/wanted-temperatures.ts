import type { QuantityId } from '../../terms/quantities.ts';
import { startsClause, wordBehind } from '../words/clause-start.ts';
import { thermalSystem } from '../../units/shown-unit.ts';
import { amountIn } from '../numbers/measure.ts';
import { canBeColdBox, isPlausible } from '../numbers/plausible.ts';
import { leftToAsk, reading } from '../readings/reading-means.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, tagsIn } from '../slots.ts';

/** What the box is to be kept at, by those whose it is: what it is set for, and no reading of it. */
const wanted: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const { units, refrigerant } = frame.context;
  const isThermal = unit === null || unit === 'degrees' || unit === 'degF' || unit === 'degC';
  if (!isThermal || !/^(?:|and|but|so|or)$/.test(wordBehind(frame))) return null;
  if (unit === null && value !== null && !canBeColdBox(value, units)) return null;
  const found = reading('setpointTemp', amountIn(tags), frame);
  if (found?.value === undefined || found.unit === null) return null;
  const amount = { value: found.value, unit: found.unit };
  return isPlausible('setpointTemp', amount, refrigerant) ? { readings: [found] } : null;
};

/** "Thermostat was set on three, cranked it to four": figures on a dial, which are no degrees. */
const onDial: Means = (tags, frame) => {
  const figures = [tags, tagsIn(tags['other'])].map((said) => numberIn(said?.['number']));
  const isDial = figures.every((figure) => figure !== null && figure > 0 && figure < MOST_ON_DIAL);
  if (!isDial) return null;
  const words = frame.wordsOf(frame.span);
  return { remarks: [words], work: [{ did: 'adjust', part: 'temperatureControl', words }] };
};
/** Ours: dials go to seven or nine. */
const MOST_ON_DIAL = 10;

const THEIRS =
  '(they|he|she|customer|owner|manager|chef|kitchen|store|(the|their) (customer|owner|manager|chef|cook|kitchen|staff|store|guy|lady))';
const BOX =
  '(it|this|this one|that one|her|them|the (box|cooler|freezer|unit|case|walk in|reach in|fridge|temp|temperature)|everything [in (it|there|here)])';
const AT =
  '[(to be|to run|to stay|kept|set|held|running|sitting|to hold|to sit)] [(at|down to|down at|right at|down)]';
const WANT =
  '(want|wants|like|likes|would like|wanted|asked for|asks for|is asking for|are asking for|need|needs)';
const KEEP =
  '[(like|likes|want|wants|try|tries|would like) to] (keep|keeps|run|runs|hold|holds|have|has|get)';

const USUALLY = '(normally|usually|always|generally|typically)';

/** "Minus four in the freezer, want her at ten below": behind the air that was read it is that air that is wanted. */
const wantedOfAir: Means = (tags, frame) => {
  const found = wanted(tags, frame);
  const means = (quantity: QuantityId): Meaning | null => (AIRS.includes(quantity) ? found : null);
  return { ofThat: { means, otherwise: leftToAsk(tags) } };
};
const AIRS: readonly QuantityId[] = ['boxTemp', 'supplyAirTemp', 'productTemp'];

/** "Stat's at thirty six": what it is set for; what one that shows the air says of a warm box is no setting. */
const ofStat: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const isShown =
    unit === null && value !== null && value > WARMEST_SETTING[thermalSystem(frame.context.units)];
  return isShown ? null : wanted(tags, frame);
};
/** Ours: nothing that is to stay cold is set for more, but wine and flowers. */
const WARMEST_SETTING = { us: 45, si: 8 } as const;

/** "Box reads eighteen. Supposed to be minus ten": of the air that was read last. */
const supposedOfAir: Means = (tags, frame) => {
  const { lastQuantity } = frame.context;
  return lastQuantity !== null && AIRS.includes(lastQuantity) ? wanted(tags, frame) : null;
};

export const WANTED_RULES: readonly Rule[] = [
  rule(
    '[the] (stat|thermostat|control|dial|knob|cold control) [(is|was)] (set [(at|to|for|on)]|at|on) <number> [<pause>] [(and|so)] [(i|we)] (cranked|turned|bumped|moved|put|set|dialed|knocked) it [(up|down|back|over)] (to|on) <number:other>',
    onDial,
    { unheard: true, examples: ['thermostat was set on three cranked it to four'] },
  ),
  rule(
    '<the> (thermostat|stat|t stat) (is [(down|up|turned (down|up))] (at|to|on)|at|says|is calling for|calls for) <amount>',
    ofStat,
    { unheard: true, only: startsClause, examples: ['stat is at thirty six'] },
  ),
  rule(
    '[(and|but|so)] [(i|we)] (want|wanting|need|would like) (it|her|him|that|this) [back] (at|down at|down to|to be [at]|around|to) <amount>',
    wantedOfAir,
    { unheard: true, only: startsClause, examples: [] },
  ),
  rule(
    `[(and|but|so)] [(it is|that is|they are|she is|it was|this one is|<the> (box|cooler|freezer|case|walk in) is)] supposed to (be|run|sit|hold|stay) ${AT} <amount>`,
    supposedOfAir,
    { unheard: true, only: startsClause, examples: [] },
  ),
  rule(`[(and|but)] ${THEIRS} ${WANT} ${BOX} ${AT} <amount>`, wanted, {
    examples: ['they want it at thirty seven', 'customer wants the box down to thirty five'],
  }),
  rule(`[(and|but)] ${THEIRS} [~~${USUALLY}] ${KEEP} ${BOX} ${AT} <amount>`, wanted, {
    examples: ['they keep it at thirty six', 'chef likes to keep the walk in around thirty five'],
  }),
  rule(
    `[(and|but)] ${THEIRS} ${WANT} <amount> [in (it|there|the (box|cooler|freezer|case))]`,
    wanted,
    { apart: true, examples: ['customer wants thirty seven'] },
  ),
];
