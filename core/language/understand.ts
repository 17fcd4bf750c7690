import type { Context } from './context.ts';
import { doubtful } from './doubts.ts';
import type { Meaning } from './rule.ts';
import { type Item, parse } from './parse.ts';
import type { Doubt, Reading, Utterance } from './utterance.ts';

/** What one sentence means after what was settled before it. Never throws: any text has an answer. */
export function understand(text: string, context: Context): Utterance {
  const { items, unclaimed } = parse(text, context);
  const meant = gather(items, context);
  const { readings, doubts } = doubtful(meant.readings, context);
  return {
    text,
    ...meant,
    readings,
    unclaimed: [...unclaimed, ...meant.unclaimed],
    doubts: [...doubts, ...meant.doubts],
  };
}

type Gathered = Omit<Utterance, 'text'>;

function gather(items: readonly Item[], context: Context): Gathered {
  const plain = items.filter((item) => item.meaning.hearsay === undefined);
  const meanings = settleCorrections(plain.map((item) => item.meaning));
  const heard = items
    .filter((item) => item.meaning.hearsay !== undefined)
    .map((item) => secondHand(item, context));
  return {
    readings: meanings.flatMap((each) => each.readings ?? []),
    facts: meanings.flatMap((each) => each.facts ?? []),
    findings: meanings.flatMap((each) => each.findings ?? []),
    work: meanings.flatMap((each) => each.work ?? []),
    recommendations: meanings.flatMap((each) => each.recommendations ?? []),
    questions: meanings.flatMap((each) => each.questions ?? []),
    commands: meanings.flatMap((each) => each.commands ?? []),
    memos: [
      ...meanings.flatMap((each) => each.memos ?? []),
      ...heard.flatMap((each) => each.memos),
    ],
    unclaimed: [
      ...meanings.flatMap((each) => each.unclaimed ?? []),
      ...heard.flatMap((each) => each.unclaimed),
    ],
    doubts: heard.flatMap((each) => each.doubts),
  };
}

/** After "no wait", a second reading of the same quantity and place takes the first one's place. */
function settleCorrections(meanings: readonly Meaning[]): readonly Meaning[] {
  const settled: Meaning[] = [];
  let correcting = false;
  for (const meaning of meanings) {
    if (putRight(settled, meaning)) continue;
    if (isCorrection(meaning)) {
      correcting = true;
      if (meaning.correction !== true) settled.push(meaning);
      continue;
    }
    const [fresh] = meaning.readings ?? [];
    if (correcting && fresh !== undefined) replaceLast(settled, fresh);
    correcting = false;
    settled.push(meaning);
  }
  return settled;
}

/** "fourteen on the suction, scratch that, fifteen": a value that was not said before is not taken back but meant. */
function putRight(settled: Meaning[], { commands = [] }: Meaning): boolean {
  const [command] = commands;
  if (command?.do !== 'undo' || command.value === undefined) return false;
  const { quantity, value } = command;
  const at = settled.findLastIndex(({ readings = [] }) => readings.length > 0);
  const [old, ...more] = settled[at]?.readings ?? [];
  if (old === undefined || more.length > 0 || old.value === value) return false;
  if (old.value === undefined || (quantity !== undefined && quantity !== old.quantity))
    return false;
  settled[at] = { ...settled[at], readings: [{ ...old, value }] };
  return true;
}

const isCorrection = (meaning: Meaning): boolean =>
  meaning.correction === true || meaning.commands?.[0]?.do === 'undo';

function replaceLast(settled: Meaning[], fresh: Reading): void {
  const at = settled.findLastIndex((meaning) => {
    const [old] = meaning.readings ?? [];
    return old?.quantity === fresh.quantity && old.place === fresh.place;
  });
  if (at === -1) return;
  settled.splice(at, 1);
  // The words that took it back have done so: as a command they would take back one more.
  const last = settled.at(-1);
  if (last?.commands?.[0]?.do === 'undo') settled.pop();
}

interface SecondHand {
  readonly memos: readonly string[];
  readonly doubts: readonly Doubt[];
  readonly unclaimed: readonly string[];
}

/** Somebody else's numbers are never readings: doubted where a quantity is named, else kept as words. */
function secondHand({ words, meaning }: Item, context: Context): SecondHand {
  const { items, unclaimed } = parse(meaning.hearsay ?? '', { ...context, asked: null });
  const readings = items.flatMap((item) => item.meaning.readings ?? []);
  if (readings.length === 0) return { memos: [words], doubts: [], unclaimed: [] };
  const doubts = readings.map((reading): Doubt => ({ ...reading, words, why: 'hearsay' }));
  return { memos: [], doubts, unclaimed };
}
