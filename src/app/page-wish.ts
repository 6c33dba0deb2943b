/** What the header and the shelf ask the page to do; edits of the notebook travel as `NotebookEdit` instead. */
export type Wish =
  | { readonly do: 'undo' | 'redo' | 'save-file' | 'show-shelf' | 'new' | 'print' | 'work-on-copy' | 'take-over' }
  | { readonly do: 'open-file'; readonly file: File }
  | { readonly do: 'open' | 'duplicate' | 'delete'; readonly id: string }
  | { readonly do: 'open-demo'; readonly url: string };

export class PageWish extends Event {
  static readonly type = 'page-wish';
  readonly wish: Wish;

  constructor(wish: Wish) {
    super(PageWish.type, { bubbles: true, composed: true });
    this.wish = wish;
  }
}

declare global {
  interface HTMLElementEventMap {
    'page-wish': PageWish;
  }
}
