import type { Question, Supposed } from '../language/utterance.ts';
import type { LackedId } from '../terms/guides.ts';
import type { JudgedId } from '../terms/judged.ts';
import { QUANTITIES, type AnswerableId, type QuantityId } from '../terms/quantities.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { UnitId } from '../units/units.ts';
import { findLostLeg, lostLeg } from './circuit/lost-leg.ts';
import { cylinderWeights } from '../visit/cylinder-weights.ts';
import { maybeBackOn, surelyLeftOpen } from '../visit/power-back.ts';
import type { VisitState } from '../visit/state.ts';
import { timerOf } from '../visit/timers.ts';
import { isNewer, latestReading } from '../visit/views.ts';
import { NO_TARGET } from './aimpoint.ts';
import type { Members } from './by-kind.ts';
import { READ, settle } from './carried.ts';
import { causesOf } from './causes/causes-of.ts';
import { nextCheckOf } from './causes/next-check-of.ts';
import type { Lacks } from './causes/next-of.ts';
import { fluidCautionsOf, safetyCautions } from './cautions.ts';
import { isTracing } from './circuit/next-place.ts';
import { standsStill, tracedFault, tracedNext } from './circuit/stopped.ts';
import { switchAnswer } from './circuit/switch-answer.ts';
import { compared, deviationNow } from './compare.ts';
import { currentReading } from './current.ts';
import type { Found } from './found.ts';
import { guided } from './guides.ts';
import { hottestDay } from './hottest-day.ts';
import { cameBack, historyOf } from './history.ts';
import { airInside, standingWanted, standsAnew } from './judged/air-inside.ts';
import { judge } from './judged/judge.ts';
import { explained, toComeBack, waitOf } from './led.ts';
import { limitFound } from './limits.ts';
import { limitOf, marginTo } from './margin.ts';
import { meaningOf, sawLast, tracedLast, whatStopped, type Ways } from './meaning.ts';
import { measured } from './measured.ts';
import { movedRows } from './moved.ts';
import { firstOff, furthestOff, isRight, overall } from './overall.ts';
import { type Saturated, saturated } from './saturation-answer.ts';
import { productRows } from './sheet.ts';
import { beginSteps, moveSteps } from './steps/steps-answer.ts';
import { OF_THE_CYCLE } from './settling/bands.ts';
import { etaOf } from './settling/eta.ts';
import { pressureTestOf } from './settling/pressure-test.ts';
import type { SettlingAnswer } from './settling/settling-verdict.ts';
import { timeLeftOf } from './settling/time-left.ts';
import { supposing } from './supposing.ts';
import { timeHereOf } from './time-here.ts';
import { beforeAfterOf, beforeOf, NOTHING_RECORDED, readbackOf, workingOf } from './told-back.ts';
import { trendOf } from './settling/trend.ts';
import { unasked } from './settling/unasked.ts';
import { toldHoldOf, vacuumHoldOf } from './settling/vacuum-hold.ts';
import { readTogether, spokenOf } from './subject.ts';
import { wanted } from './targets.ts';
import type { Known, NextCheck, Refused, Verdict } from './verdict.ts';

/** What was answered before: "how far off is that" and "where does that come from" look back at it. */
export interface AnswerMemory {
  readonly lastAnswer: Known | null;
  /** Earlier visits. */
  readonly past?: readonly VisitState[];
}

interface Asked {
  readonly state: VisitState;
  readonly memory: AnswerMemory;
}

/** Questions about one quantity, or about "that". */
type OfQuantity = Extract<Question, { readonly ask: 'target' | 'value' | 'compare' }>;
type Other = Exclude<Question, OfQuantity>;
type Ask = Other['ask'];
type Questions = Members<Other, 'ask'>;
type Find = (about: AnswerableId, state: VisitState) => Verdict;

const OF_QUANTITY: Record<OfQuantity['ask'], Find> = {
  target: targetOf,
  value: valueOf,
  compare: comparisonOf,
};

const findFor = (question: OfQuantity): Find =>
  question.ask === 'target' && question.supposed !== undefined
    ? targetSupposing(question.supposed)
    : OF_QUANTITY[question.ask];

const isOfQuantity = (question: Question): question is OfQuantity => question.ask in OF_QUANTITY;

type Answering = { readonly [A in Ask]: (question: Questions[A], asked: Asked) => Verdict };

