/** What is wrong with how a page looks and is built, found in the page itself: each check gives lines that name the place. */
import type { Page } from './driven.ts';

/** How many pixels the page is too wide, and what sticks out. */
export const tooWide = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const over = document.documentElement.scrollWidth - innerWidth;
    if (over <= 0) return '';
    const out = [...document.querySelectorAll('body *')].filter(
      (e) => e.getBoundingClientRect().right > innerWidth + 1 && !e.closest('.table-scroll, math, .voice, .skip, svg'),
    );
    return `${over} px: ${out
      .slice(0, 4)
      .map((e) => `${e.tagName} ${e.className}`)
      .join('; ')}`;
  });

export const tooSmall = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'button, select, label:has(input[type=radio]), label:has(input[type=checkbox]), input[type=text], [role=slider], summary, .contents a, .neighbours a',
      ),
    ]
      .filter((e) => e.checkVisibility())
      .map((e) => ({ e, box: e.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 24 || box.height < 24)
      .map(
        ({ e, box }) =>
          `${e.tagName} ${e.textContent?.slice(0, 20)} ${box.width.toFixed(1)} × ${box.height.toFixed(1)}`,
      ),
  );

/** What is to be painted, cut out or marked with something of the page that is not there: the browser then leaves it blank. */
export const unpainted = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const asked = [
      'fill',
      'stroke',
      'clipPath',
      'maskImage',
      'filter',
      'markerStart',
      'markerMid',
      'markerEnd',
    ] as const;
    const missing = [...document.querySelectorAll('svg, svg *')].flatMap((e) => {
      const style = getComputedStyle(e);
      return asked.flatMap((property) =>
        [...style[property].matchAll(/url\(["']?#([^"')]+)["']?\)/g)]
          .map(([, id = '']) => id)
          .filter((id) => !document.getElementById(id))
          .map((id) => `${property} of ${e.tagName}.${e.getAttribute('class')}: #${id}`),
      );
    });
    return [...new Set(missing)];
  });

/** Controls and pictures without a name, ids that stand twice, and what Tab reaches though it is hidden. */
export const illBuilt = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const all = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)];
    const brief = (e: Element) => e.outerHTML.slice(0, 90);
    const ids = all('[id]').map((e) => e.id);
    return [
      ...(all('input, select, textarea') as HTMLInputElement[])
        .filter((e) => !(e.labels?.[0]?.textContent?.trim() || e.getAttribute('aria-label')))
        .map((e) => `no name: ${brief(e)}`),
      ...all('[role=img], [role=slider], [role=group], figure')
        .filter((e) => !e.getAttribute('aria-label') && !e.getAttribute('aria-labelledby'))
        .map((e) => `no name: ${brief(e)}`),
      ...[...new Set(ids.filter((id, i) => ids.indexOf(id) !== i))].map((id) => `id twice: ${id}`),
      ...all('a[href], button, input, select, textarea, summary, [tabindex="0"]')
        .filter((e) => e.closest('[aria-hidden=true], [role=presentation]'))
        .map((e) => `hidden, yet a stop of Tab: ${brief(e)}`),
      ...all('[hidden]')
        .filter((e) => getComputedStyle(e).display !== 'none')
        .map((e) => `hidden, yet it stands there: ${brief(e)}`),
      ...all('math')
        .filter((e) => !e.textContent?.trim() || e.closest('[aria-hidden=true]'))
        .map((e) => `algebra that can’t be read: ${brief(e)}`),
      ...all('[aria-live]:not([aria-live=polite]), [role=alert]').map((e) => `breaks in: ${brief(e)}`),
    ];
  });

/**
 * Text that is cut off: in a box that hides what does not fit, in a field, or at the edge of a drawing; and letters or controls
 * that lie on each other.
 */
