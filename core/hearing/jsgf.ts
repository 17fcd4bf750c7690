import { GARBAGE_RULE, GARBAGE_WEIGHT } from './garbage.ts';

/** Speech-recognition grammar text (JSGF, W3C Note of 5 June 2000), as far as hearing reads it. */
export interface WeightedGrammar {
  readonly text: string;
  readonly weight: number;
}

const COMMENT = /\/\*[^]*?\*\/|(^|\s)\/\/[^\n]*/g;
const HEADER = /^\s*#JSGF[^;]*;/;
const NAME = /\bgrammar\s+[^;<]+;/;
const PUBLIC = /\bpublic\s+<([^<>]+)>\s*=/g;

interface Rules {
  readonly body: string;
  readonly publicNames: readonly string[];
}

/** The phone loop's rule. */
const NOT_FOR_US = '<not_for_us>';

/** The rules under names of their own, so that two grammars may both call a rule `number`. */
function rulesOf(text: string, prefix: string): Rules {
  const plain = text.replace(COMMENT, '$1').replace(HEADER, '').replace(NAME, '').trim();
  const named = plain.replace(/<([^<>]+)>/g, (whole, name: string) =>
    name === 'NULL' || name === 'VOID' ? whole : `<${prefix}${name}>`,
  );
  const publicNames = [...named.matchAll(PUBLIC)].map((match) => match[1] ?? '');
  return { body: named.replace(PUBLIC, '<$1> ='), publicNames };
}

/**
 * One grammar with one public rule out of those given, each with its weight, and the phone loop that
 * catches what is not for us. A grammar without a public rule contributes nothing; null when none has.
 */
export function combineGrammars(
  grammars: readonly WeightedGrammar[],
  garbageWeight: number = GARBAGE_WEIGHT,
): string | null {
  const parts = grammars.map(({ text, weight }, index) => ({
    ...rulesOf(text, `g${index}_`),
    weight,
  }));
  const choices = parts.flatMap(({ publicNames, weight }) =>
    publicNames.map((name) => `/${weight}/ <${name}>`),
  );
  if (choices.length === 0) return null;
  return [
    '#JSGF V1.0;',
    'grammar heard;',
    `public <heard> = ${choices.join(' | ')} | /${garbageWeight.toExponential()}/ ${NOT_FOR_US} ;`,
    GARBAGE_RULE,
    ...parts.map(({ body }) => body),
    '',
  ].join('\n');
}

/** The words a grammar can hear, sorted, each once. */
export function wordsOfGrammar(text: string): readonly string[] {
  const bare = text
    .replace(COMMENT, '$1')
    .replace(HEADER, '')
    .replace(NAME, '')
    .replace(/\{[^}]*\}/g, ' ')
    .replace(/\/[\d.eE+-]+\//g, ' ')
    .replace(/<[^<>]*>/g, ' ')
    .replace(/\bpublic\b|[;=|()[\]*+"]/g, ' ');
  return [...new Set(bare.split(/\s+/).filter((word) => word !== ''))].sort();
}

/** A rule of run-time names, whatever grammar it is put into. */
const NAMES_RULE = /^<(?:\w+_)?known\w*> = [a-z' |()]+;$/gm;

/**
 * The grammar without the names that nobody can sound: one strange name of a site must not make the page deaf.
 */
export function withoutUnsounded(text: string, known: ReadonlySet<string>): string {
  return text.replace(NAMES_RULE, (rule) => soundedRule(rule, known));
}

function soundedRule(rule: string, known: ReadonlySet<string>): string {
  const [head = '', body = ''] = rule.split(' = ');
  const phrases = body
    .replace(/[();]/g, ' ')
    .split('|')
    .map((phrase) => phrase.trim());
  const kept = phrases.filter((phrase) => phrase.split(/\s+/).every((word) => known.has(word)));
  if (kept.length === phrases.length) return rule;
  return `${head} = ${kept.length === 0 ? '<VOID>' : `(${kept.join(' | ')})`};`;
}

/** What an engine that bears few words leaves out weighs less than this beside what weighs most. */
const RARE_BELOW = 0.5;

const RULE = /^(public )?<([^<>]+)>\s*=([^;]*);\n?/gm;

/**
 * A combined grammar without what its weights call rare: for an engine whose search grows with all that may be said.
 */
export function withoutRare(combined: string): string {
  const rules = [...combined.matchAll(RULE)];
  const bodies = new Map(rules.map(([, , name = '', body = '']) => [name, body]));
  const root = rules.find(([, isPublic]) => isPublic !== undefined);
  if (root === undefined) return combined;
  const [, , rootName = '', options = ''] = root;
  bodies.set(rootName, likelyOptions(options));
  const wanted = new Set([rootName]);
  for (const name of wanted) {
    for (const [, other = ''] of (bodies.get(name) ?? '').matchAll(/<([^<>]+)>/g))
      wanted.add(other);
  }
  return combined.replace(RULE, (rule, isPublic: string | undefined, name: string) =>
    isPublic === undefined
      ? wanted.has(name)
        ? rule
        : ''
      : `public <${name}> =${bodies.get(name) ?? ''};\n`,
  );
}

/** "/1/ <a> | /0.05/ <b>" without what weighs little; the phone loop weighs next to nothing and stays. */
function likelyOptions(options: string): string {
  const weighed = options.split('|').map((option) => ({
    option,
    weight: option.includes(NOT_FOR_US) ? Infinity : Number(/\/(.+)\//.exec(option)?.[1] ?? 1),
  }));
  const heaviest = Math.max(...weighed.map(({ weight }) => weight).filter(Number.isFinite));
  return weighed
    .filter(({ weight }) => weight >= RARE_BELOW * heaviest)
    .map(({ option }) => option)
    .join('|');
}
