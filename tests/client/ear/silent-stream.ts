/** The stream of one track, for tests outside a browser. */
export class SilentStream extends EventTarget implements MediaStream {
  readonly active = true;
  readonly id = 'silent';
  onaddtrack = null;
  onremovetrack = null;
  readonly #track: MediaStreamTrack;

  constructor(track: MediaStreamTrack) {
    super();
    this.#track = track;
  }

  getAudioTracks(): MediaStreamTrack[] {
    return [this.#track];
  }

  getTracks(): MediaStreamTrack[] {
    return [this.#track];
  }

  getVideoTracks(): MediaStreamTrack[] {
    return [];
  }

  getTrackById(): null {
    return null;
  }

  addTrack(): void {
    throw new Error('not used');
  }

  removeTrack(): void {
    throw new Error('not used');
  }

  clone(): MediaStream {
    return this;
  }
}
