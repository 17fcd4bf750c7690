import { Grammar } from '../../grammar/compile.ts';
import { Matcher } from '../../grammar/match.ts';
import type { PartId, WorkKindId } from '../../terms/names.ts';
import { HOLES } from '../holes.ts';
import { knownName } from '../names/known-names.ts';
import { type Frame, heardRule, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId, workId } from '../slots.ts';
import { tokenise } from '../words/tokenise.ts';
import type { Tags } from '../../grammar/nodes.ts';

/** A part that somebody carries under a name of its own, and what kind of part that is. */
interface NamedPart {
  readonly called: string;
  readonly part: PartId | null;
}

const kinds = new Map<string, PartId | null>();

/** The part that the name ends with, or holds: a "Copperline 012 contactor" is a contactor. */
function kindOf(name: string): PartId | null {
  const known = kinds.get(name);
  if (known !== undefined) return known;
  const kind = longestPart(name);
  kinds.set(name, kind);
  return kind;
}

const GRAMMAR = new Grammar();
const PART = HOLES['part'];
const PARTS = PART === undefined ? null : GRAMMAR.compile(PART);

function longestPart(name: string): PartId | null {
  if (PARTS === null) return null;
  const tokens = tokenise(name);
  const matcher = new Matcher(GRAMMAR, tokens);
  const found = tokens.flatMap((_, start) =>
    matcher
      .run(PARTS, start)
      .map(({ end, tags }) => ({ start, end, part: partId(tags[0]?.['part']) })),
  );
  const [last] = found.toSorted((one, other) => other.end - one.end || one.start - other.start);
  return last?.part ?? null;
}

function namedIn(tags: Tags, { context }: Frame): NamedPart | null {
  const said = tags['knownPart'];
  const called = typeof said === 'string' ? knownName('parts', said, context.names) : null;
  return called === null ? null : { called, part: kindOf(called) };
}

const did =
  (kind?: WorkKindId): Means =>
  (tags, frame) => {
    const named = namedIn(tags, frame);
    const work = kind ?? workId(tags['work']);
    if (named === null || work === null) return null;
    // What goes in from the van takes an old one's place.
    const done = work === 'add' ? 'replace' : work;
    return { work: [{ did: done, ...named, words: frame.wordsOf(frame.span) }] };
  };

const todo =
  (kind?: WorkKindId): Means =>
  (tags, frame) => {
    const named = namedIn(tags, frame);
    const work = kind ?? workId(tags['work']);
    if (named === null || work === null) return null;
    return { recommendations: [{ do: work, ...named, words: frame.wordsOf(frame.span) }] };
  };

const found: Means = (tags, frame) => {
  const part = namedIn(tags, frame)?.part ?? null;
  const state = stateId(tags['state']);
  if (part === null || state === null) return null;
  return { findings: [{ part, state, words: frame.wordsOf(frame.span) }] };
};

const I = '[(i|we|~just|~i just|~i have|~we have|~went ahead and|~i also|~and|~then)]';
const PUT_IN =
  '(put in|installed|~(put on|mounted|swapped in|dropped in|threw in|stuck in|wired in|fitted|hung|brazed in|sweated in|used|ran))';
const NEW = '[(new|~brand new|~replacement|~spare)]';
const A = '[(a|the|~an|~another|~my|~our|~one of (my|the|our))]';
const NEEDS =
  '([(it|this|they|this one|the unit|unit|system)] (needs|need|will need|is going to need|could use)|[(i|they|we|you)] (recommend|should (have|get|put in|install)|need to (put in|install|get)|will need))';

/** Parts by the names that somebody gave them: what was put in, what is needed, and how one was found. */
export const NAMED_PART_RULES: readonly Rule[] = [
  heardRule(`${I} ${PUT_IN} ${A} ${NEW} <knownPart> [~(in|on|in it|there)]`, did('replace')),
  rule(`${I} <done> ${A} [(new|old|bad)] <knownPart>`, did()),
  rule(
    `${I} (put|got|stuck|threw|dropped) ${A} ${NEW} <knownPart> (in|on|back in)`,
    did('replace'),
  ),
  rule(
    `${I} (swapped|changed|replaced|switched) <the> [(old|bad)] [<part>] [out] (for|with|to) ${A} ${NEW} <knownPart>`,
    did('replace'),
  ),
  rule(
    `${A} ${NEW} <knownPart> (is|has been|was|got) (in|installed|put in|on|put on|mounted|wired in|replaced)`,
    did('replace'),
  ),
  rule(`${NEEDS} ${A} ${NEW} <knownPart>`, todo('replace')),
  rule(
    `[(i|we|they)] [(will|need to|have to|should|going to|am going to|are going to)] order ${A} ${NEW} <knownPart>`,
    todo('order'),
  ),
  rule(`(they should|recommend|we should|you should) <todo> ${A} <knownPart>`, todo()),
  rule(`${A} <knownPart> (is|was|are|looks) <very> <state>`, found),
  rule(`${A} <knownPart> needs <working>`, todo()),
];
