import type { PartId, PlaceId } from '../../terms/names.ts';
import type { Meaning } from '../rule.ts';
import { partId, placeId } from '../slots.ts';
import type { Reading, Work } from '../utterance.ts';

/** A name so short that it is taken for one part, and means another where that was spoken of. */
interface ShortName {
  readonly taken: PartId;
  readonly said: RegExp;
  /** Words that leave no doubt. */
  readonly whole: RegExp;
  readonly means: readonly PartId[];
}

const SHORT_NAMES: readonly ShortName[] = [
  {
    taken: 'runCapacitor',
    said: /\b(?:caps?|capacitors?)\b/i,
    whole: /\b(?:run|fan|dual|motor|condenser|compressor)\b/i,
    means: ['startCapacitor'],
  },
  {
    taken: 'contactor',
    said: /\b(?:contacts?|points)\b/i,
    whole: /\bcontactors?\b/i,
    means: [
      ...(['startRelay', 'defrostTimer', 'temperatureControl', 'highPressureSwitch'] as const),
      ...(['lowPressureSwitch', 'overload', 'doorSwitch', 'delayRelay'] as const),
    ],
  },
  { taken: 'fanBlade', said: /\bblades?\b/i, whole: /\bfan\b/i, means: ['plug'] },
  {
    taken: 'defrostHeater',
    said: /\bheaters?\b/i,
    whole: /\b(?:defrost|coil|evap|evaporator)\b/i,
    means: ['doorHeater', 'drainHeater', 'crankcaseHeater'],
  },
];

/** What was told of last: in this sentence, and before it as a part and as a place. */
export type SpokenOf = readonly (PartId | PlaceId | null)[];

/** "Relay rattles and the contacts are burnt", "start cap's rated so much, the cap's weak": of what was spoken of. */
export function withShortNames(meaning: Meaning, spokenOf: SpokenOf): Meaning {
  const { readings, findings, work, recommendations } = meaning;
  if ((readings ?? findings ?? work ?? recommendations) === undefined) return meaning;
  return {
    ...meaning,
    ...(readings && { readings: readings.map((each) => readAt(each, spokenOf)) }),
    ...(findings && { findings: findings.map((each) => meant(each, spokenOf)) }),
    ...(work && { work: work.map((each) => meant(each, spokenOf)) }),
    ...(recommendations && {
      recommendations: recommendations.map((each) => meant(each, spokenOf)),
    }),
  };
}

/** "Put a new drain heater in, new heater pulls point four": metered at that one. */
function readAt(reading: Reading, spokenOf: SpokenOf): Reading {
  const part = partId(reading.place ?? undefined);
  if (part === null) return reading;
  const place = placeId(meant({ part, words: reading.words }, spokenOf).part);
  return place === null ? reading : { ...reading, place };
}

function meant<Told extends Pick<Work, 'part' | 'words'>>(told: Told, spokenOf: SpokenOf): Told {
  const { part, words } = told;
  const short = SHORT_NAMES.find(
    ({ taken, said, whole }) => part === taken && said.test(words) && !whole.test(words),
  );
  if (short === undefined) return told;
  const here = short.means.find((each) => spokenOf[0] === each);
  const other = here ?? ofBefore(short, spokenOf);
  return other === undefined ? told : { ...told, part: other };
}

/** In this sentence something else was told of in between, or nothing was. */
function ofBefore({ taken, means }: ShortName, [here, ...before]: SpokenOf): PartId | undefined {
  if (here !== null || before.includes(taken)) return undefined;
  return means.find((each) => before.includes(each));
}
