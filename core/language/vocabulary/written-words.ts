const WRITTEN: ReadonlySet<string> = new Set(
  [
    // Abbreviations.
    'hg inhg kg kw mg mm sc v w',
    'approx ft cu nd rd',
    'hd suct bx liq amb prod',
    'oclock nought',
    // Numbers larger than anything on this job.
    'million millions billion billions trillion trillions quadrillion quadrillions quintillion quintillions',
  ].flatMap((words) => words.split(' ')),
);

/** Whether a word is only ever typed: nobody says it so, and no recogniser need listen for it. */
export const isWritten = (word: string): boolean => /\d/.test(word) || WRITTEN.has(word);
