import { render } from 'lit';
import { expect, test } from 'vitest';
import { scenarioSample } from '#cells/shared/scenario-sample.ts';
import { SCENARIO_MARK_COUNT, scenarioMark } from '#src/charts/scenario-marks.ts';

/** Chromium repeats the head of a table on every page of paper, but forgets what moves the parts of its pictures. */
test.each(Array.from({ length: SCENARIO_MARK_COUNT }, (_, i) => [scenarioMark(i).marker, i] as const))(
  'the marker %s stands on its line without being moved there',
  (_, mark) => {
    const host = document.createElement('div');
    render(scenarioSample({ mark }), host);
    document.body.append(host);
    const picture = host.querySelector('svg')!;
    const { x, y } = picture.viewBox.baseVal;
    expect([x, y]).toEqual([0, 0]);
    expect(picture.querySelector('[transform]')).toBeNull();
    const [line, marker] = [...picture.querySelectorAll('path')].map((path) => path.getBBox());
    expect(line!.y).toBe(6);
    expect(marker!.x + marker!.width / 2).toBeCloseTo(18, 0);
    expect(marker!.y).toBeGreaterThan(0);
    expect(marker!.y + marker!.height).toBeLessThan(12);
    expect(marker!.y).toBeLessThan(6.5);
  },
);
