import type { HottestDayAnswer, LimitAnswer } from '../advice/limits-verdict.ts';
import type { Members } from '../advice/by-kind.ts';
import { figure } from './amounts.ts';
import { line, plain, sentences, type Said } from './said.ts';

type Limits = Members<LimitAnswer, 'about'>;
type Worded = { readonly [L in LimitAnswer['about']]: (found: Limits[L]) => Said };

const RULED_BY = { lowSide: 'low side', highSide: 'high side' } as const;

const WORDED: Worded = {
  testPressure: ({ value, unit, ruledBy }) =>
    line`No more than ${figure({ value, unit })}: the ${RULED_BY[ruledBy]} is rated that on the plate. Isolate whatever is rated less.`,
  cylinderFill: ({ value, unit, net, room }) => {
    const full = line`Full at ${figure({ value, unit })} on the scale, ${figure({ value: net, unit })} of it refrigerant.`;
    if (room === null) return full;
    return room < 0
      ? line`It is ${figure({ value: -room, unit })} over. Full is ${figure({ value, unit })} on the scale.`
      : sentences([line`${figure({ value: room, unit })} more.`, full]);
  },
  charge: ({ value, unit, left }) => {
    const plate = figure({ value, unit });
    if (left === null)
      return line`${plate} by the plate. I do not know what is still in it: recover, pull a vacuum, and weigh it all in.`;
    if (left < 0)
      return line`It is ${figure({ value: -left, unit })} over the plate’s ${plate}. Take it out.`;
    return left === 0
      ? line`Nothing: the plate’s ${plate} are in.`
      : line`${figure({ value: left, unit })} to go, ${plate} in all by the plate.`;
  },
};

export function limitSaid<L extends LimitAnswer['about']>(
  found: Limits[L] & { readonly about: L },
): Said {
  const sentence: Worded[L] = WORDED[found.about];
  return sentence(found);
}

const SPLIT_FROM = { measured: 'as it runs now', design: 'by the design split' } as const;

export function hottestDaySaid(found: HottestDayAnswer): Said {
  const { value, unit, ambient, splitFrom, cutout } = found;
  const head = line`Head about ${figure({ value, unit })} at ${figure(ambient)}, ${SPLIT_FROM[splitFrom]}.`;
  if (cutout === null)
    return sentences([head, plain('Tell me the cut-out for what is left to it.')]);
  const { limit, room, side } = cutout;
  const left =
    side === 'inside'
      ? line`The cut-out at ${figure({ value: limit, unit })} leaves ${figure({ value: room, unit })}.`
      : line`The cut-out at ${figure({ value: limit, unit })} is ${figure({ value: room, unit })} below that: it will trip.`;
  return sentences([head, left]);
}