const ANSWERS: Answering = {
  saturation: (question, { state }) => saturationOf(question, state),
  margin: ({ about }, { state }) => marginOf(about, state),
  before: ({ about }, { state }) => beforeOf(state, about),
  beforeAfter: (_question, { state }) => beforeAfterOf(state),
  readback: (_question, { state }) => readbackOf(state),
  note: (_question, { state }) =>
    state.visit === null ? NOTHING_RECORDED : { ...READ, answer: 'note' },
  working: (_question, { memory, state }) => workingOf(memory.lastAnswer, state),
  safety: ({ about }, { state }) => ({
    kind: 'refused',
    about: null,
    reason: 'deferredToTheCode',
    topic: about,
    cautions: safetyCautions(about, state),
  }),
  switch: ({ about }, { state }) => switchAnswer(about, state),
  judge: ({ about }, { state }) =>
    about === 'pressureTest' && holdsVacuum(state)
      ? told(vacuumHoldOf(state), 'vacuum')
      : settle(judge(about, state), null, (found, carried) => ({ ...carried, ...found })),
  hottestDay: (_question, { state }) =>
    settle(hottestDay(state), 'headPressure', (found, carried) => ({ ...carried, ...found })),
  standing: (_question, { state }) => toldSaturated(standingWanted(state)),
  limit: ({ about }, { state }) =>
    settle(limitFound(about, state), null, (found, carried) => ({ ...carried, ...found })),
  eta: (question, { state }) => told(etaOf(question, state), question.about),
  trend: ({ about }, asked) => trendAsked(about, asked),
  causes: (_question, { state }) => tracedFault(state) ?? causesTold(state),
  nextCheck: (_question, { state }) => tracedNext(state) ?? nextTold(state),
  leftOpen: (_question, { state }) => ({
    ...READ,
    answer: 'leftOpen',
    left: surelyLeftOpen(state).map(({ part, as }) => ({ part, as })),
    questions: state.doubts.length + state.leftOver.length + maybeBackOn(state).length,
  }),
  moved: (_question, { state }) => ({
    ...READ,
    answer: 'moved',
    rows: movedRows(state),
    charge: state.unit.nameplate.charge ?? null,
    cylinder: cylinderWeights(state),
  }),
  makersFigure: () => NO_TARGET,
  meaning: (_question, { state }) => meaningOf(state, MEANS),
  whatStopped: (_question, { state }) => whatStopped(state, { ...MEANS, margin: marginOf }),
  overall: (_question, { state }) => overall(state, { compare: comparisonOf, target: targetOf }),
  wait: (_question, { state }) =>
    state.timers.length > 0 ? told(timeLeftOf(state), null) : waitOf(state, trendOfOne),
  comeBack: (_question, { state }) => toComeBack(state),
  tellCustomer: (_question, { state }) =>
    state.visit === null ? NOTHING_RECORDED : { ...READ, answer: 'note', for: 'customer' },
  guide: ({ about }, { state }) => guided(about, state),
  part: (question, { state }) => explained(question, state),
  nextWithout: ({ about }, { state, memory }) => nextWithout(about, state, memory.lastAnswer),
  steps: ({ about }, { state }) => beginSteps(about, state),
  step: ({ to }, { state }) => moveSteps(to, state),
  timeLeft: (_question, { state }) => told(timeLeftOf(state), null),
  timeHere: (_question, { state }) => timeHereOf(state),
  history: (question, { state, memory }) => historyTold(question, state, memory.past ?? []),
};

const MEANS: Ways = { causes: causesTold, compare: comparisonOf };

function causesTold(state: VisitState): Verdict {
  return settle(causesOf(state), null, (found, carried) => ({
    ...carried,
    answer: 'causes',
    ...found,
  }));
}

const nextTold = (state: VisitState, lacks: Lacks | null = null): Verdict =>
  checked(nextCheckOf(state, lacks));

const checked = (found: Found<NextCheck>): Verdict =>
  settle(found, null, (next, carried) => ({ ...carried, answer: 'nextCheck', ...next }));

/** What can be done without it: without a meter a stopped compressor is only looked at. */
function nextWithout(lacked: LackedId, state: VisitState, last: Known | null): Verdict {
  if (lacked === 'meter' && (standsStill(state) || isTracing(state)))
    return guided('noMeter', state);
  const lacks = { lacked, last: last?.answer === 'nextCheck' ? last : null };
  const traced = lacked === 'gauges' ? tracedNext(state) : null;
  return traced ?? nextTold(state, lacks);
}

/**
 * The answer to a question, as data. Pressures in it are gauge, by the local air at the visit's altitude;
 * values are in the visit's units. What is missing comes back as a need, one at a time.
 */
export function answer(question: Question, state: VisitState, memory: AnswerMemory): Verdict {
  const asked = { state, memory };
  const verdict = isOfQuantity(question) ? ofQuantity(question, asked) : answering(question, asked);
  if (verdict.kind !== 'known') return verdict;
  const cautions = [...new Set([...verdict.cautions, ...fluidCautionsOf(state)])];
  return { ...verdict, cautions };
}

