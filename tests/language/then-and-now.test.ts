import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { ValueSpeaker, written } from './value-speaker.ts';

// A value and the one that it was, one put right, one with what is thought of it, alone and beside another quantity's.

interface Measured {
  readonly quantity: string;
  readonly place?: string;
  readonly names: readonly string[];
  readonly unit: string;
  readonly from: number;
  readonly to: number;
}

const ALL: readonly Measured[] = [
  {
    quantity: 'headPressure',
    names: ['head', 'head pressure', 'the high side', 'discharge pressure'],
    unit: 'psi',
    from: 80,
    to: 400,
  },
  {
    quantity: 'suctionPressure',
    names: ['suction', 'the low side', 'suction pressure'],
    unit: 'psi',
    from: 2,
    to: 75,
  },
  {
    quantity: 'boxTemp',
    names: ['box', 'the box', 'box temp', 'return air'],
    unit: 'degrees',
    from: -15,
    to: 65,
  },
  {
    quantity: 'ambientTemp',
    names: ['ambient', 'ambient temp', 'condenser air in'],
    unit: 'degrees',
    from: 35,
    to: 115,
  },
  {
    quantity: 'supplyAirTemp',
    names: ['supply air', 'discharge air'],
    unit: 'degrees',
    from: -20,
    to: 55,
  },
  {
    quantity: 'suctionLineTemp',
    names: ['suction line', 'the suction line'],
    unit: 'degrees',
    from: -10,
    to: 75,
  },
  {
    quantity: 'liquidLineTemp',
    names: ['liquid line', 'the liquid line'],
    unit: 'degrees',
    from: 55,
    to: 125,
  },
  {
    quantity: 'dischargeLineTemp',
    names: ['discharge line', 'the discharge line'],
    unit: 'degrees',
    from: 130,
    to: 235,
  },
  {
    quantity: 'superheat',
    names: ['superheat', 'the superheat'],
    unit: 'degrees',
    from: 2,
    to: 45,
  },
  {
    quantity: 'subcooling',
    names: ['subcooling', 'sub cooling'],
    unit: 'degrees',
    from: 2,
    to: 28,
  },
  {
    quantity: 'productTemp',
    names: ['product', 'product temp'],
    unit: 'degrees',
    from: 25,
    to: 60,
  },
  {
    quantity: 'current',
    place: 'compressor',
    names: ['compressor amps', 'amps on the compressor', 'amp draw on the compressor'],
    unit: 'amps',
    from: 2,
    to: 30,
  },
  {
    quantity: 'current',
    place: 'condenserFan',
    names: ['condenser fan amps', 'amps on the condenser fan'],
    unit: 'amps',
    from: 1,
    to: 5,
  },
];

interface Said {
  readonly text: string;
  readonly values: readonly number[];
}

const IS = ['', ' is', "'s", ' is at', ' reads'];
const BETWEEN = [', ', ' and ', ', and ', '. ', ', but '];
const COUNT = 3000;

class Teller {
  private readonly chance = new ValueSpeaker(23);

  sentence(): { readonly text: string; readonly values: readonly string[] } {
    const told: Measured[] = [this.chance.one(ALL)];
    const other = this.chance.one(ALL);
    if (this.chance.below(2) === 0 && told[0]?.quantity !== other.quantity) told.push(other);
    const said = told.map((measured) => ({ measured, ...this.chance.one(this.ways)(measured) }));
    return {
      text: said.map(({ text }) => text).reduce((all, each) => all + this.one(BETWEEN) + each),
      values: said.flatMap(({ measured: { quantity, place }, values }) =>
        values.map((value) => written(quantity, place ?? null, value)),
      ),
    };
  }

  private one(words: readonly string[]): string {
    return this.chance.one(words);
  }

  private valueOf({ from, to }: Measured): number {
    return this.chance.value(from, to);
  }

