import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#src/charts/band-chart.ts';
import '#src/charts/share-chart.ts';
import type { BandChart } from '#src/charts/band-chart.ts';
import type { BandChartData, BandOverlay } from '#src/charts/band-data.ts';
import { pictureFile, pngOf } from '#src/charts/picture-file.ts';
import { scenarioMark } from '#src/charts/scenario-marks.ts';
import { BANDS_HZ } from '../charts/made-up-prediction.ts';
import { axeProblems } from './axe-problems.ts';

function data(curves = 2, offset_dB = 0, overlays: readonly BandOverlay[] = []): BandChartData {
  return {
    bands_Hz: BANDS_HZ,
    valueLabel: 'transmission loss R, dB',
    zeroLine: false,
    overlays,
    series: Array.from({ length: curves }, (_, i) => ({
      id: `s${i}`,
      label: `Scenario ${i + 1}`,
      values_dB: BANDS_HZ.map((_, k) => 21 + 5 * i + 1.5 * k + offset_dB),
      mark: scenarioMark(i),
    })),
  };
}

const frames = async (count = 3) => {
  for (let i = 0; i < count; i++) await new Promise(requestAnimationFrame);
};

async function shown(chart: BandChart): Promise<BandChart> {
  document.body.append(chart);
  await expect.poll(() => chart.picture).toBeTruthy();
  return chart;
}

async function bandChart(given = data(), width = '800px'): Promise<BandChart> {
  const chart = document.createElement('band-chart');
  chart.style.width = width;
  chart.data = given;
  chart.label = 'Curves of the transmission loss of two scenarios.';
  return shown(chart);
}

const texts = (chart: BandChart) => [...chart.picture!.querySelectorAll('text')].map((t) => t.textContent);
const curvesOf = (chart: BandChart) =>
  [...chart.picture!.querySelectorAll<SVGPathElement>('g[aria-label], path')].filter((p) =>
    p.getAttribute('marker-mid'),
  );
const reach = (chart: BandChart) => chart.shadowRoot!.querySelector<HTMLElement>('.reach')!;
const cells = (chart: BandChart, row: number) =>
  [...chart.shadowRoot!.querySelectorAll(`.key tbody tr:nth-child(${row + 1}) td`)].map((c) => c.textContent);

beforeEach(() => page.viewport(1000, 800));

test('a range of values is paler below the band from which it is known, with a broken edge there', async () => {
  const range = {
    kind: 'range' as const,
    label: 'uncertainty',
    description: '',
    low_dB: BANDS_HZ.map(() => 30),
    high_dB: BANDS_HZ.map(() => 40),
    color: 'var(--scenario-1)',
  };
  const drawn = async (guessedBelow_Hz?: number) => {
    const overlay = guessedBelow_Hz === undefined ? range : { ...range, guessedBelow_Hz };
    const { picture } = await bandChart(data(1, 0, [overlay]));
    const inherited = (path: Element, name: string) => path.closest(`[${name}]`)?.getAttribute(name);
    return [...picture!.querySelectorAll('path')].flatMap((path) => {
      const opacity = inherited(path, 'fill-opacity');
      const dash = inherited(path, 'stroke-dasharray');
      if (opacity === undefined && dash !== '2 4') return [];
      const { left, right } = path.getBoundingClientRect();
      return [{ opacity, left: Math.round(left), right: Math.round(right) }];
    });
  };
  const [whole] = await drawn();
  const [known, guessed, ...edges] = await drawn(100);
  expect(guessed).toMatchObject({ opacity: '0.05', left: whole!.left, right: known!.left });
  expect(known).toMatchObject({ opacity: '0.14', right: whole!.right });
  expect(edges).toHaveLength(2);
  expect(await drawn(50)).toHaveLength(1);
});

test('the picture is one image with one sentence, and nothing in it speaks beside', async () => {
  const chart = await bandChart();
  const picture = chart.picture!;
  expect(picture.getAttribute('role')).toBe('img');
  expect(picture.getAttribute('aria-label')).toBe('Curves of the transmission loss of two scenarios.');
  expect(picture.querySelectorAll('[aria-label], [aria-description]')).toHaveLength(0);
  expect(await axeProblems(chart)).toEqual([]);
});

