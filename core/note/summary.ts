import { workDone } from '../replies/work-words.ts';
import { figureText } from '../replies/amounts.ts';
import { leftListed } from '../replies/left-open-sentences.ts';
import { CAUSES } from '../terms/causes.ts';
import { recommended } from '../replies/recommendation-sentences.ts';
import { FINDING_STATES, PARTS } from '../terms/names.ts';
import { isBeforeAlteration } from '../visit/alterations.ts';
import type { VisitState } from '../visit/state.ts';
import { leftOpen } from '../visit/left-open.ts';
import { amountOf, latestAmount, latestReading } from '../visit/views.ts';
import { isGrounded } from '../advice/grounded.ts';
import { circuitLines } from './circuit.ts';
import { complaintMemos } from './complaint.ts';
import { isAmiss, likelyCauses } from './findings.ts';
import { listed, sentence } from './wording.ts';

/** The visit in a few plain sentences: what a customer reads, and often all that is read. */
export function summaryLines(state: VisitState): readonly string[] {
  return [
    ...calledFor(state),
    ...foundWords(state),
    ...doneWords(state),
    ...boxWords(state),
    ...leftOff(state),
    ...stillToDo(state),
  ];
}

function calledFor(state: VisitState): readonly string[] {
  return complaintMemos(state).map(({ memo }) => sentence(`Called for: ${memo}`));
}

/** As many as are kept in mind. */
const MOST_FOUND = 3;

/** What was seen comes before what the readings make likely: it needs no "likely". */
function foundWords(state: VisitState): readonly string[] {
  const { cause } = state.unit;
  const named = cause === null ? [] : [sentence(`Cause: ${CAUSES[cause]}`)];
  return [...named, ...seenWords(state, named.length > 0)];
}

function seenWords(state: VisitState, isNamed: boolean): readonly string[] {
  const amiss = state.findings.filter(({ finding }) => isAmiss(finding));
  const before = amiss.filter(isBeforeAlteration(state));
  const seen = (before.length > 0 ? before : amiss).map(
    ({ finding }) => `${PARTS[finding.part]} ${FINDING_STATES[finding.state]}`,
  );
  if (seen.length > 0) return [sentence(`Found: ${listed([...new Set(seen)].slice(-MOST_FOUND))}`)];
  if (isNamed) return [];
  const [byVoltage] = circuitLines(state).found;
  if (byVoltage !== undefined) return [byVoltage];
  const likely = likelyCauses(state);
  return likely.length === 0 ? [] : [sentence(`Likely: ${likely.join(' or ')}`)];
}

function doneWords(state: VisitState): readonly string[] {
  const done = new Set(state.work.map(({ work: { did, part } }) => workDone(did, part)));
  return done.size === 0 ? [] : [sentence(`Done: ${listed([...done])}`)];
}

function boxWords(state: VisitState): readonly string[] {
  const last = latestReading(state, 'boxTemp');
  const now = last && amountOf(last.reading);
  if (!now) return [];
  const before = latestReading(state, 'boxTemp', { phase: 'before' });
  const was = before && before.id !== last.id ? amountOf(before.reading) : null;
  const set = latestAmount(state, 'setpointTemp');
  const from = was ? `The box went from ${figureText(was)} to ` : 'The box was at ';
  const goal = set ? `; it is set to ${figureText(set)}` : '';
  return [sentence(`${from}${figureText(now)}${goal}`)];
}

function leftOff(state: VisitState): readonly string[] {
  const left = leftOpen(state);
  const off = left.length === 0 ? [] : [sentence(`Left: ${leftListed(left)}`)];
  return isGrounded(state)
    ? [...off, 'Not to be switched on: a compressor winding is grounded.']
    : off;
}

/** With its day and its reason, which have commas of their own. */
function stillToDo({ recommendations }: VisitState): readonly string[] {
  const todo = recommendations.map((made) => recommended(made));
  if (todo.length === 0) return [];
  const inRow = todo.some((words) => words.includes(',')) ? todo.join('; ') : listed(todo);
  return [sentence(`Still to do: ${inRow}`)];
}
