import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { readCorpus } from '../corpus/corpus.ts';
import { shortForm } from '../corpus/short-form.ts';

// Every sentence of the corpus as a recogniser or a thumb may write it, who write figures for numbers: it means the same.

const corpus = readCorpus();

const ONES = 'one two three four five six seven eight nine'.split(' ');
const TEENS =
  'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ');
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const VALUES = new Map<string, number>([
  ...ONES.map((word, at) => [word, at + 1] as const),
  ...TEENS.map((word, at) => [word, at + 10] as const),
  ...TENS.map((word, at) => [word, (at + 2) * 10] as const),
]);

const ONE = `(?:${ONES.join('|')})`;
const TWO = `(?:(?:${TENS.join('|')})(?: ${ONE})?|${TEENS.join('|')})`;
const ANY = `(?:${[...VALUES.keys()].join('|')})`;
/** A run of number words, and whether they are one number with its hundreds dropped or told. */
const RUN = new RegExp(`\\b${ANY}(?: (?:${ANY}|oh|hundred|and a half|point))*\\b`, 'gi');
const NUMBER = new RegExp(
  `^(?:(${ONE}) (${TWO})|(${ONE}) oh (${ONE})|(${TWO})|(${ONE}))(?: point (${ONE}))?( and a half)?$`,
);

interface Said {
  readonly hundreds: number;
  readonly rest: number;
  readonly tenth: number | null;
  readonly half: boolean;
}

const valueOf = (words = ''): number =>
  words.split(' ').reduce((sum, word) => sum + (VALUES.get(word) ?? 0), 0);

function numberIn(words: string): Said | null {
  const found = NUMBER.exec(words);
  if (found === null) return null;
  const [, dropped, behind, before, single, two, one, tenth, half] = found;
  return {
    hundreds: valueOf(dropped ?? before),
    rest: valueOf(behind ?? single ?? two ?? one),
    tenth: tenth === undefined ? null : valueOf(tenth),
    half: half !== undefined,
  };
}

const twoFigures = (rest: number): string => String(rest).padStart(2, '0');
const behindPoint = ({ tenth, half }: Said): string =>
  tenth === null ? (half ? '.5' : '') : `.${tenth}`;
const plainly = (said: Said): string => `${said.hundreds * 100 + said.rest}${behindPoint(said)}`;
const hasHundreds = ({ hundreds, half }: Said): boolean => hundreds > 0 && !half;

/** The sentence with every number of it written that way; one alone is no number but "that one". */
const written =
  (write: (said: Said) => string) =>
  (text: string): string =>
    text.replace(RUN, (words) => {
      const said = words.toLowerCase() === 'one' ? null : numberIn(words.toLowerCase());
      return said === null ? words : write(said);
    });

const inFigures = written(plainly);
const inParts = (parts: (said: Said) => string) =>
  written((said) => (hasHundreds(said) ? parts(said) + behindPoint(said) : plainly(said)));
const afterFigures =
  (pattern: RegExp, unit: string) =>
  (text: string): string =>
    inFigures(text).replace(pattern, unit);

/** How it is written, and how many of a thousand sentences that are written so may mean something else. */
const WAYS = [
  // Measured 7: "line one twelve amps" is line 1 and 12 amps, and 112 on the line.
  { name: '146', most: 9, write: inFigures },
  { name: '1 46', most: 9, write: inParts((said) => `${said.hundreds} ${twoFigures(said.rest)}`) },
  {
    name: '100 46',
    most: 9,
    write: inParts((said) => `${said.hundreds * 100} ${said.rest}`),
  },
  {
    name: '1 4 6',
    most: 9,
    write: inParts((said) =>
      said.tenth === null
        ? `${said.hundreds} ${twoFigures(said.rest).split('').join(' ')}`
        : `${said.hundreds} ${twoFigures(said.rest)}`,
    ),
  },
  {
    // Of what is switched "at 2:30", only what is never told by the clock.
    name: '1:46',
    most: 20,
    write: written((said) =>
      hasHundreds(said) && said.tenth === null
        ? `${said.hundreds}:${twoFigures(said.rest)}`
        : plainly(said),
    ),
  },
  {
    name: '$1.46',
    most: 20,
    write: written((said) =>
      hasHundreds(said) && said.tenth === null
        ? `$${said.hundreds}.${twoFigures(said.rest)}`
        : plainly(said),
    ),
  },
  {
    name: '4 .2',
    most: 9,
    write: (text: string) => inFigures(text).replace(/(\d)\.(\d)/g, '$1 .$2'),
  },
  { name: '19½', most: 9, write: (text: string) => inFigures(text).replace(/\.5\b/g, '½') },
  { name: '-4', most: 9, write: (text: string) => inFigures(text).replace(/minus (?=\d)/g, '-') },
  { name: '12psi', most: 9, write: afterFigures(/(\d) psi\b/g, '$1psi') },
  { name: '2 lbs.', most: 10, write: afterFigures(/(\d) pounds?\b/g, '$1 lbs.') },
  { name: '8oz', most: 9, write: afterFigures(/(\d) ounces?\b/g, '$1oz') },
  { name: '40°', most: 9, write: afterFigures(/(\d) degrees?\b/g, '$1°') },
  { name: '115V', most: 9, write: afterFigures(/(\d) volts?\b/g, '$1V') },
  { name: '8.3A', most: 11, write: afterFigures(/(\d) amps?\b/g, '$1A') },
  { name: '45 µF', most: 9, write: afterFigures(/(\d) microfarads?\b/g, '$1 µF') },
  { name: '10 MΩ', most: 9, write: afterFigures(/(\d) (?:megohms?|megs?)\b/g, '$1 MΩ') },
  { name: '10 min', most: 9, write: afterFigures(/(\d) minutes?\b/g, '$1 min') },
  { name: '5 in.', most: 9, write: afterFigures(/(\d) inch(?:es)?\b/g, '$1 in.') },
];

