import fc from 'fast-check';
import type {
  CauseRow,
  EvidenceRow,
  Known,
  Needs,
  NextCheck,
  Refused,
  TargetBasis,
  Verdict,
} from '../../core/advice/verdict.ts';
import { CHECK_SENTENCES, STEP_SENTENCES } from '../../core/replies/check-sentences.ts';
import { CAUSES } from '../../core/terms/causes.ts';
import {
  FINDING_STATES,
  PARTS,
  PLACES,
  SIGHT_GLASS_STATES,
  type PlaceId,
} from '../../core/terms/names.ts';
import { QUANTITIES, quantityTerm, type QuantityId } from '../../core/terms/quantities.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import { NEED_SENTENCES } from '../../core/replies/refusals.ts';
import { UNITS, type UnitId } from '../../core/units/units.ts';
import { keyOf } from './keys.ts';
import { circuitAnswer } from './random-circuit-verdicts.ts';
import { judgedAnswer } from './random-judged-verdicts.ts';
import { settlingAnswer } from './random-settling-verdicts.ts';
import { visitAnswer } from './random-visit-verdicts.ts';

const isQuantity = (id: string): id is QuantityId => id in QUANTITIES;
const isPlace = (id: string): id is PlaceId => id in PLACES;
const isUnit = (id: string): id is UnitId => id in UNITS;
const isNeed = (id: string): id is Needs['need'] => id in NEED_SENTENCES;

export const quantity = fc.constantFrom(...Object.keys(QUANTITIES).filter(isQuantity));
const place = fc.option(fc.constantFrom(...Object.keys(PLACES).filter(isPlace)), { nil: null });
export const refrigerant = fc.constantFrom(...REFRIGERANTS);
export const number = fc.double({ min: -60, max: 900, noNaN: true });
const size = fc.double({ min: 3, max: 400, noNaN: true });
const over = fc.constantFrom('over' as const, 'under' as const, 'on' as const);

export function unitOf(id: QuantityId): UnitId {
  const { dimension } = quantityTerm(id);
  const unit = Object.keys(UNITS)
    .filter(isUnit)
    .find((one) => UNITS[one].dimension === dimension);
  return unit ?? 'psi';
}

const working = { kind: 'known' as const, formula: null, inputs: [], source: null, cautions: [] };

const figure = fc
  .tuple(quantity, number)
  .map(([about, value]) => ({ about, value, unit: unitOf(about) }));

const basisOf = fc.constantFrom<TargetBasis>(
  'table',
  'ambientPlusSplit',
  'leavingWaterPlusApproach',
  'fanCycling',
  'headControl',
  'pullDown',
);

const target: fc.Arbitrary<Known> = fc
  .tuple(
    figure,
    fc.option(number, { freq: 2 }),
    fc.option(fc.tuple(size, over)),
    fc.boolean(),
    basisOf,
  )
  .map(([of, through, reading, band, basis]) => ({
    ...working,
    answer: 'target' as const,
    ...of,
    basis,
    ...(band && through === null ? { low: of.value - 2, high: of.value + 2 } : {}),
    ...(through === null || of.unit === 'degF'
      ? {}
      : { through: { about: 'condensingTemp' as const, value: through, unit: 'degF' as const } }),
    ...(reading
      ? {
          reading: {
            measured: of.value + reading[0],
            value: reading[0],
            unit: of.unit,
            direction: reading[1],
          },
        }
      : {}),
  }));

const value: fc.Arbitrary<Known> = fc
  .tuple(figure, place)
  .map(([of, at]) => ({ ...working, answer: 'value' as const, ...of, place: at, at: null }));

/** Head is the one that is told in degrees too: as often as all the others together. */
const compared = fc.oneof(
  figure,
  number.map((value) => ({ about: 'headPressure' as const, value, unit: 'psi' as const })),
);

const compare: fc.Arbitrary<Known> = fc
  .tuple(compared, size, over, basisOf, fc.constantFrom(null, 0.5, 2))
  .map(([{ about, value: wanted, unit }, off, direction, basis, band]) => ({
    ...working,
    answer: 'compare' as const,
    basis,
    about,
    measured: wanted + { over: off, under: -off, on: 2 }[direction],
    target: wanted,
    measuredUnit: unit,
    value: off,
    unit,
    direction,
    ...(band === null ? {} : { low: wanted - off * band, high: wanted + off * band }),
    ...(about === 'headPressure'
      ? {
          alongside: {
            about: 'condensingTemp' as const,
            value: off / 2,
            unit: 'dF' as const,
            direction,
          },
        }
      : {}),
  }));

const saturation: fc.Arbitrary<Known> = fc
  .tuple(refrigerant, number, number, fc.option(number))
  .map(([id, given, result, bubble]) => ({
    ...working,
    answer: 'saturation' as const,
    refrigerant: id,
    given: { value: given, unit: 'degF' as const },
    value: result,
    unit: 'psi' as const,
    phase: 'dew' as const,
    ...(bubble === null ? {} : { bubble }),
  }));

const margin: fc.Arbitrary<Known> = fc
  .tuple(
    fc.constantFrom('highCutoutPressure' as const, 'lowCutoutPressure' as const),
    number,
    number,
    fc.constantFrom('inside' as const, 'past' as const),
    fc.option(
      fc.record({
        head: number,
        limit: number,
        room: size,
        side: fc.constantFrom('inside' as const, 'past' as const),
      }),
      { freq: 2 },
    ),
  )
  .map(([about, measured, limit, side, hottest]) => ({
    ...working,
    answer: 'margin' as const,
    about,
    measured,
    limit,
    value: Math.abs(limit - measured),
    unit: 'psi' as const,
    side,
    ...(hottest === null ? {} : { hottest }),
  }));

