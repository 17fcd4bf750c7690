import type { Token } from '../../grammar/tokens.ts';
import type { PartId } from '../../terms/names.ts';
import { HOLES } from '../holes.ts';
import type { Meaning, Span } from '../rule.ts';
import { partId } from '../slots.ts';
import { FANS } from '../words/fans.ts';
import { ARTICLES, FINITE } from '../words/clause-tokens.ts';
import { WordSet } from '../words/word-set.ts';
import { GRAMMAR, type Sentence } from './sentence.ts';

const ON = new WordSet('on of in at for from inside to off under behind around over');
const WHICH = new WordSet(
  'left right top bottom front back upper lower middle first second third other same one new old hand suction liquid discharge main big little',
);
const THESE = new WordSet('this that these those your their its');

/** What a part is named by where it is itself meant: its ends and sides, a row of it, and how much of it. */
const OF_ITSELF = new WordSet(
  'side sides half end ends top bottom back front face inlet outlet corner corners middle center rest part parts most all some none ' +
    'both each any every one ones two three four couple lot bit section row rows pass passes tube tubes tubing fin fins bend bends header ' +
    'inside outside edge edges base body shaft bearing bearings bushing bushings winding windings much many neither either few majority quarter third bunch water',
);

/** The side that power comes to a part on, or leaves it. */
const FED_FROM = new WordSet('line load feed supply');
const FED_WELL = new WordSet('good fine ok okay right');

/** What no thing is called: who did something, and how it went on. */
const NO_THING = new WordSet(
  'i we you he she they it me him her us them there here this that what which who ' +
    'am be been being up down back out away over off on in put turned switched kicked shut left working worked work looking looked ' +
    'started starting running runs run ran stands sitting sits sit standing stood stuck came come comes go goes went going got get ' +
    'power voltage volts juice juiced locked screwed bolted hung mounted hooked hook leaning now then still only just also even right ' +
    'and but so because or if when while since as than like not no yes ok okay well because to for with by from at ' +
    'good bad fine dirty clean plugged iced frozen hot cold warm wet loose open closed tripped noisy burnt dead missing failed ' +
    'need needs time have had has want wants think thinking talking told about',
);
/** Behind these what is "on" is on its place: "got the cover on". */
const PUTS = new WordSet(
  'put puts putting got get getting set bolted screwed left turned switched kicked threw have had keep keeping leave clipped hooked ' +
    'hung stuck slapped snapped with shut closed spun ran plugged pushed jammed',
);
/** Tells where a thing is that is named before it. */
const STANDS = new WordSet(
  'is are was were sits mounts goes clips straps mounted strapped clipped screwed clamped taped tied',
);
const LONGEST_NAME = 4;

/**
 * Whether what begins there is only what something else is on: "insulation on the suction line is torn" tells nothing of
 * the line, nor "the cover on the condenser is missing" of the condenser.
 */
export function isOnlyPlace(sentence: Sentence, { from, to }: Span): boolean {
  const { tokens } = sentence;
  const on = placeBefore(tokens, nameStart(sentence, from));
  const thing = tokens[on - 1];
  if (on < 1 || thing === undefined || tokens[on]?.pause === true) return false;
  if (isWhatWasTaken(tokens, on)) return true;
  // "The one going to the receiver's cold"
  if (LEADS.has(thing)) return isIn(PIPES, tokens[on - 2]);
  // "The stat's on the coil, reads closed": what is told behind the pause is told of the stat.
  if (STANDS.has(thing) && on > 1) return hasPause(tokens, from + 1, to - 1);
  // "Line side of the fuses is good": there is power, and nothing is told of the fuses.
  if (thing.text === 'side' && isIn(FED_FROM, tokens[on - 2]))
    return isIn(FED_WELL, tokens[to - 1]);
  if (OF_ITSELF.has(thing) || NO_THING.has(thing) || FINITE.has(thing) || thing.value !== null)
    return false;
  return beginsName(tokens, on - 1);
}