export const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const seen = (e: Element) => e.checkVisibility() && e.getBoundingClientRect().width > 1;
    const words = (e: Element) =>
      `${e.closest('figure, section, nav, header')?.className ?? ''}: ${e.textContent?.trim().slice(0, 40)}`;
    const found: string[] = [];
    for (const e of document.querySelectorAll<HTMLElement>('body *')) {
      if (e instanceof SVGElement || e.closest('.voice, math, svg') || !seen(e)) continue;
      if (e.matches('input[type=text]') && e.scrollWidth > e.clientWidth + 2)
        found.push(`field too narrow, ${words(e)} ${(e as HTMLInputElement).value.slice(0, 60)}`);
      const { overflowX, overflowY, textOverflow } = getComputedStyle(e);
      const hides = (o: string) => o === 'hidden' || o === 'clip';
      if (e.matches('input')) continue;
      // The one line of a shut fold ends in an ellipsis where it is long; opened, the fold shows all of it.
      if (textOverflow === 'ellipsis' && e.closest('summary')) continue;
      if (hides(overflowX) && e.scrollWidth > e.clientWidth + 2) found.push(`cut off, ${words(e)}`);
      if (hides(overflowY) && e.scrollHeight > e.clientHeight + 4) found.push(`cut off below, ${words(e)}`);
    }
    for (const svg of document.querySelectorAll('main svg')) {
      if (svg.parentElement?.closest('svg') || !seen(svg)) continue;
      const edge = svg.getBoundingClientRect();
      const texts = [...svg.querySelectorAll('text')]
        .filter((t) => t.textContent?.trim() && seen(t))
        .map((t) => ({ t, box: t.getBoundingClientRect() }));
      for (const { t, box } of texts)
        if (
          box.left < edge.left - 2 ||
          box.right > edge.right + 2 ||
          box.top < edge.top - 3 ||
          box.bottom > edge.bottom + 3
        )
          found.push(`out of the drawing, ${words(t)}`);
      for (const [i, a] of texts.entries())
        for (const b of texts.slice(i + 1)) {
          const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
          // The box of a line of letters is taller than its letters.
          const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
          if (wide > 2 && high > 0.45 * Math.min(a.box.height, b.box.height))
            found.push(`letters on letters, ${words(a.t)} / ${b.t.textContent}`);
        }
    }
    const controls = [
      ...document.querySelectorAll('main button, main input, main textarea, main summary, main fieldset label'),
    ]
      .filter((e) => seen(e) && !e.closest('svg'))
      .map((e) => {
        const { left, right, top, bottom } = e.getBoundingClientRect();
        // What is scrolled out of a box lies on nothing beside it.
        const scrolled = e.closest('.table-scroll')?.getBoundingClientRect() ?? { left, right, top, bottom };
        const box = {
          left: Math.max(left, scrolled.left),
          right: Math.min(right, scrolled.right),
          top: Math.max(top, scrolled.top),
          bottom: Math.min(bottom, scrolled.bottom),
        };
        return { e, box };
      });
    for (const [i, a] of controls.entries())
      for (const b of controls.slice(i + 1, i + 12)) {
        if (a.e.contains(b.e) || b.e.contains(a.e)) continue;
        const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        if (wide > 2 && high > 2) found.push(`control on control, ${words(a.e)} / ${words(b.e)}`);
      }
    return [...new Set(found)];
  });

/**
 * What is wrong with the lettering of drawings: letters on letters or on an arrowhead, outside their drawing, or smaller than the smaller of
 * the two sizes. A line of letters is taken without the air over and under it.
 */
