import { NO_LISTS, type RuntimeLists } from '../../grammar/match.ts';
import { saidWays } from './said-ways.ts';
import { tokenise } from '../words/tokenise.ts';

/** Names that only this device knows: of sites and units from earlier visits, the newest first, and of parts as listed. */
export interface KnownNames {
  readonly sites: readonly string[];
  readonly units: readonly string[];
  /** What the van carries, by the names that its owner calls them. */
  readonly parts: readonly string[];
}

export const NO_NAMES: KnownNames = { sites: [], units: [], parts: [] };

/** A list as somebody types it: a name a line. */
export const namesIn = (text: string): readonly string[] => [
  ...new Set(
    text
      .split('\n')
      .map((line) => line.trim())
      .filter((line) => line !== ''),
  ),
];

type NameKind = keyof KnownNames;
type Phrase = readonly string[];

interface Listed {
  readonly lists: RuntimeLists;
  readonly named: Readonly<Record<NameKind, ReadonlyMap<string, string>>>;
}

const listed = new WeakMap<KnownNames, Listed>();

/** The names as the matcher wants them. */
export function listsOf(names: KnownNames): RuntimeLists {
  return names === NO_NAMES ? NO_LISTS : listedOf(names).lists;
}

/** The name as it is written down, by its words as they were read. */
export function knownName(kind: NameKind, phrase: string, names: KnownNames): string | null {
  return listedOf(names).named[kind].get(phrase) ?? null;
}

function listedOf(names: KnownNames): Listed {
  const found = listed.get(names);
  if (found !== undefined) return found;
  const named = {
    sites: byPhrase(names.sites, phraseOf),
    units: byPhrase(names.units, phraseOf),
    parts: byPhrase(names.parts, partPhrases),
  };
  const lists = {
    sites: phrasesIn(named.sites),
    units: phrasesIn(named.units),
    parts: phrasesIn(named.parts),
  };
  const fresh = { lists, named };
  listed.set(names, fresh);
  return fresh;
}

function byPhrase(
  names: readonly string[],
  phrasesOf: (name: string) => readonly Phrase[],
): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const name of names) {
    for (const phrase of phrasesOf(name).map((words) => words.join(' '))) {
      if (phrase !== '' && !found.has(phrase)) found.set(phrase, name);
    }
  }
  return found;
}

/** A part's name may hold figures, which are said in more ways than one. */
const partPhrases = (name: string): readonly Phrase[] =>
  saidWays(tokenise(name.replace(ARTICLES, '')));

const phrasesIn = (named: ReadonlyMap<string, string>): readonly Phrase[] =>
  [...named.keys()].map((phrase) => phrase.split(' '));

const ARTICLES = /^(?:the|a|an) /;

/** "The walk-in by the dock" is "walk in by the dock": whoever says it puts any article before it. */
function phraseOf(name: string): readonly Phrase[] {
  const texts = tokenise(name).map(({ text }) => text);
  return [texts.join(' ').replace(ARTICLES, '').split(' ')];
}

/** Ours: each name costs every other word some accuracy, and a technician's week has fewer sites than this. */
const MOST_HEARD = 24;

/** The newest names as they are pronounced, for a recogniser: digits and signs it could not sound are left out. */
export function heardLists({ sites, units, parts }: KnownNames): RuntimeLists {
  return {
    sites: spokenPhrases(sites.slice(0, MOST_HEARD)),
    units: spokenPhrases(units.slice(0, MOST_HEARD)),
    parts: spokenPhrases(parts.slice(0, MOST_HEARD).flatMap(spelledOut)),
  };
}

/** Ours: each way that a name is said costs as much as another name. */
const MOST_WAYS_HEARD = 2;

const spelledOut = (name: string): readonly string[] =>
  partPhrases(name)
    .map((words) => words.join(' '))
    .filter((said) => !/\d/.test(said))
    .slice(0, MOST_WAYS_HEARD);

function spokenPhrases(names: readonly string[]): readonly Phrase[] {
  const phrases = names
    .map((name) =>
      name
        .toLowerCase()
        .replace(/[’‘ʼ]/g, "'")
        .replace(/[-–,.]+/g, ' ')
        .trim(),
    )
    .map((name) => name.replace(ARTICLES, ''))
    .filter((name) => /^[a-z][a-z' ]*$/.test(name));
  return [...new Set(phrases)].map((name) => name.split(/\s+/));
}