function answering<A extends Ask>(
  question: Questions[A] & { readonly ask: A },
  asked: Asked,
): Verdict {
  const find: Answering[A] = ANSWERS[question.ask];
  return find(question, asked);
}

function told(found: Found<SettlingAnswer>, about: AnswerableId | null): Verdict {
  return settle(found, about, (answered, carried) => ({ ...carried, ...answered }));
}

/** What the visit itself gives reason to say after a sentence: something has settled, a hold is over. */
export function unaskedVerdicts(
  before: VisitState,
  after: VisitState,
  past: readonly VisitState[] = [],
): readonly Verdict[] {
  const again = cameBack(before, after, past);
  return [
    ...(again === null ? [] : [{ ...READ, ...again }]),
    ...legJustLost(before, after),
    ...unasked(before, after).map((found) => told(found, null)),
    ...(standsAnew(before, after) ? airBy(after) : []),
  ];
}

/** Not left until somebody asks: on two legs a motor burns within minutes. */
function legJustLost(before: VisitState, after: VisitState): readonly Verdict[] {
  const leg = lostLeg(after);
  return leg === null || lostLeg(before) !== null ? [] : [checked(findLostLeg(leg))];
}

/** A pressure at rest is read to see whether air is in it. */
function airBy(state: VisitState): readonly Verdict[] {
  const verdict = settle(airInside(state), null, (found, carried) => ({ ...carried, ...found }));
  return verdict.kind === 'known' ? [verdict] : [];
}

function historyTold(
  question: Extract<Question, { readonly ask: 'history' }>,
  state: VisitState,
  past: readonly VisitState[],
): Verdict {
  const found = historyOf(question, state, past);
  return 'reason' in found ? { kind: 'refused', about: null, ...found } : { ...READ, ...found };
}

/** "Has it settled" is about what was spoken of, and else about the pressures of the cycle. */
function trendAsked(about: QuantityId | null, asked: Asked): Verdict {
  if (about !== null) return trendOfOne(about, asked.state);
  const spoken = spokenOf(asked.state, asked.memory.lastAnswer).filter(isRead);
  const meant = [...spoken, ...OF_THE_CYCLE];
  const verdicts = meant.map((one) => trendOfOne(one, asked.state));
  return verdicts.find(({ kind }) => kind === 'known') ?? verdicts[0] ?? WHICH;
}

/** "Did it hold" is asked of a vacuum as of a pressure: of whichever was put to the test last. */
function holdsVacuum(state: VisitState): boolean {
  const hold = timerOf(state, 'vacuumHold');
  const tested = latestReading(state, 'testPressure');
  return hold !== null && (tested === null || isNewer(state, hold.id, tested.id));
}

function trendOfOne(about: QuantityId, state: VisitState): Verdict {
  if (about === 'vacuum') {
    const hold = timerOf(state, 'vacuumHold') ? vacuumHoldOf(state) : toldHoldOf(state);
    if (hold !== null) return told(hold, about);
  }
  if (about === 'testPressure') return told(pressureTestOf(state), about);
  return told(trendOf(about, state), about);
}

/** "How far off am I" is of what has a target, where what was spoken of has none. */
function ofQuantity(question: OfQuantity, asked: Asked): Verdict {
  const isOfThat = question.ask === 'compare' && question.about === null;
  if (isOfThat && (sawLast(asked.state) || tracedLast(asked.state)))
    return meaningOf(asked.state, MEANS);
  const verdict = firstKnown(question.about, asked, findFor(question));
  if (isOfThat && isRight(verdict)) {
    // A box on its way down is off until it is there: its circuit is meant.
    const together = readTogether(asked.state, verdict.about).filter(
      (about) => about !== 'boxTemp',
    );
    return firstOff(together, asked.state, comparisonOf) ?? verdict;
  }
  const isAimless = verdict.kind === 'refused' && AIMLESS.has(verdict.reason);
  return question.ask === 'compare' && question.about === null && isAimless
    ? (furthestOff(asked.state, comparisonOf) ?? verdict)
    : verdict;
}

const AIMLESS: ReadonlySet<Refused['reason']> = new Set<Refused['reason']>([
  'noTargetKnown',
  'whichQuantity',
]);

