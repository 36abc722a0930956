/** The buttons that show one thing to a room; what does so is fetched when the first of them is pressed. */
import { SHOW_LARGE } from '#words/client.ts';
import { all, make } from './dom.ts';
import { loadModule } from './load-figures.ts';
import type * as Projector from './projector/projector.ts';

const SHOWN = 'figure.live, .example, .derivation, .predict';

export const mountShowing = (root: HTMLElement, until: AbortSignal): void => {
  const shown = all(root, 'article > *').filter((one) => one.matches(SHOWN));
  let show: ReturnType<typeof Projector.mountProjector> | undefined;
  for (const [index, element] of shown.entries()) {
    const open = make('button', { type: 'button', class: 'plain project' }, SHOW_LARGE);
    open.addEventListener('click', async () => {
      const part = (await loadModule('projector')) as typeof Projector | undefined;
      if (!part || until.aborted) return;
      show ??= part.mountProjector(root, shown, until);
      show(index, open);
    });
    // Beside the title of a calculation, in the foot of a figure, at the end of a prediction.
    const title = element.querySelector(':scope > h3');
    if (title) title.after(open);
    else (element.querySelector('.foot-line') ?? element).append(open);
  }
};
