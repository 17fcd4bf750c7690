import type { QuantityId } from '../../terms/quantities.ts';
import { confusables } from '../numbers/confusables.ts';
import { isDoubtful } from '../settle/doubts.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn } from '../numbers/measure.ts';
import { type Frame, heardCommand, type Means, type Rule, rule } from '../rule.ts';
import { quantityId, tagsIn } from '../slots.ts';
import {
  opensSentence,
  startsClause,
  wordBefore,
  wordBehind,
  wordsBehind,
} from '../words/clause-start.ts';
import { holdsFigure, holdsNumber } from '../words/own-reading.ts';
import { startsWithName } from '../questions/named-in.ts';
import { WordSet } from '../words/word-set.ts';
import { amendedReading, amendLast, amendNamed } from './amended.ts';
import { command } from './command.ts';

const undo: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null && (pointsOn(frame) || OVER_A_PAUSE.test(frame.wordsOf(frame.span))))
    return null;
  return command(quantity === null ? { do: 'undo' } : { do: 'undo', quantity });
};

/** A line that is taken out is no reading. */
const undoNamedOut: Means = (tags, frame) =>
  LINE.test(frame.wordsOf(frame.span)) ? null : undo(tags, frame);
const LINE = /\bline (?:out|back)$/i;

const undoValue: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const { value } = amountIn(tags);
  if (quantity !== null && tellsAnew({ quantity, value }, frame)) return null;
  if (value === null) return undo(tags, frame);
  if (quantity === null && OVER_A_PAUSE.test(frame.wordsOf(frame.span))) return amend(tags, frame);
  return command({ do: 'undo', ...(quantity === null ? {} : { quantity }), value });
};

/** "Nix that idea", "scratch my last paycheck": of what is named behind them nothing was recorded. */
function pointsOn(frame: Frame): boolean {
  const words = frame.wordsOf(frame.span);
  const next = wordBehind(frame);
  if (next === '' || !/\b(?:that|last|previous|undo|said|told you|gave you)$/i.test(words))
    return false;
  if (/^undo$/i.test(words)) return !holdsNumber(next);
  return !BEGINS_ANEW.hasWord(next) && !holdsNumber(next) && !startsWithName(` ${next} `);
}
/** "Scratch that, one eighteen" */
const OVER_A_PAUSE = /\b(?:that|the|last)\s*[,;.—-]/i;
/** What may follow at once where a recogniser writes no comma. */
const BEGINS_ANEW = new WordSet(
  'i we it she he they the a an my our this these there here that make change put call is was should will not no nope and ' +
    'but or so then now actually sorry please wait hold hang let correct correction one ok okay what how why i am again ' +
    'too also as add added got for on of from first',
);

/** "Head's not two hundred": of what a meter reads, "the fan's not one fifteen" takes back nothing. */
const undoNamed: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  return quantity === null || isElectrical(quantity) ? null : undoValue(tags, frame);
};

/**
 * "Scratch that, head one ninety" tells a new value behind its comma, and without it as well where recognisers write none;
 * but the head that was said to be 190 is taken back.
 */
function tellsAnew(
  { quantity, value }: { readonly quantity: QuantityId; readonly value: number | null },
  frame: Frame,
): boolean {
  const words = frame.wordsOf(frame.span);
  if (/\b(?:that|it)\s*[,;.—-]/i.test(words)) return true;
  const { context } = frame;
  const known =
    quantity === 'headPressure' || quantity === 'suctionPressure' ? context[quantity] : null;
  return /^\w+ (?:back )?that\b/i.test(words) && known?.value !== value;
}

/** As far off as a doubtful reading it is asked about like one: nothing changes until it is confirmed. */
export const amend: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const quantity = quantityId(tags['quantity']);
  const amended = amendedReading(quantity ?? frame.context.lastQuantity, amount, frame);
  if (amount.value !== null && amended !== null && isDoubtful(amended, frame.context)) {
    return { readings: [amended] };
  }
  const found = quantity === null ? amendLast(amount, frame) : amendNamed(quantity, amount, frame);
  return found === null ? null : command(found);
};

