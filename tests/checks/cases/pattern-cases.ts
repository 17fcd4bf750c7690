import type { SymptomId } from '../../../core/advice/causes/symptom.ts';
import type { Levels } from '../../../core/advice/causes/arrows.ts';
import type { Feed } from '../../../core/advice/causes/matrix-row.ts';
import type { CauseId } from '../../../core/terms/causes.ts';
import {
  against,
  HIGH,
  LOW,
  NORMAL_TO_HIGH,
  NORMAL_TO_LOW,
  type PatternCase,
} from './published-case.ts';

type Seen = Partial<Record<SymptomId, Levels>>;
interface Case {
  readonly title: string;
  readonly named: readonly CauseId[];
  readonly seen: Seen;
  readonly feed?: Feed;
  readonly disputed?: string;
}

const from =
  (source: string, feed: Feed | null) =>
  (each: Case): PatternCase => ({ source, standing: 'published', feed, ...each });

/** Its own normal: subcooling 10 to 12, superheat 8 to 12 °F. */
const guideline = (subcooling: number, superheat: number): Seen => ({
  subcooling: against(subcooling, [10, 12]),
  superheat: against(superheat, [8, 12]),
});

const WATER_SOURCE = from(
  'manualshelf.com, mammoth G-141-MHC, circuit diagnosis, page 17',
  'valve',
);
const FORUM = from(
  'refrigeration-engineer.com/forums, nine superheat and subcooling scenarios (metering not given)',
  null,
);
const WINE = from('manuals.online, vinotemp wine-mate, pressure and superheat table', 'valve');
const SPLIT_UNIT = from('manualsdump.com, goodman IO-395, troubleshooting chart', 'fixed');

export const PATTERN_CASES: readonly PatternCase[] = [
  ...[
    { title: 'normal', named: ['nothingWrong'] as const, seen: guideline(11, 10) },
    { title: 'over-charged', named: ['overcharge'] as const, seen: guideline(22.5, 10) },
    { title: 'under-charged', named: ['undercharge'] as const, seen: guideline(7, 27.5) },
    {
      title: 'plugged expansion valve',
      named: ['valveStarving', 'liquidLineRestriction'] as const,
      seen: guideline(17.5, 27.5),
    },
  ].map(WATER_SOURCE),
  ...[
    {
      title: 'low charge',
      named: ['undercharge'] as const,
      seen: {
        superheat: HIGH,
        suctionPressure: LOW,
        subcooling: LOW,
        headPressure: LOW,
        current: LOW,
      },
    },
    {
      title: 'over charge',
      named: ['overcharge'] as const,
      seen: {
        superheat: LOW,
        suctionPressure: HIGH,
        subcooling: HIGH,
        headPressure: HIGH,
        current: HIGH,
      },
    },
    {
      title: 'low indoor air flow',
      named: ['icedCoil', 'evaporatorFanOut'] as const,
      seen: {
        superheat: LOW,
        suctionPressure: LOW,
        headPressure: NORMAL_TO_LOW,
        subcooling: NORMAL_TO_HIGH,
      },
    },
    {
      title: 'mild low outdoor air flow',
      named: ['dirtyCondenser', 'condenserFanOut'] as const,
      seen: {
        superheat: LOW,
        subcooling: LOW,
        suctionPressure: HIGH,
        headPressure: HIGH,
        current: NORMAL_TO_HIGH,
      },
    },
    {
      title: 'severe low outdoor air flow',
      named: ['dirtyCondenser', 'condenserFanOut'] as const,
      seen: {
        superheat: HIGH,
        suctionPressure: HIGH,
        headPressure: HIGH,
        current: HIGH,
        subcooling: LOW,
      },
      disputed: 'the pattern of a heavy load; others print superheat as normal or low',
    },
    {
      title: 'mild restriction',
      named: ['liquidLineRestriction', 'valveStarving'] as const,
      seen: {
        superheat: HIGH,
        suctionPressure: LOW,
        current: LOW,
        subcooling: NORMAL_TO_HIGH,
        headPressure: NORMAL_TO_LOW,
      },
    },
    {
      title: 'weak compressor valves',
      named: ['leakyValves'] as const,
      seen: {
        superheat: LOW,
        current: LOW,
        headPressure: LOW,
        suctionPressure: HIGH,
        subcooling: HIGH,
      },
    },
  ].map(FORUM),
  ...[
    {
      title: 'compressor may be bad',
      named: ['leakyValves'] as const,
      seen: { suctionPressure: HIGH, headPressure: LOW, superheat: LOW, subcooling: LOW },
      disputed: 'the same directions as the next, told apart by "zero" and "low"',
    },
    {
      title: 'expansion valve open',
      named: ['valveFlooding'] as const,
      disputed: 'the same directions as the one before: no order fits both',
      seen: { suctionPressure: HIGH, headPressure: LOW, superheat: LOW, subcooling: LOW },
    },
    {
      title: 'overcharge',
      named: ['overcharge'] as const,
      seen: { suctionPressure: HIGH, headPressure: HIGH, superheat: LOW, subcooling: HIGH },
    },
    {
      title: 'non-condensable gas',
      named: ['nonCondensables'] as const,
      seen: { suctionPressure: NORMAL_TO_HIGH, headPressure: HIGH, subcooling: LOW },
      disputed: 'another source has subcooling high: it is not keyed on',
    },
    {
      title: 'air restricted, dirty condenser',
      named: ['dirtyCondenser', 'condenserFanOut'] as const,
      seen: { suctionPressure: HIGH, headPressure: HIGH, superheat: LOW, subcooling: LOW },
      disputed: 'with a valve, others print superheat as normal',
    },
  ].map(WINE),
  ...[
    {
      title: 'defective compressor valves: low head, high suction',
      named: ['leakyValves'] as const,
      seen: { headPressure: LOW, suctionPressure: HIGH },
    },
    {
      title: 'dirty coil, overcharge or fan: high head, high or normal suction',
      named: ['dirtyCondenser', 'overcharge', 'condenserFanOut'] as const,
      seen: { headPressure: HIGH, suctionPressure: NORMAL_TO_HIGH },
    },
    {
      title: 'restriction in the liquid line: high head, low suction',
      named: ['liquidLineRestriction', 'capillaryBlocked'] as const,
      seen: { headPressure: HIGH, suctionPressure: LOW },
      disputed: 'others print head as normal or low',
    },
  ].map(SPLIT_UNIT),
];
