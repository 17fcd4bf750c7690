/** What may be in the air: limits as data, each with where it was read or that it was recalled. */
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { Standing } from './formula.ts';

interface AirLimit {
  readonly gPerM3: number;
  readonly source: string;
  readonly standing: Standing;
  /** What another source has instead. */
  readonly otherSource?: string;
}

const FROM_MEMORY = {
  source: 'from memory of ANSI/ASHRAE Standard 34',
  standing: 'from memory',
} as const;

/** The lower flammable limit by mass: percentages by volume differ between sources more than the mass does. */
export const LOWER_FLAMMABLE_LIMITS: Partial<Record<RefrigerantId, AirLimit>> = {
  'R-290': {
    gPerM3: 38,
    source:
      'manualshive.com, a cabinet maker’s manual, page 7 (37 g/m³); 38 by ANSI/ASHRAE Standard 34, from memory',
    standing: 'from memory',
    otherSource:
      'a cabinet maker’s manual gives 1.7 % by volume and 37 g/m³, which is 2.05 %; others give 2.1 %',
  },
  'R-600a': { gPerM3: 43, ...FROM_MEMORY },
  'R-1270': { gPerM3: 46, ...FROM_MEMORY, otherSource: '46 or 47 g/m³ by edition' },
  'R-32': { gPerM3: 307, ...FROM_MEMORY },
  'R-454C': { gPerM3: 290, ...FROM_MEMORY },
  'R-455A': {
    gPerM3: 430,
    source: 'climalife.dehon.ro, calculating charge size for A2L refrigerants',
    standing: 'published',
  },
};

/** The refrigerant concentration limit of ANSI/ASHRAE Standard 34: from memory, get the licensed standard. */
export const CONCENTRATION_LIMITS: Partial<Record<RefrigerantId, AirLimit>> = {
  'R-134a': { gPerM3: 210, ...FROM_MEMORY },
  'R-404A': { gPerM3: 500, ...FROM_MEMORY },
  'R-410A': { gPerM3: 420, ...FROM_MEMORY },
  'R-407A': { gPerM3: 300, ...FROM_MEMORY },
  'R-448A': { gPerM3: 390, ...FROM_MEMORY },
  'R-449A': { gPerM3: 370, ...FROM_MEMORY },
  'R-507A': { gPerM3: 520, ...FROM_MEMORY },
  'R-744': { gPerM3: 54, ...FROM_MEMORY },
  'R-717': { gPerM3: 0.22, ...FROM_MEMORY },
  'R-290': { gPerM3: 9.5, ...FROM_MEMORY },
  'R-32': { gPerM3: 77, ...FROM_MEMORY },
};

export const EXPOSED_GASES = ['R-717', 'R-744'] as const;
export type ExposedGas = (typeof EXPOSED_GASES)[number];

export interface ExposureLevel {
  readonly id: 'recommended' | 'shortTerm' | 'permissible' | 'immediateDanger' | 'flammable';
  readonly ppm: number;
  readonly source: string;
  readonly standing: Standing;
}

const MDA = 'mda.state.mn.us, anhydrous ammonia';
const PLAN = 'sigueigerem.com, anhydrous ammonia exposure control plan';

/** Lowest first. */
export const EXPOSURE_LEVELS: Record<ExposedGas, readonly ExposureLevel[]> = {
  'R-717': [
    { id: 'recommended', ppm: 25, source: `NIOSH, 10 h: ${MDA}`, standing: 'published' },
    { id: 'shortTerm', ppm: 35, source: `NIOSH, 15 min: ${MDA}`, standing: 'published' },
    { id: 'permissible', ppm: 50, source: `OSHA, 8 h: ${PLAN}`, standing: 'published' },
    { id: 'immediateDanger', ppm: 300, source: `NIOSH: ${MDA}`, standing: 'published' },
    {
      id: 'flammable',
      ppm: 150_000,
      source: `15 to 16 % by volume, as low as 8 % with oil mist: ${PLAN}`,
      standing: 'published',
    },
  ],
  'R-744': [
    { id: 'permissible', ppm: 5000, source: 'OSHA, 8 h, from memory', standing: 'from memory' },
    { id: 'shortTerm', ppm: 30_000, source: 'NIOSH, 15 min, from memory', standing: 'from memory' },
    {
      id: 'immediateDanger',
      ppm: 40_000,
      source: 'engineeringtoolbox.com, gases, dangerous concentration levels',
      standing: 'published',
    },
  ],
};
