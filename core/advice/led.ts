import { EXPLAINED_PARTS, type ExplainedPartId } from '../terms/explained-parts.ts';
import type { PartId } from '../terms/names.ts';
import type { QuantityId } from '../terms/quantities.ts';
import { surelyLeftOpen } from '../visit/power-back.ts';
import type { VisitState } from '../visit/state.ts';
import type { Question } from '../language/utterance.ts';
import { READ } from './carried.ts';
import { guided } from './guides.ts';
import { OF_THE_CYCLE } from './settling/bands.ts';
import type { CautionId, Verdict } from './verdict.ts';

type OfPart = Extract<Question, { readonly ask: 'part' }>;

/** What a part does or where it sits; "where do I find it" is of the part that was asked about last, or spoken of. */
export function explained({ about, of }: OfPart, state: VisitState): Verdict {
  const part = about ?? lastAsked(state) ?? state.lastPart;
  if (part === null || !isExplained(part))
    return { kind: 'refused', about: null, reason: 'partNotExplained' };
  const cautions = of === 'sits' ? reachedFor(part) : [];
  return { ...READ, source: 'common practice', cautions, answer: 'explained', part, of };
}

/** Who asks where it is will put a hand there. */
function reachedFor(part: ExplainedPartId): readonly CautionId[] {
  if (part === 'startCapacitor' || part === 'runCapacitor') return ['liveWork', 'capacitorCharge'];
  return LIVE.has(part) ? ['liveWork'] : [];
}

const LIVE: ReadonlySet<ExplainedPartId> = new Set<ExplainedPartId>([
  'contactor',
  'overload',
  'startRelay',
  'defrostTimer',
  'defrostHeater',
  'drainHeater',
  'crankcaseHeater',
  'fanControl',
  'disconnect',
  'transformer',
]);

const isExplained = (part: PartId | 'nameplate'): part is ExplainedPartId =>
  EXPLAINED_PARTS.some((each) => each === part);

function lastAsked({ history }: VisitState): PartId | 'nameplate' | null {
  const asked = history.flatMap((event) =>
    event.type === 'questionAsked' && event.question.ask === 'part' ? [event.question.about] : [],
  );
  return asked.findLast((about) => about !== null) ?? null;
}

/** What is still moving; else the usual time. */
export function waitOf(
  state: VisitState,
  trend: (about: QuantityId, state: VisitState) => Verdict,
): Verdict {
  const moving = (['boxTemp', ...OF_THE_CYCLE] as const)
    .map((about) => trend(about, state))
    .find(({ kind }) => kind === 'known');
  return moving ?? guided('settleWait', state);
}

/** What there is to come back for: what was recommended, what is left open, and what is not settled. */
export function toComeBack(state: VisitState): Verdict {
  return {
    ...READ,
    answer: 'toCome',
    todo: state.recommendations.map(({ recommendation, due }) => ({ recommendation, due })),
    left: surelyLeftOpen(state).map(({ part, as }) => ({ part, as })),
    questions: state.doubts.length + state.leftOver.length,
  };
}