const row = fc
  .tuple(quantity, place, fc.option(number), fc.option(number))
  .map(([about, at, before, after]) => ({
    about,
    place: at,
    before: before ?? (after === null ? 0 : null),
    after,
    unit: unitOf(about),
    change: before === null || after === null ? null : after - before,
    changeUnit: unitOf(about),
  }));

const beforeAfter: fc.Arbitrary<Known> = fc
  .array(row, { minLength: 1, maxLength: 4 })
  .map((rows) => ({ ...working, answer: 'beforeAfter' as const, rows }));

const rows: fc.Arbitrary<Known> = fc
  .tuple(
    fc.constantFrom('before' as const, 'readback' as const),
    fc.array(fc.tuple(figure, place), { minLength: 1, maxLength: 4 }),
  )
  .map(([answer, figures]) => ({
    ...working,
    answer,
    rows: figures.map(([of, at]) => ({ ...of, place: at })),
  }));

export const plainKnown = fc.oneof(target, value, compare, saturation, margin, beforeAfter, rows);

const cause = keyOf(CAUSES);
const between = fc.array(cause, { maxLength: 2 });

const nextCheck: fc.Arbitrary<NextCheck> = fc.oneof(
  keyOf(STEP_SENTENCES).map((step) => ({ next: 'step' as const, step })),
  fc.record({ next: fc.constant('check' as const), check: keyOf(CHECK_SENTENCES), between }),
  fc.record({ next: fc.constant('read' as const), need: keyOf(NEED_SENTENCES), between }),
);

const evidence: fc.Arbitrary<EvidenceRow> = fc.oneof(
  fc
    .tuple(figure, over)
    .map(([of, direction]) => ({ kind: 'deviation' as const, ...of, direction })),
  figure.map((of) => ({ kind: 'reading' as const, ...of })),
  fc.record({
    kind: fc.constant('finding' as const),
    part: keyOf(PARTS),
    state: keyOf(FINDING_STATES),
  }),
  fc.record({ kind: fc.constant('sightGlass' as const), state: keyOf(SIGHT_GLASS_STATES) }),
);

const causeRow: fc.Arbitrary<CauseRow> = fc.record({
  cause,
  standing: fc.constantFrom('leading' as const, 'possible' as const, 'unlikely' as const),
  for: fc.array(evidence, { minLength: 1, maxLength: 4 }),
  against: fc.array(evidence, { maxLength: 4 }),
});

const causes: fc.Arbitrary<Known> = fc
  .tuple(fc.array(causeRow, { maxLength: 5 }), fc.array(quantity, { maxLength: 3 }), nextCheck)
  .map(([rows, notRead, next]) => ({
    ...working,
    answer: 'causes' as const,
    causes: rows,
    notRead,
    next,
  }));

export const known: fc.Arbitrary<Known> = fc.oneof(
  { arbitrary: plainKnown, weight: 2 },
  { arbitrary: circuitAnswer, weight: 1 },
  { arbitrary: settlingAnswer, weight: 2 },
  { arbitrary: judgedAnswer, weight: 2 },
  { arbitrary: visitAnswer, weight: 2 },
  { arbitrary: causes, weight: 1 },
  {
    arbitrary: nextCheck.map((next): Known => ({ ...working, answer: 'nextCheck', ...next })),
    weight: 1,
  },
  { arbitrary: plainKnown.map((of): Known => ({ ...working, answer: 'working', of })), weight: 1 },
  { arbitrary: fc.constant<Known>({ ...working, answer: 'note' }), weight: 1 },
);

const about = fc.option(quantity);

const refused: fc.Arbitrary<Refused> = fc.oneof(
  fc
    .tuple(
      about,
      refrigerant,
      number,
      fc.constantFrom('aboveCritical', 'belowTriple', 'belowRange', 'aboveRange'),
    )
    .map(([of, id, limit, reason]) => ({
      kind: 'refused' as const,
      about: of,
      reason,
      refrigerant: id,
      limit,
      unit: 'degF' as const,
    })),
  fc
    .tuple(
      about,
      fc.constantFrom(
        'noTargetKnown',
        'targetChangesWithTheCycle',
        'suctionAboveHead',
        'nothingRecorded',
        'nothingAnsweredYet',
        'whichQuantity',
        'noCircuitKnown',
        'notASwitch',
        'unitNotNamed',
        'whichSite',
        'noEarlierVisit',
      ),
    )
    .map(([of, reason]) => ({ kind: 'refused' as const, about: of, reason })),
  fc
    .constantFrom('brazing', 'opening', 'charging', 'venting', 'resetting', 'energising')
    .map((topic) => ({
      kind: 'refused' as const,
      about: null,
      reason: 'deferredToTheCode' as const,
      topic,
    })),
);

const needs: fc.Arbitrary<Needs> = fc
  .tuple(about, fc.constantFrom(...Object.keys(NEED_SENTENCES).filter(isNeed)))
  .map(([of, need]) => ({ kind: 'needs' as const, about: of, need }));

export const verdict: fc.Arbitrary<Verdict> = fc.oneof(
  { arbitrary: known, weight: 4 },
  { arbitrary: refused, weight: 1 },
  { arbitrary: needs, weight: 1 },
);
