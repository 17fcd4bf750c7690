/** Faults that a source names for readings that it gives: the matcher is held against its conclusion. */
import { believe, ranked } from '../../../core/advice/causes/belief.ts';
import type { Levels } from '../../../core/advice/causes/arrows.ts';
import { levelsOf } from '../../../core/advice/causes/levels-of.ts';
import { gather } from '../../../core/advice/causes/gather.ts';
import { feedOf } from '../../../core/advice/causes/matrix.ts';
import type { Feed } from '../../../core/advice/causes/matrix-row.ts';
import { ratiosOfSeen, type Ratios } from '../../../core/advice/causes/observation.ts';
import { PRIORS } from '../../../core/advice/causes/priors.ts';
import { SYMPTOMS, type SymptomId } from '../../../core/advice/causes/symptom.ts';
import type { Standing } from '../../../core/calculations/formula.ts';
import type { CauseId } from '../../../core/terms/causes.ts';
import type { VisitState } from '../../../core/visit/state.ts';

interface FromSource {
  readonly title: string;
  readonly source: string;
  readonly standing: Standing;
  /** What the source names; several where its words cover several rows. */
  readonly named: readonly CauseId[];
  /** Where the source contradicts others, or its readings fit another row as well: said, not hidden. */
  readonly disputed?: string;
}

/** The source prints gauge and thermometer readings: they are taken as a visit. */
export interface VisitCase extends FromSource {
  readonly visit: VisitState;
}

/** The source prints directions, or numbers beside its own normal ones. */
export interface PatternCase extends FromSource {
  readonly feed: Feed | null;
  readonly seen: Partial<Record<SymptomId, Levels>>;
}

export type PublishedCase = VisitCase | PatternCase;

const shares = (...each: readonly [number, number, number, number, number]): Levels => {
  const [farLow, low, normal, high, farHigh] = each;
  return { farLow, low, normal, high, farHigh };
};

/** A source's word as levels: "high" may be far high, "normal to high" is either. */
export const HIGH = shares(0, 0, 0.05, 0.7, 0.25);
export const LOW = shares(0.25, 0.7, 0.05, 0, 0);
export const NORMAL = shares(0, 0.05, 0.9, 0.05, 0);
export const NORMAL_TO_HIGH = shares(0, 0, 0.5, 0.42, 0.08);
export const NORMAL_TO_LOW = shares(0.08, 0.42, 0.5, 0, 0);

/** A number in °F against the source's own normal band, with what its rounding leaves open. */
export function against(value: number, [low, high]: readonly [number, number]): Levels {
  return levelsOf({ value, low, high, spread: 1.5, far: 10 });
}

type Priors = Readonly<Record<CauseId, number>>;

/** Every cause, the likeliest first. */
export function orderFor(each: PublishedCase, priors: Priors = PRIORS): readonly CauseId[] {
  const { ratios, feed } = weighed(each);
  return ranked(believe(ratios, feed, priors)).map(([cause]) => cause);
}

interface Weighed {
  readonly ratios: readonly Ratios[];
  readonly feed: Feed | null;
}

/** Weighed once: the priors that are tried on it do not change what was read. */
const WEIGHED = new Map<PublishedCase, Weighed>();

export function weighed(each: PublishedCase): Weighed {
  const before = WEIGHED.get(each);
  if (before) return before;
  const now = 'visit' in each ? weighedVisit(each) : weighedPattern(each);
  WEIGHED.set(each, now);
  return now;
}

function weighedVisit({ visit }: VisitCase): Weighed {
  const { evidence, around } = gather(visit);
  const ratios = [...evidence, ...around].map((one) => one.ratios);
  return { ratios, feed: feedOf(visit.unit.metering) };
}

function weighedPattern({ seen, feed }: PatternCase): Weighed {
  const ratios = SYMPTOMS.flatMap((symptom) => {
    const levels = seen[symptom];
    return levels ? [ratiosOfSeen({ symptom, levels }, feed)] : [];
  });
  return { ratios, feed };
}

/** From 1; 0 where it is not ranked at all. */
export function placeOf(each: PublishedCase, priors: Priors = PRIORS): number {
  const order = orderFor(each, priors);
  const places = each.named.map((cause) => order.indexOf(cause) + 1).filter((place) => place > 0);
  return places.length === 0 ? 0 : Math.min(...places);
}
