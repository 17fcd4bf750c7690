import type { Members } from '../../../advice/by-kind.ts';
import type { HottestDayAnswer, LimitAnswer } from '../../../advice/limits-verdict.ts';
import type { Amount } from '../../../units/amount.ts';
import type { UnitId } from '../../../units/units.ts';
import { amountSlot, wordSlot, type Told, type Ways } from './told.ts';

type Limits = Members<LimitAnswer, 'about'>;
type LimitsTold = { readonly [L in LimitAnswer['about']]: (found: Limits[L]) => Told };

const RULED_BY = { lowSide: 'low side', highSide: 'high side' } as const;

const ISOLATE =
  '[isolate|shut off|valve off] [whatever|anything that|what] is rated less|[isolate|shut off|valve off] [anything|whatever is] rated [for|] less';

const FULL =
  '[it is|] full [is|at|comes at] {value} on the scale|{value} on the scale [is full|, and it is full|, and you are full]|stop at {value} on the scale';

const LIMITS: LimitsTold = {
  testPressure: ({ about, value, unit, ruledBy }) => ({
    fields: [about],
    slots: { value: amountSlot({ value, unit }), ruledBy: wordSlot(RULED_BY[ruledBy]) },
    must: [
      '[no more than|never more than|not more than|at most|not over|never over|nothing over] {value}|{value} [at most|at the most|and no more|and not a pound more|is the most|is the limit|is the top]',
      ISOLATE,
    ],
    may: [
      'the {ruledBy} is rated that on the plate|[the plate|that is what the plate|which is what the plate] rates the {ruledBy} [at that|for that|for|that|]|[by|going by] the {ruledBy} rating on the plate|[that|which] is the {ruledBy} rating on the plate|[the plate|the nameplate] gives the {ruledBy} no more',
    ],
  }),
  cylinderFill: ({ about, value, unit, net, room }) => {
    const of = (amount: number): Amount => ({ value: amount, unit });
    const slots = { value: amountSlot(of(value)), net: amountSlot(of(net)) };
    const may = [
      '{net} of [it|that] [is|] refrigerant|[that is|with|] {net} [of|] refrigerant [in it|in there|]',
    ];
    if (room === null) return { fields: [about, 'full'], slots, must: [FULL], may };
    if (room < 0) return overfilled(of(-room), { fields: [about, 'overfilled'], slots });
    return {
      fields: [about, 'room'],
      slots: { ...slots, room: amountSlot(of(room)) },
      must: [
        '[room for|space for|you can put in|put in|] {room} more [can go in|may go in|goes in|]|{room} [still fits|still to go|to go|can still go in]|room for [another|] {room} [yet|still|]',
        FULL,
      ],
      may,
    };
  },
  charge: ({ about, value, unit, left }) => {
    const slots = { value: amountSlot({ value, unit }) };
    return {
      fields: [about, leftField(left)],
      slots: left === null || left === 0 ? slots : { ...slots, left: leftSlot(left, unit) },
      ...CHARGE[leftField(left)],
    };
  },
};

function overfilled(over: Amount, { fields, slots }: Pick<Told, 'fields' | 'slots'>): Told {
  return {
    fields,
    slots: { value: slots['value'] ?? amountSlot(over), over: amountSlot(over) },
    must: [
      'it is {over} [over|overfilled|too full]|{over} [over|too much|too much in it]|[over|overfilled] by {over}',
      FULL,
    ],
  };
}

const leftSlot = (left: number, unit: UnitId) => amountSlot({ value: Math.abs(left), unit });

const leftField = (left: number | null): keyof typeof CHARGE => {
  if (left === null) return 'unknown';
  if (left === 0) return 'allIn';
  return left < 0 ? 'tooMuch' : 'toGo';
};

const BY_PLATE =
  '{value} [by|on] the [plate|nameplate]|the [plate|nameplate] [says|gives|calls for|takes] {value}|the [plate|nameplate] charge is {value}';

