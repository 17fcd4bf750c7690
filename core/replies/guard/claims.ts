import type { Members } from '../../advice/by-kind.ts';
import type { HistoryAnswer } from '../../advice/history-verdict.ts';
import type { SettlingAnswer } from '../../advice/settling/settling-verdict.ts';
import type { BeforeAfterRow, Known, ReadRow } from '../../advice/verdict.ts';
import type { PlaceId } from '../../terms/names.ts';
import type { AnswerableId } from '../../terms/quantities.ts';
import type { RefrigerantId } from '../../terms/refrigerants.ts';
import { readsNothing } from '../../units/format-amount.ts';
import type { UnitId } from '../../units/units.ts';
import { isBandOnly, isInBand } from '../answers.ts';
import type { Cue, DirectionWord } from './words.ts';

/** One number that a sentence about a verdict may hold, and how it must be introduced. */
export interface Slot {
  readonly about: AnswerableId | null;
  readonly place: PlaceId | null;
  readonly value: number;
  readonly unit: UnitId;
  readonly cues: readonly Cue[];
  /** For a difference: the only way it may be said to go. */
  readonly direction?: DirectionWord;
  readonly required: boolean;
}

/** Everything a sentence about a verdict may say, and what it must. */
export interface Claims {
  readonly slots: readonly Slot[];
  /** Named without a number, or beside one. */
  readonly names: readonly (AnswerableId | PlaceId | RefrigerantId)[];
  readonly requiredNames: readonly (AnswerableId | PlaceId | RefrigerantId)[];
  /** "On target", in place of a difference: where the reading is where it should be it must be said. */
  readonly onTarget: 'required' | 'allowed' | 'forbidden';
  /** "Should", without which a target sounds like a reading. */
  readonly mustSayShould: 'always' | 'withEnds' | 'never';
  /** Words without which it says less than it must: "reads 8, should be about 10" sounds as if it were off. */
  readonly mustSay: readonly string[];
  /** Rows that have nothing in a column. */
  readonly blank: Record<'before' | 'after', readonly Pick<BeforeAfterRow, 'about' | 'place'>[]>;
  /** Words beyond the glue that are true of this verdict: a blank, "the same", "before" as a heading. */
  readonly ownWords: readonly string[];
}

type Answers = Members<Known, 'answer'>;
/** Causes weigh words as much as numbers: "most likely" said as "it is" would be a fact that nobody found. */
type Verbatim =
  | 'judged'
  | 'limit'
  | 'hottestDay'
  | SettlingAnswer['answer']
  | HistoryAnswer['answer']
  | 'causes'
  | 'leftOpen'
  | 'moved'
  | 'timeHere'
  | 'nextCheck'
  | 'nextPlace'
  | 'step'
  | 'stepsDone'
  | 'note'
  | 'guide'
  | 'explained'
  | 'overall'
  | 'toCome'
  | 'switch'
  | 'working';
type Rephrasable = Exclude<Known['answer'], Verbatim>;
type ClaimsOf = { readonly [A in Rephrasable]: (known: Answers[A]) => Claims };

const DIFFERENCE = ['difference'] as const;
/** Of a saturation "at" is what is given. */
const RESULT = ['bare', 'measured'] as const;
const SAID = ['bare', 'measured', 'at'] as const;

const CLAIMS: ClaimsOf = {
  target: targetClaims,
  value: ({ about, place, value, unit }) =>
    claims({ slots: [{ about, place, value, unit, cues: SAID, required: true }] }),
  compare: compareClaims,
  saturation: saturationClaims,
  margin: marginClaims,
  beforeAfter: ({ rows }) =>
    claims({
      slots: rows.flatMap(rowSlots),
      blank: {
        before: rows.filter(({ before }) => before === null),
        after: rows.filter(({ after }) => after === null),
      },
      ownWords: [
        ...(rows.some(hasBlank) ? ['still', 'blank', 'before', 'after'] : []),
        ...(rows.some(isUnmoved) ? ['same'] : []),
        ...['what', 'changed', 'change', 'readings'],
      ],
    }),
  before: ({ rows }) => claims({ slots: rows.map(readSlot), ownWords: ['before'] }),
  readback: ({ rows }) => claims({ slots: rows.map(readSlot), ownWords: ['latest'] }),
};

/** Null for what is never rephrased: names of a person's own, causes, how a number was worked out, and the announcement of the note. */
export function claimsOf(known: Known): Claims | null {
  switch (known.answer) {
    case 'judged':
    case 'limit':
    case 'hottestDay':
    case 'causes':
    case 'leftOpen':
    case 'moved':
    case 'step':
    case 'stepsDone':
    case 'nextCheck':
    case 'nextPlace':
    case 'note':
    case 'guide':
    case 'explained':
    case 'overall':
    case 'toCome':
    case 'timeHere':
    case 'switch':
    case 'working':
    case 'trend':
    case 'settled':
    case 'tooSoon':
    case 'secondChange':
    case 'eta':
    case 'timeLeft':
    case 'timeUp':
    case 'vacuumHold':
    case 'pressureTest':
    case 'lastVisit':
    case 'lastDone':
    case 'seenBefore':
      return null;
    case 'value':
      return known.of === undefined ? claimed(known) : null;
    case 'before':
    case 'readback':
      return known.rows.every(({ of }) => of === undefined) ? claimed(known) : null;
    default:
      return claimed(known);
  }
}

function claimed<A extends Rephrasable>(known: Answers[A] & { readonly answer: A }): Claims {
  const of: ClaimsOf[A] = CLAIMS[known.answer];
  return of(known);
}

function hasBlank({ before, after }: BeforeAfterRow): boolean {
  return before === null || after === null;
}

