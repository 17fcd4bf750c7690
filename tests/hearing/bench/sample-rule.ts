import type { Expansion, JsgfRules } from '../../../core/hearing/parse-jsgf.ts';

type Random = () => number;

/** Words of a rule, every choice by chance. */
export function sampleRule(grammar: JsgfRules, rule: string, random: Random): readonly string[] {
  const body = grammar.rules.get(rule);
  if (body === undefined) throw new Error(`the grammar has no rule named ${rule}`);
  return sample(body);

  function sample(expansion: Expansion): readonly string[] {
    switch (expansion.kind) {
      case 'word':
        return [expansion.word];
      case 'reference':
        return sampleRule(grammar, expansion.rule, random);
      case 'sequence':
        return expansion.parts.flatMap(sample);
      case 'choice': {
        const option = expansion.options[Math.floor(random() * expansion.options.length)];
        return option === undefined ? [] : sample(option.expansion);
      }
      case 'optional':
        return random() < 0.5 ? sample(expansion.expansion) : [];
      case 'repeat':
        return [
          ...(expansion.least === 1 ? sample(expansion.expansion) : []),
          ...(random() < 0.5 ? sample(expansion.expansion) : []),
        ];
      case 'never':
        return [];
    }
  }
}