const LEADS = new WordSet('going coming leading running headed');
const PIPES = new WordSet('one line lines pipe pipes tube tubes tubing hose wire wires lead');

/** "Oil I got out of the schrader was black": what somebody took from there is told of, and not where it was. */
function isWhatWasTaken(tokens: readonly Token[], on: number): boolean {
  let at = on - 1;
  while (isIn(PARTICLES, tokens[at]) && !isPause(tokens, at)) at -= 1;
  const [thing, who, verb] = tokens.slice(Math.max(0, at - 2), at + 1);
  if (thing === undefined || who === undefined || verb === undefined || at < 2) return false;
  return TAKER.has(who) && !who.pause && !verb.pause && !NO_THING.has(thing) && !FINITE.has(thing);
}
const PARTICLES = new WordSet('out off up down back');
const TAKER = new WordSet('i we he they');

/** Where the whole name begins of which a rule may have read the end: "the guard on the condenser | fan is missing". */
function nameStart({ tokens, matcher }: Sentence, start: number): number {
  if (PARTS === null) return start;
  for (let at = Math.max(0, start - LONGEST_NAME); at < start; at += 1) {
    const token = tokens[at];
    if (token === undefined || NO_NAME.has(token) || hasPause(tokens, at + 1, start)) continue;
    if (matcher.run(PARTS, at).some(({ end }) => end > start)) return at;
  }
  return start;
}
const NO_NAME = WordSet.ofAll([ARTICLES, THESE, ON]);
const hasPause = (tokens: readonly Token[], from: number, to: number): boolean => {
  for (let at = from; at <= to; at += 1) if (isPause(tokens, at)) return true;
  return false;
};

/** Where the "on" stands that leads up to what begins there; none is -1. */
function placeBefore(tokens: readonly Token[], start: number): number {
  let at = start;
  while (at > 0 && start - at < 2 && !isPause(tokens, at) && isIn(WHICH, tokens[at - 1])) at -= 1;
  if (
    at > 0 &&
    !isPause(tokens, at) &&
    (isIn(ARTICLES, tokens[at - 1]) || isIn(THESE, tokens[at - 1]))
  )
    at -= 1;
  if (at === 0 || isPause(tokens, at) || !isIn(ON, tokens[at - 1])) return -1;
  const isBare = at === start && !isIn(ARTICLES, tokens[at]);
  return isBare && tokens[at - 1]?.text === 'to' ? -1 : at - 1;
}

/** Whether a thing is named up to there, of which nothing was told before, and which nobody puts there. */
function beginsName(tokens: readonly Token[], last: number): boolean {
  for (let at = last; at >= 0 && last - at < LONGEST_NAME; at -= 1) {
    const [word, before] = [tokens[at], tokens[at - 1]];
    if (word === undefined || FINITE.has(word) || PUTS.has(word)) return false;
    const isFirst = before === undefined || word.pause;
    if (isFirst || ARTICLES.has(before) || THESE.has(before))
      return isFirst || !isIn(PUTS, tokens[at - 2]);
  }
  return false;
}

const isIn = (words: WordSet, token: Token | undefined): boolean =>
  token !== undefined && words.has(token);
const isPause = (tokens: readonly Token[], at: number): boolean => tokens[at]?.pause === true;

/** A name so short that many parts have one, the part that it stands for alone, and on what that one may be. */
interface ShortName {
  readonly means: PartId;
  readonly on: readonly PartId[];
}

