import type { CauseId } from '../../terms/causes.ts';
import { standingFindings, AS_IT_SHOULD_BE } from '../standing-findings.ts';
import type { VisitState } from '../../visit/state.ts';
import type { CheckId, NextCheck } from '../verdict.ts';
import type { LackedId } from '../../terms/guides.ts';
import { isPossible, type Belief } from './belief.ts';
import { leadingOf } from './families.ts';
import { FINDING_RULES } from './finding-rules.ts';
import type { Gathered } from './gather.ts';
import { expectedInformation, toldApart } from './information.ts';
import { optionsFor, type Option } from './options.ts';
import { isLeftSealed } from './sealed.ts';
import { standingStep } from './standing-order.ts';

/** Less than this is not worth the walk (common practice). */
const LEAST_BITS = 0.02;
/** With nine tenths of the weight on one cause, nothing is left to tell apart. */
const SURE_ENOUGH = 0.9;

/**
 * The standing order first: safety, a look, a baseline, one change at a time, let it settle. Then the check that
 * settles the most for its minutes and its risk; equal ones in the order of the table. After work, with nothing
 * off, there is nothing to chase.
 */
export function nextOf(
  gathered: Gathered,
  belief: Belief,
  { state, lacks = null }: { readonly state: VisitState; readonly lacks?: Lacks | null },
): NextCheck {
  const step = standingStep(state);
  if (step !== null) return { next: 'step', step };
  const [first] = leadingOf(belief);
  if (first === 'nothingWrong' && state.work.length > 0)
    return { next: 'step', step: 'confirmAfter' };
  if (first === 'nothingWrong' && hasFound(state)) return { next: 'step', step: 'mendFound' };
  const had = optionsFor(gathered, state).filter(
    (option) => lacks === null || isHad(option, lacks),
  );
  const open = worthDoing(had, belief, state);
  if (first !== undefined && (belief.shares.get(first) ?? 0) >= SURE_ENOUGH)
    return isShown(first, state) ? { next: 'step', step: 'dealWithIt' } : confirming(first, open);
  const options = open.map((option) => {
    const bits = expectedInformation(belief, option.outcomes);
    return { option, bits, worth: bits / option.cost };
  });
  const best = options
    .filter(({ bits }) => bits >= LEAST_BITS)
    .reduce<Valued | null>((top, each) => (top && top.worth >= each.worth ? top : each), null);
  return best ? toNext(best.option, belief) : { next: 'step', step: 'nothingTellsMore' };
}

/** A glass shows a charge: it is looked into where that is in question and something flows through it. */
function worthDoing(
  options: readonly Option[],
  { shares }: Belief,
  state: VisitState,
): readonly Option[] {
  const isLow = isPossible(shares.get('undercharge') ?? 0);
  const isFlowing = !standingFindings(state).some(
    ({ finding }) => finding.part === 'compressor' && finding.state === 'notRunning',
  );
  const telling = options.filter(
    ({ does }) => does.next !== 'check' || does.check !== 'lookSightGlass' || (isLow && isFlowing),
  );
  const without = telling.filter((option) => !needsGauges(option));
  return isLeftSealed(state) && without.length > 0 ? without : telling;
}

/** What is not to be had, and the check that was named last: it is the one that cannot be got at. */
export interface Lacks {
  readonly lacked: LackedId;
  readonly last: NextCheck | null;
}

function isHad(option: Option, { lacked, last }: Lacks): boolean {
  if (lacked === 'gauges') return !needsGauges(option) && !needsGaugesToo(option);
  if (lacked === 'meter') return !needsMeter(option);
  const { does } = option;
  if (last?.next === 'check') return does.next !== 'check' || does.check !== last.check;
  return last?.next !== 'read' || does.next !== 'read' || does.need !== last.need;
}

const METERED: ReadonlySet<CheckId> = new Set<CheckId>([
  'defrostHeaters',
  'supplyAtStart',
  'testStartGear',
  'coolOverload',
]);
const needsMeter = ({ does }: Option): boolean =>
  does.next === 'check' ? METERED.has(does.check) : does.need === 'current';

const GAUGED: ReadonlySet<CheckId> = new Set<CheckId>([
  'suctionDrop',
  'warmBulb',
  'iceBulb',
  'timeRise',
  'equaliseTime',
  'standstillTest',
  'checkFanControl',
  'compressorTest',
]);

const needsGaugesToo = ({ does }: Option): boolean =>
  does.next === 'check' && GAUGED.has(does.check);

const needsGauges = ({ does }: Option): boolean =>
  does.next === 'check'
    ? does.check === 'suctionDrop'
    : does.need === 'headPressure' || does.need === 'suctionPressure';

/** With every reading right, a torn gasket is the fault: no gauge will tell more of it. */
const hasFound = (state: VisitState): boolean =>
  standingFindings(state).some(({ finding }) => !AS_IT_SHOULD_BE.has(finding.state));

/** A charge is not taken out, nor a compressor condemned, on readings alone: what shows the fault itself comes first. */
function confirming(cause: CauseId, options: readonly Option[]): NextCheck {
  const shows = options.find((option) => option.confirms.includes(cause));
  if (!shows) return { next: 'step', step: 'dealWithIt' };
  return { ...shows.does, between: [cause] };
}

/** Seen outright, a loose bulb is clamped before its valve is put to any test; what a compressor does is only a sign. */
const isShown = (cause: CauseId, state: VisitState): boolean =>
  standingFindings(state).some(({ finding: { part, state: found } }) =>
    FINDING_RULES.some(
      (rule) =>
        part !== 'compressor' &&
        rule.for[cause] === 'shows' &&
        rule.parts.includes(part) &&
        rule.states.includes(found),
    ),
  );

interface Valued {
  readonly option: Option;
  readonly worth: number;
}

function toNext({ does, outcomes }: Option, belief: Belief): NextCheck {
  return { ...does, between: toldApart(belief, outcomes) };
}
