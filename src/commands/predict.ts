// Computes a notebook or a single stack without a browser: npm run --silent predict -- FILE [--json | --csv]
import { readFileSync, statSync } from 'node:fs';
import { sizeProblem } from '#src/notebook/parsed-json.ts';
import type { Problem } from '#src/notebook/problem.ts';
import { readNotebook } from '#src/notebook/read-file.ts';
import { readStack } from '#src/notebook/read-stack.ts';
import { about, runCommand, unreadable } from './command-line.ts';
import type { PredictionWishes } from './predict-extras.ts';
import { type NotebookPrediction, PredictionFailure, predictNotebook, predictStack } from './predict-notebook.ts';
import { type PredictCommand, predictOptions } from './predict-options.ts';
import { PREDICT_USAGE } from './predict-usage.ts';
import { readLevels } from './read-levels.ts';

process.exitCode = runCommand(process.argv.slice(2), {
  usage: PREDICT_USAGE,
  ask: predictOptions,
  answer: (command) => {
    const predict = readWork(command);
    const source = command.source === undefined ? undefined : readLevels(command.source);
    const background = command.background === undefined ? undefined : readLevels(command.background);
    const problems = [predict, source, background].flatMap((read) => (isProblems(read) ? read : []));
    if (isProblems(predict) || isProblems(source) || isProblems(background)) return problems;
    try {
      return command.form(predict({ ...command.wishes, source, background }));
    } catch (error) {
      if (!(error instanceof PredictionFailure)) throw error;
      return error.failures.map((failure) => about(command.file, failure));
    }
  },
});

type Predict = (wishes: PredictionWishes) => NotebookPrediction;

/** What is to be predicted, read, or everything that is wrong with its file. */
function readWork({ file, isStack }: PredictCommand): Predict | readonly string[] {
  try {
    const tooBig = file === '-' ? undefined : sizeProblem(statSync(file).size);
    if (tooBig) return sentences(file, [tooBig]);
    const text = readFileSync(file === '-' ? 0 : file, 'utf8');
    if (isStack) {
      const reading = readStack(text);
      return reading.ok ? (wishes) => predictStack(reading, wishes) : sentences(file, reading.problems);
    }
    const reading = readNotebook(text);
    return reading.ok ? (wishes) => predictNotebook(reading.notebook, wishes) : sentences(file, reading.problems);
  } catch (error) {
    return [unreadable(file, error)];
  }
}

function isProblems(read: unknown): read is readonly string[] {
  return Array.isArray(read);
}

function sentences(file: string, problems: readonly Problem[]): readonly string[] {
  return problems.map(({ message }) => about(file, message));
}
