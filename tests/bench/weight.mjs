/** What is sent, by file, packed as hosts pack it. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipped, kB, notebook, packed, stylesOf } from './support.mjs';

export const title = 'Weight, kB packed with gzip; aim: script of every page ≤ 60, a page with a plot ≤ 150';

export const bench = async (line) => {
  const folder = await notebook();
  const assets = readdirSync(join(folder, 'assets')).filter((name) => name.endsWith('.js'));
  const sizes = new Map(assets.map((name) => [name, gzipped(join(folder, 'assets', name)).length]));
  const sizeOf = (start) => sizes.get(assets.find((asset) => asset.startsWith(start))) ?? Number.NaN;
  const page = sizeOf('notebook-');
  const shared = sizeOf('figures-share-');
  const library = sizeOf('plot-library-');
  line('script of every page', kB(page));
  line('what figures share, before the first figure', kB(shared));
  line('plot library, before the first plot', kB(library));
  line('all three, and the figure motion-plot', kB(page + shared + library + sizeOf('motion-plot-')));
  for (const name of readdirSync(folder).filter((file) => file.endsWith('.html'))) {
    const styles = packed(stylesOf(readFileSync(join(folder, name), 'utf8')));
    line(`${name}, and the styles in it`, `${kB(gzipped(join(folder, name)).length)}   ${kB(styles.length)}`);
  }
};
