import type { PushRequest } from '../../core/wire/event-schema.ts';
import { type After, createBackOff } from './back-off.ts';
import type { SyncedLog } from './event-log.ts';
import type { PostEvents, Unreached } from './post-events.ts';
import { settlePush } from './settle-push.ts';
import { createUnsent, type Unsent } from './unsent.ts';

/** Why it is not sent yet, and tried again by itself; `logUnread`: by the storage of this device. */
export type SendTrouble = Unreached | 'logUnread';

type Sending =
  | { readonly kind: 'resting' }
  | { readonly kind: 'sending' }
  | {
      readonly kind: 'waiting';
      readonly attempt: number;
      readonly delayMs: number;
      readonly why: SendTrouble;
    }
  | { readonly kind: 'refused'; readonly message: string };

interface Counts {
  /** Not on the server yet. */
  readonly unsynced: number;
  /** Damaged here, and so never on the server. */
  readonly leftOut: number;
}

export type SyncState = Counts & Sending;

export interface SyncOptions {
  readonly log: SyncedLog;
  readonly post: PostEvents;
  readonly after: After;
  readonly onState?: (state: SyncState) => void;
}

export interface Sync {
  readonly state: SyncState;
  /** The network or the page is back: try now, whatever the back-off says. */
  wake(): Promise<void>;
  /** The technician asks: try now, even after a refusal. */
  retry(): Promise<void>;
  /** What a page that goes may still send, as nobody knows when it comes again. */
  parting(): PushRequest | null;
  stop(): void;
}

/** Well under the 500 that the server takes at once: about 120 kB of readings. */
export const BATCH_EVENTS = 200;
/** Ours: some 6 kB of readings, which a signal of 300 bytes a second still brings over in time. */
const FEWEST_EVENTS = 10;

type Step =
  | { readonly kind: 'more' }
  | { readonly kind: 'done' }
  | { readonly kind: 'refused'; readonly message: string }
  | { readonly kind: 'unreachable'; readonly why: SendTrouble };

/**
 * Brings the log to the server, at least once and in order, one request at a time; nothing is ever deleted here.
 * Starts by itself after each append; `wake` it when the page opens, comes back or finds the network.
 */
export function createSync({ log, post, after, onState }: SyncOptions): Sync {
  let state: SyncState = { kind: 'resting', unsynced: 0, leftOut: 0 };
  let stopped = false;
  const backOff = createBackOff(after);
  const unsent = createUnsent();
  const push = createPush(log, post, unsent);
  let newest = 0;
  const show = (next: SyncState) => {
    newest += 1;
    state = next;
    onState?.(next);
  };
  const counts = () => countsOf(log, state);

  /** Sends until nothing is left; true when it came to rest, false when it must wait or was refused. */
  const drain = async () => {
    let step: Step = { kind: 'more' };
    while (step.kind === 'more' && !stopped) {
      show({ kind: 'sending', ...(await counts()) });
      step = await push();
    }
    show(afterStep(step, await counts()));
    return state.kind === 'resting';
  };
  const afterStep = (step: Step, left: Counts): SyncState => {
    if (step.kind === 'refused') return { kind: 'refused', message: step.message, ...left };
    if (step.kind === 'unreachable' && !stopped)
      return { kind: 'waiting', why: step.why, ...backOff.start(run), ...left };
    backOff.reset();
    return { kind: 'resting', ...left };
  };
  const drainAlone = oneAtATime(drain);
  /** What was shown or asked for since knows better. */
  const recount = async () => {
    const mine = (newest += 1);
    const left = await counts();
    if (mine === newest && !stopped) show({ ...state, ...left });
  };
  const run = () => {
    backOff.callOff();
    if (stopped) return Promise.resolve();
    return log.canWrite ? drainAlone() : recount();
  };

  // An append during back-off waits its turn: the reading is safe here, and a dead network stays dead.
  const stopListening = log.onChange((appended) => {
    unsent.add(appended);
    void (state.kind === 'resting' || state.kind === 'sending' ? run() : recount());
  });
  return {
    get state() {
      return state;
    },
    wake: () => (state.kind === 'refused' ? Promise.resolve() : run()),
    retry: run,
    parting: () =>
      log.canWrite && state.kind !== 'refused' && !stopped ? unsent.parting(log.device) : null,
    stop() {
      stopped = true;
      backOff.callOff();
      stopListening();
    },
  };
}

/** What cannot be counted is as it was. */
async function countsOf(log: SyncedLog, before: Counts): Promise<Counts> {
  const [unsynced, leftOut] = await Promise.all([
    log.unsynced().catch(() => before.unsynced),
    log.leftOut().catch(() => before.leftOut),
  ]);
  return { unsynced, leftOut };
}

/** Runs the work alone; asked again meanwhile, runs it once more as long as it comes to rest. */
function oneAtATime(work: () => Promise<boolean>): () => Promise<void> {
  let running: Promise<void> | null = null;
  let asked = 0;
  const repeat = async () => {
    let served: number;
    let rests: boolean;
    do {
      served = asked;
      rests = await work();
    } while (rests && served !== asked);
  };
  return () => {
    asked += 1;
    running ??= repeat().finally(() => {
      running = null;
    });
    return running;
  };
}

/** One batch to the server, and what its answer settles. */
function createPush(log: SyncedLog, post: PostEvents, unsent: Unsent): () => Promise<Step> {
  const damaged = new Set<number>();
  const wentBack = new Set<number>();
  let most = BATCH_EVENTS;

  async function push(): Promise<Step> {
    const read = await log.readAfter(await log.confirmedSeq(), most);
    for (const { seq } of read.damaged) damaged.add(seq);
    const last = Math.max(0, ...[...read.events, ...read.damaged].map(({ seq }) => seq));
    if (last === 0) {
      wentBack.clear();
      most = BATCH_EVENTS;
      return { kind: 'done' };
    }
    if (read.events.length === 0)
      return confirm(
        last,
        read.damaged.map(({ seq }) => seq),
      );
    unsent.add(read.events);
    const result = await post({ device: log.device, events: [...read.events] });
    // A signal too thin for a batch within its time may do for half of one; once all is sent it is tried whole again.
    if (result.kind === 'unreachable' && result.isTooMuch === true)
      most = Math.max(FEWEST_EVENTS, Math.floor(most / 2));
    return result.kind === 'accepted' ? settled(result.response.confirmed, last) : result;
  }

  async function settled(confirmed: number, last: number): Promise<Step> {
    const settlement = settlePush({ confirmed, last, damaged, wentBack });
    if (settlement.kind === 'stuck')
      return {
        kind: 'refused',
        message: `The server keeps only the first ${settlement.seq} entries of this device. They are all still here.`,
      };
    if (settlement.kind === 'confirm') return confirm(settlement.seq, settlement.leftOut);
    wentBack.add(settlement.seq);
    await log.confirm(settlement.seq);
    return { kind: 'more' };
  }

  async function confirm(seq: number, leftOut: readonly number[]): Promise<Step> {
    await log.confirm(seq, leftOut);
    unsent.confirmed(seq);
    return { kind: 'more' };
  }

  return async () => {
    try {
      return await push();
    } catch (error) {
      console.error(error);
      return { kind: 'unreachable', why: 'logUnread' };
    }
  };
}
