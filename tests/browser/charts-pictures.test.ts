/**
 * Pictures kept as files: when one changes, the file shows what changed and is looked at before it is taken over. Numbers
 * are rounded and ids renumbered, so that only what is drawn counts.
 */
import { expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { hatchesOf } from '#cells/stack/section/hatch-of.ts';
import '#cells/stack/section/section-drawing.ts';
import { sectionOf } from '#cells/stack/section/section-of.ts';
import '#src/charts/band-chart.ts';
import '#src/charts/share-chart.ts';
import { curvesView } from '#cells/curves/curves-view.ts';
import * as measuredTools from '#cells/curves/measured-tools.ts';
import * as overlayTools from '#cells/curves/overlay-tools.ts';
import { pathsView } from '#cells/paths/paths-view.ts';
import type { BandChart } from '#src/charts/band-chart.ts';
import { pictureFile, withValues } from '#src/charts/picture-file.ts';
import type { ShareChart } from '#src/charts/share-chart.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { CurvesCell, PathsCell } from '#src/notebook/types.ts';
import { valuesOf } from '#src/notebook/values.ts';
import { madeUpPrediction } from '../charts/made-up-prediction.ts';
import { percussionNotebook } from '../charts/percussion-notebook.ts';

const RESULTS = {
  of: (id: string) => ({ state: 'ready' as const, prediction: madeUpPrediction(35 + 5 * Number(id.slice(1))) }),
};

function plain(svg: string): string {
  const ids = new Map<string, string>();
  return svg
    .replace(/( id="|url\(#)([\w-]+)/g, (_, before: string, id: string) => {
      if (!ids.has(id)) ids.set(id, `id-${ids.size + 1}`);
      return before + ids.get(id);
    })
    .replace(/-?\d+\.\d+/g, (number) => String(Math.round(Number(number) * 10) / 10))
    .replace(/<!--.*?-->/g, '')
    .replace(/></g, '>\n<');
}

async function chartFile(chart: BandChart | ShareChart, title: string): Promise<string> {
  await page.viewport(1000, 900);
  chart.style.width = '720px';
  document.body.append(chart);
  await expect.poll(() => chart.picture).toBeTruthy();
  return plain(pictureFile(chart.pictureParts(title, [])!));
}

test('curves-with-overlays', async () => {
  const notebook = percussionNotebook(3);
  const cell = notebook.cells.find((c) => c.kind === 'curves') as CurvesCell;
  const chart = document.createElement('band-chart');
  chart.data = curvesView(
    notebook,
    { ...cell, overlays: ['contour', 'resonances', 'critical', 'paths'] },
    RESULTS,
    overlayTools,
  ).data;
  await expect(await chartFile(chart, 'Curves')).toMatchFileSnapshot('./__snapshots__/curves-with-overlays.svg');
});

test('curves-from-20-hz-with-textbook-models', async () => {
  const notebook = percussionNotebook(2);
  const cell = notebook.cells.find((c) => c.kind === 'curves') as CurvesCell;
  const usual = madeUpPrediction(45);
  const prediction = {
    ...usual,
    bands_Hz: [20, 25, 31.5, 40, ...usual.bands_Hz],
    R_dB: [17, 18.5, 20.5, 23, ...usual.R_dB],
  };
  const chart = document.createElement('band-chart');
  chart.data = curvesView(
    notebook,
    { ...cell, lowestBand_Hz: 20, overlays: ['mass-law', 'limp-panel', 'double-leaf'] },
    { of: () => ({ state: 'ready', prediction }) },
    overlayTools,
  ).data;
  await expect(await chartFile(chart, 'From 20 Hz')).toMatchFileSnapshot(
    './__snapshots__/curves-from-20-hz-with-textbook-models.svg',
  );
});

test('curves-with-measured-bands', async () => {
  const notebook = percussionNotebook(2);
  const cell = notebook.cells.find((c) => c.kind === 'curves') as CurvesCell;
  const words = { source: 'invented', quantity: 'airborne' } as const;
  const thirds = { id: 'a', name: 'thirds with a gap', bands_Hz: [100, 125, 200, 250], values_dB: [22, 26, 30, 33] };
  const octaves = { id: 'b', name: 'octaves', bands_Hz: [125, 250, 500, 1000], values_dB: [30, 38, 47, 53] };
  const chart = document.createElement('band-chart');
  const measured = [thirds, octaves].map((m) => ({ ...words, ...m }));
  chart.data = curvesView(notebook, { ...cell, measured }, RESULTS, measuredTools).data;
  await expect(await chartFile(chart, 'Measured')).toMatchFileSnapshot(
    './__snapshots__/curves-with-measured-bands.svg',
  );
});

test('gains', async () => {
  const notebook = percussionNotebook(4);
  const cell = notebook.cells.find((c) => c.kind === 'curves') as CurvesCell;
  const chart = document.createElement('band-chart');
  chart.data = curvesView(notebook, { ...cell, quantity: 'difference' }, RESULTS).data;
  await expect(await chartFile(chart, 'Gains')).toMatchFileSnapshot('./__snapshots__/gains.svg');
});

test('shares', async () => {
  const notebook = percussionNotebook(2);
  const cell = notebook.cells.find((c) => c.kind === 'paths') as PathsCell;
  const chart = document.createElement('share-chart');
  chart.data = pathsView(notebook, cell, RESULTS).data;
  await expect(await chartFile(chart, 'Shares')).toMatchFileSnapshot('./__snapshots__/shares.svg');
});

test.each([
  ['section-channel', 's4'],
  ['section-clips', 's8'],
])('%s', async (name, scenario) => {
  const notebook = percussionNotebook(8);
  const drawing = document.createElement('section-drawing');
  drawing.section = sectionOf(resolveStack(notebook, scenario, 'floor'), {
    width_m: 0.9,
    hatchOf: hatchesOf(notebook.stacks[0]!, valuesOf(notebook, scenario)),
  });
  drawing.label = name;
  document.body.append(drawing);
  await drawing.updateComplete;
  const svg = drawing.shadowRoot!.querySelector('svg')!.cloneNode(true) as SVGSVGElement;
  const style = document.createElementNS('http://www.w3.org/2000/svg', 'style');
  style.textContent = drawing
    .shadowRoot!.adoptedStyleSheets.flatMap((s) => [...s.cssRules].map((r) => r.cssText))
    .join('\n');
  svg.prepend(style);
  const text = withValues(new XMLSerializer().serializeToString(svg), getComputedStyle(drawing));
  await expect(plain(text)).toMatchFileSnapshot(`./__snapshots__/${name}.svg`);
});
