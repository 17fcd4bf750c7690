import fc from 'fast-check';
import type { FactOf, NoteFact } from '../../../core/note/paragraphs/facts.ts';
import type { Passage } from '../../../core/note/paragraphs/passage.ts';
import { planParagraphs } from '../../../core/note/paragraphs/plan.ts';
import { CAUSES } from '../../../core/terms/causes.ts';
import { FINDING_STATES, PARTS, WORK_KINDS } from '../../../core/terms/names.ts';
import type { RefrigerantAccount } from '../../../core/visit/refrigerant-account.ts';
import type { LeftOpen } from '../../../core/visit/left-open.ts';
import type { VisitState } from '../../../core/visit/state.ts';

/** The keys of a closed table, typed. */
function keysOf<Table extends object>(table: Table): (keyof Table & string)[] {
  const isKey = (key: string): key is keyof Table & string => key in table;
  return Object.keys(table).filter(isKey);
}

const part = fc.constantFrom(...keysOf(PARTS));
const found = fc.record({ part, state: fc.constantFrom(...keysOf(FINDING_STATES)) });
const cause = fc.constantFrom(...keysOf(CAUSES));
const done = fc.record({
  did: fc.constantFrom(...keysOf(WORK_KINDS)),
  part: fc.option(part, { nil: null, freq: 5 }),
});
const degrees = fc
  .integer({ min: -20, max: 60 })
  .map((value) => ({ value, unit: 'degF' }) as const);
const probed = fc.record({
  amount: degrees,
  name: fc.constantFrom(null, 'tuna', 'lettuce in the pan'),
});
const ounces = fc.integer({ min: 1, max: 90 });
const date = fc.record({
  year: fc.constantFrom(2025, 2026),
  month: fc.integer({ min: 1, max: 12 }),
  day: fc.integer({ min: 1, max: 28 }),
});
const memo = fc.constantFrom(
  'warm lettuce since this morning',
  'customer says it trips every afternoon, they push the red button',
  'it runs all day and never quite gets cold.',
  'alarm at fifty',
  'no ice since Monday',
);
const productMemo = fc.constantFrom(
  'product moved to the ice truck at four thirty',
  'vaccine was not moved, they kept it at the back',
  'told them to throw out the milk',
);

type Recommended = VisitState['recommendations'][number];
const reason = fc.constantFrom(undefined, "it's pitted", 'it is not tight', 'to check the charge');
const recommended: fc.Arbitrary<Recommended> = fc
  .record({ to: done, reason, due: fc.option(date, { nil: null }), kind: fc.nat(3) })
  .map(({ to, reason: why, due, kind }) => ({
    id: 'a',
    at: 0,
    due,
    recommendation: {
      do: to.did === 'comeBack' ? 'clean' : to.did,
      part: to.part,
      words: '',
      ...(why === undefined ? {} : { reason: why }),
      ...(due === null
        ? kind === 0
          ? { by: { said: 'on', kind: 'words', words: 'before summer' } as const }
          : {}
        : {
            by: { said: kind > 1 ? 'by' : 'on', kind: 'in', amount: 2, unit: 'week' } as const,
            ...(kind === 3 ? { every: { amount: 3, unit: 'month' } as const } : {}),
          }),
    },
  }));

const comeBack = recommended.map((made): FactOf<'comeBack'> => ({
  fact: 'comeBack',
  made: { ...made, recommendation: { ...made.recommendation, do: 'comeBack', part: null } },
}));

const account: fc.Arbitrary<RefrigerantAccount> = fc
  .record({
    added: fc.option(ounces, { nil: 0 }),
    recovered: fc.option(ounces, { nil: 0 }),
    lost: fc.option(ounces, { nil: 0, freq: 2 }),
    refrigerant: fc.constantFrom('R-404A' as const, 'R-290' as const, null),
    same: fc.boolean(),
  })
  .filter(({ added, recovered, lost }) => added + recovered + lost > 0)
  .map(({ refrigerant, same, ...given }) => {
    const moved = same && given.added > 0 ? { ...given, recovered: given.added } : given;
    const { added, recovered, lost } = moved;
    const sums = {
      unit: 'oz',
      in: added,
      out: recovered,
      lost,
      net: added - recovered - lost,
    } as const;
    return {
      refrigerant,
      sums,
      unweighed: 0,
      added: entries(added),
      recovered: entries(recovered),
      lost: entries(lost),
    };
  });

