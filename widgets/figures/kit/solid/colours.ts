/** Colours of the solid, from the style sheet: so light, dark and the reader’s own are one place. */
import type { Colour, Colours } from './shot.ts';

/** As the browser gives a computed colour: by 255ths, or by shares. */
const channels = (text: string): Colour => {
  const numbers = (text.match(/-?[\d.]+(e-?\d+)?/g) ?? []).map(Number);
  const by = text.startsWith('color(') ? 1 : 255;
  const [r = 0, g = 0, b = 0] = numbers;
  return [r / by, g / by, b / by];
};

const NAMES = ['base', 'turned', 'carried', 'ink', 'accent'] as const;

export const coloursOf = (canvas: HTMLCanvasElement): Colours => {
  const read = (name: (typeof NAMES)[number]): Colour => {
    canvas.style.color = `var(--solid-${name})`;
    return channels(getComputedStyle(canvas).color);
  };
  const colours = {
    parts: { base: read('base'), turned: read('turned'), carried: read('carried') },
    ink: read('ink'),
    accent: read('accent'),
  };
  canvas.style.color = '';
  return colours;
};
