import type { Said } from '../../core/replies/said.ts';
import type { BothPhraser } from './worker-phraser.ts';
import type { FromPhraser, ToPhraser } from './protocol.ts';

/** Loads the model of an address; throws, saying which file, when it does not come whole. */
export type LoadPhraser = (modelUrl: string) => Promise<BothPhraser>;

/** The worker's side of the protocol, without the worker. */
export function createPhraserDesk(
  load: LoadPhraser,
  send: (message: FromPhraser) => void,
): (message: ToPhraser) => Promise<void> {
  let phraser: BothPhraser | null = null;
  const answer = (request: number, said: Said | null): void =>
    send({ kind: 'phrased', request, said });
  return async (message) => {
    switch (message.kind) {
      case 'load':
        phraser = await load(message.modelUrl).catch((fault: unknown) => {
          send({ kind: 'loadFailed', message: describe(fault) });
          return null;
        });
        if (phraser) send({ kind: 'loaded' });
        return;
      case 'phrase': {
        const { request, verdict, manner } = message;
        const phrasing = (await phraser?.phrase(verdict, manner).catch(() => null)) ?? null;
        answer(request, typeof phrasing === 'string' ? null : phrasing);
        return;
      }
      case 'phrasePassage': {
        const text = (await phraser?.phrasePassage(message.passage).catch(() => null)) ?? null;
        answer(message.request, text === null ? null : { text, spoken: text });
      }
    }
  };
}

const describe = (fault: unknown): string =>
  fault instanceof Error ? fault.message : String(fault);
