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
    `public <heard> = ${choices.join(' | ')} | /${garbageWeight.toExponential()}/ <not_for_us> ;`,
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
const NAMES_RULE = /^<(?:g\d+_)?known\w*> = [a-z' |()]+;$/gm;

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
