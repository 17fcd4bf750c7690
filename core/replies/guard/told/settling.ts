import type {
  Held,
  SettledAnswer,
  SettlingNext,
  TooSoonAnswer,
  TrendAnswer,
} from '../../../advice/settling/settling-verdict.ts';
import type { UnitId } from '../../../units/units.ts';
import { placedName, SHORT_NAMES } from '../../names.ts';
import { plain } from '../../said.ts';
import { wayOf, type Way } from '../../settling-sentences.ts';
import { amountSlot, listSlot, wordSlot, type Told, type ToldSlot } from './told.ts';

type Slots = Told['slots'];
/** One piece of a verdict that is there or not: what it adds to the whole. */
interface Piece extends Pick<Told, 'fields' | 'must'> {
  readonly may?: readonly string[];
  readonly slots?: Slots;
}

export function together(pieces: readonly (Piece | null)[]): Told {
  const there = pieces.filter((piece) => piece !== null);
  const slots: Record<string, ToldSlot> = {};
  for (const piece of there) Object.assign(slots, piece.slots);
  return {
    fields: there.flatMap(({ fields }) => fields),
    slots,
    must: there.flatMap(({ must }) => must),
    may: there.flatMap(({ may = [] }) => may),
  };
}

/** Time that passed is told in whole minutes, never as none. */
export const span = (minutes: number): ToldSlot =>
  amountSlot({ value: Math.max(1, Math.round(minutes)), unit: 'min' });

/** Older than this a reading is not what it is doing now. */
const STALE_MINUTES = 10;

const MOVED: Record<Way, string> = {
  up: 'up {change} in {span}|[it|] [rose|has risen|went up|has gone up|climbed|gained] {change} in {span}|{change} up in {span}|in {span} [it|] [rose|has risen|went up|climbed|is up] {change}|{change} higher than {span} before',
  down: 'down {change} in {span}|[it|] [fell|has fallen|came down|has come down|went down|dropped|lost] {change} in {span}|{change} down in {span}|in {span} [it|] [fell|has fallen|came down|dropped|is down] {change}|{change} lower than {span} before',
  same: '[just|] the same as {span} before|[it|] has not moved in {span}|no change in {span}|unmoved in {span}|[it|] did not move in {span}',
};

const NAMED =
  '[your|the|] {about} [is|is at|is now|is now at|reads|stands at|at|now|now at|] {value} [now|]|{value} [on|on the|of] {about}';

export function trendTold(trend: TrendAnswer): Told {
  const { about, place, value, unit, recent, changeUnit, agoMinutes, next } = trend;
  const way = wayOf(recent.change, changeUnit);
  const isStale = agoMinutes >= STALE_MINUTES;
  const isAskedAlready = next.kind === 'readAgain' && next.about === about;
  return together([
    {
      fields: [way],
      slots: {
        about: wordSlot(placedName(about, place)),
        value: amountSlot({ value, unit }),
        span: span(recent.minutes),
        ...(way === 'same' ? {} : { change: sizeSlot(recent.change, changeUnit) }),
      },
      must: [NAMED, MOVED[way]],
    },
    heldPiece(trend),
    sincePiece(trend.sinceChange?.change ?? null, changeUnit),
    isStale ? stalePiece(agoMinutes) : null,
    isStale || isAskedAlready ? NOTHING_NEXT : nextPiece(next),
  ]);
}

const sizeSlot = (change: number, unit: UnitId): ToldSlot =>
  amountSlot({ value: Math.abs(change), unit });

function heldPiece({ held, changeUnit }: TrendAnswer): Piece | null {
  if (held === null) return null;
  const band = amountSlot({ value: held.within, unit: changeUnit });
  return held.isSteady ? steadyPiece(held, band) : restlessPiece(held, band);
}

const steadyPiece = (held: Held, band: ToldSlot): Piece => ({
  fields: ['steady'],
  slots: { band, held: span(held.minutes) },
  must: [
    'steady [:|,|] [it has held|holding|] within {band} for {held}|[it has held|it held|held|holding] within {band} for {held} [: steady|, steady|, so it is steady|: that is steady|, which is steady]|within {band} for {held} [: steady|, so it is steady|, so steady]|steady for {held} , within {band}',
  ],
});

const restlessPiece = (held: Held, band: ToldSlot): Piece => ({
  fields: ['notSteady'],
  slots: { band, held: span(held.wantedMinutes) },
  must: [
    '[it is|] not steady yet|[it has|] not settled yet|[it is|] not yet steady',
    '[it|that] [must|has to|needs to] hold within {band} for {held} [first|before it is|]|[steady is|that takes|steady means] within {band} for {held}',
  ],
});

