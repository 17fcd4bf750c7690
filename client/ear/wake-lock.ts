/** Keeps the screen on: a dark phone's page hears nothing. */
export interface WakeLock {
  hold(): void;
  letGo(): void;
}

export interface WakeLockPorts {
  /** Absent in browsers without the Screen Wake Lock API. */
  readonly wakeLock: Pick<globalThis.WakeLock, 'request'> | undefined;
  readonly page: Pick<Document, 'visibilityState' | 'addEventListener'>;
}

/** The browser takes the lock away whenever the page is hidden: it is asked for again on return. */
export function createWakeLock({ wakeLock, page }: WakeLockPorts): WakeLock {
  let wanted = false;
  let held: Promise<WakeLockSentinel | null> = Promise.resolve(null);

  const ask = (): void => {
    if (!wakeLock || !wanted || page.visibilityState !== 'visible') return;
    // A battery saver may refuse it: the page works on, only the screen may go dark.
    held = wakeLock.request('screen').catch(() => null);
  };

  page.addEventListener('visibilitychange', ask);
  return {
    hold() {
      wanted = true;
      ask();
    },
    letGo() {
      wanted = false;
      void held.then((lock) => lock?.release());
      held = Promise.resolve(null);
    },
  };
}
