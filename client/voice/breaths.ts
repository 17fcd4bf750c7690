/** Chromium has been seen to fall silent after about 15 s of one utterance: each stays well below. */
const LONGEST_BREATH = 120;

/** A text cut at the ends of its sentences, and long sentences at their commas, into pieces said one by one. */
export function breathsOf(text: string): readonly string[] {
  return text
    .split(/\n+|(?<=[.!?;])\s+/)
    .flatMap((sentence) => (sentence.length > LONGEST_BREATH ? atCommas(sentence) : [sentence]))
    .map((breath) => breath.trim())
    .filter((breath) => breath !== '');
}

function atCommas(sentence: string): readonly string[] {
  return sentence.split(/(?<=,)\s+/).reduce<readonly string[]>((breaths, part) => {
    const last = breaths.at(-1);
    const joined = `${last ?? ''} ${part}`.trim();
    return last === undefined || joined.length > LONGEST_BREATH
      ? [...breaths, part]
      : [...breaths.slice(0, -1), joined];
  }, []);
}