/** The quantity asked about; for "that", the first of those spoken of that can be answered, or asked for. */
function firstKnown(about: AnswerableId | null, { state, memory }: Asked, find: Find): Verdict {
  const meant = about === null ? spokenOf(state, memory.lastAnswer) : [about];
  const verdicts = meant.map((one) => find(one, state));
  const best = (kind: Verdict['kind']): Verdict | undefined =>
    verdicts.find((verdict) => verdict.kind === kind);
  const reasoned = verdicts.find(
    (verdict) => verdict.kind === 'refused' && !AIMLESS.has(verdict.reason),
  );
  return best('known') ?? best('needs') ?? reasoned ?? best('refused') ?? WHICH;
}

const WHICH: Refused = { kind: 'refused', about: null, reason: 'whichQuantity' };

function targetOf(about: AnswerableId, state: VisitState): Verdict {
  if (about === 'vacuum') return guided('vacuumDepth', state);
  return settle(wanted(about, state), about, (target, carried) => {
    const reading = deviationNow(about, target, state);
    return { ...carried, answer: 'target', about, ...target, ...(reading ? { reading } : {}) };
  });
}

/** For a day that is not this one: how far off the reading is would tell nothing. */
const targetSupposing =
  (supposed: Supposed): Find =>
  (about, state) => {
    const verdict = targetOf(about, supposing(state, supposed));
    if (verdict.kind !== 'known' || verdict.answer !== 'target') return verdict;
    const { reading: _, ...target } = verdict;
    const inputs = target.inputs.map((input) =>
      input.name === supposed.quantity ? { ...input, from: 'assumed' as const } : input,
    );
    return { ...target, inputs, supposed };
  };

function valueOf(about: AnswerableId, state: VisitState): Verdict {
  const products = about === 'productTemp' ? productRows(state, 'ever') : [];
  if (products.length > 1) return { ...READ, answer: 'readback', rows: products };
  const [product] = products;
  const found = measured(about, state);
  const place = isRead(about) ? (currentReading(state, about)?.reading.place ?? null) : null;
  const at = found.kind === 'known' ? found.at : null;
  return settle(found, about, (amount, carried) => ({
    ...carried,
    answer: 'value',
    about,
    ...amount,
    place,
    ...(product?.of === undefined ? {} : { of: product.of }),
    at,
  }));
}

const isRead = (about: AnswerableId): about is QuantityId => about in QUANTITIES;

/** Quantities that have no target but a rating, a tolerance or a limit: "are my amps ok". */
const JUDGED_BY: Partial<Record<AnswerableId, JudgedId>> = {
  current: 'compressorCurrent',
  voltage: 'supplyVoltage',
  capacitance: 'runCapacitor',
  resistance: 'windings',
  insulationResistance: 'insulation',
  testPressure: 'pressureTest',
  dischargeLineTemp: 'dischargeLine',
  productTemp: 'food',
};

/** "Is that good", of what was read off the start capacitor. */
const isOfStartCan = (about: AnswerableId, { lastPlace }: VisitState): boolean =>
  about === 'capacitance' && lastPlace === 'startCapacitor';

function comparisonOf(about: AnswerableId, state: VisitState): Verdict {
  if (about === 'vacuum') {
    const hold = timerOf(state, 'vacuumHold') ? vacuumHoldOf(state) : toldHoldOf(state);
    if (hold !== null) return told(hold, about);
  }
  const judged = isOfStartCan(about, state) ? 'startCapacitor' : JUDGED_BY[about];
  if (judged !== undefined) {
    return settle(judge(judged, state), about, (found, carried) => ({ ...carried, ...found }));
  }
  return settle(compared(about, state), about, (comparison, carried) => ({
    ...carried,
    ...comparison,
  }));
}

function saturationOf(
  question: {
    readonly value: number;
    readonly unit: UnitId;
    readonly refrigerant: RefrigerantId | null;
  },
  state: VisitState,
): Verdict {
  const { value, unit, refrigerant } = question;
  return toldSaturated(saturated({ value, unit }, refrigerant, state));
}

function toldSaturated(found: Found<Saturated>): Verdict {
  return settle(found, null, (at, carried) => ({
    ...carried,
    answer: 'saturation',
    phase: 'dew',
    ...at,
  }));
}

/** With the hottest day told, what is left of the margin then comes along. */
function marginOf(about: AnswerableId | null, state: VisitState): Verdict {
  const limit = limitOf(about ?? state.lastQuantity);
  const hottest = limit === 'highCutoutPressure' ? hottestDay(state) : null;
  const then = hottest?.kind === 'known' ? hottest : null;
  return settle(marginTo(limit, state), limit, (margin, carried) => ({
    ...carried,
    answer: 'margin',
    about: limit,
    ...margin,
    ...(then?.value.cutout ? { hottest: { head: then.value.value, ...then.value.cutout } } : {}),
    ...(then === null ? {} : { inputs: [...carried.inputs, ...then.inputs] }),
  }));
}
