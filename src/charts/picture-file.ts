/** A drawn picture as a file that stands by itself: title above, key below, colours and type written out. */
import { render, type TemplateResult } from 'lit';
import { svgElement } from './svg-element.ts';
import { wrapText } from './wrap-text.ts';

export interface PictureParts {
  readonly title: string;
  /** Between title and picture: what the values are. */
  readonly subtitle: string;
  readonly picture: SVGSVGElement;
  readonly key: readonly { readonly sample: TemplateResult; readonly text: string }[];
  /** Below the key: cautions and where the numbers come from. */
  readonly notes: readonly string[];
  /** Where the custom properties and the type come from. */
  readonly style: CSSStyleDeclaration;
}

const MARGIN = 20;
const LINE = 19;
/** Average width of a character at 13 px, px, in whatever face the reader's machine has. */
const CHARACTER = 6.6;
/** Of the title, larger and bolder. */
const TITLE_CHARACTER = 9;

export function pictureFile({ title, subtitle, picture, key, notes, style }: PictureParts): string {
  const document = picture.ownerDocument;
  const { width, height } = picture.viewBox.baseVal;
  const total = width + 2 * MARGIN;
  const root = svgElement(document, 'svg', { width: total, 'font-family': style.fontFamily, 'font-size': 13 });
  let y = MARGIN;
  const write = (text: string, x: number, attributes: Attributes = {}, character = CHARACTER) => {
    for (const line of wrapText(text, (total - x - MARGIN) / character)) {
      y += LINE;
      const element = svgElement(document, 'text', { x, y: y - 5, fill: 'var(--ink)', ...attributes });
      element.textContent = line;
      root.append(element);
    }
  };
  const put = (svg: SVGSVGElement, x: number, top: number, size: { width: number; height: number }) => {
    const copy = svg.cloneNode(true) as SVGSVGElement;
    for (const [name, value] of Object.entries({ x, y: top, ...size })) copy.setAttribute(name, String(value));
    copy.setAttribute('overflow', 'visible');
    root.append(copy);
  };
  write(title, MARGIN, { 'font-weight': 600, 'font-size': 15 }, TITLE_CHARACTER);
  write(subtitle, MARGIN, { fill: 'var(--ink-soft)' });
  put(picture, MARGIN, y + 4, { width, height });
  y += height + 12;
  for (const { sample, text } of key) {
    put(svgOf(sample), MARGIN, y + 4, { width: 36, height: 12 });
    write(text, MARGIN + 46);
  }
  for (const note of notes) write(note, MARGIN, { fill: 'var(--ink-soft)', 'font-size': 12 });
  y += MARGIN;
  root.setAttribute('height', String(y));
  root.setAttribute('viewBox', `0 0 ${total} ${y}`);
  root.prepend(svgElement(document, 'rect', { width: total, height: y, fill: 'var(--paper)' }));
  return withValues(wellFormed(new XMLSerializer().serializeToString(root)), style);
}

/** Names may hold characters that XML 1.0 (section 2.2) has no place for, and serialising lets them through. */
export function wellFormed(xml: string): string {
  return xml.replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD');
}

type Attributes = Readonly<Record<string, string | number>>;

/** The drawing in a template, outside the page. */
function svgOf(template: TemplateResult): SVGSVGElement {
  const place = document.createElement('div');
  render(template, place);
  return place.querySelector('svg')!;
}

/** A file has no page to take custom properties from. */
export function withValues(svg: string, style: Pick<CSSStyleDeclaration, 'getPropertyValue'>): string {
  return svg.replace(/var\((--[\w-]+)\)/g, (whole, name: string) => style.getPropertyValue(name).trim() || whole);
}

/** Twice the size on screen, so that it stays sharp in print. @throws Error if the browser cannot draw it. */
export async function pngOf(svg: string, scale = 2): Promise<Blob> {
  const url = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.naturalWidth * scale;
    canvas.height = image.naturalHeight * scale;
    canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('the picture could not be made'))), 'image/png');
    });
  } finally {
    URL.revokeObjectURL(url);
  }
}
