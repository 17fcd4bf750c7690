import { describe, expect, it } from 'vitest';
import { type Context, EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { shortForm } from '../corpus/short-form.ts';

// What meters, plates and the metric habit come to, in every way to tell it: each of the one with each of the other.

const SI: Context = { ...EMPTY_CONTEXT, units: 'si' };

/** A name as technicians say it, a figure of it, and what both come to. */
type Told = readonly [name: string, figure: string, means: string];

const say = (frame: string, [name, figure]: Told): string =>
  frame.replace('{name}', name).replace('{figure}', figure);

const meant = (said: string, context = EMPTY_CONTEXT): string =>
  shortForm(understand(said, context));

/** What comes to something else than it should. */
const lostOf = (frame: string, told: readonly Told[], context = EMPTY_CONTEXT): readonly string[] =>
  told.flatMap((each) => {
    const got = meant(say(frame, each), context);
    return got === each[2] ? [] : [`${say(frame, each)}: ${got}`];
  });

const VOLTS: readonly Told[] = [
  ['contactor', 'two thirty volts', 'voltage 230 V @contactor'],
  ['compressor', 'two oh eight volts', 'voltage 208 V @compressor'],
  ['line side', 'one twenty volts', 'voltage 120 V @lineSide'],
  ['thermostat', 'twenty four volts', 'voltage 24 V @temperatureControl'],
  ['high pressure switch', 'one fifteen volts', 'voltage 115 V @highPressureSwitch'],
  ['liquid line solenoid', 'two thirty one volts', 'voltage 231 V @liquidLineSolenoid'],
  ['l one to l two', 'two thirty two volts', 'voltage 232 V @lineOneTwo'],
];
const OHMS: readonly Told[] = [
  ['c to s', 'four point two ohms', 'resistance 4.2 ohm @commonStart'],
  ['common to run', 'one point three ohms', 'resistance 1.3 ohm @commonRun'],
  ['r to s', 'five point six ohms', 'resistance 5.6 ohm @runStart'],
  ['defrost heater', 'twenty two ohms', 'resistance 22 ohm @defrostHeater'],
  ['contactor coil', 'fourteen hundred ohms', 'resistance 1400 ohm @contactor'],
  ['common to ground', 'two hundred megs', 'insulationResistance 200 Mohm @commonGround'],
  ['windings to ground', 'infinite', 'insulationResistance OL Mohm @commonGround'],
  ['run to ground', 'o l', 'insulationResistance OL Mohm @runGround'],
];
const AMPS: readonly Told[] = [
  ['compressor', 'eight point three amps', 'current 8.3 A @compressor'],
  ['condenser fan', 'one point one amps', 'current 1.1 A @condenserFan'],
  ['door heater', 'point eight amps', 'current 0.8 A @doorHeater'],
  ['line two', 'seven amps', 'current 7 A @lineTwo'],
];
const CANS: readonly Told[] = [
  ['run cap', 'thirty four point five microfarads', 'capacitance 34.5 uF @runCapacitor'],
  ['start cap', 'one sixty mfd', 'capacitance 160 uF @startCapacitor'],
];
const METERED = [...VOLTS, ...OHMS, ...AMPS, ...CANS];

const METER_NAME_FIRST = [
  ...['{name} {figure}', "{name}'s {figure}", 'the {name} is {figure}', '{name}, {figure}'],
  ...['{name} reads {figure}', '{name} reading {figure}', '{name} showing {figure}'],
  ...["{name} i've got {figure}", 'on the {name} i have {figure}', '{name} came in at {figure}'],
  ...['{name} checks out at {figure}', "{name} it's {figure}", "{name} it's showing {figure}"],
  ...["{name} it's reading {figure}", "{name}'s only {figure}", '{name} came up {figure}'],
  ...['{name} meter says {figure}', '{name} tested at {figure}', 'okay {name} {figure}'],
];
const METER_FIGURE_FIRST = [
  ...['{figure} on the {name}', 'got {figure} on the {name}', "i'm showing {figure} on {name}"],
  ...['meter says {figure} on the {name}', 'my meter shows {figure} on {name}'],
  ...["i've got {figure} on the {name} now", 'i measured {figure} on the {name}'],
];

const NOT_METERED = [
  ...['if the {name} is {figure}', 'the {name} should read {figure}', '{name} needs {figure}'],
  ...['should have {figure} across the {name}', 'i want {figure} at the {name}'],
  ...["make sure you've got {figure} at the {name}", 'check for {figure} at the {name}'],
  ...['check that {name} is {figure}', 'he got {figure} at the {name}', "{name} isn't {figure}"],
  ...["i'm not getting {figure} at the {name}", "there isn't {figure} at the {name}"],
  ...[
    'is the {name} {figure}',
    'do i have {figure} at the {name}',
    'never got {figure} at the {name}',
  ],
  ...['could the {name} be {figure}', '{name} would be {figure}', '{name} has to be {figure}'],
  ...['it takes {figure} at the {name}', 'the diagram shows {figure} at the {name}'],
  ...[
    'when {name} reads {figure}',
    'a good {name} reads {figure}',
    'i thought the {name} was {figure}',
  ],
  ...['i had {figure} at the {name} on the last one', 'you need {figure} across the {name}'],
  ...[
    '{name} was {figure} last week',
    '{name} was {figure} yesterday',
    "my buddy's {name} reads {figure}",
  ],
  ...["the other unit's {name} is {figure}", 'the unit next door has the {name} at {figure}'],
];

describe('what a meter shows', () => {
  it.each([...METER_NAME_FIRST, ...METER_FIGURE_FIRST])(
    'is read wherever it is put: %s',
    (frame) => {
      expect(lostOf(frame, METERED)).toEqual([]);
    },
  );

  it.each(NOT_METERED)('is not read where nobody metered it: %s', (frame) => {
    const read = METERED.flatMap((each) => {
      const got = meant(say(frame, each)).split(';');
      return got.includes(each[2]) ? [say(frame, each)] : [];
    });
    expect(read).toEqual([]);
  });
});

const METRIC: readonly Told[] = [
  ['head', 'twelve', 'headPressure 12 bar'],
  ['head', 'eleven point four bar', 'headPressure 11.4 bar'],
  ['discharge pressure', 'nine hundred and fifty kilopascals', 'headPressure 950 kPa'],
  ['suction', 'one point eight', 'suctionPressure 1.8 bar'],
  ['suction', 'minus point two bar', 'suctionPressure -0.2 bar'],
  ['superheat', 'seven kelvin', 'superheat 7 dC'],
  ['subcooling', 'four point five', 'subcooling 4.5 dC'],
  ['box', 'minus eighteen', 'boxTemp -18 degC'],
  ['freezer', 'eighteen below', 'boxTemp -18 degC'],
  ['suction line temp', 'nine point five celsius', 'suctionLineTemp 9.5 degC'],
  ['discharge line', 'eighty two', 'dischargeLineTemp 82 degC'],
  ['supply air', 'minus six point five', 'supplyAirTemp -6.5 degC'],
  ['evap temp', 'minus eight', 'evaporatingTemp -8 degC'],
  ['set point', 'minus twenty', 'setpointTemp -20 degC'],
  ['vacuum', 'two millibar', 'vacuum 2 mbar'],
  ['vacuum', 'one hundred pascals', 'vacuum 100 Pa'],
  ['tank weight', 'eleven point two kilograms', 'cylinderWeight 11.2 kg'],
  ['head', 'one ninety psi', 'headPressure 190 psi'],
  ['box', 'minus five fahrenheit', 'boxTemp -5 degF'],
];
const METRIC_FRAMES = [
  ...['{name} {figure}', "{name}'s {figure}", 'the {name} is {figure}', 'my {name} is {figure}'],
  ...['{name} reads {figure}', "{name}'s sitting at {figure}", '{name} came up to {figure}'],
  ...['{name} works out at {figure}', 'i make the {name} {figure}', '{name} i got {figure}'],
  ...['{figure} on the {name}', "i'm reading {figure} on the {name}", '{figure} for the {name}'],
];

describe('the metric habit', () => {
  it.each(METRIC_FRAMES)('is read whatever it is: %s', (frame) => {
    expect(lostOf(frame, METRIC, SI)).toEqual([]);
  });
});

const PLATED: readonly Told[] = [
  ['charge', 'twelve ounces', 'nameplate charge 12 oz'],
  ['factory charge', 'two pounds four', 'nameplate charge 36 oz'],
  ['charge', 'one hundred fifty grams', 'nameplate charge 150 g'],
  ['rla', 'seven point two', 'nameplate ratedLoadAmps 7.2 A'],
  ['lra', 'forty two amps', 'nameplate lockedRotorAmps 42 A'],
  ['mca', 'eighteen', 'nameplate minimumCircuitAmps 18 A'],
  ['max fuse', 'thirty amps', 'nameplate maximumFuse 30 A'],
  ['nameplate voltage', 'one fifteen volts', 'nameplate voltage 115 V'],
];
const PLATE_FRAMES = [
  ...['{name} {figure}', 'the {name} is {figure}', '{name} says {figure}', '{name} reads {figure}'],
  ...['{name} is listed as {figure}', '{name} comes to {figure}', '{name} looks like {figure}'],
  ...["it's got a {name} of {figure}", '{figure} for the {name}', '{figure} is the {name}'],
];

describe('what a plate says', () => {
  it.each(PLATE_FRAMES)('is known in any order: %s', (frame) => {
    expect(lostOf(frame, PLATED)).toEqual([]);
  });
});

const GASES: readonly Told[] = [
  ['one thirty four a', '', 'refrigerant R-134a'],
  ['four oh four a', '', 'refrigerant R-404A'],
  ['r two ninety', '', 'refrigerant R-290'],
  ['four fifty four c', '', 'refrigerant R-454C'],
  ['four forty eight a', '', 'refrigerant R-448A'],
  ['propane', '', 'refrigerant R-290'],
];
const GAS_FRAMES = [
  ...["it's {name}", "it's on {name}", 'runs on {name}', 'tag says {name}', "there's {name} in it"],
  ...["it's one of the new ones with {name}", 'one of those {name} units', 'looks like {name}'],
  ...["it's been converted to {name}", "it's labeled {name}", 'this box has {name}'],
];
const NO_GAS_HERE = [
  ...['is it {name}', 'does it take {name}', 'could be {name}', 'i thought it was {name}'],
  ...["make sure it's {name}", "it's not {name}", 'the last one was {name}', "i'm out of {name}"],
  ...['we used to use {name}', 'i need a jug of {name}', "what's the pressure on {name}"],
  ...['it was {name} before', 'never use {name}', "the other unit's on {name}"],
];

describe('a gas', () => {
  it.each(GAS_FRAMES)('is in here: %s', (frame) => {
    expect(lostOf(frame, GASES)).toEqual([]);
  });

  it.each(NO_GAS_HERE)('is not in here: %s', (frame) => {
    const told = GASES.filter((each) => meant(say(frame, each)).split(';').includes(each[2]));
    expect(told.map((each) => say(frame, each))).toEqual([]);
  });
});

const TOLD = [
  ...["head's one ninety", 'superheat was twelve', 'two thirty at the contactor'],
  ...["compressor's drawing eight amps", 'compressor is bad', "the contactor's burnt"],
  ...['found a leak at the txv', 'i replaced the compressor', 'swapped out the contactor'],
  ...['added two pounds', 'charge is twelve ounces', "condenser fan's not running"],
];
const ELSEWHERE = [
  ...['on the other unit', 'on the last one', 'on the unit next door', 'on the one next to it'],
  ...['at the other store', 'on my last job', 'last week', 'yesterday', 'last time i was here'],
  ...['two weeks ago', 'last summer', 'on the one i did yesterday', 'on another unit', 'next door'],
];

describe('what is told of another unit or another day', () => {
  it.each(ELSEWHERE)('is nothing found, read or done here: … %s', (where) => {
    const kept = TOLD.flatMap((told) => {
      const { readings, facts, findings, work } = understand(`${told} ${where}`, EMPTY_CONTEXT);
      const count = readings.length + facts.length + findings.length + work.length;
      return count === 0 ? [] : [`${told} ${where}`];
    });
    expect(kept).toEqual([]);
  });
});

const UNDONE = [
  ...['i almost {did}', 'should have {did}', 'could have {did}', 'i thought i {did}', 'he {did}'],
  ...[
    'somebody {did}',
    "i haven't {did}",
    '{did} last week',
    'i {did} last year',
    'the last guy {did}',
  ],
];
const DID_IT = ['swapped it out', 'replaced it', 'cleaned it', 'put in a new one', 'bypassed it'];

describe('what was done to "it"', () => {
  const last: Context = { ...EMPTY_CONTEXT, lastPart: 'contactor' };

  it.each(DID_IT)('was done to the part spoken of last: %s', (did) => {
    expect(understand(`i ${did}`, last).work.map(({ part }) => part)).toEqual(['contactor']);
  });

  it.each(UNDONE)('was not done by us today: %s', (frame) => {
    const done = DID_IT.filter(
      (did) => understand(frame.replace('{did}', did), last).work.length > 0,
    );
    expect(done).toEqual([]);
  });
});