export const illLettered = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const SMALLEST = 13;
    const HEAD = 10;
    const found: string[] = [];
    for (const stage of document.querySelectorAll('[data-stage], [data-readings]')) {
      const name = stage.closest('figure')?.getAttribute('data-figure');
      const texts = [...stage.querySelectorAll<SVGTextElement>('svg text')].flatMap((t) => {
        const { left, right, top, bottom, width, height } = t.getBoundingClientRect();
        const matrix = t.getScreenCTM();
        if (!t.textContent?.trim() || !t.checkVisibility() || width < 1 || !matrix) return [];
        const air =
          0.2 *
          Math.min(width, height, Number.parseFloat(getComputedStyle(t).fontSize) * Math.hypot(matrix.a, matrix.b));
        const upright = Math.abs(matrix.b) < Math.abs(matrix.a);
        let drawing = t.ownerSVGElement;
        while (drawing?.ownerSVGElement) drawing = drawing.ownerSVGElement;
        return [
          {
            words: t.textContent.trim().slice(0, 30),
            // Letters that run up the page have their air at the sides.
            box: upright
              ? { left, right, top: top + air, bottom: bottom - air }
              : { left: left + air, right: right - air, top, bottom },
            size: Number.parseFloat(getComputedStyle(t).fontSize) * Math.hypot(matrix.a, matrix.b),
            paper: drawing?.classList.contains('paper') === true && innerWidth < 768,
            edge: drawing?.getBoundingClientRect(),
          },
        ];
      });
      for (const { words, box, size, paper, edge } of texts) {
        // A sheet of paper is shown whole on a phone, and at its true size once it is shown large.
        if (size < SMALLEST - 0.1 && !paper) found.push(`${name}: letters of ${size.toFixed(1)} px, ${words}`);
        if (
          edge &&
          (box.left < edge.left - 1 || box.right > edge.right + 1 || box.top < edge.top || box.bottom > edge.bottom)
        )
          found.push(`${name}: outside its drawing, ${words}`);
      }
      for (const [i, a] of texts.entries())
        for (const b of texts.slice(i + 1)) {
          const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
          const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
          if (wide > 1 && high > 1) found.push(`${name}: letters on letters, ${a.words} / ${b.words}`);
        }
      for (const line of stage.querySelectorAll<SVGGeometryElement>('svg :is([marker-start], [marker-end])')) {
        const length = line.checkVisibility() ? line.getTotalLength() : 0;
        const matrix = line.getScreenCTM();
        if (!(length > 0) || !matrix) continue;
        const head = HEAD / Math.hypot(matrix.a, matrix.b);
        for (const [mark, at] of [
          ['marker-start', Math.min(length, head) / 2],
          ['marker-end', Math.max(0, length - head / 2)],
        ] as const) {
          if (!line.hasAttribute(mark)) continue;
          const { x, y } = line.getPointAtLength(at).matrixTransform(matrix);
          for (const { words, box } of texts)
            if (x > box.left && x < box.right && y > box.top && y < box.bottom)
              found.push(`${name}: letters on an arrowhead, ${words}`);
        }
      }
    }
    return [...new Set(found)];
  });

/**
 * Letters of drawings that a line runs through: of each line, the places that are seen (inside what clips it, and under nothing that is filled)
 * and lie between the base line and the height of the small letters of a text. `letGo` names figures in which they may, with the reason at the caller.
 */
