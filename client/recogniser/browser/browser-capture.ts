import { SAMPLE_RATE_HZ } from '../../../core/hearing/engine-parameters.ts';
import { createResampler } from '../../../core/hearing/resample.ts';
import type { Capture, CaptureOutcome, CaptureSink, HeldBack } from '../capture.ts';
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
 * the next sentence loses nothing of its beginning. `onHeldBack` is told when something else takes the sound, session or
 * not, and of the first time that it flows and each time that it flows again (null).
 */
export function createBrowserCapture(onHeldBack: (why: HeldBack | null) => void): Capture {
  let context: Promise<AudioContext> | null = null;
  let connected: Connected | null = null;

  const connect = async (track: MediaStreamTrack): Promise<Connected> => {
    if (connected?.track === track) return connected;
    connected?.disconnect();
    context ??= openContext(onHeldBack);
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
        resume(tapped.context);
        return listen(tapped, sink, microphone !== null);
      } catch {
        return failed();
      }
    },
  };
}

const HELD_BACK_IN: Record<AudioContextState, HeldBack | null> = {
  suspended: 'blocked',
  interrupted: 'interrupted',
  running: null,
  closed: null,
};

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
    heldBack: () => HELD_BACK_IN[tapped.context.state],
    close: () => {
      tapped.sink = null;
      tapped.track.removeEventListener('ended', lost);
      if (isOwn) tapped.track.stop();
    },
  };
}

/** Chromium resamples by itself to the context's rate; where it is refused, we do. */
async function openContext(onHeldBack: (why: HeldBack | null) => void): Promise<AudioContext> {
  const context = newContext();
  await context.audioWorklet.addModule(tapUrl);
  watchInterruptions(context, onHeldBack);
  return context;
}

/** Not waited for: while the browser may play nothing it does not answer, and the session looks after sound. */
function resume(context: AudioContext): void {
  void context.resume().catch(() => undefined);
}

/** After an interruption a browser may leave the context suspended, or interrupted until the page is looked at again. */
function watchInterruptions(
  context: AudioContext,
  onHeldBack: (why: HeldBack | null) => void,
): void {
  let interrupted = false;
  context.addEventListener('statechange', () => {
    const { state } = context;
    if (state === 'suspended' && interrupted) resume(context);
    if (state === 'running') interrupted = false;
    if (state === 'interrupted') interrupted = true;
    if (state === 'running' || state === 'interrupted') onHeldBack(HELD_BACK_IN[state]);
  });
  document.addEventListener('visibilitychange', () => {
    if (interrupted && document.visibilityState === 'visible') resume(context);
  });
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
