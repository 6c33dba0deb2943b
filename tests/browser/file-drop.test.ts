import type { ReactiveControllerHost } from 'lit';
import { expect, onTestFinished, test } from 'vitest';
import { FileDrop } from '#src/app/file-drop.ts';

function dragged(kind: 'dragover' | 'drop'): DragEvent {
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(new File(['f;R'], 'bands.csv', { type: 'text/csv' }));
  return new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true });
}

function mount() {
  const host = { addController: () => {}, requestUpdate: () => {} } as unknown as ReactiveControllerHost;
  const opened: string[] = [];
  const drop = new FileDrop(host, ({ name }) => opened.push(name));
  drop.hostConnected();
  const taker = document.body.appendChild(document.createElement('p'));
  for (const kind of ['dragover', 'drop']) taker.addEventListener(kind, (event) => event.preventDefault());
  onTestFinished(() => {
    drop.hostDisconnected();
    taker.remove();
  });
  return { drop, opened, taker };
}

test('a file that hovers over the page is announced, and opened when it is dropped', () => {
  const { drop, opened } = mount();
  const over = dragged('dragover');
  document.body.dispatchEvent(over);
  expect([drop.over, over.defaultPrevented]).toEqual([true, true]);
  document.body.dispatchEvent(dragged('drop'));
  expect([drop.over, opened]).toEqual([false, ['bands.csv']]);
});

test('a file that something under the pointer takes is neither announced nor opened by the page', () => {
  const { drop, opened, taker } = mount();
  document.body.dispatchEvent(dragged('dragover'));
  taker.dispatchEvent(dragged('dragover'));
  expect(drop.over).toBe(false);
  taker.dispatchEvent(dragged('drop'));
  expect(opened).toEqual([]);
});
