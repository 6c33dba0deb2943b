import { html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { expect, test } from 'vitest';

/**
 * A canary: with the wrong decorator settings the build stays green and elements simply stop updating. It must be
 * compiled by the same settings as the rest.
 */
@customElement('decorator-canary')
class DecoratorCanary extends LitElement {
  @property({ attribute: false }) value = 1;
  override render() {
    return html`${this.value}`;
  }
}

test('a property declared by a decorator updates what is rendered', async () => {
  const element = new DecoratorCanary();
  document.body.append(element);
  await element.updateComplete;
  expect(element.shadowRoot?.textContent).toBe('1');
  element.value = 2;
  await element.updateComplete;
  expect(element.shadowRoot?.textContent).toBe('2');
  expect(Object.hasOwn(element, 'value')).toBe(false); // an own field would shadow the accessor
  element.remove();
});
