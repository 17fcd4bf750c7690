import { dateWords } from '../../replies/dates.ts';
import { figureText, weightText } from '../../replies/amounts.ts';
import { isCharge, type Made } from '../../replies/recommendation-sentences.ts';
import type { PartId } from '../../terms/names.ts';
import type { RefrigerantAccount } from '../../visit/refrigerant-account.ts';
import { amountOf, type ReadingEntry } from '../../visit/views.ts';
import { withoutCall } from '../complaint.ts';
import { createNaming, tradeNaming } from '../customer-words/parts.ts';
import type { Probed } from '../../visit/probed.ts';
import { SOMEBODY } from '../../terms/people.ts';
import { toldToDo } from '../product.ts';
import { listed, valueWritten } from '../wording.ts';
import type { FactOf, NoteFact } from './facts.ts';
import type { Passage, PassageField, PassageSlots, Reader } from './passage.ts';
import { effectOf, whenOf, WORDS, type Words } from './words.ts';

/** A paragraph's passages, in the order they are told. */
export type Paragraph = readonly Passage[];

/**
 * What a reader is told, in paragraphs: what was wrong and what was done, then what is left. The customer is told what
 * it means, the office what it bills: work, time, refrigerant by weight.
 */
export function planParagraphs(facts: readonly NoteFact[], reader: Reader): readonly Paragraph[] {
  const by = factReader(facts);
  const words = WORDS[reader](reader === 'customer' ? createNaming(partsIn(facts)) : tradeNaming);
  const given: Given = { by, words, reader };
  return [FIRST, WHAT, NEXT]
    .map((plans) => plans.flatMap((plan) => plan(given)))
    .filter((paragraph) => paragraph.length > 0);
}

interface Given {
  readonly by: FactReader;
  readonly words: Words;
  readonly reader: Reader;
}

interface FactReader {
  one<Name extends NoteFact['fact']>(name: Name): FactOf<Name> | null;
  all<Name extends NoteFact['fact']>(name: Name): readonly FactOf<Name>[];
}

function factReader(facts: readonly NoteFact[]): FactReader {
  const all = <Name extends NoteFact['fact']>(name: Name): readonly FactOf<Name>[] =>
    facts.filter((each): each is FactOf<Name> => each.fact === name);
  return { all, one: (name) => all(name)[0] ?? null };
}

type Plan = (given: Given) => readonly Passage[];

interface Told {
  readonly fields?: readonly PassageField[];
  readonly slots?: Readonly<Partial<Record<keyof PassageSlots, string | null>>>;
}

function passage(
  { reader }: Given,
  kind: Passage['kind'],
  { fields = [], slots = {} }: Told,
): Passage {
  const there = Object.entries(slots).filter(([, text]) => text !== null && text !== '');
  return { kind, reader, fields, slots: Object.fromEntries(there) };
}

/** A memo word for word, but for who said it where that is who reads it. */
function quoted(memo: string, reader: Reader): string {
  const told = memo.trim().replace(/[.!?]+$/, '');
  const own = reader === 'customer' ? told.replace(SAYS_WHO, '') : told;
  return `"${own}"`;
}

const SAYS_WHO = new RegExp(
  `^(?:(?:the |my )?${SOMEBODY}|they|he|she) (?:says?|said|told (?:me|us)|reports|reported) (?:that )?`,
  'i',
);

const aim: Plan = (given) =>
  given.by.all('cameTo').map(({ all }) =>
    passage(given, 'aim', {
      slots: { aim: listed(all.map((agreed) => given.words.todo(agreed))) },
    }),
  );

const reason: Plan = (given) => {
  const { by, words, reader } = given;
  const complaint = by.one('calledFor');
  const [told, likely] = [by.all('cause'), by.one('likely')];
  const said = by.one('causeSaid');
  const [seen, byVoltage] = [by.one('seen'), by.one('byVoltage')];
  const slots = {
    complaint: complaint && quoted(withoutCall(complaint.memo), reader),
    cause: said
      ? quoted(said.words, 'office')
      : told.length > 0
        ? listed(told.map(({ cause }) => words.causes([cause])))
        : likely && words.causes(likely.causes),
    found: seen && words.found(seen.rows),
    suspects: byVoltage && words.suspects(byVoltage),
  };
  const fields: readonly PassageField[] =
    told.length > 0 || said ? ['told'] : likely ? ['likely'] : [];
  return Object.values(slots).every((text) => text === null)
    ? []
    : [passage(given, 'reason', { fields, slots })];
};

