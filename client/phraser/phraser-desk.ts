import type { Phraser } from '../../core/replies/phrasing.ts';
import type { FromPhraser, ToPhraser } from './protocol.ts';

/** Loads the model of an address; throws, saying which file, when it does not come whole. */
export type LoadPhraser = (modelUrl: string) => Promise<Phraser>;

/** The worker's side of the protocol, without the worker. */
export function createPhraserDesk(
  load: LoadPhraser,
  send: (message: FromPhraser) => void,
): (message: ToPhraser) => Promise<void> {
  let phraser: Phraser | null = null;
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
        send({ kind: 'phrased', request, said: typeof phrasing === 'string' ? null : phrasing });
      }
    }
  };
}

const describe = (fault: unknown): string =>
  fault instanceof Error ? fault.message : String(fault);
