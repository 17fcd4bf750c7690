/** A track that carries no sound, for tests outside a browser. */
export class SilentTrack extends EventTarget implements MediaStreamTrack {
  contentHint = '';
  enabled = true;
  readonly id = 'silent';
  readonly kind = 'audio';
  readonly label = 'silence';
  readonly muted = false;
  onended = null;
  onmute = null;
  onunmute = null;
  readyState: MediaStreamTrackState = 'live';

  stop(): void {
    this.readyState = 'ended';
  }

  /** As when a headset is switched off: `stop` alone fires nothing. */
  takeAway(): void {
    this.readyState = 'ended';
    this.dispatchEvent(new Event('ended'));
  }

  applyConstraints(): Promise<void> {
    return Promise.resolve();
  }

  clone(): MediaStreamTrack {
    return new SilentTrack();
  }

  getCapabilities(): MediaTrackCapabilities {
    return {};
  }

  getConstraints(): MediaTrackConstraints {
    return {};
  }

  getSettings(): MediaTrackSettings {
    return {};
  }
}
