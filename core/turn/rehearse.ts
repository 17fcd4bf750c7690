import { EMPTY_VISIT } from '../visit/empty-visit.ts';
import type { VisitState } from '../visit/state.ts';
import { takeTurn } from './take-turn.ts';
import { EMPTY_MEMORY, type Memory, type Stamp } from './turn.ts';

/**
 * A made-up call, said to nobody. What the rules look up is worked out as sentences come: the first ever takes some
 * 200 ms and the next twenty 30 ms each, four times as much on a slow phone; behind these, others take a few.
 */
const SENTENCES: readonly string[] = [
  'head one ninety two, suction at fourteen, box is forty four',
  "i'm at Harbor Street Deli",
  "it's the walk in cooler behind the kitchen",
  "they said it's been warm since yesterday and it's not cooling",
  "it's a walk in cooler on four oh four a with a txv, condensing unit is outside",
  'nameplate says nine pounds, two oh eight volts three phase, rated load eleven amps',
  "it's eighty eight outside",
  'both evaporator fans are running and the coil is clean, no ice',
  "compressor isn't running",
  'i got two oh nine at the line side and zero on the load side of the contactor',
  'two oh eight across the low pressure switch',
  'what should i check next',
  'what does that tell me',
  'disconnect is off and locked out',
  'gauges are on',
  'suction line at the bulb is fifty one, liquid line ninety',
  "what's my superheat",
  'what should head be',
  "so what's causing this",
  'sight glass is bubbling and the flare at the drier is leaking',
  "that's my before",
  'recovered two pounds four ounces',
  'replaced the filter drier and tightened the flare',
  'nitrogen test at one fifty, held for thirty minutes',
  'pulled it down to four hundred microns, ten minutes on the hold',
  'added six pounds eight ounces of four oh four a',
  "power's back on, compressor started, it pulls nine point eight amps",
  'no, make it nine point six',
  'how far off am i',
  'has it settled',
  'mark that as after',
  'milk is forty one, cheese is forty two',
  'they should keep the door shut till tonight and replace the gasket',
  'gauges are off and the caps are on',
  'i was here two and a half hours',
  'read me the note',
];

/** One step a sentence, for whoever has idle moments between them. Nothing of it is kept. */
export function rehearsalSteps(): readonly (() => void)[] {
  let sofar: { readonly state: VisitState; readonly memory: Memory } = {
    state: EMPTY_VISIT,
    memory: EMPTY_MEMORY,
  };
  let seq = 0;
  const stamp: Stamp = (body) => {
    seq += 1;
    return { ...body, id: `rehearsed-${seq}`, device: 'none', visit: 'rehearsal', seq, at: seq };
  };
  return SENTENCES.map((words) => () => {
    sofar = takeTurn({ ...sofar, words, stamp });
  });
}
