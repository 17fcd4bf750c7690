/** What one check against the outside looks like, whatever it checks. */
import type { Standing } from '../../core/calculations/formula.ts';
import type { Amount } from '../../core/units/amount.ts';

interface FromOutside {
  /** Where the value was read or worked, exactly enough to find it again. */
  readonly source: string;
  readonly standing: Standing;
  /**
   * How far off the value may be, in its own unit: half the last digit that the source prints, or what its own
   * inputs' rounding comes to. Never widened to what was found: a source further off than its print allows is a
   * row of the known differences.
   */
  readonly within: number;
}

/** A calculation of the catalogue, with its inputs as the command line takes them. */
export interface CatalogueCheck extends FromOutside {
  /** The id under which `calc --list` has it. */
  readonly name: string;
  readonly inputs: Readonly<Record<string, string>>;
  readonly gives: Amount;
  /** Of the values shown beside the answer (a band's ends, a cylinder's net content), those the source has too. */
  readonly also?: Readonly<Record<string, number>>;
  /** What the source concludes, in the entry's own words. */
  readonly findings?: Readonly<Record<string, string | readonly string[]>>;
}

/** A calculation that the source says has no answer there. */
export interface RefusalCheck {
  readonly name: string;
  readonly inputs: Readonly<Record<string, string>>;
  readonly refused: string;
  readonly source: string;
  readonly standing: Standing;
}

/** Anything else: a property of a fluid, a saturation pair, a unit's factor. */
export interface ValueCheck extends FromOutside {
  readonly about: 'saturation' | 'fluid' | 'units';
  readonly title: string;
  readonly gives: number;
  readonly found: () => number;
}

export type CheckRow = CatalogueCheck | RefusalCheck | ValueCheck;

export const isCatalogueCheck = (row: CheckRow): row is CatalogueCheck =>
  'inputs' in row && 'gives' in row;
export const isRefusalCheck = (row: CheckRow): row is RefusalCheck => 'refused' in row;
export const isValueCheck = (row: CheckRow): row is ValueCheck => 'found' in row;