export const crossedLetters = (page: Page, letGo: readonly string[]): Promise<string[]> =>
  page.evaluate((letGo) => {
    const SHAPES = ':is(path, line, polyline, polygon, rect, circle, ellipse)';
    /** Px along a line from place to place; a line that only touches a letter has one. */
    const STRIDE = 1.5;
    const found: string[] = [];
    const inside = (shape: SVGGeometryElement, place: DOMPoint): boolean => {
      const matrix = shape.getScreenCTM();
      return matrix !== null && shape.isPointInFill(place.matrixTransform(matrix.inverse()));
    };
    for (const stage of document.querySelectorAll<HTMLElement>('[data-stage]')) {
      const name = stage.closest('figure')?.getAttribute('data-figure') ?? '';
      if (letGo.includes(name)) continue;
      const texts = [...stage.querySelectorAll<SVGTextElement>('svg text')].flatMap((text) => {
        const matrix = text.getScreenCTM();
        if (!text.textContent?.trim() || !text.checkVisibility() || !matrix) return [];
        const { x, y, width, height } = text.getBBox();
        const lines = text.querySelectorAll('tspan[dy]').length + 1;
        const line = height / lines;
        const middles = Array.from({ length: lines }, (_, i) => y + i * line);
        return [
          {
            text,
            screen: text.getBoundingClientRect(),
            back: matrix.inverse(),
            holds: (p: DOMPoint) =>
              p.x > x + 1 &&
              p.x < x + width - 1 &&
              middles.some((top) => p.y > top + 0.3 * line && p.y < top + 0.7 * line),
          },
        ];
      });
      if (texts.length === 0) continue;
      const shapes = [...stage.querySelectorAll<SVGGeometryElement>(`svg ${SHAPES}`)].filter(
        (shape) => !shape.closest('defs, clipPath, mask, pattern, marker') && shape.checkVisibility(),
      );
      const covers = shapes.map((shape) => {
        const { fill, fillOpacity, opacity } = getComputedStyle(shape);
        return /^rgb\(|^color\(/.test(fill) && Number(fillOpacity) > 0.9 && Number(opacity) > 0.9;
      });
      for (const [i, shape] of shapes.entries()) {
        const { stroke, strokeWidth, strokeOpacity, opacity } = getComputedStyle(shape);
        const box = shape.getBoundingClientRect();
        const near = texts.filter(
          ({ screen }) =>
            screen.left < box.right + 1 &&
            screen.right > box.left - 1 &&
            screen.top < box.bottom + 1 &&
            screen.bottom > box.top - 1,
        );
        const matrix = shape.getScreenCTM();
        if (
          stroke === 'none' ||
          Number.parseFloat(strokeWidth) === 0 ||
          Number(strokeOpacity) === 0 ||
          Number(opacity) === 0
        )
          continue;
        if (near.length === 0 || !matrix) continue;
        const clips: SVGGeometryElement[][] = [];
        for (let e: Element | null = shape; e && e !== stage; e = e.parentElement) {
          const id = /url\(["']?#([^"')]+)/.exec(getComputedStyle(e).clipPath)?.[1];
          if (id) clips.push([...document.querySelectorAll<SVGGeometryElement>(`#${CSS.escape(id)} ${SHAPES}`)]);
        }
        const user = (shape.parentElement as unknown as SVGGraphicsElement).getScreenCTM?.() ?? matrix;
        const length = shape.getTotalLength();
        const count = Math.min(4000, Math.ceil((length * Math.hypot(matrix.a, matrix.b)) / STRIDE));
        const hits = new Map<SVGTextElement, number>();
        for (let k = 0; k <= count; k++) {
          const place = shape.getPointAtLength((length * k) / Math.max(1, count)).matrixTransform(matrix);
          for (const { text, back, holds } of near) {
            if (!holds(place.matrixTransform(back))) continue;
            const local = place.matrixTransform(user.inverse());
            if (!clips.every((parts) => parts.some((part) => part.isPointInFill(local)))) continue;
            const hidden = shapes.some((over, j) => j > i && covers[j] && inside(over, place));
            if (!hidden) hits.set(text, (hits.get(text) ?? 0) + 1);
          }
        }
        for (const [text, times] of hits)
          if (times > 1)
            found.push(
              `${name}: a line (${shape.getAttribute('class') ?? shape.tagName}) through letters, ${text.textContent?.trim().slice(0, 30)}`,
            );
      }
    }
    return [...new Set(found)];
  }, letGo);

/** Prose whose lines hold more characters than an eye follows back: its width over that of its mean letter. */
export const longLines = (page: Page, most: number): Promise<string[]> =>
  page.evaluate((limit) => {
    const found: string[] = [];
    for (const e of document.querySelectorAll<HTMLElement>('p, li, dd')) {
      if (!e.checkVisibility() || e.querySelector('math, svg, ol, ul, p, table, input, button') || e.closest('svg'))
        continue;
      const range = document.createRange();
      const texts = document.createTreeWalker(e, NodeFilter.SHOW_TEXT);
      let [letters, long] = [0, 0];
      const lines = new Set<number>();
      while (texts.nextNode()) {
        range.selectNodeContents(texts.currentNode);
        const boxes = range.getClientRects();
        // A remark, or the sentence it stands in for, is there without being shown.
        if (boxes.length > 0) letters += texts.currentNode.textContent?.length ?? 0;
        for (const box of boxes) {
          long += box.width;
          lines.add(Math.round(box.bottom / 8));
        }
      }
      const perLine = (e.clientWidth * letters) / long;
      if (lines.size >= 2 && perLine > limit)
        found.push(
          `${Math.round(perLine)} a line, ${e.tagName} ${e.className} in ${e.parentElement?.className}: ${e.textContent?.trim().slice(0, 40)}`,
        );
    }
    return found;
  }, most);

/** Parts of each figure from top to bottom as they are read, and fields row by row. */
export const outOfOrder = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    for (const figure of document.querySelectorAll('figure.live')) {
      const parts = [...figure.children].filter((e) => e.checkVisibility() && e.getBoundingClientRect().height > 1);
      const fields = [...figure.querySelectorAll('.inputs')].map((inputs) =>
        [...inputs.children].filter((e) => e.checkVisibility()),
      );
      const bench = [...(figure.querySelector('.bench')?.children ?? [])].filter((e) => e.checkVisibility());
      for (const list of [parts, bench, ...fields])
        for (const [i, e] of list.entries()) {
          const [now, before] = [e.getBoundingClientRect(), list[i - 1]?.getBoundingClientRect()];
          if (!before) continue;
          const below = now.top >= before.bottom - 2;
          const beside = now.left >= before.right - 2 && now.bottom > before.top;
          if (!below && !beside)
            found.push(
              `${figure.getAttribute('aria-label')}: ${e.textContent?.slice(0, 40)} stands before what is read before it`,
            );
        }
    }
    return found;
  });
