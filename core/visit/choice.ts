import type { Command, Doubt, Reading, Utterance } from '../language/utterance.ts';
import type { EventBody } from './events.ts';
import type { Keeping } from './keeping.ts';
import type { VisitState } from './state.ts';
import { openQuestion } from './views.ts';

type Choose = Extract<Command, { do: 'choose' }>;

/** The question "fifteen, or fifty?" that is open now, and the two values it offers. */
interface OpenChoice {
  readonly id: string;
  readonly doubt: Doubt;
  readonly values: { readonly first: number; readonly second: number };
}

function openChoice(state: VisitState): OpenChoice | null {
  const open = openQuestion(state);
  if (open?.kind !== 'doubt') return null;
  const { id, doubt } = open.of;
  const { value, or } = doubt;
  if (value === undefined || or === undefined) return null;
  return { id, doubt, values: { first: value, second: or } };
}

/** Keeps one of the two; said while nothing is offered, it was no answer. */
export function chooseValue({ which }: Choose, state: VisitState): Keeping {
  const open = openChoice(state);
  if (open === null) return { bodies: [], acknowledgement: null };
  const { why, or, ...doubted } = open.doubt;
  const reading: Reading = { ...doubted, value: open.values[which] };
  const taken: readonly EventBody[] =
    which === 'first'
      ? [{ type: 'doubtSettled', v: 1, target: open.id, kept: true }]
      : [
          { type: 'doubtSettled', v: 1, target: open.id, kept: false },
          { type: 'readingTaken', v: 1, reading },
        ];
  return { bodies: taken, acknowledgement: { kind: 'reading', reading } };
}

/**
 * The sentence with an answer to the open choice read as such: "fifty", "box fifty" and "make it fifty" choose
 * it, "not fifty" the other one. Any other value is what it says.
 */
export function answeringChoice(utterance: Utterance, state: VisitState): Utterance {
  const open = openChoice(state);
  if (open === null) return utterance;
  const fits = (value: number | undefined): boolean =>
    value === open.values.first || value === open.values.second;
  const named = ({ quantity, value, unit }: Reading): boolean =>
    quantity === open.doubt.quantity && unit === open.doubt.unit && fits(value);
  const read = [...utterance.readings, ...utterance.doubts].filter(named);
  const bare = utterance.unclaimed.filter((digits) => fits(Number(digits)));
  const commands = utterance.commands.map((command) => choosing(command, open) ?? command);
  const [said = bare[0]] = read.map(({ value }) => value);
  return {
    ...utterance,
    readings: utterance.readings.filter((reading) => !read.includes(reading)),
    doubts: utterance.doubts.filter((doubt) => !read.some((each) => each === doubt)),
    unclaimed: utterance.unclaimed.filter((digits) => !bare.includes(digits)),
    commands: said === undefined ? commands : [choice(Number(said), open), ...commands],
  };
}

function choosing(command: Command, open: OpenChoice): Command | null {
  const { first, second } = open.values;
  if (command.do !== 'amend' && command.do !== 'undo') return null;
  const { quantity = null, value } = command;
  if (quantity !== null && quantity !== open.doubt.quantity) return null;
  if (value !== first && value !== second) return null;
  const other = value === first ? second : first;
  return choice(command.do === 'amend' ? value : other, open);
}

function choice(value: number, { values }: OpenChoice): Choose {
  return { do: 'choose', which: value === values.first ? 'first' : 'second' };
}
