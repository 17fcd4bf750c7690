import type { QuantityId } from '../terms/quantities.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { convert } from '../units/convert.ts';
import type { UnitId } from '../units/units.ts';
import type { VisitState } from './state.ts';
import { amountOf, type ReadingEntry } from './views.ts';

/** What went in and out of one refrigerant, all in the smallest unit it was weighed in. */
export interface RefrigerantAccount {
  /** `null`: the kind was never stated. */
  readonly refrigerant: RefrigerantId | null;
  /** Each movement as said, in order. */
  readonly added: readonly ReadingEntry[];
  readonly recovered: readonly ReadingEntry[];
  readonly lost: readonly ReadingEntry[];
  /** `null` where nothing has a weight. */
  readonly sums: AccountSums | null;
  /** How many movements have no weight: the sums leave them out. */
  readonly unweighed: number;
}

export interface AccountSums {
  readonly unit: UnitId;
  readonly in: number;
  readonly out: number;
  readonly lost: number;
  /** In, less out and lost: below zero, the unit holds less than when it was found. */
  readonly net: number;
}

/** Without what was said to be nothing: no paragraph and no sum need tell that 0 lb were taken out. */
export function withoutNothing(account: RefrigerantAccount): RefrigerantAccount {
  const some = (entries: readonly ReadingEntry[]): readonly ReadingEntry[] =>
    entries.filter(({ reading }) => reading.value !== 0);
  const { added, recovered, lost } = account;
  return { ...account, added: some(added), recovered: some(recovered), lost: some(lost) };
}

export const holdsSome = ({ added, recovered, lost }: RefrigerantAccount): boolean =>
  added.length + recovered.length + lost.length > 0;

/** Which way somebody said that none went. */
export interface SaidNone {
  readonly added: boolean;
  readonly recovered: boolean;
}

/** "No gas added" is told of one way; both together are the word for it that none was moved at all. */
export function saidNone({ readings }: VisitState): SaidNone {
  const isNone = (quantity: QuantityId): boolean => {
    const told = readings.filter(({ reading }) => reading.quantity === quantity);
    return told.length > 0 && told.every(({ reading }) => reading.value === 0);
  };
  return { added: isNone('refrigerantAdded'), recovered: isNone('refrigerantRecovered') };
}

const MOVES = ['refrigerantAdded', 'refrigerantRecovered', 'refrigerantLost'] as const;

/** One account for each refrigerant that was moved, in the order they were first spoken of. */
export function refrigerantAccounts(state: VisitState): readonly RefrigerantAccount[] {
  const moved = state.readings.filter(({ reading }) =>
    MOVES.some((quantity) => quantity === reading.quantity),
  );
  const kindOf = ({ reading }: ReadingEntry) => reading.refrigerant ?? state.unit.refrigerant;
  const kinds = [...new Set(moved.map(kindOf))];
  return kinds.map((kind) =>
    accountOf(
      kind,
      moved.filter((entry) => kindOf(entry) === kind),
    ),
  );
}

function accountOf(
  refrigerant: RefrigerantId | null,
  moved: readonly ReadingEntry[],
): RefrigerantAccount {
  const of = (quantity: QuantityId): readonly ReadingEntry[] =>
    moved.filter(({ reading }) => reading.quantity === quantity);
  const [added, recovered, lost] = [of(MOVES[0]), of(MOVES[1]), of(MOVES[2])];
  const weighed = moved.flatMap(({ reading }) => amountOf(reading) ?? []);
  const unit = finest(weighed.map((amount) => amount.unit));
  return {
    refrigerant,
    added,
    recovered,
    lost,
    sums: unit === undefined ? null : sumsOf({ added, recovered, lost }, unit),
    unweighed: moved.length - weighed.length,
  };
}

/** Three ounces are 0.19 lb to nobody: the smallest unit that was said carries the sums. */
function finest(units: readonly UnitId[]): UnitId | undefined {
  const size = (unit: UnitId): number => convert({ value: 1, unit }, 'g')?.value ?? Infinity;
  return [...units].sort((one, other) => size(one) - size(other))[0];
}

function sumsOf(
  moved: Pick<RefrigerantAccount, 'added' | 'recovered' | 'lost'>,
  unit: UnitId,
): AccountSums {
  const [into, out, lost] = [moved.added, moved.recovered, moved.lost].map((entries) =>
    total(entries, unit),
  );
  const sums = { in: into ?? 0, out: out ?? 0, lost: lost ?? 0 };
  return { unit, ...sums, net: sums.in - sums.out - sums.lost };
}

function total(entries: readonly ReadingEntry[], unit: UnitId): number {
  return entries.reduce((sum, { reading }) => {
    const amount = amountOf(reading);
    return sum + ((amount && convert(amount, unit))?.value ?? 0);
  }, 0);
}
