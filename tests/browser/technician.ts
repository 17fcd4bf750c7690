import type { Page } from 'playwright-core';
import { noticeWords } from '../../client/screens/words.ts';
import { RATE_HZ, rms, speak } from '../hearing/signals.ts';
import { wavOf } from '../support/wav.ts';
import { listOf } from './scripted-synthesiser.ts';
import { sayInto } from './sampled-microphone.ts';

/** How loud the technician speaks, of full scale. */
export const SPEECH_RMS = 0.1;

export function atLevel(samples: Float32Array, level: number): Buffer {
  const gain = level / rms(samples);
  return wavOf(
    [...samples].map((sample) => Math.max(-1, Math.min(1, gain * sample))),
    RATE_HZ,
  );
}

/** One thing to say, and how to know that it was heard. */
export interface Line {
  readonly say: string;
  /** How long each sound is, by the voice's own. */
  readonly pace: number;
  /** What is said back of it, kept or asked about. */
  readonly heard: RegExp;
  /** The answer where the page asks which of two numbers it was: that number, digit by digit. */
  readonly digits?: string;
}

export interface Technician {
  /** Says it, once more where the page heard nothing or something else; answers what the page asks about it. */
  readonly tell: (line: Line) => Promise<string>;
  /** What the page asked. */
  readonly asked: readonly string[];
}

const TRIES = 3;
const PATIENCE = { timeout: 60_000 };
const UNCLEAR = noticeWords({ kind: 'unclear' });

/** A person beside the page, with a voice that its trained ear never met. */
export function technicianAt(page: Page): Technician {
  const repeated: string[] = [];
  const asked: string[] = [];

  /** What the page says to it, once it listens again; nothing where it only beeped. */
  const say = async (sentence: string, pace: number): Promise<string> => {
    await page.locator(OPEN).waitFor(PATIENCE);
    const [states, said] = [await listOf(page, 'states'), await listOf(page, 'said')];
    const beeped = await page.getByText(UNCLEAR).isVisible();
    await sayInto(page, atLevel(speak(sentence, 'kal16', pace), SPEECH_RMS));
    await page.waitForFunction(
      ([since, notice]) => {
        const gone: unknown = Reflect.get(window, 'states');
        const spoke = Array.isArray(gone) && gone.slice(since).includes('speaking');
        return spoke || (notice !== '' && document.body.innerText.includes(notice));
      },
      [states.length, beeped ? '' : UNCLEAR] as const,
      PATIENCE,
    );
    await page.locator(OPEN).waitFor(PATIENCE);
    return (await listOf(page, 'said')).slice(said.length).join(' ');
  };

  const tell = async (line: Line, tries = TRIES): Promise<string> => {
    const reply = await say(line.say, line.pace);
    const right = line.heard.test(reply);
    if (reply.includes('?')) {
      asked.push(reply);
      const answer = answerTo(reply, right, line);
      const kept = await say(answer, line.pace);
      if (right && line.heard.test(kept) && !kept.includes('?')) return kept;
    } else if (right) return reply;
    repeated.push(`${line.say}: ${reply}`);
    if (tries === 1) throw new Error(`never heard: ${repeated.join('; ')}`);
    // Who is not understood says it more slowly.
    return tell({ ...line, pace: line.pace + 0.1 }, tries - 1);
  };
  return { tell: (line) => tell(line), asked };
}

const answerTo = (question: string, right: boolean, { digits }: Line): string => {
  if (!right) return 'no';
  return /\bor\b[^?]*\?/.test(question) && digits !== undefined ? digits : 'yes';
};

const OPEN =
  '[data-testid="state"][data-state="listening"], [data-testid="state"][data-state="asking"], ' +
  // Once the visit is finished.
  '[data-testid="state"][data-state="asleep"]';
