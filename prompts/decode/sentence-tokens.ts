/** A mark that ends or parts a sentence is a token of its own, written as the tokenizer has it. */
const MARK = /([.,:;])(?= |$)/g;

/** "{about} is high: {measured}." as the model reads and writes it: `{about} is high ##: {measured} ##.` */
export function toTokens(sentence: string): readonly string[] {
  return sentence.replace(MARK, ' ##$1').split(' ');
}

export const isMark = (token: string): boolean => token.startsWith('##');

/** The role that a token writes, if it is a slot. */
export const roleOf = (token: string): string | null => /^\{(.+)\}$/.exec(token)?.[1] ?? null;
