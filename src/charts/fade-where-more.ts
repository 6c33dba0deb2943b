import { css, noChange } from 'lit';
import { AsyncDirective, directive } from 'lit/async-directive.js';
import type { ElementPart } from 'lit/html.js';

/** Less than this is not worth a hint, px: widths are rounded. */
const SLACK = 2;

/**
 * Tells on an element which of its edges hide more of it: `data-more="left right"`. `fadeStyles` let it fade there, so
 * that nobody takes a cut-off column for a mistake.
 *
 *   html`<div class="scroll" ${fadeWhereMore()}>…</div>`
 */
class FadeWhereMore extends AsyncDirective {
  #element: HTMLElement | undefined;
  /** Of the element and of what is in it: either may change its width alone. */
  readonly #sizes = new ResizeObserver(() => this.#look());
  readonly #children = new MutationObserver(() => this.#watchSizes());

  override render(): unknown {
    return noChange;
  }

  override update({ element }: ElementPart): unknown {
    if (element !== this.#element) {
      this.disconnected();
      this.#element = element as HTMLElement;
      if (this.isConnected) this.reconnected();
    }
    return noChange;
  }

  override reconnected(): void {
    const element = this.#element;
    if (!element) return;
    element.addEventListener('scroll', this.#look, { passive: true });
    this.#children.observe(element, { childList: true });
    this.#watchSizes();
  }

  override disconnected(): void {
    this.#element?.removeEventListener('scroll', this.#look);
    this.#children.disconnect();
    this.#sizes.disconnect();
  }

  #watchSizes(): void {
    this.#sizes.disconnect();
    for (const part of [this.#element!, ...this.#element!.children]) this.#sizes.observe(part);
  }

  #look = (): void => {
    const element = this.#element!;
    const more = moreOf(element);
    if (more === '') delete element.dataset.more;
    else if (element.dataset.more !== more) element.dataset.more = more;
  };
}

/** The edges behind which there is more, for text that runs from left to right. */
export function moreOf({
  scrollLeft,
  scrollWidth,
  clientWidth,
}: Pick<Element, 'scrollLeft' | 'scrollWidth' | 'clientWidth'>): string {
  const left = scrollLeft > SLACK ? ['left'] : [];
  const right = scrollLeft + clientWidth < scrollWidth - SLACK ? ['right'] : [];
  return [...left, ...right].join(' ');
}

export const fadeWhereMore = directive(FadeWhereMore);

/** A first column that stays where it is needs no hint on its side: only `both-ways` elements fade on the left. */
export const fadeStyles = css`
  @media screen and (forced-colors: none) {
    [data-more~="right"] {
      mask: linear-gradient(to left, transparent, black var(--space-5)) no-clip;
    }
    .both-ways[data-more="left"] {
      mask: linear-gradient(to right, transparent, black var(--space-5)) no-clip;
    }
    .both-ways[data-more="left right"] {
      mask: linear-gradient(
          to right,
          transparent,
          black var(--space-5),
          black calc(100% - var(--space-5)),
          transparent
        )
        no-clip;
    }
    [data-more]:focus-visible {
      mask: none;
    }
  }
`;