/** What such a fault does: the office knows. */
const meaning: Plan = (given) => {
  const { by, reader } = given;
  const [likely, seen] = [by.one('likely'), by.one('seen')];
  const [only, ...others] = likely?.causes ?? [];
  const [told, ...besides] = by.all('cause');
  // "When that happens" is of one thing.
  if (besides.length > 0) return [];
  const cause = told?.cause ?? (others.length === 0 ? (only ?? null) : null);
  const effect = effectOf(cause, seen?.rows ?? []);
  if (reader === 'office' || effect === null) return [];
  return [passage(given, 'meaning', { fields: [likely ? 'likely' : 'told'], slots: { effect } })];
};

const done: Plan = (given) => {
  const { by, words, reader } = given;
  const rows = by.one('done')?.rows ?? null;
  const time = reader === 'office' ? (by.one('onSite')?.time ?? null) : null;
  if (rows === null && by.one('noWork') === null) return [];
  return [
    passage(given, 'done', {
      fields: rows === null ? ['noWork'] : hasReason(given) ? ['following'] : [],
      slots: {
        work: rows && words.work(rows),
        time,
      },
    }),
  ];
};

const hasReason = (given: Given): boolean => reason(given).length > 0;

/** That none was moved is for who keeps the account. */
const refrigerant: Plan = (given) => {
  const { by, reader } = given;
  const moved = by.all('moved').map(({ account }) => {
    const { added, recovered, lost } = account;
    const kind = account.refrigerant ?? 'refrigerant of a kind not stated';
    const slots = {
      added: movedWords(added, account),
      recovered: movedWords(recovered, account),
      lost: movedWords(lost, account),
      kind,
    };
    return passage(given, 'refrigerant', { slots });
  });
  const none = reader === 'office' ? by.one('nothingMoved') : null;
  if (none === null) return moved;
  return [passage(given, 'refrigerant', { fields: [noneField(none.said)] })];
};

/** What was said to be none stands for more than what nobody spoke of. */
function noneField({ added, recovered }: FactOf<'nothingMoved'>['said']): PassageField {
  if (added && recovered) return 'noneEitherWay';
  return added ? 'noneAdded' : recovered ? 'noneRecovered' : 'noneMoved';
}

function movedWords(
  entries: readonly ReadingEntry[],
  { sums, added, recovered }: RefrigerantAccount,
): string | null {
  const [only, ...others] = entries;
  if (!only) return null;
  if (sums === null || entries.some(({ reading }) => amountOf(reading) === null)) {
    return 'an amount that was not weighed';
  }
  if (others.length === 0) return valueWritten(only.reading);
  const value = entries === added ? sums.in : entries === recovered ? sums.out : sums.lost;
  return weightText({ value, unit: sums.unit });
}

const charge: Plan = (given) => {
  const { by, reader } = given;
  const held = by.one('charge');
  if (held === null || reader === 'customer') return [];
  const { now, over, missing } = held;
  const against: PassageField =
    over === null
      ? 'noPlate'
      : over.value === 0
        ? 'atPlate'
        : over.value > 0
          ? 'overPlate'
          : 'underPlate';
  const isOff = over !== null && over.value !== 0;
  return [
    passage(given, 'charge', {
      fields: [against],
      slots: {
        charge: weightText(now),
        difference: isOff ? weightText({ ...over, value: Math.abs(over.value) }) : null,
        missing: missing && weightText(missing),
      },
    }),
  ];
};

const box: Plan = (given) => {
  const held = given.by.one('box');
  if (held === null) return [];
  const { was, now, change, set, against } = held;
  const isMoved = change === 'down' || change === 'up';
  const fields: readonly (PassageField | null)[] = [
    given.by.one('done') === null ? null : 'worked',
    change,
    against,
  ];
  const slots = {
    before: isMoved && was ? figureText(was) : null,
    after: figureText(now),
    set: set && against ? figureText(set) : null,
  };
  return [passage(given, 'box', { fields: fields.filter((field) => field !== null), slots })];
};

const product: Plan = (given) => {
  const read = given.by.all('product').map(({ was, now }) => {
    const [before, after] = [probedWords(was), probedWords(now)];
    const slots =
      before !== '' && after !== '' && before !== after
        ? { productBefore: before, productAfter: after }
        : { product: after === '' ? before : after };
    return passage(given, 'product', { slots });
  });
  const remarks = given.by.all('productSaid').map(({ memo }) => remarkOf(memo, given.reader));
  const said = passage(given, 'product', { slots: { remark: listed(remarks) } });
  return remarks.length === 0 ? read : [...read, said];
};

