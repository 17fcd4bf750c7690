import { JUDGED_SENTENCES, LIMIT_SENTENCES } from './wrong-judged.ts';
import type { Told } from './told-sentences.ts';

const working = { kind: 'known', formula: null, inputs: [], source: null, cautions: [] } as const;

const TIMED: readonly Told[] = [
  {
    verdict: {
      ...working,
      answer: 'vacuumHold',
      verdict: 'offGassing',
      from: 400,
      to: 900,
      unit: 'micron',
      minutes: 12,
      readings: 4,
    },
    wrong: [
      '400 micron to 900 micron in 12 min. It levelled off: refrigerant out of the oil. Pull longer and hold again.',
      '400 micron to 900 micron in 12 min. It levelled off: moisture, most likely. Pull longer and hold again.',
      '400 micron to 900 micron in 12 min. It held: tight.',
      '900 micron to 400 micron in 12 min. It levelled off: refrigerant out of the oil, most likely. Pull longer and hold again.',
      '400 micron to 900 micron in 12 h. It levelled off: refrigerant out of the oil, most likely. Pull longer and hold again.',
      '400 micron to 900 micron in 12 min. It levelled off: refrigerant out of the oil, most likely. Charge it.',
      '400 micron to 900 micron in 12 min. It levelled off: refrigerant out of the oil, most likely.',
      '400 micron to 900 micron. It levelled off: refrigerant out of the oil, most likely. Pull longer and hold again.',
      '400 micron to 900 micron in 12 min. It did not level off: refrigerant out of the oil, most likely. Pull longer and hold again.',
      '400 micron to 900 micron in 12 min. It is certainly refrigerant out of the oil. Pull longer and hold again.',
    ],
    right: [
      'Most likely refrigerant coming out of the oil: it levelled off, 400 micron to 900 micron in 12 min. Pull longer and hold again.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'vacuumHold',
      verdict: 'leak',
      from: 400,
      to: 2600,
      unit: 'micron',
      minutes: 10,
      readings: 4,
    },
    wrong: [
      '400 micron to 2600 micron in 10 min. It rises without slowing: a leak. Put the charge in.',
      '400 micron to 2600 micron in 10 min. It rises without slowing: a leak. Find it after the charge goes in.',
      '400 micron to 2600 micron in 10 min. It rises without slowing: maybe a leak. Find it before the charge goes in.',
      '400 micron to 2600 micron in 10 min. It rises without slowing: not a leak. Find it before the charge goes in.',
      '400 micron to 2600 micron in 10 min. It rises, slowing: a leak. Find it before the charge goes in.',
      '400 micron to 2600 micron in 10 min. A leak. Find it before the charge goes in.',
      '400 micron to 2600 micron in 10 min. It rises without slowing: a leak.',
      '400 micron to 260 micron in 10 min. It rises without slowing: a leak. Find it before the charge goes in.',
      '400 micron to 2600 micron in 10 min. It rises without slowing: a small leak. Find it before the charge goes in.',
    ],
    right: [
      'You have a leak: 400 micron to 2600 micron in 10 min, it keeps rising without slowing. Find it before you charge.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'pressureTest',
      verdict: 'temperatureNotRead',
      from: { value: 150, unit: 'psi' },
      to: { value: 148, unit: 'psi' },
      fromTemp: null,
      toTemp: null,
      expected: null,
      minutes: 20,
    },
    wrong: [
      '150 psi to 148 psi in 20 min. It held.',
      '150 psi to 148 psi in 20 min. A leak. Find it.',
      '150 psi to 148 psi in 20 min. Without the gas temperatures that proves it: say each with its pressure.',
      '150 psi to 148 psi in 20 min. With the gas temperatures that proves nothing: say each with its pressure.',
      '150 psi to 148 psi in 20 min. Without the gas temperatures that proves nothing.',
      '148 psi to 150 psi in 20 min. Without the gas temperatures that proves nothing: say each with its pressure.',
      '150 psi to 148 psi in 20 min. That proves little without the gas temperatures: say each with its pressure.',
    ],
    right: [
      '150 psi to 148 psi in 20 min, but that proves nothing without the gas temperatures: give me each with its pressure.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'trend',
      about: 'boxTemp',
      place: null,
      value: 41,
      unit: 'degF',
      changeUnit: 'dF',
      recent: { change: -3, minutes: 15 },
      sinceChange: { change: -6, minutes: 40 },
      held: null,
      agoMinutes: 2,
      next: { kind: 'nothing' },
    },
    wrong: [
      'Box is 41 °F, up 3 °F in 15 min. Down 6 °F since the change.',
      'Box is 41 °F, down 3 °F in 15 min. Up 6 °F since the change.',
      'Box is 41 °F, down 6 °F in 15 min. Down 3 °F since the change.',
      'Box is 41 °F, down 3 °F in 15 min.',
      'Box is 41 °F, down 3 °F in 40 min. Down 6 °F since the change.',
      'Box is 41 °F, the same as 15 min before. Down 6 °F since the change.',
      'Suction is 41 °F, down 3 °F in 15 min. Down 6 °F since the change.',
      'Box will be 41 °F, down 3 °F in 15 min. Down 6 °F since the change.',
      'Box is 41 °F, down 3 °F in 15 min. It is steady. Down 6 °F since the change.',
      'Box is 41 °F, down 3 °F in 15 min and still coming down. Down 6 °F since the change.',
    ],
    right: ['41 °F on the box, it came down 3 °F in 15 min. Down 6 °F since the change.'],
  },
  {
    verdict: {
      ...working,
      answer: 'eta',
      about: 'boxTemp',
      target: 38,
      unit: 'degF',
      minutes: 50,
      uncertainty: null,
      readings: 5,
    },
    wrong: [
      'About 50 min: box at 38 °F. It slows as it comes down: read it again on the way.',
      'In 50 min box is at 38 °F. It slows as it comes down: read it again on the way.',
      'Before 50 min: box at 38 °F. It slows as it comes down: read it again on the way.',
      'Not before 50 min: box at 38 °F.',
      'Not before 38 min: box at 50 °F. It slows as it comes down: read it again on the way.',
      'Not before 50 min: box at 38 °F. It speeds up as it comes down: read it again on the way.',
      'At most 50 min: box at 38 °F. It slows as it comes down: read it again on the way.',
      'Not before 50 min: product at 38 °F. It slows as it comes down: read it again on the way.',
    ],
    right: [
      'Box at 38 °F, no sooner than 50 min. It slows as it comes down, so check it again on the way.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'timeLeft',
      timers: [{ timer: { work: 'vacuumHold', about: 'hold' }, minutes: 7 }],
    },
    wrong: [
      '7 min up on the vacuum hold.',
      '7 min left on the evacuation.',
      '6 min left on the vacuum hold.',
      'About 7 min left on the vacuum hold.',
      '7 h left on the vacuum hold.',
      '7 min gone on the vacuum hold.',
      'Left on the vacuum hold.',
    ],
    right: ['The vacuum hold has 7 min to go.'],
  },
];