function claims(given: Partial<Claims> & Pick<Claims, 'slots'>): Claims {
  const named = given.slots.flatMap(({ about, place }) => [about, place]);
  const own = named.filter((name) => name !== null);
  return {
    onTarget: 'forbidden',
    mustSayShould: 'never',
    ownWords: [],
    mustSay: [],
    blank: { before: [], after: [] },
    ...given,
    names: [...own, ...(given.names ?? [])],
    requiredNames: given.requiredNames ?? [
      ...new Set(given.slots.filter((slot) => slot.required).flatMap(namesOfSlot)),
    ],
  };
}

export function namesOfSlot({ about, place }: Slot): readonly (AnswerableId | PlaceId)[] {
  return [about, place].filter((name) => name !== null);
}

function targetClaims(known: Answers['target']): Claims {
  const { about, value, unit, through, low, high, reading, basis } = known;
  /** Where anything between its ends is right, a middle would be chased. */
  const isEnds = low !== undefined && high !== undefined && isBandOnly(basis);
  const of = (slot: Partial<Slot> & Pick<Slot, 'value' | 'cues'>): Slot => ({
    about,
    place: null,
    unit,
    required: false,
    ...slot,
  });
  const slots = [
    ...(isEnds
      ? []
      : [of({ value, cues: through ? ['target', 'bare', 'at'] : ['target'], required: true })]),
    ...(through ? [of({ ...through, cues: ['target', 'bare', 'at'] })] : []),
    ...(low === undefined ? [] : [of({ value: low, cues: ['low'], required: isEnds })]),
    ...(high === undefined ? [] : [of({ value: high, cues: ['high'], required: isEnds })]),
    ...(reading && reading.direction !== 'on'
      ? [
          of({
            value: reading.value,
            unit: reading.unit,
            cues: DIFFERENCE,
            direction: reading.direction,
          }),
        ]
      : []),
  ];
  return claims({
    slots,
    mustSayShould: 'always',
    onTarget: reading?.direction === 'on' ? 'allowed' : 'forbidden',
  });
}

function compareClaims(known: Answers['compare']): Claims {
  const { about, measured, measuredUnit, value, unit, direction, alongside } = known;
  const on = direction === 'on';
  const base = { about, place: null, required: false };
  const slots: Slot[] = [
    { ...base, value: measured, unit: measuredUnit, cues: SAID },
    ...wantedSlots(known),
  ];
  if (!on) {
    const required = !isInBand(known);
    slots.push({ ...base, value, unit, cues: DIFFERENCE, direction, required });
  }
  if (alongside && alongside.direction !== 'on') {
    slots.push({ ...base, ...alongside, cues: DIFFERENCE, direction: alongside.direction });
  }
  return claims({
    slots,
    names: alongside ? [alongside.about] : [],
    requiredNames: [about],
    mustSayShould: 'withEnds',
    ownWords: isInBand(known) ? ['within', 'usual', 'range'] : [],
    mustSay: isInBand(known) && !on ? ['within', 'range'] : [],
    onTarget: on ? 'required' : alongside?.direction === 'on' ? 'allowed' : 'forbidden',
  });
}

/** What it should be: a number, or where anything between is right the ends alone. */
function wantedSlots(known: Answers['compare']): readonly Slot[] {
  const { about, target, measuredUnit: unit, low, high, basis } = known;
  const base = { about, place: null, unit, required: false };
  if (low === undefined || high === undefined || !isBandOnly(basis)) {
    return [{ ...base, value: target, cues: ['target'] }];
  }
  return [
    { ...base, value: low, cues: ['low'] },
    { ...base, value: high, cues: ['high'] },
  ];
}

function saturationClaims(known: Answers['saturation']): Claims {
  const { refrigerant, given, value, unit, bubble } = known;
  const base = { about: null, place: null, required: true };
  const slots: Slot[] = [
    { ...base, ...given, cues: ['at'] },
    { ...base, value, unit, cues: bubble === undefined ? RESULT : ['dew'] },
  ];
  if (bubble !== undefined) slots.push({ ...base, value: bubble, unit, cues: ['bubble'] });
  return claims({ slots, names: [refrigerant], requiredNames: [refrigerant] });
}

function marginClaims(known: Answers['margin']): Claims {
  const { about, measured, limit, value, unit, side } = known;
  const pressure = about === 'highCutoutPressure' ? 'headPressure' : 'suctionPressure';
  const base = { place: null, unit, required: false };
  const slots: Slot[] = [
    { ...base, about: pressure, value: measured, cues: SAID },
    { ...base, about, value: limit, cues: ['at'] },
    { ...base, about, value, cues: DIFFERENCE, direction: side, required: true },
  ];
  return claims({ slots, requiredNames: [about] });
}

const isUnmoved = ({ change, changeUnit }: BeforeAfterRow): boolean =>
  change !== null && readsNothing({ value: change, unit: changeUnit });

function rowSlots(row: BeforeAfterRow): readonly Slot[] {
  const { about, place, before, after, unit, change, changeUnit } = row;
  const base = { about, place, unit, required: change !== null };
  const slots: Slot[] = [];
  if (before !== null) slots.push({ ...base, value: before, cues: ['before'] });
  if (after !== null) slots.push({ ...base, value: after, cues: ['after'] });
  if (change !== null && !isUnmoved(row)) {
    slots.push({
      ...base,
      value: Math.abs(change),
      unit: changeUnit,
      cues: DIFFERENCE,
      direction: change > 0 ? 'up' : 'down',
      required: false,
    });
  }
  return slots;
}

function readSlot({ about, place, value, unit }: ReadRow): Slot {
  return { about, place, value, unit, cues: SAID, required: true };
}
