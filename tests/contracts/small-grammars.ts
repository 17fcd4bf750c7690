import { combineGrammars } from '../../core/hearing/jsgf.ts';

export const grammarOf = (body: string): string =>
  combineGrammars([{ text: `#JSGF V1.0;\ngrammar g;\npublic <g> = ${body};`, weight: 1 }]) ?? '';

/** The shortest sentence there is: for hearing it many times. */
export const YES = grammarOf('yes');
