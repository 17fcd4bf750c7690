import type { Told } from './told-sentences.ts';

const working = { kind: 'known', formula: null, inputs: [], source: null, cautions: [] } as const;

/** What is judged good or bad, and what may be put on or in at most. */
export const JUDGED_SENTENCES: readonly Told[] = [
  {
    verdict: {
      ...working,
      answer: 'judged',
      about: 'runCapacitor',
      finding: 'low',
      value: 31.2,
      unit: 'uF',
      limit: { value: 40, unit: 'uF' },
    },
    wrong: [
      '31.2 µF, rated 40 µF: good.', // the other finding
      '31.2 µF, rated 40 µF: high. Replace it.',
      '40 µF, rated 31.2 µF: weak. Replace it.', // exchanged
      '31.2 µF: weak.', // what to do is left out
      '31.2 µF: replace it.', // what it is is left out
      'Weak. Replace it.', // the number is left out
      '31.2 µF, rated 40 µF: a little weak. Replace it.', // softened
      '31.2 µF, rated 40 µF: weak. You could replace it.',
      '31.2 µF, rated 40 µF: weak. Replace it some time.',
      '31.2 µF, rated 40 µF: weak. Do not replace it.', // turned round
      '31.2 µF, rated 40 µF: not weak. Replace it.',
      '31.2 µF, rated 40 µF: dead. Replace it.', // raised
      '31.2 µF, rated 40 µF: weak and shorted. Replace it.',
      '31.2 µF, rated 40 µF: weak. Replace it and the compressor.', // something else with it
      '31.2 µF, rated 40 µF: weak. Replace the compressor.',
      '31.2 µF, rated 40 µF: the start capacitor is weak. Replace it.', // another part
      '31.2 V, rated 40 µF: weak. Replace it.',
      '312 µF, rated 40 µF: weak. Replace it.',
      'Thirty-one µF, rated 40 µF: weak. Replace it.',
      'Is it weak at 31.2 µF? Replace it.',
      '31.2 µF, rated 40 µF: weak. Replace it with the power on.',
    ],
    right: [
      'It reads 31.2 µF on a 40 µF can, so it has gone weak: change it.',
      'Weak: 31.2 µF. Swap it out.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'judged',
      about: 'insulation',
      finding: 'belowFloor',
      value: 0.4,
      unit: 'Mohm',
      limit: { value: 2, unit: 'Mohm' },
    },
    wrong: [
      '0.4 MΩ to ground, 2 MΩ is the floor: it passes. Leave it off.',
      '0.4 MΩ to ground, 2 MΩ is the floor: it fails.',
      '0.4 MΩ to ground, 2 MΩ is the floor: it fails. Leave it on.',
      '0.4 MΩ to ground, 2 MΩ is the floor: it fails. Run it and see.',
      '0.4 MΩ to ground: it fails. You might leave it off.',
      '0.4 MΩ to ground: it fails. Leave it off if you can.',
      '2 MΩ to ground, 0.4 MΩ is the floor: it fails. Leave it off.',
      '0.4 kΩ to ground, 2 MΩ is the floor: it fails. Leave it off.',
      '0.4 MΩ between windings: it fails. Leave it off.',
      '0.4 MΩ to ground: it fails. Leave it off. Start it once it is dry.',
    ],
    right: [
      'Keep it off: 0.4 MΩ to ground fails.',
      'It fails at 0.4 MΩ to ground, so it stays off.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'judged',
      about: 'windings',
      finding: 'overloadOpen',
      value: 0,
      unit: 'ohm',
      limit: null,
    },
    wrong: [
      'Run to start reads, common reads open: that is a winding, not the internal overload. Let it cool.',
      'Run to start reads, common reads open: that is the internal overload and a winding. Let it cool.',
      'Run to start reads, common reads open: that is the internal overload, not a winding.',
      'Run to start reads, common reads open: that is the internal overload, not a winding. Replace it.',
      'Run to start reads open, common reads: that is the internal overload, not a winding. Let it cool.',
      'Run to start reads, common reads open: the compressor is dead. Let it cool.',
      'Run to start reads, common reads open: that is not the internal overload, a winding. Let it cool.',
    ],
    right: [
      'Common is open and run to start reads, so it is the internal overload, not a winding: let it cool.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'judged',
      about: 'highPressureSwitch',
      finding: 'late',
      value: 25,
      unit: 'psi',
      limit: { value: 400, unit: 'psi' },
      read: { value: 425, unit: 'psi' },
    },
    wrong: [
      'Opened at 425 psi, set at 400 psi: 25 psi early. The high-pressure switch does not protect it.',
      'Opened at 425 psi, set at 400 psi: 25 psi late. The high-pressure switch protects it.',
      'Opened at 425 psi, set at 400 psi: 25 psi late. The low-pressure switch does not protect it.',
      'Opened at 400 psi, set at 425 psi: 25 psi late. The high-pressure switch does not protect it.',
      'Opened at 425 psi, set at 400 psi: 25 psi late.',
      'Opened at 425 psi, set at 400 psi: 25 psi late. The high-pressure switch hardly protects it.',
      'Opened at 425 psi, set at 400 psi: 25 psi late. Raise it.',
      'Opened at 425 psi, set at 400 psi: 425 psi late. The high-pressure switch does not protect it.',
      'Set at 425 psi: 25 psi late. The high-pressure switch does not protect it.',
    ],
    right: [
      'Late by 25 psi: it opened at 425 psi, set for 400 psi. The high-pressure switch does not protect it.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'judged',
      about: 'voltageImbalance',
      finding: 'stop',
      value: 6.1,
      unit: 'percent',
      limit: { value: 5, unit: 'percent' },
    },
    wrong: [
      '6.1% imbalance, over 5%: find the bad leg.',
      '6.1% imbalance, over 5%: all right.',
      '6.1% imbalance, over 5%: shut it down soon.',
      '6.1% imbalance, over 5%: shut it down if it trips.',
      '6.1% imbalance, under 5%: shut it down.',
      '5% imbalance, over 6.1%: shut it down.',
      '6.1% current imbalance, over 5%: shut it down.',
      '6.1% imbalance, over 5%: do not shut it down.',
      '6.1% imbalance, over 5%.',
    ],
    right: ['Shut it down: the imbalance is 6.1%.'],
  },
  {
    verdict: {
      ...working,
      answer: 'judged',
      about: 'food',
      finding: 'within',
      value: 39,
      unit: 'degF',
      limit: { value: 41, unit: 'degF' },
    },
    wrong: [
      '39 °F in the food, the usual limit is 41 °F: it is safe.',
      '39 °F in the food, the usual limit is 41 °F: safe to eat.',
      '39 °F in the food: it has been within it all along.',
      '39 °F in the food, the usual limit is 41 °F: within it.',
      '39 °F in the food, over the usual limit of 41 °F.',
      '41 °F in the food, the usual limit is 39 °F: within it now.',
      '39 °F in the air, the usual limit is 41 °F: within it now.',
      '39 °F in the food, the usual limit is 41 °F: within it now. Keep it.',
    ],
    right: ['A probe in the food reads 39 °F: within the usual limit for now.'],
  },
  {
    verdict: {
      ...working,
      answer: 'judged',
      about: 'leakRate',
      finding: 'overThreshold',
      value: 34,
      unit: 'percent',
      limit: { value: 20, unit: 'percent' },
    },
    wrong: [
      '34% a year, over the 20% limit: it should be repaired and verified.',
      '34% a year, over the 20% limit: it may have to be repaired and verified.',
      '34% a year, over the 20% limit: it has to be repaired.',
      '34% a year, over the 20% limit: it can be topped up.',
      '34% a year, within the 20% limit: it has to be repaired and verified.',
      '34% a month, over the 20% limit: it has to be repaired and verified.',
      '20% a year, over the 34% limit: it has to be repaired and verified.',
    ],
    right: ['It leaks 34% a year, over the limit: it must be repaired and verified.'],
  },
];

