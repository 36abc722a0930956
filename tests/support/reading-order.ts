/** A page as a screen reader goes through it, from the tree of the browser (Chromium’s developer protocol). */

import { FIGURES } from '../../widgets/site/catalogue.ts';
import { WORDS } from '../../widgets/words/en/figures/kit.ts';
import { beyond, type Page } from './driven.ts';

interface Node {
  readonly nodeId: string;
  readonly ignored: boolean;
  readonly role?: { readonly value?: string };
  readonly name?: { readonly value?: string };
  readonly childIds?: readonly string[];
  readonly properties?: readonly { readonly name: string; readonly value: { readonly value?: unknown } }[];
}

/** One stop of a reader: what it is, what it is called, and what it stands in. */
interface Stop {
  readonly role: string;
  readonly name: string;
  readonly level: number;
  readonly within: readonly Stop[];
}

const CONTROLS = [
  'button',
  'textbox',
  'radio',
  'checkbox',
  'slider',
  'link',
  'combobox',
  'spinbutton',
  'DisclosureTriangle',
];

const stopsOf = async (page: Page): Promise<Stop[]> => {
  const session = await beyond(page).context().newCDPSession(beyond(page));
  const { nodes } = (await session.send('Accessibility.getFullAXTree')) as unknown as { nodes: readonly Node[] };
  await session.detach();
  const byId = new Map(nodes.map((n) => [n.nodeId, n]));
  const stops: Stop[] = [];
  const walk = (node: Node, within: readonly Stop[]) => {
    let inside = within;
    if (!node.ignored) {
      const level = node.properties?.find((p) => p.name === 'level')?.value.value;
      const stop = {
        role: node.role?.value ?? '',
        name: node.name?.value?.trim() ?? '',
        level: Number(level ?? 0),
        within,
      };
      stops.push(stop);
      inside = [...within, stop];
    }
    for (const id of node.childIds ?? []) {
      const child = byId.get(id);
      if (child) walk(child, inside);
    }
  };
  const root = nodes[0];
  if (root) walk(root, []);
  return stops;
};

/** Takes the formulas out of what is read, or puts them back: they make most of a tree that takes seconds to hand over. */
const withoutAlgebra = (page: Page, out: boolean): Promise<void> =>
  page.evaluate((hide) => {
    for (const e of document.querySelectorAll<MathMLElement>('math')) e.style.display = hide ? 'none' : '';
  }, out);

/** What is wrong with the order and the names of what is read; of its algebra too where asked. */
export const misread = async (page: Page, algebra: boolean): Promise<string[]> => {
  const front = (await page.locator('body.front').count()) > 0;
  if (!algebra) await withoutAlgebra(page, true);
  const stops = await stopsOf(page);
  if (!algebra) await withoutAlgebra(page, false);
  const found: string[] = [];
  const mains = stops.filter((s) => s.role === 'main').length;
  if (mains !== 1) found.push(`${mains} main parts`);

  let level = 0;
  for (const h of stops.filter((s) => s.role === 'heading')) {
    if (h.level > level + 1) found.push(`heading of level ${h.level} after ${level}: ${h.name}`);
    level = h.level;
  }
  const first = stops.filter((s) => s.role === 'heading' && s.level === 1).length;
  if (first !== 1) found.push(`${first} headings of level 1`);

  for (const s of stops) if (CONTROLS.includes(s.role) && s.name === '') found.push(`${s.role} without a name`);

  /** As the fold with the numbers is called. */
  const folds = new Set([...FIGURES.values()].map((w) => w.numbersName ?? WORDS.figure.numbersBehind));
  const titles = new Set([...FIGURES.values()].map((w) => w.title));
  const figures = stops.filter((s) => s.role === 'figure');
  for (const figure of figures) {
    const inside = stops.filter((s) => s.within.includes(figure));
    const at = (what: (s: Stop) => boolean) => inside.findIndex(what);
    if (!titles.has(figure.name)) found.push(`figure is called “${figure.name}”`);
    const field = at((s) => ['textbox', 'radio'].includes(s.role));
    const table = at((s) => s.role === 'DisclosureTriangle' && folds.has(s.name));
    // The sentence and the caption are the paragraphs before the table.
    const sentence = inside.findLastIndex((s, i) => i < table && s.role === 'paragraph');
    // The front shows the turning alone, without the numbers behind it.
    if (front) continue;
    const order = [field, sentence, table];
    if (order.some((i) => i < 0) || !(field < sentence && sentence < table))
      found.push(`${figure.name}: fields, sentence and table stand at ${order.join(', ')}`);
  }
  const drawn = await page.locator('figure.live').count();
  if (figures.length !== drawn) found.push(`${figures.length} of ${drawn} figures are read as figures`);

  if (!algebra) return found;
  // Algebra is read as algebra, each formula once.
  const maths = stops.filter((s) => s.role === 'math' || s.role === 'MathMLMath');
  const wanted = await page.evaluate(
    () => [...document.querySelectorAll('math')].filter((e) => e.checkVisibility()).length,
  );
  if (maths.length !== wanted) found.push(`${maths.length} of ${wanted} formulas are read as formulas`);
  return found;
};