const LINES = ['liquidLine', 'suctionLine', 'dischargeLine'] as const;
const DOORS = ['door', 'doorGasket', 'hinge', 'doorHeater'] as const;
const SHORT: Readonly<Record<string, ShortName>> = {
  coil: { means: 'condenser', on: ['condenser'] },
  gasket: { means: 'doorGasket', on: DOORS },
  seal: { means: 'doorGasket', on: DOORS },
  cap: { means: 'runCapacitor', on: ['compressor', ...FANS, 'fan'] },
  light: { means: 'light', on: DOORS },
  lamp: { means: 'light', on: DOORS },
  glass: { means: 'sightGlass', on: [...LINES, 'filterDrier', 'receiver'] },
  bulb: { means: 'expansionValveBulb', on: [...LINES, 'expansionValve', 'evaporator', ...DOORS] },
  relay: { means: 'startRelay', on: ['compressor', 'startCapacitor'] },
  heater: { means: 'defrostHeater', on: ['evaporator', 'condenser', 'defrostTermination'] },
  timer: { means: 'defrostTimer', on: ['evaporator', 'condenser', 'defrostHeater'] },
  clock: { means: 'defrostTimer', on: ['evaporator', 'condenser', 'defrostHeater'] },
  filter: { means: 'filter', on: ['condenser', 'evaporator', ...FANS] },
  lid: { means: 'door', on: DOORS },
  outlet: { means: 'plug', on: [] },
  contact: { means: 'contactor', on: ['contactor'] },
  point: { means: 'contactor', on: ['contactor'] },
};

const PART = HOLES['part'];
const PARTS = PART === undefined ? null : GRAMMAR.compile(PART);

/** "Replaced the gasket on the pump", "light on the board is out": no gasket of a door, and no light of a box. */
export function isShortNameOfOther(sentence: Sentence, meaning: Meaning, span: Span): boolean {
  const { tokens } = sentence;
  const parts = partsIn(meaning);
  for (let at = span.from; at < span.to; at += 1) {
    const token = tokens[at];
    if (token === undefined || !SHORT_NAMES.has(token)) continue;
    const short = shortName(token.text);
    if (short === undefined || !parts.includes(short.means)) continue;
    if (isNamedWhole(sentence, at, span.from)) continue;
    const on = partBehind(sentence, at + 1);
    if (on === null ? isOnOther(tokens, at + 1) : !short.on.includes(on)) return true;
  }
  return false;
}
const SHORT_NAMES = new WordSet(Object.keys(SHORT).flatMap((name) => [name, `${name}s`]));
const shortName = (text: string): ShortName | undefined =>
  SHORT[text] ?? SHORT[text.replace(/s$/, '')];

const partsIn = ({ findings = [], work = [], recommendations = [] }: Meaning) =>
  [...findings, ...work, ...recommendations].map(({ part }) => part);

/** On what is no part of ours, and has gaskets and coils of its own. */
const isOnOther = (tokens: readonly Token[], on: number): boolean =>
  isIn(ON, tokens[on]) && !hasPause(tokens, on, on + 2) && OTHERS.hasAny(tokens, on + 1, on + 4);
const OTHERS = new WordSet(
  'pump pumps motor tank flange union valve valves port ports hose bowl strainer housing heads chiller boiler monitor alarm panel meter ballast',
);

/** "Door gasket", "condenser coil" */
function isNamedWhole(sentence: Sentence, at: number, from: number): boolean {
  if (PARTS === null) return false;
  for (let start = Math.max(from, at - 3); start < at; start += 1) {
    if (sentence.matcher.run(PARTS, start).some(({ end }) => end === at + 1)) return true;
  }
  return false;
}

/** The part that it is on, by the words right behind it. */
function partBehind({ tokens, matcher }: Sentence, on: number): PartId | null {
  if (PARTS === null || !isIn(ON, tokens[on]) || isPause(tokens, on)) return null;
  let at = on + 1;
  while (
    at - on < 4 &&
    (isIn(ARTICLES, tokens[at]) || isIn(THESE, tokens[at]) || isIn(WHICH, tokens[at]))
  ) {
    if (isPause(tokens, at)) return null;
    const here = longestAt(at);
    if (here !== null) return here;
    at += 1;
  }
  return isPause(tokens, at) ? null : longestAt(at);

  function longestAt(place: number): PartId | null {
    if (PARTS === null) return null;
    const [last] = matcher.run(PARTS, place).toSorted((one, other) => other.end - one.end);
    return partId(last?.tags[0]?.['part']);
  }
}
