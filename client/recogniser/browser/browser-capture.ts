import { SAMPLE_RATE_HZ } from '../../../core/hearing/engine-parameters.ts';
import { createResampler } from '../../../core/hearing/resample.ts';
import type { Capture, CaptureOutcome, CaptureSink } from '../capture.ts';
import { askForMicrophone } from './microphone.ts';
import tapUrl from './tap.worklet.js?url&no-inline';

/** A track connected to a tap; it stays connected between sessions, and its sound is dropped then. */
interface Connected {
  readonly track: MediaStreamTrack;
  readonly context: AudioContext;
  sink: CaptureSink | null;
  readonly disconnect: () => void;
}

/**
 * Sound through an AudioWorklet. The last track stays connected, so that opening the ear again for
 * the next sentence loses nothing of its beginning.
 */
export function createBrowserCapture(): Capture {
  let context: Promise<AudioContext> | null = null;
  let connected: Connected | null = null;

  const connect = async (track: MediaStreamTrack): Promise<Connected> => {
    if (connected?.track === track) return connected;
    connected?.disconnect();
    context ??= openContext();
    const opened = await context.catch((error: unknown) => {
      context = null;
      throw error;
    });
    connected = connectTrack(opened, track);
    return connected;
  };

  return {
    open: async (given, sink) => {
      const microphone = given === null ? await askForMicrophone() : null;
      if (microphone?.kind === 'refused') return microphone;
      const track = microphone?.track ?? given;
      if (track === null) return failed();
      try {
        const tapped = await connect(track);
        // Not waited for: while the browser may play nothing it does not answer, and the session looks after sound.
        void tapped.context.resume().catch(() => undefined);
        return listen(tapped, sink, microphone !== null);
      } catch {
        return failed();
      }
    },
  };
}

const failed = (): CaptureOutcome => ({
  kind: 'refused',
  error: 'audio-capture',
  message: 'The browser would not connect the microphone: reload the page.',
});

function listen(tapped: Connected, sink: CaptureSink, isOwn: boolean): CaptureOutcome {
  const lost = (): void => sink.onLost();
  tapped.sink = sink;
  tapped.track.addEventListener('ended', lost);
  return {
    kind: 'open',
    isHeldBack: () => tapped.context.state === 'suspended',
    close: () => {
      tapped.sink = null;
      tapped.track.removeEventListener('ended', lost);
      if (isOwn) tapped.track.stop();
    },
  };
}

/** Chromium resamples by itself to the context's rate; where it is refused, we do. */
async function openContext(): Promise<AudioContext> {
  const context = newContext();
  await context.audioWorklet.addModule(tapUrl);
  return context;
}

function newContext(): AudioContext {
  try {
    return new AudioContext({ sampleRate: SAMPLE_RATE_HZ });
  } catch {
    return new AudioContext();
  }
}

function connectTrack(context: AudioContext, track: MediaStreamTrack): Connected {
  const source = context.createMediaStreamSource(new MediaStream([track]));
  const tap = new AudioWorkletNode(context, 'tap', {
    numberOfOutputs: 0,
    channelCount: 1,
    channelCountMode: 'explicit',
  });
  const connection: Connected = {
    track,
    context,
    sink: null,
    disconnect: () => {
      source.disconnect();
      tap.port.close();
    },
  };
  const resample = createResampler(context.sampleRate);
  tap.port.addEventListener('message', ({ data }: MessageEvent<Float32Array>) => {
    const samples = resample(data);
    if (samples.length > 0) connection.sink?.onSamples(samples);
  });
  tap.port.start();
  source.connect(tap);
  return connection;
}
