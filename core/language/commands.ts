import { type Amounted, amountIn, measured, spokenUnit, unitFor } from './measure.ts';
import { type Frame, heardRule, type Means, type Rule, rule } from './rule.ts';
import { numberIn, quantityId, spanIn, tagsIn } from './slots.ts';
import type { Command, PlainCommand } from './utterance.ts';

const command = (found: Command): { readonly commands: readonly Command[] } => ({
  commands: [found],
});

const plain =
  (kind: PlainCommand): Means =>
  () =>
    command({ do: kind });

const undo: Means = (tags) => {
  const quantity = quantityId(tags['quantity']);
  return command(quantity === null ? { do: 'undo' } : { do: 'undo', quantity });
};

const undoValue: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const { value } = amountIn(tags);
  if (value === null) return undo(tags, frame);
  return command({ do: 'undo', ...(quantity === null ? {} : { quantity }), value });
};

/** Without a quantity the number keeps only the unit that was said: what it amends decides the rest. */
function amendLast(amount: Amounted, frame: Frame): Command | null {
  if (amount.value === null) return null;
  const { unit, value } = amount;
  const { lastQuantity, units } = frame.context;
  const bare: Command = { do: 'amend', quantity: null, value };
  if (unit === null) return bare;
  if (lastQuantity !== null) {
    const found = measured(lastQuantity, amount, units);
    return found?.unit == null ? bare : { ...bare, value: found.value ?? value, unit: found.unit };
  }
  const known =
    unitFor(unit, 'temperature', units) ??
    unitFor(unit, 'gaugePressure', units) ??
    (unit === 'degrees' || unit === 'pounds' || unit === 'inches' ? null : unit);
  if (known === null) return bare;
  return { ...bare, value: known === 'inHg' ? 0 - Math.abs(value) : value, unit: known };
}

const amend: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const quantity = quantityId(tags['quantity']);
  if (quantity === null) {
    const found = amendLast(amount, frame);
    return found === null ? null : command(found);
  }
  const found = measured(quantity, amount, frame.context.units);
  if (found?.value === undefined) return null;
  const { value, unit } = found;
  return command({
    do: 'amend',
    quantity: found.quantity,
    value,
    ...(unit === null ? {} : { unit }),
  });
};

/** "not fifteen, fifty": the second number is meant. */
const amendNot: Means = (tags, frame) => {
  const right = tagsIn(tags['right']);
  return right === null ? null : amend({ ...right, ...pick(tags) }, frame);
};

function pick(tags: Parameters<Means>[0]): Parameters<Means>[0] {
  const quantity = tags['quantity'];
  return quantity === undefined ? {} : { quantity };
}

const timer: Means = (tags, frame) => {
  const number = numberIn(tags['number']);
  const per = tags['per'] === 'hours' ? 60 : 1;
  const span = spanIn(tags['clause']);
  if (number === null || number <= 0 || spokenUnit(tags['unit']) !== null) return null;
  const about = span === null ? null : frame.wordsOf(span);
  return command({ do: 'timer', minutes: Math.round(number * per * 1000) / 1000, about });
};

const hour: Means = (tags, frame) => timer({ ...tags, number: 60 }, frame);
const halfHour: Means = (tags, frame) => timer({ ...tags, number: 30 }, frame);

const START = '(set|start|give me|~run|~put on|~begin|~set me|~i need|~start me)';
const FOR = '[~(for|on|to) [the] <clause>]';

