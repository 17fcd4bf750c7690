import { describe, expect, it } from 'vitest';
import { type Host, keepPageOffline } from '../../client/offline/service-worker.ts';

type Listener = () => void;

/** A service worker as far as the page looks at one. */
class FakeWorker extends EventTarget {
  state: ServiceWorkerState;
  readonly messages: unknown[] = [];
  constructor(state: ServiceWorkerState) {
    super();
    this.state = state;
  }
  postMessage(message: unknown) {
    this.messages.push(message);
  }
  become(state: ServiceWorkerState) {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

class FakeRegistration extends EventTarget {
  installing: FakeWorker | null = null;
  waiting: FakeWorker | null = null;
  active: FakeWorker | null = null;
  findUpdate() {
    this.installing = new FakeWorker('installing');
    this.dispatchEvent(new Event('updatefound'));
    return this.installing;
  }
}

function hostWith(registration: FakeRegistration) {
  const controllerChanges: Listener[] = [];
  let reloads = 0;
  const container = {
    register: () => Promise.resolve(registration),
    addEventListener: (_type: string, listener: Listener) => controllerChanges.push(listener),
  };
  const host: Host = {
    isSecureContext: true,
    serviceWorker: container,
    reload: () => (reloads += 1),
  };
  return {
    host,
    reloads: () => reloads,
    changeController: () => controllerChanges.forEach((listener) => listener()),
  };
}

describe('readiness to work offline', () => {
  it('is ready at once where a worker is active', async () => {
    const registration = new FakeRegistration();
    registration.active = new FakeWorker('activated');
    expect(await keepPageOffline(hostWith(registration).host).ready).toEqual({ kind: 'ready' });
  });

  it('is ready on the first visit only when every file is kept', async () => {
    const registration = new FakeRegistration();
    registration.installing = new FakeWorker('installing');
    const told: string[] = [];
    const { ready } = keepPageOffline(hostWith(registration).host);
    const telling = ready.then(({ kind }) => told.push(kind));
    await Promise.resolve();
    registration.installing.become('installed');
    await Promise.resolve();
    expect(told).toEqual([]);
    registration.installing.become('activated');
    await telling;
    expect(told).toEqual(['ready']);
  });

  it('says so when a file could not be kept', async () => {
    const registration = new FakeRegistration();
    registration.installing = new FakeWorker('installing');
    const { ready } = keepPageOffline(hostWith(registration).host);
    await new Promise<void>((resolve) => setImmediate(resolve));
    registration.installing.become('redundant');
    expect(await ready).toMatchObject({ kind: 'unavailable', why: 'failed' });
  });

  it.each([
    [false, 'insecure', /serve --https/],
    [true, 'unsupported', /cannot keep a page/],
  ])('without workers (secure: %s) it is %s', async (isSecureContext, why, message) => {
    const host: Host = { isSecureContext, serviceWorker: undefined, reload: () => undefined };
    const ready = await keepPageOffline(host).ready;
    expect(ready).toMatchObject({ kind: 'unavailable', why });
    expect(ready).toHaveProperty('message', expect.stringMatching(message));
  });

  it('passes on why the browser refused the worker', async () => {
    const refusing = {
      register: () => Promise.reject(new Error('storage is blocked')),
      addEventListener: () => undefined,
    };
    const host: Host = {
      isSecureContext: true,
      serviceWorker: refusing,
      reload: () => undefined,
    };
    expect(await keepPageOffline(host).ready).toEqual({
      kind: 'unavailable',
      why: 'failed',
      message: 'storage is blocked',
    });
  });
});

describe('an update', () => {
  async function running() {
    const registration = new FakeRegistration();
    registration.active = new FakeWorker('activated');
    const stand = hostWith(registration);
    const page = keepPageOffline(stand.host);
    await page.ready;
    return { ...stand, page, registration };
  }

  it('waits and is told; the page reloads only after it is taken', async () => {
    const { page, registration, reloads, changeController } = await running();
    let told = 0;
    page.onUpdate(() => (told += 1));
    const update = registration.findUpdate();
    expect(told).toBe(0);
    update.become('installed');
    expect([told, reloads(), update.messages]).toEqual([1, 0, []]);
    page.takeUpdate();
    expect(update.messages).toEqual([{ type: 'SKIP_WAITING' }]);
    changeController();
    expect(reloads()).toBe(1);
  });

  it('is told to whoever listens late', async () => {
    const { page, registration } = await running();
    registration.findUpdate().become('installed');
    let told = 0;
    page.onUpdate(() => (told += 1));
    expect(told).toBe(1);
  });

  it('is not what a first install is', async () => {
    const registration = new FakeRegistration();
    const { host, reloads, changeController } = hostWith(registration);
    registration.installing = new FakeWorker('installing');
    const page = keepPageOffline(host);
    let told = 0;
    page.onUpdate(() => (told += 1));
    await new Promise<void>((resolve) => setImmediate(resolve));
    registration.dispatchEvent(new Event('updatefound'));
    registration.installing.become('installed');
    registration.installing.become('activated');
    await page.ready;
    changeController();
    page.takeUpdate();
    expect([told, reloads()]).toEqual([0, 0]);
  });
});
