/** What the recogniser asks of the page it is on. */
export interface HostPage {
  /** False once its window is gone, as in a frame that was taken out. */
  readonly isActive: () => boolean;
  /** Whether a person has pressed anything on it. */
  readonly wasTouched: () => boolean;
  /** False where the permissions policy `on-device-speech-recognition` forbids it. */
  readonly allowsOnDevice: () => boolean;
  /** Whether it is a frame in a page of another origin. */
  readonly isCrossOrigin: () => boolean;
  /** The language of the document's root, '' where it names none. */
  readonly language: () => string;
}
