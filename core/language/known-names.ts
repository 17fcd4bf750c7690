import type { RuntimeLists } from '../grammar/match.ts';
import { tokenise } from './tokenise.ts';

/** Names that only this device knows, from earlier visits; the newest first. */
export interface KnownNames {
  readonly sites: readonly string[];
  readonly units: readonly string[];
}

export const NO_NAMES: KnownNames = { sites: [], units: [] };

type NameKind = keyof KnownNames;
type Phrase = readonly string[];

interface Listed {
  readonly lists: RuntimeLists;
  readonly named: Readonly<Record<NameKind, ReadonlyMap<string, string>>>;
}

const listed = new WeakMap<KnownNames, Listed>();

/** The names as the matcher wants them. */
export function listsOf(names: KnownNames): RuntimeLists {
  return listedOf(names).lists;
}

/** The name as it is written down, by its words as they were read. */
export function knownName(kind: NameKind, phrase: string, names: KnownNames): string | null {
  return listedOf(names).named[kind].get(phrase) ?? null;
}

function listedOf(names: KnownNames): Listed {
  const found = listed.get(names);
  if (found !== undefined) return found;
  const named = { sites: byPhrase(names.sites), units: byPhrase(names.units) };
  const lists = { sites: phrasesIn(named.sites), units: phrasesIn(named.units) };
  const fresh = { lists, named };
  listed.set(names, fresh);
  return fresh;
}

function byPhrase(names: readonly string[]): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const name of names) {
    const phrase = phraseOf(name).join(' ');
    if (phrase !== '' && !found.has(phrase)) found.set(phrase, name);
  }
  return found;
}

const phrasesIn = (named: ReadonlyMap<string, string>): readonly Phrase[] =>
  [...named.keys()].map((phrase) => phrase.split(' '));

const ARTICLES = /^(?:the|a|an) /;

/** "The walk-in by the dock" is "walk in by the dock": whoever says it puts any article before it. */
function phraseOf(name: string): Phrase {
  const texts = tokenise(name).map(({ text }) => text);
  return texts.join(' ').replace(ARTICLES, '').split(' ');
}

/** Ours: each name costs every other word some accuracy, and a technician's week has fewer sites than this. */
const MOST_HEARD = 24;

/** The newest names as they are pronounced, for a recogniser: digits and signs it could not sound are left out. */
export function heardLists({ sites, units }: KnownNames): RuntimeLists {
  return { sites: spokenPhrases(sites), units: spokenPhrases(units) };
}

function spokenPhrases(names: readonly string[]): readonly Phrase[] {
  const phrases = names
    .slice(0, MOST_HEARD)
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
