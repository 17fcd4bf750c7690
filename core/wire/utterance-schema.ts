import { z } from 'zod';
import { EXPLAINS } from '../terms/explained-parts.ts';
import { READING_EVENTS } from '../terms/reading-events.ts';
import { GUIDES, LACKED } from '../terms/guides.ts';
import type { TalkNumber } from '../language/settle/talk-numbers.ts';
import type { Utterance } from '../language/utterance.ts';
import { HEATERS } from '../terms/names.ts';
import {
  amountSchema,
  answerableSchema,
  condenserSchema,
  condensingUnitSchema,
  causeSchema,
  chargeDoubtSchema,
  equipmentSchema,
  findingStateSchema,
  headControlSchema,
  judgedSchema,
  meteringSchema,
  monthSchema,
  partSchema,
  periodSchema,
  placeSchema,
  procedureTaskSchema,
  quantitySchema,
  refrigerantSchema,
  sightGlassSchema,
  unitSchema,
  valveKindSchema,
  weekdaySchema,
  workKindSchema,
} from './term-schema.ts';

const words = z.string();

const readingShape = {
  quantity: quantitySchema,
  value: z.number().exactOptional(),
  low: z.number().exactOptional(),
  high: z.number().exactOptional(),
  unit: unitSchema.nullable(),
  unitFrom: z.enum(['said', 'implied', 'unknown']),
  place: placeSchema.nullable(),
  words,
  hedged: z.literal(true).exactOptional(),
  overlimit: z.literal(true).exactOptional(),
  event: z.enum(READING_EVENTS).exactOptional(),
  when: z.literal('arrival').exactOptional(),
  afterMinutes: z.number().exactOptional(),
  gasTemp: amountSchema.exactOptional(),
  refrigerant: refrigerantSchema.exactOptional(),
};

export const readingSchema = z.strictObject(readingShape);

export const doubtSchema = z.strictObject({
  ...readingShape,
  why: z.enum([
    'outOfRange',
    'againstSibling',
    'noUnit',
    'hearsay',
    'soundsLike',
    'saidTwoWays',
    'expected',
  ]),
  or: z.number().exactOptional(),
});

export const factSchema = z.discriminatedUnion('fact', [
  z.strictObject({ fact: z.literal('refrigerant'), value: refrigerantSchema, words }),
  z.strictObject({ fact: z.literal('metering'), value: meteringSchema, words }),
  z.strictObject({ fact: z.literal('sightGlass'), value: sightGlassSchema, words }),
  z.strictObject({ fact: z.literal('condenser'), value: condenserSchema, words }),
  z.strictObject({ fact: z.literal('condensingUnit'), value: condensingUnitSchema, words }),
  z.strictObject({ fact: z.literal('headControl'), value: headControlSchema, words }),
  z.strictObject({
    fact: z.literal('equipment'),
    value: equipmentSchema,
    doors: z.number().exactOptional(),
    freezer: z.boolean().exactOptional(),
    words,
  }),
  z.strictObject({
    fact: z.literal('nameplate'),
    item: z.enum([
      'charge',
      'voltage',
      'upperVoltage',
      'ratedLoadAmps',
      'lockedRotorAmps',
      'minimumCircuitAmps',
      'maximumFuse',
      'highSide',
      'lowSide',
    ]),
    value: z.number(),
    unit: unitSchema,
    words,
  }),
  z.strictObject({
    fact: z.literal('heaterRating'),
    heater: z.enum(HEATERS),
    value: z.number(),
    unit: z.enum(['W', 'A']),
    words,
  }),
  z.strictObject({
    fact: z.literal('cause'),
    value: causeSchema,
    empty: z.literal(true).exactOptional(),
    words,
  }),
  z.strictObject({ fact: z.literal('cameTo'), do: workKindSchema, value: partSchema, words }),
  z.strictObject({ fact: z.literal('valves'), value: valveKindSchema, words }),
  z.strictObject({ fact: z.literal('chargeDoubt'), value: chargeDoubtSchema, words }),
  z.strictObject({ fact: z.literal('timeOnSite'), value: z.number(), words }),
  z.strictObject({ fact: z.literal('labor'), value: z.number(), words }),
  z.strictObject({ fact: z.literal('travel'), value: z.number(), words }),
  z.strictObject({ fact: z.literal('hereSince'), value: z.string(), words }),
  z.strictObject({ fact: z.literal('unit'), value: z.string(), words }),
  z.strictObject({ fact: z.literal('site'), value: z.string(), words }),
]);

export const findingSchema = z.strictObject({
  part: partSchema,
  state: findingStateSchema,
  unresolved: z.literal(true).exactOptional(),
  words,
});

export const workSchema = z.strictObject({
  did: workKindSchema,
  part: partSchema.nullable(),
  called: words.exactOptional(),
  locked: z.literal(true).exactOptional(),
  words,
});

const stretchShape = { amount: z.number().positive(), unit: periodSchema };
const said = z.enum(['by', 'on']);
const dayOfMonth = z.int().min(1).max(31);

const dueSchema = z.discriminatedUnion('kind', [
  z.strictObject({ said, kind: z.literal('in'), ...stretchShape }),
  z.strictObject({
    said,
    kind: z.literal('weekday'),
    weekday: weekdaySchema,
    next: z.literal(true).exactOptional(),
  }),
  z.strictObject({ said, kind: z.literal('dayOfMonth'), day: dayOfMonth }),
  z.strictObject({ said, kind: z.literal('date'), month: monthSchema, day: dayOfMonth }),
  z.strictObject({ said, kind: z.literal('words'), words }),
]);

