import type { CheckId, StepId } from '../advice/verdict.ts';

/** What to do, ready for its reason to follow: no full stop. */
export const CHECK_SENTENCES: Record<CheckId, string> = {
  lookCondenser: 'Look through the condenser coil with a light',
  lookCondenserFan: 'See that the condenser fan turns, the right way',
  lookEvaporator: 'Look at the evaporator for ice and dirt',
  lookEvaporatorFan: 'See that the evaporator fan turns',
  lookDoors: 'Look at the doors, the gaskets and what was just loaded',
  lookSightGlass: 'Look at the sight glass',
  feelDrier: 'Feel the drier at both ends for a temperature drop',
  checkFanControl:
    'Watch head as the condenser fan comes on and goes off, against its control’s settings',
  checkInletAir: 'Read the air going into the condenser',
  searchLeaks: 'Search for a leak, oil spots first',
  checkChargeRecord: 'Find out whether refrigerant was added, and how much',
  warmBulb: 'Warm the bulb in your hand and watch suction: a live valve opens',
  checkBulb: 'Check that the bulb is tight on the suction line and insulated',
  defrostHeaters: 'Start a defrost and read the heater amps',
  compressorTest: "Test how well the compressor pumps, by its maker's procedure",
  standstillTest: 'Compare standing pressure with the temperature of a condenser at rest',
  suctionDrop: 'Read suction at the evaporator and at the compressor',
  supplyAtStart: 'Read the supply while it tries to start',
  iceBulb: 'Put the bulb in ice water and watch suction: a live valve closes',
  lookDefrost: 'See if it is in defrost: heaters hot, compressor off, coil warm',
  timeRise: 'Pump it down, stop it, and time how fast suction comes back',
  testStartGear: 'Power off and capacitors bled, test the relay and the start capacitor',
  coolOverload: 'Let the shell cool, most of an hour, and read common to run again',
  equaliseTime: 'Stop it and time how long the pressures take to equalise',
};

/** The standing order: each is whole as it stands. */
export const STEP_SENTENCES: Record<StepId, string> = {
  makeSafe: 'Make it safe first: power off from outside, air moving, and the hazard dealt with.',
  keepOff:
    'A winding is grounded: leave it locked out and tagged. It wants a compressor and a drier, and the oil tested for acid.',
  lineOneLost:
    'Line one is lost: shut it off, a motor on two legs burns. Look at its fuse, its breaker and its lugs.',
  lineTwoLost:
    'Line two is lost: shut it off, a motor on two legs burns. Look at its fuse, its breaker and its lugs.',
  lineThreeLost:
    'Line three is lost: shut it off, a motor on two legs burns. Look at its fuse, its breaker and its lugs.',
  readPoles:
    'The contactor loses voltage pulled in: burnt contacts, or a loose lug. Read across each pole, and the coil voltage.',
  readCoil:
    'Power in and none out: the contactor is not pulled in, or its contacts are open. Read across its coil.',
  mendLeak: 'The leak is found: recover, repair, pressure test, evacuate, and weigh the charge in.',
  chargeFirst: 'Pressure test it, evacuate, and weigh the charge in; then read it as it runs.',
  mendFound: 'Mend what you found, and read the box again.',
  dealWithIt: 'Deal with that, one change at a time, and read again.',
  lookFirst: 'Look before the gauges go on: fans, ice, dirt, doors. Tell me what you see.',
  waitOutDefrost:
    'It is in defrost: no reading counts until it ends and the box is back down. Tell me when it is out.',
  baselineNow:
    'That was changed without a baseline: change nothing more, let it settle, then read head, suction and box.',
  letItSettle: 'One change at a time: let it settle, then read head, suction and box again.',
  confirmAfter: 'Let it run, read the box again, and mark the after once it is steady.',
  nothingTellsMore:
    'No quick check tells more: deal with the likeliest, one change at a time, and read again.',
};
