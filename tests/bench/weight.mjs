/** What is sent, by file, packed as hosts pack it. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipped, kB, notebook } from './support.mjs';

export const title = 'Weight, kB packed with gzip; aim: script of every page ≤ 60, a page with a plot ≤ 150';

export const bench = async (line) => {
  const folder = await notebook();
  const assets = readdirSync(join(folder, 'assets')).filter((name) => /\.(js|css)$/.test(name));
  const sizes = new Map(assets.map((name) => [name, gzipped(join(folder, 'assets', name)).length]));
  const sizeOf = (start, end) => {
    const name = assets.find((asset) => asset.startsWith(start) && asset.endsWith(end));
    return name === undefined ? Number.NaN : sizes.get(name);
  };
  const page = sizeOf('notebook-', '.js');
  const library = sizeOf('plot-library-', '.js');
  line('script of every page', kB(page));
  line('plot library, before the first plot', kB(library));
  line('both, and the figure motion-plot', kB(page + library + sizeOf('motion-plot-', '.js')));
  line('style sheet', kB(sizeOf('style-', '.css')));
  for (const name of readdirSync(folder).filter((file) => file.endsWith('.html')))
    line(name, kB(gzipped(join(folder, name)).length));
};