/** "It should be thirty six", behind a box at fifty four, may tell what it ought to be: asked, as where it is named. */
const amendOrAsk: Means = (tags, frame) => {
  const { lastQuantity } = frame.context;
  const words = frame.wordsOf(frame.span);
  // "Should be about twelve and a half": so much it ought to be.
  if (amountIn(tags).hedged && /^(?:(?:it|that) )?should be\b/i.test(words))
    return { remarks: [words] };
  const isOpen = /^it should be\b/i.test(words) && lastQuantity !== null;
  const amended =
    isOpen && !isElectrical(lastQuantity)
      ? amendedReading(lastQuantity, amountIn(tags), frame)
      : null;
  return amended === null ? amend(tags, frame) : { doubts: [{ ...amended, why: 'expected' }] };
};

/** "I make the head twelve bar" tells what one reads. */
const amendUnlessTold: Means = (tags, frame) =>
  /^(?:i|we)$/i.test(wordBefore(frame)) ? null : amend(tags, frame);

/** "not fifteen, fifty": the second number is meant. */
export const amendNot: Means = (tags, frame) => {
  const right = tagsIn(tags['right']);
  return right === null ? null : amend({ ...right, ...pick(tags) }, frame);
};

/** "Twenty four across the low pressure switch, tank weight eighteen pounds" */
const isToldToUs = (frame: Frame): boolean =>
  !/^switch\b/i.test(frame.wordsOf(frame.span)) || startsClause(frame);

/** "That's not head, that's suction": what was kept under the wrong name is taken back, and asked about under the right one. */
const misnamed: Means = (tags, frame) => {
  const wrong = quantityId(tags['quantity']);
  const right = quantityId(tagsIn(tags['right'])?.['quantity']);
  if (wrong === null || right === null || wrong === right) return null;
  const { context, span } = frame;
  const known = wrong === 'headPressure' || wrong === 'suctionPressure' ? context[wrong] : null;
  const undone = command({ do: 'undo', quantity: wrong });
  const isPressure = right === 'headPressure' || right === 'suctionPressure';
  if (known === null || !isPressure) return undone;
  const words = frame.wordsOf(span);
  const { value, unit } = known;
  const asked = { quantity: right, value, unit, unitFrom: 'said', place: null, words } as const;
  return { ...undone, doubts: [{ ...asked, why: 'expected' }] };
};

/** "Wrong hose, swap those two": what was told of each side is the other's. */
const swapped: Means = (_tags, frame) => {
  const { headPressure, suctionPressure } = frame.context;
  if (headPressure === null || suctionPressure === null)
    return { remarks: [frame.wordsOf(frame.span)] };
  return {
    commands: [
      { do: 'amend', quantity: 'headPressure', ...suctionPressure },
      { do: 'amend', quantity: 'suctionPressure', ...headPressure },
    ],
  };
};

/** Without a pause between them, "not fifteen fifty" is two numbers only where one is misheard as the other, or lies beside it. */
const amendNear: Means = (tags, frame) => {
  const wrong = amountIn(tagsIn(tags['wrong']) ?? {}).value;
  const right = amountIn(tagsIn(tags['right']) ?? {}).value;
  if (wrong === null || right === null || wrong === right) return null;
  if (/[,;:.—]\s/.test(frame.wordsOf(frame.span))) return null;
  const isNear = Math.abs(wrong - right) < Math.min(wrong, right) * NEAR;
  const areLong = String(wrong).length > 2 && String(wrong).length === String(right).length;
  return confusables(wrong).includes(right) || (isNear && areLong) ? amendNot(tags, frame) : null;
};
/** Ours: further apart they are one long number. */
const NEAR = 0.15;

function pick(tags: Parameters<Means>[0]): Parameters<Means>[0] {
  const quantity = tags['quantity'];
  return quantity === undefined ? {} : { quantity };
}

const SCRAP =
  '(scratch|scrap|strike|delete|forget|disregard|discard|reject|nix|ditch|x out|axe|erase|ignore|cancel|undo|drop|lose|kill|get rid of)';
