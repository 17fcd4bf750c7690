import type { Expectation } from '../../../core/language/context.ts';
import type { KnownNames } from '../../../core/language/names/known-names.ts';
import type { Ear, EarOpening, Heard } from '../ear.ts';
import type { NativeEar } from './native-ear.ts';

/**
 * Whose ear: ours; ours with a model that was chosen from the hub; or the browser's, on this device only or wherever its
 * maker has it.
 */
export const EAR_CHOICES = ['own', 'ownWithModel', 'browserOnDevice', 'browserAnywhere'] as const;
export type EarChoice = (typeof EAR_CHOICES)[number];

export interface ChosenEarPorts {
  readonly own: Ear;
  /** Null where the browser has none, or none that keeps to the device. `onUseless`: it has failed for good. */
  readonly openNative: (choice: EarChoice, onUseless: () => void) => Promise<NativeEar | null>;
  readonly choice: () => EarChoice;
}

interface Wanted {
  readonly expectation: Expectation;
  readonly names: KnownNames;
}

/** The ear that was chosen, and ours when it is of no use: told aloud, with the sentence waited for taken over. */
export function createChosenEar(ports: ChosenEarPorts): Ear {
  return new ChosenEar(ports);
}

const OWN: ReadonlySet<EarChoice> = new Set(['own', 'ownWithModel']);

class ChosenEar implements Ear {
  readonly #ports: ChosenEarPorts;
  #report: (heard: Heard) => void = () => undefined;
  #native: NativeEar | null = null;
  #useless = false;
  #chosen: EarChoice;
  #wanted: Wanted | null = null;

  constructor(ports: ChosenEarPorts) {
    this.#ports = ports;
    this.#chosen = ports.choice();
    ports.own.onHeard((heard) => this.#report(heard));
  }

  async open(): Promise<EarOpening> {
    const { own, openNative } = this.#ports;
    await this.#takeUpChoice();
    if (OWN.has(this.#chosen) || this.#useless) return own.open();
    own.close();
    this.#native ??= await openNative(this.#chosen, () => void this.#turnToOwn());
    if (this.#native === null) return this.#openOwnInstead();
    this.#native.onHeard((heard) => this.#fromNative(heard));
    this.#native.open();
    this.#report({ kind: 'noise', noise: null });
    return { kind: 'open' };
  }

  listen(expectation: Expectation, names: KnownNames): void {
    this.#wanted = { expectation, names };
    this.#current().listen(expectation, names);
  }

  gate(): void {
    this.#wanted = null;
    this.#current().gate();
  }

  close(): void {
    this.#wanted = null;
    void this.#native?.close();
    this.#ports.own.close();
  }

  onHeard(report: (heard: Heard) => void): void {
    this.#report = report;
  }

  onLevel(report: (level: number) => void): void {
    this.#ports.own.onLevel(report);
  }

  onProgress(report: (fraction: number) => void): void {
    this.#ports.own.onProgress(report);
  }

  #current(): Pick<Ear, 'listen' | 'gate'> {
    return this.#native ?? this.#ports.own;
  }

  async #takeUpChoice(): Promise<void> {
    const choice = this.#ports.choice();
    if (choice === this.#chosen) return;
    this.#chosen = choice;
    this.#useless = false;
    await this.#native?.close();
    this.#native = null;
  }

  async #turnToOwn(): Promise<void> {
    if (this.#useless) return;
    this.#useless = true;
    await this.#native?.close();
    this.#native = null;
    const opening = await this.#openOwnInstead();
    if (opening.kind === 'deaf') this.#report(opening);
    else if (this.#wanted) this.#ports.own.listen(this.#wanted.expectation, this.#wanted.names);
  }

  async #openOwnInstead(): Promise<EarOpening> {
    this.#useless = true;
    const opening = await this.#ports.own.open();
    if (opening.kind === 'open') this.#report({ kind: 'news', news: 'ownAgain' });
    return opening;
  }

  #fromNative(heard: Heard): void {
    if (this.#useless) return;
    // Five failures in a row are no service either.
    if (heard.kind === 'deaf' && heard.why === 'recogniserFailed') void this.#turnToOwn();
    else this.#report(heard);
  }
}
