import type { Deafness } from './deafness.ts';

/** One stream for the whole visit: asking again would ask the person again, and a headset would drop out. */
export interface Microphone {
  open(): Promise<MicrophoneOpening>;
  close(): void;
}

export type MicrophoneOpening =
  | { readonly kind: 'open'; readonly track: MediaStreamTrack }
  | { readonly kind: 'deaf'; readonly why: Deafness };

/**
 * Echo is cancelled because the page speaks while the microphone stays open. Noise suppression and gain are
 * left to the device: whether they help a recogniser differs between devices and is not measured here. RNNoise
 * before the neural engine made it no better (its model card).
 */
export const MICROPHONE_CONSTRAINTS: MediaStreamConstraints = {
  audio: { echoCancellation: true, noiseSuppression: true, autoGainControl: true, channelCount: 1 },
};

/** The names that `getUserMedia` rejects with (Media Capture and Streams, 10.2). */
const WHY_OF: Readonly<Record<string, Deafness>> = {
  NotAllowedError: 'refused',
  SecurityError: 'refused',
  NotFoundError: 'noMicrophone',
  OverconstrainedError: 'noMicrophone',
  NotReadableError: 'microphoneBusy',
  AbortError: 'microphoneBusy',
};

export interface MicrophonePorts {
  /** Absent on a plain address: browsers hide it outside a secure context. */
  readonly devices: Pick<MediaDevices, 'getUserMedia'> | undefined;
  readonly isSecure: boolean;
  readonly onTakenAway: () => void;
}

export function createMicrophone(ports: MicrophonePorts): Microphone {
  let track: MediaStreamTrack | null = null;
  return {
    async open() {
      if (track?.readyState === 'live') return { kind: 'open', track };
      const opening = await ask(ports);
      if (opening.kind === 'open') {
        track = opening.track;
        track.addEventListener('ended', ports.onTakenAway, { once: true });
      }
      return opening;
    },
    close() {
      track?.removeEventListener('ended', ports.onTakenAway);
      track?.stop();
      track = null;
    },
  };
}

async function ask({ devices, isSecure }: MicrophonePorts): Promise<MicrophoneOpening> {
  if (!isSecure) return { kind: 'deaf', why: 'plainAddress' };
  if (!devices) return { kind: 'deaf', why: 'noMicrophone' };
  try {
    const stream = await devices.getUserMedia(MICROPHONE_CONSTRAINTS);
    const [track] = stream.getAudioTracks();
    return track ? { kind: 'open', track } : { kind: 'deaf', why: 'noMicrophone' };
  } catch (error) {
    return { kind: 'deaf', why: whyOf(error) };
  }
}

function whyOf(error: unknown): Deafness {
  return (error instanceof Error && WHY_OF[error.name]) || 'noMicrophone';
}
