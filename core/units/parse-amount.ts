import type { Amount } from './amount.ts';
import type { Dimension } from './dimensions.ts';
import { UNITS, unitRow } from './units.ts';
import type { UnitId } from './units.ts';

export type ParsedAmount =
  | { readonly kind: 'amount'; readonly amount: Amount }
  | { readonly kind: 'bad'; readonly message: string };

function isUnitId(id: string): id is UnitId {
  return Object.hasOwn(UNITS, id);
}

export const UNIT_IDS: readonly UnitId[] = Object.keys(UNITS).filter(isUnitId);

/** As written first, then in any case: "20PSI" is meant, and no two units differ by case alone. */
const BY_WRITTEN = new Map<string, UnitId>(
  UNIT_IDS.flatMap((id) =>
    [id, unitRow(id).symbol, ...unitRow(id).written].map((name): [string, UnitId] => [
      name.toLowerCase(),
      id,
    ]),
  ).reverse(),
);
// "°F" is printed beside a point and beside a difference: written after a number it is the point.
BY_WRITTEN.set('°f', 'degF');

const NUMBER_AND_UNIT = /^([-+−]?(?:\d+\.?\d*|\.\d+))\s*(.*)$/u;

/** How the units of some dimensions may be written, for a message that says what is accepted. */
export function unitsWritten(dimensions: readonly Dimension[]): string {
  const rows = UNIT_IDS.map(unitRow).filter(({ dimension }) => dimensions.includes(dimension));
  return rows.flatMap(({ written }) => written.slice(0, 1)).join(', ');
}

/** A number alone, or with its unit written right after it: "20psi", "-4inHg", "30F", "5000ft". */
export function parseAmount(text: string, bareUnit?: UnitId): ParsedAmount {
  const [, digits, name] = NUMBER_AND_UNIT.exec(text.trim()) ?? [];
  if (digits === undefined || name === undefined) {
    return bad(`"${text}" does not begin with a number: write one with its unit, such as 20psi`);
  }
  const value = Number(digits.replace('−', '-'));
  if (!Number.isFinite(value)) return bad(`"${digits.slice(0, 8)}…" is too large a number`);
  const unit = name === '' ? bareUnit : BY_WRITTEN.get(name.toLowerCase());
  if (unit !== undefined) return { kind: 'amount', amount: { value, unit } };
  return name === ''
    ? bad(`"${text}" has no unit: write it right after the number, such as 20psi or 30F`)
    : bad(`"${name}" is no unit known here: use one of ${UNIT_IDS.map(writtenFirst).join(', ')}`);
}

const writtenFirst = (id: UnitId): string => unitRow(id).written[0] ?? id;
const bad = (message: string): ParsedAmount => ({ kind: 'bad', message });
