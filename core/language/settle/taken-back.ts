import type { Meaning } from '../rule.ts';

/**
 * "Scratch that, suction's fifty one": what opens a sentence takes back what was kept before it, and not what it says
 * itself. "That ain't right, the fan's just sitting there" takes back nothing: it is the fan that is not right.
 */
export function takenBackFirst(meanings: readonly Meaning[]): readonly Meaning[] {
  const at = meanings.findIndex(isUndo);
  const [undo, ...more] = at === -1 ? [] : meanings.slice(at);
  if (undo === undefined || meanings.slice(0, at).some(says)) return meanings;
  // "No, that's wrong, make it one sixty two" puts one value right, and not the one before it too.
  if (isOfLast(undo) && more.some(amends)) return [...meanings.slice(0, at), ...more];
  if (!more.some(says)) return meanings;
  const kept = [...meanings.slice(0, at), ...more];
  if (undo.unlessTold === true && !more.some(putsRight)) return kept;
  const [named] = more.flatMap(({ readings = [] }) => readings);
  const of = named === undefined ? {} : { quantity: named.quantity };
  const commands = (undo.commands ?? []).map((command) =>
    command.do === 'undo' ? { ...of, ...command, earlier: true as const } : command,
  );
  return [...meanings.slice(0, at), { ...undo, commands }, ...more];
}

const isOfLast = ({ commands: [command] = [] }: Meaning): boolean =>
  command?.do === 'undo' && command.quantity === undefined;

const amends = ({ commands = [] }: Meaning): boolean => commands[0]?.do === 'amend';

const isUndo = ({ commands = [] }: Meaning): boolean =>
  commands[0]?.do === 'undo' && commands[0].value === undefined;

const putsRight = ({ readings = [], commands = [] }: Meaning): boolean =>
  readings.length + commands.length > 0;

const says = ({ readings, facts, findings, work, recommendations, memos, remarks }: Meaning) =>
  [readings, facts, findings, work, recommendations, memos, remarks].some(
    (list) => list !== undefined && list.length > 0,
  );