const CIRCUIT: readonly Told[] = [
  {
    verdict: {
      ...working,
      answer: 'switch',
      place: 'highPressureSwitch',
      state: 'open',
      across: 208,
      supply: 208,
      unit: 'V',
      next: null,
    },
    wrong: [
      '208 V across the high-pressure switch with power at the line: it is closed. Find what drove head up before it is reset.',
      '208 V across the low-pressure switch with power at the line: it is open. Find what drove head up before it is reset.',
      '208 V across the high-pressure switch with power at the line: it is open. Reset it.',
      '208 V across the high-pressure switch with power at the line: it is open.',
      '208 V across the high-pressure switch with power at the line: it is open. Bypass it. Find what drove head up before it is reset.',
      '208 V across the high-pressure switch with power at the line: it is not open. Find what drove head up before it is reset.',
      '208 V across the high-pressure switch with power at the line: it may be open. Find what drove head up before it is reset.',
      '280 V across the high-pressure switch with power at the line: it is open. Find what drove head up before it is reset.',
      '208 V across the high-pressure switch: it is open. Find what drove head up before it is reset.',
      '208 V across the high-pressure switch with power at the line: it is open. Find what drove head up after it is reset.',
      '208 V across the high-pressure switch with power at the line: it is bad. Find what drove head up before it is reset.',
      '208 A across the high-pressure switch with power at the line: it is open. Find what drove head up before it is reset.',
    ],
    right: [
      'The high-pressure switch reads 208 V across it and the line has power, so it is open. Find what drove head up before it is reset.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'switch',
      place: 'contactor',
      state: 'undetermined',
      across: 0,
      supply: 208,
      unit: 'V',
      next: { how: 'across', place: 'doorSwitch' },
    },
    wrong: [
      'Zero there means it is closed. Next, put the leads across the door switch.',
      'Zero there settles it: another one open reads the same. Next, put the leads across the door switch.',
      'Zero there settles nothing: another one closed reads the same. Next, put the leads across the door switch.',
      'Zero there settles nothing: another one open reads the same. Next, put the leads across the contactor.',
      'Zero there settles nothing: another one open reads the same. Next, put your hand across the door switch.',
      'Zero there settles nothing: another one open reads the same.',
      'Zero there settles little: another one open reads the same. Next, put the leads across the door switch.',
    ],
    right: [
      'Zero there tells nothing, as another one open would read the same: next, put the leads across the door switch.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'nextPlace',
      found: 'suspects',
      suspects: [
        { of: 'highPressureSwitch', mode: 'open' },
        { of: 'overload', mode: 'open' },
      ],
      together: false,
      next: null,
    },
    wrong: [
      'It is the high-pressure switch and the overload. Voltage cannot tell them apart: lock out, leads off, and read the ohms.',
      'It is the high-pressure switch. Voltage cannot tell them apart: lock out, leads off, and read the ohms.',
      'It is the high-pressure switch or the overload. Voltage can tell them apart: lock out, leads off, and read the ohms.',
      'It is the high-pressure switch or the overload. Voltage cannot tell them apart: leads off, and read the ohms.',
      'It is the high-pressure switch or the overload. Voltage cannot tell them apart: lock out, leads on, and read the ohms.',
      'It is the low-pressure switch or the overload. Voltage cannot tell them apart: lock out, leads off, and read the ohms.',
      'It is the high-pressure switch or the overload. Voltage cannot tell them apart: replace both.',
      'It is neither the high-pressure switch nor the overload. Voltage cannot tell them apart: lock out, leads off, and read the ohms.',
    ],
    right: [
      'It is the high-pressure switch or the overload, no telling them apart by voltage: lock out, leads off, and read the ohms.',
    ],
  },
];

