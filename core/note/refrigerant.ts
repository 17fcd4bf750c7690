import { figureText } from '../replies/amounts.ts';
import { type RefrigerantAccount, refrigerantAccounts } from '../visit/refrigerant-account.ts';
import type { VisitState } from '../visit/state.ts';
import type { NoteSection } from './note.ts';
import { sentence, valueWritten } from './wording.ts';

/** Every movement as it was weighed, and the sums: each refrigerant keeps an account of its own. */
export function refrigerantSection(state: VisitState): Pick<NoteSection, 'lines' | 'table'> {
  const accounts = refrigerantAccounts(state);
  return { lines: accounts.length === 0 ? nothingMoved(state) : accounts.flatMap(accountLines) };
}

/** That none was moved is part of the record: the next leak calculation leans on it. */
function nothingMoved({ work, readings }: VisitState): readonly string[] {
  const isEmpty = work.length === 0 && readings.length === 0;
  return isEmpty ? [] : ['No refrigerant was recorded in or out.'];
}

const kindOf = ({ refrigerant }: RefrigerantAccount): string =>
  refrigerant ?? 'refrigerant of a kind not stated';

function accountLines(account: RefrigerantAccount): readonly string[] {
  const { added, recovered, lost } = account;
  const kind = kindOf(account);
  return [
    ...added.map(({ reading }) => sentence(`Added ${valueWritten(reading)} of ${kind}`)),
    ...recovered.map(({ reading }) => sentence(`Recovered ${valueWritten(reading)} of ${kind}`)),
    ...lost.map(({ reading }) => sentence(`Lost ${valueWritten(reading)} of ${kind}`)),
    ...balanceLines(account),
  ];
}

/** One movement needs no sum; where one has no weight, the sum says that it leaves it out. */
function balanceLines(account: RefrigerantAccount): readonly string[] {
  const { added, recovered, lost, sums, unweighed } = account;
  if (sums === null || added.length + recovered.length + lost.length < 2) return [];
  const of = (value: number): string => figureText({ value, unit: sums.unit });
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
