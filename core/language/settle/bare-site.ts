import type { Context } from '../context.ts';
import { NAME_WORDS } from '../names/name-words.ts';
import { ENDS_AS_BUSINESS, withoutRoad } from '../names/site-names.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { WordSet } from '../words/word-set.ts';
import { both, type DraftUtterance } from './told.ts';

/** What is told before one says where: "alright so i just got here, this is uh the". */
const ARRIVED =
  /^(?:(?:ok|okay|so|alright|well|hey|yeah|and|uh|um|hi|hello|morning|good (?:morning|afternoon|evening)|afternoon|gloveside)[ ,]+)*(?:(?:(?:i|we|i'm|we're|i am|we are) )?(?:just |finally )?(?:got here|got in|pulled up|pulled in|rolled up|rolled in|arrived|showed up|here|on site|made it)[ ,.]+)?(?:(?:and|so|uh|um)[ ,]+)*/i;
const LEADS =
  /^(?:(?:(?:(?:(?:this|it|she|this one|(?:the )?(?:job|unit|call|place))(?:'s| is)|i'm|i am|we're|we are) )?(?:(?:over|out|here|back|down|up) )?at|this is|it's|it is|got to|location is|place is)[ ,]+)?(?:(?:uh|um|er)[ ,]+)*(?:(?:the|a) )?(?:(?:uh|um|er)[ ,]+)*/i;
const SAYS_AT = /\bat (?:the )?$/i;
/** "It's at full tilt" */
const SAYS_IT_IS_AT = /\b(?:this|it|she|one|unit)\b.* at (?:the )?$/i;
const SAYS_IT_IS_THE =
  /\b(?:this is|it's|it is)[ ,]+(?:(?:uh|um|er)[ ,]+)*the (?:(?:uh|um|er)[ ,]+)*$/i;

/** What is said of a place, and calls none. */
const TELLS_OF_IT = new WordSet(
  'i you we he she they it this that these those there here the a an my our your his her their its me us him them who what ' +
    'which when where why how is are was were be been am has have had do does did will would can could should must may not ' +
    'no yes to from for with at by in into onto off out up down over under about like than as if or but so because near on ' +
    'next behind across around past between inside outside same another other any some every all whole only just really ' +
    'very too also still again go going goes went come coming came get getting got take took run runs running called call ' +
    'calls said says say told owns owned work works working need needs want wants love loves likes clean cleaned check ' +
    'checked open opened close closed leave left feed feeds serve serves smell smells look looks see saw eat ate cook owner ' +
    'manager chef customer guy lady boss tech today tomorrow yesterday tonight now then always never busy empty warm cold ' +
    'hot freezing nice bad good dirty loud tiny huge local nearest closest entire main upstairs downstairs least moment home lunch',
);
/** Alone before a kind of business they only tell what it is like: "old church", "high school". */
const ONLY_LIKE = new WordSet(
  'old new big small little high middle low right first second last great fancy cheap fast dive sports hotel school church ' +
    'hospital restaurant bakery deli cafe store salad wine juice snack oyster raw grab tow wrecking pry cross crow candy ' +
    'chocolate frozen wet dry mini private public corner gas soul test beer stock meat flea super home',
);
/** What stands on the premises, and is no name behind "at the". */
const ON_PREMISES = new WordSet(
  'dock door doors back front side roof office counter basement hallway hall line rack panel van truck shop house store lot ' +
    'light gate window wall room floor stairs ladder unit site place desk register station supplier yard garage building ' +
    'alley corner end top bottom middle job hospital airport mall dishwasher sink stove table prep entrance exit elevator ' +
    'point time minute same pump controller disconnect breaker meter machine equipment closet attic ceiling',
);
/** "Blue" names a gauge, and an anchor. */
const COLORS: ReadonlySet<string> = new Set([
  'red',
  'blue',
  'yellow',
  'green',
  'black',
  'white',
  'silver',
]);
/** "And" joins the words of names there, and "copper" is what lines are of. */
const CALLS_TOO: ReadonlySet<string> = new Set([...COLORS, 'and', 'copper']);
const NAMES = new WordSet(NAME_WORDS.filter((word) => !CALLS_TOO.has(word)));
const MOST_WORDS = 5;

const wordsIn = (name: string): readonly string[] =>
  name.toLowerCase().split(/\s+/).filter(Boolean);
const isCapital = (name: string): boolean =>
  name.split(/\s+/).every((word) => /^(?:[A-Z]|(?:of|and|&)$)/.test(word));

function mayCall(name: string): boolean {
  const words = wordsIn(name);
  if (words.length === 0 || words.length > MOST_WORDS || holdsNumber(name)) return false;
  if (words.some((word) => TELLS_OF_IT.hasWord(word))) return false;
  return isCapital(name) || !words.some((word) => NAMES.hasWord(word));
}

/** "Cedar hill diner": what stands before the kind of business calls it, and does not only tell of it. */
function isBusiness(name: string): boolean {
  const before = name.replace(ENDS_AS_BUSINESS, '').trim();
  const [only = '', ...others] = wordsIn(before);
  return (
    before !== name &&
    mayCall(before) &&
    (others.length > 0 || isCapital(before) || !ONLY_LIKE.hasWord(only))
  );
}

/** "At the blue lantern", "this is the Blue Lantern". */
function isCalledThere(name: string, lead: string): boolean {
  const words = wordsIn(name);
  if (words.length < 2 || !mayCall(name) || words.some((word) => ON_PREMISES.hasWord(word)))
    return false;
  if (SAYS_IT_IS_AT.test(lead)) return isCapital(name);
  return SAYS_AT.test(lead) || (SAYS_IT_IS_THE.test(lead) && isCapital(name));
}

/**
 * Before it is known where one is, the name of a business by itself, or what stands behind "at the", is that. What tells
 * anything else is no name, nor is what was read as something else.
 */
export function tellWhere(all: DraftUtterance, { wantsSite }: Context): void {
  if (!wantsSite || all.questions.length + all.commands.length > 0) return;
  const { facts, text } = all;
  if (facts.some(({ fact }) => fact === 'site')) return;
  const said = text.trim().replace(/[.!]$/, '');
  const from = (ARRIVED.exec(said)?.[0] ?? '').length;
  const lead = LEADS.exec(said.slice(from))?.[0] ?? '';
  const [name = '', ...behind] = said.slice(from + lead.length).split(/[,.;:]\s/);
  const called = withoutRoad(name);
  const isSite = isBusiness(called) || (behind.length === 0 && isCalledThere(called, lead));
  if (!isSite || isReadAs(all, name)) return;
  all.facts = both([{ fact: 'site', value: name, words: name }], facts);
  all.remarks = all.remarks.filter((remark) => !remark.includes(name));
  all.memos = all.memos.filter((memo) => memo !== name);
}

/** Something else was read of these words. */
function isReadAs(
  { facts, findings, work, readings, doubts, recommendations }: DraftUtterance,
  name: string,
): boolean {
  return [...facts, ...findings, ...work, ...readings, ...doubts, ...recommendations].some(
    ({ words }) => name.includes(words),
  );
}
