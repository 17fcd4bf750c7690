import { afterEach, expect, it, vi } from 'vitest';
import { createBrowserCapture } from '../../client/recogniser/browser/browser-capture.ts';
import { SilentTrack } from '../client/ear/silent-track.ts';

/** As much of a browser's audio as the capture uses; `resume` answers what it is given. */
function giveAudio(resume: () => Promise<void>) {
  vi.stubGlobal('MediaStream', EventTarget);
  vi.stubGlobal(
    'AudioContext',
    class {
      readonly sampleRate = 16_000;
      readonly state = 'suspended';
      readonly audioWorklet = { addModule: () => Promise.resolve() };
      readonly resume = resume;
      createMediaStreamSource() {
        return { connect: () => undefined, disconnect: () => undefined };
      }
    },
  );
  vi.stubGlobal(
    'AudioWorkletNode',
    class {
      readonly port = new MessageChannel().port1;
    },
  );
}

const sink = { onSamples: () => undefined, onLost: () => undefined };

afterEach(() => {
  vi.unstubAllGlobals();
});

it.each([
  ['never answers, as Firefox where nothing can play', () => new Promise<void>(() => undefined)],
  ['is refused', () => Promise.reject(new DOMException('no', 'NotAllowedError'))],
])(
  'opens where the wish to resume %s: that no sound comes is the session’s to see',
  async (_, resume) => {
    giveAudio(resume);
    const opened = await createBrowserCapture().open(new SilentTrack(), sink);
    expect(opened.kind).toBe('open');
    if (opened.kind !== 'open') return;
    expect(opened.isHeldBack?.()).toBe(true);
    opened.close();
  },
);
