import type { BrowserContext, Page } from 'playwright-core';

/**
 * Gives the page a microphone of samples: what its tap would have taken from the sound card comes from here, without a
 * gap however busy the machine is, at twice the pace of sound. The ear counts samples, not time, so that the same is
 * heard each time. A noise is beneath all of it; WAV files of one channel at 16 kHz.
 */
export async function giveSampledMicrophone(context: BrowserContext, noise: Buffer): Promise<void> {
  await context.addInitScript((beneath: string) => {
    const STEP = 320;
    const LEAD = 16_000;
    const samplesOf = (wav: string): Float32Array<ArrayBuffer> => {
      const bytes = Uint8Array.from(atob(wav), (letter) => letter.charCodeAt(0));
      return Float32Array.from(new Int16Array(bytes.buffer, 44), (value) => value / 0x8000);
    };
    const fan = samplesOf(beneath);
    let port: MessagePort | null = null;
    let said = new Float32Array(0);
    let at = 0;
    let begun = 0;
    let over: () => void = () => undefined;
    const step = (): void => {
      const from = at;
      at += STEP;
      port?.postMessage(
        Float32Array.from(
          { length: STEP },
          (_, index) => (fan[(from + index) % fan.length] ?? 0) + (said[from + index - begun] ?? 0),
        ),
      );
      if (at > begun + said.length) over();
    };
    setInterval(() => {
      step();
      step();
    }, 20);
    window.AudioWorkletNode = class extends AudioWorkletNode {
      constructor(...given: ConstructorParameters<typeof AudioWorkletNode>) {
        super(...given);
        const { port1, port2 } = new MessageChannel();
        Object.defineProperty(this, 'port', { value: port1 });
        port = port2;
      }
    };
    const silence = new AudioContext().createMediaStreamDestination();
    navigator.mediaDevices.getUserMedia = () => Promise.resolve(silence.stream);
    Reflect.set(window, 'sayIntoMicrophone', async (wav: string) => {
      const ended = new Promise<void>((resolve) => {
        over = resolve;
      });
      // Each time by the same stretch of the noise, and after as much of it.
      at = 0;
      [said, begun] = [samplesOf(wav), LEAD];
      await ended;
    });
  }, noise.toString('base64'));
}

/** Over when it is said. */
export async function sayInto(page: Page, wav: Buffer): Promise<void> {
  await page.evaluate(async (sound) => {
    const say: unknown = Reflect.get(window, 'sayIntoMicrophone');
    if (typeof say === 'function') await Reflect.apply(say, undefined, [sound]);
  }, wav.toString('base64'));
}
