import { expect, test } from 'vitest';
import { printable } from '#src/commands/printable.ts';

// ECMA-48: ESC and its one-byte form CSI begin control sequences, OSC 0 sets a window's title; CR and BS write over a line.
test.each(['\u001b[2J', '\u009b31m', '\u001b]0;title\u0007', 'a\rb', 'a\bb', '\u0000', '\u007f'])(
  'ECMA-48: nothing of %j reaches a terminal as control',
  (text) => {
    const shown = printable(`a ${text} b`);
    expect([...shown].filter((c) => c < ' ' || (c >= '\u007f' && c <= '\u009f'))).toEqual([]);
    expect(shown).toHaveLength(text.length + 4);
  },
);

test('lines, tabs and every letter stay', () => {
  expect(printable('Übungsraum\n\tR’w 5 1/2″ 太鼓')).toBe('Übungsraum\n\tR’w 5 1/2″ 太鼓');
});
