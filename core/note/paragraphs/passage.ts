/** Who reads it: whoever owns the unit, or the office that bills the visit and the next technician. */
export type Reader = 'customer' | 'office';

/**
 * What one or two sentences of a paragraph tell, before it is worded: closed words for what is true, and the words
 * and numbers that stand in it, by role. A template words it, or a model does, held to `guardPassage`.
 */
export interface Passage {
  readonly kind: PassageKind;
  readonly reader: Reader;
  readonly fields: readonly PassageField[];
  /** Each is said exactly once. */
  readonly slots: PassageSlots;
}

export type PassageSlots = Readonly<Partial<Record<PassageRole, string>>>;

export type PassageKind =
  /** What the visit was agreed to be for. */
  | 'aim'
  | 'reason'
  | 'meaning'
  | 'done'
  | 'refrigerant'
  | 'charge'
  | 'box'
  | 'product'
  | 'left'
  | 'todo'
  | 'comeBack'
  | 'again';

export type PassageField =
  /** The cause was named by the technician, or is only likely by the readings. */
  | 'told'
  | 'likely'
  | 'noWork'
  /** Something was told before this that "because of that" can mean. */
  | 'following'
  /** Something was done to the unit before this was read. */
  | 'worked'
  | 'down'
  | 'up'
  | 'same'
  | 'reached'
  | 'above'
  | 'below'
  | 'noneMoved'
  /** It was said that none went in, that none came out, or both. */
  | 'noneAdded'
  | 'noneRecovered'
  | 'noneEitherWay'
  | 'atPlate'
  | 'overPlate'
  | 'underPlate'
  | 'noPlate'
  /** It must not be switched on. */
  | 'off'
  | 'single'
  | 'several';

export type PassageRole =
  | 'aim'
  | 'complaint'
  | 'found'
  | 'cause'
  | 'suspects'
  | 'effect'
  | 'work'
  | 'time'
  | 'added'
  | 'recovered'
  | 'lost'
  | 'kind'
  | 'charge'
  | 'difference'
  | 'missing'
  | 'before'
  | 'after'
  | 'set'
  | 'product'
  | 'productBefore'
  | 'productAfter'
  | 'remark'
  | 'left'
  | 'danger'
  | 'todo'
  | 'when'
  | 'because'
  | 'purpose'
  | 'date'
  | 'foundBefore'
  | 'undone';

/** A slot as it is written in a sentence. */
const SLOT = /\{([a-zA-Z]+)\}/g;

/** The sentences with their slots filled, each begun with a capital; a role that the passage has not stays as it is. */
export function fillPassage(sentences: string, { slots }: Pick<Passage, 'slots'>): string {
  const words = new Map<string, string>(Object.entries(slots));
  const marked = sentences
    .split(SLOT)
    .map((piece, at) => ({ text: at % 2 === 0 ? piece : (words.get(piece) ?? `{${piece}}`), at }));
  let starts = true;
  return marked
    .map(({ text, at }) => {
      const own = at % 2 === 0 ? withCapitals(text) : text;
      const told = starts ? upperFirst(own) : own;
      if (text !== '') starts = /[.] ?$/.test(text) && at % 2 === 0;
      return told;
    })
    .join('');
}

const withCapitals = (words: string): string =>
  words.replace(/(\. )([a-z])/g, (_, end: string, letter: string) => end + letter.toUpperCase());

export const upperFirst = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
