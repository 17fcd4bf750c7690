import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { shortForm } from '../corpus/short-form.ts';

// What is measured, found and done, in every way to tell it: each of the one with each of the other.

/** A name as technicians say it, a figure of it, and what both come to. */
const MEASURED = [
  ['head', 'one ninety', 'headPressure 190 psi'],
  ['head pressure', 'two ten', 'headPressure 210 psi'],
  ['high side', 'two forty', 'headPressure 240 psi'],
  ['discharge pressure', 'one eighty', 'headPressure 180 psi'],
  ['discharge', 'two oh five', 'headPressure 205 psi'],
  ['suction', 'thirty eight', 'suctionPressure 38 psi'],
  ['suction pressure', 'forty two', 'suctionPressure 42 psi'],
  ['low side', 'twenty two', 'suctionPressure 22 psi'],
  ['superheat', 'twelve', 'superheat 12 dF'],
  ['subcooling', 'eleven', 'subcooling 11 dF'],
  ['subcool', 'nine', 'subcooling 9 dF'],
  ['box', 'thirty eight', 'boxTemp 38 degF'],
  ['box temp', 'thirty six', 'boxTemp 36 degF'],
  ['suction line', 'forty six', 'suctionLineTemp 46 degF'],
  ['suction line temp', 'fifty one', 'suctionLineTemp 51 degF'],
  ['liquid line', 'ninety four', 'liquidLineTemp 94 degF'],
  ['liquid line temp', 'eighty eight', 'liquidLineTemp 88 degF'],
  ['discharge line', 'one eighty five', 'dischargeLineTemp 185 degF'],
  ['discharge temp', 'one ninety five', 'dischargeLineTemp 195 degF'],
  ['ambient', 'ninety five', 'ambientTemp 95 degF'],
  ['outdoor temp', 'ninety one', 'outdoorTemp 91 degF'],
  ['return air', 'forty one', 'boxTemp 41 degF'],
  ['supply air', 'thirty two', 'supplyAirTemp 32 degF'],
  ['evap temp', 'twenty two', 'evaporatingTemp 22 degF'],
  ['condensing temp', 'one oh nine', 'condensingTemp 109 degF'],
  ['product temp', 'forty four', 'productTemp 44 degF'],
  ['set point', 'thirty five', 'setpointTemp 35 degF'],
  ['low pressure cutout', 'fifteen', 'lowCutoutPressure 15 psi'],
  ['vacuum', 'four eighty', 'vacuum 480 micron'],
  ['microns', 'four fifty', 'vacuum 450 micron'],
  ['tank weight', 'twenty two pounds', 'cylinderWeight 22 lb'],
  ['line voltage', 'two thirty', 'voltage 230 V'],
  ['control voltage', 'twenty four', 'voltage 24 V'],
  ['voltage at the contactor', 'two eighteen', 'voltage 218 V @contactor'],
  ['amp draw', 'seven point two', 'current 7.2 A'],
  ['compressor amps', 'nine point one', 'current 9.1 A @compressor'],
  ['condenser fan amps', 'one point one', 'current 1.1 A @condenserFan'],
  ['evap fan amps', 'point eight', 'current 0.8 A @evaporatorFan'],
] as const;

const NAME_FIRST = [
  ...['{name} {figure}', "{name}'s {figure}", 'the {name} is {figure}', '{name}, {figure}'],
  ...['my {name} is {figure}', "our {name}'s {figure}", 'call the {name} {figure}'],
  ...['{name} reads {figure}', '{name} is reading {figure}', '{name} reading {figure}'],
  ...['the {name} reading is {figure}', '{name} says {figure}', '{name} showing {figure}'],
  ...["{name}'s sitting at {figure}", "{name}'s running {figure}", "{name}'s holding at {figure}"],
  ...[
    '{name} came up to {figure}',
    '{name} dropped to {figure}',
    '{name} dropped down to {figure}',
  ],
  ...["{name}'s down to {figure}", "{name}'s up to {figure}", '{name} settled at {figure}'],
  ...['{name} steady at {figure}', '{name} looks like {figure}', '{name} comes in at {figure}'],
  ...["{name}'s coming in at {figure}", '{name} came in at {figure}', '{name} measured {figure}'],
  ...['{name} checks out at {figure}', '{name} equals {figure}', '{name} of {figure}'],
  ...['{name} now {figure}', '{name} is now {figure}', '{name} i got {figure}'],
  ...['for {name} i have {figure}', "on the {name} i've got {figure}", 'put down {name} {figure}'],
  ...["i've got a {name} of {figure}"],
];
const FIGURE_FIRST = [
  ...['{figure} {name}', '{figure} on the {name}', 'got {figure} on the {name}'],
  ...["i'm reading {figure} on the {name}", 'seeing {figure} on the {name}'],
  ...['we have {figure} {name}', '{figure} is the {name}'],
];
const HEDGED = ["{name}'s about {figure}", '{name} is right around {figure}'];

