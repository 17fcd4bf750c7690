import type { FromEngine, ToEngine } from '../../client/recogniser/worker/protocol.ts';
import type { EngineWorker } from '../../client/recogniser/worker/worker-engine.ts';

type Send = (message: FromEngine) => void;
export type Serve<Files> = (send: Send) => (message: ToEngine<Files>) => Promise<void>;

/** An engine's worker without a thread: messages are copied and come later, as through a real one. */
export function createInProcessWorker<Files>(serve: Serve<Files>): EngineWorker<Files> {
  let receive: Send = () => undefined;
  let alive = true;
  const later = (task: () => void): void => void setImmediate(() => alive && task());
  const answer = serve((message) => later(() => receive(structuredClone(message))));
  return {
    post: (message) => {
      const copy = structuredClone(message);
      later(() => void answer(copy));
    },
    listen: (onMessage) => {
      receive = onMessage;
    },
    terminate: () => {
      alive = false;
    },
  };
}