/** As numbers are written, so are words: a letter wrong, or taken apart. */
const WORDS = [
  { name: "head 's", most: 4, write: (text: string) => text.replace(/(\w)'s\b/g, "$1 's") },
  {
    name: 'high-side',
    most: 4,
    write: (text: string) => text.replace(/\b(high|low) side/g, '$1side'),
  },
  { name: 'T.X.V.', most: 70, write: (text: string) => text.replace(/\btxv\b/g, 'T.X.V.') },
  { name: 'cond.', most: 4, write: (text: string) => text.replace(/\bcondenser /g, 'cond. ') },
  {
    name: 'compresser',
    most: 10,
    write: (text: string) => text.replace(/compressor/g, 'compresser'),
  },
  {
    name: 'evaperator',
    most: 4,
    write: (text: string) => text.replace(/evaporator/g, 'evaperator'),
  },
  { name: 'gas kit', most: 55, write: (text: string) => text.replace(/gasket/g, 'gas kit') },
  {
    name: 'con denser',
    most: 95,
    write: (text: string) => text.replace(/condenser/g, 'con denser'),
  },
  { name: 't-stat', most: 90, write: (text: string) => text.replace(/thermostat/g, 't-stat') },
];

/** What is kept word for word, and names, are as they were written. */
const withoutWords = (meant: string): string =>
  meant
    .toLowerCase()
    .replace(/"[^"]*"/g, '""')
    .replace(/^memo /, 'remark ')
    .replace(/\b(site|unit) [^;]*/g, '$1');

const FEWEST = 20;

describe('the corpus as it may be written', { timeout: 120_000 }, () => {
  it.each([...WAYS, ...WORDS])('means the same: $name', ({ write, most }) => {
    const lines = corpus.filter(({ said }) => write(said) !== said);
    const changed = lines.flatMap(({ said, meant, context }) => {
      const got = shortForm(understand(write(said), context));
      return withoutWords(got) === withoutWords(meant) ? [] : [`${write(said)}: ${got}`];
    });
    expect(lines.length).toBeGreaterThan(FEWEST);
    expect((changed.length * 1000) / lines.length, changed.join('\n')).toBeLessThan(most);
  });
});

/** What recognisers write for words that they do not know, where it can be nothing else; and where it is what it says. */
const HEARD_FOR = [
  ['section is at 38', 'suctionPressure 38 psi'],
  ['section line is 46', 'suctionLineTemp 46 degF'],
  ['had 190', 'headPressure 190 psi'],
  ['ambience is 95', 'ambientTemp 95 degF'],
  ['common to run is 1.2 homes', 'resistance 1.2 ohm @commonRun'],
  ['compressor is pulling 8.3 ants', 'current 8.3 A @compressor'],
  ['208 bolts at the contact her', 'voltage 208 V @contactor'],
  ['the gas kit is torn', 'finding doorGasket failed'],
  ['replaced the start really', 'work replace startRelay'],
  ['it is 404 eh', 'refrigerant R-404A'],
  ['had 2 beers', 'NOTHING'],
  ['the contractor is here', 'NOTHING'],
  ['took 12 bolts out', 'NOTHING'],
  ['i really like it', 'NOTHING'],
] as const;

describe('words that were heard for others', () => {
  it.each(HEARD_FOR)('%s: %s', (said, meant) => {
    expect(shortForm(understand(said, EMPTY_CONTEXT))).toBe(meant);
  });
});
