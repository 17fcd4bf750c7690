import { OHMS_AT } from '../electrical/electrical.ts';
import { isWorkedOut } from '../questions/asking.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, placeId, quantityId } from '../slots.ts';
import { QUANTITIES, type QuantityId } from '../../terms/quantities.ts';

/** "Head pressure": what is read next is that. What is worked out by its name alone is asked. */
const quantitySpokenOf: Means = (tags) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null || isWorkedOut(quantity)) return null;
  return { speaksOf: quantity };
};

/** "Suction line at the compressor": that end has a place of its own. */
const lineSpokenOf: Means = (tags) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null || QUANTITIES[quantity].dimension !== 'temperature') return null;
  const isAtCompressor = quantity === 'suctionLineTemp' && tags['part'] === 'compressor';
  return isAtCompressor ? { speaksOf: quantity, speaksAt: 'compressor' } : { speaksOf: quantity };
};

/** "Common to run": only one thing is metered between them. */
const windingSpokenOf: Means = (tags) => {
  const place = placeId(tags['place']);
  const quantity = place === null ? undefined : OHMS_AT[place];
  return quantity === undefined ? null : { speaksOf: quantity, speaksAt: place };
};

/** "Voltage at the contactor", "compressor amps" */
const metered =
  (quantity: QuantityId): Means =>
  (tags): Meaning => ({ speaksOf: quantity, speaksAt: placeId(tags['place']) });

/** "Run capacitor": "it" is that from here on, and a bare number is what a meter for capacitors shows. */
const partSpokenOf: Means = (tags) => {
  const part = partId(tags['part']);
  if (part === null) return null;
  return part === 'runCapacitor' || part === 'startCapacitor'
    ? { names: part, speaksOf: 'capacitance', speaksAt: part }
    : { names: part };
};

const LEAD =
  '[~~(and|ok|now|next|then|so|moving on to|moving to|on to|over to|going to|on|(let us|let me) (see|look at|check|test|ohm|meter)|looking at|checking|i am (reading|checking|looking at|on)|here is|for)] [~~(and|now|next|my|this|that)] [the]';
const LET_ME =
  '~~(let me|let us) (check|test|see|look at|look|get|grab|read|meter|ohm) [(that|it|them|that one|those)] [(here|real quick|too|next|now)]';
const TAIL = `[~~(temp|temperature|reading)] [(~~(is|was|reads|at|is at|reading|says|shows)|${LET_ME})]`;

const METERS: readonly (readonly [QuantityId, string])[] = [
  ['voltage', '(voltage|volts)'],
  ['current', '(amps|current|amperage|amp draw)'],
  ['resistance', '(ohms|resistance)'],
];

/** Asked which fan is meant, a coil's name answers; and with a question mark a name asks. */
const isOnlyNamed = ({ context, isAsked = false }: Frame): boolean =>
  context.openFan === null && !isAsked;

const BY_ITSELF = { alone: true, only: isOnlyNamed } as const;
const WRITTEN = { ...BY_ITSELF, unheard: true, examples: [] } as const;

/** "Discharged the cap": so that it can be metered. */
const discharged: Means = (tags, frame) => {
  const spoken = partSpokenOf(tags, frame);
  return spoken?.speaksOf === 'capacitance'
    ? { ...spoken, remarks: [frame.wordsOf(frame.span)] }
    : null;
};

/** What is named by itself, before its number or state is told in the next sentence: hands come first, then the meter. */
export const SPOKEN_OF_RULES: readonly Rule[] = [
  rule(`${LEAD} <quantity> ${TAIL}`, quantitySpokenOf, {
    ...BY_ITSELF,
    examples: ['head pressure', 'and the suction line'],
  }),
  rule(
    `${LEAD} <quantity> [~~temp] (at|by|near|back at|off|leaving) <the> <part> ${TAIL}`,
    lineSpokenOf,
    WRITTEN,
  ),
  rule('[(the|my|ok)] vacuum is (on|running|pulling|going)', () => ({ speaksOf: 'vacuum' }), {
    ...BY_ITSELF,
    unheard: true,
    examples: ['vacuum is on'],
  }),
  ...METERS.flatMap(([quantity, called]) => [
    rule(
      `${LEAD} ${called} [(at|on|across|of|for|to|from|through) <the> <place>]`,
      metered(quantity),
      WRITTEN,
    ),
    rule(`${LEAD} <place> ${called}`, metered(quantity), WRITTEN),
  ]),
  rule(
    '[(my|the)] (amp clamp|clamp|clamp meter|amp meter|ammeter) [is] (on|around|over) <the> <place> [(circuit|wire|lead|leg)]',
    metered('current'),
    WRITTEN,
  ),
  rule(
    '[(my|the)] (meter|leads|meter leads) [is] (on|across|at) <the> <place>',
    metered('voltage'),
    WRITTEN,
  ),
  rule(`${LEAD} [~~(compressor|motor|fan motor)] <place> [~~(is|reads)]`, windingSpokenOf, {
    ...BY_ITSELF,
    examples: ['common to run'],
  }),
  rule(
    '[(and|so|then|ok|i|we|i have)] (discharged|bled|bled (off|down|out)|shorted [out]|drained) <the> <part> [(with (a|the|my) <clause>|off|out|down|first)]',
    discharged,
    { ...BY_ITSELF, unheard: true, examples: ['discharged the cap'] },
  ),
  rule(`${LEAD} <part> [(~~(is|reads|looks)|${LET_ME})]`, partSpokenOf, {
    ...BY_ITSELF,
    examples: ['run capacitor', 'moving on to the evaporator'],
  }),
];
