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

export type CaptureOutcome =
  | {
      readonly kind: 'open';
      readonly close: () => void;
      /** Whether the browser lets nothing play, and so nothing be heard either; absent where that cannot be told. */
      readonly isHeldBack?: () => boolean;
    }
  | {
      readonly kind: 'refused';
      readonly error: 'not-allowed' | 'audio-capture';
      readonly message: string;
    };