const ENTRY = '(one|reading|number|value|entry)';
/** What is taken back by pointing at it. */
const TAKEN_BACK = `((scratch|strike|delete|forget|disregard|discard|reject|nix|ditch|x out|axe) (that|it)|(cancel|erase|remove|get rid of|ignore) that|(delete|nix|ditch) last|(${SCRAP}|remove|(wipe|throw|take) out) (that|the|my) (last|previous) [(${ENTRY}|thing)]|${SCRAP} that ${ENTRY}|(undo|delete|scratch|erase|cancel) the (${ENTRY}|thing)|(forget|scratch|strike|ignore|disregard|nix|erase) ((that|the) last (bit|part) [i said]|(what|everything) (i|we) [just] (said|told you|gave you)))`;

/** What takes back something of ours where a sentence begins, and anything else where it goes on: "you can't take it back". */
const MEANS_ANYTHING =
  /^(?:forget|ignore|never|take|drop|lose|kill|throw|toss|clear|remove|delete|cancel|erase|leave)\b/i;
const NOT_TO_BE = /^(?:not|never|ever|nobody|cannot|wish|would|could)$/i;
/** "I'll take it back to the shop" */
const GOES_ON = /^(?:to|tomorrow|later|with|home|when|if|how|because|yourself)$/;

function takesBack(frame: Frame): boolean {
  if (NOT_TO_BE.test(wordBefore(frame))) return false;
  if (!MEANS_ANYTHING.test(frame.wordsOf(frame.span))) return true;
  if (GOES_ON.test(wordBehind(frame))) return false;
  return startsClause(frame) || LEADS_TO_UNDO.test(wordBefore(frame));
}

const LEADS_TO_UNDO =
  /^(?:to|me|please|i|no|wait|sorry|actually|can|could|you|gloveside|just|us|that|right|oops|up|bad)$/i;

/** "Oops, dropped my glove" takes back nothing. */
const isOurMistake = (frame: Frame): boolean => {
  const { to } = frame.span;
  return OF_WHAT_WAS_SAID.test(frame.wordsOf({ from: to, to: to + 2 }));
};
const OF_WHAT_WAS_SAID =
  /^(?:$|(?:that|take|scratch|no|not|wrong|undo|delete|sorry|wait|make|my)\b|i (?:said|meant|misspoke|gave|misread))/i;

/**
 * "Superheat's five, that's not right" is said of the machine, unless something is put right behind it. Alone it may be said
 * of the machine as well: nothing that was kept is lost by it, and what it should be is told.
 */
