import { fillLists } from '../../grammar/fill-lists.ts';
import {
  choice,
  named,
  type Node,
  optional,
  type RuleNode,
  sequence,
  unheard,
} from '../../grammar/nodes.ts';
import { phrasesOf } from '../../grammar/phrases.ts';
import { printAbnf } from '../../grammar/print-abnf.ts';
import { type Again, printJsgf, printPublicRules } from '../../grammar/print-jsgf.ts';
import type { Width } from '../../grammar/print-rules.ts';
import { parseShape } from '../../grammar/shape.ts';
import { startersOf } from '../../grammar/starters.ts';
import { vocabularyOf } from '../../grammar/vocabulary.ts';
import { AMOUNT } from '../numbers/amounts.ts';
import { ASIDE_RULES } from '../talk/asides.ts';
import type { Expectation } from '../context.ts';
import { ERRAND_RULES } from '../talk/errands.ts';
import { heardLists, type KnownNames, NO_NAMES } from '../names/known-names.ts';
import { HOLES } from '../holes.ts';
import type { Rule } from '../rule.ts';
import { RULES } from '../rules.ts';
import { TALK_RULES } from '../talk/talk.ts';
import { tokenise } from '../words/tokenise.ts';
import { isWritten } from '../vocabulary/written-words.ts';

const { part: PART = choice() } = HOLES;

/** Many sentences in one breath, or one answer to a yes or no question. */
const AGAIN: Record<Expectation, Again> = {
  anything: 'many',
  number: 'many',
  yesOrNo: 'once',
};

/** JSGF text of what is likely said next, known names included: as much as a small recogniser bears. */
export function recogniserGrammar(expectation: Expectation, names: KnownNames = NO_NAMES): string {
  return printJsgf('gloveside', heardRoot(expectation, names), AGAIN[expectation]);
}

/** The same in the ABNF form of SRGS, for recognisers that take that. */
export function recogniserGrammarAbnf(
  expectation: Expectation,
  names: KnownNames = NO_NAMES,
): string {
  return printAbnf(heardRoot(expectation, names), AGAIN[expectation]);
}

/** A word that the tokeniser would change is understood by nobody. */
const isToken = (word: string): boolean => tokenise(word)[0]?.text === word;

const WIDE: Width = { unheard: 0.05, isWritten: (word) => isWritten(word) || !isToken(word) };

/**
 * JSGF text of everything that may be said next and can be heard, what is likely included; names apart, which only a device
 * knows. For recognisers that bear forty times as much.
 */
export function rareGrammar(expectation: Expectation): string {
  const rules = expectation === 'anything' ? TOLD : heardRules(expectation);
  const either = (alone: boolean): Node =>
    choice(...rules.filter((rule) => rule.alone === alone).map(({ node }) => bodyOf(node)));
  return printPublicRules(
    'rarely',
    [
      {
        root: named('rare', sequence(BEFORE, either(false), AFTER)),
        again: AGAIN[expectation],
      },
      { root: named('alone', sequence(BEFORE, either(true), AFTER)), again: 'once' },
    ],
    WIDE,
  );
}

/**
 * Talk that means nothing is left out: as often as it is said, something else sounds like it ("two ten new door gasket"
 * for "put in a new door gasket").
 */
const TALK: ReadonlySet<Rule> = new Set([...TALK_RULES, ...ASIDE_RULES, ...ERRAND_RULES]);
const TOLD = RULES.filter((rule) => !TALK.has(rule));

/** What may stand between sentences and changes none: of the lines that were not heard for one word it was every other. */
const BEFORE = optional(
  unheard(
    parseShape(
      'and|so|ok|ok so|and so|but|then|and then|also|well|alright|yeah|yep|hey|now|my|the',
    ),
  ),
);
const AFTER = optional(
  unheard(
    parseShape('now|here|too|again|right now|today|in here|in there|on this|on it|so far|even'),
  ),
);

/**
 * A sentence of the rare grammar alone is less likely by seven nats: of 0.05, 0.01, 0.001, 0.0001 and 0.000003 the
 * largest beside which likely sentences are heard as without it, and as many rare ones as with any larger.
 */
export const RARE_WEIGHT = 0.001;

/** A grammar with its weight beside others. */
export interface HeardGrammar {
  readonly text: string;
  readonly weight: number;
}

