import type { PassagePhraser } from '../../core/note/phrase-note.ts';
import type { Phraser } from '../../core/replies/phrasing.ts';
import type { Said } from '../../core/replies/said.ts';
import type { FromPhraser, ToPhraser } from './protocol.ts';

/** The worker as the page sees it. */
export interface PhraserWorker {
  post(message: ToPhraser): void;
  listen(onMessage: (message: FromPhraser) => void, onCrash: () => void): void;
  terminate(): void;
}

/** Words answers, and the passages of the note. */
export type BothPhraser = Phraser & PassagePhraser;

/** Words answers once its model is there; until then, and after a fault, there is no phraser. */
export interface PagePhraser {
  /** Starts to load in the background; nothing happens when it has. */
  readonly start: () => void;
  readonly stop: () => void;
  readonly current: () => BothPhraser | null;
}

export function createPagePhraser(open: () => PhraserWorker, modelUrl: string): PagePhraser {
  let worker: PhraserWorker | null = null;
  let waiting: ReturnType<typeof createWaiting> | null = null;
  let phraser: BothPhraser | null = null;
  const stop = (): void => {
    worker?.terminate();
    waiting?.end();
    worker = null;
    waiting = null;
    phraser = null;
  };
  return {
    start() {
      if (worker !== null) return;
      const opened = open();
      worker = opened;
      const own = createWaiting(opened);
      waiting = own;
      opened.listen((message) => {
        if (message.kind === 'loaded') phraser = own.phraser;
        else if (message.kind === 'phrased') own.answer(message.request, message.said);
        else stop();
      }, stop);
      opened.post({ kind: 'load', modelUrl });
    },
    stop,
    current: () => phraser,
  };
}

/** Requests by number; those that a stopped worker will not answer come to nothing. */
function createWaiting(worker: PhraserWorker) {
  const open = new Map<number, (said: Said | null) => void>();
  let request = 0;
  const asked = (): { number: number; answer: Promise<Said | null> } => {
    request += 1;
    const number = request;
    return { number, answer: new Promise((resolve) => open.set(number, resolve)) };
  };
  const phraser: BothPhraser = {
    phrase(verdict, manner) {
      const { number, answer } = asked();
      worker.post({ kind: 'phrase', request: number, verdict, manner });
      return answer;
    },
    async phrasePassage(passage) {
      const { number, answer } = asked();
      worker.post({ kind: 'phrasePassage', request: number, passage });
      return (await answer)?.text ?? null;
    },
  };
  return {
    phraser,
    answer(number: number, said: Said | null) {
      open.get(number)?.(said);
      open.delete(number);
    },
    end() {
      for (const answer of open.values()) answer(null);
      open.clear();
    },
  };
}
