import type { VisitEvent } from '../../core/visit/events.ts';
import type { AppendResult, EventLog } from '../offline/event-log.ts';
import type { Clock } from './clock.ts';
import type { NotKeptReason } from './notice.ts';

export type Keeping =
  | { readonly kind: 'kept' }
  | { readonly kind: 'notKept'; readonly why: NotKeptReason; readonly held: number };

export interface Keeper {
  /** Appends these and everything held before them, in order, in one piece. */
  keep(events: readonly VisitEvent[]): Promise<Keeping>;
  /** Tries what is held at once, as when the log has just been freed. */
  retry(): Promise<void>;
  readonly held: number;
}

/** A full or closed log rarely mends within a second; after half a minute the person is moving on. */
const FIRST_RETRY_MS = 2_000;
const LONGEST_RETRY_MS = 30_000;
/** As long as the log is waited for when the page opens: one that does not answer must not leave the page thinking. */
const OVERDUE_MS = 10_000;

/**
 * Holds in memory what the log would not take and tries again, ever slower, until it does. One append is in
 * flight at a time, so that a retry and a new sentence can never write the same event twice; one that is overdue is
 * told, and still waited for before the next.
 */
export function createKeeper(ports: {
  readonly log: Pick<EventLog, 'append' | 'lastSeq'>;
  readonly clock: Clock;
  readonly onHeldKept: () => void;
}): Keeper {
  const holding = createHolding(ports.log);
  let last: Promise<unknown> = Promise.resolve();
  let retryMs = FIRST_RETRY_MS;
  let callOff: (() => void) | null = null;
  let isTold = false;

  const append = async (events: readonly VisitEvent[]): Promise<Keeping> => {
    holding.add(events);
    const result = await inTime(holding.empty(), ports.clock);
    if (result.kind === 'kept') return settled();
    retryLater();
    isTold = true;
    return { kind: 'notKept', why: result.why, held: holding.count() };
  };

  const settled = (): Keeping => {
    callOff?.();
    callOff = null;
    retryMs = FIRST_RETRY_MS;
    isTold = false;
    return { kind: 'kept' };
  };

  const retryLater = (): void => {
    callOff?.();
    callOff = ports.clock.after(retryMs, () => void retry());
    retryMs = Math.min(retryMs * 2, LONGEST_RETRY_MS);
  };

  const retry = async (): Promise<void> => {
    if (!isTold) return;
    const result = await inTurn([]);
    if (result.kind === 'kept') ports.onHeldKept();
  };

  const inTurn = (events: readonly VisitEvent[]): Promise<Keeping> => {
    const mine = last.then(() => append(events));
    last = mine;
    return mine;
  };

  return {
    keep: inTurn,
    retry,
    get held() {
      return holding.count();
    },
  };
}

/** What is not known to be in the log, and the one append that is under way. */
function createHolding(log: Pick<EventLog, 'append' | 'lastSeq'>) {
  let held: readonly VisitEvent[] = [];
  let underWay: Promise<AppendResult> | null = null;

  const appendHeld = async (): Promise<AppendResult> => {
    const all = held;
    const result = await appendOrFail(log, all);
    if (result.kind === 'kept') held = held.slice(all.length);
    underWay = null;
    return result;
  };

  return {
    add(events: readonly VisitEvent[]): void {
      held = [...held, ...events];
    },
    count: () => held.length,
    async empty(): Promise<AppendResult> {
      while (held.length > 0) {
        underWay ??= appendHeld();
        const result = await underWay;
        if (result.kind === 'failed') return result;
      }
      return { kind: 'kept' };
    },
  };
}

function inTime(keeping: Promise<AppendResult>, clock: Clock): Promise<AppendResult> {
  return new Promise((resolve, reject) => {
    const late = { kind: 'failed', why: 'unknown', message: 'The log does not answer.' } as const;
    const callOff = clock.after(OVERDUE_MS, () => resolve(late));
    keeping.then(resolve, reject).finally(callOff);
  });
}

/** The port promises a result; a browser's storage has been seen to throw all the same. */
async function appendOrFail(
  log: Pick<EventLog, 'append' | 'lastSeq'>,
  events: readonly VisitEvent[],
): Promise<AppendResult> {
  try {
    return await log.append(reseated(events, log.lastSeq));
  } catch (error) {
    return { kind: 'failed', why: 'unknown', message: String(error) };
  }
}

/** Another tab may have written in the meantime: the places follow the log's last one, the ids stay. */
function reseated(events: readonly VisitEvent[], lastSeq: number): readonly VisitEvent[] {
  return events.map((event, index) => ({ ...event, seq: lastSeq + index + 1 }));
}
