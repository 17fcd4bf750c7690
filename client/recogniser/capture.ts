/** Sound from a track or the microphone as mono samples at 16 kHz. */
export interface Capture {
  /** Without a track, the microphone is asked for. */
  readonly open: (track: MediaStreamTrack | null, sink: CaptureSink) => Promise<CaptureOutcome>;
}

export interface CaptureSink {
  readonly onSamples: (samples: Float32Array) => void;
  /** The track ended or the device was taken away. */
  readonly onLost: () => void;
}

/**
 * Why no sound comes: the browser lets the page play nothing, or something else has taken the sound, as a telephone call
 * does (`interrupted`, which iOS sets when the page goes out of sight, too).
 */
export type HeldBack = 'blocked' | 'interrupted';

export type CaptureOutcome =
  | {
      readonly kind: 'open';
      readonly close: () => void;
      /** Null while nothing holds the sound back; absent where that cannot be told. */
      readonly heldBack?: () => HeldBack | null;
    }
  | {
      readonly kind: 'refused';
      readonly error: 'not-allowed' | 'audio-capture';
      readonly message: string;
    };
