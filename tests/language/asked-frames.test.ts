import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { readCorpus } from '../corpus/corpus.ts';
import { shortForm } from '../corpus/short-form.ts';

// What is asked, ordered and advised, in every way to put it: each of the one with each of the other.

const meant = (said: string): string => shortForm(understand(said, EMPTY_CONTEXT));

const QUANTITIES = [
  ...[
    ['head', 'headPressure'],
    ['discharge pressure', 'headPressure'],
    ['high side', 'headPressure'],
  ],
  ...[
    ['suction', 'suctionPressure'],
    ['low side', 'suctionPressure'],
    ['back pressure', 'suctionPressure'],
  ],
  ...[
    ['superheat', 'superheat'],
    ['subcooling', 'subcooling'],
    ['split', 'split'],
    ['td', 'temperatureDifference'],
  ],
  ...[
    ['box temp', 'boxTemp'],
    ['return air', 'boxTemp'],
    ['supply air', 'supplyAirTemp'],
    ['product temp', 'productTemp'],
  ],
  ...[
    ['suction line', 'suctionLineTemp'],
    ['liquid line temp', 'liquidLineTemp'],
  ],
  ...[
    ['discharge temp', 'dischargeLineTemp'],
    ['condensing temp', 'condensingTemp'],
    ['coil temp', 'evaporatingTemp'],
  ],
  ...[
    ['vacuum', 'vacuum'],
    ['amp draw', 'current'],
    ['compression ratio', 'compressionRatio'],
  ],
] as const;

const ASKED = {
  target: [
    ...['what should {name} be', 'where should my {name} be at', "what's the target {name}"],
    ...["what's {name} supposed to be", 'what should i be seeing on the {name}', 'target {name}'],
    ...['what am i looking for on {name}', 'what do you want to see for {name}'],
    ...['{name} should be what', 'what {name} do i want', 'i need a target {name}'],
    ...['tell me what {name} should be', 'i wanna know what the {name} should be'],
    ...['any idea what {name} should be', 'hey remind me what the target {name} is'],
    ...["{name}, what's it supposed to be", 'what should {name} be on this thing'],
    ...['what should {name} be right now', 'what should {name} be for this unit'],
    ...['what should i get {name} to', 'what does {name} need to be', 'where does {name} wanna be'],
  ],
  value: [
    ...[
      "what's my {name}",
      "what's the {name} at",
      'give me the {name}',
      'read me back the {name}',
    ],
    ...['show me the {name}', 'say the {name} again', 'what did i say for {name}'],
    ...["what'd i say {name} was", 'what {name} did you write down', 'current {name}'],
    ...['i wanna know what the {name} is', 'tell me what the {name} is', '{name}, what is it'],
    ...['can you tell me what the {name} is', 'do you know what the {name} is'],
    ...['any idea what the {name} is', 'remind me what the {name} was', 'last {name}'],
    ...["what's the {name} on this thing", "so what's the {name}", "hey what's the {name}"],
    ...['what does {name} come out to', "real quick what's the {name}", "what's the {name} for me"],
  ],
  compare: [
    ...['how far off is {name}', 'is {name} too high', "how's my {name}", 'am i good on {name}'],
    ...[
      'does the {name} look right to you',
      'is {name} where we want it',
      'how we doing on {name}',
    ],
    ...[
      'i wanna know if {name} is okay',
      'tell me if the {name} is okay',
      'is {name} out of whack',
    ],
    ...['do you know if {name} is okay', 'do you think {name} is okay', 'you think {name} is high'],
    ...['would you say {name} is high', 'is that a normal {name}', '{name} look okay to you'],
    ...['{name}, is that okay', 'is the {name} okay on this thing', 'is the {name} okay for me'],
  ],
} as const;

/** Asked of somebody else, told of, or known already. */
const NOT_ASKED = [
  ...['he asked {asked}', 'customer asked me {asked}', 'they wanted to know {asked}'],
  ...['i asked the guy {asked}', 'i told him {asked}', 'i already know {asked}'],
  ...["i'll tell you {asked}", 'he kept asking {asked}', 'somebody asked me {asked} yesterday'],
  ...["they don't care {asked}", "it doesn't matter {asked}", 'ask dispatch {asked}'],
  ...['i wrote down {asked}', "we'll find out {asked}", 'depends {asked}', 'tell them {asked}'],
];
const INSIDE = [
  ...['what the {name} was', 'what {name} should be', 'if the {name} is okay'],
  ...['why the {name} is so high'],
];

describe('a question', () => {
  const frames = Object.entries(ASKED).flatMap(([kind, all]) =>
    all.map((frame) => ({ kind, frame })),
  );
  it.each(frames)('is asked of whatever is measured: $frame', ({ kind, frame }) => {
    const lost = QUANTITIES.flatMap(([name, id]) => {
      const said = frame.replace('{name}', name);
      const got = meant(said);
      return got === `?${kind} ${id}` ? [] : [`${said}: ${got}`];
    });
    expect(lost).toEqual([]);
  });

  it.each(NOT_ASKED)('is not asked of us so: %s', (frame) => {
    const asked = QUANTITIES.flatMap(([name]) =>
      INSIDE.map((inside) => frame.replace('{asked}', inside.replace('{name}', name))),
    ).filter((said) => understand(said, EMPTY_CONTEXT).questions.length > 0);
    expect(asked).toEqual([]);
  });

  it.each(['open', 'okay', 'bad', 'leaking'])('finds nothing by its tone: %s?', (state) => {
    const parts = ['contactor', 'compressor', 'condenser fan', 'filter drier', 'txv'];
    const found = parts.filter((part) => /finding/.test(meant(`${part} ${state}?`)));
    expect(found).toEqual([]);
  });
});

