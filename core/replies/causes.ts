import type { CauseRow, EvidenceRow, Known, NextCheck } from '../advice/verdict.ts';
import type { CauseId } from '../terms/causes.ts';
import { FINDING_STATES, PARTS, SIGHT_GLASS_STATES } from '../terms/names.ts';
import type { UnitId } from '../units/units.ts';
import { figure } from './amounts.ts';
import { CAUSE_PHRASES } from './cause-phrases.ts';
import { CHECK_SENTENCES, STEP_SENTENCES } from './check-sentences.ts';
import { SHORT_NAMES } from './names.ts';
import { NEED_SENTENCES } from './refusals.ts';
import { join, line, plain, sentences, type Said } from './said.ts';

type Causes = Extract<Known, { answer: 'causes' }>;

/** As many as are kept in the head while a fan runs. */
export const MOST_FOR = 3;
export const MOST_AGAINST = 2;
const MOST_OTHERS = 2;
export const MOST_UNREAD = 2;

const amount = (value: number, unit: UnitId): Said => figure({ value, unit });

/** The likeliest, what speaks for it and against it, what else it may be, and what to do. */
export function causesSaid({ causes, notRead, next }: Causes): Said {
  const leading = leadingOf(causes);
  const unread = notRead.slice(0, MOST_UNREAD).map((id) => SHORT_NAMES[id]);
  const isOpen = leading.length === 0 && unread.length > 0;
  return sentences([
    ...(causes.length === 0 ? [] : leadingSaid(leading)),
    ...othersSaid(causes),
    ...(isOpen ? [plain(`Not read: ${listed(unread)}.`)] : []),
    nextSaid(next, leading[0]?.cause ?? null),
  ]);
}

export const leadingOf = (causes: readonly CauseRow[]): readonly CauseRow[] =>
  causes.filter(({ standing }) => standing === 'leading');

/** Those that only a look tells apart are named together, by what speaks for the first of them. */
function leadingSaid(leading: readonly CauseRow[]): readonly Said[] {
  const [first] = leading;
  if (!first) return [plain('Nothing leads yet.')];
  const reasons = join(reasonsOf(leading).map(evidenceSaid), ', ');
  if (first.cause === 'nothingWrong') return [line`Nothing is off so far: ${reasons}.`];
  const names = leading.map(({ cause }) => CAUSE_PHRASES[cause]).join(', or ');
  const against = first.against.slice(0, MOST_AGAINST).map(evidenceSaid);
  return [
    line`Most likely ${names}: ${reasons}.`,
    ...(against.length === 0 ? [] : [line`Against it: ${join(against, ', ')}.`]),
  ];
}

/** What speaks for those that lead together: what was seen of any of them before what was read. */
export function reasonsOf(leading: readonly CauseRow[]): readonly EvidenceRow[] {
  const [first, ...others] = leading;
  if (first === undefined || others.length === 0) return (first?.for ?? []).slice(0, MOST_FOR);
  const all = leading.flatMap((row) => row.for);
  const each = [...new Map(all.map((row) => [JSON.stringify(row), row])).values()];
  const isSeen = ({ kind }: EvidenceRow): boolean => kind === 'finding' || kind === 'sightGlass';
  return [...each.filter(isSeen), ...each.filter((row) => !isSeen(row))].slice(0, MOST_FOR);
}

/** Without a leader it is a list of what may be; with one, what else may be. */
function othersSaid(causes: readonly CauseRow[]): readonly Said[] {
  const named = othersOf(causes);
  if (named.length === 0) return [];
  const list = listed(named.map((cause) => CAUSE_PHRASES[cause]));
  return [plain(`${leadingOf(causes).length > 0 ? 'Also possible' : 'Possible'}: ${list}.`)];
}

/** As many of the possible ones as are told. */
export function othersOf(causes: readonly CauseRow[]): readonly CauseId[] {
  const [leading] = leadingOf(causes);
  if (leading?.cause === 'nothingWrong') return [];
  const possible = causes.filter(
    ({ cause, standing }) => standing === 'possible' && cause !== 'nothingWrong',
  );
  return possible.slice(0, leading ? MOST_OTHERS : MOST_OTHERS + 1).map(({ cause }) => cause);
}

export function evidenceSaid(row: EvidenceRow): Said {
  switch (row.kind) {
    case 'deviation':
      return deviationSaid(row);
    case 'reading':
      return line`${SHORT_NAMES[row.about]} ${amount(row.value, row.unit)}`;
    case 'finding':
      return plain(
        [PARTS[row.part], row.of ?? '', FINDING_STATES[row.state]]
          .filter((word) => word !== '')
          .join(' '),
      );
    case 'sightGlass':
      return plain(`sight glass ${SIGHT_GLASS_STATES[row.state]}`);
  }
}

/** Head alone: its split shows the same thing again. */
function deviationSaid(row: Extract<EvidenceRow, { kind: 'deviation' }>): Said {
  const { about, value, unit, direction } = row;
  const name = SHORT_NAMES[about];
  if (direction === 'on') return plain(`${name} about right`);
  return line`${name} ${amount(value, unit)} ${direction}`;
}

/** One sentence: what to do, and what it tells apart. What was just named as likeliest is not named again. */
export function nextSaid(next: NextCheck, named: CauseId | null = null): Said {
  if (next.next === 'step') return plain(STEP_SENTENCES[next.step]);
  const does =
    next.next === 'check'
      ? CHECK_SENTENCES[next.check]
      : NEED_SENTENCES[next.need].replace(/\.$/, '');
  const [one, other] = next.between;
  if (one === undefined) return plain(`${does}.`);
  if (other === undefined) return plain(`${does}: it confirms ${CAUSE_PHRASES[one]}.`);
  if (named === null || (named !== one && named !== other)) {
    return plain(`${does}: it tells ${CAUSE_PHRASES[one]} from ${CAUSE_PHRASES[other]}.`);
  }
  return plain(`${does}: it tells that from ${CAUSE_PHRASES[named === one ? other : one]}.`);
}

function listed(items: readonly string[]): string {
  return items.join(', ');
}
