import { REGISTERS, type Register } from '../record/phrase-record.ts';
import type { CorpusLine } from './corpus-line.ts';
import { mirrored } from './mirrored.ts';

export type ParsedCorpus =
  | { readonly kind: 'lines'; readonly lines: readonly CorpusLine[] }
  | { readonly kind: 'unusable'; readonly line: number; readonly message: string };

/** The lines of one corpus file, those about "over" once more the other way round. */
export function parseCorpus(kind: string, text: string): ParsedCorpus {
  const lines: CorpusLine[] = [];
  for (const [index, written] of text.split('\n').entries()) {
    if (written.trim() === '' || written.startsWith('#')) continue;
    const line = parseLine(kind, written);
    if (typeof line === 'string') return { kind: 'unusable', line: index + 1, message: line };
    lines.push(line, ...mirrored(line));
  }
  return { kind: 'lines', lines };
}

const FORM = 'write what it needs, a tab, the register, a tab, and the sentence';

function parseLine(kind: string, written: string): CorpusLine | string {
  const [needs, register, sentence, ...more] = written.split('\t');
  if (needs === undefined || register === undefined || sentence === undefined || more.length > 0) {
    return FORM;
  }
  if (!isRegister(register)) return `no register ${register}: one of ${REGISTERS.join(', ')}`;
  const fault = faultOf(sentence);
  return fault ?? { kind, needs: needs === '*' ? [] : needs.split(' '), register, sentence };
}

const isRegister = (word: string): word is Register => REGISTERS.some((one) => one === word);

/** What the tokenizer has no words for, or would put together otherwise. */
function faultOf(sentence: string): string | null {
  const words = sentence.replace(/\{[a-zA-Z]+\}/g, 'x');
  if (/\d/.test(words)) return 'no digits: numbers stand in slots';
  const odd = /[^A-Za-z' ,.:;-]/.exec(words)?.[0];
  if (odd !== undefined) return `no "${odd}": letters, spaces and , . : ; ' - alone`;
  if (/\}[^ ,.:;]|[^ ]\{/.test(sentence)) return 'a slot stands alone: a space before it';
  if (/[A-Z]/.test(words)) return 'small letters: capitals are put in when it is filled';
  if (!words.endsWith('.')) return 'end it with a full stop';
  return / [ ,.:;]|[,.:;][^ ]/.test(words) ? 'one space after a mark, none before it' : null;
}
