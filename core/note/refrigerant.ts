import { weightText } from '../replies/amounts.ts';
import type { Amount } from '../units/amount.ts';
import { chargeBalance } from '../visit/charge-balance.ts';
import { cylinderWeights } from '../visit/cylinder-weights.ts';
import {
  holdsSome,
  type RefrigerantAccount,
  refrigerantAccounts,
  type SaidNone,
  saidNone,
  withoutNothing,
} from '../visit/refrigerant-account.ts';
import type { VisitState } from '../visit/state.ts';
import { isNewer, type ReadingEntry } from '../visit/views.ts';
import type { NoteSection } from './note.ts';
import { sentence, valueWritten } from './wording.ts';

/** Every movement as it was weighed, and the sums: each refrigerant keeps an account of its own. */
export function refrigerantSection(state: VisitState): Pick<NoteSection, 'lines' | 'table'> {
  const accounts = refrigerantAccounts(state).map(withoutNothing).filter(holdsSome);
  const moved = accounts.flatMap((account) => accountLines(account, state));
  return { lines: [...moved, ...noneLines(state, moved.length > 0), ...byTheCylinder(state)] };
}

/** That none was moved is part of the record: the next leak calculation leans on it. */
function noneLines(state: VisitState, isMoved: boolean): readonly string[] {
  const none = noneWords(saidNone(state), isMoved);
  if (none !== null) return [sentence(none)];
  const isEmpty = state.work.length === 0 && state.readings.length === 0;
  return isMoved || isEmpty ? [] : ['No refrigerant was recorded in or out.'];
}

/** What nobody told in its own words, and two weights of a cylinder do. */
function byTheCylinder(state: VisitState): readonly string[] {
  const { gained } = cylinderWeights(state);
  if (gained === null || gained.value === 0) return [];
  const moved = weightText({ ...gained, value: Math.abs(gained.value) });
  const way = gained.value > 0 ? 'gained' : 'lost';
  return [sentence(`by its weights the cylinder ${way} ${moved}`)];
}

/** Beside what was moved the other way, what was not is told alone. */
function noneWords({ added, recovered }: SaidNone, isMoved: boolean): string | null {
  if (added && recovered) return 'None added, none recovered';
  const both = isMoved ? '' : added ? ', none recorded as recovered' : ', none recorded as added';
  if (added) return `None added${both}`;
  return recovered ? `None recovered${both}` : null;
}

const kindOf = ({ refrigerant }: RefrigerantAccount): string =>
  refrigerant ?? 'refrigerant of a kind not stated';

function accountLines(account: RefrigerantAccount, state: VisitState): readonly string[] {
  const { added, recovered, lost } = account;
  const told = (did: string) => (entry: ReadingEntry) => ({ did, entry });
  const moved = [
    ...added.map(told('added')),
    ...recovered.map(told('recovered')),
    ...lost.map(told('lost')),
  ].toSorted((one, other) => (isNewer(state, one.entry.id, other.entry.id) ? 1 : -1));
  const isOwn = account.refrigerant === state.unit.refrigerant;
  return [
    ...moved.map(({ did, entry }) =>
      sentence(`${did} ${valueWritten(entry.reading)} of ${kindOf(account)}`),
    ),
    ...balanceLines(account),
    ...(isOwn ? byTheScale(state) : []),
  ];
}

/** One movement needs no sum; where one has no weight, the sum says that it leaves it out. */
function balanceLines(account: RefrigerantAccount): readonly string[] {
  const { added, recovered, lost, sums, unweighed } = account;
  if (sums === null || added.length + recovered.length + lost.length < 2) return [];
  const of = (value: number): string => weightText({ value, unit: sums.unit });
  const astray = sums.lost === 0 ? '' : `, lost ${of(sums.lost)}`;
  const missing = unweighed > 0 ? ', leaving out what has no weight' : '';
  return [
    sentence(
      `${kindOf(account)}: in ${of(sums.in)}, out ${of(sums.out)}${astray}, net ${netWords(sums.net, of)}${missing}`,
    ),
  ];
}

function netWords(net: number, of: (value: number) => string): string {
  if (Math.abs(net) < 1e-9) return 'nothing';
  return net > 0 ? `${of(net)} added` : `${of(-net)} taken out`;
}

/** Where it was emptied and weighed in anew, what is in it is known, and what had been lost; else that it is not. */
function byTheScale(state: VisitState): readonly string[] {
  const { nameplate, takenOut, charged, addedSince } = chargeBalance(state);
  if (charged === null) {
    return addedSince === null ? [] : [sentence('what was in it before was not weighed')];
  }
  const lost = nameplate && takenOut ? nameplate.value - takenOut.value : 0;
  const now = `In it now, by the scale: ${weightText(charged)}${againstPlate(charged, nameplate)}`;
  if (nameplate === null || lost <= 0) return [sentence(now)];
  const missing = weightText({ ...nameplate, value: lost });
  return [
    sentence(now),
    sentence(`Missing when it was recovered: ${missing} of ${weightText(nameplate)}`),
  ];
}

function againstPlate(charged: Amount, nameplate: Amount | null): string {
  if (nameplate === null) return '; the nameplate charge was not recorded';
  const over = Number((charged.value - nameplate.value).toFixed(2));
  if (over === 0) return ', the nameplate charge';
  const off = weightText({ ...nameplate, value: Math.abs(over) });
  return `, ${off} ${over > 0 ? 'over' : 'under'} the nameplate`;
}
