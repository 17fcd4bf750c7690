import type { Members } from '../../core/advice/by-kind.ts';
import type { Direction, Known } from '../../core/advice/verdict.ts';
import {
  blankNames,
  isBandOnly,
  isInBand,
  movedSaid,
  rowsSaid,
} from '../../core/replies/answers.ts';
import { designation } from '../../core/replies/designation.ts';
import { placedName, SHORT_NAMES } from '../../core/replies/names.ts';
import { unitRow } from '../../core/units/units.ts';
import type { PhraseRecord } from './phrase-record.ts';
import { name, number, oftenBare, slots, worded } from './slots.ts';

type Answers = Members<Known, 'answer'>;
/** A record but for its kind, which is the answer's own name. */
export type Recorded = Omit<PhraseRecord, 'kind'>;

/** A word where something holds, and nothing where it does not. */
const when = (holds: boolean, ...words: readonly string[]): readonly string[] =>
  holds ? words : [];

export function valueRecord({ about, place, value, unit }: Answers['value']): Recorded {
  return {
    fields: when(place !== null, 'placed'),
    slots: slots({
      about: name(placedName(about, place)),
      measured: number({ value, unit }, true),
    }),
  };
}

/** `over`, `under` and `on` are where the reading is now, if there is one. */
export function targetRecord(known: Answers['target']): Recorded {
  const { about, value, unit, through, low, high, reading, basis } = known;
  const off = reading && reading.direction !== 'on' ? reading : null;
  const hasBand = low !== undefined && high !== undefined;
  const isEnds = hasBand && isBandOnly(basis);
  return {
    fields: [
      ...(reading ? [reading.direction] : []),
      ...when(hasBand, isEnds ? 'ends' : 'band'),
      ...when(through !== undefined, 'through'),
    ],
    slots: slots({
      about: name(SHORT_NAMES[about]),
      target: isEnds ? null : number({ value, unit }, true),
      low: hasBand ? number({ value: low, unit }, isEnds) : null,
      high: hasBand ? number({ value: high, unit }, isEnds) : null,
      through: through ? number(through, false) : null,
      throughName: through ? { ...name(SHORT_NAMES[through.about]), required: false } : null,
      difference: off && number(off, true),
    }),
  };
}

/** Within the band nobody is told how far off its middle: the direction is left out, and the difference. */
export function compareRecord(known: Answers['compare']): Recorded {
  const { about, measured, target, measuredUnit, value, unit, direction, low, high } = known;
  const isEnds = low !== undefined && high !== undefined && isBandOnly(known.basis);
  const inBand = direction !== 'on' && isInBand(known);
  const isOff = direction !== 'on' && !inBand;
  const isSameSymbol = unitRow(unit).symbol === unitRow(measuredUnit).symbol;
  const figure = isSameSymbol || !isOff ? oftenBare : number;
  const alongside = isOff ? known.alongside : undefined;
  const offToo = alongside && alongside.direction !== 'on' ? alongside : null;
  return {
    fields: [
      inBand ? 'inBand' : direction,
      ...(offToo ? [ALONGSIDE[offToo.direction]] : []),
      ...when(isEnds, 'ends'),
    ],
    slots: slots({
      about: name(SHORT_NAMES[about]),
      measured: figure({ value: measured, unit: measuredUnit }, false),
      target: isEnds ? null : figure({ value: target, unit: measuredUnit }, false),
      low: isEnds ? figure({ value: low, unit: measuredUnit }, false) : null,
      high: isEnds ? figure({ value: high, unit: measuredUnit }, false) : null,
      difference: isOff ? figure({ value, unit }, true) : null,
      alongsideName: offToo && { ...name(SHORT_NAMES[offToo.about]), required: false },
      alongside: offToo && number(offToo, false),
    }),
  };
}

const ALONGSIDE: Record<Direction, string> = {
  over: 'alongsideOver',
  under: 'alongsideUnder',
  on: 'alongsideOn',
};

/** `glide` has a dew and a bubble end, `single` one result. */
export function saturationRecord(known: Answers['saturation']): Recorded {
  const { refrigerant, given, value, unit, bubble } = known;
  const single = bubble === undefined;
  return {
    fields: [
      single ? 'single' : 'glide',
      unitRow(given.unit).dimension === 'temperature' ? 'givenTemperature' : 'givenPressure',
    ],
    slots: slots({
      refrigerant: name(designation(refrigerant)),
      given: number(given, true),
      result: single ? number({ value, unit }, true) : null,
      dew: single ? null : number({ value, unit }, true),
      bubble: single ? null : number({ value: bubble, unit }, true),
    }),
  };
}

const PRESSURE_OF = { highCutoutPressure: 'head', lowCutoutPressure: 'suction' } as const;

/** {about} is the cut-out's name and {limit} its setting; {pressure} is what it watches, {measured} its reading. */
export function marginRecord(known: Answers['margin']): Recorded {
  const { about, measured, limit, value, unit, side } = known;
  return {
    fields: [side],
    slots: slots({
      about: name(SHORT_NAMES[about]),
      limit: number({ value: limit, unit }, false),
      pressure: { ...name(PRESSURE_OF[about]), required: false },
      measured: number({ value: measured, unit }, false),
      difference: number({ value, unit }, true),
    }),
  };
}

/** {rows} are whole sentences, one for each that has both columns. */
export function beforeAfterRecord({ rows }: Answers['beforeAfter']): Recorded {
  const moved = movedSaid(rows);
  const hasMoved = moved.text !== '';
  const before = blankNames(rows, 'before');
  const after = blankNames(rows, 'after');
  return {
    fields: [
      ...when(hasMoved, 'moved'),
      ...when(before !== '', 'blankBefore'),
      ...when(after !== '', 'blankAfter'),
    ],
    slots: slots({
      rows: hasMoved ? worded(moved) : null,
      blankBefore: before === '' ? null : name(before),
      blankAfter: after === '' ? null : name(after),
    }),
  };
}

/** {rows} are names with their numbers, a comma between. */
export function rowsRecord({ rows }: Answers['before'] | Answers['readback']): Recorded {
  return {
    fields: when(rows.length > 1, 'several'),
    slots: slots({ rows: worded(rowsSaid(rows)) }),
  };
}
