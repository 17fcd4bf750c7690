import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { ValueSpeaker, written } from './value-speaker.ts';

// Two or three values in one breath, each of another quantity, their numbers in every way that they are said: where one
// number ends and the next begins, none may take a figure of the other's.

/** A way to tell a quantity, with its number where `#` stands. */
interface Told {
  readonly quantity: string;
  readonly place?: string;
  readonly ways: readonly string[];
  readonly from: number;
  readonly to: number;
  readonly below?: true;
}

const ALL: readonly Told[] = [
  {
    quantity: 'headPressure',
    ways: [
      'head #',
      'head is #',
      "head's at #",
      'high side # psi',
      '# on the head',
      'i got a head of #',
    ],
    from: 60,
    to: 420,
  },
  {
    quantity: 'suctionPressure',
    ways: ['suction #', "suction's #", 'low side is sitting at #', '# on the low side'],
    from: 1,
    to: 60,
  },
  {
    quantity: 'suctionPressure',
    ways: ['suction # inches of vacuum', "suction's in # inches of vacuum"],
    from: 1,
    to: 25,
    below: true,
  },
  {
    quantity: 'boxTemp',
    ways: ['box #', "box temp's #", 'return air # degrees', 'box is at # right now'],
    from: -20,
    to: 70,
  },
  {
    quantity: 'ambientTemp',
    ways: ['ambient #', 'air going into the condenser is #'],
    from: 30,
    to: 118,
  },
  { quantity: 'supplyAirTemp', ways: ['supply air #'], from: -20, to: 60 },
  {
    quantity: 'condenserLeavingAirTemp',
    ways: ['condenser leaving air #', 'condenser leaving air is # degrees'],
    from: 60,
    to: 130,
  },
  {
    quantity: 'suctionLineTemp',
    ways: ['suction line #', 'suction line is # degrees'],
    from: -20,
    to: 80,
  },
  { quantity: 'liquidLineTemp', ways: ['liquid line is #', 'liquid line #'], from: 50, to: 130 },
  { quantity: 'dischargeLineTemp', ways: ['discharge line #'], from: 120, to: 240 },
  { quantity: 'superheat', ways: ['superheat #', 'superheat is #'], from: 1, to: 40 },
  { quantity: 'subcooling', ways: ['subcooling is #', 'subcooling #'], from: 1, to: 30 },
  { quantity: 'productTemp', ways: ['product is #', 'probed the milk at #'], from: 20, to: 60 },
  {
    quantity: 'voltage',
    place: 'contactor',
    ways: ['# volts at the contactor', "i've got # across the contactor", 'contactor # volts'],
    from: 100,
    to: 480,
  },
  {
    quantity: 'voltage',
    place: 'lineSide',
    ways: ['# volts on the line side'],
    from: 100,
    to: 480,
  },
  {
    quantity: 'current',
    place: 'compressor',
    ways: ['# amps on the compressor', "compressor's pulling # amps"],
    from: 2,
    to: 40,
  },
  {
    quantity: 'resistance',
    place: 'commonRun',
    ways: ['common to run is #', 'common to run # ohms'],
    from: 1,
    to: 40,
  },
  {
    quantity: 'capacitance',
    place: 'runCapacitor',
    ways: ['run cap reads # microfarads', 'run capacitor # microfarads'],
    from: 5,
    to: 60,
  },
  {
    quantity: 'refrigerantAdded',
    ways: ['added # pounds', 'added # pounds of four oh four', 'weighed in # ounces'],
    from: 1,
    to: 20,
  },
  {
    quantity: 'refrigerantRecovered',
    ways: ['recovered # pounds', 'pulled out # pounds'],
    from: 1,
    to: 20,
  },
  {
    quantity: 'cylinderWeight',
    ways: ["cylinder's at # pounds", 'cylinder weighs # pounds'],
    from: 20,
    to: 60,
  },
  {
    quantity: 'vacuum',
    ways: ['# microns', 'vacuum is # microns', 'down to # microns'],
    from: 200,
    to: 999,
  },
  {
    quantity: 'testPressure',
    ways: ['# psi of nitrogen', 'nitrogen at # psi'],
    from: 100,
    to: 350,
  },
  {
    quantity: 'highCutoutPressure',
    ways: ['high pressure cut out is set at #', 'high pressure cut out #'],
    from: 200,
    to: 420,
  },
  {
    quantity: 'lowCutoutPressure',
    ways: ['low pressure cut out #', 'low pressure cut out is set at #'],
    from: 5,
    to: 30,
  },
  {
    quantity: 'setpointTemp',
    ways: ['set point is #', "controller's set for #"],
    from: 28,
    to: 45,
  },
];

const BETWEEN = [', ', ' and ', ', and ', '. ', ' then '];
const COUNT = 4000;

interface Sentence {
  readonly text: string;
  readonly values: readonly string[];
}

class Speaker {
  private readonly chance = new ValueSpeaker(11);

  sentence(): Sentence {
    const told: Told[] = [];
    const count = 1 + this.chance.below(3);
    while (told.length < count) {
      const next = this.chance.one(ALL);
      if (!told.some(({ quantity }) => quantity === next.quantity)) told.push(next);
    }
    const values = told.map(({ from, to }) => this.chance.value(from, to));
    const said = told.map(({ ways }, at) =>
      this.chance.one(ways).replace('#', this.chance.number(values[at] ?? 0)),
    );
    return {
      text: said.reduce((all, each) => all + this.chance.one(BETWEEN) + each),
      values: told.map(({ quantity, place, below }, at) =>
        written(quantity, place ?? null, (values[at] ?? 0) * (below ? -1 : 1)),
      ),
    };
  }
}

describe(`${COUNT} sentences of up to three values`, { timeout: 120_000 }, () => {
  it('are read value by value, and nothing is left over', () => {
    const speaker = new Speaker();
    const misread = Array.from({ length: COUNT }, () => speaker.sentence()).flatMap(
      ({ text, values }) => {
        const { readings, doubts, unclaimed } = understand(text, EMPTY_CONTEXT);
        const found = [...readings, ...doubts].map(({ quantity, place, value }) =>
          written(quantity, place, value ?? NaN),
        );
        const isRead =
          unclaimed.length === 0 && found.toSorted().join() === values.toSorted().join();
        return isRead ? [] : [`${text}: ${found.join(', ')} ${unclaimed.join()}`];
      },
    );
    expect(misread).toEqual([]);
  });
});