const notRight: Means = (tags, frame) => {
  if (frame.context.asksYes) return command({ do: 'no' });
  if (
    isAlone(frame) &&
    /^that(?:['’]s| is|(?: is)?n['’]t| ain['’]t)? (?:not )?right$/i.test(frame.wordsOf(frame.span))
  )
    return { questions: [{ ask: 'compare', about: null }] };
  const isOfMachine =
    /^that(?:'s| is) not right/i.test(frame.wordsOf(frame.span)) &&
    holdsFigure(frame.wordsOf({ from: 0, to: frame.span.from }));
  return isOfMachine ? { correction: true } : { ...undo(tags, frame), unlessTold: true };
};

const isAlone = (frame: Frame): boolean => opensSentence(frame) && wordsBehind(frame, 1) === '';

/** Taking something back, or putting it right. */
export const CHANGE_COMMANDS: readonly Rule[] = [
  heardCommand(
    `(take that back|undo [that]|~${TAKEN_BACK}|~take it back|~undo (it|last|the last one)|~do not (write|put|log|record|count|keep|note) (that|it|that one) [(down|in|in there|in the note)]|~(leave|take) (that|it|that one) out [of (it|there|the note)]|~i misspoke|~take (the|that|my) last (reading|number|one|value) (back|out|off)|~[(you can|go ahead and)] (throw|toss) (that|the|my) [last] [(one|number|reading)] (out|away)|~(wipe|knock|drop) (that|the|my) [last] [(one|number|reading)] (out|off)|~throw out (that|the) last (one|number|reading)|~[no] (that|this|it) (was|is) [(for|of|from|on|off)] (the other|the wrong|a different|another) (unit|one|box|machine|system|gage)|~[no] wrong (unit|one|gage|box)|~never mind (that|it) [last] [(one|reading|number)]|~never mind the last one|~(that|the|my) last [(one|reading|number)] (is|was) (wrong|off|not right|a mistake)|~(that was|i made) a mistake|~i (said|told you|gave you|read) (that|it) wrong)`,
    undo,
    { only: takesBack, examples: ['take that back', 'undo', 'scratch that'] },
  ),
  rule(
    '[(no|nope|~~nah|no no|oops|sorry|wait|hold on)] (that is not right|that (is|was) wrong|that was not right)',
    notRight,
    { apart: true, examples: ['that is not right'] },
  ),
  rule('oops', (tags, frame) => ({ ...undo(tags, frame), unlessTold: true }), {
    only: isOurMistake,
    examples: ['oops'],
  }),
  rule(
    '(take back|undo|scratch|delete|remove|forget|cancel|erase|clear) [(the|my|that)] [last] <quantity> [(reading|number|value)]',
    undo,
    { only: takesBack, examples: ['undo the suction'] },
  ),
  rule(
    '(take back|undo|scratch|delete|remove|forget|cancel|erase) [(the|my|that)] [<quantity>] <amount>',
    undoValue,
    { only: takesBack, examples: ['scratch the one ninety'] },
  ),
  rule(
    '(take out|get rid of|drop|lose|nix|strike|ditch|toss|throw out|wipe|knock out|kill|ignore|disregard) [(the|my|that)] [last] <quantity> (reading|number|value|figure|one)',
    undo,
    { examples: ['get rid of the suction reading'] },
  ),
  rule(
    '(take out|get rid of|drop|lose|nix|strike|ditch|toss|throw out|wipe|knock out|kill|ignore|disregard) (the|my|that) [<quantity>] <amount> [(reading|number|value|on the <quantity>|for the <quantity>)]',
    (tags, frame) => (frame.endsAtPause ? undoValue(tags, frame) : null),
    { examples: ['take out the one ninety two'] },
  ),
  rule(
    '(forget|scratch|ignore|disregard|strike|erase|drop) (what|everything) (i|we) [just] (said|told you|gave you|put) (about|for|on) [(the|my)] <quantity>',
    undo,
    { unheard: true, examples: ['forget what i said about the head'] },
  ),
  rule(
    '(take|leave|throw|pull) [(the|my|that)] <quantity> [(reading|number|value)] (out|back)',
    undoNamedOut,
    {
      alone: true,
      unheard: true,
      examples: ['take the superheat out'],
    },
  ),
  rule(
    '(never mind|nix|strike|get rid of|ignore|disregard|throw out|throw away|toss|wipe|lose|drop|ditch|(pull|take) [out]) [(the|my|that)] [last] <quantity> [(reading|number|value)] [(off [of] [there]|out [of there]|i [just] gave you|i [just] said|i told you)]',
    undoNamedOut,
    { alone: true, unheard: true, examples: ['never mind that suction'] },
  ),
  rule(
    '[no] [(the|my|that)] [last] <quantity> [(reading|number|value)] [i [just] (gave|told) you] (is|was) (wrong|off|bad|no good|a mistake|not right) [<pause>] [so] ((scratch|delete|undo|drop|ignore|forget|erase|lose|toss|nix|cancel|remove) (it|that)|take (it|that) (back|out|off))',
    undo,
    { unheard: true, examples: ['head was wrong scratch that'] },
  ),
  rule(
    '[(the|my|that)] <quantity> [(reading|number)] i [just] (gave|told) you (is|was) wrong',
    undo,
    {
      alone: true,
      unheard: true,
      examples: ['the head i gave you was wrong'],
    },
  ),
  rule(
    '(correction (on|for|to) [(the|my|that)] <quantity> [<pause>] [(it is|that is|make it|should be|is)] <amount:right>|[(the|my|that)] <quantity> correction [<pause>] [(it is|that is)] <amount:right>|[no] make (it|that) <amount:right> (on|for) [(the|my|that)] <quantity>|put <amount:right> (for|on|down for) [(the|my|that)] <quantity> instead|set [(the|my|that)] <quantity> (reading|number|value) (to|at) <amount:right>|i said [(the|my)] <quantity> wrong [<pause>] [(it is|that is|should be|it should be)] <amount:right>|[(the|my|that)] <quantity> should have said <amount:right>)',
    amendNot,
    { unheard: true, apart: true, examples: ['correction on the head one ninety'] },
  ),
  rule(
    '[(the|my|that)] <quantity> [(reading|number)] should be <amount:right> [and] not <amount:wrong>',
    amendNot,
    { unheard: true, examples: ['the head should be one ninety not nineteen'] },
  ),
  heardCommand('make (it|that) <amount>', amend, {
    examples: ['make it eighty nine'],
  }),
  rule(
    '[(sorry|oops|whoa|shoot|my bad|wait|ah|dang)] (make that|should be|that should be|it should be|i meant|i mean|correction|change (it|that) to|(it was|it is|that is|that was) really|i meant to say|meant|let us make (it|that)|it is actually|actually it is|that is actually|actually|no it is|no that is|no make (it|that)|sorry|no|nope|no wait|change that one to|correct that to|correct (it|that) to|that was|no i said|no i meant|no i mean|nope i said|no no i said|wait i said|i said|~no call (it|that)|should have been|that should have been) <amount>',
    amendOrAsk,
    { examples: ['no one forty eight', 'correction one forty eight'], alone: true },
  ),
  rule(
    '(change|make|correct|amend|fix|update) [(the|my|that)] <quantity> [(to|be|should be|reading to)] <amount>',
    amendUnlessTold,
    { examples: ['make suction fifteen', 'change head to one forty eight'] },
  ),
  rule(
    '[(i (need|want|have) to|let me|can you|please|go ahead and)] (change|correct|fix|switch|update|amend|move) [(the|my|that)] <quantity> [(reading|number|value)] (from <amount:wrong> to <amount:right>|[<pause>] [(to|it is|it should be|should be|make it)] <amount:right>)',
    amendNot,
    {
      unheard: true,
      only: isToldToUs,
      examples: ['change the head from fifty to one ninety'],
    },
  ),
  rule(
    '[(no|no no|wait|wait no|no wait|hold on|sorry|my bad|oops)] (make|change|correct) (it|that) [to] <amount:right> (not|instead of) <amount:wrong>',
    amendNot,
    { examples: ['make that fourteen not forty'] },
  ),
  rule(
    '(did i say|i think i said|i must have said|i may have said|you probably heard|if i said|you wrote|you put|you have|you heard|i said) <amount:wrong> [(<pause>|i meant|but|it should be|it was)] (it is|it was|i meant|that is|should be|it should be|that should be|make it|make that|but it is) [really] <amount:right>',
    amendNot,
    { examples: ['did i say one sixty it is one sixteen'] },
  ),
  rule(
    '(no|no no|wait|go back|wait go back|no wait|hold on|hang on|correction|sorry|my bad|oops|scratch that|(that|it) (is|was) (wrong|not right|off)|i had that wrong|i said (that|it) wrong) [(wait|sorry|go back)] [(the|that|my)] <quantity> <link> <amount:right> (not|instead of) <amount:wrong>',
    amendNot,
    { examples: ['wait go back that suction was eighteen not eighty'] },
  ),
  rule(
    '[the] <quantity> (should (have been|read|have read)|(is|was) (really|actually)) <amount>',
    amend,
    { examples: ['suction should have been fifteen'] },
  ),
  rule(
    '[no] [(the|that|my)] <quantity> [(reading|number)] (was|is) (wrong|not right) [<pause>] (it is|it was|that is|it should be|should be|make it|make that|i meant|it is really) <amount>',
    amend,
    { examples: ['that suction was wrong it is twenty two'] },
  ),
  rule(
    '[no] (that|it|that one|that number) (was|is) (wrong|not right|off|a mistake) [<pause>] [(it|that)] (should have been|should be|was supposed to be|is really|was really|should have said) <amount>',
    amend,
    { unheard: true, examples: ['that was wrong should have been nineteen'] },
  ),
  rule('[no] (that|my|the) <quantity> [(reading|number)] was wrong', undo, {
    alone: true,
    examples: ['that suction was wrong'],
  }),
  rule(
    '[the] <quantity> (i|we) (gave (you|it)|said|told you|read (you|off)|called out|put (in|down)) (should have been|was [(really|actually)]|is [(really|actually)]|should be|was supposed to be) <amount>',
    amend,
    { examples: ['the suction i gave you should have been eighteen'] },
  ),
  rule(
    '(no|nope|no no|no no no|correction|sorry|actually|i mean|i meant|no wait|wait|wait no|hold on|hang on|my bad|whoa|oops) [(i meant|i mean|i said|that is|make that|wait|sorry|actually)] [(the|that|my)] <quantity> (<link>|should be) <amount>',
    amend,
    { examples: ['correction suction fifteen'], alone: true },
  ),
  rule(
    '[(no|whoa|wait|hold on|hey|nope|sorry)] [(it is|that is|i said)] not <amount:wrong> <amount:right>',
    amendNear,
    { alone: true, examples: ['not fifteen fifty'] },
  ),
  rule(
    '[no] (not|it is not|that is not|i did not say|i said not) [the] [<quantity>] <amount>',
    undoValue,
    {
      alone: true,
      examples: ['not fifty', 'no not fifty'],
    },
  ),
  rule('[no] (not|it is not|that is not) <amount> (on|at|for|of) [the] <quantity>', undoNamed, {
    alone: true,
    examples: ['not two hundred on the head'],
  }),
  rule('[no] [the] <quantity> (is|was) not [(at|a)] <amount>', undoNamed, {
    alone: true,
    examples: ['head is not two hundred'],
  }),
  rule(
    '[the] <quantity> (is|was) (not [(at|even|quite|over|above|under)]|no longer [at]) <amount> (anymore|any more|now|yet|today)',
    () => ({}),
    { examples: ['head is not two hundred anymore'] },
  ),
  rule(
    '[(no|sorry)] (it is|that is|it was|that was|it should be|that should be|it is supposed to be|i said|i meant) <amount:right> (not|instead of|rather than) <amount:wrong>',
    amendNot,
    { examples: ['it is one ninety not one nineteen'], alone: true },
  ),
  rule(
    `[(no|oops|sorry|wait|whoa)] (i (read|said|told you|gave you|had|called) (that|it) wrong|i misread (it|that)|i misspoke|wrong number|(that|it) (is|was) (wrong|off|a typo)|typo) [<pause>] [(it is|that is|should be|it should be|make it|make that|it was|i meant|really|it is really|it is actually)] <amount>`,
    amend,
    { alone: true, unheard: true, examples: ['i read that wrong it is thirteen'] },
  ),
  rule(
    '[(no|wait|sorry|oops|hold on)] (that|it) (is|was) not [(the|my)] <quantity> [<pause>] [(but|no)] (that|it) (is|was) [(the|my)] <quantity:right>',
    misnamed,
    { alone: true, unheard: true, examples: ['that is not head that is suction'] },
  ),
  rule(
    '[(no|wait|sorry|oops|hold on)] (that|it) (is|was) [(the|my)] <quantity:right> [<pause>] [and] not [(the|my)] <quantity>',
    misnamed,
    {
      alone: true,
      unheard: true,
      examples: ['that was the liquid line not the suction line'],
    },
  ),
  rule(
    '[(oops|wait|whoa|sorry|no)] [(wrong (hose|hoses|gage|gages|side|sides)|i (had|have|got) (them|those|it|the hoses) backwards)] [<pause>] (swap|switch|flip|reverse|trade) (those|them|these) [two] [(around|over|back)]',
    swapped,
    { alone: true, unheard: true, examples: ['swap those two'] },
  ),
  rule('<amount:right> not <amount:wrong>', amendNot, {
    examples: ['sixteen not twenty six'],
    alone: true,
  }),
  rule(
    '[(no|whoa|wait|hold on|hey|nope|sorry|oops)] [(typo|my mistake|slip|my bad|wrong number)] [(it is|that is|i said)] not [<link>] <amount:wrong> (it is|but|i said|<pause>) <amount:right>',
    amendNot,
    { examples: ['not fifteen, fifty'], alone: true },
  ),
];
