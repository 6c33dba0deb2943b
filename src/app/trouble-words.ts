/** What went wrong with storage or a file, as a notice that says what can be done. */
import type { Problem } from '#src/notebook/problem.ts';
import type { Notice } from './page-notices.ts';
import type { SessionTrouble } from './session.ts';

export interface TroubleActions {
  saveFile(): void;
  workOnCopy(): void;
  /** Hands out what is stored under an id, whether or not it can be read. */
  rescue(id: string): void;
}

export function troubleNotice(trouble: SessionTrouble, actions: TroubleActions): Notice {
  switch (trouble.kind) {
    case 'store':
      return {
        id: 'store',
        tone: 'problem',
        text: trouble.problem.message,
        action: { label: 'Save a file', run: actions.saveFile },
      };
    case 'conflict':
      return {
        id: 'store',
        tone: 'problem',
        text: trouble.problem.message,
        action: { label: 'Keep mine as a copy', run: actions.workOnCopy },
      };
    case 'damaged':
      return {
        id: 'store',
        tone: 'problem',
        text: trouble.problem.message,
        details: (trouble.problem.problems ?? []).map((p) => p.message),
        action: { label: 'Save what is stored', run: () => actions.rescue(trouble.id) },
      };
    case 'opened-as-copy':
      return {
        id: 'file',
        tone: 'info',
        text: `This notebook is here already, with other content, and stays as it is. What you chose was opened beside it, as a copy: “${trouble.title}”.`,
      };
    case 'refused-edit':
      return {
        id: 'edit',
        tone: 'problem',
        text: `Not done: ${trouble.label}. ${trouble.message}. Nothing was changed.`,
      };
  }
}

export function refusedFileNotice(name: string, problems: readonly Problem[]): Notice {
  return {
    id: 'file',
    tone: 'problem',
    text: `“${name}” was not opened: ${problems.length === 1 ? 'one thing is' : `${problems.length} things are`} wrong with it. Nothing else was changed.`,
    details: problems.map((p) => p.message),
  };
}
