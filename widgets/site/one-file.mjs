/**
 * The whole notebook in one HTML file that opens by double click, with no network and nothing beside it: every page as data, packed,
 * every script, style and font inside. A page is chosen by `?page=name`; its numbers stand in the address as they
 * do elsewhere.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { oneFilePolicy } from './policy.mjs';

export const ONE_FILE = 'notebook-one-file.html';

const between = (html, open, close) => html.slice(html.indexOf(open) + open.length, html.lastIndexOf(close));
/** Script text that no tag can end, and data that no tag can open in. */
const inScript = (text) => text.replace(/<\/(script)/gi, '<\\/$1').replace(/<!--/g, '<\\!--');
const asData = (value) => JSON.stringify(value).replace(/</g, '\\u003c');
/** A third of the size: zlib's format, which browsers unpack by themselves, as text. */
const packed = (text) => deflateSync(text, { level: 9 }).toString('base64');

/** Runs in the file before anything else: puts the chosen page in place and keeps links inside the file. */
const router = async (main, unknown) => {
  window.unpackNotebook = (text) => {
    const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
    return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate'))).text();
  };
  const pages = JSON.parse(document.getElementById('notebook-pages').textContent);
  const asked = new URLSearchParams(location.search).get('page') ?? 'index';
  // Every object has a constructor; it is no page.
  const has = Object.hasOwn(pages, asked);
  const page = JSON.parse(await window.unpackNotebook(has ? pages[asked] : pages.index));
  document.querySelector('title').innerHTML = page.title;
  document.body.className = page.className;
  document.body.dataset.page = page.page;
  document.body.innerHTML = page.body;
  if (!has) {
    const note = document.createElement('p');
    note.className = 'refusal';
    note.textContent = unknown.replace('{page}', asked.slice(0, 60));
    document.querySelector('article')?.prepend(note);
  }
  document.addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest('a[href]') : null;
    const inside = /^([a-z0-9-]+)\.html(?:\?([^#]*))?(#.*)?$/.exec(link?.getAttribute('href') ?? '');
    if (!inside || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    const to = `${location.pathname}?page=${inside[1]}${inside[2] ? `&${inside[2]}` : ''}${inside[3] ?? ''}`;
    if (link.target === '_blank') window.open(to, '_blank', 'noopener');
    else location.href = to;
  });
  const script = document.createElement('script');
  script.textContent = await window.unpackNotebook(document.querySelector(`script[data-file="${main}"]`).textContent);
  document.head.append(script);
  // The page was not there yet when the browser looked for the heading in its address.
  if (location.hash !== '') location.replace(location.hash);
};

/** `styles` is the text for a page that can hold any figure. */
export const writeOneFile = (folder, { language, noPage, withoutScript }, styles) => {
  const names = readdirSync(folder).filter((name) => name.endsWith('.html') && name !== ONE_FILE);
  const assets = readdirSync(join(folder, 'assets'));
  const read = (name) => readFileSync(join(folder, 'assets', name), 'utf8');
  const pages = Object.fromEntries(
    names.map((name) => {
      const html = readFileSync(join(folder, name), 'utf8');
      return [
        name.replace(/\.html$/, ''),
        packed(
          JSON.stringify({
            title: /<title>([^<]*)<\/title>/.exec(html)?.[1] ?? '',
            className: /<body class="([^"]*)"/.exec(html)?.[1] ?? '',
            page: /<body[^>]* data-page="([^"]*)"/.exec(html)?.[1] ?? '',
            body: between(html, '>', '</body>')
              .replace(/^[\s\S]*?<body[^>]*>/, '')
              // Alone, it has no edition beside it.
              .replace(/<a class="edition"[^>]*>[^<]*<\/a>/g, ''),
          }),
        ),
      ];
    }),
  );
  const style = styles.replace(
    /url\(([^)]+\.woff2)\)/g,
    (_, font) => `url(data:font/woff2;base64,${readFileSync(join(folder, font)).toString('base64')})`,
  );
  const notebook = assets.find((name) => /^notebook-.*\.js$/.test(name));
  const late = assets.filter((name) => name.endsWith('.js') && name !== notebook && !name.includes('-worker-'));
  const routing = `(${router.toString()})(${JSON.stringify(`assets/${notebook}`)}, ${JSON.stringify(noPage.unknown)});`;
  const scripts = [notebook, ...late].map((name) => ({ name, text: read(name) }));
  const icon = readFileSync(join(folder, 'notebook.png')).toString('base64');
  writeFileSync(
    join(folder, ONE_FILE),
    `<!doctype html>
<html lang="${language}" data-units="metric">
<head>
<meta charset="utf-8">
${oneFilePolicy([inScript(routing), ...scripts.map(({ text }) => text)], [style])}
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${/<title>([^<]*)<\/title>/.exec(readFileSync(join(folder, 'index.html'), 'utf8'))?.[1] ?? ''}</title>
<meta name="color-scheme" content="light dark">
<link rel="icon" href="data:image/png;base64,${icon}">
<style>${style}</style>
<script type="application/json" id="notebook-pages">${asData(pages)}</script>
${scripts.map(({ name, text }) => `<script type="text/plain" data-file="assets/${name}">${packed(text)}</script>`).join('\n')}
</head>
<body>
<noscript><p>${withoutScript}</p></noscript>
<script>${inScript(routing)}</script>
</body>
</html>
`,
  );
};
