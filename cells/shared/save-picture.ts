import { fileName } from '#src/charts/file-name.ts';
import { type PictureParts, pictureFile, pngOf } from '#src/charts/picture-file.ts';
import { download } from './download.ts';

export interface SavedPicture {
  /** What the file is named after: the notebook, then the cell. */
  readonly names: readonly string[];
  readonly csv: () => string;
  /** Undefined while nothing is drawn. */
  readonly picture: () => PictureParts | undefined;
}

/** Hands the picture or its numbers to the browser as a file. @throws Error if the browser cannot make it. */
export async function savePicture(format: 'svg' | 'png' | 'csv', { names, csv, picture }: SavedPicture): Promise<void> {
  download(await blobOf(format, csv, picture), fileName(names, format));
}

async function blobOf(
  format: 'svg' | 'png' | 'csv',
  csv: () => string,
  picture: SavedPicture['picture'],
): Promise<Blob> {
  // A byte order mark: without it spreadsheets take the text for something else than UTF-8.
  if (format === 'csv') return new Blob(['\ufeff', csv()], { type: 'text/csv;charset=utf-8' });
  const parts = picture();
  if (!parts) throw new Error('there is no picture yet');
  const svg = pictureFile(parts);
  return format === 'svg' ? new Blob([svg], { type: 'image/svg+xml' }) : pngOf(svg);
}
