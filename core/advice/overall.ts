import type { AnswerableId } from '../terms/quantities.ts';
import { lastChange } from '../visit/changes.ts';
import type { VisitState } from '../visit/state.ts';
import type { OverallRow } from './led-verdict.ts';
import type { CautionId, Comparison, Known, Verdict } from './verdict.ts';

/** In the order that gauges are read; the box is told by itself. */
const HAVE_TARGETS: readonly AnswerableId[] = [
  'headPressure',
  'suctionPressure',
  'superheat',
  'subcooling',
  'boxTemp',
];

type Find = (about: AnswerableId, state: VisitState) => Verdict;

/** Whether it is known to be where it should be. */
export const isRight = (verdict: Verdict): verdict is Extract<Known, { answer: 'compare' }> =>
  isKnown(verdict) && isComparison(verdict) && !isOutside(verdict);

/** The first that is outside its band, of those named; null where none is. */
export function firstOff(
  of: readonly AnswerableId[],
  state: VisitState,
  compare: Find,
): Verdict | null {
  const known = of.map((about) => compare(about, state)).filter(isKnown);
  return known.find((each) => isComparison(each) && isOutside(each)) ?? null;
}

/** The first that is outside its band, else the first that can be told. */
export function furthestOff(state: VisitState, compare: Find): Verdict | null {
  const known = HAVE_TARGETS.map((about) => compare(about, state)).filter(isKnown);
  return known.find((each) => isComparison(each) && isOutside(each)) ?? known[0] ?? null;
}

const isKnown = (verdict: Verdict): verdict is Known => verdict.kind === 'known';
const isComparison = (known: Known): known is Extract<Known, { answer: 'compare' }> =>
  known.answer === 'compare';

const isOutside = ({ direction, low, high, measured }: Comparison): boolean =>
  direction !== 'on' &&
  !(low !== undefined && high !== undefined && measured >= low && measured <= high);

interface Ways {
  readonly compare: Find;
  readonly target: Find;
}

interface Row {
  readonly of: Known;
  readonly row: OverallRow;
}

/**
 * Everything that has a target in one answer: what was read since the last change beside it, of the rest the target.
 * What was read before the change says nothing of how it runs now.
 */
export function overall(state: VisitState, ways: Ways): Verdict {
  const found = HAVE_TARGETS.map((about) => ({
    compared: ways.compare(about, state),
    target: ways.target(about, state),
  }));
  const rows = found.flatMap(({ compared, target }): readonly Row[] => {
    if (isKnown(compared) && isComparison(compared) && isFresh(compared, state))
      return [{ of: compared, row: comparedRow(compared) }];
    return isKnown(target) && target.answer === 'target'
      ? [{ of: target, row: targetRow(target) }]
      : [];
  });
  if (rows.length === 0) return lackOf(found.map(({ target }) => target));
  const sources = rows.flatMap(({ of }) => of.source ?? []);
  return {
    kind: 'known',
    formula: null,
    inputs: rows.flatMap(({ of }) => of.inputs),
    source: sources.length === 0 ? null : [...new Set(sources)].join('; '),
    cautions: [...new Set<CautionId>(rows.flatMap(({ of }) => of.cautions))],
    answer: 'overall',
    rows: rows.map(({ row }) => row),
  };
}

const lackOf = (all: readonly Verdict[]): Verdict =>
  all.find(({ kind }) => kind === 'needs') ??
  all.find(({ kind }) => kind === 'refused') ?? {
    kind: 'refused',
    about: null,
    reason: 'nothingRecorded',
  };

/** The air and the set point stand; a gauge and a clamp are read anew. */
const STANDS: ReadonlySet<string> = new Set(['ambientTemp', 'outdoorTemp', 'setpointTemp']);

function isFresh({ inputs }: Known, state: VisitState): boolean {
  const change = lastChange(state);
  return (
    change === null ||
    inputs.every(
      ({ from, at, name }) =>
        from !== 'read' || at === undefined || STANDS.has(name) || at >= change.at,
    )
  );
}

const comparedRow = (known: Extract<Known, { answer: 'compare' }>): OverallRow => ({
  about: known.about,
  measured: known.measured,
  target: known.target,
  unit: known.measuredUnit,
  isRight: !isOutside(known),
});

const targetRow = (known: Extract<Known, { answer: 'target' }>): OverallRow => ({
  about: known.about,
  measured: null,
  target: known.value,
  unit: known.unit,
  isRight: false,
});
