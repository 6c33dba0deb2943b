/** The elements that match, in the document or from `root` down, in shadow roots too, in the order in which they stand. */
export function deep<E extends Element>(selector: string, root: ParentNode = document): E[] {
  return [...root.querySelectorAll('*')].flatMap((element) => [
    ...(element.matches(selector) ? [element as E] : []),
    ...(element.shadowRoot ? deep<E>(selector, element.shadowRoot) : []),
  ]);
}
