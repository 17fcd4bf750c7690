import { LEAD_TO_SITE } from '../names/site-names.ts';
import { knownName, type KnownNames } from '../names/known-names.ts';
import { equipmentNamedIn } from '../questions/named-in.ts';
import { startsClause } from '../words/clause-start.ts';
import { type Frame, heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { equipmentFact, equipmentId, spanIn } from '../slots.ts';
import type { EquipmentId } from '../../terms/names.ts';
import type { Command, Fact } from '../utterance.ts';

type NamedFact = Extract<Fact, { fact: 'unit' | 'site' }>;

const LIST_OF = { unit: 'units', site: 'sites' } as const satisfies Record<
  NamedFact['fact'],
  keyof KnownNames
>;

function knownFact(fact: NamedFact['fact'], said: unknown, frame: Frame): NamedFact | null {
  if (typeof said !== 'string') return null;
  const value = knownName(LIST_OF[fact], said, frame.context.names);
  return value === null ? null : { fact, value, words: frame.wordsOf(frame.span) };
}

/** "Gaskets on the walk-in": by "on" alone only where a clause begins, or behind the site. */
const knownUnit: Means = (tags, frame) => {
  const { from } = frame.span;
  const isOfElse =
    /^on\b/i.test(frame.wordsOf(frame.span)) &&
    !startsClause(frame) &&
    !LEAD_TO_SITE.test(frame.wordsOf({ from: 0, to: from }));
  return isOfElse ? null : known('unit')(tags, frame);
};

const known =
  (fact: NamedFact['fact']): Means =>
  (tags, frame) => {
    const found = knownFact(fact, tags[fact], frame);
    return found === null ? null : { facts: [found] };
  };

const NEXT: Command = { do: 'newVisit' };

/** "Back on the prep table": from here on that one is told of, and not the one that this visit is of. */
const isOther = (name: string, { context: { unitTold } }: Frame): boolean =>
  unitTold !== null && unitTold.toLowerCase() !== name.toLowerCase();

const onToKnown: Means = (tags, frame) => {
  const found = knownFact('unit', tags['unit'], frame);
  if (found === null || !isOther(found.value, frame)) return null;
  const equipment = equipmentNamedIn(` ${found.value.toLowerCase()} `.replaceAll('-', ' '));
  const kind = equipmentFact(equipment === null ? {} : { equipment }, found.words);
  return { commands: [NEXT], facts: kind === null ? [found] : [kind, found] };
};

/** "Now the undercounter", where another kind of unit was told of until now. */
const nowOfKind: Means = (tags, frame) => {
  const kind = equipmentId(tags['equipment']);
  const { equipment } = frame.context;
  const isNext = kind !== null && equipment !== null && (equipment !== kind || isCalledElse(frame));
  if (!isNext) return null;
  const before = BACK.test(frame.wordsOf(frame.span)) ? calledBefore(kind, frame) : null;
  return nextCalled(before ?? calledIn(frame.wordsOf(frame.span)), tags, frame);
};
const BACK = /\bback\b/i;

/** "Back to the walk-in": by the name that the newest of its kind has, where that says no more than the kind. */
function calledBefore(kind: EquipmentId, { context: { names } }: Frame): string | null {
  const isOfKind = (name: string): boolean =>
    equipmentNamedIn(` ${name.toLowerCase()} `.replaceAll('-', ' ')) === kind;
  return names.units.find(isOfKind) ?? null;
}
const isCalledElse = (frame: Frame): boolean => isOther(calledIn(frame.wordsOf(frame.span)), frame);

const nextKnown: Means = (tags, frame) => {
  const found = knownFact('unit', tags['unit'], frame);
  return found === null ? null : { commands: [NEXT], facts: [found] };
};

/** A name that nobody knows yet is kept in the words it was said in. */
const nextNamed: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  const value = span === null ? '' : frame.wordsOf(span).replace(/^(?:the|a|an)\s+/i, '');
  if (value === '') return null;
  // "New unit, same store"
  if (SAME_SITE.test(value)) return { commands: [NEXT] };
  const fact: Fact = { fact: 'unit', value, words: frame.wordsOf(frame.span) };
  return { commands: [NEXT], facts: [fact] };
};

const SAME_SITE =
  /^(?:at )?(?:the )?same (?:store|site|place|customer|building|address|location|stop|kitchen)$/i;