const PARTS = [
  ...[
    ['compressor', 'compressor'],
    ['condenser fan motor', 'condenserFanMotor'],
    ['contactor', 'contactor'],
    ['start relay', 'startRelay'],
  ],
  ...[
    ['txv', 'expansionValve'],
    ['filter drier', 'filterDrier'],
    ['door gasket', 'doorGasket'],
    ['thermostat', 'temperatureControl'],
  ],
  ...[
    ['defrost heater', 'defrostHeater'],
    ['run cap', 'runCapacitor'],
    ['defrost timer', 'defrostTimer'],
    ['hinge', 'hinge'],
  ],
] as const;

const ADVISED = [
  ...['it ought to have a new {part}', 'needs a new {part}', "you're gonna want a new {part}"],
  ...["i'd put in a new {part}", "i'd put a new {part} in it", 'next trip replace the {part}'],
  ...["next trip we'll do the {part}", 'replace the {part} next trip', 'quote them for a {part}'],
  ...['the {part} should get replaced', 'the {part} needs changing', '{part} replacement needed'],
  ...["i'm recommending a new {part}", 'recommend {part} replacement', 'new {part} recommended'],
  ...['it could stand a new {part}', 'gonna have to replace the {part}', 'write up a new {part}'],
  ...['let them know it needs a new {part}', 'i told them they need a new {part}'],
  ...['i told the manager the {part} needs to be replaced', 'plan on replacing the {part}'],
  ...['that {part} has got to go', "it's time for a new {part}", 'must replace the {part}'],
  ...[
    "i'd like to see a new {part} in here",
    'needs a new {part} as well',
    'the {part} has had it',
  ],
];
const NOT_ADVISED = [
  ...["it doesn't need a new {part}", "it won't need a {part}", 'no need to replace the {part}'],
  ...['maybe it needs a new {part}', 'it might need a new {part}', 'could it need a new {part}'],
  ...["i can't recommend a new {part}", 'do you think it needs a new {part}'],
  ...['does it look like they need a new {part}', 'i thought it needed a new {part}'],
  ...['i used to think it needs a new {part}', 'is it true it needs a new {part}'],
  ...['they should have replaced the {part}', 'customer thinks it needs a new {part}'],
  ...[
    'should i replace the {part}',
    'the other unit needs a new {part}',
    "don't replace the {part}",
  ],
];
const DONE = [
  ...['i had to replace the {part}', 'finished putting in the {part}', 'put a new {part} in'],
  ...['it needed a new {part} so i put one in', 'the {part} got replaced', 'new {part} is in'],
];

describe('what ought to be done', () => {
  it.each(ADVISED)('is advised so: %s', (frame) => {
    const lost = PARTS.flatMap(([name, id]) => {
      const said = frame.replace('{part}', name);
      const [only, ...more] = meant(said).split(';');
      const isSo = more.length === 0 && only?.startsWith(`recommend replace ${id}`) === true;
      return isSo && !only.includes('why') ? [] : [`${said}: ${meant(said)}`];
    });
    expect(lost).toEqual([]);
  });

  it.each(NOT_ADVISED)('is not advised so: %s', (frame) => {
    const advised = PARTS.map(([name]) => frame.replace('{part}', name)).filter((said) =>
      /recommend|work/.test(meant(said)),
    );
    expect(advised).toEqual([]);
  });

  it.each(DONE)('is done, and not advised: %s', (frame) => {
    const lost = PARTS.filter(
      ([name, id]) => meant(frame.replace('{part}', name)) !== `work replace ${id}`,
    );
    expect(lost).toEqual([]);
  });

  it('is of no part whose name goes on', () => {
    const things = ['door closer', 'door handle', 'door sweep', 'compressor mounts'];
    const frames = [
      'it needs a new {part}',
      'put in a new {part}',
      'they should replace the {part}',
    ];
    const cut = frames
      .flatMap((frame) => things.map((thing) => frame.replace('{part}', thing)))
      .filter((said) => /recommend (?!asSaid)|work/.test(meant(said)));
    expect(cut).toEqual([]);
  });
});

const commands = readCorpus().filter(
  ({ meant: means, where, said }) =>
    where.startsWith('commands') &&
    /^![^;]*$/.test(means) &&
    /^(?:undo|scratch|make (?:it|that)|set a|start a|say|repeat|mark|save|cancel|delete)\b/.test(
      said,
    ),
);
const POLITE = [
  ...['can you {said}', 'could you {said}', 'would you {said}', 'please {said}', 'hey {said}'],
  ...['go ahead and {said}', 'okay go ahead and {said}', "why don't you {said}", '{said} for me'],
  ...['{said} for now', '{said} real quick', '{said} would you', '{said} if you can'],
];
const NOT_ORDERED = [
  ...['he told me to {said}', 'the manager asked me to {said}', 'i almost had to {said}'],
  ...['i forgot to {said}', "don't {said}", 'should i {said}', 'i used to {said}'],
  ...['you should never {said}', 'can he {said}', 'am i supposed to {said}'],
];

describe('a command', () => {
  it.each(POLITE)('is given so: %s', (frame) => {
    const lost = commands.flatMap(({ said, meant: means, context }) => {
      const got = shortForm(understand(frame.replace('{said}', said), context));
      return got === means ? [] : [`${frame.replace('{said}', said)}: ${got}`];
    });
    expect(commands.length).toBeGreaterThan(50);
    expect(lost.length, lost.join('\n')).toBeLessThan(commands.length / 30);
  });

  it.each(NOT_ORDERED)('is not given so: %s', (frame) => {
    const given = commands.filter(
      ({ said, context }) => understand(frame.replace('{said}', said), context).commands.length > 0,
    );
    expect(given.map(({ said }) => said)).toEqual([]);
  });
});
