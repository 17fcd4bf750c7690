import fc from 'fast-check';
import type { HistoryAnswer } from '../../core/advice/history-verdict.ts';
import type { HottestDayAnswer, LimitAnswer } from '../../core/advice/limits-verdict.ts';
import type { Known, MovedRow } from '../../core/advice/verdict.ts';
import { FINDING_STATES, PARTS, WORK_KINDS } from '../../core/terms/names.ts';
import { PROCEDURES } from '../../core/terms/procedures.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import { keyOf } from './keys.ts';

const working = { kind: 'known' as const, formula: null, inputs: [], source: null, cautions: [] };
const size = fc.double({ min: 1, max: 600, noNaN: true });
const pressure = fc.double({ min: 20, max: 600, noNaN: true });
const degrees = fc.double({ min: -20, max: 130, noNaN: true });
const side = fc.constantFrom('inside', 'past');

const limit: fc.Arbitrary<LimitAnswer> = fc.oneof(
  fc.record({
    answer: fc.constant('limit' as const),
    about: fc.constant('testPressure' as const),
    value: pressure,
    unit: fc.constant('psi' as const),
    ruledBy: fc.constantFrom('lowSide' as const, 'highSide' as const),
  }),
  fc.record({
    answer: fc.constant('limit' as const),
    about: fc.constant('cylinderFill' as const),
    value: size,
    unit: fc.constant('lb' as const),
    net: size,
    room: fc.option(fc.double({ min: -20, max: 60, noNaN: true })),
  }),
  fc.record({
    answer: fc.constant('limit' as const),
    about: fc.constant('charge' as const),
    value: size,
    unit: fc.constant('oz' as const),
    left: fc.oneof(fc.constantFrom(null, 0), fc.double({ min: -40, max: 90, noNaN: true })),
  }),
);

const hottestDay: fc.Arbitrary<HottestDayAnswer> = fc.record({
  answer: fc.constant('hottestDay'),
  value: pressure,
  unit: fc.constant('psi'),
  through: degrees.map((value) => ({
    about: 'condensingTemp' as const,
    value,
    unit: 'degF' as const,
  })),
  ambient: degrees.map((value) => ({
    about: 'designAmbientTemp' as const,
    value,
    unit: 'degF' as const,
  })),
  split: size.map((value) => ({ about: 'split' as const, value, unit: 'dF' as const })),
  splitFrom: fc.constantFrom('measured', 'design'),
  cutout: fc.option(fc.record({ limit: pressure, room: size, side })),
});

const row: fc.Arbitrary<MovedRow> = fc
  .record({
    refrigerant: fc.option(fc.constantFrom(...REFRIGERANTS)),
    unit: fc.constant('oz' as const),
    in: fc.constantFrom(0, 4, 18.5, 96),
    out: fc.constantFrom(0, 4, 30, 120),
    lost: fc.constantFrom(0, 0, 3),
    unweighed: fc.constantFrom(0, 0, 1, 2),
  })
  .map((of) => ({ ...of, net: of.in - of.out - of.lost }));

const day = fc.record({
  year: fc.constantFrom(2023, 2024, 2025),
  month: fc.integer({ min: 1, max: 12 }),
  day: fc.integer({ min: 1, max: 28 }),
});
const today = fc.option(day);
const found = fc.record({ part: keyOf(PARTS), state: keyOf(FINDING_STATES) });
const did = fc.record({ did: keyOf(WORK_KINDS), part: fc.option(keyOf(PARTS)) });
const recommendation = fc.record({
  id: fc.constant('01J00000000000000000000000'),
  at: fc.constant(0),
  recommendation: fc.record({
    do: fc.constantFrom('replace' as const, 'clean' as const, 'repair' as const),
    part: fc.option(keyOf(PARTS)),
    words: fc.constant('as said'),
  }),
  due: fc.option(day),
});

const history: fc.Arbitrary<HistoryAnswer> = fc.oneof(
  fc.record({
    answer: fc.constant('lastVisit' as const),
    today,
    on: day,
    found: fc.array(found, { maxLength: 3 }),
    did: fc.array(did, { maxLength: 3 }),
    left: fc.array(recommendation, { maxLength: 2 }),
    moved: fc.array(row, { maxLength: 2 }),
  }),
  fc.record({
    answer: fc.constant('lastDone' as const),
    today,
    did: keyOf(WORK_KINDS),
    part: fc.option(keyOf(PARTS)),
    on: fc.option(day),
    since: fc.option(day),
  }),
  fc.record({
    answer: fc.constant('seenBefore' as const),
    today,
    last: day,
    rows: fc.array(found, { maxLength: 3 }),
    unasked: fc.boolean(),
  }),
);

const left = fc.array(
  fc.record({
    part: keyOf(PARTS),
    as: fc.constantFrom(
      'closed' as const,
      'isolated' as const,
      'lockedOut' as const,
      'removed' as const,
      'bypassed' as const,
      'disabled' as const,
      'open' as const,
    ),
  }),
  { maxLength: 3 },
);

const weighed = fc.option(
  size.map((value) => ({ value, unit: 'oz' as const })),
  { freq: 2 },
);

/** What is told of limits, of the visit itself and of the ones before it. */
export const visitAnswer: fc.Arbitrary<Known> = fc.oneof(
  limit.map((of): Known => ({ ...working, ...of })),
  hottestDay.map((of): Known => ({ ...working, ...of })),
  history.map((of): Known => ({ ...working, ...of })),
  fc
    .record({ left, questions: fc.integer({ min: 0, max: 3 }) })
    .map((of): Known => ({ ...working, answer: 'leftOpen', ...of })),
  fc
    .record({
      rows: fc.array(row, { maxLength: 2 }),
      charge: fc.option(
        size.map((value) => ({ value, unit: 'oz' as const })),
        { freq: 2 },
      ),
      cylinder: fc.record({ gained: weighed, holds: weighed }),
    })
    .map((of): Known => ({ ...working, answer: 'moved', ...of })),
  keyOf(PROCEDURES).map((procedure): Known => ({ ...working, answer: 'stepsDone', procedure })),
);
