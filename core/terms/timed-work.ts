import type { QuantityId } from './quantities.ts';

interface TimedWorkTerm {
  readonly name: string;
  /** Words that tell it, in what a timer was said to be for. */
  readonly words: readonly string[];
  /** What is read when its time is up; null where somebody looks instead. */
  readonly asks: QuantityId | null;
}

/**
 * Work that runs by the clock, the first that fits a timer's words being meant. A "vacuum" that is not said to be
 * held is one with the pump still on: what it reads then says nothing of a leak.
 */
export const TIMED_WORK = {
  pressureTest: {
    name: 'pressure test',
    words: [
      ...['pressure test', 'standing pressure', 'nitrogen test', 'leak test', 'pressure hold'],
      ...['pressure', 'nitrogen', 'standing test'],
    ],
    asks: 'testPressure',
  },
  vacuumHold: {
    name: 'vacuum hold',
    words: [
      ...['vacuum hold', 'decay test', 'rise test', 'standing vacuum', 'vacuum test'],
      ...['micron test', 'hold', 'decay'],
    ],
    asks: 'vacuum',
  },
  pumpDown: { name: 'pump-down', words: ['pump down', 'pumpdown'], asks: 'suctionPressure' },
  evacuation: {
    name: 'evacuation',
    words: ['vacuum', 'vac', 'evacuation', 'evacuate', 'vacuum pump', 'pump', 'microns'],
    asks: 'vacuum',
  },
  defrost: { name: 'defrost', words: ['defrost', 'thaw', 'de ice', 'melt'], asks: null },
  pullDown: {
    name: 'pull-down',
    words: ['pull down', 'pulldown', 'box', 'cooler'],
    asks: 'boxTemp',
  },
  superheat: { name: 'superheat', words: ['superheat', 'suction line'], asks: 'suctionLineTemp' },
  head: { name: 'head', words: ['head', 'high side'], asks: 'headPressure' },
  suction: { name: 'suction', words: ['suction', 'low side'], asks: 'suctionPressure' },
  settling: {
    name: 'settling',
    words: ['settle', 'settling', 'stabilize', 'steady', 'run', 'readings', 'after'],
    asks: 'headPressure',
  },
} as const satisfies Record<string, TimedWorkTerm>;

export type TimedWorkId = keyof typeof TIMED_WORK;

const isTimedWork = (id: string): id is TimedWorkId => id in TIMED_WORK;
/** "Pump down" is not "pump": what is said in more words is meant. */
export const TIMED_WORK_NAMES: readonly { readonly id: TimedWorkId; readonly words: string }[] =
  Object.keys(TIMED_WORK)
    .filter(isTimedWork)
    .flatMap((id) => TIMED_WORK[id].words.map((words) => ({ id, words })));

/** What work those words name; null where they name none that is known. */
export function timedWorkOf(words: string): TimedWorkId | null {
  const said = ` ${words.toLowerCase().replace(/[^a-z]+/g, ' ')} `;
  const named = TIMED_WORK_NAMES.filter((each) => said.includes(` ${each.words} `));
  const longest = Math.max(...named.map((each) => each.words.split(' ').length));
  return named.find((each) => each.words.split(' ').length === longest)?.id ?? null;
}