  /** With its unit, now and then. */
  private amount(value: number, { unit, names }: Measured): string {
    const isSaid = this.chance.below(3) === 0 && !names.some((name) => name.includes(unit));
    return this.chance.number(value) + (isSaid ? ` ${unit}` : '');
  }

  private readonly ways: readonly ((measured: Measured) => Said)[] = [
    (measured) => {
      const [wrong, right] = [this.valueOf(measured), this.valueOf(measured)];
      const putRight = this.one([', no wait, ', ', sorry, ', ', scratch that, ', ' i mean ']);
      const first = `${this.one(measured.names)}${this.one(IS)} ${this.chance.number(wrong)}`;
      return { text: first + putRight + this.amount(right, measured), values: [right] };
    },
    (measured) => {
      const values = [this.valueOf(measured), this.valueOf(measured)] as const;
      const was = `${this.one(measured.names)} ${this.one(['was', 'was at'])} `;
      const now = this.one([', now ', ", now it's ", " and now it's ", ' and now ']);
      const text = was + this.chance.number(values[0]) + now + this.amount(values[1], measured);
      return { text, values };
    },
    (measured) => {
      const values = [this.valueOf(measured), this.valueOf(measured)] as const;
      const went = this.one(['came down', 'dropped', 'came up', 'went', 'fell', 'is up']);
      const from = `${this.one(measured.names)} ${went} from ${this.chance.number(values[0])}`;
      return { text: `${from} to ${this.amount(values[1], measured)}`, values };
    },
    (measured) => {
      const value = this.valueOf(measured);
      const stands = this.one([
        ...['came down to', 'dropped to', 'is up to', 'settled at', 'is holding at', 'is still at'],
        ...['is back to', 'is sitting at', 'is running', 'is about the same at', 'leveled off at'],
      ]);
      const text = `${this.one(measured.names)} ${stands} ${this.amount(value, measured)}`;
      return { text, values: [value] };
    },
    (measured) => {
      const value = this.valueOf(measured);
      const have = this.one(["i've got", 'i got', "i'm reading", "i'm seeing", 'got', 'i have']);
      const on = this.one(['on the', 'for', 'for the', 'on']);
      const name = this.one(measured.names).replace(/^the /, '');
      return { text: `${have} ${this.amount(value, measured)} ${on} ${name}`, values: [value] };
    },
    (measured) => {
      const value = this.valueOf(measured);
      const thought = this.one([
        ...[' now', ' right now', ' and steady', ' and climbing', ' after ten minutes', ' i think'],
        ...[", that's better", ', seems high', ', way low', ', looks good', ', is that normal'],
        ...[', what should it be', ', same as before', ' again', ", that's not right"],
      ]);
      const read = `${this.one(measured.names)}${this.one(IS)} ${this.amount(value, measured)}`;
      return { text: read + thought, values: [value] };
    },
  ];
}

/** Said two ways, it is asked which: the figure that was put right stands beside it. */
const isAskedWhich = (why: string): boolean => why === 'saidTwoWays';

describe(`${COUNT} sentences of values that move or are put right`, { timeout: 120_000 }, () => {
  it('are read value by value, the old one before the new one', () => {
    const teller = new Teller();
    const misread = Array.from({ length: COUNT }, () => teller.sentence()).flatMap(
      ({ text, values }) => {
        const { readings, doubts, unclaimed, commands } = understand(text, EMPTY_CONTEXT);
        if (doubts.some(({ why }) => isAskedWhich(why))) return [];
        const found = [...readings, ...doubts].map(({ quantity, place, value }) =>
          written(quantity, place, value ?? NaN),
        );
        const isRead =
          unclaimed.length + commands.length === 0 &&
          found.toSorted().join() === values.toSorted().join();
        return isRead ? [] : [`${text}: ${found.join(', ')} ${unclaimed.join()}`];
      },
    );
    expect(misread).toEqual([]);
  });
});
