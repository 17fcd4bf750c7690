import { describe, expect, it } from 'vitest';
import type { Verdict } from '../../../core/advice/verdict.ts';
import { createPhraserDesk } from '../../../client/phraser/phraser-desk.ts';
import type { FromPhraser, ToPhraser } from '../../../client/phraser/protocol.ts';
import { createPagePhraser, type PhraserWorker } from '../../../client/phraser/worker-phraser.ts';
import { createWording, type WordingChoice } from '../../../client/phraser/wording.ts';
import { settled } from '../scripted.ts';

const NEED: Verdict = { kind: 'needs', about: null, need: 'before' };
const SAID = { text: 'Read it 1st.', spoken: 'Read it first.' };

/** The worker's two ends joined without a worker. */
function joined(load: (modelUrl: string) => Promise<typeof SAID | null>) {
  let opened = 0;
  let ended = 0;
  let crash: () => void = () => undefined;
  const open = (): PhraserWorker => {
    opened += 1;
    let hear: (message: FromPhraser) => void = () => undefined;
    const desk = createPhraserDesk(
      async (modelUrl) => {
        const said = await load(modelUrl);
        return {
          phrase: () => Promise.resolve(said),
          phrasePassage: ({ kind }) => Promise.resolve(said && `${kind}: ${said.text}`),
        };
      },
      (message) => hear(message),
    );
    return {
      post: (message: ToPhraser) => void desk(message),
      listen: (onMessage, onCrash) => {
        hear = onMessage;
        crash = onCrash;
      },
      terminate: () => (ended += 1),
    };
  };
  const phraser = createPagePhraser(open, '/phrasing');
  return { phraser, crash: () => crash(), opened: () => opened, ended: () => ended };
}

describe('the phraser of the page', () => {
  it('is there once its model is loaded, and words what it is asked', async () => {
    const asked: string[] = [];
    const on = joined((modelUrl) => {
      asked.push(modelUrl);
      return Promise.resolve(SAID);
    });
    expect(on.phraser.current()).toBeNull();
    on.phraser.start();
    on.phraser.start();
    expect(on.phraser.current()).toBeNull();
    await settled();
    expect([on.opened(), asked]).toEqual([1, ['/phrasing']]);
    expect(await on.phraser.current()?.phrase(NEED, 'short')).toEqual(SAID);
  });

  it('words a passage of the note', async () => {
    const on = joined(() => Promise.resolve(SAID));
    on.phraser.start();
    await settled();
    const passage = { kind: 'again', reader: 'office', fields: [], slots: {} } as const;
    expect(await on.phraser.current()?.phrasePassage(passage)).toBe('again: Read it 1st.');
  });

  it('leaves nobody waiting for a worker that was ended', async () => {
    const on = joined(() => Promise.resolve(SAID));
    on.phraser.start();
    await settled();
    const waiting = on.phraser.current()?.phrase(NEED, 'short');
    on.phraser.stop();
    expect(await waiting).toBeNull();
  });

  it('has no sentence where the model has none', async () => {
    const on = joined(() => Promise.resolve(null));
    on.phraser.start();
    await settled();
    expect(await on.phraser.current()?.phrase(NEED, 'reason')).toBeNull();
  });

  it('is not there, and its worker ended, when the model does not come whole', async () => {
    const on = joined(() => Promise.reject(new Error('model.onnx did not come whole')));
    on.phraser.start();
    await settled();
    expect([on.phraser.current(), on.ended()]).toEqual([null, 1]);
  });

  it('is gone when its worker breaks, and can be started anew', async () => {
    const on = joined(() => Promise.resolve(SAID));
    on.phraser.start();
    await settled();
    on.crash();
    expect([on.phraser.current(), on.ended()]).toEqual([null, 1]);
    on.phraser.start();
    await settled();
    expect(await on.phraser.current()?.phrase(NEED, 'short')).toEqual(SAID);
  });

  it('is loaded and ended as was chosen on this device', async () => {
    const on = joined(() => Promise.resolve(SAID));
    let stored: WordingChoice = 'plain';
    const choice = { read: () => stored, choose: (chosen: WordingChoice) => (stored = chosen) };
    const wording = createWording(on.phraser, choice);
    wording.start();
    expect(on.opened()).toBe(0);
    wording.choose('varied');
    await settled();
    expect([on.opened(), on.phraser.current() === null, stored]).toEqual([1, false, 'varied']);
    wording.choose('plain');
    expect([on.ended(), on.phraser.current()]).toEqual([1, null]);
  });
});