function sincePiece(change: number | null, unit: UnitId): Piece | null {
  if (change === null) return null;
  const way = wayOf(change, unit);
  const size = sizeSlot(change, unit);
  const words = (of: 'text' | 'spoken'): string => (way === 'same' ? '' : ` ${size[of]}`);
  const head = way === 'same' ? 'the same' : way;
  return {
    fields: ['since'],
    slots: {
      since: {
        text: `${head}${words('text')}`,
        spoken: `${head}${words('spoken')}`,
        also: way === 'same' ? [] : size.also.map((other) => `${head} ${other}`),
      },
    },
    must: [
      '{since} since the change|since the change [it is|:|] {since}|{since} from the change on',
    ],
  };
}

const stalePiece = (minutes: number): Piece => ({
  fields: ['stale'],
  slots: { ago: span(minutes) },
  must: [
    '[that was read|it was read|that reading is from|last read|read] {ago} ago|[that reading is|the reading is|that is] {ago} old',
    '[read|take|measure] it [again|once more]|[get|take] a fresh [one|reading]',
  ],
});

/** Told apart from `takeAfter` by a word, as neither has a slot. */
const NOTHING_NEXT: Piece = { fields: ['noNext'], must: [] };

export function nextPiece(next: SettlingNext): Piece | null {
  switch (next.kind) {
    case 'nothing':
      return NOTHING_NEXT;
    case 'takeAfter':
      return {
        fields: ['takeAfter'],
        must: ['[now|you can|you can now|time to|] take [the|your] after readings [now|]'],
      };
    case 'readAgain':
      return {
        fields: ['readAgain'],
        slots: { next: wordSlot(SHORT_NAMES[next.about]) },
        must: [
          '[read|take|check] [the|] {next} [again|once more]',
          '[it|that|{next}] is not shown to hold yet|[it|that|{next}] has not been shown to hold yet|nothing shows yet that it holds|[it|that] has still to be shown to hold',
        ],
      };
  }
}

export function settledTold({ rows, next }: SettledAnswer): Told {
  const [first, ...others] = rows;
  if (!first) return together([]);
  const { about, place, within, changeUnit, minutes, sinceChange } = first;
  const change =
    sinceChange === null || wayOf(sinceChange.change, changeUnit) === 'same' ? null : sinceChange;
  const also = others.map((row) => plain(placedName(row.about, row.place)));
  const [has, are] = also.length === 1 ? ['has', 'is'] : ['have', 'are'];
  return together([
    {
      fields: [],
      slots: {
        about: wordSlot(placedName(about, place)),
        band: amountSlot({ value: within, unit: changeUnit }),
        span: span(minutes),
      },
      must: [
        '[your|the|] {about} has [held|been|stayed|kept] within {band} for {span}|[your|the|] {about} [has settled|is steady|has gone steady|held|holds|steady] [:|,|] within {band} for {span}|within {band} for {span} : {about} [has settled|is steady|holds]',
      ],
    },
    also.length === 0
      ? null
      : {
          fields: [also.length === 1 ? 'oneMore' : 'more'],
          slots: { also: andListSlot(also.map(({ text }) => text)) },
          must: [
            `so ${has} {also}|{also} ${has} [too|settled too|as well]|so ${are} {also}|{also} ${are} [too|settled too|steady too]`,
          ],
        },
    sincePiece(change?.change ?? null, changeUnit),
    nextPiece(next),
  ]);
}

const andListSlot = (names: readonly string[]): ToldSlot => ({
  ...wordSlot(names.join(' and ')),
  also: listSlot(names.map(plain)).also,
});

const AGAIN = [
  'let it run [on|longer|some more|]|give it [more time|longer]|keep it running',
  '[read|take them|take the readings|read it|read everything] again',
  'mark the after [again|once more|anew]|mark the after [again|] then',
];

export function tooSoonTold({ minutes, moving }: TooSoonAnswer): Told {
  return together([
    moving === null
      ? {
          fields: ['early'],
          slots: { span: span(minutes) },
          must: [
            '[only|just|no more than|it is only|] {span} since the change|the change was only {span} ago|[only|just] {span} after the change',
            'too [soon|early] to [call|say|tell] [it|that it is|that it has|] settled|too [soon|early] to say it has settled',
          ],
        }
      : {
          fields: ['moving'],
          slots: { about: wordSlot(SHORT_NAMES[moving]) },
          must: [
            '[that is|] too [soon|early]',
            '[the|] {about} is still moving|{about} has not stopped moving',
          ],
        },
    { fields: [], must: AGAIN },
  ]);
}

export const secondChangeTold: Told = {
  fields: [],
  slots: {},
  must: [
    '[make|do|only|] one change at a time|one thing at a time',
    'the last [one|change] has not settled yet|the last [one|change] is not settled yet|[let the last [one|change] settle first|the last [one|change] is still settling]|the [one|change] before [it|] has not settled yet',
  ],
};
