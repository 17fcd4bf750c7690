import type { FoundRow, HistoryAnswer } from '../advice/history-verdict.ts';
import type { MovedRow } from '../advice/verdict.ts';
import { FINDING_STATES, PARTS } from '../terms/names.ts';
import type { CivilDate } from '../units/civil-date.ts';
import { figure } from './amounts.ts';
import { dateWords } from './dates.ts';
import { designation } from './designation.ts';
import { recommended } from './recommendation-sentences.ts';
import { join, line, plain, sentences, type Said } from './said.ts';
import { workDone } from './work-words.ts';

type Of<A extends HistoryAnswer['answer']> = Extract<HistoryAnswer, { readonly answer: A }>;

/** The day first: how long ago it was is half of the answer. */
export function lastVisitSaid({ on, today, found, did, left, moved }: Of<'lastVisit'>): Said {
  const told = [
    listSaid('Found', found.map(foundSaid)),
    listSaid(
      'Done',
      did.map((each) => plain(workDone(each.did, each.part))),
    ),
    lastVisitTail({ moved, left, today }),
  ];
  const any = told.some(({ text }) => text !== '');
  return sentences([
    line`Last time was ${dateWords(on, today)}.`,
    ...(any ? told : [plain('Nothing found or done was kept of it.')]),
  ]);
}

/** What was moved and what was left to do: lists of their own, with commas of their own. */
export function lastVisitTail({
  moved,
  left,
  today,
}: Pick<Of<'lastVisit'>, 'moved' | 'left' | 'today'>): Said {
  return sentences([
    listSaid('Refrigerant', moved.map(movedSaid)),
    listSaid('Recommended', [plain(left.map((made) => recommended(made, today)).join('; '))]),
  ]);
}

function listSaid(head: string, items: readonly Said[]): Said {
  const told = items.filter(({ text }) => text !== '');
  return told.length === 0 ? plain('') : line`${head}: ${join(told, ', ')}.`;
}

export const foundSaid = ({ part, state }: FoundRow): Said =>
  plain(`${PARTS[part]} ${FINDING_STATES[state]}`);

function movedSaid({ refrigerant, unit, in: added, out, lost }: MovedRow): Said {
  const kind = refrigerant === null ? plain('') : line` of ${designation(refrigerant)}`;
  const pieces = [
    ...(added > 0 ? [line`${figure({ value: added, unit })} in`] : []),
    ...(out > 0 ? [line`${figure({ value: out, unit })} out`] : []),
    ...(lost > 0 ? [line`${figure({ value: lost, unit })} lost`] : []),
  ];
  return pieces.length === 0 ? plain('') : line`${join(pieces, ', ')}${kind}`;
}

export function lastDoneSaid({ did, part, on, since, today }: Of<'lastDone'>): Said {
  if (on !== null) return plain(`${workDone(did, part)} on ${dateWords(on, today)}.`);
  const reach = since === null ? '' : ` They go back to ${dateWords(since, today)}.`;
  return plain(`Not on any visit I have: ${workDone(did, part)}.${reach}`);
}

export function seenBeforeSaid({ rows, last, today }: Of<'seenBefore'>): Said {
  if (rows.length === 0) {
    return plain(`Nothing found today was found last time, ${dateWords(last, today)}.`);
  }
  return plain(`${cameBackWords(rows, last, today)}.`);
}

/** "The condenser was dirty on August 3 too" */
export function cameBackWords(
  rows: readonly FoundRow[],
  on: CivilDate,
  today: CivilDate | null = null,
): string {
  const each = rows.map(({ part, state }) => `${PARTS[part]} ${FINDING_STATES[state]}`).join(', ');
  return `The same on ${dateWords(on, today)}: ${each}`;
}