test('the marker of a sample lies in its middle without being moved there, which paper may forget', async () => {
  const chart = await bandChart();
  const samples = [...chart.shadowRoot!.querySelectorAll('.key .line-sample')];
  expect(samples).toHaveLength(2);
  for (const sample of samples) {
    const [, marker] = sample.querySelectorAll('path');
    expect(marker!.getAttribute('transform')).toBeNull();
    const [outer, inner] = [sample, marker!].map((e) => e.getBoundingClientRect());
    expect(inner!.left + inner!.width / 2).toBeCloseTo(outer!.left + outer!.width / 2, 1);
    expect(inner!.top + inner!.height / 2).toBeCloseTo(outer!.top + outer!.height / 2, 1);
  }
});

test('with room every band is labelled, in its nominal frequency', async () => {
  const labels = texts(await bandChart(data(), '960px'));
  expect(labels).toEqual(expect.arrayContaining(BANDS_HZ.map(String)));
});

test('at 300 px the octave centres are written, none of them blank and none over another', async () => {
  const chart = await bandChart(data(), '300px');
  expect(texts(chart)).toEqual(expect.arrayContaining(['63', '125', '250', '500', '1000', '2000', '4000']));
  const boxes = [...chart.picture!.querySelectorAll('text')]
    .filter((t) => ['63', '125', '250', '500', '1000', '2000', '4000'].includes(t.textContent!))
    .map((t) => t.getBoundingClientRect())
    .toSorted((a, b) => a.left - b.left);
  boxes.slice(1).forEach((box, i) => {
    expect(box.left).toBeGreaterThan(boxes[i]!.right);
  });
});

test('every curve has a colour, a dash and markers of its own', async () => {
  const curves = curvesOf(await bandChart(data(4)));
  expect(curves).toHaveLength(4);
  const looks = curves.map((c) => [getComputedStyle(c).stroke, c.getAttribute('stroke-dasharray')].join());
  expect(new Set(looks).size).toBe(4);
});

test('a gap in the values is a gap in the curve', async () => {
  const given = data(1);
  const values_dB = given.series[0]!.values_dB.map((v, i) => (i === 10 ? NaN : v));
  const chart = await bandChart({ ...given, series: [{ ...given.series[0]!, values_dB }] });
  const moves = curvesOf(chart)[0]!.getAttribute('d')!.match(/M/g);
  expect(moves).toHaveLength(2);
});

describe('reading values', () => {
  test('the key tells the values at 500 Hz until another band is pinned', async () => {
    const chart = await bandChart();
    expect(cells(chart, 0).at(-1)).toBe('36.0 dB');
    expect(cells(chart, 1).at(-1)).toBe('41.0 dB');
  });

  test('arrow keys move the pinned band, page keys by an octave, home and end to the ends', async () => {
    const chart = await bandChart();
    const slider = reach(chart);
    slider.focus();
    await userEvent.keyboard('{ArrowRight}');
    await chart.updateComplete;
    expect(slider.getAttribute('aria-valuetext')).toBe('630 Hz: Scenario 1 37.5 dB, Scenario 2 42.5 dB');
    await userEvent.keyboard('{PageDown}');
    await chart.updateComplete;
    expect(slider.getAttribute('aria-valuetext')).toContain('315 Hz');
    await userEvent.keyboard('{Home}{ArrowLeft}');
    await chart.updateComplete;
    expect(slider.getAttribute('aria-valuetext')).toContain('50 Hz');
    await userEvent.keyboard('{End}');
    await chart.updateComplete;
    expect(slider.getAttribute('aria-valuetext')).toContain('5000 Hz');
  });

  test('the band under the pointer has a column of its own, and a click pins it', async () => {
    const chart = await bandChart();
    const at = chart.frame!.xOfBand(2);
    await userEvent.hover(reach(chart), { position: { x: at, y: 100 } });
    await chart.updateComplete;
    expect(cells(chart, 0)).toEqual(['24.0 dB', '36.0 dB']);
    await userEvent.click(reach(chart), { position: { x: at, y: 100 } });
    await chart.updateComplete;
    expect(cells(chart, 0)).toEqual(['24.0 dB', '24.0 dB']);
  });

  test('reading draws nothing anew', async () => {
    const chart = await bandChart();
    const before = chart.picture;
    await userEvent.hover(reach(chart), { position: { x: 300, y: 100 } });
    await chart.updateComplete;
    expect(chart.picture).toBe(before);
  });
});

