/**
 * From CommonMark to nodes of the page. Whatever the text says, raw HTML stays text, nothing is fetched, and links lead
 * to `https:` and `mailto:` only.
 */
import createDOMPurify from 'dompurify';
import { micromark } from 'micromark';

const TAGS = [
  ...['p', 'h2', 'h3', 'h4', 'h5', 'h6', 'ul', 'ol', 'li', 'blockquote', 'pre', 'code', 'hr', 'br'],
  ...['a', 'em', 'strong'],
];

/** `value:` and `formula:` never reach the page as links: the cell puts something of its own in their place. */
const DESTINATIONS = /^(?:https:|mailto:|value:|formula:)/i;

/** The words that begin a folded answer, and its summary. */
const ANSWER = /^\s*Answer:\s*/;

export function renderText(text: string, document: Document): DocumentFragment {
  // micromark escapes raw HTML; its own check of links would drop ours, so that theirs is made below instead.
  const markup = micromark(text, { allowDangerousProtocol: true, allowDangerousHtml: false });
  const inert = new DOMParser().parseFromString(markup, 'text/html').body;
  describeImages(inert);
  lowerHeadings(inert);
  const clean = createDOMPurify(document.defaultView!).sanitize(inert.innerHTML, {
    ALLOWED_TAGS: TAGS,
    ALLOWED_ATTR: ['href', 'title', 'start'],
    ALLOW_DATA_ATTR: false,
    ALLOW_ARIA_ATTR: false,
    ALLOWED_URI_REGEXP: DESTINATIONS,
    RETURN_DOM_FRAGMENT: true,
  });
  openElsewhere(clean);
  foldAnswers(clean);
  return clean;
}

/** A picture would be fetched from somewhere: its description stands instead. */
function describeImages(root: Element): void {
  for (const image of root.querySelectorAll('img')) image.replaceWith(image.alt);
}

/** The notebook's title is h1: the highest heading of a text becomes h2 and keeps its distance to the others. */
function lowerHeadings(root: Element): void {
  const headings = [...root.querySelectorAll('h1, h2, h3, h4, h5, h6')];
  const levelOf = (heading: Element) => Number(heading.localName[1]);
  const shift = 2 - Math.min(...headings.map(levelOf));
  for (const heading of headings) {
    const moved = heading.ownerDocument.createElement(`h${Math.min(6, levelOf(heading) + shift)}`);
    moved.append(...heading.childNodes);
    heading.replaceWith(moved);
  }
}

function openElsewhere(root: DocumentFragment): void {
  for (const link of root.querySelectorAll('a'))
    if (!link.hasAttribute('href')) link.replaceWith(...link.childNodes);
    else if (/^https:/i.test(link.getAttribute('href')!)) {
      link.target = '_blank';
      link.rel = 'noopener noreferrer nofollow';
    }
}

/**
 * A block quote whose first line is `Answer:` is folded until the reader opens it; words behind the colon stand on the
 * fold.
 */
function foldAnswers(root: DocumentFragment): void {
  for (const quote of root.querySelectorAll('blockquote')) {
    const paragraph = quote.querySelector(':scope > p:first-child');
    const first = paragraph?.firstChild;
    if (!paragraph || !(first instanceof Text) || !ANSWER.test(first.data)) continue;
    const details = quote.ownerDocument.createElement('details');
    const summary = quote.ownerDocument.createElement('summary');
    summary.append(...firstLine(paragraph));
    first.data = first.data.replace(ANSWER, '');
    if (summary.textContent?.trim() === '') summary.textContent = 'Answer';
    if (paragraph.textContent?.trim() === '') paragraph.remove();
    details.append(summary, ...quote.childNodes);
    quote.replaceWith(details);
  }
}

/** Takes out what stands before the first line break. */
function firstLine(paragraph: Element): Node[] {
  const line: Node[] = [];
  while (paragraph.firstChild) {
    const node = paragraph.firstChild;
    if (node instanceof HTMLBRElement) break;
    if (node instanceof Text && node.data.includes('\n')) {
      const rest = node.splitText(node.data.indexOf('\n'));
      rest.data = rest.data.trimStart();
      line.push(node);
      node.remove();
      break;
    }
    line.push(node);
    node.remove();
  }
  return line;
}
