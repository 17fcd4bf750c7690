/** What may be said, as JSGF's right-hand sides write it (W3C Note of 5 June 2000). */
export type Expansion =
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'sequence'; readonly parts: readonly Expansion[] }
  | { readonly kind: 'choice'; readonly options: readonly WeightedExpansion[] }
  | { readonly kind: 'optional'; readonly expansion: Expansion }
  | { readonly kind: 'repeat'; readonly expansion: Expansion; readonly least: 0 | 1 }
  | { readonly kind: 'reference'; readonly rule: string }
  /** `<VOID>`: nobody can say it. */
  | { readonly kind: 'never' };

export interface WeightedExpansion {
  readonly expansion: Expansion;
  readonly weight: number;
}

export interface JsgfRules {
  readonly rules: ReadonlyMap<string, Expansion>;
  readonly publicRules: readonly string[];
}

export type JsgfOutcome =
  | ({ readonly kind: 'read' } & JsgfRules)
  | { readonly kind: 'malformed'; readonly message: string };

const NOTHING: Expansion = { kind: 'sequence', parts: [] };

/** Comments, then what a grammar is made of: tags, weights, rule names, quoted and plain words, signs. */
const TOKEN =
  /\s+|\/\*[^]*?\*\/|\/\/[^\n]*|(\{[^}]*\}|\/[\d.eE+-]+\/|<[^<>]+>|"[^"]*"|[^\s{}<>"/()[\]|*+=;]+|[()[\]|*+=;])|(.)/gu;
const HEADER = /^\uFEFF?\s*#JSGF[^;]*;/;
const NAME = /^\s*grammar\s+[^;<]+;/;
/** The grammar's name, and what it takes from elsewhere: the latter cannot be reached here. */
const IMPORT = /^\s*import\b/m;

/** Reads a whole grammar's text. Tags are passed over: this grammar is for the ear alone. */
export function parseJsgf(text: string): JsgfOutcome {
  const body = text.replace(HEADER, '').replace(NAME, '');
  if (IMPORT.test(body)) return malformed('it imports another grammar, which cannot be reached');
  try {
    return { kind: 'read', ...new JsgfReader(tokensOf(body)).readRules() };
  } catch (problem) {
    if (problem instanceof Malformed) return malformed(problem.message);
    throw problem;
  }
}

const malformed = (message: string): JsgfOutcome => ({
  kind: 'malformed',
  message: `The grammar cannot be read: ${message}.`,
});

/** Thrown and caught within this file alone. */
class Malformed extends Error {}

function tokensOf(text: string): readonly string[] {
  return [...text.matchAll(TOKEN)].flatMap(([, token, stray]) => {
    if (stray !== undefined) throw new Malformed(`a stray ${stray}`);
    return token === undefined || token.startsWith('{') ? [] : [token];
  });
}

const isName = (token: string): boolean => token.startsWith('<');
const isWeight = (token: string): boolean => /^\/.+\/$/.test(token);
const CLOSERS = new Set([')', ']', '|', ';', '']);

class JsgfReader {
  readonly #tokens: readonly string[];
  #at = 0;

  constructor(tokens: readonly string[]) {
    this.#tokens = tokens;
  }

  readRules(): JsgfRules {
    const rules = new Map<string, Expansion>();
    const publicRules: string[] = [];
    while (this.#next() !== '') {
      const isPublic = this.#skip('public');
      const name = this.#take();
      if (!isName(name)) throw new Malformed(`a rule's name was expected, not ${name}`);
      this.#expect('=');
      rules.set(name.slice(1, -1), this.#choice());
      this.#expect(';');
      if (isPublic) publicRules.push(name.slice(1, -1));
    }
    return { rules, publicRules };
  }

  #choice(): Expansion {
    const options = [this.#option()];
    while (this.#skip('|')) options.push(this.#option());
    const [only] = options;
    return only && options.length === 1 ? only.expansion : { kind: 'choice', options };
  }

  #option(): WeightedExpansion {
    const weight = isWeight(this.#next()) ? Number(this.#take().slice(1, -1)) : 1;
    if (!(weight >= 0)) throw new Malformed('a weight that is no number');
    const parts: Expansion[] = [];
    while (!CLOSERS.has(this.#next())) parts.push(this.#repeated());
    const [only] = parts;
    const expansion: Expansion =
      only && parts.length === 1
        ? only
        : parts.length === 0
          ? NOTHING
          : { kind: 'sequence', parts };
    return { expansion, weight };
  }

  #repeated(): Expansion {
    const expansion = this.#item();
    if (this.#skip('*')) return { kind: 'repeat', expansion, least: 0 };
    return this.#skip('+') ? { kind: 'repeat', expansion, least: 1 } : expansion;
  }

  #item(): Expansion {
    const token = this.#take();
    if (token === '(') return this.#closed(')');
    if (token === '[') return { kind: 'optional', expansion: this.#closed(']') };
    if (token === '<NULL>') return NOTHING;
    if (token === '<VOID>') return { kind: 'never' };
    if (isName(token)) return { kind: 'reference', rule: token.slice(1, -1) };
    if (/^[*+=]$/.test(token) || isWeight(token)) throw new Malformed(`a stray ${token}`);
    return { kind: 'word', word: token.replaceAll('"', '') };
  }

  #closed(closer: string): Expansion {
    const inner = this.#choice();
    this.#expect(closer);
    return inner;
  }

  #next(): string {
    return this.#tokens[this.#at] ?? '';
  }

  #take(): string {
    const token = this.#next();
    this.#at += 1;
    return token;
  }

  #skip(token: string): boolean {
    if (this.#next() !== token) return false;
    this.#at += 1;
    return true;
  }

  #expect(token: string): void {
    const found = this.#take();
    if (found !== token) throw new Malformed(`${token} was expected before "${found}"`);
  }
}
