import type { PartId } from '../../terms/names.ts';
import { remark } from '../plain-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import { TURNS } from '../words/fans.ts';
import { finding } from './finding-of.ts';

/** What many units are built without: "there is no receiver on it" tells of the unit, and nothing is lost or broken. */
const NOT_ON_EVERY_UNIT: ReadonlySet<PartId> = new Set<PartId>([
  ...(['highPressureSwitch', 'lowPressureSwitch', 'oilPressureControl', 'floatSwitch'] as const),
  ...(['dischargeThermostat', 'phaseMonitor', 'surgeProtector', 'delayRelay'] as const),
  ...(['crankcaseHeater', 'drainHeater', 'doorHeater', 'defrostHeater', 'defrostTimer'] as const),
  ...(['doorSwitch', 'fanControl', 'startCapacitor', 'runCapacitor', 'startRelay'] as const),
  ...(['receiver', 'accumulator', 'oilSeparator', 'sightGlass', 'strainer'] as const),
  ...(['liquidLineSolenoid', 'hotGasValve', 'headPressureValve', 'checkValve'] as const),
  ...(['crankcaseRegulator', 'evaporatorPressureRegulator', 'reliefValve'] as const),
  ...(['fusiblePlug', 'kingValve', 'serviceValve', 'accessFitting', 'disconnect'] as const),
  ...(['suctionServiceValve', 'dischargeServiceValve', 'filterDrier', 'controller'] as const),
]);

function noneThere(part: PartId, frame: Frame): Meaning {
  // "There's no light, no fan, nothing": they are there, and dead.
  if (NOT_ON_EVERY_UNIT.has(part) || TURNS.includes(part) || part === 'light')
    return { remarks: [frame.wordsOf(frame.span)] };
  return { findings: [finding(part, 'missing', frame)] };
}

const none: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null ? null : noneThere(part, frame);
};

const notBuiltSo: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && NOT_ON_EVERY_UNIT.has(part) ? remark(tags, frame) : null;
};

const THIS =
  '(it|this|this (one|thing|unit|box|model|machine)|that|that (one|unit)|the unit|these|they)';

/** Parts that are not there: missed where every unit has one, and only told where many have none. */
export const NOT_FITTED_RULES: readonly Rule[] = [
  rule(
    '(there is|there was|it has|it has got|i see|i have|found) no <part> [(in|on|at) (it|there|here|that|this|the (unit|box))]',
    none,
    { examples: ['there is no filter in it'] },
  ),
  rule(
    `[(there is|there was|${THIS} (has|has got|have|got))] no <part> (on|in|at|with) ${THIS} [either]`,
    notBuiltSo,
    { unheard: true, examples: ['no sight glass on this unit'] },
  ),
  rule(
    `[${THIS}] (does not have|do not have|did not have|never had|did not come with|does not come with|is not built with|has not got) [(a|an|any|one of those)] <part> [(on (it|them|there)|either|at all|anymore)]`,
    notBuiltSo,
    { unheard: true, examples: ['it does not have a low pressure switch'] },
  ),
];
