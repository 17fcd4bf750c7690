import type { Phraser } from '../../core/replies/phrasing.ts';
import type { Said } from '../../core/replies/said.ts';
import type { FromPhraser, ToPhraser } from './protocol.ts';

/** The worker as the page sees it. */
export interface PhraserWorker {
  post(message: ToPhraser): void;
  listen(onMessage: (message: FromPhraser) => void, onCrash: () => void): void;
  terminate(): void;
}

/** Words answers once its model is there; until then, and after a fault, there is no phraser. */
export interface PagePhraser {
  /** Starts to load in the background; nothing happens when it has. */
  readonly start: () => void;
  readonly stop: () => void;
  readonly current: () => Phraser | null;
}

export function createPagePhraser(open: () => PhraserWorker, modelUrl: string): PagePhraser {
  let worker: PhraserWorker | null = null;
  let phraser: Phraser | null = null;
  const stop = (): void => {
    worker?.terminate();
    worker = null;
    phraser = null;
  };
  return {
    start() {
      if (worker !== null) return;
      const opened = open();
      worker = opened;
      const waiting = createWaiting(opened);
      opened.listen((message) => {
        if (message.kind === 'loaded') phraser = waiting.phraser;
        else if (message.kind === 'phrased') waiting.answer(message.request, message.said);
        else stop();
      }, stop);
      opened.post({ kind: 'load', modelUrl });
    },
    stop,
    current: () => phraser,
  };
}

/** Requests by number. One that a stopped worker never answers is let go of by its caller's time budget. */
function createWaiting(worker: PhraserWorker) {
  const open = new Map<number, (said: Said | null) => void>();
  let request = 0;
  const phraser: Phraser = {
    phrase: (verdict, manner) =>
      new Promise((resolve) => {
        request += 1;
        open.set(request, resolve);
        worker.post({ kind: 'phrase', request, verdict, manner });
      }),
  };
  return {
    phraser,
    answer(number: number, said: Said | null) {
      open.get(number)?.(said);
      open.delete(number);
    },
  };
}