/** What the product is told to do. */
export const COMMAND_RULES: readonly Rule[] = [
  heardRule(`${START} (a|an|~the) <minutes> minute timer ${FOR}`, timer, {
    examples: ['set a ten minute timer'],
  }),
  rule('[a] <number> (minute|minutes) timer [(for|on) [the] <clause>]', timer, {
    examples: ['ten minute timer for the vacuum'],
  }),
  rule(
    '(set|start|run) [(a|the|me a)] timer (for|at|of|to) <number> (minutes|minute) [(for|on) [the] <clause>]',
    timer,
    { examples: ['set a timer for ten minutes'] },
  ),
  rule('timer <number> (minutes|minute) [(for|on) [the] <clause>]', timer, {
    examples: ['timer five minutes'],
  }),
  rule('(set|start|run|give me) (a|an) <number> hour timer [(for|on) [the] <clause>]', timer, {
    tags: { per: 'hours' },
    examples: ['set a two hour timer'],
  }),
  rule('(set|start|run) [(a|the)] timer for <number> hours [(for|on) [the] <clause>]', timer, {
    tags: { per: 'hours' },
    examples: ['set a timer for two hours'],
  }),
  rule('(set|start|run) [(a|the)] timer for (an|one) hour [(for|on) [the] <clause>]', hour, {
    examples: ['set a timer for an hour'],
  }),
  rule('(set|start|run) [(a|the)] timer for half an hour [(for|on) [the] <clause>]', halfHour, {
    examples: ['set a timer for half an hour'],
  }),
  rule(
    '(remind|tell|ping|call) me in <number> (minutes|minute) [(to|about|for) [the] <clause>]',
    timer,
    { examples: ['remind me in twenty minutes to check the vacuum'] },
  ),
  rule('(remind|tell) me in <number> (hours|hour) [(to|about|for) [the] <clause>]', timer, {
    tags: { per: 'hours' },
    examples: ['remind me in two hours'],
  }),
  heardRule(
    '(take that back|~take it back|~undo [(that|it|last|the last one)]|~scratch (that|it)|~strike that|~delete (that|it|the last one|last)|~forget that|~cancel that|~erase that|~remove (that|the last one)|~remove that last one|~that (is|was) wrong|~that is not right|~get rid of that|~ignore that|~i misspoke|~disregard that)',
    undo,
    { heardWhen: ['anything', 'number', 'yesOrNo'], examples: ['take that back', 'scratch that'] },
  ),
  rule(
    '(take back|undo|scratch|delete|remove|forget|cancel|erase|clear) [(the|my|that|last)] <quantity> [(reading|number|value)]',
    undo,
    { examples: ['undo the suction'] },
  ),
  rule(
    '(take back|undo|scratch|delete|remove|forget|cancel|erase) [(the|my|that)] [<quantity>] <amount>',
    undoValue,
    { examples: ['scratch the one ninety'] },
  ),
  heardRule('make (it|that) <amount>', amend, {
    heardWhen: ['anything', 'number', 'yesOrNo'],
    examples: ['make it eighty nine'],
  }),
  rule(
    '(make that|should be|that should be|it should be|i meant|i mean|correction|change (it|that) to|it is actually|actually it is|that is actually|actually|no it is|no that is|no make (it|that)|sorry|no|nope|no wait|change that one to|correct that to|correct (it|that) to|that was|no i said|i said|should have been|that should have been) <amount>',
    amend,
    { examples: ['no one forty eight', 'correction one forty eight'], alone: true },
  ),
  rule(
    '(change|make|correct|amend|fix|update) [(the|my|that)] <quantity> [(to|be|should be|reading to)] <amount>',
    amend,
    { examples: ['make suction fifteen', 'change head to one forty eight'] },
  ),
  rule(
    '(no|correction|sorry|actually|i mean|i meant|no wait) [the] <quantity> <link> <amount>',
    amend,
    { examples: ['correction suction fifteen'], alone: true },
  ),
  rule('[the] <quantity> should (be|read|have been) <amount>', amend, {
    examples: ['suction should be fifteen'],
  }),
  rule(
    '[no] [(it is|that is|i said)] not [<link>] <amount:wrong> (it is|but|i said|<pause>) <amount:right>',
    amendNot,
    { examples: ['not fifteen, fifty'], alone: true },
  ),
  heardRule(
    '(that is my before|~that is (the|our) before|~(mark|call|save|make|keep|use) (this|that|it|these|those) [(as|is)] [(the|my|our)] before|~(these|those|this) (are|is) [(my|the|our)] before [(readings|numbers)]|~before readings|~mark before|~(that is|this is) before|~those are before|~set before)',
    plain('markBefore'),
    { examples: ['that is my before', 'mark this as before'] },
  ),
  heardRule(
    '(mark this as after|that is my after|~that is (the|our) after|~(mark|call|save|make|keep|use) (this|that|it|these|those) [(as|is)] [(the|my|our)] after|~(these|those|this) (are|is) [(my|the|our)] after [(readings|numbers)]|~after readings|~mark after|~(that is|this is) after|~those are after|~set after)',
    plain('markAfter'),
    { examples: ['mark this as after', 'that is my after'] },
  ),
  heardRule(
    '(say that again|~repeat [(that|it|please|again)]|~(come again|what was that|what did you say|pardon|say again|again please|one more time|say it again|i did not (hear|catch|get) (that|you)|huh|what)|~again)',
    plain('repeat'),
    { alone: true, heardWhen: ['anything', 'number', 'yesOrNo'], examples: ['say that again'] },
  ),
  heardRule(
    '(pause|hold on|~stop listening|~hold it|~(be quiet|quiet|wait|hang on [a (second|sec|minute)]|go to sleep|mute|shut up|stop|hold up|give me a (second|minute|sec)|one (second|minute|moment|sec)))',
    plain('pause'),
    {
      alone: true,
      heardWhen: ['anything', 'number'],
      examples: ['pause', 'hold on', 'stop listening'],
    },
  ),
  heardRule(
    '(resume|go on|~(start listening|listen|wake up|i am back|go ahead|continue|unmute|carry on|keep going|ok i am back|back|listen up))',
    plain('resume'),
    { alone: true, examples: ['resume', 'go on', 'i am back'] },
  ),
  heardRule(
    '(yes|yeah|~(yep|yup|correct|right|affirmative|that is (right|correct|it|fine)|sure|confirm|confirmed|yes it is|yes sir|you got it|exactly|sounds good|uh huh|it is|that is what i said|yes please|do it))',
    plain('yes'),
    { alone: true, heardWhen: ['anything', 'yesOrNo'], examples: ['yes', 'that is right'] },
  ),
  heardRule(
    '(no|nope|~(negative|nah|no it is not|incorrect|not right|no sir|no way|that is not it|uh uh|no thanks|it is not|wrong))',
    plain('no'),
    { alone: true, heardWhen: ['anything', 'number', 'yesOrNo'], examples: ['no'] },
  ),
  heardRule(
    '(new visit|~(start|begin|open) [a] (new|another) (visit|call|job|one|ticket)|~(new|next) (call|job|ticket|unit)|~start (over|a visit)|~start fresh)',
    plain('newVisit'),
    { examples: ['new visit', 'start a new visit'] },
  ),
  heardRule(
    '(that is it finish|finish|~(finish (up|the visit|visit|this visit|it|the note|the job|this)|i am (done|finished|all done)|we are (done|finished|all done)|(end|close|complete|wrap up|close out) (the|this) (visit|job|call|ticket)|end visit|close it out|wrap it up|that is (all|everything)|all done|that is it [i am] [(done|finish|finished|we are done)]|done here|call it done|close it))',
    plain('finish'),
    { examples: ['that is it finish', 'finish the visit'] },
  ),
  heardRule(
    '(help|~(what can (i|you) (say|do|ask)|help me|what are my options|how do i use this|how does this work|what do i say|what can i do|give me some help))',
    plain('help'),
    { alone: true, examples: ['help', 'what can i say'] },
  ),
];
