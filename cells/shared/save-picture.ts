import { fileName } from '#src/charts/file-name.ts';
import type { PictureParts } from '#src/charts/picture-file.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import { download } from './download.ts';
import type { PictureFormat } from './picture-tools.ts';

export interface SavedPicture {
  /** What the file is named after: the notebook, then the cell. */
  readonly names: readonly string[];
  readonly csv: () => string;
  /** Undefined while nothing is drawn. */
  readonly picture: () => PictureParts | undefined;
}

/** Hands the picture or its numbers to the browser as a file. Resolves with what went wrong, or with nothing. */
export async function savePicture(
  format: PictureFormat,
  { names, csv, picture }: SavedPicture,
): Promise<string | undefined> {
  try {
    download(await blobOf(format, csv, picture), fileName(names, format));
    return undefined;
  } catch (error) {
    return `The file could not be made: ${messageOf(error)}.`;
  }
}

async function blobOf(format: PictureFormat, csv: () => string, picture: SavedPicture['picture']): Promise<Blob> {
  // A byte order mark: without it spreadsheets take the text for something else than UTF-8.
  if (format === 'csv') return new Blob(['\ufeff', csv()], { type: 'text/csv;charset=utf-8' });
  const parts = picture();
  if (!parts) throw new Error('there is no picture yet');
  const { pictureFile, pngOf } = await import('#src/charts/picture-file.ts');
  const svg = pictureFile(parts);
  return format === 'svg' ? new Blob([svg], { type: 'image/svg+xml' }) : pngOf(svg);
}
