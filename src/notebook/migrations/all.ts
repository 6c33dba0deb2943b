import { marksByPlace } from './marks-by-place.ts';
import type { Migration } from './migrate.ts';

/** One for each older version; version 1 is the first. */
export const MIGRATIONS: readonly Migration[] = [marksByPlace];
