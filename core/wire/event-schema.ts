import { z } from 'zod';
import { ALTITUDE_RANGE_M, BAROMETER_RANGE_KPA } from '../units/atmosphere.ts';
import type { EventBody, VisitEvent } from '../visit/events.ts';
import { POWER_PARTS } from '../terms/names.ts';
import {
  partSchema,
  placeSchema,
  procedureSchema,
  quantitySchema,
  unitHabitSchema,
} from './term-schema.ts';
import {
  doubtSchema,
  factSchema,
  findingSchema,
  questionSchema,
  readingSchema,
  recommendationSchema,
  workSchema,
} from './utterance-schema.ts';

const ulid = z
  .string()
  .regex(/^[0-9A-HJKMNP-TV-Z]{26}$/, 'a ULID: 26 characters of Crockford base 32');

const envelope = {
  id: ulid,
  device: ulid,
  seq: z.int().min(1),
  visit: ulid,
  at: z.int().min(0),
  // UTC-12:00 to UTC+14:00. Events of before it was kept have none.
  utcOffset: z
    .int()
    .min(-12 * 60)
    .max(14 * 60)
    .exactOptional(),
  v: z.literal(1),
};

const settings = z.strictObject({
  units: unitHabitSchema,
  altitudeM: z.number().min(ALTITUDE_RANGE_M.low).max(ALTITUDE_RANGE_M.high),
  barometerKpa: z
    .number()
    .min(BAROMETER_RANGE_KPA.low)
    .max(BAROMETER_RANGE_KPA.high)
    .exactOptional(),
});

const wordedPassage = z.strictObject({
  reader: z.enum(['customer', 'office']),
  kind: z.string().max(40),
  text: z.string().max(4000),
});

const powerParts = z.array(z.enum(POWER_PARTS)).min(1).readonly();

const event = <Type extends EventBody['type'], Shape extends z.ZodRawShape>(
  type: Type,
  shape: Shape,
) => z.strictObject({ ...envelope, type: z.literal(type), ...shape });

/** One event of a visit, as it crosses from page to log and from log to server. */
export const visitEventSchema = z.discriminatedUnion('type', [
  event('visitOpened', { settings }),
  event('settingsChanged', { settings }),
  event('readingTaken', { reading: readingSchema }),
  event('readingAmended', { target: ulid, reading: readingSchema }),
  event('factStated', { fact: factSchema }),
  event('findingReported', { finding: findingSchema }),
  event('workDone', { work: workSchema }),
  event('recommendationMade', { recommendation: recommendationSchema }),
  event('memoTaken', { memo: z.string(), remark: z.literal(true).exactOptional() }),
  event('doubtRaised', { doubt: doubtSchema }),
  event('doubtSettled', { target: ulid, kept: z.boolean() }),
  event('numberLeftOver', { digits: z.string(), words: z.string() }),
  event('leftOverDropped', { target: ulid }),
  event('entryTakenBack', { target: ulid }),
  event('questionAsked', { question: questionSchema }),
  event('readingWanted', { quantity: quantitySchema, place: placeSchema.exactOptional() }),
  event('turnedTo', {
    part: partSchema.nullable(),
    quantity: quantitySchema.nullable(),
    place: placeSchema.nullable(),
    words: z.string(),
  }),
  event('timerStarted', { minutes: z.number().positive(), about: z.string().nullable() }),
  event('timerExtended', { target: ulid, minutes: z.number().positive() }),
  event('timerStopped', { target: ulid }),
  event('timerRang', { target: ulid }),
  event('beforeMarked', {}),
  event('afterMarked', {}),
  event('stepsBegun', { procedure: procedureSchema }),
  event('stepReached', { step: z.int().min(1) }),
  event('stepsLeft', {}),
  event('putBackAsked', { parts: powerParts }),
  event('putBackDenied', { parts: powerParts }),
  event('finishHeld', {}),
  event('visitFinished', {}),
  event('noteWorded', { passages: z.array(wordedPassage).max(100).readonly() }),
]) satisfies z.ZodType<VisitEvent>;

/** A device sends what the server has not confirmed, in its own order; sending again does no harm. */
export const pushRequestSchema = z.strictObject({
  device: ulid,
  events: z.array(visitEventSchema).min(1).max(500),
});
export type PushRequest = z.infer<typeof pushRequestSchema>;

/** `confirmed`: every event of that device up to this place is on the server's disk. */
export const pushResponseSchema = z.strictObject({ device: ulid, confirmed: z.int().min(0) });
export type PushResponse = z.infer<typeof pushResponseSchema>;

export const errorResponseSchema = z.strictObject({
  error: z.strictObject({
    kind: z.enum(['badRequest', 'conflict', 'tooLarge', 'notFound', 'storage']),
    message: z.string(),
    path: z.string().exactOptional(),
  }),
});
export type ErrorResponse = z.infer<typeof errorResponseSchema>;
