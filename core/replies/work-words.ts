import type { Recommendation, Work } from '../language/utterance.ts';
import { type PartId, PARTS, WORK_KINDS, type WorkKindId } from '../terms/names.ts';

/** Where the verb's own word is not what the trade says of that part. */
const OF_THE_PART: Partial<Record<PartId, Partial<Record<WorkKindId, string>>>> = {
  gauges: { remove: 'taken off' },
  jumper: { remove: 'taken off', connect: 'put on' },
  caps: { remove: 'taken off', restore: 'put back' },
  panel: { remove: 'taken off', restore: 'put back' },
  disconnect: { isolate: 'off', restore: 'back on' },
  breaker: { isolate: 'off', restore: 'back on' },
  plug: { disable: 'pulled', remove: 'pulled', restore: 'back in' },
  kingValve: { isolate: 'closed', restore: 'opened again' },
  serviceValve: { isolate: 'closed', restore: 'opened again' },
  suctionServiceValve: { isolate: 'closed', restore: 'opened again' },
  dischargeServiceValve: { isolate: 'closed', restore: 'opened again' },
};

/** "Condenser cleaned", "king valve closed" */
export function workDone(did: WorkKindId, part: PartId | null): string {
  if (part === null) return WORK_KINDS[did].done;
  return `${PARTS[part]} ${OF_THE_PART[part]?.[did] ?? WORK_KINDS[did].done}`;
}

/** "Clean the condenser", "come back" */
export function workTodo(to: WorkKindId, part: PartId | null): string {
  return part === null ? WORK_KINDS[to].todo : `${WORK_KINDS[to].todo} the ${PARTS[part]}`;
}

/** The same of a part by the name that it is listed under: "Copperline 012 contactor put in". */
export function workDoneAt({ did, part, called, locked }: Omit<Work, 'words'>): string {
  if (locked === true && part !== null) return `${PARTS[part]} locked out`;
  if (called === undefined) return workDone(did, part);
  return `${called} ${did === 'replace' ? 'put in' : WORK_KINDS[did].done}`;
}

export function workTodoAt(made: Pick<Recommendation, 'do' | 'part' | 'called'>): string {
  if (made.called === undefined) return workTodo(made.do, made.part);
  if (made.do === 'asSaid') return made.called;
  return `${made.do === 'replace' ? 'put in' : WORK_KINDS[made.do].todo} the ${made.called}`;
}
