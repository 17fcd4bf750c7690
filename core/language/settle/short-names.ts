import type { PartId, PlaceId } from '../../terms/names.ts';
import type { Meaning } from '../rule.ts';
import type { Finding, Recommendation, Work } from '../utterance.ts';

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
];

/** What was told of last: in this sentence, and before it as a part and as a place. */
export type SpokenOf = readonly (PartId | PlaceId | null)[];

/** "Relay rattles and the contacts are burnt", "start cap's rated so much, the cap's weak": of what was spoken of. */
export function withShortNames(meaning: Meaning, spokenOf: SpokenOf): Meaning {
  const { findings, work, recommendations } = meaning;
  if ((findings ?? work ?? recommendations) === undefined) return meaning;
  return {
    ...meaning,
    ...(findings && { findings: findings.map((each) => meant(each, spokenOf)) }),
    ...(work && { work: work.map((each) => meant(each, spokenOf)) }),
    ...(recommendations && {
      recommendations: recommendations.map((each) => meant(each, spokenOf)),
    }),
  };
}

function meant<Told extends Finding | Work | Recommendation>(told: Told, spokenOf: SpokenOf): Told {
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