const entries = (value: number): RefrigerantAccount['added'] =>
  value === 0
    ? []
    : [
        {
          id: 'a',
          at: 0,
          phase: 'work',
          reading: {
            quantity: 'refrigerantAdded',
            value,
            unit: 'oz',
            unitFrom: 'said',
            place: null,
            words: '',
          },
        },
      ];

const box: fc.Arbitrary<FactOf<'box'>> = fc
  .record({
    was: fc.option(degrees, { nil: null, freq: 3 }),
    now: degrees,
    still: fc.boolean(),
    set: fc.option(degrees, { nil: null }),
    against: fc.constantFrom('reached' as const, 'above' as const, 'below' as const),
  })
  .map(({ was: earlier, now, still, set, against }) => {
    const was = still && earlier ? now : earlier;
    const change =
      was === null ? null : was.value > now.value ? 'down' : was.value < now.value ? 'up' : 'same';
    const near = set && (against === 'reached' ? now : set);
    const stands =
      near && (near.value === now.value ? 'reached' : near.value < now.value ? 'above' : 'below');
    return { fact: 'box', was, now, change, set: near, against: stands };
  });

const LEFT: readonly LeftOpen['as'][] = [
  'closed',
  'isolated',
  'lockedOut',
  'removed',
  'bypassed',
  'disabled',
  'open',
  'connected',
  'setForTest',
];
const left = fc
  .uniqueArray(fc.record({ part, as: fc.constantFrom(...LEFT) }), {
    minLength: 1,
    maxLength: 2,
    selector: ({ part: of }) => of,
  })
  .map((all): FactOf<'left'> => ({
    fact: 'left',
    left: all.map((each) => ({ ...each, id: 'a', at: 0 })),
  }));

const charge = fc
  .record({
    now: ounces,
    plate: fc.option(ounces, { nil: null }),
    missing: fc.option(ounces, { nil: null }),
    same: fc.boolean(),
  })
  .map(({ now, plate, missing, same }): FactOf<'charge'> => {
    const oz = (value: number) => ({ value, unit: 'oz' }) as const;
    const on = same && plate !== null ? now : plate;
    return {
      fact: 'charge',
      refrigerant: 'R-404A',
      now: oz(now),
      nameplate: on === null ? null : oz(on),
      over: on === null ? null : oz(now - on),
      missing: on === null || missing === null ? null : oz(missing),
    };
  });

const some = <Fact extends NoteFact>(of: fc.Arbitrary<Fact>): fc.Arbitrary<readonly NoteFact[]> =>
  fc.option(of, { nil: null, freq: 2 }).map((fact) => (fact === null ? [] : [fact]));
const rowsOf = (most: number) =>
  fc.uniqueArray(found, {
    minLength: 1,
    maxLength: most,
    selector: ({ part: of, state }) => `${of} ${state}`,
  });

