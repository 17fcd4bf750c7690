import fc from 'fast-check';
import type {
  PressureTestAnswer,
  SettlingAnswer,
  SettlingNext,
  TrendAnswer,
  VacuumHoldAnswer,
} from '../../core/advice/settling/settling-verdict.ts';
import type { Known } from '../../core/advice/verdict.ts';
import { TIMED_WORK, type TimedWorkId } from '../../core/terms/timed-work.ts';

/** What differs by it is its band: these are what the field watches. */
const about = fc.constantFrom('headPressure', 'suctionPressure', 'vacuum', 'testPressure');
const value = fc.double({ min: -20, max: 900, noNaN: true });
const pounds = fc.double({ min: 0, max: 600, noNaN: true });
/** Less than one is said as one. */
const minutes = fc.double({ min: 1, max: 600, noNaN: true });
const count = fc.integer({ min: 1, max: 12 });
const psi = pounds.map((read) => ({ value: read, unit: 'psi' as const }));
const degrees = fc.option(value.map((read) => ({ value: read, unit: 'degF' as const })));
const spread = fc.option(minutes);
const moving = fc.option(about);

const change = fc.oneof(
  fc.double({ min: -60, max: -0.2, noNaN: true }),
  fc.double({ min: 0.2, max: 60, noNaN: true }),
  fc.constant(0),
);
const moved = fc.record({ change, minutes });
const next: fc.Arbitrary<SettlingNext> = fc.oneof(
  fc.constant({ kind: 'nothing' as const }),
  fc.constant({ kind: 'takeAfter' as const }),
  about.map((again) => ({ kind: 'readAgain' as const, about: again })),
);

const held = fc.record({
  within: fc.double({ min: 0.5, max: 10, noNaN: true }),
  minutes,
  readings: count,
  isSteady: fc.boolean(),
  wantedMinutes: fc.constantFrom(5, 10, 20),
});

const trend: fc.Arbitrary<TrendAnswer> = fc.record({
  answer: fc.constant('trend'),
  about,
  place: fc.constant(null),
  value,
  unit: fc.constant('psi'),
  changeUnit: fc.constant('psi'),
  recent: moved,
  sinceChange: fc.option(moved, { freq: 2 }),
  held: fc.option(held, { freq: 2 }),
  agoMinutes: fc.oneof(fc.double({ min: 1, max: 9.5, noNaN: true }), minutes),
  next,
});

const settled: fc.Arbitrary<SettlingAnswer> = fc.record({
  answer: fc.constant('settled'),
  rows: fc.array(
    fc.record({
      about,
      place: fc.constant(null),
      within: fc.double({ min: 0.5, max: 10, noNaN: true }),
      changeUnit: fc.constant('psi'),
      minutes,
      sinceChange: fc.option(moved, { freq: 2 }),
    }),
    { minLength: 1, maxLength: 4 },
  ),
  next,
});

const eta: fc.Arbitrary<SettlingAnswer> = fc.record({
  answer: fc.constant('eta'),
  about: fc.constantFrom('boxTemp', 'productTemp'),
  target: value,
  unit: fc.constant('degF'),
  minutes,
  uncertainty: spread,
  readings: count,
});

const isWork = (id: string): id is TimedWorkId => id in TIMED_WORK;
const named = fc
  .constantFrom(...Object.keys(TIMED_WORK).filter(isWork))
  .map((work) => ({ work, about: TIMED_WORK[work].words[0] }));
const timer = fc.oneof(
  named,
  fc.constantFrom({ work: null, about: 'call the office' }, { work: null, about: null }),
);
/** Whole minutes: one begun counts as left. */
const timers = fc.array(fc.record({ timer, minutes: fc.integer({ min: 0, max: 600 }) }), {
  minLength: 1,
  maxLength: 3,
});

const vacuumHold: fc.Arbitrary<VacuumHoldAnswer> = fc.record({
  answer: fc.constant('vacuumHold'),
  verdict: fc.constantFrom(
    'tight',
    'holdingSoFar',
    'leak',
    'moisture',
    'offGassing',
    'moistureOrOffGassing',
    'readLonger',
  ),
  from: fc.double({ min: 20, max: 2000, noNaN: true }),
  to: fc.double({ min: 20, max: 20_000, noNaN: true }),
  unit: fc.constant('micron'),
  minutes,
  readings: count,
});

const pressureTest: fc.Arbitrary<PressureTestAnswer> = fc.record({
  answer: fc.constant('pressureTest'),
  verdict: fc.constantFrom('holds', 'leaks', 'rises', 'temperatureNotRead'),
  from: psi,
  to: psi,
  fromTemp: degrees,
  toTemp: degrees,
  expected: fc.option(psi),
  minutes,
});

/** Everything that is said of what settles, is timed or is left standing. */
export const settlingAnswer: fc.Arbitrary<Known> = fc
  .oneof<fc.Arbitrary<SettlingAnswer>[]>(
    trend,
    settled,
    fc.record({
      answer: fc.constant('tooSoon' as const),
      minutes,
      moving,
    }),
    fc.constant({ answer: 'secondChange' as const }),
    eta,
    timers.map((each) => ({ answer: 'timeLeft' as const, timers: each })),
    timers.map((each) => ({ answer: 'timeUp' as const, timers: each })),
    vacuumHold,
    pressureTest,
  )
  .map((of): Known => ({
    kind: 'known',
    formula: null,
    inputs: [],
    source: null,
    cautions: [],
    ...of,
  }));