const CHARGE = {
  unknown: {
    must: [
      BY_PLATE,
      "I [do not|don't] know what is [still|left] in it|what is [still|left] in it I [do not|don't] know|how much is [still|left] in it I [do not|don't] know|nobody knows what is [still|left] in it",
      'recover [it|] , [pull a vacuum|evacuate] [, and|and|, then|,] weigh [it|] all [of it|] in|recover [it|] , [pull a vacuum|evacuate] [, and|and|, then] weigh [the whole charge|it all] in',
    ],
  },
  tooMuch: {
    must: [
      "it is {left} over [the plate's {value}|the {value} of the plate|the {value} on the plate|the plate|]|{left} [over|too much|more than the plate's {value}] [the plate's {value}|the {value} on the plate|the plate|]|over by {left}",
      '[take|get|recover] [it|that|the extra|that much] [back|] out|recover [it|that|the extra|that much]|[it|that] has to come [back|] out',
    ],
    may: ['the plate [says|gives|takes] {value}'],
  },
  allIn: {
    must: [
      'nothing [more|to go|left to weigh in|]|no more|stop there',
      "the plate's {value} are in|the {value} [on|of] the plate are in|all {value} [by|on|of] the plate are in|it [has|holds] the plate's {value}|it [has|holds] all {value} of the plate",
    ],
  },
  toGo: {
    must: [
      '{left} [to go|more to go|still to go|left to go|more|to weigh in|still to weigh in|left to weigh in]|[weigh|put] in {left} [more|]|[weigh|put] {left} more in|still {left} to go',
    ],
    may: [
      `{value} in all [by the plate|by the nameplate|]|[that makes|which makes|for] [the plate's {value}|{value} in all|{value} in all by the plate]|${BY_PLATE}`,
    ],
  },
} satisfies Record<string, Ways>;

export function limitTold<L extends LimitAnswer['about']>(
  found: Limits[L] & { readonly about: L },
): Told {
  const of: LimitsTold[L] = LIMITS[found.about];
  return of(found);
}

const SPLIT_WAYS = {
  measured:
    '[as|the way] it [runs|is running] now|running as it [does|is] now|with the split it has now',
  design: '[by|going by|on|with] the design split',
} as const;

const CUTOUT_WAYS = {
  none: [
    '[tell|give] me the cut-out [for|to know|to hear] what is left to it|[tell|give] me the cut-out [,|] and I will [tell|give] you what is left to it',
  ],
  inside: [
    '[the|a] cut-out at {limit} leaves [you|it|] {room}|[that|which] leaves {room} to the cut-out at {limit}|{room} [left|room|] [under|below|to|inside|short of] the cut-out at {limit}|[with|] the cut-out at {limit} , {room} [is|] left',
  ],
  past: [
    '[the|your] cut-out at {limit} is {room} [below|under] that|{room} [past|over|above] the cut-out at {limit}|[the|your] cut-out stands at {limit} , {room} [below|under] that',
    '[it|that|the unit] will trip|will trip|[that|which] will trip it',
  ],
} as const;

export function hottestDayTold(found: HottestDayAnswer): Told {
  const { value, unit, ambient, splitFrom, cutout } = found;
  return {
    fields: [splitFrom, cutout?.side ?? 'none'],
    slots: {
      value: amountSlot({ value, unit }),
      ambient: amountSlot(ambient),
      ...(cutout && {
        limit: amountSlot({ value: cutout.limit, unit }),
        room: amountSlot({ value: cutout.room, unit }),
      }),
    },
    must: [
      '[expect|] head [will be|comes to|would be|would go to|goes to|of|at|to be|] [about|around] {value}|[about|around] {value} [of|on the|on|] head|[expect|figure|figure on] [about|around] {value} [of|on the|on] head',
      '[at|with the air at|on a day of|on the hottest day at|when the air is at|in air at] {ambient}|on a {ambient} day',
      SPLIT_WAYS[splitFrom],
      ...CUTOUT_WAYS[cutout?.side ?? 'none'],
    ],
  };
}
