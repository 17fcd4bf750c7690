import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { readCorpus } from '../corpus/corpus.ts';

const understood = (text: string) => understand(text, EMPTY_CONTEXT);

/** Sentences that could go two ways, and which of the two is meant: each is a line of the tables. */
const DECIDED = [
  ['how far off am i', '?compare'],
  ['a two door reach in', 'equipment reachIn doors=2'],
  ['one fifteen in, one fifteen out', 'voltage 115 V @lineSide;voltage 115 V @loadSide'],
  ['suction forty degrees', 'evaporatingTemp 40 degF'],
  ['suction line forty', 'suctionLineTemp 40 degF'],
  ['suction minus two', 'DOUBT suctionPressure -2 psi (noUnit)'],
  ['pulled it to twenty nine inches', 'suctionPressure -29 inHg'],
  ['pulled it down to five hundred microns', 'vacuum 500 micron'],
  ['added eight ounces of one thirty four', 'refrigerantAdded 8 oz of=R-134a'],
  [
    'high pressure switch opened at three eighty',
    'headPressure 380 psi event=tripped;finding highPressureSwitch tripped',
  ],
  ['ten degree split', 'UNCLAIMED 10'],
  [
    'suction thirteen, head nine',
    'DOUBT suctionPressure 13 psi (againstSibling);DOUBT headPressure 9 psi (againstSibling)',
  ],
  ['customer says it was at fifty', 'memo "customer says it was at fifty"'],
  ['customer says head was two fifty', 'DOUBT headPressure 250 psi (hearsay)'],
  ['eight hundred microns, five minutes in', 'vacuum 800 micron after=5min'],
  ['one eighty of nitrogen at sixty five degrees', 'testPressure 180 psi gas=65degF'],
  ['no bubbles', 'sightGlass clear'],
  ['common to ground is OL', 'insulationResistance OL Mohm @commonGround'],
  ['head was two hundred when i got here', 'headPressure 200 psi when=arrival'],
  ['if head goes over two hundred …', 'NOTHING'],
] as const;

describe('sentences that could go two ways', () => {
  it('are lines of the corpus, decided as they are here', () => {
    const lines = new Map(
      readCorpus()
        .filter(({ context }) => context === EMPTY_CONTEXT)
        .map(({ said, meant }) => [said, meant]),
    );
    expect(DECIDED.map(([said]) => [said, lines.get(said)])).toEqual(DECIDED);
  });
});

/** What the corpus tables' short form cannot say: where units came from, and the words of each part. */
describe('the whole object', () => {
  it('tells a unit said from one implied, and keeps each part with its own words', () => {
    expect(understood('Head one forty six, suction at twelve psi').readings).toEqual([
      {
        quantity: 'headPressure',
        value: 146,
        unit: 'psi',
        unitFrom: 'implied',
        place: null,
        words: 'Head one forty six',
      },
      {
        quantity: 'suctionPressure',
        value: 12,
        unit: 'psi',
        unitFrom: 'said',
        place: null,
        words: 'suction at twelve psi',
      },
    ]);
  });

  it('gives an empty sentence an empty object of the shape', () => {
    expect(understood('')).toEqual({
      text: '',
      readings: [],
      facts: [],
      findings: [],
      work: [],
      recommendations: [],
      questions: [],
      commands: [],
      memos: [],
      remarks: [],
      unclaimed: [],
      doubts: [],
    });
  });

  it('asks about a pressure below zero, where inches of vacuum or a slip may be meant', () => {
    expect(understood('suction minus two').doubts).toEqual([
      {
        quantity: 'suctionPressure',
        value: -2,
        unit: 'psi',
        unitFrom: 'unknown',
        place: null,
        words: 'suction minus two',
        why: 'noUnit',
      },
    ]);
  });

  it('implies the amps of what is only pulled, and reads the sign for ohms as said', () => {
    expect(understood('compressor is pulling six point two').readings).toMatchObject([
      { quantity: 'current', unit: 'A', unitFrom: 'implied', place: 'compressor' },
    ]);
    expect(understood('1.1Ω').readings).toMatchObject([
      { quantity: 'resistance', unit: 'ohm', unitFrom: 'said', value: 1.1 },
    ]);
  });

  it('gives a weight without its unit no unit at all', () => {
    expect(understood('added eight of one thirty four').doubts).toMatchObject([
      { quantity: 'refrigerantAdded', value: 8, unit: null, unitFrom: 'unknown', why: 'noUnit' },
    ]);
  });

  it('leaves out what a range, a hedge or an open meter does not have', () => {
    const [range] = understood('head is one ninety to two hundred').readings;
    expect(range).not.toHaveProperty('value');
    expect(range).toMatchObject({ low: 190, high: 200, unit: 'psi' });
    const [open] = understood('common to ground is OL').readings;
    expect(open).not.toHaveProperty('value');
    expect(open).toMatchObject({ overlimit: true, place: 'commonGround', unitFrom: 'implied' });
    expect(understood('head one ninety').readings[0]).not.toHaveProperty('hedged');
  });

  it('takes a correction as the only value', () => {
    const { readings, unclaimed, commands } = understood('head one sixty, no wait, one sixty two');
    expect(readings).toMatchObject([{ quantity: 'headPressure', value: 162 }]);
    expect(unclaimed).toEqual([]);
    expect(commands).toEqual([]);
  });
});
