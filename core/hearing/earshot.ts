import { type NoiseMeasure, STANDS_OUT_DB } from './noise-meter.ts';

/** What a recogniser tells of the room: as a sentence ends, with its voice in it, or between two of them. */
export interface RoomNoise extends NoiseMeasure {
  readonly sentence: boolean;
}

/** `buried`: a voice spoke, and did not stand out of the noise at all. */
export type Standing = 'unmeasured' | 'fine' | 'tooLoud' | 'buried';

/** Whether a voice can be heard right where it is. */
export interface Earshot {
  readonly standing: Standing;
  /** The room without a voice, dB below full scale. */
  readonly noiseDb: number | null;
  /** The last voice that was heard; one that was buried, at its most. */
  readonly voiceDb: number | null;
  /** Measures in a row, between sentences, that speak against the standing. */
  readonly against: number;
}

export const UNMEASURED: Earshot = {
  standing: 'unmeasured',
  noiseDb: null,
  voiceDb: null,
  against: 0,
};

/**
 * In dB as the noise meter tells it. Measured by `npm run bench:hearing -- --held-out --condition "0 dB|-5 dB"
 * --sentences 150 --seed 21`.
 */
export const EARSHOT_POLICY = {
  tooLoudBelowDb: 5,
  fineFromDb: 6.5,
  /** Below it one value in six is asked about, and one sentence in ten must be said again. */
  clearFromDb: 10,
  /** A second each: noise must stay as it is before it is believed without a voice in it. */
  roomsInARow: 3,
  /** Where it is too loud, nothing is surer than this: every value is asked about before it is kept. */
  mostSure: 0.8,
} as const;

/** The standing after what was just told. */
export function afterNoise(before: Earshot, noise: RoomNoise): Earshot {
  return noise.sentence ? afterSentence(before, noise) : afterRoom(before, noise);
}

function afterSentence(before: Earshot, { noiseDb, snrDb }: RoomNoise): Earshot {
  if (snrDb === null) {
    return { standing: 'buried', noiseDb, voiceDb: noiseDb + STANDS_OUT_DB, against: 0 };
  }
  const was = before.standing === 'buried' ? 'tooLoud' : before.standing;
  return { standing: standingAt(snrDb, was), noiseDb, voiceDb: noiseDb + snrDb, against: 0 };
}

/** Nobody spoke: the last voice is taken to be as loud as it was. */
function afterRoom(before: Earshot, { noiseDb }: RoomNoise): Earshot {
  const heard = { ...before, noiseDb };
  if (before.voiceDb === null) return heard;
  const standing = standingAt(before.voiceDb - noiseDb, before.standing);
  if (standing === before.standing) return { ...heard, against: 0 };
  const against = before.against + 1;
  return against < EARSHOT_POLICY.roomsInARow
    ? { ...heard, against }
    : { ...heard, standing, against: 0 };
}

/** Between the two thresholds it stays what it was. */
function standingAt(snrDb: number, before: Standing): Standing {
  if (snrDb < EARSHOT_POLICY.tooLoudBelowDb) return before === 'buried' ? 'buried' : 'tooLoud';
  if (snrDb >= EARSHOT_POLICY.fineFromDb) return 'fine';
  return before === 'unmeasured' ? 'fine' : before;
}

export const isTooLoud = ({ standing }: Earshot): boolean =>
  standing === 'tooLoud' || standing === 'buried';

export type Clarity = 'clear' | 'fair' | 'tooLoud';

export function clarityOf(earshot: Earshot): Clarity {
  if (isTooLoud(earshot)) return 'tooLoud';
  const above = voiceAboveNoise(earshot);
  return above !== null && above >= EARSHOT_POLICY.clearFromDb ? 'clear' : 'fair';
}

/** What was heard, as sure as it can be there; nothing of a voice that was buried. */
export function heardThere<Heard extends { readonly confidence: number }>(
  { standing }: Earshot,
  alternatives: readonly Heard[],
): readonly Heard[] {
  if (standing === 'buried') return [];
  if (standing !== 'tooLoud') return alternatives;
  const { mostSure } = EARSHOT_POLICY;
  return alternatives.map((each) => ({ ...each, confidence: Math.min(each.confidence, mostSure) }));
}

/** Whole decibels of the last voice above the room as it is now; null before one was heard, and of one that was buried. */
export function voiceAboveNoise({ standing, voiceDb, noiseDb }: Earshot): number | null {
  if (standing === 'buried' || voiceDb === null || noiseDb === null) return null;
  return Math.round(voiceDb - noiseDb);
}
