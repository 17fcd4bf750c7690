import { type After, createBackOff } from './back-off.ts';
import type { SyncedLog } from './event-log.ts';
import type { PostEvents } from './post-events.ts';
import { settlePush } from './settle-push.ts';

export type SyncState =
  | { readonly kind: 'resting'; readonly unsynced: number }
  | { readonly kind: 'sending'; readonly unsynced: number }
  | {
      readonly kind: 'waiting';
      readonly unsynced: number;
      readonly attempt: number;
      readonly delayMs: number;
      readonly why: string;
    }
  | { readonly kind: 'refused'; readonly unsynced: number; readonly message: string };

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
  | { readonly kind: 'unreachable'; readonly message: string };

/**
 * Brings the log to the server, at least once and in order, one request at a time; nothing is ever deleted here.
 * Starts by itself after each append; `wake` it when the page opens, comes back or finds the network.
 */
export function createSync({ log, post, after, onState }: SyncOptions): Sync {
  let state: SyncState = { kind: 'resting', unsynced: 0 };
  let stopped = false;
  const backOff = createBackOff(after);
  const push = createPush(log, post);
  let newest = 0;
  const show = (next: SyncState) => {
    newest += 1;
    state = next;
    onState?.(next);
  };
  const unsynced = () => log.unsynced().catch(() => state.unsynced);

  /** Sends until nothing is left; true when it came to rest, false when it must wait or was refused. */
  const drain = async () => {
    let step: Step = { kind: 'more' };
    while (step.kind === 'more' && !stopped) {
      show({ kind: 'sending', unsynced: await unsynced() });
      step = await push();
    }
    show(afterStep(step, await unsynced()));
    return state.kind === 'resting';
  };
  const afterStep = (step: Step, left: number): SyncState => {
    if (step.kind === 'refused') return { kind: 'refused', unsynced: left, message: step.message };
    if (step.kind === 'unreachable' && !stopped)
      return { kind: 'waiting', unsynced: left, why: step.message, ...backOff.start(run) };
    backOff.reset();
    return { kind: 'resting', unsynced: left };
  };
  const drainAlone = oneAtATime(drain);
  /** What was shown or asked for since knows better. */
  const recount = async () => {
    const mine = (newest += 1);
    const left = await unsynced();
    if (mine === newest && !stopped) show({ ...state, unsynced: left });
  };
  const run = () => {
    backOff.callOff();
    if (stopped) return Promise.resolve();
    return log.canWrite ? drainAlone() : recount();
  };

  // An append during back-off waits its turn: the reading is safe here, and a dead network stays dead.
  const stopListening = log.onChange(() => {
    void (state.kind === 'resting' || state.kind === 'sending' ? run() : recount());
  });
  return {
    get state() {
      return state;
    },
    wake: () => (state.kind === 'refused' ? Promise.resolve() : run()),
    retry: run,
    stop() {
      stopped = true;
      backOff.callOff();
      stopListening();
    },
  };
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
function createPush(log: SyncedLog, post: PostEvents): () => Promise<Step> {
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
    if (read.events.length === 0) return settled(last, last);
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
    if (settlement.kind === 'goBack') wentBack.add(settlement.seq);
    await log.confirm(settlement.seq);
    return { kind: 'more' };
  }

  return async () => {
    try {
      return await push();
    } catch (error) {
      return {
        kind: 'unreachable',
        message: error instanceof Error ? error.message : String(error),
      };
    }
  };
}