const why: fc.Arbitrary<readonly NoteFact[]> = fc.oneof(
  rowsOf(3).map((rows): readonly NoteFact[] => [{ fact: 'seen', rows }]),
  cause.map((one): readonly NoteFact[] => [{ fact: 'cause', cause: one }]),
  fc.tuple(cause, rowsOf(2)).map(([one, rows]): readonly NoteFact[] => [
    { fact: 'cause', cause: one },
    { fact: 'seen', rows },
  ]),
  rowsOf(2).map((rows): readonly NoteFact[] => [
    { fact: 'causeSaid', words: 'a stuck valve in the back' },
    { fact: 'seen', rows },
  ]),
  fc
    .uniqueArray(cause, { minLength: 1, maxLength: 2 })
    .map((causes): readonly NoteFact[] => [{ fact: 'likely', causes }]),
  fc.tuple(rowsOf(1), cause).map(([rows, one]): readonly NoteFact[] => [
    { fact: 'seen', rows },
    { fact: 'likely', causes: [one] },
  ]),
  fc.constant<readonly NoteFact[]>([
    { fact: 'byVoltage', suspects: ['highPressureSwitch', 'contacts'], together: false },
  ]),
  rowsOf(1).map((rows): readonly NoteFact[] => [
    { fact: 'seen', rows },
    { fact: 'byVoltage', suspects: ['temperatureControl', 'overload'], together: true },
  ]),
  fc.constant<readonly NoteFact[]>([]),
);

const work: fc.Arbitrary<readonly NoteFact[]> = fc.oneof(
  fc
    .uniqueArray(done, {
      minLength: 1,
      maxLength: 4,
      selector: ({ did, part: of }) => `${did} ${of ?? ''}`,
    })
    .map((rows): readonly NoteFact[] => [{ fact: 'done', rows }]),
  fc.constant<readonly NoteFact[]>([{ fact: 'noWork' }]),
);

const again = fc
  .record({
    on: date,
    rows: rowsOf(2),
    all: fc.array(recommended, { minLength: 1, maxLength: 2 }),
    kind: fc.nat(2),
  })
  .map(({ on, rows, all, kind }): readonly NoteFact[] => [
    ...(kind < 2 ? [{ fact: 'foundBefore', on, rows } as const] : []),
    ...(kind > 0 ? [{ fact: 'notDoneSince', on, all } as const] : []),
  ]);

/** Facts of made-up visits, every combination of them. */
const cameTo = fc
  .array(fc.record({ do: fc.constantFrom('replace' as const, 'clean' as const), part }), {
    minLength: 1,
    maxLength: 2,
  })
  .map((all): NoteFact => ({ fact: 'cameTo', all }));

export const facts: fc.Arbitrary<readonly NoteFact[]> = fc
  .tuple(
    some(memo.map((told): NoteFact => ({ fact: 'calledFor', memo: told }))),
    some(cameTo),
    why,
    work,
    some(
      fc
        .constantFrom('45 min', '2 h 40 min as told (2 h 31 min by the clock)')
        .map((time): NoteFact => ({ fact: 'onSite', time })),
    ),
    fc.oneof(
      account.map((of): readonly NoteFact[] => [{ fact: 'moved', account: of }]),
      fc
        .tuple(account, charge)
        .map(([of, held]): readonly NoteFact[] => [{ fact: 'moved', account: of }, held]),
      fc
        .record({ added: fc.boolean(), recovered: fc.boolean() })
        .map((said): readonly NoteFact[] => [{ fact: 'nothingMoved', said }]),
    ),
    some(box),
    some(
      fc
        .tuple(fc.array(probed, { maxLength: 2 }), fc.array(probed, { maxLength: 2 }))
        .filter(([was, now]) => was.length + now.length > 0)
        .map(([was, now]): NoteFact => ({ fact: 'product', was, now })),
    ),
    some(productMemo.map((told): NoteFact => ({ fact: 'productSaid', memo: told }))),
    some(left),
    some(fc.constant<NoteFact>({ fact: 'notToBeSwitchedOn' })),
    some(
      fc
        .array(recommended, { minLength: 1, maxLength: 3 })
        .map((all): NoteFact => ({ fact: 'toDo', all })),
    ),
    some(comeBack),
    fc.oneof(again, fc.constant<readonly NoteFact[]>([])),
  )
  .map((all) => all.flat());

/** Every passage that the facts of one visit come to, for either reader. */
export const passagesOf = (all: readonly NoteFact[]): readonly Passage[] =>
  [...planParagraphs(all, 'customer'), ...planParagraphs(all, 'office')].flat();
