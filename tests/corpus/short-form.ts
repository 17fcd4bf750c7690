import type {
  Command,
  Doubt,
  Due,
  Fact,
  Question,
  Reading,
  Recommendation,
  Utterance,
} from '../../core/language/utterance.ts';

/** An utterance as one line, the way the corpus tables write it; see tests/corpus/README.md. */
export function shortForm(utterance: Utterance): string {
  const parts = [
    ...utterance.readings.map(shortReading),
    ...utterance.facts.map(shortFact),
    ...utterance.findings.map((each) =>
      join('finding', each.part, each.state, each.unresolved === true ? 'unresolved' : ''),
    ),
    ...utterance.work.map((each) =>
      join('work', each.did, each.part ?? '', each.locked === true ? 'locked' : ''),
    ),
    ...utterance.recommendations.map(shortRecommendation),
    ...utterance.questions.map(shortQuestion),
    ...utterance.commands.map(shortCommand),
    ...utterance.memos.map((memo) => `memo "${memo}"`),
    ...utterance.remarks.map((remark) => `remark "${remark}"`),
    ...utterance.unclaimed.map((number) => `UNCLAIMED ${number}`),
    ...utterance.doubts.map(shortDoubt),
  ];
  return parts.length === 0 ? 'NOTHING' : parts.join(';');
}

type Piece = string | number | null | undefined;
const join = (...pieces: readonly Piece[]): string =>
  pieces.filter((piece) => piece !== '' && piece !== null && piece !== undefined).join(' ');

function shortReading(reading: Reading): string {
  const { value, low, high, gasTemp } = reading;
  return join(
    reading.quantity,
    low === undefined ? value : `${low}..${high ?? ''}`,
    reading.overlimit === true ? 'OL' : '',
    reading.unit ?? '?',
    reading.place === null ? '' : `@${reading.place}`,
    reading.hedged === true ? 'hedged' : '',
    reading.event === undefined ? '' : `event=${reading.event}`,
    reading.when === undefined ? '' : `when=${reading.when}`,
    reading.afterMinutes === undefined ? '' : `after=${reading.afterMinutes}min`,
    gasTemp === undefined ? '' : `gas=${gasTemp.value}${gasTemp.unit}`,
    reading.refrigerant === undefined ? '' : `of=${reading.refrigerant}`,
  );
}

const shortDoubt = (doubt: Doubt): string =>
  join(
    `DOUBT ${shortReading(doubt)} (${doubt.why})`,
    doubt.or === undefined ? '' : `or=${doubt.or}`,
  );

function shortFact(fact: Fact): string {
  if (fact.fact === 'heaterRating') return join('heaterRating', fact.heater, fact.value, fact.unit);
  if (fact.fact === 'nameplate') return join('nameplate', fact.item, fact.value, fact.unit);
  if (fact.fact === 'cause') return join('cause', fact.value, fact.empty ? 'empty' : '');
  if (fact.fact === 'cameTo') return join('cameTo', fact.do, fact.value);
  if (fact.fact !== 'equipment') return join(fact.fact, fact.value);
  const doors = fact.doors === undefined ? '' : `doors=${fact.doors}`;
  return join('equipment', fact.value, doors, fact.freezer ? 'freezer' : '');
}

function shortRecommendation(made: Recommendation): string {
  const { do: kind, part, called, by, every, reason } = made;
  return join(
    'recommend',
    kind,
    part,
    kind === 'asSaid' ? `"${called ?? ''}"` : null,
    by && join(by.said, shortDue(by)),
    every && join('every', every.amount, every.unit),
    reason === undefined ? '' : `why "${reason}"`,
  );
}

function shortDue(due: Due): string {
  switch (due.kind) {
    case 'in':
      return join(due.amount, due.unit);
    case 'weekday':
      return join(due.next === true ? 'next' : '', due.weekday);
    case 'dayOfMonth':
      return join('day', due.day);
    case 'date':
      return join(due.month, due.day);
    case 'words':
      return `"${due.words}"`;
  }
}

function shortQuestion(question: Question): string {
  if (question.ask === 'saturation') {
    return join('?saturation', question.value, question.unit, question.refrigerant);
  }
  if (question.ask === 'target' && question.supposed !== undefined) {
    const { quantity, value, unit } = question.supposed;
    return join('?target', question.about, 'at', quantity, value, unit);
  }
  if (question.ask === 'step') return join('?step', question.to);
  if (question.ask === 'history') {
    return join('?history', question.about, question.did, question.part);
  }
  if (question.ask === 'eta') return join('?eta', question.about, question.value, question.unit);
  const each = 'each' in question ? 'each' : '';
  return join(`?${question.ask}`, 'about' in question ? question.about : '', each);
}

function shortCommand(command: Command): string {
  if (command.do === 'timer' || command.do === 'extendTimer') {
    return join(`!${command.do}`, command.minutes, command.about);
  }
  if (command.do === 'stopTimer') return join('!stopTimer', command.about);
  if (command.do === 'amend') {
    return join('!amend', command.quantity, command.value, command.unit);
  }
  if (command.do === 'turnTo') {
    return join('!turnTo', command.part, command.quantity, command.place);
  }
  if (command.do === 'undo') return join('!undo', command.quantity, command.value);
  if (command.do === 'useUnits') return join('!useUnits', ...command.units);
  if (command.do === 'choose') return join('!choose', command.which);
  return `!${command.do}`;
}
