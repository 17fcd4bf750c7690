import { GARBAGE_RULE } from './garbage.ts';
import { withoutUnsounded } from './jsgf.ts';
import { parseJsgf } from './parse-jsgf.ts';
import { soundGraph, type SoundGraphOutcome, type Sounds } from './sound-graph.ts';

/** Grammars as graphs of sounds, each built once: building the whole one takes 60 ms. */
export type GrammarGraphs = (jsgf: string) => SoundGraphOutcome;

/** The dialogue's three expectations, with the names known before and after a unit was named. */
const MOST_GRAPHS = 6;

/** Beside an acoustic model any sounds at all are heard by the model itself, not by a rule of the grammar. */
const NO_GARBAGE_RULE = '<not_for_us> = <VOID> ;';

export function createGrammarGraphs(sounds: Sounds): GrammarGraphs {
  // Insertion order is order of last use: the first is the one to give up.
  const built = new Map<string, SoundGraphOutcome>();
  const known = new Set(Object.keys(sounds.pronunciations));
  return (jsgf) => {
    const outcome = built.get(jsgf) ?? build(jsgf, known, sounds);
    built.delete(jsgf);
    built.set(jsgf, outcome);
    const [oldest] = built.keys();
    if (built.size > MOST_GRAPHS && oldest !== undefined) built.delete(oldest);
    return outcome;
  };
}

function build(jsgf: string, known: ReadonlySet<string>, sounds: Sounds): SoundGraphOutcome {
  const text = withoutUnsounded(jsgf.replace(GARBAGE_RULE, NO_GARBAGE_RULE), known);
  const grammar = parseJsgf(text);
  return grammar.kind === 'malformed' ? grammar : soundGraph(grammar, sounds);
}