const CAUSES: readonly Told[] = [
  {
    verdict: {
      ...working,
      answer: 'causes',
      causes: [
        {
          cause: 'dirtyCondenser',
          standing: 'leading',
          for: [
            { kind: 'deviation', about: 'headPressure', value: 40, unit: 'psi', direction: 'over' },
            { kind: 'finding', part: 'condenser', state: 'dirty' },
          ],
          against: [
            { kind: 'deviation', about: 'subcooling', value: 0, unit: 'dF', direction: 'on' },
          ],
        },
        { cause: 'condenserFanOut', standing: 'possible', for: [], against: [] },
      ],
      notRead: [],
      next: { next: 'check', check: 'lookCondenser', between: [] },
    },
    wrong: [
      'It is a dirty condenser: head 40 psi over, condenser dirty. Against it: subcooling about right. Also possible: a condenser fan out. Look through the condenser coil with a light.',
      'Certainly a dirty condenser: head 40 psi over, condenser dirty. Against it: subcooling about right. Also possible: a condenser fan out. Look through the condenser coil with a light.',
      'Most likely a condenser fan out: head 40 psi over, condenser dirty. Against it: subcooling about right. Also possible: a dirty condenser. Look through the condenser coil with a light.',
      'Most likely a dirty condenser, or a condenser fan out: head 40 psi over, condenser dirty. Against it: subcooling about right. Look through the condenser coil with a light.',
      'Most likely a dirty condenser: head 40 psi under, condenser dirty. Against it: subcooling about right. Also possible: a condenser fan out. Look through the condenser coil with a light.',
      'Most likely a dirty condenser: subcooling about right. Against it: head 40 psi over, condenser dirty. Also possible: a condenser fan out. Look through the condenser coil with a light.',
      'Most likely a dirty condenser: head 40 psi over, condenser dirty. Also possible: a condenser fan out. Look through the condenser coil with a light.',
      'Most likely a dirty condenser: head 40 psi over, condenser dirty. Against it: subcooling about right. Look through the condenser coil with a light.',
      'Most likely a dirty condenser: head 40 psi over, condenser dirty. Against it: subcooling about right. Also possible: a condenser fan out.',
      'Most likely a dirty condenser: head 40 psi over, condenser dirty. Against it: subcooling about right. Also: a condenser fan out. Look through the condenser coil with a light.',
      'Most likely a dirty condenser: head 40 psi over, condenser dirty. Against it: subcooling about right. Also possible: a condenser fan out. Replace the condenser fan motor.',
      'Not a dirty condenser: head 40 psi over, condenser dirty. Against it: subcooling about right. Also possible: a condenser fan out. Look through the condenser coil with a light.',
      'Most likely a dirty evaporator: head 40 psi over, condenser dirty. Against it: subcooling about right. Also possible: a condenser fan out. Look through the condenser coil with a light.',
      'Most likely a dirty condenser: head 40 psi over, condenser clean. Against it: subcooling about right. Also possible: a condenser fan out. Look through the condenser coil with a light.',
      'A dirty condenser: head 40 psi over, condenser dirty. Against it: subcooling about right. Also possible: a condenser fan out. Look through the condenser coil with a light.',
      'Most likely a dirty condenser: head 40 psi over. Against it: subcooling about right. Also possible: a condenser fan out. Look through the condenser coil with a light.',
    ],
    right: [
      'The likeliest is a dirty condenser, because of head 40 psi over and condenser dirty. Against it: subcooling about right. It may also be a condenser fan out. Look through the condenser coil with a light.',
      'It looks most like a dirty condenser: head 40 psi over, condenser dirty. Against that: subcooling about right. Also possible: a condenser fan out. Now look through the condenser coil with a light.',
    ],
  },
  {
    verdict: {
      ...working,
      answer: 'nextCheck',
      next: 'check',
      check: 'warmBulb',
      between: ['valveStarving', 'liquidLineRestriction'],
    },
    wrong: [
      'Warm the bulb in your hand and watch suction: a live valve closes: it tells an expansion valve starving the coil from a restriction in the liquid line or drier.',
      'Warm the bulb with a torch and watch suction: a live valve opens: it tells an expansion valve starving the coil from a restriction in the liquid line or drier.',
      'Warm the bulb in your hand and watch suction: a live valve opens: it confirms an expansion valve starving the coil.',
      'Warm the bulb in your hand and watch suction: a live valve opens: it is an expansion valve starving the coil or a restriction in the liquid line or drier.',
      'Warm the bulb in your hand and watch suction: a live valve opens: it tells an expansion valve flooding the coil from a restriction in the liquid line or drier.',
      'Warm the bulb in your hand and watch head: a live valve opens: it tells an expansion valve starving the coil from a restriction in the liquid line or drier.',
      'Warm the bulb in your hand and watch suction: a live valve opens.',
    ],
    right: [
      'To tell an expansion valve starving the coil from a restriction in the liquid line or drier: warm the bulb in your hand and watch suction: a live valve opens.',
    ],
  },
];

