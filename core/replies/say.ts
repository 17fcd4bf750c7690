import type { CautionId, Verdict } from '../advice/verdict.ts';
import type { Reading } from '../language/utterance.ts';
import type { UnitHabit } from '../units/shown-unit.ts';
import type { Acknowledgement } from '../visit/acknowledgement.ts';
import { acknowledgementSaid } from './acknowledgements.ts';
import { CAUTION_SENTENCES } from './caution-sentences.ts';
import { siblingsSaid } from './doubts.ts';
import { largeOf } from './large.ts';
import { readingSaid } from './readings.ts';
import type { Reply } from './reply.ts';
import { capitalised, join, plain, sentences, type Said } from './said.ts';
import { verdictSaid } from './verdict-said.ts';

/** All that one sentence led to. */
export interface Outcome {
  readonly acknowledgements: readonly Acknowledgement[];
  readonly verdicts: readonly Verdict[];
  /** No rule took anything from the sentence. */
  readonly nothingHeard: boolean;
  /** What the state calls for, asked or not: a flammable refrigerant just named. */
  readonly cautions?: readonly CautionId[];
  /** Said earlier on this visit: each is said once. */
  readonly cautionsSaid?: readonly CautionId[];
}

/** The reply to one sentence: what was kept, cautions, answers, and what is still asked. */
export function say(outcome: Outcome, settings: { readonly units: UnitHabit }): Reply {
  const { text, spoken } = sentences([
    ...keptSaid(outcome.acknowledgements, settings.units),
    ...cautionSentences(outcome, (id) => !QUALIFIES.has(id)),
    ...outcome.verdicts.map(verdictSaid),
    ...cautionSentences(outcome, (id) => QUALIFIES.has(id)),
    ...askedSaid(outcome.acknowledgements.filter(isAsking), settings.units),
    ...(outcome.nothingHeard ? [plain('I did not catch that. Say it again.')] : []),
  ]);
  return { text, spoken, large: largeOf(outcome), earcon: earconFor(outcome) };
}

/** What only qualifies a number comes after it: the number is wanted first. What can hurt comes before. */
const QUALIFIES: ReadonlySet<CautionId> = new Set<CautionId>([
  'glideBasis',
  'chartsDiffer',
  'designTableOnly',
  'designLoadOnly',
  'pullDown',
  'probeTheProduct',
  'idealGas',
]);

/** Work before any reading is told with the work itself: not twice in one breath. */
function cautionSentences(outcome: Outcome, isDue: (id: CautionId) => boolean): readonly Said[] {
  const told = outcome.acknowledgements.some((kept) => kept.kind === 'work' && kept.beforeBaseline);
  return cautionsSpoken(outcome)
    .filter(isDue)
    .filter((id) => !(told && id === 'workBeforeBaseline'))
    .map((id) => plain(CAUTION_SENTENCES[id]));
}

/** The cautions this reply says: the caller keeps them, and passes them back as said. */
export function cautionsSpoken(outcome: Outcome): readonly CautionId[] {
  const due = [...(outcome.cautions ?? []), ...outcome.verdicts.flatMap(cautionsOf)];
  const again = outcome.verdicts.filter(isAboutSafety).flatMap(cautionsOf);
  return [...new Set(due)]
    .filter((id) => again.includes(id) || !outcome.cautionsSaid?.includes(id))
    .filter((id) => id !== 'chartsDiffer' || outcome.verdicts.some(isSaturation));
}

/** A degree between charts matters to who reads a chart, not to who hears how far off the head is. */
const isSaturation = (verdict: Verdict): boolean =>
  verdict.kind === 'known' && verdict.answer === 'saturation';

/** Asked whether a thing is safe, what makes it unsafe is said again: the answer is nothing without it. */
const isAboutSafety = (verdict: Verdict): boolean =>
  verdict.kind === 'refused' && verdict.reason === 'deferredToTheCode';

const cautionsOf = (verdict: Verdict): readonly CautionId[] => verdict.cautions ?? [];

/** Readings of one breath are said back in one: "Head 192, suction 14." What asks comes last. */
function keptSaid(all: readonly Acknowledgement[], units: UnitHabit): readonly Said[] {
  const readings = all.filter((kept) => kept.kind === 'reading');
  const rest = all.filter((kept) => kept.kind !== 'reading' && !isAsking(kept));
  return [
    ...(readings.length > 0
      ? [
          inOneBreath(
            readings.map((kept) => kept.reading),
            units,
          ),
        ]
      : []),
    ...rest.map((kept) => acknowledgementSaid(kept, units)),
  ];
}

/** A full stop between them for the voice: after "one five, 15" a comma would not tell where the next begins. */
function inOneBreath(readings: readonly Reading[], units: UnitHabit): Said {
  const each = readings.map((reading) => readingSaid(reading, units));
  const { text } = join(each, ', ');
  const { spoken } = join(each.map(capitalised), '. ');
  return { text: `${text}.`, spoken: `${spoken}.` };
}

/** Head and suction that contradict each other in one breath are one question, not two. */
function askedSaid(asking: readonly Acknowledgement[], units: UnitHabit): readonly Said[] {
  const against = asking.flatMap((asked) =>
    asked.kind === 'doubt' && asked.doubt.why === 'againstSibling' ? [asked.doubt] : [],
  );
  const isPair = against.length > 1;
  const alone = asking.filter(
    (asked) => !isPair || asked.kind !== 'doubt' || !against.includes(asked.doubt),
  );
  return [
    ...(isPair ? [siblingsSaid(against, units)] : []),
    ...alone.map((asked) => acknowledgementSaid(asked, units)),
  ];
}

function isAsking(kept: Acknowledgement): boolean {
  return (
    kept.kind === 'doubt' ||
    kept.kind === 'heardAgain' ||
    kept.kind === 'whichOne' ||
    kept.kind === 'leftOver' ||
    kept.kind === 'legsLeftOver' ||
    kept.kind === 'putBackAsked' ||
    (kept.kind === 'finding' && kept.finding.unresolved === true)
  );
}

function earconFor({ acknowledgements, verdicts, nothingHeard }: Outcome): Reply['earcon'] {
  if (verdicts.length > 0) return 'answer';
  if (nothingHeard) return 'again';
  if (acknowledgements.length === 0) return 'none';
  return acknowledgements.every(isAsking) ? 'again' : 'kept';
}