/** "Next unit's a three door reach in": what it is, which is no name. */
const nextIsA: Means = (tags, frame) => {
  const equipment = equipmentFact(tags, frame.wordsOf(frame.span));
  return equipment === null ? null : { commands: [NEXT], facts: [equipment] };
};

/** Called by what it is, and where it stands. */
const nextOfKind: Means = (tags, frame) =>
  nextCalled(calledIn(frame.wordsOf(frame.span)), tags, frame);

function nextCalled(value: string, ...[tags, frame]: Parameters<Means>): Meaning {
  const words = frame.wordsOf(frame.span);
  const kind = equipmentFact(tags, words);
  const unit: Fact = { fact: 'unit', value, words };
  return { commands: [NEXT], facts: kind === null ? [unit] : [kind, unit] };
}
const TO_NAME =
  /^.*?\b(?:unit|to|start(?:ing)? (?:in )?(?:on|with)|now(?: for)?|back (?:on|at))\s+(?:(?:the|a|an|their|our)\s+)?/i;
const FOR_A_WHILE =
  /,? (?:now|for (?:a|one) \w+|again|(?:i|we) forgot .*|one (?:more|last) thing)$/i;
/** Without what leads to the name, and without how long and what for one goes back to it. */
function calledIn(words: string): string {
  const name = words.replace(TO_NAME, '');
  const shorter = name.replace(FOR_A_WHILE, '');
  return shorter === name ? name : calledIn(shorter);
}

const GOING =
  '[(let us|let me|i will|we are|i am)] [(go|going|head|heading|jump|jumping|hop|run|running|come|coming|circle|circling)]';
const WHILE =
  '[for (a|one) (second|sec|minute|min|moment|bit)] [[<pause>] ((i|we) forgot (something|one thing|a thing|one|to tell you something)|one (more|last) thing)]';

/** Sites and units by their names: those of earlier visits wherever they are said, new ones where they must be. */
export const NAME_RULES: readonly Rule[] = [
  heardRule(
    '(at|~(here|back|over|i am|we are|i am here|i am back|working|job is|the job is|site is|the site is|on site|just got here) at|~site is|~the site is|~this is) [the] <knownSite>',
    known('site'),
  ),
  rule('[the] <knownSite>', known('site'), { alone: true }),
  rule(
    `[(ok|so|and|alright)] ([(i am|we are|let us go)] [now] (on|at|working on|looking at|moving [on] to|over to|on to|now [for])|${GOING} back (on|at|to|over to|over at)) [the] <knownUnit> [(now|again)] ${WHILE}`,
    onToKnown,
    { alone: true, unheard: true },
  ),
  heardRule(
    '(this is|on|~(it is|unit is|the unit is|working on|i am on|we are on|i am at|now|i am looking at|looking at|back on|back at|moving to|over to)) [(the|~a|~their)] <knownUnit>',
    knownUnit,
  ),
  rule('[the] <knownUnit>', known('unit'), { alone: true }),
  heardRule('next unit [(is|~is the|~the)] <knownUnit>', nextKnown),
  rule(
    '(next|new) (unit|one) is (a|an) <count:doors> (door|section) (<equipment>|<doored>)',
    nextIsA,
    {
      unheard: true,
      examples: ['next unit is a three door reach in'],
    },
  ),
  rule('(next|new) unit is [called] (<rest>|<clause>)', nextNamed, {
    yields: 'name',
    examples: ['next unit is called prep table two'],
  }),
  rule('(next|new) unit <pause> <rest>', nextNamed),
  rule(
    '((next|new) unit|(switch|switching|move|moving) [(on|over)] to) [(the|a|an|their|our)] <equipment> [(in|by|at|on|near|under|behind|next to|across from|out) <clause>]',
    nextOfKind,
    { examples: ['switch to the prep table', 'new unit walk in freezer'] },
  ),
  rule(
    '[(i am|we are)] [now] (starting [in] on|~~start [in] on|~~(start|starting) with|going over to|on to) [(the|a|an|their)] <equipment>',
    nextOfKind,
    {
      unheard: true,
      alone: true,
      examples: ['starting on the walk in freezer'],
    },
  ),
  rule(
    `[(ok|alright|and|so)] (now [(for|to|over to)]|${GOING} back (on|at|to|over to|over at)) [(the|their)] <equipment> [(now|again)] ${WHILE}`,
    nowOfKind,
    { unheard: true, alone: true, examples: [] },
  ),
];