export const recommendationSchema = z.strictObject({
  do: workKindSchema,
  part: partSchema.nullable(),
  called: words.exactOptional(),
  reason: words.exactOptional(),
  by: dueSchema.exactOptional(),
  every: z.strictObject(stretchShape).exactOptional(),
  words,
});

const about = answerableSchema.nullable();

export const questionSchema = z.discriminatedUnion('ask', [
  z.strictObject({
    ask: z.enum(['target', 'value', 'compare']),
    about,
    supposed: z
      .strictObject({ quantity: z.literal('ambientTemp'), value: z.number(), unit: unitSchema })
      .exactOptional(),
    each: z.literal(true).exactOptional(),
  }),
  z.strictObject({
    ask: z.literal('saturation'),
    value: z.number(),
    unit: unitSchema,
    refrigerant: refrigerantSchema.nullable(),
  }),
  z.strictObject({ ask: z.literal('margin'), about }),
  z.strictObject({ ask: z.literal('switch'), about: placeSchema.nullable() }),
  z.strictObject({
    ask: z.literal('limit'),
    about: z.enum(['testPressure', 'cylinderFill', 'charge']),
  }),
  z.strictObject({ ask: z.literal('judge'), about: judgedSchema }),
  z.strictObject({
    ask: z.literal('safety'),
    about: z.enum([
      'brazing',
      'opening',
      'charging',
      'venting',
      'resetting',
      'bypassing',
      'energising',
      'underVacuum',
      'nitrogen',
      'capacitor',
      'terminals',
      'cylinder',
      'air',
      'touching',
      'lockOut',
      'handling',
    ]),
  }),
  z.strictObject({
    ask: z.literal('eta'),
    about: quantitySchema,
    value: z.number().exactOptional(),
    unit: unitSchema.exactOptional(),
  }),
  z.strictObject({ ask: z.literal('steps'), about: procedureTaskSchema }),
  z.strictObject({ ask: z.literal('step'), to: z.enum(['next', 'back', 'again', 'which']) }),
  z.strictObject({
    ask: z.literal('history'),
    about: z.literal('again').exactOptional(),
    did: workKindSchema.exactOptional(),
    part: partSchema.exactOptional(),
  }),
  z.strictObject({ ask: z.literal('before'), about: answerableSchema.exactOptional() }),
  z.strictObject({ ask: z.literal('trend'), about: quantitySchema.nullable() }),
  z.strictObject({
    ask: z.enum([
      'causes',
      'nextCheck',
      'hottestDay',
      'standing',
      'beforeAfter',
      'readback',
      'note',
      'working',
      'timeLeft',
      'timeHere',
      'leftOpen',
      'moved',
      'makersFigure',
      'meaning',
      'whatStopped',
      'overall',
      'wait',
      'comeBack',
      'tellCustomer',
    ]),
  }),
  z.strictObject({ ask: z.literal('guide'), about: z.enum(GUIDES) }),
  z.strictObject({
    ask: z.literal('part'),
    about: z.union([partSchema, z.literal('nameplate')]).nullable(),
    of: z.enum(EXPLAINS),
  }),
  z.strictObject({ ask: z.literal('nextWithout'), about: z.enum(LACKED) }),
]);

export const commandSchema = z.discriminatedUnion('do', [
  z.strictObject({
    do: z.enum(['timer', 'extendTimer']),
    minutes: z.number(),
    about: z.string().nullable(),
  }),
  z.strictObject({ do: z.literal('stopTimer'), about: z.string().nullable() }),
  z.strictObject({
    do: z.literal('turnTo'),
    part: partSchema.nullable(),
    quantity: quantitySchema.nullable(),
    place: placeSchema.nullable(),
    words,
  }),
  z.strictObject({
    do: z.literal('amend'),
    quantity: quantitySchema.nullable(),
    place: placeSchema.exactOptional(),
    value: z.number(),
    unit: unitSchema.exactOptional(),
    total: z.literal(true).exactOptional(),
  }),
  z.strictObject({
    do: z.literal('undo'),
    quantity: quantitySchema.exactOptional(),
    value: z.number().exactOptional(),
    earlier: z.literal(true).exactOptional(),
    ago: z.number().exactOptional(),
  }),
  z.strictObject({ do: z.literal('useUnits'), units: z.array(unitSchema) }),
  z.strictObject({ do: z.literal('choose'), which: z.enum(['first', 'second']) }),
  z.strictObject({
    do: z.enum([
      'markBefore',
      'markAfter',
      'repeat',
      'pause',
      'resume',
      'yes',
      'no',
      'newVisit',
      'finish',
      'finishAnyway',
      'leaveSteps',
      'leaveOut',
      'help',
    ]),
  }),
]);

/** The shape of understood speech: what `understand` prints and the corpus is written in. */
export const utteranceSchema = z.strictObject({
  text: z.string(),
  readings: z.array(readingSchema),
  facts: z.array(factSchema),
  findings: z.array(findingSchema),
  work: z.array(workSchema),
  recommendations: z.array(recommendationSchema),
  questions: z.array(questionSchema),
  commands: z.array(commandSchema),
  memos: z.array(z.string()),
  remarks: z.array(z.string()),
  unclaimed: z.array(z.string()),
  doubts: z.array(doubtSchema),
}) satisfies z.ZodType<Utterance>;

/** A line of what `understand` prints: with the numbers of what was talk, where there are any. */
export type UnderstoodLine = Utterance & { readonly talk?: readonly TalkNumber[] };
