/** One piece of a sentence in its two written forms: for the eye, and for a speech synthesiser. */
export interface Said {
  readonly text: string;
  readonly spoken: string;
}

/** Words that are written the same either way. */
export function plain(words: string): Said {
  return { text: words, spoken: words };
}

/** A sentence with holes, filled in both forms at once so that the two cannot drift apart. */
export function line(words: TemplateStringsArray, ...holes: readonly (Said | string)[]): Said {
  const pieces = words.flatMap((word, index) => {
    const hole = holes[index];
    if (hole === undefined) return [plain(word)];
    return [plain(word), typeof hole === 'string' ? plain(hole) : hole];
  });
  return join(pieces, '');
}

export function join(pieces: readonly Said[], between: string): Said {
  return {
    text: pieces.map(({ text }) => text).join(between),
    spoken: pieces.map(({ spoken }) => spoken).join(between),
  };
}

export function sentences(all: readonly Said[]): Said {
  return join(all.filter(({ text }) => text !== '').map(capitalised), ' ');
}

export function capitalised({ text, spoken }: Said): Said {
  return { text: upperFirst(text), spoken: upperFirst(spoken) };
}

function upperFirst(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
