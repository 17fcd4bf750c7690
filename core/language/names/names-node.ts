import { choice, named, type Node, type RuleNode, sequence, tag } from '../../grammar/nodes.ts';
import { parseShape } from '../../grammar/shape.ts';
import { everyWordOf } from '../../grammar/vocabulary.ts';
import { WordSet } from '../words/word-set.ts';

type Names = Readonly<Partial<Record<string, readonly string[]>>>;

/** Any name of a table, its id under `slot`; `name` is the rule's own where two tables fill one slot. */
export function namesNode(slot: string, names: Names, name = slot): RuleNode {
  return named(name, choice(...namedOptions(slot, names)));
}

/** The words that its names are of. */
export const wordsOfNames = (names: Names): WordSet =>
  new WordSet(everyWordOf(choice(...namedOptions('', names))));

export function namedOptions(slot: string, names: Names): readonly Node[] {
  return Object.entries(names).flatMap(([id, phrases = []]) =>
    phrases.map((phrase) => nameOption(phrase, tag({ [slot]: id }))),
  );
}

/** The tag goes inside an unheard name, so that the whole option stays out of the recogniser's grammar. */
function nameOption(phrase: string, meaning: Node): Node {
  const said = parseShape(phrase);
  return said.kind === 'unheard'
    ? { ...said, node: sequence(said.node, meaning) }
    : sequence(said, meaning);
}
