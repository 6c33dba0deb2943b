import { expect, test } from 'vitest';
import { bandCsv } from '#src/charts/band-table.ts';
import { csvText } from '#src/charts/csv.ts';
import { fileName } from '#src/charts/file-name.ts';
import { wellFormed, withValues } from '#src/charts/picture-file.ts';
import { scenarioMark } from '#src/charts/scenario-marks.ts';
import { wrapText } from '#src/charts/wrap-text.ts';

// RFC 4180, section 2: fields with commas, quotes or line breaks are quoted, quotes doubled, lines end in CR LF.
test('RFC 4180: cells are quoted where they must be', () => {
  expect(csvText(['a', 'b'], [['x, y', 'say "hush"']])).toBe('a,b\r\n"x, y","say ""hush"""\r\n');
});

test('a number without a value is an empty cell', () => {
  expect(csvText(['a', 'b'], [[NaN, 1.5]])).toBe('a,b\r\n,1.5\r\n');
});

test.each(['=1+1', '+1', '-1', '@x', '\t=1', ' =1+1', '\n=1', '＝1+1', '＠x'])(
  'the name %j is no formula in a spreadsheet',
  (name) => {
    const [head] = csvText([name], []).split('\r\n');
    expect(head!.replace(/^"/, '').startsWith("'")).toBe(true);
  },
);

test('curves become a row per band and a column per curve', () => {
  const data = {
    bands_Hz: [100, 125],
    valueLabel: 'R, dB',
    zeroLine: false,
    series: [{ id: 'a', label: 'Base', values_dB: [30.126, NaN], mark: scenarioMark(0) }],
    overlays: [{ kind: 'line' as const, label: 'mass law', description: '', values_dB: [28, 30], dash: '' }],
  };
  expect(bandCsv(data)).toBe('band_Hz,Base (dB),mass law (dB)\r\n100,30.13,28\r\n125,,30\r\n');
  expect(bandCsv(data, 'Base').split('\r\n')[0]).toBe('band_Hz,Base (dB),Base: mass law (dB)');
});

test('what is laid over curves says in the file whose it is; measured bands go by their own name', () => {
  const values_dB = [28];
  const data = {
    bands_Hz: [100],
    valueLabel: 'R, dB',
    zeroLine: false,
    series: [],
    overlays: [
      { kind: 'range' as const, label: 'uncertainty', description: '', low_dB: [20], high_dB: [30], color: '' },
      {
        kind: 'points' as const,
        label: 'Room 2',
        description: '',
        values_dB,
        mark: scenarioMark(2),
        bandWidth: 'third' as const,
      },
    ],
  };
  const [head] = bandCsv(data, 'Both').split('\r\n');
  expect(head).toBe('band_Hz,"Both: uncertainty, low (dB)","Both: uncertainty, high (dB)",Room 2 (dB)');
});

test.each([
  [['Percussion above the reading room', 'TL'], 'Percussion-above-the-reading-room-TL.svg'],
  [['../../etc/passwd', ''], 'etc-passwd.svg'],
  [['a<b>:"|?*\u0000'], 'a-b.svg'],
  [['', '  '], 'picture.svg'],
  [['Übung für große Trommel'], 'Übung-für-große-Trommel.svg'],
])('%j becomes the file name %s', (parts, name) => {
  expect(fileName(parts, 'svg')).toBe(name);
});

test('a very long title gives a file name that systems accept', () => {
  expect(fileName(['x'.repeat(500)], 'png').length).toBeLessThan(100);
  expect(fileName([`A short word and one of ${'x'.repeat(500)}`], 'png').length).toBeGreaterThan(80);
});

test('a long title ends with a whole word in its file name', () => {
  const names = ['A practice room above a library', 'Transmission loss: how much sound each floor holds back'];
  expect(fileName(names, 'csv')).toBe(
    'A-practice-room-above-a-library-Transmission-loss-how-much-sound-each-floor.csv',
  );
});

test('custom properties are written out, and what is unknown stays', () => {
  const style = { getPropertyValue: (name: string) => (name === '--ink' ? ' #111 ' : '') };
  expect(withValues('<a fill="var(--ink)" stroke="var(--other)"/>', style)).toBe(
    '<a fill="#111" stroke="var(--other)"/>',
  );
});

// XML 1.0, section 2.2: Char is #x9, #xA, #xD, #x20-#xD7FF, #xE000-#xFFFD, #x10000-#x10FFFF.
test.each(['\u0000', '\u0008', '\u000b', '\u001b', '\ud800', '\udfff', '\ufffe', '\uffff'])(
  'XML 1.0: %j in a name does not spoil the picture file',
  (character) => {
    expect(wellFormed(`<text>a${character}b</text>`)).toBe('<text>a\uFFFDb</text>');
  },
);

test('XML 1.0: what may stand in a picture file stays', () => {
  const text = '\t\n\r \ud7ff\ue000\ufffd𝄞 Übung 太鼓';
  expect(wellFormed(text)).toBe(text);
});

test('text wraps between words, and a word that is too long is broken', () => {
  expect(wrapText('one two three', 7)).toEqual(['one two', 'three']);
  expect(wrapText('abcdefghij', 4)).toEqual(['abcd', 'efgh', 'ij']);
  expect(wrapText('', 4)).toEqual([]);
});
