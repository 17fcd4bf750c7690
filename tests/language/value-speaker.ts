import { seeded } from './random.ts';
import { spell, spellClipped } from './speller.ts';

/** Chooses what is said, and says numbers in every way that they are said; the same on every run. */
export class ValueSpeaker {
  private readonly random: () => number;

  constructor(seed: number) {
    this.random = seeded(seed);
  }

  /** One of so many, from nought. */
  below(count: number): number {
    return Math.floor(this.random() * count);
  }

  one<Each>(all: readonly Each[]): Each {
    const found = all[Math.floor(this.random() * all.length)];
    if (found === undefined) throw new Error('there is none to choose from');
    return found;
  }

  value(from: number, to: number): number {
    const value = from + this.random() * (to - from);
    return this.random() < 0.6 ? Math.round(value) : Math.round(value * 10) / 10;
  }

  number(value: number): string {
    const size = Math.abs(value);
    const whole = Math.trunc(size);
    const tenth = Math.round((size - whole) * 10);
    const isClipped = whole > 100 && whole % 100 > 0;
    const said = this.one([
      spell(whole),
      isClipped ? spellClipped(whole) : spell(whole),
      String(whole),
    ]);
    const isWritten = /^\d/.test(said);
    const behind = tenth === 0 ? '' : isWritten ? `.${tenth}` : ` point ${spell(tenth)}`;
    const sign = value < 0 ? this.one(['minus ', 'negative ']) : '';
    return sign + said + behind;
  }
}

/** A reading as these tests compare it. */
export const written = (quantity: string, place: string | null, value: number): string =>
  `${quantity} ${String(place)} ${value.toFixed(1)}`;