/** "42 °F (lettuce) and 44 °F (tuna)" */
const probedWords = (all: readonly Probed[]): string =>
  listed(
    all.map(({ amount, name }) =>
      name === null ? figureText(amount) : `${figureText(amount)} (${name})`,
    ),
  );

/** What they were told to do is said to them, and not quoted from what was said of them. */
function remarkOf(memo: string, reader: Reader): string {
  const advice = toldToDo(memo);
  if (advice === null) return quoted(memo, reader);
  return reader === 'customer' ? `our advice is ${advice}` : `the customer was told ${advice}`;
}

/** Told first of all: that it must stay off, and how it was left. */
const mustStayOff: Plan = (given) => {
  const { by, words } = given;
  if (by.one('notToBeSwitchedOn') === null) return [];
  const slots = { left: leftWordsOf(given), danger: words.danger };
  return [passage(given, 'left', { fields: ['off'], slots })];
};

const leftAsItIs: Plan = (given) => {
  const left = leftWordsOf(given);
  if (left === null || given.by.one('notToBeSwitchedOn') !== null) return [];
  return [passage(given, 'left', { slots: { left } })];
};

function leftWordsOf({ by, words }: Given): string | null {
  const open = by.one('left');
  return open && words.left(open.left);
}

const toDo: Plan = (given) => {
  const { by, words } = given;
  const [only, ...others] = by.one('toDo')?.all ?? [];
  if (!only) return [];
  if (others.length === 0) {
    const slots = { todo: words.todo(only.recommendation), ...timing(only) };
    return [passage(given, 'todo', { fields: ['single'], slots })];
  }
  const all = [only, ...others].map((made) => inFull(made, words));
  const todo = all.some((each) => each.includes(',')) ? all.join('; ') : listed(all);
  return [passage(given, 'todo', { fields: ['several'], slots: { todo } })];
};

/** Several stand in one list, each with its day and its reason. */
function inFull(made: Made, words: Words): string {
  const { when, because, purpose } = timing(made);
  const what = [words.todo(made.recommendation), when, purpose]
    .filter((piece) => piece !== null)
    .join(' ');
  return because === null ? what : `${what}, because ${because}`;
}

function timing(made: Made): Readonly<Record<'when' | 'because' | 'purpose', string | null>> {
  const { reason: why } = made.recommendation;
  const when = whenOf(made) === '' ? null : whenOf(made);
  const isPurpose = why !== undefined && /^(to|with) /.test(why);
  if (why !== undefined && isCharge(made)) return { when, because: null, purpose: `(${why})` };
  return {
    when,
    because: why !== undefined && !isPurpose ? why : null,
    purpose: why !== undefined && isPurpose ? why : null,
  };
}

const comeBack: Plan = (given) =>
  given.by.all('comeBack').map(({ made }) => passage(given, 'comeBack', { slots: timing(made) }));

const again: Plan = (given) => {
  const { by, words } = given;
  const [found, undone] = [by.one('foundBefore'), by.one('notDoneSince')];
  const on = found?.on ?? undone?.on;
  if (on === undefined) return [];
  const slots = {
    date: dateWords(on),
    foundBefore: found && words.found(found.rows),
    undone: undone && listed(undone.all.map(({ recommendation }) => words.todo(recommendation))),
  };
  return [passage(given, 'again', { slots })];
};

const FIRST: readonly Plan[] = [mustStayOff];
const WHAT: readonly Plan[] = [aim, reason, meaning, done, refrigerant, charge, box, product];
const NEXT: readonly Plan[] = [leftAsItIs, again, toDo, comeBack];

/** In the order that they are named in. */
function partsIn(facts: readonly NoteFact[]): readonly PartId[] {
  const of = (fact: NoteFact): readonly (PartId | null)[] => {
    switch (fact.fact) {
      case 'seen':
      case 'foundBefore':
      case 'done':
        return fact.rows.map(({ part }) => part);
      case 'left':
        return fact.left.map(({ part }) => part);
      case 'cameTo':
        return fact.all.map(({ part }) => part);
      case 'toDo':
      case 'notDoneSince':
        return fact.all.map(({ recommendation: { part } }) => part);
      case 'comeBack':
        return [fact.made.recommendation.part];
      default:
        return [];
    }
  };
  return facts.flatMap(of).filter((part) => part !== null);
}