describe('while values change', () => {
  test('several new data in one frame are drawn once', async () => {
    const chart = await bandChart();
    await frames();
    const drawn = new Set<SVGSVGElement>();
    const watch = new MutationObserver(() => drawn.add(chart.picture!));
    watch.observe(chart.shadowRoot!, { childList: true, subtree: true });
    await frames(1);
    for (let i = 1; i <= 4; i++) {
      chart.data = data(2, i);
      await Promise.resolve();
    }
    await frames(4);
    watch.disconnect();
    // The first at once, the last with the next frame; those between never.
    expect(drawn.size).toBeLessThanOrEqual(2);
    expect(cells(chart, 0).at(-1)).toBe('40.0 dB');
  });

  test('the range grows at once and does not shrink while the button is down', async () => {
    const chart = await bandChart();
    const { range } = chart.frame!;
    window.dispatchEvent(new PointerEvent('pointerdown'));
    chart.data = data(2, 40);
    await frames();
    expect(chart.frame!.range.high).toBeGreaterThan(range.high);
    const grown = chart.frame!.range;
    chart.data = data(2, 0);
    await frames();
    await new Promise((resolve) => setTimeout(resolve, 900));
    expect(chart.frame!.range).toEqual(grown);
    window.dispatchEvent(new PointerEvent('pointerup'));
    await expect.poll(() => chart.frame!.range, { timeout: 2000 }).toEqual(range);
  });

  test('while a newer result is on its way the picture says so and stays', async () => {
    const chart = await bandChart();
    const before = chart.picture;
    chart.busy = true;
    await chart.updateComplete;
    expect(chart.shadowRoot!.querySelector('.picture')!.getAttribute('aria-busy')).toBe('true');
    expect(chart.picture).toBe(before);
  });

  async function farBelow(): Promise<BandChart> {
    const chart = await bandChart();
    const spacer = document.createElement('div');
    spacer.style.height = '5000px';
    document.body.prepend(spacer);
    await frames(4);
    return chart;
  }

  test('a chart out of sight waits until changes rest, and then shows the last', async () => {
    const chart = await farBelow();
    const before = chart.picture;
    for (let i = 1; i <= 5; i++) {
      chart.data = data(2, i);
      await frames(2);
    }
    expect(chart.picture).toBe(before);
    await expect.poll(() => cells(chart, 0).at(-1)).toBe('41.0 dB');
    expect(chart.picture).not.toBe(before);
  });

  test('a chart that comes into sight catches up at once', async () => {
    const chart = await farBelow();
    chart.data = data(2, 7);
    await frames(1);
    chart.scrollIntoView();
    await frames(4);
    expect(cells(chart, 0).at(-1)).toBe('43.0 dB');
  });

  test('a chart that nobody has scrolled to is drawn for paper, and again once it is seen', async () => {
    const unseen = document.createElement('div');
    unseen.style.display = 'none';
    const chart = document.createElement('band-chart');
    chart.data = data();
    unseen.append(chart);
    document.body.append(unseen);
    await frames();
    expect(chart.picture).toBeUndefined();
    window.dispatchEvent(new Event('beforeprint'));
    expect(curvesOf(chart)).toHaveLength(2);
    expect(chart.shadowRoot!.querySelector('.picture')!.contains(chart.picture!)).toBe(true);
    window.dispatchEvent(new Event('afterprint'));
    unseen.style.display = 'block';
    unseen.style.width = '500px';
    await expect.poll(() => chart.picture!.getAttribute('width')).toBe('500');
    unseen.remove();
  });

  test('for paper a wide chart is laid out anew instead of being shrunk, and stands as before afterwards', async () => {
    const chart = await bandChart(data(2), '1100px');
    const before = chart.picture!.getAttribute('width');
    expect(before).toBe('1100');
    window.dispatchEvent(new Event('beforeprint'));
    expect(chart.picture!.getAttribute('width')).toBe('680');
    window.dispatchEvent(new Event('afterprint'));
    expect(chart.picture!.getAttribute('width')).toBe(before);
  });

  test('a chart that is moved in the page goes on reacting to its width', async () => {
    const chart = await bandChart();
    const place = document.createElement('div');
    place.style.width = '500px';
    chart.style.width = '';
    document.body.append(place);
    place.append(chart);
    await expect.poll(() => chart.frame!.width).toBe(500);
  });
});