export const LIMIT_SENTENCES: readonly Told[] = [
  {
    verdict: {
      ...working,
      answer: 'limit',
      about: 'testPressure',
      value: 150,
      unit: 'psi',
      ruledBy: 'lowSide',
    },
    wrong: [
      'At least 150 psi: isolate whatever is rated less.',
      'About 150 psi: isolate whatever is rated less.',
      'No more than 150 psi.',
      'No more than 150 psi: isolate whatever is rated more.',
      'No less than 150 psi: isolate whatever is rated less.',
      'No more than 150 psi: the high side is rated that on the plate. Isolate whatever is rated less.',
      'A bit more than 150 psi is all right: isolate whatever is rated less.',
      'No more than 150 bar: isolate whatever is rated less.',
      'No more than 150 psi of oxygen: isolate whatever is rated less.',
      '150 psi is safe: isolate whatever is rated less.',
    ],
    right: ['150 psi at most, by the low side rating on the plate: shut off anything rated less.'],
  },
  {
    verdict: {
      ...working,
      answer: 'limit',
      about: 'cylinderFill',
      value: 44,
      unit: 'lb',
      net: 24,
      room: -3,
    },
    wrong: [
      '3 lb more. Full at 44 lb on the scale.',
      'It is 3 lb under. Full is 44 lb on the scale.',
      'It is 3 lb over.',
      'It is 44 lb over. Full is 3 lb on the scale.',
      'It is 3 lb over. Full is 44 lb of refrigerant.',
      'It is 3 lb over. Full is 44 lb on the scale. That is fine.',
      'It is 3 lb over. Full is 24 lb on the scale.',
      'It is 3 oz over. Full is 44 lb on the scale.',
    ],
    right: ['Overfilled by 3 lb: full is 44 lb on the scale.'],
  },
  {
    verdict: { ...working, answer: 'limit', about: 'charge', value: 18, unit: 'oz', left: null },
    wrong: [
      '18 oz by the plate.',
      '18 oz by the plate. Weigh it in.',
      '18 oz by the plate: top it up.',
      '18 oz to go.',
      '18 oz by the plate. I know what is still in it: recover, pull a vacuum, and weigh it all in.',
      '18 oz by the plate. I do not know what is still in it: vent it, pull a vacuum, and weigh it all in.',
      '18 oz by the plate. I do not know what is still in it: recover, and weigh it all in.',
      '18 lb by the plate. I do not know what is still in it: recover, pull a vacuum, and weigh it all in.',
    ],
    right: [
      'Nobody knows what is still in it: recover, pull a vacuum, and weigh it all in, 18 oz by the plate.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'hottestDay',
      value: 410,
      unit: 'psi',
      through: { about: 'condensingTemp', value: 140, unit: 'degF' },
      ambient: { about: 'designAmbientTemp', value: 105, unit: 'degF' },
      split: { about: 'split', value: 35, unit: 'dF' },
      splitFrom: 'measured',
      cutout: { limit: 400, room: 10, side: 'past' },
    },
    wrong: [
      'Head about 410 psi at 105 °F, as it runs now. The cut-out at 400 psi leaves 10 psi.',
      'Head about 410 psi at 105 °F, as it runs now. The cut-out at 400 psi is 10 psi below that: it may trip.',
      'Head about 410 psi at 105 °F, as it runs now. The cut-out at 400 psi is 10 psi below that.',
      'Head about 410 psi at 105 °F, as it runs now. The cut-out at 400 psi is 10 psi below that: it will not trip.',
      'Head about 410 psi at 105 °F, by the design split. The cut-out at 400 psi is 10 psi below that: it will trip.',
      'Head about 400 psi at 105 °F, as it runs now. The cut-out at 410 psi is 10 psi below that: it will trip.',
      'Head about 410 psi at 140 °F, as it runs now. The cut-out at 400 psi is 10 psi below that: it will trip.',
      'Head about 410 psi at 105 °F, as it runs now. The cut-out at 400 psi is 10 psi below that: it will trip. Raise the cut-out.',
      'Suction about 410 psi at 105 °F, as it runs now. The cut-out at 400 psi is 10 psi below that: it will trip.',
    ],
    right: [
      'It will trip: head comes to about 410 psi at 105 °F, as it runs now, and the cut-out at 400 psi is 10 psi below that.',
    ],
  },
];
