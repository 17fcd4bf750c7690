import type {
  Held,
  SettledAnswer,
  TooSoonAnswer,
  TrendAnswer,
} from '../../../advice/settling/settling-verdict.ts';
import type { UnitId } from '../../../units/units.ts';
import { placedName, SHORT_NAMES } from '../../names.ts';
import type { Said } from '../../said.ts';
import { settledTail, trendTail, wayOf, type Way } from '../../settling-sentences.ts';
import { amountSlot, wordSlot, type Told, type ToldSlot } from './told.ts';

type Slots = Told['slots'];
/** One piece of a verdict that is there or not: what it adds to the whole. */
interface Piece extends Pick<Told, 'fields' | 'must'> {
  readonly may?: readonly string[];
  readonly slots?: Slots;
}

export function together(pieces: readonly (Piece | null)[], tail?: Said): Told {
  const there = pieces.filter((piece) => piece !== null);
  const slots: Record<string, ToldSlot> = {};
  for (const piece of there) Object.assign(slots, piece.slots);
  return {
    fields: there.flatMap(({ fields }) => fields),
    slots,
    must: there.flatMap(({ must }) => must),
    may: there.flatMap(({ may = [] }) => may),
    ...(tail && tail.text !== '' ? { tail } : {}),
  };
}

/** Time that passed is told in whole minutes, never as none. */
export const span = (minutes: number): ToldSlot =>
  amountSlot({ value: Math.max(1, Math.round(minutes)), unit: 'min' });

const MOVED: Record<Way, string> = {
  up: 'up {change} in {span}|[it|] [rose|has risen|went up|has gone up|climbed|gained] {change} in {span}|{change} up in {span}|in {span} [it|] [rose|has risen|went up|climbed|is up] {change}|{change} higher than {span} before',
  down: 'down {change} in {span}|[it|] [fell|has fallen|came down|has come down|went down|dropped|lost] {change} in {span}|{change} down in {span}|in {span} [it|] [fell|has fallen|came down|dropped|is down] {change}|{change} lower than {span} before',
  same: '[just|] the same as {span} before|[it|] has not moved in {span}|no change in {span}|unmoved in {span}|[it|] did not move in {span}',
};

const NAMED =
  '[your|the|] {about} [is|is at|is now|is now at|reads|stands at|at|now|now at|] {value} [now|]|{value} [on|on the|of] {about}';

export function trendTold(trend: TrendAnswer): Told {
  const { about, place, value, unit, recent, changeUnit } = trend;
  const way = wayOf(recent.change, changeUnit);
  const moved = {
    fields: [way],
    slots: {
      about: wordSlot(placedName(about, place)),
      value: amountSlot({ value, unit }),
      span: span(recent.minutes),
      ...(way === 'same' ? {} : { change: sizeSlot(recent.change, changeUnit) }),
    },
    must: [NAMED, MOVED[way]],
  };
  return together([moved, heldPiece(trend)], trendTail(trend));
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

function sincePiece(change: number, unit: UnitId): Piece | null {
  const way = wayOf(change, unit);
  if (way === 'same') return null;
  const { text, spoken, also } = sizeSlot(change, unit);
  const since = {
    text: `${way} ${text}`,
    spoken: `${way} ${spoken}`,
    also: also.map((other) => `${way} ${other}`),
  };
  return {
    fields: ['since'],
    slots: { since },
    must: [
      '{since} since the change|since the change [it is|:|] {since}|{since} from the change on',
    ],
  };
}

export function settledTold({ rows, next }: SettledAnswer): Told {
  const [first, ...others] = rows;
  if (!first) return together([]);
  const { about, place, within, changeUnit, minutes, sinceChange } = first;
  const change = sinceChange?.change ?? 0;
  const held = {
    fields: [],
    slots: {
      about: wordSlot(placedName(about, place)),
      band: amountSlot({ value: within, unit: changeUnit }),
      span: span(minutes),
    },
    must: [
      '[your|the|] {about} has [held|been|stayed|kept] within {band} for {span}|[your|the|] {about} [has settled|is steady|has gone steady|held|holds|steady] [:|,|] within {band} for {span}|within {band} for {span} : {about} [has settled|is steady|holds]',
    ],
  };
  return together([held, sincePiece(change, changeUnit)], settledTail(others, next));
}

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