describe('what lies outside of the picture', () => {
  test('a curve below the lowest level that is drawn ends at the axis; its values stay in the key', async () => {
    const chart = await bandChart({ ...data(1, -30), cutBelow_dB: 0 });
    expect(chart.frame!.range.low).toBe(0);
    const [curve] = curvesOf(chart);
    expect(curve!.closest('[clip-path]')).not.toBeNull();
    expect(texts(chart).filter((t) => t?.startsWith('\u2212'))).toEqual([]);
    reach(chart).focus();
    await userEvent.keyboard('{Home}');
    await chart.updateComplete;
    expect(cells(chart, 0)).toContain('\u22129.0 dB');
    expect(chart.shadowRoot!.querySelectorAll('.live circle')).toHaveLength(0);
    const whole = await bandChart(data(1));
    expect(curvesOf(whole)[0]!.closest('[clip-path]')).toBeNull();
  });

  test('a frequency beside all bands has a row in the key without a sample, and takes no room above the curves', async () => {
    const frequency = (frequency_Hz: number): BandOverlay => {
      const label = `f0 ${frequency_Hz} Hz`;
      return { kind: 'frequency', label, description: `${label}: bounce`, frequency_Hz, dash: '4 3' };
    };
    const chart = await bandChart(data(1, 0, [frequency(37), frequency(38), frequency(7000)]));
    expect(texts(chart).filter((t) => t?.startsWith('f0'))).toEqual([]);
    const remarks = [...chart.shadowRoot!.querySelectorAll('.key td.remark')];
    expect(remarks.map((r) => r.textContent!.trim())).toEqual([
      'f0 37 Hz: bounce (below the bands of this picture)',
      'f0 38 Hz: bounce (below the bands of this picture)',
      'f0 7000 Hz: bounce (above the bands of this picture)',
    ]);
    expect(remarks.flatMap((r) => [...r.querySelectorAll('svg path')])).toEqual([]);
    expect(chart.frame!.top).toBe((await bandChart(data(1))).frame!.top);
    const inside = await bandChart(data(1, 0, [frequency(73)]));
    expect(inside.shadowRoot!.querySelectorAll('.key td.remark svg path')).toHaveLength(1);
  });
});

describe('overlays', () => {
  const overlays: readonly BandOverlay[] = [
    { kind: 'frequency', label: 'f0 30 Hz', description: 'f0 30 Hz: bounce', frequency_Hz: 30, dash: '4 3' },
    { kind: 'frequency', label: 'f0 73 Hz', description: 'f0 73 Hz: bounce', frequency_Hz: 73, dash: '4 3' },
    { kind: 'frequency', label: 'f0 79 Hz', description: 'f0 79 Hz: bounce', frequency_Hz: 79, dash: '4 3' },
    { kind: 'frequency', label: 'fc 5200 Hz', description: 'fc 5200 Hz: bend', frequency_Hz: 5200, dash: '4 3' },
    { kind: 'line', label: 'direct', description: 'direct', values_dB: BANDS_HZ.map(() => 50), dash: '' },
    { kind: 'line', label: 'flanking', description: 'flanking', values_dB: BANDS_HZ.map(() => 50.5), dash: '' },
    { kind: 'line', label: 'far above', description: 'far above', values_dB: BANDS_HZ.map(() => 500), dash: '' },
    // Both by the upper right corner: one just below it, one just over it.
    {
      kind: 'line',
      label: 'mass law',
      description: 'mass law',
      values_dB: BANDS_HZ.map((_, i) => 49 + 2 * i),
      dash: '',
    },
    {
      kind: 'line',
      label: 'supports',
      description: 'supports',
      values_dB: BANDS_HZ.map((_, i) => 51 + 2 * i),
      dash: '',
    },
  ];

  test.each(['360px', '800px'])('at %s no written name lies over another or outside the picture', async (width) => {
    const chart = await bandChart(data(3, 0, overlays), width);
    const names = overlays.flatMap((o) => ('label' in o ? [o.label] : []));
    const boxes = [...chart.picture!.querySelectorAll('text')]
      .filter((t) => names.includes(t.textContent!))
      .map((t) => ({ name: t.textContent!, box: t.getBoundingClientRect() }));
    // 30 Hz lies below the lowest band.
    expect(boxes.map((b) => b.name).toSorted()).toEqual(names.filter((n) => n !== 'f0 30 Hz').toSorted());
    const outer = chart.getBoundingClientRect();
    boxes.forEach(({ name, box }, i) => {
      expect(box.left, name).toBeGreaterThanOrEqual(outer.left - 1);
      expect(box.right, name).toBeLessThanOrEqual(outer.right + 1);
      for (const other of boxes.slice(0, i)) {
        const apart =
          box.left >= other.box.right ||
          other.box.left >= box.right ||
          box.top >= other.box.bottom - 4 ||
          other.box.top >= box.bottom - 4;
        expect(apart, `${name} and ${other.name}`).toBe(true);
      }
    });
  });

  test('a line far above the curves stretches the range by two tens and is cut there', async () => {
    const plain = await bandChart(data(3));
    const laid = await bandChart(data(3, 0, overlays));
    expect(laid.frame!.range).toEqual({ low: plain.frame!.range.low, high: plain.frame!.range.high + 20 });
  });
});

