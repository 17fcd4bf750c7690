/** Whether this page would open with the network off. */
export type Readiness =
  | { readonly kind: 'ready' }
  | { readonly kind: 'unavailable'; readonly why: UnavailableReason; readonly message: string };

/** `insecure`: the page came over plain http from another machine, where browsers allow no service worker. */
export type UnavailableReason = 'insecure' | 'unsupported' | 'failed';

export interface OfflinePage {
  /** Settles once every file the page runs on is kept, or it is certain that they will not be. */
  readonly ready: Promise<Readiness>;
  /** Called when a newer page is kept and waits; `takeUpdate` between visits, as it reloads the page. */
  onUpdate(listener: () => void): void;
  takeUpdate(): void;
}

/** What is used of the window, so that a test can stand in for it. */
export interface Host {
  readonly isSecureContext: boolean;
  readonly serviceWorker: Container | undefined;
  reload(): void;
}

interface Container {
  register(script: string): Promise<Registration>;
  addEventListener(type: 'controllerchange', run: () => void, options: { once: true }): void;
}

interface Registration extends Pick<EventTarget, 'addEventListener'> {
  readonly installing: KeepingWorker | null;
  readonly waiting: KeepingWorker | null;
  readonly active: KeepingWorker | null;
}

interface KeepingWorker extends Pick<EventTarget, 'addEventListener'> {
  readonly state: ServiceWorkerState;
  postMessage(message: unknown): void;
}

const SCRIPT = '/sw.js';
/** What the generated service worker listens for. */
const GO_AHEAD = { type: 'SKIP_WAITING' };

export function keepPageOffline(host: Host): OfflinePage {
  const listeners = new Set<() => void>();
  let waiting: KeepingWorker | null = null;
  const found = (worker: KeepingWorker) => {
    waiting = worker;
    for (const listener of listeners) listener();
  };
  return {
    ready: register(host, found),
    onUpdate(listener) {
      listeners.add(listener);
      if (waiting !== null) listener();
    },
    takeUpdate() {
      if (waiting === null) return;
      host.serviceWorker?.addEventListener('controllerchange', () => host.reload(), { once: true });
      waiting.postMessage(GO_AHEAD);
    },
  };
}

async function register(host: Host, found: (worker: KeepingWorker) => void): Promise<Readiness> {
  if (host.serviceWorker === undefined) return withoutWorkers(host.isSecureContext);
  try {
    const registration = await host.serviceWorker.register(SCRIPT);
    watchForUpdate(registration, found);
    return registration.active === null ? await firstInstall(registration) : READY;
  } catch (error) {
    return unavailable('failed', error instanceof Error ? error.message : String(error));
  }
}

function watchForUpdate(registration: Registration, found: (worker: KeepingWorker) => void): void {
  if (registration.active !== null && registration.waiting !== null) found(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const { installing, active } = registration;
    if (installing === null || active === null) return;
    installing.addEventListener('statechange', () => {
      if (installing.state === 'installed') found(installing);
    });
  });
}

/** A worker is activated only after it kept every file; it turns redundant when one could not be had. */
function firstInstall(registration: Registration): Promise<Readiness> {
  const worker = registration.installing ?? registration.waiting;
  if (worker === null) return Promise.resolve(unavailable('failed', NOT_KEPT));
  return new Promise((resolve) => {
    const look = () => {
      if (worker.state === 'activated') resolve(READY);
      if (worker.state === 'redundant') resolve(unavailable('failed', NOT_KEPT));
    };
    worker.addEventListener('statechange', look);
    look();
  });
}

const READY: Readiness = { kind: 'ready' };
const NOT_KEPT = 'Not every file of the page could be kept. Reload the page to try again.';
const INSECURE =
  'Over plain http from another machine the page cannot be kept. Open it over https (serve --https).';
const UNSUPPORTED = 'This browser cannot keep a page. Private windows often cannot.';

function withoutWorkers(secure: boolean): Readiness {
  return secure ? unavailable('unsupported', UNSUPPORTED) : unavailable('insecure', INSECURE);
}

function unavailable(why: UnavailableReason, message: string): Readiness {
  return { kind: 'unavailable', why, message };
}