/** What may be said next, for recognisers that bear all of it; those that do not go by the weights. */
export const heardGrammars = (
  expectation: Expectation,
  names: KnownNames = NO_NAMES,
): readonly HeardGrammar[] => [
  { text: recogniserGrammar(expectation, names), weight: 1 },
  { text: rareGrammar(expectation), weight: RARE_WEIGHT },
];

/** Every word that the recogniser's likely grammar holds. */
export function vocabulary(): readonly string[] {
  const states: readonly Expectation[] = ['anything', 'number', 'yesOrNo'];
  return vocabularyOf(states.map((state) => heardRoot(state, NO_NAMES)));
}

/** The rules heard when this is expected. */
export function heardRules(expectation: Expectation): readonly Rule[] {
  return RULES.filter((rule) => rule.heardWhen.includes(expectation));
}

/**
 * A recogniser writes out every reference to a rule in full, and numbers are the largest rule by far: so all
 * that may stand before a value is one choice, all that may stand behind it another, and the value is named
 * once between them. That hears a little more than the rules say, and loads many times faster.
 *
 * Values with nothing before them are a group of their own, since a number that may stand alone anywhere is
 * what noise turns into: "it's a two door reach in" was heard as "fifteen bar eight ten on".
 */
function heardRoot(expectation: Expectation, names: KnownNames): RuleNode {
  const rules = heardRules(expectation);
  const around = rules.flatMap((rule) => aroundAmount(rule.node) ?? []);
  const groups = [
    around.filter(({ before }) => !startersOf(before).empty),
    around.filter(({ before }) => startersOf(before).empty),
  ];
  const others = rules.filter((rule) => aroundAmount(rule.node) === null).map((rule) => rule.node);
  const valued = groups.filter((group) => group.length > 0).map(joinAround);
  const body = choice(...valued, ...withSharedParts(others.map(bodyOf)));
  return named('said', fillLists(body, heardLists(names)));
}

function joinAround(group: readonly Around[]): Node {
  return sequence(
    choice(...group.map(({ before }) => before)),
    AMOUNT,
    choice(...group.map(({ after }) => after)),
  );
}

interface SplitAtPart {
  readonly before: readonly Node[];
  readonly after: readonly Node[];
}

/**
 * The names of parts are the next largest: what begins alike up to one shares it, and so does what ends with one. That
 * hears the same, and loads in four fifths of the time.
 */
function withSharedParts(bodies: readonly Node[]): readonly Node[] {
  const kept: Node[] = [];
  const ended: Node[] = [];
  const begun = new Map<Node, Node[]>();
  for (const body of bodies) {
    const split = splitAtPart(body);
    const [only, ...more] = split?.before ?? [];
    if (split === null || only === undefined) kept.push(body);
    else if (split.after.length === 0) ended.push(sequence(...split.before));
    else if (more.length > 0) kept.push(body);
    else begun.set(only, [...(begun.get(only) ?? []), sequence(...split.after)]);
  }
  const sharing = [...begun].map(([before, afters]) => sequence(before, PART, choice(...afters)));
  return ended.length === 0
    ? [...kept, ...sharing]
    : [...kept, ...sharing, sequence(choice(...ended), PART)];
}

/** `null` where it names no part. */
function splitAtPart(body: Node): SplitAtPart | null {
  const parts = partsInTurn(body);
  const at = parts.indexOf(PART);
  if (at === -1) return null;
  const after = parts.slice(at + 1);
  const isHeard = phrasesOf(sequence(...after)).length > 0;
  return { before: parts.slice(0, at), after: isHeard ? after : [] };
}

const partsInTurn = (node: Node): readonly Node[] =>
  node.kind === 'sequence' ? node.parts.flatMap(partsInTurn) : [node];

interface Around {
  readonly before: Node;
  readonly after: Node;
}

/** The two sides of the rule's one value; `null` when it has none. */
function aroundAmount(node: Node): Around | null {
  const body = bodyOf(node);
  if (body.kind !== 'sequence') return null;
  const at = body.parts.findIndex((part) => part === AMOUNT);
  if (at === -1) return null;
  return {
    before: sequence(...body.parts.slice(0, at)),
    after: sequence(...body.parts.slice(at + 1)),
  };
}

function bodyOf(node: Node): Node {
  return node.kind === 'rule' ? node.node : node;
}
