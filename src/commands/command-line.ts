import { basename } from 'node:path';
import { messageOf } from '#src/notebook/message-of.ts';
import { printable } from './printable.ts';

/** A command that answers about one file. */
export interface FileCommand<Asked extends AskedFile> {
  readonly usage: string;
  /** What the arguments ask for, or one sentence on what is wrong. */
  ask(args: string[]): Asked | string;
  /**
   * What to print as it is, or everything that is wrong, one sentence each that names its file (`about`). What it throws is
   * said about the command's file.
   */
  answer(asked: Asked): string | readonly string[];
}

export interface AskedFile {
  readonly help: boolean;
  /** A path, or `-` for standard input. */
  readonly file: string;
}

/** Prints answer or problems. @returns the exit code: 0 answered, 1 the file is at fault, 2 wrong use. */
export function runCommand<Asked extends AskedFile>(args: string[], command: FileCommand<Asked>): 0 | 1 | 2 {
  const asked = command.ask(args);
  if (typeof asked === 'string') {
    console.error(printable(`${asked}\n\n${inShort(command.usage)}`));
    return 2;
  }
  const answer = answered(asked, command);
  if (typeof answer === 'string') {
    console.log(answer);
    return 0;
  }
  for (const problem of answer) console.error(printable(problem));
  return 1;
}

/** What a file is called when something is said about it. */
export function nameOf(file: string): string {
  return file === '-' ? 'standard input' : basename(file);
}

/** Something that is wrong with a file, with its name. */
export function about(file: string, problem: string): string {
  return `${nameOf(file)}: ${problem}`;
}

/** That a file could not be read, and why. */
export function unreadable(file: string, error: unknown): string {
  return `${nameOf(file)} cannot be read: ${messageOf(error)}`;
}

/** How the command is called; what each option does is more than one wants to read after a slip. */
function inShort(usage: string): string {
  return `${usage.split('\n\n')[0]}\nWith --help alone: what each option does.`;
}

function answered<Asked extends AskedFile>(asked: Asked, command: FileCommand<Asked>): string | readonly string[] {
  if (asked.help) return command.usage;
  try {
    return command.answer(asked);
  } catch (error) {
    return [unreadable(asked.file, error)];
  }
}
