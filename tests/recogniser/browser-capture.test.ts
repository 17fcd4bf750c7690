import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createBrowserCapture } from '../../client/recogniser/browser/browser-capture.ts';
import type { CaptureOutcome, HeldBack } from '../../client/recogniser/capture.ts';
import { SilentTrack } from '../client/ear/silent-track.ts';

/** As much of a browser's audio as the capture uses; `resume` answers what it is given. */
function giveAudio(resume: () => Promise<void>) {
  const made: FakeContext[] = [];
  class FakeContext extends EventTarget {
    readonly sampleRate = 16_000;
    state: AudioContextState = 'suspended';
    readonly audioWorklet = { addModule: () => Promise.resolve() };
    readonly resume = resume;
    constructor() {
      super();
      made.push(this);
    }
    createMediaStreamSource() {
      return { connect: () => undefined, disconnect: () => undefined };
    }
    turn(state: AudioContextState): void {
      this.state = state;
      this.dispatchEvent(new Event('statechange'));
    }
  }
  vi.stubGlobal('MediaStream', EventTarget);
  vi.stubGlobal('AudioContext', FakeContext);
  vi.stubGlobal(
    'AudioWorkletNode',
    class {
      readonly port = new MessageChannel().port1;
    },
  );
  return {
    turn: (state: AudioContextState): void => {
      for (const context of made) context.turn(state);
    },
  };
}

class Page extends EventTarget {
  visibilityState: DocumentVisibilityState = 'visible';
}

const sink = { onSamples: () => undefined, onLost: () => undefined };
let page: Page;

beforeEach(() => {
  page = new Page();
  vi.stubGlobal('document', page);
});

afterEach(() => {
  vi.unstubAllGlobals();
});

const held = (outcome: CaptureOutcome) => (outcome.kind === 'open' ? outcome.heldBack?.() : 'none');

it.each([
  ['never answers, as Firefox where nothing can play', () => new Promise<void>(() => undefined)],
  ['is refused', () => Promise.reject(new DOMException('no', 'NotAllowedError'))],
])(
  'opens where the wish to resume %s: that no sound comes is the session’s to see',
  async (_, resume) => {
    giveAudio(resume);
    const opened = await createBrowserCapture(() => undefined).open(new SilentTrack(), sink);
    expect(opened.kind).toBe('open');
    expect(held(opened)).toBe('blocked');
    if (opened.kind === 'open') opened.close();
  },
);

describe('sound that something else takes, as a call does', () => {
  async function interruptible() {
    const told: (HeldBack | null)[] = [];
    let resumes = 0;
    const audio = giveAudio(() => {
      resumes += 1;
      return Promise.reject(new DOMException('not now', 'InvalidStateError'));
    });
    const opened = await createBrowserCapture((why) => told.push(why)).open(
      new SilentTrack(),
      sink,
    );
    audio.turn('running');
    told.length = 0;
    resumes = 0;
    return { audio, told, opened, resumes: () => resumes };
  }

  it('is told at once, and so is that it flows again', async () => {
    const { audio, told, opened } = await interruptible();
    audio.turn('interrupted');
    expect([told, held(opened)]).toEqual([['interrupted'], 'interrupted']);
    audio.turn('running');
    expect([told, held(opened)]).toEqual([['interrupted', null], null]);
  });

  it('is asked for again where the browser only suspends it after the interruption', async () => {
    const { audio, told, resumes } = await interruptible();
    audio.turn('suspended');
    expect(resumes()).toBe(0);
    audio.turn('interrupted');
    audio.turn('suspended');
    expect([told, resumes()]).toEqual([['interrupted'], 1]);
  });

  it('is asked for again when the page is looked at again', async () => {
    const { audio, resumes } = await interruptible();
    page.dispatchEvent(new Event('visibilitychange'));
    expect(resumes()).toBe(0);
    audio.turn('interrupted');
    page.visibilityState = 'hidden';
    page.dispatchEvent(new Event('visibilitychange'));
    expect(resumes()).toBe(0);
    page.visibilityState = 'visible';
    page.dispatchEvent(new Event('visibilitychange'));
    expect(resumes()).toBe(1);
  });
});