const VISIT: readonly Told[] = [
  {
    verdict: {
      ...working,
      answer: 'leftOpen',
      left: [
        { part: 'lowPressureSwitch', as: 'bypassed' },
        { part: 'kingValve', as: 'closed' },
      ],
      questions: 0,
    },
    wrong: [
      'Still open: low-pressure switch jumped out.',
      'Still open: king valve closed.',
      'Nothing you told me is left open.',
      'Still open: high-pressure switch jumped out, king valve closed.',
      'Still open: low-pressure switch jumped out, king valve open.',
      'Still open: low-pressure switch closed, king valve jumped out.',
      'Still open: low-pressure switch jumped out, king valve closed. You may leave them.',
      'Not open: low-pressure switch jumped out, king valve closed.',
      'Put back: low-pressure switch jumped out, king valve closed.',
    ],
    right: ['Not put back yet: low-pressure switch jumped out and king valve closed.'],
  },
  {
    verdict: {
      ...working,
      answer: 'moved',
      rows: [
        { refrigerant: 'R-404A', unit: 'oz', in: 30, out: 12, lost: 0, net: 18, unweighed: 0 },
      ],
      charge: null,
    },
    wrong: [
      'R-404A: 18 oz less in it: in 30 oz, out 12 oz.',
      'R-404A: 18 oz more in it: in 12 oz, out 30 oz.',
      'R-134a: 18 oz more in it: in 30 oz, out 12 oz.',
      'R-404A: 30 oz more in it: in 18 oz, out 12 oz.',
      'R-404A: 18 oz more in it.',
      'R-404A: in 30 oz, out 12 oz.',
      'R-404A: 18 lb more in it: in 30 oz, out 12 oz.',
      'R-404A: even: in 30 oz, out 12 oz.',
      'R-404A: 18 oz more in it: in 30 oz, vented 12 oz.',
    ],
    right: ['18 oz more in it of R-404A, with in 30 oz, out 12 oz.'],
  },
  {
    verdict: {
      ...working,
      answer: 'lastDone',
      did: 'clean',
      part: 'condenser',
      on: null,
      since: { year: 2025, month: 3, day: 4 },
      today: { year: 2025, month: 11, day: 25 },
    },
    wrong: [
      'Condenser cleaned on March 4.',
      'Not on any visit I have: condenser replaced. They go back to March 4.',
      'Not on any visit I have: evaporator cleaned. They go back to March 4.',
      'On a visit I have: condenser cleaned. They go back to March 4.',
      'Not on any visit I have: condenser cleaned. They go back to April 4.',
      'Condenser was never cleaned. They go back to March 4.',
      'Not on any visit I have: condenser cleaned.',
    ],
    right: ['No visit I have shows condenser cleaned: they go back to March 4.'],
  },
  {
    verdict: {
      ...working,
      answer: 'seenBefore',
      today: { year: 2025, month: 11, day: 25 },
      last: { year: 2025, month: 8, day: 3 },
      rows: [{ part: 'condenser', state: 'dirty' }],
      unasked: false,
    },
    wrong: [
      'Nothing found today was found last time, August 3.',
      'The same on August 3: evaporator dirty.',
      'The same on August 3: condenser plugged.',
      'The same on August 13: condenser dirty.',
      'Not the same on August 3: condenser dirty.',
      'The same on every visit: condenser dirty.',
      'The same on August 3: condenser dirty. Nobody cleaned it.',
    ],
    right: ['Condenser dirty, the same on August 3.'],
  },
];

export const TOLD: readonly Told[] = [
  ...JUDGED_SENTENCES,
  ...LIMIT_SENTENCES,
  ...TIMED,
  ...CIRCUIT,
  ...CAUSES,
  ...VISIT,
];
