import type { Utterance } from '../language/utterance.ts';

/** From one mark to the next, in the text of a sentence. */
interface CharRange {
  readonly start: number;
  readonly end: number;
}

/**
 * What was told of the job, each piece whole. The language keeps what no rule read, and cut from the words that told
 * something else a piece loses what it is of: "and proved it dead", "it was the door". Such a piece gets back the words
 * around it, and pieces that stand side by side are one.
 */
export function wholeRemarks(said: Utterance): readonly string[] {
  const { text, remarks, questions, commands } = said;
  const isPlain = questions.length === 0 && commands.length === 0;
  if (remarks.length === 0 || !isPlain) return remarks;
  const sections = sectionsOf(text);
  const told = toldIn(said);
  const placed = remarks.map((remark) => placeOf(remark, text));
  if (placed.some((place) => place === null)) return remarks;
  const whole = placed
    .filter((place) => place !== null)
    .map((place) => wholeOf(place, { text, sections, told }));
  return joined(whole, text).map(({ start, end }) => text.slice(start, end).trim());
}

interface Around {
  readonly text: string;
  readonly sections: readonly CharRange[];
  /** What was read as something else. */
  readonly told: readonly CharRange[];
}

function placeOf(words: string, text: string): CharRange | null {
  const start = text.indexOf(words);
  return words === '' || start === -1 ? null : { start, end: start + words.length };
}

/** A mark within a number ends nothing. */
function sectionsOf(text: string): readonly CharRange[] {
  const ends = [...text.matchAll(/[,.;:!?](?=\s)/g)].map(({ index }) => index);
  const starts = [0, ...ends.map((end) => end + 1)];
  return starts.map((start, at) => ({
    start: start + (/^\s*/.exec(text.slice(start))?.[0].length ?? 0),
    end: ends[at] ?? text.length,
  }));
}

function toldIn({ text, ...said }: Utterance): readonly CharRange[] {
  const { readings, facts, findings, work, recommendations, doubts } = said;
  const all = [...readings, ...facts, ...findings, ...work, ...recommendations, ...doubts];
  return all.flatMap(({ words }) => placeOf(words, text) ?? []);
}

const touches = (one: CharRange, other: CharRange): boolean =>
  one.start < other.end && other.start < one.end;

function wholeOf(piece: CharRange, around: Around): CharRange {
  const { text, sections } = around;
  const first = sections.findIndex(({ end }) => end > piece.start);
  const last = sections.findLastIndex(({ start }) => start < piece.end);
  const [from, to] = [sections[first], sections[last]];
  if (from === undefined || to === undefined) return piece;
  const words = text.slice(piece.start, piece.end);
  const isScrap = words.split(/\s+/).length <= SCRAP || LEANS_BACK.test(words);
  const start = isScrap || isUntold(from.start, piece.start, around) ? from.start : piece.start;
  const end = isScrap || isUntold(piece.end, to.end, around) ? to.end : piece.end;
  return {
    start: startBefore({ start, end }, sections[first - 1], around),
    end: endBehind({ start, end }, sections[last + 1], around),
  };
}

/** Of three words hardly any says what it is of. */
const SCRAP = 3;
/** What it is of stands before it. */
const LEANS_BACK =
  /^(?:and|but|or|so|then|it|its|it's|it'll|that|that's|this|those|these|which|he|she)\b/i;
const LEADS = /^(?:(?:and|but|so|then|well|yeah|ok|okay|oh|also|plus|now|alright|because)\b\s*)*$/i;

/** Words that say something and that nothing else was read from. */
function isUntold(start: number, end: number, { text, told }: Around): boolean {
  const isSaid = start < end && !LEADS.test(text.slice(start, end).trim());
  return isSaid && !told.some((each) => touches(each, { start, end }));
}

/** "Nothing was wrong with the refrigeration, it was the door" */
function startBefore(piece: CharRange, before: CharRange | undefined, around: Around): number {
  if (before === undefined) return piece.start;
  const leans = LEANS_BACK.test(around.text.slice(piece.start, piece.end));
  return leans && isUntold(before.start, before.end, around) ? before.start : piece.start;
}

/** "They need to order a left gasket, it's going too" */
function endBehind(piece: CharRange, behind: CharRange | undefined, around: Around): number {
  if (behind === undefined) return piece.end;
  const leans = LEANS_BACK.test(around.text.slice(behind.start, behind.end));
  return leans && isUntold(behind.start, behind.end, around) ? behind.end : piece.end;
}

/** Overlapping, or with nothing but a mark between them. */
function joined(pieces: readonly CharRange[], text: string): readonly CharRange[] {
  const inOrder = pieces.toSorted((one, other) => one.start - other.start);
  return inOrder.reduce<readonly CharRange[]>((so, piece) => {
    const last = so.at(-1);
    const isApart = last === undefined || /[^\s,]/.test(text.slice(last.end, piece.start));
    if (isApart) return [...so, piece];
    return [...so.slice(0, -1), { start: last.start, end: Math.max(last.end, piece.end) }];
  }, []);
}