/** What nobody read: supposed, wanted, told by others, of another unit or day. */
const NOT_READ = [
  ...['if {name} is {figure}', 'if the {name} hits {figure}', 'what if {name} is {figure}'],
  ...['unless {name} is {figure}', 'assume {name} is {figure}', 'say {name} is {figure}'],
  ...['when {name} gets to {figure}', 'once the {name} gets to {figure}'],
  ...['until {name} is {figure}', 'make sure {name} is {figure}', "let's get {name} to {figure}"],
  ...['let {name} come up to {figure}', 'gonna let {name} get to {figure}'],
  ...['customer says {name} was {figure}', 'the last guy said {name} was {figure}'],
  ...['he told me {name} was {figure}', 'he wants {name} at {figure}'],
  ...['book says {name} is {figure}', 'target {name} is {figure}'],
  ...[
    '{name} should be {figure}',
    '{name} should be about {figure}',
    '{name} needs to be {figure}',
  ],
  ...['{name} ought to be {figure}', '{name} is supposed to be {figure}'],
  ...['{name} would be {figure} on a normal day', 'normally {name} is {figure}'],
  ...['{name} is usually {figure}', '{name} may be {figure}', '{name} might be {figure}'],
  ...['{name} was {figure} yesterday', '{name} was {figure} last week'],
  ...['{name} was {figure} in the morning', 'yesterday {name} was {figure}'],
  ...['last time {name} was {figure}', 'on the last job {name} was {figure}'],
  ...['at the other store {name} is {figure}', 'on the other unit {name} is {figure}'],
  ...["the other one's {name} is {figure}", "my buddy's {name} is {figure}"],
  ...[
    'i want the {name} at {figure}',
    'we need {name} at {figure}',
    "i'd expect {name} around {figure}",
  ],
  ...["i'm hoping {name} gets to {figure}", 'i thought {name} was {figure}'],
  ...["{name} isn't {figure}", '{name} is not {figure}', "{name} can't be {figure}"],
  ...["there's no way {name} is {figure}", "{name} won't get to {figure}"],
  ...['{name} never got to {figure}', 'could {name} be {figure}', 'is {name} {figure}'],
  ...["don't write down {name} {figure}"],
];
/** Of a hundred. Measured 0.8: amps of a fan behind most of these. */
const MOST_READ = 1.2;

const told = (frame: string, [name, figure]: (typeof MEASURED)[number]): string =>
  frame.replace('{name}', name).replace('{figure}', figure);

describe('what is measured', () => {
  it.each([...NAME_FIRST, ...FIGURE_FIRST])('is read whatever it is: %s', (frame) => {
    const lost = MEASURED.flatMap((measured) => {
      const said = told(frame, measured);
      const got = shortForm(understand(said, EMPTY_CONTEXT));
      return got === measured[2] ? [] : [`${said}: ${got}`];
    });
    expect(lost).toEqual([]);
  });

  it.each(HEDGED)('is read as about so much: %s', (frame) => {
    const lost = MEASURED.flatMap((measured) => {
      const said = told(frame, measured);
      const got = shortForm(understand(said, EMPTY_CONTEXT));
      const wanted = measured[2].replace(/^(\S+ \S+ \S+)/, '$1 hedged');
      return [wanted, `${measured[2]} hedged`].includes(got) ? [] : [`${said}: ${got}`];
    });
    expect(lost).toEqual([]);
  });

  it('is not read where it is supposed, wanted, denied, or somebody else’s', () => {
    const read = NOT_READ.flatMap((frame) =>
      MEASURED.flatMap((measured) => {
        const said = told(frame, measured);
        const got = shortForm(understand(said, EMPTY_CONTEXT)).split(';');
        return got.includes(measured[2]) ? [`${said}: ${got.join(';')}`] : [];
      }),
    );
    const share = (100 * read.length) / (NOT_READ.length * MEASURED.length);
    expect(share, read.join('\n')).toBeLessThan(MOST_READ);
  });
});