describe('files', () => {
  test('an SVG file stands by itself: no custom property is left, and every name is in it', async () => {
    const chart = await bandChart(data(8));
    const text = pictureFile(chart.pictureParts('Percussion & reading: "R" <test>', ['a note'])!);
    expect(text).not.toContain('var(');
    const file = new DOMParser().parseFromString(text, 'image/svg+xml');
    expect(file.querySelector('parsererror')).toBeNull();
    const words = file.documentElement.textContent!;
    for (const name of ['Scenario 1', 'Scenario 8', 'a note', 'Percussion & reading: "R" <test>'])
      expect(words).toContain(name);
  });

  test('on a narrow page the title stays within the picture, in any face that a reader has', async () => {
    const chart = await bandChart(data(2), '328px');
    const title = 'A practice room above a library: Transmission loss: how much sound each floor holds back';
    const place = document.createElement('div');
    place.innerHTML = pictureFile(chart.pictureParts(title, [])!);
    document.body.append(place);
    const svg = place.querySelector('svg')!;
    const lines = [...svg.querySelectorAll(':scope > text')].filter((t) => title.includes(t.textContent!));
    expect(lines.length).toBeGreaterThan(1);
    for (const face of ['sans-serif', 'Source Sans 3 Variable']) {
      svg.setAttribute('font-family', face);
      for (const line of lines) {
        const { x, width } = (line as SVGTextElement).getBBox();
        expect(x + width).toBeLessThanOrEqual(328 + 40);
      }
    }
    place.remove();
  });

  test('a PNG file is twice as large as the picture and not blank', async () => {
    const chart = await bandChart(data(2), '400px');
    const svg = pictureFile(chart.pictureParts('Title', [])!);
    const bitmap = await createImageBitmap(await pngOf(svg));
    expect(bitmap.width).toBe(2 * (400 + 40));
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const context = canvas.getContext('2d')!;
    context.drawImage(bitmap, 0, 0);
    const pixels = context.getImageData(0, 0, bitmap.width, bitmap.height).data;
    expect(new Set(pixels).size).toBeGreaterThan(20);
  });
});

test('shares read by keyboard and name every path', async () => {
  const chart = document.createElement('share-chart');
  chart.label = 'Shares of the paths.';
  chart.style.width = '700px';
  chart.data = {
    bands_Hz: BANDS_HZ,
    regions: [{ first: 0, last: 20 }],
    paths: [
      { path: 'direct', shares: BANDS_HZ.map(() => 0.75) },
      { path: 'flanking', shares: BANDS_HZ.map(() => 0.25) },
    ],
  };
  document.body.append(chart);
  await expect.poll(() => chart.shadowRoot!.querySelector('.reach')).toBeTruthy();
  expect(chart.shadowRoot!.querySelector('.reach')!.getAttribute('aria-valuetext')).toBe(
    '500 Hz: direct 75 %, flanking 25 %',
  );
  const columns = chart.shadowRoot!.querySelectorAll('.picture > svg:first-of-type rect');
  expect(columns).toHaveLength(2 * BANDS_HZ.length);
  expect(await axeProblems(chart)).toEqual([]);
});
