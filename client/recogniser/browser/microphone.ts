import type { CaptureOutcome } from '../capture.ts';

type Refused = Extract<CaptureOutcome, { kind: 'refused' }>;
export type MicrophoneOutcome =
  { readonly kind: 'track'; readonly track: MediaStreamTrack } | Refused;

/** One channel; the browser's echo canceller stays on, as our own voice plays from the same device. */
const CONSTRAINTS: MediaStreamConstraints = {
  audio: {
    channelCount: 1,
    echoCancellation: true,
    noiseSuppression: false,
    autoGainControl: true,
  },
};

/** Asks for the microphone. Refusals and missing devices come back as the standard's error codes. */
export async function askForMicrophone(): Promise<MicrophoneOutcome> {
  if (!('mediaDevices' in navigator)) {
    return refuse('not-allowed', 'A page on a plain http address gets no microphone: use https.');
  }
  try {
    const stream = await navigator.mediaDevices.getUserMedia(CONSTRAINTS);
    const [track] = stream.getAudioTracks();
    return track ? { kind: 'track', track } : refuse('audio-capture', 'No microphone was found.');
  } catch (error) {
    return fromError(error);
  }
}

function fromError(error: unknown): Refused {
  const name = error instanceof DOMException ? error.name : '';
  return name === 'NotAllowedError' || name === 'SecurityError'
    ? refuse('not-allowed', 'The microphone was refused: allow it for this page.')
    : refuse('audio-capture', 'No microphone answers: connect one, or close what else uses it.');
}

const refuse = (error: Refused['error'], message: string): Refused => ({
  kind: 'refused',
  error,
  message,
});