const PARTS = [
  ...['compressor', 'condenser fan', 'evap fan', 'contactor', 'start relay', 'txv', 'filter drier'],
  ...[
    'door gasket',
    'drain line',
    'condenser',
    'low pressure switch',
    'defrost heater',
    'thermostat',
  ],
];
const STATES = [
  'bad',
  'burnt',
  'leaking',
  'iced up',
  'dirty',
  'plugged up',
  'noisy',
  'not running',
];
const DOINGS = [
  'replaced',
  'cleaned',
  'tightened',
  'repaired',
  'bypassed',
  'adjusted',
  'changed out',
];

const FOUND = [
  ...["{part}'s {so}", '{part} {so}', 'found the {part} {so}', 'looks like the {part} is {so}'],
  ...['the {part} looks {so}', 'got a {so} {part}', 'the {part} was {so}', '{part}, {so}'],
  ...['{part} seems to be {so}', '{part} appears to be {so}', 'turns out the {part} is {so}'],
  ...['i see the {part} is {so}', 'that {part} is {so}', '{part} is definitely {so}'],
  ...["there's a {so} {part}", 'the {part} has been {so}', 'the {part} is {so} again'],
];
const NOT_FOUND = [
  ...['if the {part} is {so}', 'customer says the {part} is {so}', 'is the {part} {so}'],
  ...[
    'make sure the {part} is {so}',
    "make sure the {part} isn't {so}",
    '{part} was {so} last year',
  ],
  ...['i thought the {part} was {so}', 'could be a {so} {part}', 'check if the {part} is {so}'],
  ...['the {part} might be {so}', 'hopefully the {part} is {so}', 'what if the {part} is {so}'],
  ...['does the {part} look {so}', 'maybe the {part} is {so}', 'not sure if the {part} is {so}'],
  ...["my buddy's {part} is {so}", "there's no way the {part} is {so}", 'i bet the {part} is {so}'],
  ...['on the other unit the {part} is {so}', 'the last guy said the {part} was {so}'],
];
const NOT_DONE = [
  ...['he {so} the {part}', 'the last guy {so} the {part}', 'if i {so} the {part}'],
  ...["i haven't {so} the {part}", 'never {so} the {part}', 'last year we {so} the {part}'],
  ...['should have {so} the {part}', 'has the {part} been {so}', 'i almost {so} the {part}'],
  ...['the {part} was {so} last year', 'my buddy {so} the {part}', 'i would have {so} the {part}'],
  ...['the {part} needs to be {so}', 'the {part} should be {so}', 'make sure the {part} gets {so}'],
];

/** What each part in each state, or worked on so, comes to when it is told plainly. */
const plainly = (plain: string, sos: readonly string[]) =>
  PARTS.flatMap((part) =>
    sos.map((so) => {
      const say = (frame: string): readonly string[] =>
        shortForm(
          understand(frame.replace('{part}', part).replace('{so}', so), EMPTY_CONTEXT),
        ).split(';');
      return { say, named: `${part} ${so}`, means: say(plain)[0] ?? '' };
    }),
  );
const SEEN = plainly('the {part} is {so}', STATES);
const DONE = plainly('i {so} the {part}', DOINGS);

describe('a part', () => {
  it('is found or worked on in every one of these', () => {
    expect(SEEN.filter(({ means }) => !means.startsWith('finding '))).toEqual([]);
    expect(DONE.filter(({ means }) => !means.startsWith('work '))).toEqual([]);
  });

  it.each(FOUND)('is found so: %s', (frame) => {
    const lost = SEEN.filter(({ say, means }) => !say(frame).includes(means));
    expect(lost.map(({ named }) => named)).toEqual([]);
  });

  it.each(NOT_FOUND)('is not found so: %s', (frame) => {
    const found = SEEN.filter(({ say, means }) => say(frame).includes(means));
    expect(found.map(({ named }) => named)).toEqual([]);
  });

  it.each(NOT_DONE)('was not worked on by us today: %s', (frame) => {
    const done = DONE.filter(({ say, means }) => say(frame).includes(means));
    expect(done.map(({ named }) => named)).toEqual([]);
  });
});
