import type { Command, Recommendation, Utterance, Work } from '../utterance.ts';

/** An utterance while it is put together. */
type Writable<Fields> = { -readonly [Field in keyof Fields]: Fields[Field] };
export type DraftUtterance = Writable<Utterance>;
export type Gathered = Omit<Utterance, 'text'>;

const NOTHING: readonly never[] = [];

/** What a text means before anything of it was read. */
export const nothingSaid = (text: string): DraftUtterance => ({
  text,
  readings: NOTHING,
  facts: NOTHING,
  findings: NOTHING,
  work: NOTHING,
  recommendations: NOTHING,
  questions: NOTHING,
  commands: NOTHING,
  memos: NOTHING,
  remarks: NOTHING,
  unclaimed: NOTHING,
  doubts: NOTHING,
});

/** Only what there is more of is asked for: meanings come in many shapes. */
export function join(all: DraftUtterance, more: Partial<Gathered>): void {
  for (const part in more) JOIN.get(part)?.(all, more);
}

type Join = (all: DraftUtterance, more: Partial<Gathered>) => void;

const JOIN_EACH: Record<keyof Gathered, Join> = {
  readings: (all, more) => (all.readings = both(all.readings, more.readings)),
  facts: (all, more) => (all.facts = both(all.facts, more.facts)),
  findings: (all, more) => (all.findings = both(all.findings, more.findings)),
  work: (all, more) => (all.work = both(all.work, notTold(all.work, more.work))),
  recommendations: (all, more) =>
    (all.recommendations = both(
      all.recommendations,
      notAdvised(all.recommendations, more.recommendations),
    )),
  questions: (all, more) => (all.questions = both(all.questions, more.questions)),
  commands: (all, more) =>
    (all.commands = both(all.commands, notGiven(all.commands, more.commands))),
  memos: (all, more) => (all.memos = both(all.memos, more.memos)),
  remarks: (all, more) => (all.remarks = both(all.remarks, more.remarks)),
  unclaimed: (all, more) => (all.unclaimed = both(all.unclaimed, more.unclaimed)),
  doubts: (all, more) => (all.doubts = both(all.doubts, more.doubts)),
};
const JOIN: ReadonlyMap<string, Join> = new Map(Object.entries(JOIN_EACH));

/** "Power's off and locked out" tells one thing twice. */
const notTold = (told: readonly Work[], more: readonly Work[] = []): readonly Work[] =>
  told.length === 0
    ? more
    : more.filter(
        ({ did, part, called }) =>
          !told.some((each) => each.did === did && each.part === part && each.called === called),
      );

/** "Door heater's had it, wants a new one" advises one thing; a date or a reason that comes with it again is new. */
const notAdvised = (
  given: readonly Recommendation[],
  more: readonly Recommendation[] = [],
): readonly Recommendation[] =>
  given.length === 0 ? more : more.filter((each) => !given.some((one) => saysNoMore(each, one)));

const saysNoMore = (
  { words: _new, part, ...more }: Recommendation,
  than: Recommendation,
): boolean => {
  const known = new Map(Object.entries(than).map(([key, value]) => [key, JSON.stringify(value)]));
  return (
    part === than.part &&
    Object.entries(more).every(([key, value]) => known.get(key) === JSON.stringify(value))
  );
};

/** "That's it, I'm done here, wrap it up" ends one visit; but what was taken back twice is twice taken back. */
const notGiven = (given: readonly Command[], more: readonly Command[] = []): readonly Command[] =>
  given.length === 0
    ? more
    : more.filter((each) => !ONCE.has(each.do) || !given.some((one) => one.do === each.do));

const ONCE: ReadonlySet<Command['do']> = new Set([
  ...(['finish', 'newVisit', 'yes', 'no', 'pause', 'resume', 'help'] as const),
  ...(['markBefore', 'markAfter', 'repeat'] as const),
]);

/** What is there and what comes to it, without a copy where one of them is all. */
export const both = <Part>(said: readonly Part[], more: readonly Part[] = []): readonly Part[] =>
  more.length === 0 ? said : said.length === 0 ? more : [...said, ...more];
