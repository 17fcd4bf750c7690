import type { QuantityId } from '../../terms/quantities.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import type { Meaning } from '../rule.ts';
import type { Command, Reading } from '../utterance.ts';

/** After "no wait", a second reading of the same quantity and place takes the first one's place. */
export function settleCorrections(meanings: readonly Meaning[], text: string): readonly Meaning[] {
  const settled: Meaning[] = [];
  let correcting = false;
  for (const meaning of meanings) {
    if (putRight(settled, meaning)) continue;
    if (isCorrection(meaning)) {
      // "That was the other unit, forget it" takes back one thing.
      const isAgain = correcting && isPlainUndo(meaning) && isPlainUndo(settled.at(-1) ?? {});
      correcting = true;
      if (meaning.correction !== true && !isAgain) settled.push(meaning);
      continue;
    }
    const [fresh] = meaning.readings ?? [];
    const amended = correcting ? amendedBy(settled, meaning) : null;
    if (amended !== null) {
      settled.splice(0, 1, amended);
      correcting = false;
      continue;
    }
    if (correcting && fresh !== undefined) replaceLast(settled, fresh);
    if (correcting && isDenied(text)) replaceFinding(settled, meaning, text);
    correcting = false;
    settled.push(meaning);
  }
  return settled;
}

/** "Scratch that, suction line's forty six": what was told before this sentence gets another value, and is not taken away. */
function amendedBy(settled: readonly Meaning[], { readings = [] }: Meaning): Meaning | null {
  const [first, ...more] = settled;
  const [read, ...others] = readings;
  if (first === undefined || more.length > 0 || !isPlainUndo(first)) return null;
  if (read?.value === undefined || read.unit === null || others.length > 0) return null;
  const { quantity, value, unit } = read;
  return isElectrical(quantity)
    ? { readings }
    : { commands: [{ do: 'amend', quantity, value, unit }] };
}

/** Taken back by its value, or put in the place of what was told last. */
function meantIn(command: Command | undefined): { quantity?: QuantityId; value?: number } {
  if (command?.do === 'undo') return command;
  return command?.do === 'amend' && command.quantity === null ? { value: command.value } : {};
}

/** "fourteen on the suction, scratch that, fifteen": a value that was not said before is not taken back but meant. */
function putRight(settled: Meaning[], { commands = [] }: Meaning): boolean {
  const { quantity, value } = meantIn(commands[0]);
  if (value === undefined) return false;
  const at = settled.findLastIndex(({ readings = [] }) => readings.length > 0);
  const [old, ...more] = settled[at]?.readings ?? [];
  if (old === undefined || more.length > 0 || old.value === value) return false;
  if (old.value === undefined || (quantity !== undefined && quantity !== old.quantity))
    return false;
  settled[at] = { ...settled[at], readings: [{ ...old, value }] };
  return true;
}

const isPlainUndo = ({ commands = [] }: Meaning): boolean => {
  const [only] = commands;
  return only?.do === 'undo' && only.quantity === undefined && only.value === undefined;
};

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

/** "Fan's dead, wait, compressor's dead too" finds both. */
const isDenied = (text: string): boolean =>
  /\b(?:no|nope|sorry|not|meant?|scratch|correction|actually)\b/i.test(text) &&
  !/\b(?:too|also|either|as well)\b/i.test(text);

/** "It's not running, wait, now it's running" tells of one after the other. */
const isPutRight = (text: string): boolean =>
  /\b(?:no|nope|sorry|meant?|scratch|correction|actually)\b/i.test(text) && !/\bnow\b/i.test(text);

/** "Evap fan's dead, no sorry, condenser fan's dead": the same was found, of another part. */
function replaceFinding(
  settled: Meaning[],
  { findings: [found] = [] }: Meaning,
  text: string,
): void {
  const at = settled.findLastIndex((meaning) => !isCorrection(meaning));
  const [old, ...more] = settled[at]?.findings ?? [];
  if (old === undefined || found === undefined || more.length > 0) return;
  const isOtherPart = old.state === found.state && old.part !== found.part;
  // "Crankcase heater's cold, no, it's failed"
  const isOtherState = old.part === found.part && old.state !== found.state && isPutRight(text);
  if (!isOtherPart && !isOtherState) return;
  const { findings: _taken, ...others } = settled[at] ?? {};
  settled[at] = others;
}
