import type { PartId } from '../../terms/names.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import { LIFELESS } from '../vocabulary/state-names.ts';
import { startsClause } from '../words/clause-start.ts';
import { lifeless } from './lifeless.ts';
import { stateOf } from './state-of.ts';

/** What stays as it was when it fails. */
const OPENS: ReadonlySet<PartId | null> = new Set<PartId | null>([
  ...(['evaporatorPressureRegulator', 'expansionValve', 'liquidLineSolenoid'] as const),
  ...(['hotGasValve', 'highPressureSwitch', 'lowPressureSwitch'] as const),
  ...(['temperatureControl', 'doorSwitch', 'contactor', 'defrostTermination'] as const),
]);

const failedSo: Means = (tags, frame) =>
  OPENS.has(partId(tags['part'])) ? stateOf('state')(tags, frame) : null;

const STUCK = '[(has|is|was|had)] (failed|stuck|hung up|hung|locked|frozen|froze|seized)';

const WHERE =
  '(on|of|at|in|by|to|for|near|off) <the> [(left|right|top|bottom|front|back|upper|lower|middle|outdoor|suction|liquid)] <part:where>';
const IS = '(is|are|was|were|looks|look|seems|has been|got)';

const STANDS =
  '((is|sits|is (mounted|sitting|right)) (on|at|in|under|behind)|is (mounted|strapped|clipped|screwed|clamped|taped|zip tied) (to|on|onto|in|under)) <the> [(left|right|top|bottom|front|back|upper|lower|suction|liquid)] <part:where>';

/** Behind what has a name of its own: "fan on the condenser". */
export const PART_OF_PART_RULES: readonly Rule[] = [
  rule(`<the> <part> ${WHERE} ${IS} [all] <very> <state>`, stateOf('state'), {
    unheard: true,
    examples: ['joint on the suction line is oily'],
  }),
  rule(
    `<the> <part> (${WHERE}|<spot>) (is|are|was|were|looks|has been|been) <very> ${LIFELESS}`,
    lifeless,
    {
      unheard: true,
      examples: ['sensor on the evaporator is dead', 'fan on the left is dead'],
    },
  ),
  // "The stat's on the coil, reads closed": of what is there, and not of where it is.
  rule(`<the> <part> ${STANDS} [<pause>] [and] [it] <doing>`, stateOf('doing'), {
    unheard: true,
    only: startsClause,
    examples: ['termination stat is on the coil reads closed'],
  }),
  rule(`<the> <part> ${STANDS} [<pause>] [and] (it is|is) <very> <state>`, stateOf('state'), {
    unheard: true,
    only: startsClause,
    examples: ['termination stat is on the coil and it is closed'],
  }),
  rule(`<the> <part> ${WHERE} <doing>`, stateOf('doing'), {
    unheard: true,
    examples: ['breaker for the compressor keeps tripping'],
  }),
];

/** What failed the way it stood. */
export const FAILED_SO_RULES: readonly Rule[] = (
  [
    ['open', 'open'],
    ['closed', '(closed|shut)'],
  ] as const
).map(([state, way]) =>
  rule(`<the> <part> ${STUCK} ${way}`, failedSo, {
    tags: { state },
    unheard: true,
    examples: [`evaporator pressure regulator failed ${state}`],
  }),
);
