/**
 * Reads grammar text as a recogniser would, written from the notations' own descriptions (JSGF 1.0, W3C Note of
 * 5 June 2000; SRGS 1.0 ABNF form, W3C Recommendation of 16 March 2004) and sharing nothing with the printers.
 */
export interface GrammarText {
  readonly root: string;
  readonly rules: ReadonlyMap<string, Expansion>;
}

type Expansion =
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'reference'; readonly name: string }
  | { readonly kind: 'sequence'; readonly parts: readonly Expansion[] }
  | { readonly kind: 'options'; readonly options: readonly Expansion[] }
  | { readonly kind: 'optional'; readonly of: Expansion }
  | { readonly kind: 'many'; readonly of: Expansion };

interface Notation {
  readonly header: RegExp;
  readonly reference: RegExp;
  readonly repeat: string | null;
}

const JSGF: Notation = {
  header: /^#JSGF V1\.0;\ngrammar [a-z]\w*;\n/,
  reference: /^<(\w+)>$/,
  repeat: null,
};
const ABNF: Notation = {
  header: /^#ABNF 1\.0 UTF-8;\nlanguage [a-z]{2}-[A-Z]{2};\nmode voice;\nroot \$(\w+);\n/,
  reference: /^\$(\w+)$/,
  repeat: '<1->',
};

export const readJsgf = (text: string): GrammarText => read(text, JSGF);
export const readAbnf = (text: string): GrammarText => read(text, ABNF);

function read(text: string, notation: Notation): GrammarText {
  const [header] = notation.header.exec(text) ?? [];
  if (header === undefined) throw new Error('no header');
  const rules = new Map<string, Expansion>();
  const publics: string[] = [];
  for (const statement of statementsOf(text.slice(header.length))) {
    const { isPublic, name, body } = definitionOf(statement, notation);
    if (rules.has(name)) throw new Error(`${name} is defined twice`);
    rules.set(name, body);
    if (isPublic) publics.push(name);
  }
  const [root, ...others] = publics;
  if (root === undefined || others.length > 0) throw new Error('one rule must be public');
  for (const name of [...rules.values()].flatMap(referencesOf)) {
    if (!rules.has(name)) throw new Error(`${name} is not defined`);
  }
  return { root, rules };
}

function statementsOf(text: string): readonly string[] {
  const statements = text.split(';').map((each) => each.trim());
  if (statements.pop() !== '') throw new Error('the last rule is not closed');
  return statements;
}

function definitionOf(statement: string, notation: Notation) {
  const isPublic = statement.startsWith('public ');
  const [left, right, ...more] = (isPublic ? statement.slice(7) : statement).split(' = ');
  const [, name] = notation.reference.exec(left ?? '') ?? [];
  if (name === undefined || right === undefined || more.length > 0) {
    throw new Error(`no rule: ${statement}`);
  }
  return { isPublic, name, body: new Reader(right, notation).all() };
}

const TOKEN = /\/\d*\.?\d+\/|<1->|<\w+>|\$\w+|[()[\]|]|[^\s()[\]|<>$/]+|\S/g;

class Reader {
  private readonly tokens: readonly string[];
  private readonly notation: Notation;
  private at = 0;

  constructor(text: string, notation: Notation) {
    this.tokens = text.match(TOKEN) ?? [];
    this.notation = notation;
  }

  all(): Expansion {
    const found = this.options();
    if (this.at < this.tokens.length) throw new Error(`left over: ${this.tokens[this.at] ?? ''}`);
    return found;
  }

  private options(): Expansion {
    const options = [this.sequence()];
    while (this.take('|')) options.push(this.sequence());
    return { kind: 'options', options };
  }

  private sequence(): Expansion {
    if (/^\/.*\/$/.test(this.tokens[this.at] ?? '')) this.at += 1;
    const parts: Expansion[] = [];
    for (let part = this.part(); part !== null; part = this.part()) parts.push(part);
    if (parts.length === 0) throw new Error('an empty option');
    return { kind: 'sequence', parts };
  }

  private part(): Expansion | null {
    const token = this.tokens[this.at];
    if (token === undefined || /^[|)\]]$/.test(token)) return null;
    this.at += 1;
    const plain = this.atom(token);
    const { repeat } = this.notation;
    return repeat !== null && this.take(repeat) ? { kind: 'many', of: plain } : plain;
  }

  private atom(token: string): Expansion {
    if (token === '(') return this.closed(')');
    if (token === '[') return { kind: 'optional', of: this.closed(']') };
    const [, name] = this.notation.reference.exec(token) ?? [];
    if (name !== undefined) return { kind: 'reference', name };
    if (!/^[a-z][a-z']*$/.test(token)) throw new Error(`no word: ${token}`);
    return { kind: 'word', word: token };
  }

  private closed(by: string): Expansion {
    const inside = this.options();
    if (!this.take(by)) throw new Error(`${by} is missing`);
    return inside;
  }

  private take(token: string): boolean {
    if (this.tokens[this.at] !== token) return false;
    this.at += 1;
    return true;
  }
}

function referencesOf(of: Expansion): readonly string[] {
  switch (of.kind) {
    case 'reference':
      return [of.name];
    case 'word':
      return [];
    case 'sequence':
      return of.parts.flatMap(referencesOf);
    case 'options':
      return of.options.flatMap(referencesOf);
    case 'optional':
    case 'many':
      return referencesOf(of.of);
  }
}

/** Whether a recogniser with this grammar could hear the sentence. */
export function hears({ root, rules }: GrammarText, sentence: string): boolean {
  const words = sentence.split(' ');
  const known = new Map<string, ReadonlySet<number>>();

  const ends = (of: Expansion, at: number): ReadonlySet<number> => {
    switch (of.kind) {
      case 'word':
        return new Set(words[at] === of.word ? [at + 1] : []);
      case 'reference':
        return endsOfRule(of.name, at);
      case 'sequence':
        return of.parts.reduce<ReadonlySet<number>>(
          (from, part) => onFrom(from, part),
          new Set([at]),
        );
      case 'options':
        return new Set(of.options.flatMap((option) => [...ends(option, at)]));
      case 'optional':
        return new Set([at, ...ends(of.of, at)]);
      case 'many':
        return endsOfMany(of.of, at);
    }
  };
  const onFrom = (from: ReadonlySet<number>, part: Expansion): ReadonlySet<number> =>
    new Set([...from].flatMap((at) => [...ends(part, at)]));
  const endsOfRule = (name: string, at: number): ReadonlySet<number> => {
    const key = `${name}@${at}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, new Set());
    const body = rules.get(name);
    const fresh = body === undefined ? new Set<number>() : ends(body, at);
    known.set(key, fresh);
    return fresh;
  };
  const endsOfMany = (of: Expansion, at: number): ReadonlySet<number> => {
    const reached = new Set<number>();
    let frontier = ends(of, at);
    while (frontier.size > 0) {
      frontier.forEach((end) => reached.add(end));
      frontier = new Set([...onFrom(frontier, of)].filter((end) => !reached.has(end)));
    }
    return reached;
  };

  return endsOfRule(root, 0).has(words.length);
}
