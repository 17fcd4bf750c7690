import { describe, expect, it } from 'vitest';
import { createMicrophone, MICROPHONE_CONSTRAINTS } from '../../../client/ear/microphone.ts';
import { SilentStream } from './silent-stream.ts';
import { SilentTrack } from './silent-track.ts';

const rejecting = (name: string) => ({
  getUserMedia: () => Promise.reject(new DOMException('', name)),
});

function open(devices: Pick<MediaDevices, 'getUserMedia'> | undefined, isSecure = true) {
  return createMicrophone({ devices, isSecure, onTakenAway: () => undefined }).open();
}

describe('a microphone that does not open', () => {
  it.each([
    ['NotAllowedError', 'refused'],
    ['NotFoundError', 'noMicrophone'],
    ['NotReadableError', 'microphoneBusy'],
    ['SomethingNewError', 'noMicrophone'],
  ])('%s means %s', async (name, why) => {
    expect(await open(rejecting(name))).toEqual({ kind: 'deaf', why });
  });

  it('on a plain address is not even asked for', async () => {
    const asked: unknown[] = [];
    const devices = {
      getUserMedia: (wanted?: MediaStreamConstraints) => {
        asked.push(wanted);
        return Promise.reject(new DOMException('', 'NotAllowedError'));
      },
    };
    expect(await open(devices, false)).toEqual({ kind: 'deaf', why: 'plainAddress' });
    expect(asked).toEqual([]);
  });

  it('is missing where the browser offers no devices', async () => {
    expect(await open(undefined)).toEqual({ kind: 'deaf', why: 'noMicrophone' });
  });
});

describe('a microphone that opens', () => {
  const setUp = () => {
    const tracks: SilentTrack[] = [];
    const wanted: (MediaStreamConstraints | undefined)[] = [];
    let takenAway = 0;
    const microphone = createMicrophone({
      isSecure: true,
      onTakenAway: () => {
        takenAway += 1;
      },
      devices: {
        getUserMedia: (constraints) => {
          wanted.push(constraints);
          const track = new SilentTrack();
          tracks.push(track);
          return Promise.resolve(new SilentStream(track));
        },
      },
    });
    return { microphone, tracks, wanted, takenAway: () => takenAway };
  };

  it('is asked for once a visit, with echo cancellation', async () => {
    const { microphone, wanted } = setUp();
    await microphone.open();
    await microphone.open();
    expect(wanted).toEqual([MICROPHONE_CONSTRAINTS]);
    expect(MICROPHONE_CONSTRAINTS.audio).toMatchObject({ echoCancellation: true });
  });

  it('is asked for again after it was taken away, which is told', async () => {
    const { microphone, wanted, tracks, takenAway } = setUp();
    await microphone.open();
    tracks[0]?.takeAway();
    expect(takenAway()).toBe(1);
    await microphone.open();
    expect(wanted).toHaveLength(2);
  });

  it('closed by the page is let go without a complaint', async () => {
    const { microphone, tracks, takenAway } = setUp();
    await microphone.open();
    microphone.close();
    expect(tracks[0]?.readyState).toBe('ended');
    expect(takenAway()).toBe(0);
  });
});
