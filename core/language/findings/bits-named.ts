import { settledFan, TURNS } from '../words/fans.ts';
import { startsClause } from '../words/clause-start.ts';
import { finding, onlyOf } from './finding-of.ts';
import { stateOf } from './state-of.ts';
import type { FindingStateId, PartId } from '../../terms/names.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId, tagsIn } from '../slots.ts';

/** What switches by contacts of its own: any other part's are the contactor's. */
const SWITCHES: ReadonlySet<PartId | null> = new Set<PartId | null>([
  ...(['temperatureControl', 'controller', 'startRelay', 'defrostTimer', 'doorSwitch'] as const),
  ...(['defrostTermination', 'highPressureSwitch', 'lowPressureSwitch', 'fanControl'] as const),
  ...(['overload', 'contactor'] as const),
]);

const ofContacts: Means = (tags, frame) =>
  SWITCHES.has(partId(tags['part'])) ? stateOf('state')(tags, frame) : null;

/** "Overload's not tripped, breaker is": one denied, and the other said to be so. */
const theOtherIs: Means = (tags, frame) => {
  const [part, other] = [partId(tags['part']), partId(tagsIn(tags['other'])?.['part'])];
  const state = stateId(tags['state']);
  if (part === null || other === null || part === other || state === null) return null;
  // "Fan's not running but the blade is bent" says what the blade is behind it.
  if (!frame.endsAtPause || state === 'ok') return null;
  const denied = state === 'running' ? 'notRunning' : 'ok';
  return { findings: [finding(part, denied, frame), finding(other, state, frame)] };
};

/** "Contactor isn't burnt, it's just dirty" finds what it is, whatever it is not. */
const ratherThan: Means = (tags, frame) => {
  const so = tagsIn(tags['so'])?.['state'];
  if (so === undefined || so === tags['state'] || tags['part'] === undefined) return null;
  return stateOf('state')({ ...tags, state: so }, frame);
};

/** "Condenser fan motor winding is open": its own, whatever else has some. */
const windingOf: Means = (tags, frame) => {
  const [part, state] = [partId(tags['part']), stateId(tags['state'])];
  if (part === null || state === null || state === 'running' || !TURNS.includes(part)) return null;
  const meant = state === 'ok' || state === 'burnt' || state === 'grounded' ? state : 'failed';
  const of = settledFan(part, frame.context);
  return { findings: [finding(MOTOR_OF[of] ?? of, meant, frame)] };
};
const MOTOR_OF: Partial<Record<PartId, PartId>> = {
  condenserFan: 'condenserFanMotor',
  evaporatorFan: 'evaporatorFanMotor',
};

/** "Fan's missing half a blade" */
const missesBlade: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && TURNS.includes(part) && part !== 'compressor'
    ? { findings: [finding('fanBlade', 'failed', frame)] }
    : null;
};

/** What shuts a box, and does so again. */
const SHUTS: ReadonlySet<PartId | null> = new Set<PartId | null>([
  ...(['door', 'doorGasket', 'hinge', 'liquidLineSolenoid'] as const),
]);
const shutsWell: Means = (tags, frame) =>
  SHUTS.has(partId(tags['part'])) ? stateOf('state')({ ...tags, state: 'ok' }, frame) : null;

/** A valve without a name is the one that was spoken of, and else the one that feeds the coil. */
const theValve =
  (state: FindingStateId): Means =>
  (_tags, frame) => {
    const of = (part: PartId): Meaning => ({ findings: [finding(part, state, frame)] });
    const means = (part: PartId): Meaning => of(OTHER_VALVES.has(part) ? part : 'expansionValve');
    return { ofIt: { means, inSentence: false, otherwise: of('expansionValve') } };
  };
const OTHER_VALVES: ReadonlySet<PartId> = new Set<PartId>([
  ...(['liquidLineSolenoid', 'headPressureValve', 'hotGasValve', 'waterValve'] as const),
  ...(['evaporatorPressureRegulator', 'serviceValve', 'kingValve'] as const),
]);
const VALVE_SAID = [
  ['closed', 'stuck (shut|closed)', 'stuck shut'],
  ['open', 'stuck [wide] open', 'stuck open'],
  ['failed', '(not feeding|starving [the coil]|plugged [up]|frozen up)', 'not feeding'],
] as const;

/** A part by the bit of it that shows its state, and a part by what it is not. */
export const BIT_NAMED_RULES: readonly Rule[] = [
  rule(
    `[(there is|i have|i got|got|found)] <the> <part> [motor] (winding|windings) [(is|are|looks|look|reads|read|ohms|ohm|checks|check|tests|test)] [out] <very> <state>`,
    windingOf,
    { unheard: true, examples: ['evaporator fan motor winding is open'] },
  ),
  rule(
    `<the> <part> (has|has got|is got|got) [(a|an|its|the)] <state> [(run|start|main|motor)] (winding|windings)`,
    windingOf,
    { unheard: true, examples: ['fan motor has an open winding'] },
  ),
  rule(
    '<the> <part> (contacts|contact|points) (is|are|was|were|look|looks|stay|stayed) [(stuck|welded|all|still)] <very> <state>',
    ofContacts,
    { unheard: true, examples: ['temperature control contacts are closed'] },
  ),
  rule(
    '<the> <part> (is not|are not|was not) <very> <state> [<pause>] [but] <the> <part:other> is',
    theOtherIs,
    { unheard: true, examples: ['overload is not tripped the breaker is'] },
  ),
  rule(
    '<the> <part> (is not|are not|was not) [(really|actually|even)] <very> <state> [<pause>] [but] (it is|they are|just|only) [(just|only|more like|really)] <very> <state:so>',
    ratherThan,
    { unheard: true, examples: ['condenser fan is not burnt it is just loose'] },
  ),
  rule(
    '<the> (coil|coils) (is|are|looks|look) <very> <state> [<pause>] [(and|with|there is)] no (ice|frost) [(on it|on them|at all|anywhere)]',
    onlyOf('evaporator', 'ok'),
    { unheard: true, only: startsClause, examples: ['coil is clean no ice'] },
  ),
  rule(
    '<the> <part> (closes|shuts|latches|seals) [(up|down)] (by itself|on its own|right|good|tight|all the way|like it should|fine|ok) [(now|again)]',
    shutsWell,
    { unheard: true, examples: ['door closes by itself now'] },
  ),
  ...VALVE_SAID.map(([state, said, example]) =>
    rule(
      `[(so|looks like|and)] the valve (is|was|has been) [(just|really)] ${said}`,
      theValve(state),
      { unheard: true, examples: [`the valve is ${example}`] },
    ),
  ),
  rule(
    '<the> <part> (is|has) (missing|lost|threw) (half|part|a piece|a chunk|a corner|most) [(of|a|an|off)] [(a|of a|of its|its|one|the)] blade',
    missesBlade,
    { unheard: true, examples: ['fan is missing half a blade'] },
  ),
];
