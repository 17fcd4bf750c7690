import { readFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import type { PassagePhraser } from '../../core/note/phrase-note.ts';
import type { Phraser } from '../../core/replies/phrasing.ts';
import type { TurnInput } from '../../core/turn/turn.ts';
import { loadPhraser, OWN_MODEL } from '../phraser/transformers-phraser.ts';
import type { Command } from './command.ts';
import { parseOptions } from './options.ts';
import { createPlayer, alternativesToActOn } from './player.ts';
import type { Player } from './player.ts';
import { REPLAY_PRINTERS } from './replay-printers.ts';
import type { ReplayPrinter } from './replay-printers.ts';
import { createReplayedVisit } from './replayed-visit.ts';
import type { ReplayedVisit } from './replayed-visit.ts';
import type { ExitStatus, Terminal } from './terminal.ts';
import { parseVisitFile } from './visit-file.ts';
import type { Step } from './visit-file.ts';
import { wrongCall } from './wrong-call.ts';

const USAGE = `gloveside replay FILE [--json] [--phrasing off | --phrasing-model FOLDER]
  A visit from a text file: the dialogue as it would be spoken, then the visit note.
  In the file: a sentence a line, "# …" a comment, "@ 14:05" sets the clock (it starts at 08:00 and
  goes on a minute a sentence; timers ring by it), "@ 2026-08-20" sets the day (it starts on 2026-01-05),
  "> front.wav" plays a recording that lies beside the file, sentence by sentence, and
  "* Copperline 012 contactor" is a part that the van carries, by the name that you call it. "new visit" starts
  the next one, and the visits before it in the file are known to it.

  --json                    one JSON object a sentence, then one with the note
  --phrasing off            says every answer by its built-in sentence. Otherwise a small language model on
                            this machine words it: a sentence of the model's is spoken only when every
                            number, unit, name and direction in it is the answer's, the built-in one
                            otherwise, and for cautions always. With --json, "phrased" tells which it was.
  --phrasing-model FOLDER   words the answers by another model: a folder with config.json, tokenizer.json,
                            tokenizer_config.json and onnx/model*.onnx. Nothing is fetched from a network.`;

const OPTIONS = {
  json: { type: 'boolean', default: false },
  phrasing: { type: 'string' },
  'phrasing-model': { type: 'string' },
} as const;

export const replayCommand: Command = {
  usage: USAGE,
  run: async (args, terminal) => {
    const parsed = parseOptions(args, OPTIONS);
    if (parsed.kind === 'unusable') return wrongCall(terminal, 'replay', parsed.why);
    const [file, ...others] = parsed.words;
    if (file === undefined) return wrongCall(terminal, 'replay', 'name the visit file to replay');
    if (others.length > 0) return wrongCall(terminal, 'replay', 'it replays one file at a time');
    const read = await readSteps(file);
    if (read.kind === 'unreadable') return failed(terminal, read.why);
    const { phrasing, 'phrasing-model': model } = parsed.values;
    if (phrasing !== undefined && (phrasing !== 'off' || model !== undefined)) {
      return wrongCall(terminal, 'replay', PHRASING_WAYS);
    }
    const found = await findPhraser({ isOff: phrasing === 'off', model }, terminal);
    if (found.kind === 'failed') return failed(terminal, found.message);
    const printer = REPLAY_PRINTERS[parsed.values.json ? 'json' : 'dialogue'];
    return replay({ ...found, file, steps: read.steps, terminal, printer });
  },
};

function failed(terminal: Terminal, why: string): ExitStatus {
  terminal.complain(`gloveside replay: ${why}`);
  return 1;
}

type ReadSteps =
  | { readonly kind: 'steps'; readonly steps: readonly Step[] }
  | { readonly kind: 'unreadable'; readonly why: string };

async function readSteps(file: string): Promise<ReadSteps> {
  const text = await readFile(file, 'utf8').catch((fault: unknown) => fault);
  if (typeof text !== 'string') {
    const why = text instanceof Error ? text.message : String(text);
    return { kind: 'unreadable', why: `cannot read ${file} (${why})` };
  }
  const visit = parseVisitFile(text);
  return visit.kind === 'visit'
    ? { kind: 'steps', steps: visit.steps }
    : { kind: 'unreadable', why: `${file} line ${visit.line}: ${visit.why}` };
}

type FoundPhraser =
  | {
      readonly kind: 'found';
      readonly phraser: Phraser | null;
      readonly passages: PassagePhraser | null;
    }
  | { readonly kind: 'failed'; readonly message: string };

const PHRASING_WAYS = 'either --phrasing off or --phrasing-model FOLDER, or neither';

interface WantedPhraser {
  readonly isOff: boolean;
  readonly model: string | undefined;
}

const WITHOUT = { kind: 'found', phraser: null, passages: null } as const;

/** Our own model is only a nicer way to say it: where it cannot be loaded the visit is replayed without. */
async function findPhraser(wanted: WantedPhraser, terminal: Terminal): Promise<FoundPhraser> {
  if (wanted.isOff) return WITHOUT;
  const loaded = await loadPhraser(wanted.model ?? OWN_MODEL);
  if (loaded.kind === 'loaded') return { ...loaded, kind: 'found' };
  if (wanted.model !== undefined) return loaded;
  terminal.complain(
    `gloveside replay: ${loaded.message}; every answer is said by its built-in sentence`,
  );
  return WITHOUT;
}

interface Replay {
  readonly file: string;
  readonly steps: readonly Step[];
  readonly terminal: Terminal;
  readonly printer: ReplayPrinter;
  readonly phraser: Phraser | null;
  readonly passages: PassagePhraser | null;
}

/** A recording that cannot be played is told of and left out; the rest of the visit goes on. */
async function replay(given: Replay): Promise<ExitStatus> {
  const { file, steps, terminal, printer, phraser, passages } = given;
  const visit = createReplayedVisit(phraser, passages);
  const options = { hasPhraser: phraser !== null };
  const player = createPlayer();
  let status: ExitStatus = 0;
  for (const step of steps) {
    for await (const said of take(step, { visit, player, folder: dirname(file) })) {
      for (const turn of visit.ring()) await terminal.print(printer.ring(turn));
      if (said.kind === 'said') {
        await terminal.print(printer.turn(await visit.say(said.words), options));
      }
      if (said.kind === 'unplayable') {
        status = failed(terminal, `${file} line ${step.line}: ${said.why}`);
      }
    }
  }
  player.close();
  await terminal.print(printer.note(visit.state(), visit.past()));
  return status;
}

interface Stage {
  readonly visit: ReplayedVisit;
  readonly player: Player;
  readonly folder: string;
}

type Said =
  | { readonly kind: 'said'; readonly words: TurnInput['words'] }
  | { readonly kind: 'silent' }
  | { readonly kind: 'unplayable'; readonly why: string };

/** What a step says, sentence by sentence; a recording may hold several, or one that nothing was heard of. */
async function* take(step: Step, { visit, player, folder }: Stage): AsyncIterable<Said> {
  if (step.kind === 'say') yield { kind: 'said', words: step.words };
  if (step.kind === 'clock') visit.setClock(step.minutes);
  if (step.kind === 'day') visit.setDay(step.day);
  if (step.kind === 'part') visit.carry(step.name);
  if (step.kind === 'clock' || step.kind === 'day') yield { kind: 'silent' };
  if (step.kind !== 'play') return;
  const recordings = player.playSentences(resolve(folder, step.file), () => visit.expects());
  for await (const played of recordings) {
    yield played.kind === 'heard'
      ? { kind: 'said', words: alternativesToActOn(played) }
      : { kind: 'unplayable', why: played.why };
  }
}
