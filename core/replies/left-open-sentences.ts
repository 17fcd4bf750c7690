import type { Known, LeftRow, MovedRow } from '../advice/verdict.ts';
import { type PartId, PARTS } from '../terms/names.ts';
import type { Amount } from '../units/amount.ts';
import type { CylinderWeights } from '../visit/cylinder-weights.ts';
import { counted, figure, weight } from './amounts.ts';
import { designation } from './designation.ts';
import { workDone } from './work-words.ts';
import { join, line, plain, type Said, sentences } from './said.ts';

const AS: Record<LeftRow['as'], string> = {
  closed: 'closed',
  isolated: 'isolated',
  lockedOut: 'locked out',
  removed: 'off',
  bypassed: 'jumped out',
  disabled: 'disconnected',
  open: 'open',
  connected: 'on',
  setForTest: 'set away for a test',
};

/** "Low-pressure switch jumped out" */
export function leftWords({ part, as }: LeftRow): string {
  const shut = part === 'disconnect' || part === 'breaker';
  return shut && as === 'isolated' ? `${PARTS[part]} off` : `${PARTS[part]} ${AS[as]}`;
}

export function leftListed(left: readonly LeftRow[]): string {
  return left.map(leftWords).join(', ');
}

const WAY_OUT = 'Say what is put back, or say finish anyway.';

/** "Is the disconnect back on and the plug back in?" */
export function putBackAsked(parts: readonly PartId[]): string {
  const each = parts.map((part) => `the ${workDone('restore', part)}`);
  return `Is ${each.join(' and ')}?`;
}

export function finishHeldSaid(left: readonly LeftRow[], asked: readonly PartId[]): Said {
  const open = left.length === 0 ? '' : ` Still open: ${leftListed(left)}.`;
  if (asked.length === 0) return plain(`Not finished.${open} ${WAY_OUT}`);
  return plain(`Not finished.${open} ${WAY_OUT} ${putBackAsked(asked)}`);
}

export function stillOpenSaid(left: readonly LeftRow[]): Said {
  return plain(
    left.length === 0
      ? 'Nothing is left open. Say finish.'
      : `Still open: ${leftListed(left)}. ${WAY_OUT}`,
  );
}

export function finishedAnywaySaid(left: readonly LeftRow[]): Said {
  return plain(`Finished, left so: ${leftListed(left)}. The note says it.`);
}

interface Left {
  readonly left: readonly LeftRow[];
  readonly questions: number;
}

export function leftOpenSaid({ left, questions }: Left): Said {
  const open =
    left.length === 0
      ? plain('Nothing you told me is left open.')
      : plain(`Still open: ${leftListed(left)}.`);
  return sentences([open, questionsSaid(questions)]);
}

export const questionsSaid = (questions: number): Said =>
  questions === 0 ? plain('') : line`${counted(questions, 'question')} besides.`;

type Moved = Pick<Extract<Known, { answer: 'moved' }>, 'rows' | 'charge' | 'cylinder'>;

export function refrigerantMovedSaid({ rows, charge, cylinder }: Moved): Said {
  const [first, ...others] = rows;
  if (!first)
    return sentences([plain('No refrigerant weighed in or out yet.'), cylinderSaid(cylinder)]);
  return sentences([rowSaid(first), movedTail({ rows: others, charge, cylinder })]);
}

/** The other refrigerants, what the unit holds, and what the cylinder tells. */
export function movedTail({ rows, charge, cylinder }: Moved): Said {
  return sentences([
    ...rows.map(rowSaid),
    ...(charge === null ? [] : [line`The nameplate charge is ${figure(charge)}.`]),
    cylinderSaid(cylinder),
  ]);
}

/** "By its weights 4 lb 4 oz went into the cylinder. By its tare it holds 7 lb 4 oz." */
export function cylinderSaid({ gained, holds }: CylinderWeights): Said {
  return sentences([
    ...(gained === null ? [] : [gainedSaid(gained)]),
    ...(holds === null ? [] : [line`By its tare the cylinder holds ${weight(holds)}.`]),
  ]);
}

function gainedSaid({ value, unit }: Amount): Said {
  if (value === 0) return plain('The cylinder weighs what it did.');
  const way = value > 0 ? 'went into' : 'came out of';
  return line`By its weights ${weight({ value: Math.abs(value), unit })} ${way} the cylinder.`;
}

/** The net first: it is what the office and the next technician lean on. */
function rowSaid(row: MovedRow): Said {
  return line`${refrigerantSaid(row)}: ${netSaid(row)}: ${sumsSaid(row)}.`;
}

export const refrigerantSaid = ({ refrigerant }: MovedRow): Said =>
  refrigerant === null ? plain('refrigerant') : designation(refrigerant);

/** "In 4 oz, out 12 oz, and 1 movement not weighed" */
export function sumsSaid(row: MovedRow): Said {
  const of = (value: number): Said => figure({ value, unit: row.unit });
  const parts = [
    line`in ${of(row.in)}`,
    line`out ${of(row.out)}`,
    ...(row.lost === 0 ? [] : [line`lost ${of(row.lost)}`]),
  ];
  const missing =
    row.unweighed === 0 ? plain('') : line`, and ${counted(row.unweighed, 'movement')} not weighed`;
  return line`${join(parts, ', ')}${missing}`;
}

function netSaid({ net, unit }: MovedRow): Said {
  if (Math.abs(net) < 1e-9) return plain('even');
  const moved = figure({ value: Math.abs(net), unit });
  return net > 0 ? line`${moved} more in it` : line`${moved} less in it`;
}
